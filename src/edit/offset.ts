/** Parallel outlines: an area grown or shrunk by a distance. */

import type { AreaM } from './overlay.ts';

/** Points of parallel outlines are rounded to this [m]. */
export const OFFSET_PRECISION_M = 1e-6;

/**
 * The area inside a parallel outline.
 * @param area - area with holes
 * @param distanceM - outwards; below 0 inwards. Holes shrink as the area grows [m]
 * @param corners - sharp, or round with the distance as radius
 * @returns what is left, largest first; none where nothing is left
 * @throws RangeError where the distance is not a finite number
 */
export declare function offsetArea(area: AreaM, distanceM: number, corners?: 'sharp' | 'round'): readonly AreaM[];
