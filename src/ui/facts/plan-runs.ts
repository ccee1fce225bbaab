/** A map as few rectangles: neighbouring cells of a row with the same class become one. */

import { CELL_SHORT, type CellMap, type GridShape } from '../../model/maps.ts';
import { type CellClass, classOfCell } from './map-classes.ts';

export interface Run {
  readonly row: number;
  readonly firstColumn: number;
  readonly columns: number;
  readonly of: Exclude<CellClass, null>;
}

/** Runs of equal class, row by row from the lower left; nothing for cells off the deck. */
export function planRuns(map: CellMap, grid: GridShape, classAt = classOfCell): Run[] {
  const runs: Run[] = [];
  for (let row = 0; row < grid.rows; row++) {
    let firstColumn = 0;
    let current: CellClass = null;
    for (let column = 0; column <= grid.columns; column++) {
      const next = column < grid.columns ? classAt(map, row * grid.columns + column) : null;
      if (next === current) continue;
      if (current !== null) runs.push({ row, firstColumn, columns: column - firstColumn, of: current });
      firstColumn = column;
      current = next;
    }
  }
  return runs;
}

/** Runs of cells below what is required there, to be marked besides. */
export function shortRuns(map: CellMap, grid: GridShape): Run[] {
  return planRuns(map, grid, ({ flags }, cell) => ((flags[cell] ?? 0) & CELL_SHORT ? 0 : null));
}
