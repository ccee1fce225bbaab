/** A small field of a colour or hatch beside its words. */

export function Swatch({ fill, wide = false }: { readonly fill: string; readonly wide?: boolean }) {
  const width = wide ? 28 : 18;
  return (
    <svg className="swatch" width={width} height="14" viewBox={`0 0 ${width} 14`} aria-hidden="true" focusable="false">
      <rect x="0.5" y="0.5" width={width - 1} height="13" fill={fill} stroke="var(--ink-soft)" />
    </svg>
  );
}
