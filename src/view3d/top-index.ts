/** The uppermost drawn surface at many places: triangles of all prisms sorted into squares once per picture. */

import type { Picture, Prism } from '../model/picture.ts';
import type { PartState } from './part-states.ts';
import { highestShown, type TopAt } from './top-at.ts';

/** What lies on top at a place in plan; null where nothing is drawn. */
export type SurfaceAt = (x: number, y: number) => TopAt | null;

/** Squares along the longer side of the model, and the least side of one [m]. */
const SQUARES = 128;
const LEAST_M = 1;

interface Squares {
  readonly x0M: number;
  readonly y0M: number;
  readonly sideM: number;
  readonly columns: number;
  readonly rows: number;
  /** Of each square, where its triangles begin in `prisms` and `triangles`. */
  readonly start: Int32Array;
  readonly prisms: Int32Array;
  readonly triangles: Int32Array;
}

const known = new WeakMap<Picture, Squares>();

/**
 * Surface as drawn, for many questions.
 * @param picture - picture
 * @param states - states of its parts
 * @returns what lies on top at a point, local [m]
 */
export function surfaceOf(picture: Picture, states: readonly PartState[]): SurfaceAt {
  const squares = known.get(picture) ?? squaresOf(picture);
  known.set(picture, squares);
  const layers = picture.prisms.map((prism) => highestShown(prism, states));
  return (x, y) => {
    const column = Math.floor((x - squares.x0M) / squares.sideM);
    const row = Math.floor((y - squares.y0M) / squares.sideM);
    if (column < 0 || row < 0 || column >= squares.columns || row >= squares.rows) return null;
    const square = row * squares.columns + column;
    const at: Point = [x, y];
    let best = -1;
    let bestFloor = -1;
    let bestM = 0;
    for (let i = squares.start[square]; i < squares.start[square + 1]; i++) {
      const prism = picture.prisms[squares.prisms[i]];
      const layer = layers[squares.prisms[i]];
      if (layer < 0) continue;
      const zM = levelIn(prism, layer + 1, squares.triangles[i], at);
      if (Number.isNaN(zM)) continue;
      const part = prism.parts[layer];
      const { floor } = picture.parts[part];
      if (floor < bestFloor || (floor === bestFloor && zM <= bestM)) continue;
      best = part;
      bestFloor = floor;
      bestM = zM;
    }
    return best < 0 ? null : { part: best, zM: bestM };
  };
}

function squaresOf(picture: Picture): Squares {
  const { min, max } = picture.boundsM;
  const sideM = Math.max(LEAST_M, Math.max(max[0] - min[0], max[1] - min[1]) / SQUARES);
  const columns = Math.max(1, Math.ceil((max[0] - min[0]) / sideM) + 1);
  const rows = Math.max(1, Math.ceil((max[1] - min[1]) / sideM) + 1);
  const place = { x0M: min[0], y0M: min[1], sideM, columns, rows };
  const start = new Int32Array(columns * rows + 1);
  visit(picture.prisms, place, (square) => start[square + 1]++);
  for (let square = 0; square < columns * rows; square++) start[square + 1] += start[square];
  const next = start.slice();
  const prisms = new Int32Array(start[columns * rows]);
  const triangles = new Int32Array(prisms.length);
  visit(picture.prisms, place, (square, prism, triangle) => {
    prisms[next[square]] = prism;
    triangles[next[square]++] = triangle;
  });
  return { ...place, start, prisms, triangles };
}

/** Every triangle with every square that its box touches. */
function visit(
  prisms: readonly Prism[],
  { x0M, y0M, sideM, columns, rows }: Pick<Squares, 'x0M' | 'y0M' | 'sideM' | 'columns' | 'rows'>,
  take: (square: number, prism: number, triangle: number) => void,
): void {
  const clamp = (value: number, most: number) => Math.min(most - 1, Math.max(0, Math.floor(value / sideM)));
  prisms.forEach(({ plan, triangles }, prism) => {
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [2 * triangles[t], 2 * triangles[t + 1], 2 * triangles[t + 2]];
      const column1 = clamp(Math.max(plan[a], plan[b], plan[c]) - x0M, columns);
      const row1 = clamp(Math.max(plan[a + 1], plan[b + 1], plan[c + 1]) - y0M, rows);
      const column0 = clamp(Math.min(plan[a], plan[b], plan[c]) - x0M, columns);
      for (let row = clamp(Math.min(plan[a + 1], plan[b + 1], plan[c + 1]) - y0M, rows); row <= row1; row++) {
        for (let column = column0; column <= column1; column++) take(row * columns + column, prism, t / 3);
      }
    }
  });
}

type Point = readonly [number, number];

/** A point this little outside a triangle lies on its edge, as a share of it. */
const SLACK = -1e-9;

/** Level of a surface at a point; NaN outside the triangle. */
function levelIn({ plan, triangles, heights }: Prism, surface: number, triangle: number, [x, y]: Point): number {
  const i = triangles[3 * triangle];
  const j = triangles[3 * triangle + 1];
  const k = triangles[3 * triangle + 2];
  const ax = plan[2 * i];
  const ay = plan[2 * i + 1];
  const ux = plan[2 * j] - ax;
  const uy = plan[2 * j + 1] - ay;
  const vx = plan[2 * k] - ax;
  const vy = plan[2 * k + 1] - ay;
  const twice = ux * vy - vx * uy;
  const b = ((x - ax) * vy - vx * (y - ay)) / twice;
  const c = (ux * (y - ay) - (x - ax) * uy) / twice;
  // A triangle without area gives no number, and none of these holds.
  if (!(b >= SLACK && c >= SLACK && 1 - b - c >= SLACK)) return Number.NaN;
  const from = surface * (plan.length / 2);
  return (1 - b - c) * heights[from + i] + b * heights[from + j] + c * heights[from + k];
}
