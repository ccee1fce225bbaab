/** Ways as the crow flies round whatever does not bear: finer than steps from cell to cell, for directions. */

import type { GridShape } from '../../model/maps.ts';

/** Rounds of four sweeps; a way needs about as many as it has turns. */
const MOST_ROUNDS = 60;
/** A round that changes no way by more than this was the last [m]. */
const SAME_M = 1e-6;

/**
 * Length of the way to each cell where it may run at any angle: the eikonal equation, swept until nothing changes.
 * @param grid - grid [m]
 * @param wayM - way by steps from cell to cell: 0 where ways begin, infinite where none leads [m]
 * @returns way, infinite where none leads [m]
 * @source Zhao 2005, fast sweeping for eikonal equations, from memory
 */
export function smoothWayM(grid: GridShape, wayM: Float64Array): Float64Array {
  const { columns, rows, cellM } = grid;
  const way = wayM.map((steps) => (steps === 0 ? 0 : Infinity));
  const at = (column: number, row: number) =>
    column < 0 || row < 0 || column >= columns || row >= rows ? Infinity : way[row * columns + column];
  const sweep = (right: boolean, up: boolean): number => {
    let changed = 0;
    for (let j = 0; j < rows; j++) {
      const row = up ? j : rows - 1 - j;
      for (let i = 0; i < columns; i++) {
        const column = right ? i : columns - 1 - i;
        const cell = row * columns + column;
        if (wayM[cell] === 0 || wayM[cell] === Infinity) continue;
        const found = between(
          Math.min(at(column - 1, row), at(column + 1, row)),
          Math.min(at(column, row - 1), at(column, row + 1)),
          cellM,
        );
        if (!(found < way[cell])) continue;
        // From no way at all to one is a change, whatever its length.
        changed = Math.max(changed, Math.min(way[cell] - found, 1));
        way[cell] = found;
      }
    }
    return changed;
  };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const changed = Math.max(sweep(true, true), sweep(false, true), sweep(false, false), sweep(true, false));
    if (changed <= SAME_M) break;
  }
  return way;
}

/** Way from the lesser of both neighbours along each axis. */
function between(a: number, b: number, cellM: number): number {
  const low = Math.min(a, b);
  const high = Math.max(a, b);
  if (high - low >= cellM) return low + cellM;
  return (a + b + Math.sqrt(2 * cellM * cellM - (a - b) ** 2)) / 2;
}
