/** Mean fall of the membrane under a zone. */

import type { GridShape } from '../../model/maps.ts';
import type { RegionCells } from '../geometry/region-cells.ts';

/**
 * Mean rise per length of the membrane, by area.
 * @param grid - grid [m]
 * @param deckLevelsM - level of the membrane at each cell's centre [m]
 * @param laid - cells of the zone [-]
 * @returns slope; 0 for a zone without cells [-]
 * @source none: geometry
 */
export function meanSlope(grid: GridShape, deckLevelsM: Float64Array, { cells, shares }: RegionCells): number {
  const { columns, rows, cellM } = grid;
  let sum = 0;
  let weight = 0;
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i];
    const column = cell % columns;
    const row = (cell - column) / columns;
    // One-sided at the rim of the grid; a grid of one column or row has no slope that way.
    const [west, east] = [Math.max(0, column - 1), Math.min(columns - 1, column + 1)];
    const [south, north] = [Math.max(0, row - 1), Math.min(rows - 1, row + 1)];
    const riseX = deckLevelsM[row * columns + east] - deckLevelsM[row * columns + west];
    const riseY = deckLevelsM[north * columns + column] - deckLevelsM[south * columns + column];
    const slopeX = east > west ? riseX / ((east - west) * cellM) : 0;
    const slopeY = north > south ? riseY / ((north - south) * cellM) : 0;
    sum += shares[i] * Math.hypot(slopeX, slopeY);
    weight += shares[i];
  }
  return weight > 0 ? sum / weight : 0;
}
