/** The drafting hatches as families of parallel lines, which is all that a DXF hatch knows; lengths on paper. */

import type { Pattern } from '../model/palette.ts';

export interface LineFamily {
  readonly angleDeg: number;
  /** Between neighbouring lines. */
  readonly spacingMm: number;
  /** Each line starts this much further along than the one before. */
  readonly shiftMm: number;
  /** Strokes, and gaps as negative lengths; 0 is a dot, none a whole line. */
  readonly dashesMm: readonly number[];
}

const family = (angleDeg: number, spacingMm: number, shiftMm = 0, dashesMm: readonly number[] = []): LineFamily => ({
  angleDeg,
  spacingMm,
  shiftMm,
  dashesMm,
});

/** Null for a plain fill. */
export const DXF_HATCHES: Readonly<Record<Pattern, readonly LineFamily[] | null>> = {
  plain: null,
  dashes: [family(0, 1, 1.5, [1.75, -1.25])],
  'fine dashes': [family(0, 0.75, 1, [1, -1])],
  'fine dots': [family(0, 0.75, 0.75, [0, -1.5])],
  cups: [family(60, 1.4), family(120, 1.4)],
  'coarse grains': [family(15, 1.8, 0.9, [1, -1.6]), family(75, 1.8, 0.7, [1, -1.6]), family(135, 1.8, 1.1, [1, -1.6])],
  crumbs: [family(0, 1.6, 0.8, [0.8, -0.8]), family(90, 1.6, 0.8, [0.8, -0.8])],
  'angular grains': [family(0, 1.73, 1, [1, -1]), family(60, 1.73, 1, [1, -1]), family(120, 1.73, 1, [1, -1])],
  stipple: [family(37, 0.9, 0.4, [0, -1.3]), family(79, 1.3, 0.6, [0, -1.7])],
  'running bond': [family(0, 1.25), family(90, 2, 1.25, [1.25, -1.25])],
  strokes: [family(20, 1.5, 1.3, [1, -1.8]), family(-15, 2.1, 0.8, [0.8, -2.2])],
  blades: [family(75, 1.4, 0.9, [1.1, -1.5]), family(105, 1.9, 0.7, [0.9, -1.7])],
  concrete: [family(45, 2.5), family(0, 2, 1.1, [0, -2.3])],
  waves: [family(20, 1.2, 0, [1.5, -1.5]), family(-20, 1.2, 0, [1.5, -1.5])],
};
