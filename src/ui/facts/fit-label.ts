/** Where a block of text has room inside an outline and off its openings, and how large its letters may be. */

import type { PointM, PolygonM } from '../../model/scene-file.ts';
import { boxOf } from './place.ts';

export interface TextSize {
  /** Width and height of the block for letters of size 1. */
  readonly width: number;
  readonly height: number;
}

export interface FittedText {
  /** Middle of the block. */
  readonly at: PointM;
  readonly letters: number;
}

const STEPS = 12;
const SHRINK = 0.88;

/** Largest letters first, the place nearest to the middle first; null where even the least size has no room. */
export function fitText(
  outline: PolygonM,
  openings: readonly PolygonM[],
  { width, height }: TextSize,
  { most, least }: { readonly most: number; readonly least: number },
): FittedText | null {
  const places = placesIn(outline);
  const rings = [outline, ...openings];
  for (let letters = most; letters >= least; letters *= SHRINK) {
    const half: PointM = [(width * letters) / 2, (height * letters) / 2];
    const at = places.find((place) => isFree(place, half, rings));
    if (at) return { at, letters };
  }
  return null;
}

/** Middle of the box first, then outwards. */
function placesIn(outline: PolygonM): PointM[] {
  const { min, max } = boxOf(outline);
  const middle: PointM = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  const places: PointM[] = [middle];
  for (let i = 0; i <= STEPS; i++) {
    for (let j = 0; j <= STEPS; j++) {
      places.push([min[0] + (i / STEPS) * (max[0] - min[0]), min[1] + (j / STEPS) * (max[1] - min[1])]);
    }
  }
  const off = ([x, y]: PointM) => Math.hypot(x - middle[0], y - middle[1]);
  return places.sort((a, b) => off(a) - off(b));
}

/** The first ring holds the whole box and the others none of it: no side crosses it, and its middle lies right. */
function isFree(at: PointM, half: PointM, [outline = [], ...openings]: readonly PolygonM[]): boolean {
  if (!holds(outline, at) || openings.some((ring) => holds(ring, at))) return false;
  return [outline, ...openings].every((ring) => ring.every((from, i) => !crosses(from, ring[(i + 1) % ring.length] as PointM, at, half)));
}

function holds(ring: PolygonM, [x, y]: PointM): boolean {
  let inside = false;
  ring.forEach(([x1, y1], i) => {
    const [x2, y2] = ring[(i + 1) % ring.length] as PointM;
    if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) inside = !inside;
  });
  return inside;
}

/** Whether a stretch enters a box, clipped side by side. */
function crosses([x1, y1]: PointM, [x2, y2]: PointM, [x, y]: PointM, [halfX, halfY]: PointM): boolean {
  let [from, to] = [0, 1];
  for (const [start, step, low, high] of [
    [x1, x2 - x1, x - halfX, x + halfX],
    [y1, y2 - y1, y - halfY, y + halfY],
  ] as const) {
    if (step === 0) {
      if (start <= low || start >= high) return false;
      continue;
    }
    const [a, b] = [(low - start) / step, (high - start) / step];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  }
  return from < to;
}
