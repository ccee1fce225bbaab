/** The square grid of the contract: cells of side c, corner at whole multiples of c in file coordinates. */

import type { Ring } from '../../model/deck-input.ts';
import type { GridShape } from '../../model/maps.ts';
import { boundsOf } from './ring.ts';

/**
 * Grid over the deck's outline.
 * @param outline - outer ring of the deck, local [m]
 * @param cellM - side of a cell [m]
 * @param originM - file coordinates of the local origin [m]
 * @returns grid with its corner at (floor(minX/c)·c, floor(minY/c)·c) in file coordinates [m]
 * @throws RangeError if the cell is not positive or the grid would have more than 16 million cells
 * @source none: geometry (contract.md, section 2)
 */
export function gridOver(outline: Ring, cellM: number, originM: readonly [number, number]): GridShape {
  if (!(cellM > 0)) throw new RangeError(`gridOver: cellM must be > 0, got ${cellM}`);
  const box = boundsOf(outline);
  const x0M = Math.floor((box.minX + originM[0]) / cellM) * cellM - originM[0];
  const y0M = Math.floor((box.minY + originM[1]) / cellM) * cellM - originM[1];
  const columns = Math.max(1, Math.ceil((box.maxX - x0M) / cellM - 1e-9));
  const rows = Math.max(1, Math.ceil((box.maxY - y0M) / cellM - 1e-9));
  if (columns * rows > 16e6) {
    throw new RangeError(`gridOver: ${columns} × ${rows} cells of ${cellM} m are more than 16 million; take larger cells`);
  }
  return { columns, rows, cellM, x0M, y0M };
}

/**
 * Centre of a cell.
 * @param grid - grid [m]
 * @param cell - index, row by row from the lower left [-]
 * @returns x, y, local [m]
 * @source none: geometry
 */
export function cellCentreM(grid: GridShape, cell: number): [number, number] {
  const column = cell % grid.columns;
  const row = (cell - column) / grid.columns;
  return [grid.x0M + (column + 0.5) * grid.cellM, grid.y0M + (row + 0.5) * grid.cellM];
}

/**
 * Cell under a point.
 * @param grid - grid [m]
 * @param x - point, local [m]
 * @param y - point, local [m]
 * @returns index of the cell, -1 outside the grid [-]
 * @source none: geometry
 */
export function cellAt(grid: GridShape, x: number, y: number): number {
  const column = Math.floor((x - grid.x0M) / grid.cellM);
  const row = Math.floor((y - grid.y0M) / grid.cellM);
  if (column < 0 || row < 0 || column >= grid.columns || row >= grid.rows) return -1;
  return row * grid.columns + column;
}

/** A block of cells: first and end (exclusive) column and row. */
export interface CellBlock {
  readonly column0: number;
  readonly column1: number;
  readonly row0: number;
  readonly row1: number;
}

/**
 * Smallest block around some cells.
 * @param lists - lists of cells [-]
 * @param columns - columns of the grid [-]
 * @returns block; empty (row0 >= row1) for no cells [-]
 * @source none: arithmetic
 */
export function blockOfCells(lists: readonly Int32Array[], columns: number): CellBlock {
  let column0 = columns;
  let column1 = 0;
  let row0 = Number.MAX_SAFE_INTEGER;
  let row1 = 0;
  for (const cells of lists) {
    for (let i = 0; i < cells.length; i++) {
      const column = cells[i] % columns;
      const row = (cells[i] - column) / columns;
      if (column < column0) column0 = column;
      if (column >= column1) column1 = column + 1;
      if (row < row0) row0 = row;
      if (row >= row1) row1 = row + 1;
    }
  }
  return { column0, column1, row0, row1 };
}
