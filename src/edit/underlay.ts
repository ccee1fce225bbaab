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
export declare function placedByPoints(
  pixels: readonly [PixelPoint, PixelPoint],
  places: readonly [PointM, PointM],
): UnderlayPlace | Refused;

/**
 * Scales a picture by the distance of two of its points; the first of them stays where it is, and the picture keeps its turn.
 * @param pixels - two points of the picture
 * @param distanceM - their distance in truth [m]
 * @param now - where the picture lies now
 * @returns the place, or why there is none
 */
export declare function placedByDistance(
  pixels: readonly [PixelPoint, PixelPoint],
  distanceM: number,
  now: UnderlayPlace,
): UnderlayPlace | Refused;

/**
 * Where a pixel lies.
 * @param place - of the picture
 * @param pixel - its point
 * @returns place in the plan
 */
export declare function planOfPixel(place: UnderlayPlace, pixel: PixelPoint): PointM;

/**
 * Which pixel lies at a place.
 * @param place - of the picture
 * @param at - place in the plan
 * @returns point of the picture
 */
export declare function pixelOfPlan(place: UnderlayPlace, at: PointM): PixelPoint;
