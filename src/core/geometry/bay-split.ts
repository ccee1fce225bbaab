/** Which bay carries which part of a cell, and how a zone or an object is shared among bays, exactly. */

import type { Region } from '../../model/deck-input.ts';
import { sharedInCell } from './cell-overlap.ts';
import { blockOfCells, type CellBlock } from './grid.ts';
import { centreCells, type DeckGround, layRegion, NO_SHARE, type RegionCells } from './region-cells.ts';

export interface BayCells {
  readonly regions: readonly Region[];
  readonly laid: readonly RegionCells[];
  /** Per bay: cells judged with it, centre in the bay and on the deck; where no centre is, its cells with a centre on the deck, else all. */
  readonly judged: readonly Int32Array[];
  /** Per bay: block around its cells. */
  readonly blocks: readonly CellBlock[];
  /** Per cell: the one bay that has all deck of the cell, -1 none has any, -2 several or only in part. */
  readonly sole: Int32Array;
  /** Bays and their shares of the cells marked -2. */
  readonly shared: ReadonlyMap<number, readonly { readonly bay: number; readonly share: number }[]>;
}

/**
 * Lays the bays on the deck.
 * @param deck - deck on its grid [-]
 * @param regions - outlines of the bays, local [m]
 * @returns bays per cell [-]
 * @source none: geometry
 */
export function layBays(deck: DeckGround, regions: readonly Region[]): BayCells {
  const sole = new Int32Array(deck.deckShare.length).fill(-1);
  const shared = new Map<number, { bay: number; share: number }[]>();
  const laid = regions.map((region) => layRegion(deck, region));
  laid.forEach((cells, bay) => {
    for (let i = 0; i < cells.cells.length; i++) {
      const cell = cells.cells[i];
      const share = cells.shares[i];
      if (sole[cell] === -1 && share >= deck.deckShare[cell] - NO_SHARE) {
        sole[cell] = bay;
        continue;
      }
      let list = shared.get(cell);
      if (!list) {
        list = sole[cell] >= 0 ? [{ bay: sole[cell], share: deck.deckShare[cell] }] : [];
        shared.set(cell, list);
        sole[cell] = -2;
      }
      list.push({ bay, share });
    }
  });
  const judged = regions.map((region, bay) => {
    const centres = centreCells(deck, region, laid[bay]);
    if (centres.length > 0) return centres;
    const onDeck = laid[bay].cells.filter((cell) => deck.centreOnDeck[cell] === 1);
    return onDeck.length > 0 ? onDeck : laid[bay].cells.slice();
  });
  const blocks = laid.map((cells) => blockOfCells([cells.cells], deck.grid.columns));
  return { regions, laid, judged, blocks, sole, shared };
}

/** A region's cells that several bays share: position in the region's list, bay, and share of the whole cell. */
export interface BayPieces {
  readonly positions: Int32Array;
  readonly bays: Int32Array;
  readonly shares: Float64Array;
}

/**
 * Shares of a region in each bay, for the cells that are not one bay's alone.
 * @param deck - deck on its grid [-]
 * @param bays - bays per cell [-]
 * @param region - region, local [m]
 * @param laid - the region's cells [-]
 * @returns pieces [-]
 * @source none: geometry; exact where region, bay and deck boundaries meet in one cell
 */
export function splitAmongBays(deck: DeckGround, bays: BayCells, region: Region, laid: RegionCells): BayPieces {
  const positions: number[] = [];
  const owners: number[] = [];
  const shares: number[] = [];
  for (let i = 0; i < laid.cells.length; i++) {
    const cell = laid.cells[i];
    if (bays.sole[cell] !== -2) continue;
    const onDeck = deck.deckShare[cell];
    for (const { bay, share } of bays.shared.get(cell)!) {
      let common: number;
      if (laid.shares[i] >= onDeck - NO_SHARE) common = share;
      else if (share >= onDeck - NO_SHARE) common = laid.shares[i];
      else {
        const meeting = [region, bays.regions[bay]];
        common = sharedInCell(deck.grid, cell, onDeck < 1 ? [...meeting, deck.region] : meeting);
      }
      if (common <= NO_SHARE) continue;
      positions.push(i);
      owners.push(bay);
      shares.push(common);
    }
  }
  return { positions: Int32Array.from(positions), bays: Int32Array.from(owners), shares: Float64Array.from(shares) };
}
