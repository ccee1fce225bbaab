/** Thickness of the make-up layer in every cell of a zone, held to its limits, and where it had to be held back. */

import type { ZoneInput } from '../../model/deck-input.ts';
import type { RegionCells } from '../geometry/region-cells.ts';
import { fixedThicknessM, makeUpLayer } from './coefficients.ts';

/** A cell counts as short or over only when held back by more than this [m]; contract.md, section 2. */
export const HELD_BACK_M = 0.001;

export interface MakeUp {
  /** Per cell of the zone; one single value where it is the same everywhere [m]. */
  readonly thicknessM: Float64Array;
  /** No room: the finished level comes out too high [m²]. */
  readonly shortM2: number;
  /** Greatest lack of room and its cell. */
  readonly shortMostM: number;
  readonly shortCell: number;
  /** Too much room: the finished level comes out too low [m²]. */
  readonly overM2: number;
  readonly overMostM: number;
  readonly overCell: number;
}

/**
 * Make-up thickness of one zone.
 * @param zone - finish and build-up [m]
 * @param laid - the zone's cells [-]
 * @param deckLevels - level of the membrane at each cell's centre, whole grid [m]
 * @param finishLevels - finished level wanted at each cell's centre, whole grid; null for finish `build-up` [m]
 * @param cellM - side of a cell [m]
 * @returns thickness per cell and the areas held back [m]
 * @source contract.md, section 2, Make-up layer
 */
export function makeUpOf(
  zone: ZoneInput,
  laid: RegionCells,
  deckLevels: Float64Array,
  finishLevels: Float64Array | null,
  cellM: number,
): MakeUp {
  const index = makeUpLayer(zone.buildUp);
  const layer = index < 0 ? null : zone.buildUp.layers[index];
  const result = { shortM2: 0, shortMostM: 0, shortCell: -1, overM2: 0, overMostM: 0, overCell: -1 };
  if (finishLevels === null) return { thicknessM: Float64Array.of(layer ? layer.thicknessM : 0), ...result };
  const fixedM = fixedThicknessM(zone.buildUp);
  const min = layer?.rangeM?.min ?? 0;
  const max = layer?.rangeM?.max ?? 0;
  const cellAreaM2 = cellM * cellM;
  const thicknessM = new Float64Array(layer ? laid.cells.length : 1);
  for (let i = 0; i < laid.cells.length; i++) {
    const cell = laid.cells[i];
    const wanted = finishLevels[cell] - deckLevels[cell] - fixedM;
    if (layer) thicknessM[i] = wanted < min ? min : wanted > max ? max : wanted;
    if (min - wanted > HELD_BACK_M) {
      result.shortM2 += laid.shares[i] * cellAreaM2;
      if (min - wanted > result.shortMostM) {
        result.shortMostM = min - wanted;
        result.shortCell = cell;
      }
    } else if (wanted - max > HELD_BACK_M) {
      result.overM2 += laid.shares[i] * cellAreaM2;
      if (wanted - max > result.overMostM) {
        result.overMostM = wanted - max;
        result.overCell = cell;
      }
    }
  }
  return { thicknessM, ...result };
}
