/** A picture laid under the plan: placed by two of its points. */

import type { PointM } from '../model/scene-file.ts';
import type { Refused } from './refusal.ts';

/** A point of the picture, from its upper left corner, y down [px]. */
export type PixelPoint = readonly [number, number];

/** Similarity from pixels (y down) to plan: x = a·u + b·v + dx, y = b·u − a·v + dy. Metres per pixel are hypot(a, b). */
export interface UnderlayPlace {
  readonly a: number;
  readonly b: number;
  readonly dx: number;
  readonly dy: number;
}

/**
 * Places a picture by two of its points and where they lie.
 * @param pixels - two points of the picture
 * @param places - the same two in the plan
 * @returns the place, or why there is none
 */
export function placedByPoints(pixels: readonly [PixelPoint, PixelPoint], places: readonly [PointM, PointM]): UnderlayPlace | Refused {
  const [[u, v], [nextU, nextV]] = pixels;
  const [[x, y], [nextX, nextY]] = places;
  const [du, dv] = [nextU - u, nextV - v];
  const [dx, dy] = [nextX - x, nextY - y];
  const squared = du * du + dv * dv;
  if (squared === 0 || (dx === 0 && dy === 0)) return { refused: 'same point' };
  const a = (dx * du - dy * dv) / squared;
  const b = (dx * dv + dy * du) / squared;
  return { a, b, dx: x - a * u - b * v, dy: y - b * u + a * v };
}

/**
 * Scales a picture by the distance of two of its points; the first of them stays where it is, and the picture keeps its turn.
 * @param pixels - two points of the picture
 * @param distanceM - their distance in truth [m]
 * @param now - where the picture lies now
 * @returns the place, or why there is none
 */
export function placedByDistance(
  pixels: readonly [PixelPoint, PixelPoint],
  distanceM: number,
  now: UnderlayPlace,
): UnderlayPlace | Refused {
  if (!(distanceM > 0 && Number.isFinite(distanceM))) return { refused: 'length not above 0' };
  const [first, second] = pixels.map((pixel) => planOfPixel(now, pixel));
  const nowM = Math.hypot(second[0] - first[0], second[1] - first[1]);
  if (!(nowM > 0)) return { refused: 'same point' };
  const share = distanceM / nowM;
  return placedByPoints(pixels, [first, [first[0] + share * (second[0] - first[0]), first[1] + share * (second[1] - first[1])]]);
}

/**
 * Where a pixel lies.
 * @param place - of the picture
 * @param pixel - its point
 * @returns place in the plan
 */
export function planOfPixel({ a, b, dx, dy }: UnderlayPlace, [u, v]: PixelPoint): PointM {
  return [a * u + b * v + dx, b * u - a * v + dy];
}

/**
 * Which pixel lies at a place.
 * @param place - of the picture
 * @param at - place in the plan
 * @returns point of the picture
 */
export function pixelOfPlan({ a, b, dx, dy }: UnderlayPlace, [x, y]: PointM): PixelPoint {
  const squared = a * a + b * b;
  return [(a * (x - dx) + b * (y - dy)) / squared, (b * (x - dx) - a * (y - dy)) / squared];
}
