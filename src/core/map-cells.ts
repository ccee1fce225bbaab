/** A map of quantities from the value of every cell: flags, classes, spread by area, cells without a value. */

import { CELL_NO_DATA, CELL_ON_DECK, CELL_OVER, CELL_SHORT, CELL_UNCONFIRMED, type CellMap } from '../model/maps.ts';
import { UTILISATION_LIMITS } from '../model/palette.ts';
import type { Evaluation } from './evaluation.ts';

export interface CellValues extends Pick<CellMap, 'kind' | 'stage' | 'unit'> {
  /** NaN where there is none. */
  readonly valueAt: (cell: number) => number;
  /** Shares of a limit, and whose: of bays, which somebody must have confirmed, or of layers. Null for quantities. */
  readonly limitOf: 'bays' | 'layers' | null;
  readonly directionDeg?: Float32Array | null;
  /** Cells below what is required there. */
  readonly isShort?: Uint8Array;
}

/**
 * A map from the values of its cells.
 * @param on - evaluation, for the deck and its bays [-]
 * @param of - what the values are and how to get them [-]
 * @returns map [-]
 * @source none: arithmetic
 */
export function mapOfCells(on: Evaluation, of: CellValues): CellMap {
  const { deckShare, grid } = on.prepared.ground;
  const values = new Float32Array(deckShare.length).fill(Number.NaN);
  const flags = new Uint8Array(deckShare.length);
  let min = Infinity;
  let max = -Infinity;
  let weighted = 0;
  let share = 0;
  let dataCells = 0;
  let noDataCells = 0;
  let noDataShare = 0;
  for (let cell = 0; cell < deckShare.length; cell++) {
    if (deckShare[cell] === 0) continue;
    const value = of.valueAt(cell);
    flags[cell] = CELL_ON_DECK;
    const bay = on.bayAt[cell];
    if (of.limitOf === 'bays' && bay >= 0 && !on.input.bays[bay].confirmed) flags[cell] |= CELL_UNCONFIRMED;
    if (Number.isNaN(value)) {
      flags[cell] |= CELL_NO_DATA;
      noDataCells++;
      noDataShare += deckShare[cell];
      continue;
    }
    if (of.limitOf !== null && value > 1 + 1e-9) flags[cell] |= CELL_OVER;
    if (of.isShort?.[cell]) flags[cell] |= CELL_SHORT;
    values[cell] = value;
    dataCells++;
    weighted += value * deckShare[cell];
    share += deckShare[cell];
    if (value < min) min = value;
    if (value > max) max = value;
  }
  return {
    kind: of.kind,
    stage: of.stage,
    values,
    flags,
    directionDeg: of.directionDeg ?? null,
    unit: of.unit,
    classLimits: of.limitOf === null ? null : [...UTILISATION_LIMITS],
    names: null,
    classM2: null,
    min: dataCells > 0 ? min : Number.NaN,
    mean: share > 0 ? weighted / share : Number.NaN,
    max: dataCells > 0 ? max : Number.NaN,
    dataCells,
    noDataCells,
    noDataM2: noDataShare * grid.cellM * grid.cellM,
  };
}
