/** The drafting hatches as repeating SVG tiles: what is drawn in one tile, in pixels; drawings on paper take a quarter of a millimetre for each. */

import type { Pattern } from './palette.ts';

export interface HatchTile {
  readonly width: number;
  readonly height: number;
  /** Drawn as lines in the hatch colour. */
  readonly strokes: string;
  /** Drawn as areas in the hatch colour. */
  readonly fills: string;
}

const tile = (width: number, height: number, strokes: string, fills = ''): HatchTile => ({ width, height, strokes, fills });

/** A small disc as a path, so that a tile is nothing but two paths. */
const disc = (x: number, y: number, r: number) => `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;

export const HATCH_TILES: Readonly<Record<Pattern, HatchTile>> = {
  plain: tile(8, 8, ''),
  dashes: tile(12, 8, 'M0 2h7M6 6h7'),
  'fine dashes': tile(8, 6, 'M0 1.5h4M4 4.5h4'),
  'fine dots': tile(6, 6, '', disc(1.5, 1.5, 0.7) + disc(4.5, 4.5, 0.7)),
  cups: tile(10, 10, disc(5, 5, 3.2)),
  'coarse grains': tile(14, 14, 'M2 3l3-1.5 2.5 2-1 3-3.5.5zM9 8.5l3-.5 1.5 2.5-2 2.5-3-1zM10 2l2 .5.5 2-2 .5zM3 10l2 .5-.5 2.5-2-.5z'),
  crumbs: tile(14, 12, 'M2 2l4-.5 1 3-3 2-2.5-1.5zM8.5 6l3-1.5 1.5 3-2.5 2.5-2.5-1.5zM2.5 9l2-.5.5 2-2 .5z'),
  'angular grains': tile(12, 12, 'M1 5l3-4 2 4zM7 10l4-1.5-2-3.5zM2 11l1.5-2.5 2 2z', disc(9.5, 2, 0.6)),
  stipple: tile(8, 8, '', disc(1, 2, 0.55) + disc(5, 1, 0.45) + disc(3.2, 5.2, 0.5) + disc(6.8, 4.6, 0.55) + disc(1.2, 7, 0.4)),
  'running bond': tile(16, 10, 'M0 .5h16M0 5.5h16M4 .5v5M12 5.5v5'),
  strokes: tile(14, 10, 'M1.5 2l3 1M8 1l2.5-.3M11 5l2.2 1.2M4 6.5l2.8-.8M8 8.5l2.5.6M1 8.8l1.8-.6'),
  blades: tile(10, 8, 'M2 8q0-3.5-1-6M2.5 8q.5-4 2.5-6.5M7 8q-.3-2.5-1-4M7.5 8q.5-3 2-5'),
  concrete: tile(16, 16, 'M-2 10L10-2M6 18L18 6', disc(4, 12, 0.7) + disc(12, 3, 0.6)),
  waves: tile(16, 8, 'M0 3q4-3.5 8 0t8 0M0 7q4-3.5 8 0t8 0'),
};
