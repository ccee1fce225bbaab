/**
 * Drafting hatches on faces. Strokes keep their width on the screen; the spacing doubles or halves in steps fixed in the
 * world, with a soft change between them, so that a hatch neither swims nor runs together to grey.
 */

import { PATTERNS, type Pattern } from '../model/palette.ts';
import { FIELD_REACH } from './hatch-field.ts';
import { TILE_CELLS } from './hatch-marks.ts';

/** Size of one hatch cell on the screen [px], give or take the doubling. */
const CELL_PX: Record<Pattern, number> = {
  plain: 16,
  dashes: 20,
  'fine dashes': 16,
  'fine dots': 10,
  cups: 15,
  'coarse grains': 15,
  crumbs: 16,
  'angular grains': 15,
  stipple: 14,
  'running bond': 22,
  strokes: 15,
  blades: 14,
  concrete: 26,
  waves: 24,
};

/** Share of the face that strokes cover, for where they run together [-]. */
const TONE = 0.13;

const numbers = PATTERNS.map((name) => CELL_PX[name].toFixed(1)).join(', ');

export const HATCH_GLSL = /* glsl */ `
uniform mediump sampler2DArray hatchFields;
uniform float targetPixelM;
const float CELL_PX[${PATTERNS.length}] = float[](${numbers});

float strokeWidth() {
  return 1.05 * dotsPerPixel;
}

// Share of ink with cells of one size; foot is what a device pixel covers on the face, along each of its axes [m].
float inkAt(int pattern, vec2 p, float cellM, vec2 foot) {
  vec2 cells = foot / cellM;
  float far = textureLod(hatchFields, vec3(p / (cellM * ${TILE_CELLS.toFixed(1)}), float(pattern)), 0.0).r * ${FIELD_REACH};
  float drawn = clamp(0.5 * strokeWidth() + 0.5 - far * 2.0 / (cells.x + cells.y), 0.0, 1.0);
  return mix(drawn, ${TONE}, smoothstep(0.16, 0.42, max(cells.x, cells.y)));
}

// A whole number, with a short soft change to the next.
float stepped(float octave) {
  float whole = floor(octave);
  return whole + smoothstep(0.88, 1.0, octave - whole);
}

// Share of ink at a point of a face; pixelM is the size of a CSS pixel there. One spacing all over the picture, as on a
// drawing, except where a face is much nearer or farther than what is looked at.
float hatch(int pattern, vec2 p, float pixelM, vec2 foot) {
  if (pattern == ${PATTERNS.indexOf('plain')}) return 0.0;
  float octave = stepped(log2(targetPixelM * CELL_PX[pattern]) + 0.35) + stepped(log2(pixelM / targetPixelM) + 0.5);
  float whole = floor(octave);
  float now = inkAt(pattern, p, exp2(whole), foot);
  float next = inkAt(pattern, p, exp2(whole + 1.0), foot);
  return mix(now, next, octave - whole);
}
`;
