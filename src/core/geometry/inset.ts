/** The line at an even distance inside a region's rims: sides moved inwards, arcs round corners that stand in, and nothing nearer to any rim. */

import type { Region } from '../../model/deck-input.ts';
import { ringsOf } from './ring.ts';

/** Greatest turn of one chord of an arc [rad]: 2 m round a corner it leaves the circle by less than 1 mm. */
const ARC_STEP = (3.5 * Math.PI) / 180;
/** A piece this little nearer to a rim is rounding [m]. */
const SLACK_M = 1e-9;
/** Shorter pieces are nothing to draw [m]. */
const NOTHING_M = 1e-6;

type Piece = readonly [number, number, number, number];

/**
 * Pieces of the line inside a region that keep a distance from all its rims, outline and openings alike.
 * @param region - region, outline counter-clockwise, holes clockwise [m]
 * @param distanceM - distance to the nearest rim [m]
 * @returns ax ay bx by per piece, on no order; arcs as chords that touch them [m]
 * @source none: geometry
 */
export function insetPieces(region: Region, distanceM: number): Float64Array {
  const sides = ringsOf(region).flatMap(sidesOf);
  const out: number[] = [];
  for (const piece of moved(region, distanceM)) {
    let left: [number, number][] = [[0, 1]];
    for (const side of sides) {
      if (left.length === 0) break;
      const near = nearSpan(piece, side, distanceM - SLACK_M);
      if (near) left = without(left, near);
    }
    const [ax, ay, bx, by] = piece;
    const lengthM = Math.hypot(bx - ax, by - ay);
    for (const [from, to] of left) {
      if ((to - from) * lengthM < NOTHING_M) continue;
      out.push(ax + from * (bx - ax), ay + from * (by - ay), ax + to * (bx - ax), ay + to * (by - ay));
    }
  }
  return Float64Array.from(out);
}

function sidesOf(ring: Float64Array): Piece[] {
  const sides: Piece[] = [];
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) sides.push([ring[j], ring[j + 1], ring[i], ring[i + 1]]);
  return sides.filter(([ax, ay, bx, by]) => ax !== bx || ay !== by);
}

/** Every side moved to its left, where the region is, and arcs about corners at which the region turns by more than 180°. */
function moved(region: Region, distanceM: number): Piece[] {
  return ringsOf(region).flatMap((ring) => {
    const sides = sidesOf(ring);
    return sides.flatMap((side, i) => {
      const [ax, ay, bx, by] = side;
      const [nx, ny] = normalOf(side);
      const offset: Piece = [ax + nx * distanceM, ay + ny * distanceM, bx + nx * distanceM, by + ny * distanceM];
      return [offset, ...arcAt([bx, by], [nx, ny], normalOf(sides[(i + 1) % sides.length]), distanceM)];
    });
  });
}

type Vector = readonly [number, number];

function normalOf([ax, ay, bx, by]: Piece): Vector {
  const length = Math.hypot(bx - ax, by - ay);
  return [-(by - ay) / length, (bx - ax) / length];
}

function arcAt([x, y]: Vector, from: Vector, to: Vector, radiusM: number): Piece[] {
  const turn = Math.atan2(from[0] * to[1] - from[1] * to[0], from[0] * to[0] + from[1] * to[1]);
  // To the left the region's corner stands out, and the moved sides cross.
  if (turn >= 0) return [];
  const steps = Math.ceil(-turn / ARC_STEP);
  const start = Math.atan2(from[1], from[0]);
  // Chords touch the circle from outside: never nearer to the corner than asked.
  const reachM = radiusM / Math.cos(turn / steps / 2);
  const at = (k: number): Vector => {
    const angle = start + (turn * k) / steps;
    return [x + reachM * Math.cos(angle), y + reachM * Math.sin(angle)];
  };
  return Array.from({ length: steps }, (_, k): Piece => [...at(k), ...at(k + 1)]);
}

/** The one stretch of a piece that is nearer to a side than allowed, as shares; what is near a straight side is convex. */
function nearSpan([ax, ay, bx, by]: Piece, [cx, cy, dx, dy]: Piece, distanceM: number): readonly [number, number] | null {
  const ux = bx - ax;
  const uy = by - ay;
  const lengthM = Math.hypot(dx - cx, dy - cy);
  const [ex, ey] = [(dx - cx) / lengthM, (dy - cy) / lengthM];
  let low = Infinity;
  let high = -Infinity;
  const take = (from: number, to: number) => {
    low = Math.min(low, from);
    high = Math.max(high, to);
  };
  // Beside the side: within the rectangle along it.
  const beside = common(
    within((ax - cx) * ex + (ay - cy) * ey, ux * ex + uy * ey, 0, lengthM),
    within((ay - cy) * ex - (ax - cx) * ey, uy * ex - ux * ey, -distanceM, distanceM),
  );
  if (beside) take(...beside);
  // Round its ends.
  for (const [px, py] of [
    [cx, cy],
    [dx, dy],
  ]) {
    const a = ux * ux + uy * uy;
    const half = ux * (ax - px) + uy * (ay - py);
    const root = half * half - a * ((ax - px) ** 2 + (ay - py) ** 2 - distanceM ** 2);
    if (root > 0) take((-half - Math.sqrt(root)) / a, (-half + Math.sqrt(root)) / a);
  }
  return low < high ? [low, high] : null;
}

/** Shares at which start + share · step lies between two values. */
function within(start: number, step: number, least: number, most: number): readonly [number, number] | null {
  if (Math.abs(step) < 1e-15) return start > least && start < most ? [-Infinity, Infinity] : null;
  const p = (least - start) / step;
  const q = (most - start) / step;
  return p < q ? [p, q] : [q, p];
}

function common(a: readonly [number, number] | null, b: readonly [number, number] | null): readonly [number, number] | null {
  if (!a || !b) return null;
  const from = Math.max(a[0], b[0]);
  const to = Math.min(a[1], b[1]);
  return from < to ? [from, to] : null;
}

function without(spans: readonly (readonly [number, number])[], [low, high]: readonly [number, number]): [number, number][] {
  return spans.flatMap(([from, to]): [number, number][] => {
    if (high <= from || low >= to) return [[from, to]];
    const kept: [number, number][] = [];
    if (low > from) kept.push([from, low]);
    if (high < to) kept.push([high, to]);
    return kept;
  });
}
