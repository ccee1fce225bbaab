/** Regions as cells of the deck: exact shares, openings and everything beyond the deck's edge taken off. */

import type { Region } from '../../model/deck-input.ts';
import type { GridShape } from '../../model/maps.ts';
import { sharedInCell } from './cell-overlap.ts';
import { type Coverage, createRasteriser, type Rasteriser } from './coverage.ts';
import { cellCentreM } from './grid.ts';
import { isInside, regionAreaM2, ringsOf } from './ring.ts';

/** Shares below this are rounding [-]. */
export const NO_SHARE = 1e-12;

/** A region on the deck, cell by cell. */
export interface RegionCells {
  /** Cells touched: full ones first, then those covered in part. */
  readonly cells: Int32Array;
  /** Share of each whole cell [-]. */
  readonly shares: Float64Array;
  /** On the deck [m²]. */
  readonly areaM2: number;
  /** Beyond the deck or over an opening [m²]. */
  readonly outsideM2: number;
}

/** The deck itself on its grid. */
export interface DeckGround {
  readonly grid: GridShape;
  readonly region: Region;
  readonly rasteriser: Rasteriser;
  /** Share of each cell that is deck [-]. */
  readonly deckShare: Float64Array;
  /** 1 where the cell's centre is on the deck. */
  readonly centreOnDeck: Uint8Array;
  /** Cells with any deck. */
  readonly cellCount: number;
  readonly areaM2: number;
}

/**
 * Lays the deck on its grid.
 * @param grid - grid over the deck's outline [m]
 * @param region - deck with its openings as holes, local [m]
 * @returns deck shares per cell [-]
 * @source none: geometry
 */
export function layDeck(grid: GridShape, region: Region): DeckGround {
  const rasteriser = createRasteriser(grid);
  const coverage = rasteriser.cover(ringsOf(region));
  const size = grid.columns * grid.rows;
  const deckShare = new Float64Array(size);
  const centreOnDeck = new Uint8Array(size);
  let cellCount = coverage.cells.length;
  for (let r = 0; r < coverage.runs.length; r += 2) {
    deckShare.fill(1, coverage.runs[r], coverage.runs[r + 1]);
    centreOnDeck.fill(1, coverage.runs[r], coverage.runs[r + 1]);
    cellCount += coverage.runs[r + 1] - coverage.runs[r];
  }
  for (let i = 0; i < coverage.cells.length; i++) {
    const cell = coverage.cells[i];
    deckShare[cell] = coverage.shares[i];
    const [x, y] = cellCentreM(grid, cell);
    if (isInside(region, x, y)) centreOnDeck[cell] = 1;
  }
  return { grid, region, rasteriser, deckShare, centreOnDeck, cellCount, areaM2: regionAreaM2(region) };
}

/**
 * Shares of a region that lie on the deck.
 * @param deck - deck on its grid [-]
 * @param region - region, local [m]
 * @returns cells and shares of the region on the deck [-]
 * @source none: geometry; exact also where both boundaries pass through one cell
 */
export function layRegion(deck: DeckGround, region: Region): RegionCells {
  const coverage = deck.rasteriser.cover(ringsOf(region));
  const { cells, shares, full } = expanded(coverage);
  let kept = 0;
  let sum = 0;
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i];
    const onDeck = deck.deckShare[cell];
    let share = shares[i];
    if (onDeck < 1) {
      if (onDeck === 0) share = 0;
      else if (i < full) share = onDeck;
      else share = sharedInCell(deck.grid, cell, [region, deck.region]);
    }
    if (share <= NO_SHARE) continue;
    cells[kept] = cell;
    shares[kept] = share;
    kept++;
    sum += share;
  }
  const areaM2 = sum * deck.grid.cellM * deck.grid.cellM;
  const whole = regionAreaM2(region);
  const outside = whole - areaM2;
  return {
    cells: cells.subarray(0, kept),
    shares: shares.subarray(0, kept),
    areaM2,
    // Rounding in the sum must not show as a sliver outside.
    outsideM2: Math.abs(outside) <= 1e-9 * Math.max(1, whole) ? 0 : outside,
  };
}

function expanded(coverage: Coverage): { cells: Int32Array; shares: Float64Array; full: number } {
  let full = 0;
  for (let r = 0; r < coverage.runs.length; r += 2) full += coverage.runs[r + 1] - coverage.runs[r];
  const cells = new Int32Array(full + coverage.cells.length);
  const shares = new Float64Array(cells.length);
  let at = 0;
  for (let r = 0; r < coverage.runs.length; r += 2) {
    for (let cell = coverage.runs[r]; cell < coverage.runs[r + 1]; cell++) cells[at++] = cell;
  }
  shares.fill(1, 0, full);
  cells.set(coverage.cells, full);
  shares.set(coverage.shares, full);
  return { cells, shares, full };
}

/**
 * Cells of a region whose centre lies in it and on the deck.
 * @param deck - deck on its grid [-]
 * @param region - region, local [m]
 * @param laid - the region's cells [-]
 * @returns cell indices, rising within full and mixed cells [-]
 * @source none: geometry
 */
export function centreCells(deck: DeckGround, region: Region, laid: RegionCells): Int32Array {
  const out = new Int32Array(laid.cells.length);
  let count = 0;
  for (let i = 0; i < laid.cells.length; i++) {
    const cell = laid.cells[i];
    if (deck.centreOnDeck[cell] === 0) continue;
    if (laid.shares[i] < 1 - NO_SHARE) {
      const [x, y] = cellCentreM(deck.grid, cell);
      if (!isInside(region, x, y)) continue;
    }
    out[count++] = cell;
  }
  return out.slice(0, count);
}
