/** Loads that stand on the layers in places: trees, walls, blocks and stockpiles, by the exact area of their footprint. */

import type { Region, Ring } from '../../model/deck-input.ts';
import { type BayCells, splitAmongBays } from '../geometry/bay-split.ts';
import { sharedInSquare } from '../geometry/cell-overlap.ts';
import { type DeckGround, layRegion } from '../geometry/region-cells.ts';
import { boundsOf, regionAreaM2 } from '../geometry/ring.ts';
import type { SparseLoad } from './field.ts';
import { PATCH_M } from './patch.ts';

export interface StandingLoad {
  /** Per square metre of each whole cell. */
  readonly sparse: SparseLoad;
  /** What it adds to the 1 m × 1 m mean centred on each cell, by the exact area within the window, per unit of deck. */
  readonly windows: SparseLoad;
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
 * @param windowM2 - area of deck in the window centred on each cell; null where no windows are wanted [m²]
 * @param pieces - footprints, counter-clockwise, local, and their pressure [kN/m²]
 * @returns load per cell, in all and per bay [kN]
 * @source contract.md, section 2, Area load (objects) and Stages (stockpiles)
 */
export function layStanding(
  deck: DeckGround,
  bays: BayCells,
  windowM2: Float64Array | null,
  pieces: readonly { readonly ring: Ring; readonly kNm2: number }[],
): StandingLoad {
  const cellAreaM2 = deck.grid.cellM ** 2;
  const perCell = new Map<number, number>();
  const perWindow = new Map<number, number>();
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
    if (windowM2) addWindows(deck, region, laid.outsideM2 > 0, kNm2, windowM2, perWindow);
    const split = splitAmongBays(deck, bays, region, laid);
    for (let i = 0; i < split.bays.length; i++) bayKN[split.bays[i]] += split.shares[i] * kNm2 * cellAreaM2;
  }
  return {
    sparse: { cells: Int32Array.from(perCell.keys()), kNm2: Float64Array.from(perCell.values()) },
    windows: { cells: Int32Array.from(perWindow.keys()), kNm2: Float64Array.from(perWindow.values()) },
    weightKN,
    outsideM2,
    outsideKN,
    bayKN,
  };
}

/** Line and point loads are narrower than cells and windows: their part of a window is cut exactly, not taken from cells. */
function addWindows(
  deck: DeckGround,
  region: Region,
  beyondDeck: boolean,
  kNm2: number,
  windowM2: Float64Array,
  to: Map<number, number>,
): void {
  const { grid } = deck;
  const box = boundsOf(region.outer);
  const index = (at: number, from: number) => Math.floor((at - from) / grid.cellM);
  const column0 = Math.max(0, index(box.minX - PATCH_M / 2, grid.x0M));
  const column1 = Math.min(grid.columns - 1, index(box.maxX + PATCH_M / 2, grid.x0M));
  const row0 = Math.max(0, index(box.minY - PATCH_M / 2, grid.y0M));
  const row1 = Math.min(grid.rows - 1, index(box.maxY + PATCH_M / 2, grid.y0M));
  const regions = beyondDeck ? [region, deck.region] : [region];
  for (let row = row0; row <= row1; row++) {
    const y = grid.y0M + (row + 0.5) * grid.cellM;
    for (let column = column0; column <= column1; column++) {
      const cell = row * grid.columns + column;
      if (windowM2[cell] === 0) continue;
      const share = sharedInSquare(grid.x0M + (column + 0.5) * grid.cellM, y, PATCH_M, regions);
      if (share > 0) to.set(cell, (to.get(cell) ?? 0) + (share * PATCH_M * PATCH_M * kNm2) / windowM2[cell]);
    }
  }
}
