/** Lengths and angles of a shape set to typed values. */

import type { PlanPoint } from './point-lists.ts';
import type { Refused } from './refusal.ts';

/** Points of a shape, and whether the last edge leads back to the first point. */
export interface Outline {
  readonly points: readonly PlanPoint[];
  readonly closed: boolean;
}

/**
 * Length of an edge.
 * @param outline - shape
 * @param edge - index of its first point
 * @returns length [m]
 */
export declare function edgeLengthM(outline: Outline, edge: number): number;

/**
 * Angle between the two edges at a point, inside the area for a closed shape, to the left for a line.
 * @param outline - shape
 * @param at - index of the point
 * @returns 0 … 360 [°]; null at the end of a line
 */
export declare function angleDeg(outline: Outline, at: number): number | null;

/**
 * Sets the length of an edge; its direction stays.
 * @param outline - shape
 * @param edge - index of its first point
 * @param lengthM - above 0 [m]
 * @param options - which end stays; whether the other end moves alone or takes the next edge along, parallel to itself (a rectangle stays one)
 * @returns the points, or why it cannot be
 */
export declare function withEdgeLength(
  outline: Outline,
  edge: number,
  lengthM: number,
  options: { readonly fixedEnd: 'first' | 'second'; readonly carry: 'corner' | 'side' },
): readonly PlanPoint[] | Refused;

/**
 * Sets the angle at a point by turning one of its edges about it; lengths stay.
 * @param outline - shape
 * @param at - index of the point
 * @param angle - 0 … 360, exclusive [°]
 * @param turns - the edge that turns: before or after the point
 * @returns the points, or why it cannot be
 */
export declare function withAngle(outline: Outline, at: number, angle: number, turns: 'before' | 'after'): readonly PlanPoint[] | Refused;
