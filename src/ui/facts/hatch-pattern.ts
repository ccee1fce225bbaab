/** Fills of a legend for a canvas: a colour and what is drawn over it, as the page has them in SVG. */

import type { NamedStyle } from '../../model/class-style.ts';
import { HATCH_TILES } from '../../model/hatch-tiles.ts';
import { INK, ROLE_STYLE, UNCONFIRMED } from '../../model/palette.ts';
import type { PartKind } from '../../model/picture.ts';

export interface DrawnFill {
  readonly fill: string;
  readonly line: string;
  readonly width: number;
  readonly height: number;
  readonly strokes: string;
  readonly fills: string;
}

const TILE = 6;
const RISING = 'M-1 7L7-1';
const CROSSED = 'M-1 7L7-1M-1-1L7 7';

export const plainFill = (fill: string): DrawnFill => ({ fill, line: fill, width: TILE, height: TILE, strokes: '', fills: '' });

export function roleFill(kind: PartKind): DrawnFill {
  const { fill, line, pattern } = ROLE_STYLE[kind];
  return { fill, line, ...HATCH_TILES[pattern] };
}

/** A class above the limit. */
export const overFill = (fill: string): DrawnFill => ({ ...plainFill(fill), line: INK, strokes: CROSSED });
/** Strokes over the colour of any cell. */
export const SHORT_DRAWN: DrawnFill = { ...plainFill('#FFFFFF'), line: INK, strokes: CROSSED };
export const UNCONFIRMED_DRAWN: DrawnFill = { ...plainFill('#FFFFFF'), line: UNCONFIRMED, strokes: RISING };
export const NO_DATA_DRAWN: DrawnFill = { ...plainFill('#FFFFFF'), line: INK, fills: 'M2 2h2v2h-2z' };

export function namedDrawn({ fill, line, hatch }: NamedStyle): DrawnFill {
  const strokes = { none: '', rising: RISING, falling: 'M-1-1L7 7', crossed: CROSSED }[hatch];
  return { ...plainFill(fill), line, strokes };
}
