/** Polygons cut by straight lines and by convex shapes: Sutherland and Hodgman, one side after the other. */

import type { Region } from '../../model/deck-input.ts';
import { ringsOf } from './ring.ts';

/**
 * Keeps the part of a polygon with a·x + b·y ≤ limit. Parts that fall apart stay joined by edges that run to and fro, so the area is right.
 * @param points - polygon, x y per vertex [m]
 * @param a - of the line [-]
 * @param b - of the line [-]
 * @param limit - of the line [m]
 * @returns polygon, x y per vertex; empty where nothing is left [m]
 * @source none: geometry
 */
export function clipSide(points: readonly number[], a: number, b: number, limit: number): number[] {
  const out: number[] = [];
  const n = points.length;
  for (let i = 0, j = n - 2; i < n; j = i, i += 2) {
    const dj = a * points[j] + b * points[j + 1] - limit;
    const di = a * points[i] + b * points[i + 1] - limit;
    if (dj <= 0 !== di <= 0) {
      const t = dj / (dj - di);
      out.push(points[j] + t * (points[i] - points[j]), points[j + 1] + t * (points[i + 1] - points[j + 1]));
    }
    if (di <= 0) out.push(points[i], points[i + 1]);
  }
  return out;
}

/**
 * Part of a polygon inside a convex one.
 * @param subject - polygon, x y per vertex [m]
 * @param clip - convex polygon, counter-clockwise [m]
 * @returns common part, x y per vertex; empty where there is none [m]
 * @source none: geometry
 */
export function clipConvex(subject: readonly number[], clip: readonly number[]): readonly number[] {
  let points = subject;
  const n = clip.length;
  for (let i = 0, j = n - 2; i < n && points.length > 0; j = i, i += 2) {
    const ex = clip[i] - clip[j];
    const ey = clip[i + 1] - clip[j + 1];
    points = clipSide(points, ey, -ex, ey * clip[j] - ex * clip[j + 1]);
  }
  return points;
}

/**
 * Signed area of a polygon, relative to its first vertex.
 * @param points - polygon, x y per vertex [m]
 * @returns area, positive counter-clockwise [m²]
 * @source none: geometry
 */
export function polygonAreaM2(points: readonly number[]): number {
  let twice = 0;
  for (let i = 2; i + 3 < points.length; i += 2) {
    twice += (points[i] - points[0]) * (points[i + 3] - points[1]) - (points[i + 2] - points[0]) * (points[i + 1] - points[1]);
  }
  return twice / 2;
}

/**
 * Area of a region inside a convex polygon, holes taken off.
 * @param region - outer ring counter-clockwise, holes clockwise [m]
 * @param clip - convex polygon, counter-clockwise [m]
 * @returns area [m²]
 * @source none: geometry
 */
export function areaInConvexM2(region: Region, clip: readonly number[]): number {
  let area = 0;
  for (const ring of ringsOf(region)) area += polygonAreaM2(clipConvex(Array.from(ring), clip));
  return Math.max(0, area);
}
