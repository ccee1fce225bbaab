/** Lengths and angles of a shape set to typed values. */

import { placed, shift, turn } from './move-parts.ts';
import type { PlanPoint } from './point-lists.ts';
import type { Refused } from './refusal.ts';

/** Points of a shape, and whether the last edge leads back to the first point. */
export interface Outline {
  readonly points: readonly PlanPoint[];
  readonly closed: boolean;
}

/** The point with an index that may lie before the first or after the last; null beyond the ends of a line. */
function pointAt({ points, closed }: Outline, index: number): PlanPoint | null {
  const count = points.length;
  return points[closed ? ((index % count) + count) % count : index] ?? null;
}

/**
 * Length of an edge.
 * @param outline - shape
 * @param edge - index of its first point
 * @returns length; 0 where there is no such edge [m]
 */
export function edgeLengthM(outline: Outline, edge: number): number {
  const [a, b] = [pointAt(outline, edge), pointAt(outline, edge + 1)];
  return a === null || b === null ? 0 : Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/**
 * Angle between the two edges at a point: inside the area for a closed shape, to the left for a line.
 * @param outline - shape
 * @param at - index of the point
 * @returns 0 … 360 [°]; null at the end of a line
 */
export function angleDeg(outline: Outline, at: number): number | null {
  const [before, point, after] = [pointAt(outline, at - 1), pointAt(outline, at), pointAt(outline, at + 1)];
  if (before === null || point === null || after === null) return null;
  const back = Math.atan2(before[1] - point[1], before[0] - point[0]);
  const on = Math.atan2(after[1] - point[1], after[0] - point[0]);
  const left = (((((back - on) * 180) / Math.PI) % 360) + 360) % 360;
  return outline.closed && !isLeftInside(outline.points) ? 360 - left : left;
}

/** Whether the inside of a closed shape lies to the left of its edges. */
function isLeftInside(points: readonly PlanPoint[]): boolean {
  const [[originX, originY]] = points;
  return (
    points.reduce((twice, [x, y], i) => {
      const [nextX, nextY] = points[(i + 1) % points.length];
      return twice + (x - originX) * (nextY - originY) - (nextX - originX) * (y - originY);
    }, 0) > 0
  );
}

export interface LengthOptions {
  /** End that stays. */
  readonly fixedEnd: 'first' | 'second';
  /** The other end moves alone, or takes the next edge along, parallel to itself: a rectangle stays one. */
  readonly carry: 'corner' | 'side';
}

/**
 * Sets the length of an edge; its direction stays.
 * @param outline - shape
 * @param edge - index of its first point
 * @param lengthM - above 0 [m]
 * @param options - what stays and what goes along
 * @returns the points, or why it cannot be
 */
export function withEdgeLength(
  outline: Outline,
  edge: number,
  lengthM: number,
  { fixedEnd, carry }: LengthOptions,
): readonly PlanPoint[] | Refused {
  const [a, b] = [pointAt(outline, edge), pointAt(outline, edge + 1)];
  if (a === null || b === null) return { refused: 'no such part' };
  if (!(lengthM > 0 && Number.isFinite(lengthM))) return { refused: 'length not above 0' };
  const nowM = edgeLengthM(outline, edge);
  if (nowM === 0) return { refused: 'same point' };
  const by = (lengthM - nowM) / nowM;
  const sign = fixedEnd === 'first' ? 1 : -1;
  const [dx, dy] = [sign * by * (b[0] - a[0]), sign * by * (b[1] - a[1])];
  const end = fixedEnd === 'first' ? edge + 1 : edge;
  const beyond = fixedEnd === 'first' ? edge + 2 : edge - 1;
  const moving = carry === 'side' ? [end, beyond] : [end];
  const count = outline.points.length;
  const indices = new Set(moving.filter((i) => pointAt(outline, i) !== null).map((i) => ((i % count) + count) % count));
  return outline.points.map((point, i) => (indices.has(i) ? placed(shift(dx, dy), point) : point));
}

/**
 * Sets the angle at a point by turning one of its edges about it; lengths stay.
 * @param outline - shape
 * @param at - index of the point
 * @param angle - between 0 and 360, inside the area for a closed shape, to the left for a line [°]
 * @param turns - the edge that turns: before or after the point
 * @returns the points, or why it cannot be
 */
export function withAngle(outline: Outline, at: number, angle: number, turns: 'before' | 'after'): readonly PlanPoint[] | Refused {
  const now = angleDeg(outline, at);
  const point = pointAt(outline, at);
  if (now === null || point === null || !(angle > 0 && angle < 360)) return { refused: 'no such part' };
  const isLeft = !outline.closed || isLeftInside(outline.points);
  // To the left, the angle runs from the edge after the point to the edge before it.
  const by = (angle - now) * (isLeft === (turns === 'before') ? 1 : -1);
  const count = outline.points.length;
  const index = (((turns === 'before' ? at - 1 : at + 1) % count) + count) % count;
  const about = turn([point[0], point[1]], by);
  return outline.points.map((one, i) => (i === index ? placed(about, one) : one));
}
