/**
 * Exact area shares of polygons on the grid, by signed-area accumulation as in font rasterisers: every edge adds the
 * exact trapezoids it cuts off the cells it crosses, and carries its height to all cells right of it.
 */

import type { Ring } from '../../model/deck-input.ts';
import type { GridShape } from '../../model/maps.ts';

/** Sparse shares of one region: runs of full cells and a list of cells covered in part. */
export interface Coverage {
  /** First cell and end (exclusive) of each run of fully covered cells; runs never cross a row. */
  readonly runs: Int32Array;
  /** Cells covered in part, rising. */
  readonly cells: Int32Array;
  /** Share of each such cell, 0 < share < 1 [-]. */
  readonly shares: Float64Array;
}

/** Shares this close to 0 or 1 are rounding, not geometry [-]. */
const ROUNDING = 1e-12;

export interface Rasteriser {
  /**
   * @param rings - outer rings counter-clockwise, holes clockwise, local [m]
   * @returns shares of the grid's cells [-]
   */
  cover(rings: readonly Ring[]): Coverage;
  /**
   * @param rings - rings counter-clockwise, local [m]
   * @param weights - value each ring lays evenly over its area [-]
   * @param out - whole grid; every cell is raised to its mean of the summed values where that is greater [-]
   * @returns sum of the cells' means, before raising [-]
   */
  raise(rings: readonly Ring[], weights: readonly number[], out: Float32Array | Float64Array): number;
}

/**
 * A rasteriser with scratch arrays for one grid, to be used again and again.
 * @param grid - grid [m]
 * @returns rasteriser [-]
 * @source none: geometry; signed-area accumulation as in scan converters for fonts
 */
export function createRasteriser(grid: GridShape): Rasteriser {
  const { columns, rows } = grid;
  const width = columns + 2;
  const words = (width + 31) >>> 5;
  const scratch: Scratch = {
    columns,
    rows,
    width,
    words,
    area: new Float64Array(width * rows),
    carry: new Float64Array(width * rows),
    touched: new Uint32Array(words * rows),
    firstRow: rows,
    lastRow: -1,
  };
  const out = { runs: new Int32Array(1024), cells: new Int32Array(1024), shares: new Float64Array(1024) };
  return {
    cover(rings) {
      scratch.firstRow = rows;
      scratch.lastRow = -1;
      for (const ring of rings) addRing(scratch, ring, grid, 1);
      return sweep(scratch, out);
    },
    raise(rings, weights, field) {
      scratch.firstRow = rows;
      scratch.lastRow = -1;
      for (let i = 0; i < rings.length; i++) addRing(scratch, rings[i], grid, weights[i]);
      return raiseCells(scratch, field, wordsOf(rings, grid), ROUNDING * weights.reduce((sum, weight) => sum + weight, 0));
    },
  };
}

interface Scratch {
  readonly columns: number;
  readonly rows: number;
  readonly width: number;
  readonly words: number;
  /** Share each crossed cell gets from the edges inside it. */
  readonly area: Float64Array;
  /** Share handed on to this cell and all right of it. */
  readonly carry: Float64Array;
  readonly touched: Uint32Array;
  firstRow: number;
  lastRow: number;
}

function addRing(s: Scratch, ring: Ring, grid: GridShape, weight: number): void {
  const inverse = 1 / grid.cellM;
  const n = ring.length;
  let px = (ring[n - 2] - grid.x0M) * inverse;
  let py = (ring[n - 1] - grid.y0M) * inverse;
  for (let i = 0; i < n; i += 2) {
    const x = (ring[i] - grid.x0M) * inverse;
    const y = (ring[i + 1] - grid.y0M) * inverse;
    // Lower end first, sign afterwards: two zones that share an edge then add terms equal to the bit.
    if (py < y) addEdge(s, px, py, x, y, -weight);
    else if (y < py) addEdge(s, x, y, px, py, weight);
    px = x;
    py = y;
  }
}

/** Cuts an edge (y0 < y1, grid units) to the grid; what lies left of it counts at the left border, what lies right not at all. */
function addEdge(s: Scratch, x0: number, y0: number, x1: number, y1: number, sign: number): void {
  if (y1 <= 0 || y0 >= s.rows) return;
  const slope = (x1 - x0) / (y1 - y0);
  const ya = y0 < 0 ? 0 : y0;
  const yb = y1 > s.rows ? s.rows : y1;
  const xa = y0 < 0 ? x0 - y0 * slope : x0;
  const xb = y1 > s.rows ? x1 - (y1 - s.rows) * slope : x1;
  const end = s.columns;
  if (xa >= 0 && xb >= 0 && xa <= end && xb <= end) {
    addInside(s, xa, ya, xb, yb, sign);
    return;
  }
  // Break at the left and right border and push the outside pieces onto it.
  const breaks = [ya, yb];
  for (const border of [0, end]) {
    if (xa < border !== xb < border) breaks.push(ya + (border - xa) / slope);
  }
  breaks.sort((p, q) => p - q);
  for (let k = 0; k + 1 < breaks.length; k++) {
    const from = Math.max(breaks[k], ya);
    const to = Math.min(breaks[k + 1], yb);
    if (to <= from) continue;
    const xf = Math.min(end, Math.max(0, xa + (from - ya) * slope));
    const xt = Math.min(end, Math.max(0, xa + (to - ya) * slope));
    addInside(s, xf, from, xt, to, sign);
  }
}

function addInside(s: Scratch, x0: number, y0: number, x1: number, y1: number, sign: number): void {
  const slope = (x1 - x0) / (y1 - y0);
  const first = Math.floor(y0);
  const last = Math.min(s.rows - 1, Math.ceil(y1) - 1);
  if (first < s.firstRow) s.firstRow = first;
  if (last > s.lastRow) s.lastRow = last;
  let y = y0;
  let x = x0;
  for (let row = first; row <= last; row++) {
    const top = row + 1 < y1 ? row + 1 : y1;
    // Rounding must not carry a point over the border by a hair: that would write into the row before.
    const xTop = top === y1 ? x1 : Math.min(s.columns, Math.max(0, x0 + (top - y0) * slope));
    addInRow(s, row, x, xTop, (top - y) * sign);
    y = top;
    x = xTop;
  }
}

/** One edge piece within one row, from xa to xb, of signed height d. */
function addInRow(s: Scratch, row: number, xa: number, xb: number, d: number): void {
  const left = xa < xb ? xa : xb;
  const right = xa < xb ? xb : xa;
  const first = Math.floor(left);
  const last = Math.floor(right);
  const base = row * s.width;
  const mark = row * s.words;
  if (first === last) {
    s.area[base + first] += d * (first + 1 - (left + right) / 2);
  } else {
    const half = 0.5 / (right - left);
    let before = 0;
    for (let cell = first; cell <= last; cell++) {
      const t = cell + 1;
      const upTo = t < right ? (t - left) * (t - left) * half : t - (left + right) / 2;
      s.area[base + cell] += d * (upTo - before);
      before = upTo;
      s.touched[mark + (cell >>> 5)] |= 1 << (cell & 31);
    }
  }
  s.touched[mark + (first >>> 5)] |= 1 << (first & 31);
  const next = last + 1;
  s.carry[base + next] += d;
  s.touched[mark + (next >>> 5)] |= 1 << (next & 31);
}

interface Growing {
  runs: Int32Array;
  cells: Int32Array;
  shares: Float64Array;
}

/** Sums the rows from left to right, writes runs and mixed cells, and leaves the scratch arrays clean. */
function sweep(s: Scratch, out: Growing): Coverage {
  let runs = 0;
  let mixed = 0;
  for (let row = s.firstRow; row <= s.lastRow; row++) {
    const base = row * s.width;
    const cell0 = row * s.columns;
    let running = 0;
    let next = 0;
    let runStart = -1;
    for (let word = 0; word < s.words; word++) {
      let bits = s.touched[row * s.words + word];
      s.touched[row * s.words + word] = 0;
      while (bits !== 0) {
        const column = (word << 5) + (31 - Math.clz32(bits & -bits));
        bits &= bits - 1;
        const gapEnd = column < s.columns ? column : s.columns;
        if (gapEnd > next) {
          if (running > 1 - ROUNDING) {
            if (runStart < 0) runStart = next;
          } else {
            if (runStart >= 0) runs = pushRun(out, runs, cell0 + runStart, cell0 + next);
            runStart = -1;
            if (running > ROUNDING) for (let c = next; c < gapEnd; c++) mixed = pushCell(out, mixed, cell0 + c, running);
          }
        }
        const at = base + column;
        running += s.carry[at];
        const share = running + s.area[at];
        s.carry[at] = 0;
        s.area[at] = 0;
        if (column < s.columns) {
          if (share > 1 - ROUNDING) {
            if (runStart < 0) runStart = column;
          } else {
            if (runStart >= 0) runs = pushRun(out, runs, cell0 + runStart, cell0 + column);
            runStart = -1;
            if (share > ROUNDING) mixed = pushCell(out, mixed, cell0 + column, share);
          }
          next = column + 1;
        } else next = s.columns;
      }
    }
    if (next < s.columns && running > ROUNDING) {
      // The region goes on beyond the right border.
      if (running > 1 - ROUNDING) {
        if (runStart < 0) runStart = next;
      } else {
        if (runStart >= 0) runs = pushRun(out, runs, cell0 + runStart, cell0 + next);
        runStart = -1;
        for (let c = next; c < s.columns; c++) mixed = pushCell(out, mixed, cell0 + c, running);
      }
      next = s.columns;
    }
    if (runStart >= 0) runs = pushRun(out, runs, cell0 + runStart, cell0 + next);
  }
  return { runs: out.runs.slice(0, runs), cells: out.cells.slice(0, mixed), shares: out.shares.slice(0, mixed) };
}

/** First and last word of the marks that the rings can touch, so that a sweep need not read whole rows. */
function wordsOf(rings: readonly Ring[], { columns, cellM, x0M }: GridShape): readonly [number, number] {
  let low = Infinity;
  let high = -Infinity;
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 2) {
      if (ring[i] < low) low = ring[i];
      if (ring[i] > high) high = ring[i];
    }
  }
  // One column more on both sides for rounding, and one on the right for what is handed on.
  const column = (x: number, more: number) => Math.min(columns + 1, Math.max(0, Math.floor((x - x0M) / cellM) + more));
  return [column(low, -1) >>> 5, column(high, 2) >>> 5];
}

/** Like `sweep`, for weighted rings: sums the rows, raises the field, and leaves the scratch arrays clean. */
function raiseCells(s: Scratch, field: Float32Array | Float64Array, [first, last]: readonly [number, number], rounding: number): number {
  let total = 0;
  for (let row = s.firstRow; row <= s.lastRow; row++) {
    const base = row * s.width;
    const cell0 = row * s.columns;
    let running = 0;
    let next = 0;
    for (let word = first; word <= last; word++) {
      let bits = s.touched[row * s.words + word];
      s.touched[row * s.words + word] = 0;
      while (bits !== 0) {
        const column = (word << 5) + (31 - Math.clz32(bits & -bits));
        bits &= bits - 1;
        const end = column < s.columns ? column : s.columns;
        if (running !== 0) total += raiseRun(field, cell0 + next, cell0 + end, running);
        const at = base + column;
        running += s.carry[at];
        const value = running + s.area[at];
        s.carry[at] = 0;
        s.area[at] = 0;
        if (column < s.columns) {
          total += value;
          if (value > field[cell0 + column]) field[cell0 + column] = value;
        }
        next = column + 1;
        // What is left of a sum of weights is rounding once every ring is closed.
        if (running < rounding) running = 0;
      }
    }
    if (running !== 0 && next < s.columns) total += raiseRun(field, cell0 + next, cell0 + s.columns, running);
  }
  return total;
}

function raiseRun(field: Float32Array | Float64Array, from: number, to: number, value: number): number {
  for (let cell = from; cell < to; cell++) if (value > field[cell]) field[cell] = value;
  return to > from ? (to - from) * value : 0;
}

function pushRun(out: Growing, at: number, start: number, end: number): number {
  if (at + 2 > out.runs.length) out.runs = grownInts(out.runs);
  out.runs[at] = start;
  out.runs[at + 1] = end;
  return at + 2;
}

function pushCell(out: Growing, at: number, cell: number, share: number): number {
  if (at >= out.cells.length) {
    out.cells = grownInts(out.cells);
    const shares = new Float64Array(out.cells.length);
    shares.set(out.shares);
    out.shares = shares;
  }
  out.cells[at] = cell;
  out.shares[at] = share;
  return at + 1;
}

function grownInts(old: Int32Array): Int32Array<ArrayBuffer> {
  const grown = new Int32Array(old.length * 2);
  grown.set(old);
  return grown;
}

/**
 * Area a coverage stands for.
 * @param coverage - shares [-]
 * @param cellM - side of a cell [m]
 * @returns area [m²]
 * @source none: arithmetic
 */
export function coverageAreaM2(coverage: Coverage, cellM: number): number {
  let full = 0;
  for (let i = 0; i < coverage.runs.length; i += 2) full += coverage.runs[i + 1] - coverage.runs[i];
  let part = 0;
  for (let i = 0; i < coverage.shares.length; i++) part += coverage.shares[i];
  return (full + part) * cellM * cellM;
}
