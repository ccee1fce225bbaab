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
  for (let row = row0; row < row1; row++) {
    const line = across.subarray((row - row0) * width, (row - row0 + 1) * width);
    const base = row * columns;
    line.set(values.subarray(base + block.column0, base + block.column1));
    for (let shift = 1; shift <= span; shift++) {
      const weight = shift > reach.whole ? reach.fraction : 1;
      addBesides(values, base, columns, block.column0, line, shift, weight);
    }
  }
  for (let row = block.row0; row < block.row1; row++) {
    const line = out.subarray(row * columns + block.column0, row * columns + block.column1);
    const own = row - row0;
    line.set(across.subarray(own * width, (own + 1) * width));
    for (let shift = 1; shift <= span; shift++) {
      const weight = shift > reach.whole ? reach.fraction : 1;
      const below = own - shift;
      const above = own + shift;
      if (below >= 0 && above < row1 - row0) addPair(across, below * width, above * width, line, 0, width, weight);
      else if (below >= 0) addOne(across, below * width, line, 0, width, weight);
      else if (above < row1 - row0) addOne(across, above * width, line, 0, width, weight);
    }
  }
  return out;
}

/** Adds, to each cell of a row's stretch, its neighbours `shift` cells to the left and right, where the grid has them. */
function addBesides(
  values: Float64Array,
  base: number,
  columns: number,
  column0: number,
  line: Float64Array,
  shift: number,
  weight: number,
): void {
  const end = column0 + line.length;
  const onlyRight = Math.max(column0, Math.min(end, shift));
  const onlyLeft = Math.min(end, Math.max(onlyRight, columns - shift));
  const right = Math.min(onlyRight, columns - shift);
  if (right > column0) addOne(values, base + column0 + shift, line, 0, right - column0, weight);
  if (onlyLeft > onlyRight) {
    addPair(values, base + onlyRight - shift, base + onlyRight + shift, line, onlyRight - column0, onlyLeft - onlyRight, weight);
  }
  const left = Math.max(onlyLeft, shift);
  if (end > left) addOne(values, base + left - shift, line, left - column0, end - left, weight);
}

/** Terms are added in the same order whatever the block, so that a part done anew equals the whole to the bit. */
function addPair(from: Float64Array, a: number, b: number, to: Float64Array, toAt: number, count: number, weight: number): void {
  if (weight === 1) for (let i = 0; i < count; i++) to[toAt + i] += from[a + i] + from[b + i];
  else for (let i = 0; i < count; i++) to[toAt + i] += weight * (from[a + i] + from[b + i]);
}

function addOne(from: Float64Array, fromAt: number, to: Float64Array, toAt: number, count: number, weight: number): void {
  for (let i = 0; i < count; i++) to[toAt + i] += weight * from[fromAt + i];
}

/**
 * Greatest patch among some cells.
 * @param patchKNm2 - patch centred on each cell [kN/m²]
 * @param cells - cells to judge [-]
 * @returns greatest patch and the cell it is centred on; cell -1 for no cells [kN/m²]
 * @source contract.md, section 2, Patch
 */
export function greatestPatch(patchKNm2: Float64Array, cells: Int32Array): { kNm2: number; cell: number } {
  let best = -1;
  let bestCell = -1;
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i];
    const patch = patchKNm2[cell];
    if (patch > best) {
      best = patch;
      bestCell = cell;
    }
  }
  return { kNm2: bestCell < 0 ? 0 : best, cell: bestCell };
}

/**
 * Area of deck in each window.
 * @param deckSums - window sums of deck shares, in whole cells [-]
 * @param reach - reach of the window [-]
 * @param cellM - side of a cell [m]
 * @returns area; where the window lies within one cell, its part of that cell's deck [m²]
 * @source none: arithmetic
 */
export function windowAreasM2(deckSums: Float64Array, reach: WindowReach, cellM: number): Float64Array {
  const unitM2 = reach.whole < 0 ? PATCH_M * PATCH_M : cellM * cellM;
  return deckSums.map((sum) => sum * unitM2);
}
