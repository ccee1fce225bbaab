/** Loads that stand on the layers in places: trees, walls, blocks and stockpiles, by the exact area of their footprint. */

import type { Ring } from '../../model/deck-input.ts';
import { type BayCells, splitAmongBays } from '../geometry/bay-split.ts';
import { type DeckGround, layRegion } from '../geometry/region-cells.ts';
import { regionAreaM2 } from '../geometry/ring.ts';
import type { SparseLoad } from './field.ts';

export interface StandingLoad {
  readonly sparse: SparseLoad;
  /** On the deck [kN]. */
  readonly weightKN: number;
  /** Part of the footprint beyond the deck, and its weight, which the slab does not carry. */
  readonly outsideM2: number;
  readonly outsideKN: number;
  /** Per bay [kN]. */
  readonly bayKN: Float64Array;
}

/**
 * Lays pieces of even pressure on the deck.
 * @param deck - deck on its grid [-]
 * @param bays - bays per cell [-]
 * @param pieces - footprints, counter-clockwise, local, and their pressure [kN/m²]
 * @returns load per cell, in all and per bay [kN]
 * @source contract.md, section 2, Area load (objects) and Stages (stockpiles)
 */
export function layStanding(
  deck: DeckGround,
  bays: BayCells,
  pieces: readonly { readonly ring: Ring; readonly kNm2: number }[],
): StandingLoad {
  const cellAreaM2 = deck.grid.cellM ** 2;
  const perCell = new Map<number, number>();
  const bayKN = new Float64Array(bays.regions.length);
  let weightKN = 0;
  let outsideM2 = 0;
  let outsideKN = 0;
  for (const { ring, kNm2 } of pieces) {
    const region = { outer: ring, holes: [] };
    const laid = layRegion(deck, region);
    weightKN += laid.areaM2 * kNm2;
    outsideM2 += laid.outsideM2;
    outsideKN += laid.outsideM2 > 0 ? (regionAreaM2(region) - laid.areaM2) * kNm2 : 0;
    for (let i = 0; i < laid.cells.length; i++) {
      const cell = laid.cells[i];
      perCell.set(cell, (perCell.get(cell) ?? 0) + laid.shares[i] * kNm2);
      if (bays.sole[cell] >= 0) bayKN[bays.sole[cell]] += laid.shares[i] * kNm2 * cellAreaM2;
    }
    const split = splitAmongBays(deck, bays, region, laid);
    for (let i = 0; i < split.bays.length; i++) bayKN[split.bays[i]] += split.shares[i] * kNm2 * cellAreaM2;
  }
  return {
    sparse: { cells: Int32Array.from(perCell.keys()), kNm2: Float64Array.from(perCell.values()) },
    weightKN,
    outsideM2,
    outsideKN,
    bayKN,
  };
}
