/**
 * Fewer spots for nearly the same net: those are kept through which the net passes no left-out spot by more than a tolerance.
 * The deviation is measured on the very net that is calculated with, its breaklines and its extension beyond the boundary included.
 */

import type { LevelNet } from '../../model/deck-input.ts';
import { netSurface } from './net.ts';
import { type NetSurface, triangleSlopes } from './surface.ts';

export interface ThinnedNet {
  readonly toleranceM: number;
  /** Positions of the spots kept, rising. */
  readonly kept: Uint32Array;
  /** Greatest distance of a left-out spot from the net above or below it [m]. */
  readonly greatestM: number;
}

/** Spots per box of the search, about. */
const PER_BOX = 4;
/** A spot this little outside a triangle still counts as in it, so that none is lost between two [m]. */
const ON_SIDE_M = 1e-9;
/** Twice the area below which a triangle has no plane to speak of [m²]. */
const LEAST_M2 = 1e-12;

/**
 * Keeps as few spots as greatest deviation first finds, for each of several tolerances, the widest first. Every round keeps, triangle by
 * triangle, the spot that lies furthest from the net so far.
 * @param net - spots and breaklines, local [m]
 * @param tolerancesM - greatest deviations allowed, falling [m]
 * @param most - greatest number of spots kept; a tolerance that needs more, and all after it, have no result [-]
 * @returns one result per tolerance reached, in their order; yields the share done, 0 … 1 [m]
 * @source Garland, M.; Heckbert, P. S.: Fast Polygonal Approximation of Terrains and Height Fields, CMU-CS-95-181 (1995), greedy insertion;
 * several spots per round as in Puppo, E. et al.: Parallel terrain triangulation, Int. J. Geographical Information Systems 8 (1994) 105
 */
export function* thinNet(net: LevelNet, tolerancesM: readonly number[], most: number): Generator<number, readonly ThinnedNet[]> {
  const boxes = boxesOf(net.spots);
  const isKept = new Uint8Array(net.spots.length / 3);
  for (const i of extremes(net.spots)) isKept[i] = 1;
  const found: ThinnedNet[] = [];
  let share = 0;
  const corners = joined(net.breaklines);
  for (const [step, toleranceM] of tolerancesM.entries()) {
    // Breaklines take time. Their corners alone give nearly the same net; what that is still off is found with them.
    let exact = corners.length === 0;
    for (;;) {
      const kept = keptOf(isKept);
      if (kept.length > most) return found;
      const spots = pick(net.spots, kept);
      const surface = netSurface(
        exact ? { spots, breaklines: net.breaklines } : { spots: joined([spots, corners]), breaklines: [] },
        boxes.reachM,
      );
      // All spots at one place.
      if (surface.kind === 'plane') return found;
      yield share;
      const { worst, greatestM } = deviations(surface, boxes, isKept);
      if (greatestM <= toleranceM && exact) {
        found.push({ toleranceM, kept, greatestM });
        break;
      }
      exact ||= greatestM <= toleranceM;
      for (const [i, deviationM] of worst) if (deviationM > toleranceM) isKept[i] = 1;
      // How many rounds are to come is not known: nearer with each, never there.
      share = Math.max(share, (step + Math.min(0.9, toleranceM / greatestM)) / tolerancesM.length);
      yield share;
    }
  }
  return found;
}

function joined(lists: readonly Float64Array[]): Float64Array {
  const out = new Float64Array(lists.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const list of lists) {
    out.set(list, at);
    at += list.length;
  }
  return out;
}

function keptOf(isKept: Uint8Array): Uint32Array {
  const kept: number[] = [];
  for (let i = 0; i < isKept.length; i++) if (isKept[i] === 1) kept.push(i);
  return Uint32Array.from(kept);
}

function pick(spots: Float64Array, kept: Uint32Array): Float64Array {
  const out = new Float64Array(3 * kept.length);
  for (let k = 0; k < kept.length; k++) for (let axis = 0; axis < 3; axis++) out[3 * k + axis] = spots[3 * kept[k] + axis];
  return out;
}

/** The outermost spots in eight directions, to begin with. */
function extremes(spots: Float64Array): readonly number[] {
  const far = new Array<number>(8).fill(-Infinity);
  const at = new Array<number>(8).fill(0);
  for (let i = 0; i < spots.length; i += 3) {
    const [x, y] = [spots[i], spots[i + 1]];
    for (const [k, value] of [x, -x, y, -y, x + y, -x - y, x - y, y - x].entries()) if (value > far[k]) [far[k], at[k]] = [value, i / 3];
  }
  return at;
}

/** Spots sorted into the boxes of a grid, so that each triangle looks only at those near it. */
interface Boxes {
  readonly x0: number;
  readonly y0: number;
  readonly sizeM: number;
  readonly columns: number;
  readonly rows: number;
  /** Where the spots of each box begin, one entry more than boxes. */
  readonly starts: Uint32Array;
  /** Position of each spot in the list given, box by box. */
  readonly order: Uint32Array;
  /** x y z per spot in that order: neighbours lie side by side. */
  readonly sorted: Float64Array;
  /** Across all spots, and a metre more. */
  readonly reachM: number;
}

function boxesOf(spots: Float64Array): Boxes {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < spots.length; i += 3) {
    [x0, x1] = [Math.min(x0, spots[i]), Math.max(x1, spots[i])];
    [y0, y1] = [Math.min(y0, spots[i + 1]), Math.max(y1, spots[i + 1])];
  }
  const count = spots.length / 3;
  const [width, height] = [x1 - x0, y1 - y0];
  const reachM = Math.hypot(width, height) + 1;
  const sizeM = Math.max(Math.sqrt((PER_BOX * width * height) / count), (PER_BOX * reachM) / count, reachM / 4096);
  const [columns, rows] = [Math.floor(width / sizeM) + 1, Math.floor(height / sizeM) + 1];
  const boxOf = (i: number) => Math.floor((spots[3 * i + 1] - y0) / sizeM) * columns + Math.floor((spots[3 * i] - x0) / sizeM);
  const starts = new Uint32Array(columns * rows + 1);
  for (let i = 0; i < count; i++) starts[boxOf(i) + 1]++;
  for (let box = 0; box < columns * rows; box++) starts[box + 1] += starts[box];
  const next = starts.slice();
  const order = new Uint32Array(count);
  for (let i = 0; i < count; i++) order[next[boxOf(i)]++] = i;
  return { x0, y0, sizeM, columns, rows, starts, order, sorted: pick(spots, order), reachM };
}

interface Deviations {
  /** Spot and its deviation: of each triangle the worst, and each that lies in none [m]. */
  readonly worst: readonly (readonly [number, number])[];
  readonly greatestM: number;
}

function deviations(surface: NetSurface, boxes: Boxes, isKept: Uint8Array): Deviations {
  const { order } = boxes;
  const seen = new Uint8Array(order.length);
  for (let k = 0; k < order.length; k++) seen[k] = isKept[order[k]];
  const worst: (readonly [number, number])[] = [];
  let greatestM = 0;
  for (let t = 0; t < surface.triangles.length; t += 3) {
    const [k, deviationM] = worstIn(surface, t, boxes, seen);
    if (k < 0) continue;
    worst.push([order[k], deviationM]);
    greatestM = Math.max(greatestM, deviationM);
  }
  for (let k = seen.indexOf(0); k >= 0; k = seen.indexOf(0, k + 1)) {
    worst.push([order[k], Infinity]);
    greatestM = Infinity;
  }
  return { worst, greatestM };
}

/** Sides of a triangle as lines: a x + b y + c is the distance to the left [m]. */
const SIDES = new Float64Array(9);

/** The spot furthest from the plane of one triangle, by its place in the boxes, and how far; −1 where none lies in it. Those in it are marked. */
function worstIn({ points, triangles }: NetSurface, t: number, boxes: Boxes, seen: Uint8Array): readonly [number, number] {
  const corners = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
  const [a, b, c] = corners;
  const twiceM2 = (points[b] - points[a]) * (points[c + 1] - points[a + 1]) - (points[b + 1] - points[a + 1]) * (points[c] - points[a]);
  if (twiceM2 <= LEAST_M2) return [-1, 0];
  setSides(points, corners);
  const [slopeX, slopeY] = triangleSlopes(points, a, b, c);
  const levelM = points[a + 2] - slopeX * points[a] - slopeY * points[a + 1];
  const { sorted, x0, y0, sizeM, columns, rows, starts } = boxes;
  const low = Math.min(points[a + 1], points[b + 1], points[c + 1]);
  const high = Math.max(points[a + 1], points[b + 1], points[c + 1]);
  const lastRow = Math.min(rows - 1, Math.floor((high + ON_SIDE_M - y0) / sizeM));
  let worst = -1;
  let greatestM = -1;
  for (let row = Math.max(0, Math.floor((low - ON_SIDE_M - y0) / sizeM)); row <= lastRow; row++) {
    const [left, right] = widthIn(points, corners, y0 + row * sizeM - ON_SIDE_M, y0 + (row + 1) * sizeM + ON_SIDE_M);
    const first = Math.max(0, Math.floor((left - ON_SIDE_M - x0) / sizeM));
    const last = Math.min(columns - 1, Math.floor((right + ON_SIDE_M - x0) / sizeM));
    if (first > last) continue;
    // Boxes of one row lie one after the other.
    const end = starts[row * columns + last + 1];
    for (let k = starts[row * columns + first]; k < end; k++) {
      const x = sorted[3 * k];
      const y = sorted[3 * k + 1];
      if (seen[k] === 1 || !isInside(x, y)) continue;
      seen[k] = 1;
      const deviationM = Math.abs(sorted[3 * k + 2] - levelM - slopeX * x - slopeY * y);
      if (deviationM > greatestM) [worst, greatestM] = [k, deviationM];
    }
  }
  return [worst, greatestM];
}

function setSides(points: Float64Array, corners: readonly number[]): void {
  for (let e = 0; e < 3; e++) {
    const p = corners[e];
    const q = corners[e === 2 ? 0 : e + 1];
    const lengthM = Math.hypot(points[q] - points[p], points[q + 1] - points[p + 1]);
    SIDES[3 * e] = (points[p + 1] - points[q + 1]) / lengthM;
    SIDES[3 * e + 1] = (points[q] - points[p]) / lengthM;
    SIDES[3 * e + 2] = -SIDES[3 * e] * points[p] - SIDES[3 * e + 1] * points[p + 1];
  }
}

function isInside(x: number, y: number): boolean {
  return (
    SIDES[0] * x + SIDES[1] * y + SIDES[2] >= -ON_SIDE_M &&
    SIDES[3] * x + SIDES[4] * y + SIDES[5] >= -ON_SIDE_M &&
    SIDES[6] * x + SIDES[7] * y + SIDES[8] >= -ON_SIDE_M
  );
}

/** From where to where a triangle reaches between two heights. */
function widthIn(points: Float64Array, corners: readonly number[], low: number, high: number): [number, number] {
  let [left, right] = [Infinity, -Infinity];
  for (let e = 0; e < 3; e++) {
    const [p, q] = [corners[e], corners[e === 2 ? 0 : e + 1]];
    const [from, to] = points[p + 1] <= points[q + 1] ? [p, q] : [q, p];
    const [yFrom, yTo] = [points[from + 1], points[to + 1]];
    if (yTo < low || yFrom > high) continue;
    const rise = yTo - yFrom;
    const perM = rise === 0 ? 0 : (points[to] - points[from]) / rise;
    const start = points[from] + Math.max(0, low - yFrom) * perM;
    const end = points[to] - Math.max(0, yTo - high) * perM;
    left = Math.min(left, start, end);
    right = Math.max(right, start, end);
  }
  return [left, right];
}
