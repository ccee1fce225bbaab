/** Ponded water on one cell, by the zones that lie on it. */

import type { Evaluation } from './evaluation.ts';
import { firstAtLeast } from './loads/field.ts';
import { type PoreColumn, waterInPoresM } from './water/pores.ts';

/**
 * Water on a cell in the free pores and above the layers, as a mean over its deck. Where zones overlap it is their mean.
 * @param on - evaluated deck, for the zones on the cell and their make-up thickness [m]
 * @param columns - layers and pores per zone [m]
 * @param cell - cell of the grid [-]
 * @param depthM - depth of the water above the membrane [m]
 * @returns depth that the same water would have on bare deck [m]
 * @source none: arithmetic
 */
export function waterOnCellM(on: Evaluation, columns: readonly PoreColumn[], cell: number, depthM: number): number {
  const { zones, makeUpM, entryMakeUpM } = on.field;
  const owner = zones.owner[cell];
  if (owner >= 0) return waterInPoresM(columns[owner], makeUpM[cell], depthM);
  if (owner === -1) return depthM;
  const i = firstAtLeast(zones.mixed, cell);
  let covered = 0;
  let sum = 0;
  for (let e = zones.start[i]; e < zones.start[i + 1]; e++) {
    covered += zones.entryShare[e];
    sum += zones.entryShare[e] * waterInPoresM(columns[zones.entryZone[e]], entryMakeUpM[e], depthM);
  }
  const bare = Math.max(0, on.prepared.ground.deckShare[cell] - covered);
  return (sum + bare * depthM) / (covered + bare);
}
