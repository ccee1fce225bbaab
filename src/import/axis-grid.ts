/** Drawn axes to a grid: two directions at right angles, distances between neighbours. */

import type { AxisGrid } from '../model/drawing.ts';
import type { PointM } from '../model/scene-file.ts';

interface Edge {
  readonly from: PointM;
  readonly to: PointM;
  readonly lengthM: number;
  readonly angle: number;
}

const RIGHT = Math.PI / 2;
/** Directions nearer than this are one [rad]: half a degree. */
const SAME_DIRECTION = Math.PI / 360;
/** Parallel lines nearer than this are one axis [m]. */
const SAME_AXIS_M = 0.05;
/** Shorter pieces are no axes but marks at their ends, as a share of the longest. */
const LEAST_SHARE = 0.2;

/**
 * Finds the grid in drawn lines.
 * @param lines - lines of the axes' layer
 * @returns the grid, or null where they do not make one: fewer than two axes in a direction, or other angles
 */
export function axisGridOf(lines: readonly (readonly PointM[])[]): AxisGrid | null {
  const all = lines.flatMap((points) => points.slice(1).map((to, i) => edgeOf(points[i], to)));
  const longest = all.reduce((most, { lengthM }) => Math.max(most, lengthM), 0);
  const edges = all.filter(({ lengthM }) => lengthM >= LEAST_SHARE * longest && lengthM > 0);
  if (edges.length < 4) return null;
  const turn = mainDirection(edges);
  if (turn === null) return null;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const alongOf = ([x, y]: PointM) => cos * x + sin * y;
  const acrossOf = ([x, y]: PointM) => cos * y - sin * x;
  // Axes that run across have one place along, and the other way round.
  const isAlong = ({ angle }: Edge) => apart(angle, turn, Math.PI) < SAME_DIRECTION;
  const along = places(
    edges.filter((edge) => !isAlong(edge)),
    alongOf,
  );
  const across = places(edges.filter(isAlong), acrossOf);
  if (along.length < 2 || across.length < 2) return null;
  const at: PointM = [cos * along[0] - sin * across[0], sin * along[0] + cos * across[0]];
  return { at, turnDeg: (turn * 180) / Math.PI, alongM: steps(along), acrossM: steps(across) };
}

function edgeOf(from: PointM, to: PointM): Edge {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return { from, to, lengthM: Math.hypot(dx, dy), angle: Math.atan2(dy, dx) };
}

/** Least difference of two directions that repeat after a period. */
function apart(a: number, b: number, period: number): number {
  const turn = (((a - b) % period) + period) % period;
  return Math.min(turn, period - turn);
}

/** Mean direction, taken to the quarter turn that the longest edge lies in; null where an edge runs otherwise. */
function mainDirection(edges: readonly Edge[]): number | null {
  const first = edges.reduce((best, edge) => (edge.lengthM > best.lengthM ? edge : best)).angle;
  let [sum, weight] = [0, 0];
  for (const { angle, lengthM } of edges) {
    if (apart(angle, first, RIGHT) > SAME_DIRECTION) return null;
    const off = (((angle - first) % RIGHT) + 1.5 * RIGHT) % RIGHT;
    sum += lengthM * (off - RIGHT / 2);
    weight += lengthM;
  }
  const turn = first + sum / weight;
  // Between -45° and 45°, so that the first direction is the one nearer to x.
  return turn - RIGHT * Math.round(turn / RIGHT);
}

/** Places of parallel lines in order, those at the same place once. */
function places(edges: readonly Edge[], placeOf: (point: PointM) => number): number[] {
  const sorted = edges.map(({ from, to }) => (placeOf(from) + placeOf(to)) / 2).sort((a, b) => a - b);
  const kept: number[] = [];
  for (const place of sorted) if (kept.length === 0 || place - kept[kept.length - 1] > SAME_AXIS_M) kept.push(place);
  return kept;
}

function steps(sorted: readonly number[]): number[] {
  return sorted.slice(1).map((place, i) => Math.round((place - sorted[i]) * 1e6) / 1e6);
}
