/** The map of reach in a stage: who or what brings material to each cell, with the band along open edges. */

import { CELL_EDGE, CELL_NO_DATA, CELL_ON_DECK, type CellMap, REACH_CLASSES } from '../model/maps.ts';
import type { AccessInput } from '../model/route-input.ts';
import type { Evaluation } from './evaluation.ts';
import { edgeBandCells, OPEN_EDGE_M } from './geometry/edge-band.ts';
import { reachCells } from './stages/reach-cells.ts';

/**
 * Map of reach. For the finished garden, without access points and for derived stages there is nothing to tell: no cell has a value.
 * @param on - evaluation [-]
 * @param stage - index of the stage, null for the finished garden [-]
 * @param access - access points, local [m]
 * @returns indices of `REACH_CLASSES` [-]
 * @throws RangeError for a stage that does not exist
 * @source contract.md, section 4, `stage.reach`
 */
export function reachMap(on: Evaluation, stage: number | null, access: readonly AccessInput[]): CellMap {
  if (stage !== null && !(stage >= 0 && stage < on.plan.stages.length)) throw new RangeError(`reachMap: no stage ${stage}`);
  const { ground, zones: laid, zoneCells: owners } = on.prepared;
  const { deckShare } = ground;
  const told = stage !== null && access.length > 0 && !on.plan.stages[stage].derived;
  const reach = told ? reachCells({ ground, zones: on.input.zones, laid, owners, plan: on.plan }, access, stage) : null;
  const near = edgeBandCells(ground, OPEN_EDGE_M);
  const values = new Float32Array(deckShare.length).fill(Number.NaN);
  const flags = new Uint8Array(deckShare.length);
  let cells = 0;
  for (let cell = 0; cell < deckShare.length; cell++) {
    if (deckShare[cell] === 0) continue;
    cells++;
    flags[cell] = CELL_ON_DECK | (reach ? 0 : CELL_NO_DATA) | (stage !== null && near[cell] ? CELL_EDGE : 0);
    if (reach) values[cell] = reach.classes[cell];
  }
  return {
    kind: 'reach',
    stage,
    values,
    flags,
    directionDeg: reach?.towardsDeg ?? null,
    unit: '',
    classLimits: null,
    names: REACH_CLASSES,
    classM2: reach?.classM2 ?? REACH_CLASSES.map(() => 0),
    min: Number.NaN,
    mean: Number.NaN,
    max: Number.NaN,
    noDataM2: reach ? 0 : ground.areaM2,
    noDataCells: reach ? 0 : cells,
    dataCells: reach ? cells : 0,
  };
}
