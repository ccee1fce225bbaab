/** A bar of whole metres at the scale of the drawing. */

import type { PrintWords } from '../text/print-words.ts';

const STEPS_M = [0.5, 1, 2, 5, 10, 20, 50, 100];
const PARTS = 5;
const MOST_MM = 110;
const EDGE_MM = 6;

export function ScaleBar({ scale, words }: { readonly scale: number; readonly words: PrintWords }) {
  const stepM = STEPS_M.findLast((step) => (PARTS * step * 1000) / scale <= MOST_MM) ?? 0.5;
  const stepMm = (stepM * 1000) / scale;
  const width = PARTS * stepMm + 2 * EDGE_MM;
  return (
    <svg
      className="paper-scale"
      width={`${width}mm`}
      height="9mm"
      viewBox={`${-EDGE_MM} -5 ${width} 9`}
      role="img"
      aria-label={words.scaleIs(scale)}
    >
      {Array.from({ length: PARTS }, (_, i) => (
        <rect
          // biome-ignore lint/suspicious/noArrayIndexKey: a part is its place
          key={i}
          data-scale-part={i}
          x={i * stepMm}
          y="0"
          width={stepMm}
          height="2"
          fill={i % 2 === 0 ? '#1e2a2e' : '#ffffff'}
          stroke="#1e2a2e"
          strokeWidth="0.2"
        />
      ))}
      {[0, PARTS].map((i) => (
        <text key={i} x={i * stepMm} y="-1.2" fontSize="3" textAnchor="middle">
          {i === 0 ? '0' : words.metres(i * stepM)}
        </text>
      ))}
    </svg>
  );
}
