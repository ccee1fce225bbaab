/**
 * The patch: greatest mean load over a window of 1.0 m × 1.0 m. Unlike a peak it does not depend on the cell size, so
 * line and point-like loads are judged by it.
 */

import type { GridShape } from '../../model/maps.ts';
import type { CellBlock } from '../geometry/grid.ts';

/** Side of the window [m]; contract.md, section 2, Patch. */
export const PATCH_M = 1;

/** How far a window reaches from its centre, in cells: whole cells on each side, then a fraction of the next. */
export interface WindowReach {
  readonly whole: number;
  readonly fraction: number;
}

/**
 * Reach of the window on a grid.
 * @param cellM - side of a cell [m]
 * @returns whole cells each side of the centre cell and the fraction of the next; -1 whole where the window lies within the centre cell [-]
 * @source contract.md, section 2, Patch
 */
export function windowReach(cellM: number): WindowReach {
  const beyondCentreCell = PATCH_M / cellM / 2 - 0.5;
  if (beyondCentreCell <= 0) return { whole: -1, fraction: 0 };
  const whole = Math.floor(beyondCentreCell + 1e-9);
  const fraction = beyondCentreCell - whole;
  return { whole, fraction: fraction < 1e-9 ? 0 : fraction };
}

/**
 * Sums of a field over windows centred on each cell of a block: full cells count whole, cells cut by the window by area.
 * @param values - field per whole cell, whole grid; must be right also within the window's reach around the block [kN/m²]
 * @param grid - grid [m]
 * @param reach - reach of the window [-]
 * @param block - cells to write [-]
 * @param out - receives the sums, whole grid, in units of whole cells [kN/m²]
 * @returns the same array [kN/m²]
 * @source none: arithmetic
 */
export function windowSums(values: Float64Array, grid: GridShape, reach: WindowReach, block: CellBlock, out: Float64Array): Float64Array {
  const { columns, rows } = grid;
  const width = block.column1 - block.column0;
  if (reach.whole < 0) {
    for (let row = block.row0; row < block.row1; row++) {
      const from = row * columns + block.column0;
      out.set(values.subarray(from, from + width), from);
    }
    return out;
  }
  const span = reach.whole + (reach.fraction > 0 ? 1 : 0);
  const row0 = Math.max(0, block.row0 - span);
  const row1 = Math.min(rows, block.row1 + span);
  const across = new Float64Array(width * (row1 - row0));
  const prefix = new Float64Array(columns + 1);
  for (let row = row0; row < row1; row++) {
    rowSums(values, row * columns, columns, reach, block, prefix, across.subarray((row - row0) * width, (row - row0 + 1) * width));
  }
  const running = new Float64Array(width);
  for (let row = block.row0; row < block.row1; row++) {
    // Summed anew for each row of few terms, carried on otherwise: either way no error builds up over many rows.
    columnSums(across, width, row - row0, row1 - row0, reach, running);
    out.set(running, row * columns + block.column0);
  }
  return out;
}

function rowSums(
  values: Float64Array,
  base: number,
  columns: number,
  reach: WindowReach,
  block: CellBlock,
  prefix: Float64Array,
  out: Float64Array,
): void {
  const { whole, fraction } = reach;
  const first = Math.max(0, block.column0 - whole - 1);
  const end = Math.min(columns, block.column1 + whole + 1);
  prefix[first] = 0;
  for (let c = first; c < end; c++) prefix[c + 1] = prefix[c] + values[base + c];
  for (let c = block.column0; c < block.column1; c++) {
    const a = c - whole;
    const b = c + whole + 1;
    let sum = prefix[b < columns ? b : columns] - prefix[a > 0 ? a : 0];
    if (fraction > 0) {
      if (a > 0) sum += fraction * values[base + a - 1];
      if (b < columns) sum += fraction * values[base + b];
    }
    out[c - block.column0] = sum;
  }
}

function columnSums(across: Float64Array, width: number, row: number, rows: number, reach: WindowReach, out: Float64Array): void {
  const { whole, fraction } = reach;
  out.fill(0);
  const low = Math.max(0, row - whole);
  const high = Math.min(rows - 1, row + whole);
  for (let r = low; r <= high; r++) {
    const base = r * width;
    for (let c = 0; c < width; c++) out[c] += across[base + c];
  }
  if (fraction === 0) return;
  for (const r of [row - whole - 1, row + whole + 1]) {
    if (r < 0 || r >= rows) continue;
    const base = r * width;
    for (let c = 0; c < width; c++) out[c] += fraction * across[base + c];
  }
}

/**
 * Patch loads: window sums of the load over window sums of the deck, where the cell's centre is on the deck.
 * @param loadSums - window sums of load per whole cell [kN/m²]
 * @param deckSums - window sums of deck shares [-]
 * @param cells - cells to judge [-]
 * @returns greatest patch and the cell it is centred on; cell -1 for no cells [kN/m²]
 * @source contract.md, section 2, Patch
 */
export function greatestPatch(loadSums: Float64Array, deckSums: Float64Array, cells: Int32Array): { kNm2: number; cell: number } {
  let best = -1;
  let bestCell = -1;
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i];
    const patch = loadSums[cell] / deckSums[cell];
    if (patch > best) {
      best = patch;
      bestCell = cell;
    }
  }
  return { kNm2: bestCell < 0 ? 0 : best, cell: bestCell };
}
