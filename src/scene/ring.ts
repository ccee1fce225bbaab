/** One ring of a polygon: its edges, its area, and whether it is simple. */

import type { PointM, PolygonM } from '../model/scene-file.ts';
import { boxOf, type Contact, contactOf, type Segment, samePoint, side } from './segment-contact.ts';
import { type Box, sweepBoxes } from './sweep-boxes.ts';

/** Edge of a ring; from and to are positions in the file's list. */
export interface RingEdge extends Segment {
  readonly ring: Ring;
  readonly order: number;
  readonly from: number;
  readonly to: number;
}

export interface Ring extends Box {
  /** Without repeated neighbours and without a closing point. */
  readonly points: readonly PointM[];
  readonly edges: readonly RingEdge[];
}

export interface SelfContact {
  readonly contact: Contact;
  readonly edges: readonly [RingEdge, RingEdge];
}

/** Least area taken for an area [m²]: one square millimetre. */
const LEAST_AREA_M2 = 1e-6;

/**
 * Prepares a ring.
 * @param polygon - as in the file, open or closed
 * @returns the ring
 */
export function ringOf(polygon: PolygonM): Ring {
  const kept = polygon
    .map((at, index) => ({ at, index }))
    .filter(({ at, index }) => index === 0 || !samePoint(at, polygon[index - 1] ?? at));
  const [first] = kept;
  while (first !== undefined && kept.length > 1 && samePoint(kept.at(-1)?.at ?? first.at, first.at)) kept.pop();
  const points = kept.map(({ at }) => at);
  const edges: RingEdge[] = [];
  const ring: Ring = { points, edges, ...boxAround(points) };
  for (const [order, start] of kept.entries()) {
    const end = kept[(order + 1) % kept.length] ?? start;
    if (end !== start) edges.push({ ring, order, from: start.index, to: end.index, a: start.at, b: end.at, ...boxOf(start.at, end.at) });
  }
  return ring;
}

function boxAround(points: readonly PointM[]): Box {
  const box = { minX: Infinity, maxX: -Infinity, minY: Infinity, maxY: -Infinity };
  for (const [x, y] of points) {
    box.minX = Math.min(box.minX, x);
    box.maxX = Math.max(box.maxX, x);
    box.minY = Math.min(box.minY, y);
    box.maxY = Math.max(box.maxY, y);
  }
  return box;
}

/** Number of different points, as far as three. */
export function distinctPoints(points: readonly PointM[]): number {
  const [first] = points;
  if (first === undefined) return 0;
  const second = points.find((p) => !samePoint(p, first));
  if (second === undefined) return 1;
  return points.some((p) => !samePoint(p, first) && !samePoint(p, second)) ? 3 : 2;
}

/**
 * Area of a simple ring. Taken from its first point: national-grid coordinates would lose digits otherwise.
 * @param points - corners
 * @returns area, never negative [m²]
 */
export function areaOf(points: readonly PointM[]): number {
  const [origin] = points;
  if (origin === undefined) return 0;
  let twice = 0;
  let [lastX, lastY] = [0, 0];
  for (const [x, y] of points) {
    twice += lastX * (y - origin[1]) - (x - origin[0]) * lastY;
    [lastX, lastY] = [x - origin[0], y - origin[1]];
  }
  return Math.abs(twice) / 2;
}

/** Whether all points lie on one line, or so nearly that they enclose nothing. */
export function isFlat(ring: Ring): boolean {
  const [a, b] = ring.points;
  if (a === undefined || b === undefined) return true;
  return ring.points.every((p) => side(a, b, p) === 0);
}

export function enclosesNothing(ring: Ring): boolean {
  return areaOf(ring.points) < LEAST_AREA_M2;
}

/**
 * Places where a ring crosses or touches itself.
 * @param ring - the ring
 * @param most - number of places after which the search ends
 * @returns the first places found
 */
export function selfContacts(ring: Ring, most: number): readonly SelfContact[] {
  const found: SelfContact[] = [];
  sweepBoxes(ring.edges, (s, t) => {
    const contact = contactOf(s, t);
    const apart = Math.abs(s.order - t.order);
    const neighbours = apart === 1 || apart === ring.edges.length - 1;
    if (contact !== null && !(neighbours && contact.kind === 'touch')) found.push({ contact, edges: s.order < t.order ? [s, t] : [t, s] });
    return found.length < most;
  });
  return found;
}

/**
 * Whether a point lies in a ring.
 * @param p - the point
 * @param ring - a simple ring
 * @returns 1 inside, 0 exactly on the edge, -1 outside
 */
export function pointInRing(p: PointM, ring: Ring): -1 | 0 | 1 {
  if (p[0] < ring.minX || p[0] > ring.maxX || p[1] < ring.minY || p[1] > ring.maxY) return -1;
  let inside = false;
  for (const edge of ring.edges) {
    if (p[1] < edge.minY || p[1] > edge.maxY || p[0] > edge.maxX) continue;
    const where = side(edge.a, edge.b, p);
    if (where === 0 && p[0] >= edge.minX) return 0;
    const upward = edge.a[1] <= p[1] && edge.b[1] > p[1];
    const downward = edge.b[1] <= p[1] && edge.a[1] > p[1];
    if ((upward && where > 0) || (downward && where < 0)) inside = !inside;
  }
  return inside ? 1 : -1;
}
