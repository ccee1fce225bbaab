/** Cells near the open edges of a deck: its outline and the rims of its openings. */

import { nearestOnPiece } from './distance.ts';
import { cellCentreM } from './grid.ts';
import type { DeckGround } from './region-cells.ts';
import { ringsOf } from './ring.ts';

/** Width of the band along open edges in which people are secured against falling: common practice [m]. */
export const OPEN_EDGE_M = 2;

/**
 * Cells of the deck whose centre lies within a band along its rims. Nothing is known of parapets or guards, so every rim counts as open.
 * @param ground - deck on its grid [-]
 * @param bandM - width of the band; 2 m is common practice [m]
 * @returns 1 for each cell in the band, else 0 [-]
 * @source common practice: 2 m from an open edge
 */
export function edgeBandCells(ground: DeckGround, bandM: number): Uint8Array {
  const { grid, centreOnDeck } = ground;
  const near = new Uint8Array(centreOnDeck.length);
  const clampColumn = (v: number) => Math.min(grid.columns - 1, Math.max(0, Math.floor((v - grid.x0M) / grid.cellM)));
  const clampRow = (v: number) => Math.min(grid.rows - 1, Math.max(0, Math.floor((v - grid.y0M) / grid.cellM)));
  for (const ring of ringsOf(ground.region)) {
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const side = [ring[j], ring[j + 1], ring[i], ring[i + 1]];
      const column1 = clampColumn(Math.max(side[0], side[2]) + bandM);
      const row1 = clampRow(Math.max(side[1], side[3]) + bandM);
      for (let row = clampRow(Math.min(side[1], side[3]) - bandM); row <= row1; row++) {
        for (let column = clampColumn(Math.min(side[0], side[2]) - bandM); column <= column1; column++) {
          const cell = row * grid.columns + column;
          if (near[cell] || !centreOnDeck[cell]) continue;
          if (nearestOnPiece(side, ...cellCentreM(grid, cell)).distanceM <= bandM) near[cell] = 1;
        }
      }
    }
  }
  return near;
}
