/** Where the name of each class of a map stands: on a cell of the class, as near to its middle as there is one. */

import type { CellMap, GridShape } from '../model/maps.ts';
import { cellCentre } from './cell-mark.ts';

export interface ClassPlace {
  readonly index: number;
  /** Local [m]. */
  readonly at: readonly [number, number];
}

/**
 * Places of the classes that occur.
 * @param map - map of named classes
 * @param grid - its grid
 */
export function classPlaces(map: CellMap, grid: GridShape): ClassPlace[] {
  const count = map.names?.length ?? 0;
  const sums = new Float64Array(3 * count);
  for (let cell = 0; cell < map.values.length; cell++) {
    const of = map.values[cell];
    if (!(of >= 0)) continue;
    sums[3 * of] += cell % grid.columns;
    sums[3 * of + 1] += Math.floor(cell / grid.columns);
    sums[3 * of + 2]++;
  }
  const best = new Float64Array(count).fill(Infinity);
  const cells = new Int32Array(count).fill(-1);
  for (let cell = 0; cell < map.values.length; cell++) {
    const of = map.values[cell];
    if (!(of >= 0)) continue;
    const dx = (cell % grid.columns) - sums[3 * of] / sums[3 * of + 2];
    const dy = Math.floor(cell / grid.columns) - sums[3 * of + 1] / sums[3 * of + 2];
    const away = dx * dx + dy * dy;
    if (away >= best[of]) continue;
    best[of] = away;
    cells[of] = cell;
  }
  return [...cells].flatMap((cell, index) => (cell < 0 ? [] : [{ index, at: cellCentre(grid, cell) }]));
}
