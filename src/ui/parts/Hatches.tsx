/** Defines every hatch once per page; any SVG fills with `hatchUrl`. */

import type { ClassHatch, NamedStyle } from '../../model/class-style.ts';
import { HATCH_TILES } from '../../model/hatch-tiles.ts';
import { ROLE_STYLE, UNCONFIRMED, UTILISATION_COLOURS } from '../../model/palette.ts';
import type { PartKind } from '../../model/picture.ts';
import { isHatchedClass } from '../facts/utilisation.ts';

const KINDS = Object.keys(ROLE_STYLE) as PartKind[];

const idOf = (name: string) => `hatch-${name.replaceAll(' ', '-')}`;

/** Fill of a role or other part; plain for a role that this table does not know. */
export const partFill = (kind: string): string => (kind in ROLE_STYLE ? `url(#${idOf(kind)})` : 'var(--rule)');

/** Fill of a class of utilisation. */
export const classFill = (index: number, colour: string): string => (isHatchedClass(index) ? `url(#hatch-class-${index})` : colour);

/** Fill of a named class: its colour, and its hatch over it where it has one. */
export const namedFill = ({ fill, hatch }: NamedStyle): string => (hatch === 'none' ? fill : `url(#${namedId(fill, hatch)})`);

const namedId = (fill: string, hatch: string) => `hatch-${hatch}-${fill.slice(1)}`;

const NAMED_LINES: Readonly<Record<ClassHatch, string>> = {
  none: '',
  rising: 'M-1 7L7-1',
  falling: 'M-1-1L7 7',
  crossed: 'M-1 7L7-1M-1-1L7 7',
};

/** Hatches of the named classes of a map. */
export function NamedHatches({ styles }: { readonly styles: readonly NamedStyle[] }) {
  return (
    <svg className="hatches" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        {styles
          .filter(({ hatch }) => hatch !== 'none')
          .map(({ fill, line, hatch }) => (
            <pattern key={namedId(fill, hatch)} id={namedId(fill, hatch)} width="6" height="6" patternUnits="userSpaceOnUse">
              <rect width="6" height="6" fill={fill} />
              <path d={NAMED_LINES[hatch]} stroke={line} strokeWidth="0.8" opacity="0.6" />
            </pattern>
          ))}
      </defs>
    </svg>
  );
}

export const EDGE_BAND_FILL = 'url(#hatch-edge-band)';
export const UNCONFIRMED_FILL = 'url(#hatch-unconfirmed)';
/** Something that must not be so, where it is no class of utilisation. */
export const OVER_FILL = 'url(#hatch-over)';
/** Strokes alone, over the colour of a cell. */
export const SHORT_FILL = 'url(#hatch-short)';
export const NO_DATA_FILL = 'url(#hatch-no-data)';

function RoleHatch({ kind }: { readonly kind: PartKind }) {
  const { fill, line, pattern } = ROLE_STYLE[kind];
  const { width, height, strokes, fills } = HATCH_TILES[pattern];
  return (
    <pattern id={idOf(kind)} width={width} height={height} patternUnits="userSpaceOnUse">
      <rect width={width} height={height} fill={fill} />
      {strokes && <path d={strokes} fill="none" stroke={line} strokeWidth="1" />}
      {fills && <path d={fills} fill={line} />}
    </pattern>
  );
}

function ClassHatches() {
  const [, , , over, farOver] = UTILISATION_COLOURS;
  return (
    <>
      <pattern id="hatch-class-3" width="7" height="7" patternUnits="userSpaceOnUse">
        <rect width="7" height="7" fill={over} />
        <path d="M-1 8L8-1" stroke="#5E2309" strokeWidth="1.4" />
      </pattern>
      <pattern id="hatch-class-4" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill={farOver} />
        <path d="M-1 6L6-1M-1-1L6 6" stroke="#E7A9B8" strokeWidth="0.8" />
      </pattern>
      <pattern id="hatch-unconfirmed" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" fill="var(--paper)" />
        <path d="M-1 9L9-1" stroke={UNCONFIRMED} strokeWidth="2" />
      </pattern>
      <pattern id="hatch-over" width="7" height="7" patternUnits="userSpaceOnUse">
        <rect width="7" height="7" fill="var(--clay-tint)" />
        <path d="M-1 8L8-1" stroke="var(--clay)" strokeWidth="1" opacity="0.55" />
      </pattern>
      <pattern id="hatch-short" width="6" height="6" patternUnits="userSpaceOnUse">
        <path d="M-1 7L7-1M-1-1L7 7" stroke="var(--ink)" strokeWidth="1" />
      </pattern>
      <pattern id="hatch-edge-band" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" fill="var(--paper)" />
        <path d="M2.5 0V5" stroke="var(--ink)" strokeWidth="1.1" opacity="0.7" />
      </pattern>
      <pattern id="hatch-no-data" width="10" height="10" patternUnits="userSpaceOnUse">
        <rect width="10" height="10" fill="var(--paper)" />
        <circle cx="5" cy="5" r="1.1" fill="var(--ink-soft)" />
      </pattern>
    </>
  );
}

export function Hatches() {
  return (
    <svg className="hatches" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        {KINDS.map((kind) => (
          <RoleHatch key={kind} kind={kind} />
        ))}
        <ClassHatches />
      </defs>
    </svg>
  );
}
