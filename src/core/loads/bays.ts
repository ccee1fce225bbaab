/** Mean loads per bay, exact, from the areas that zones and objects share with it. */

import type { BayCells, BayPieces } from '../geometry/bay-split.ts';
import type { RegionCells } from '../geometry/region-cells.ts';
import type { Affine } from '../layers/coefficients.ts';

/** What one zone shares with each bay. */
export interface ZoneBayShare {
  /** Per bay [m²]. */
  readonly areaM2: Float64Array;
  /** Per bay: volume of the make-up layer [m³]. */
  readonly makeUpM3: Float64Array;
}

/**
 * Area and make-up volume of a zone in each bay.
 * @param laid - the zone's cells [-]
 * @param pieces - its shares of the cells that several bays have [-]
 * @param bays - bays per cell [-]
 * @param makeUpM - make-up thickness per cell of the zone, or one value for all [m]
 * @param cellM - side of a cell [m]
 * @returns per bay [m²]
 * @source none: arithmetic
 */
export function zoneBayShare(laid: RegionCells, pieces: BayPieces, bays: BayCells, makeUpM: Float64Array, cellM: number): ZoneBayShare {
  const areaM2 = new Float64Array(bays.regions.length);
  const makeUpM3 = new Float64Array(bays.regions.length);
  const cellAreaM2 = cellM * cellM;
  const single = makeUpM.length === 1;
  for (let i = 0; i < laid.cells.length; i++) {
    const bay = bays.sole[laid.cells[i]];
    if (bay < 0) continue;
    areaM2[bay] += laid.shares[i] * cellAreaM2;
    makeUpM3[bay] += laid.shares[i] * cellAreaM2 * makeUpM[single ? 0 : i];
  }
  for (let p = 0; p < pieces.bays.length; p++) {
    const bay = pieces.bays[p];
    areaM2[bay] += pieces.shares[p] * cellAreaM2;
    makeUpM3[bay] += pieces.shares[p] * cellAreaM2 * makeUpM[single ? 0 : pieces.positions[p]];
  }
  return { areaM2, makeUpM3 };
}

/**
 * Weight that zones bring to one bay.
 * @param shares - what each zone shares with the bays [m²]
 * @param loads - load of each zone [kN/m²]
 * @param bay - index of the bay [-]
 * @returns weight [kN]
 * @source none: arithmetic
 */
export function zonesInBayKN(shares: readonly ZoneBayShare[], loads: readonly Affine[], bay: number): number {
  let sum = 0;
  for (let z = 0; z < shares.length; z++) sum += loads[z].fixed * shares[z].areaM2[bay] + loads[z].perM * shares[z].makeUpM3[bay];
  return sum;
}
