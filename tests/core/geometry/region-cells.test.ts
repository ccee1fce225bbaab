/** Regions on a deck with an opening: what lies on it, what beyond it. */

import { describe, expect, it } from 'vitest';
import { gridOver } from '../../../src/core/geometry/grid.ts';
import { centreCells, layDeck, layRegion, type RegionCells } from '../../../src/core/geometry/region-cells.ts';
import type { Region } from '../../../src/model/deck-input.ts';
import { box, hole, holed, region } from '../../helpers/deck-builder.ts';

/** 3 m × 2 m with an opening over x 1 … 2, y 0.6 … 1.6: it takes 0.4 of cell 1 and 0.6 of cell 4. */
const SHAPE = holed(box(0, 0, 3, 2), hole(1, 0.6, 2, 1.6));
const DECK = layDeck(gridOver(SHAPE.outer, 1, [0, 0]), SHAPE);

function shareOf(laid: RegionCells, cell: number): number {
  const i = laid.cells.indexOf(cell);
  return i < 0 ? 0 : laid.shares[i];
}

function expectLaid(shape: Region, shares: Readonly<Record<number, number>>, outsideM2: number): void {
  const laid = layRegion(DECK, shape);
  for (let cell = 0; cell < 6; cell++) expect(shareOf(laid, cell), `cell ${cell}`).toBeCloseTo(shares[cell] ?? 0, 12);
  expect(laid.areaM2).toBeCloseTo(
    Object.values(shares).reduce((sum, share) => sum + share, 0),
    12,
  );
  expect(laid.outsideM2).toBeCloseTo(outsideM2, 12);
}

describe('the deck', () => {
  it('has the exact share of every cell', () => {
    [1, 0.6, 1, 1, 0.4, 1].forEach((share, cell) => {
      expect(DECK.deckShare[cell], `cell ${cell}`).toBeCloseTo(share, 12);
    });
    // 6 − 1
    expect(DECK.areaM2).toBeCloseTo(5, 12);
    expect(DECK.cellCount).toBe(6);
  });

  it('has a centre on it where the centre is not in the opening', () => {
    // (1.5, 0.5) lies below the opening, (1.5, 1.5) in it.
    expect([...DECK.centreOnDeck]).toEqual([1, 1, 1, 1, 0, 1]);
  });
});

describe('a region', () => {
  it('over the opening keeps what lies on the deck', () => {
    // 4 m² less the opening of 1 m²
    expectLaid(box(0, 0, 2, 2), { 0: 1, 1: 0.6, 3: 1, 4: 0.4 }, 1);
  });

  it('whose boundary meets the opening within a cell is cut exactly', () => {
    // Triangle y < x − 1 in cell 1, 0.5; of it above y = 0.6 the corner with legs 0.4: 0.08
    expectLaid(region([1, 0], [2, 0], [2, 1]), { 1: 0.42 }, 0.08);
  });

  it('beyond the edge of the deck loses that part', () => {
    expectLaid(box(-1, 0, 1, 1), { 0: 1 }, 1);
    expectLaid(box(2.5, 1.5, 4, 3), { 5: 0.25 }, 1.5 * 1.5 - 0.25);
  });

  it('beyond the deck altogether has no cells', () => {
    expectLaid(box(5, 5, 7, 6), {}, 2);
    expectLaid(box(1.2, 0.8, 1.8, 1.2), {}, 0.6 * 0.4);
  });

  it('on the deck shows no rounding as outside', () => {
    expect(layRegion(DECK, region([0, 0], [1, 0], [0.1, 1.9])).outsideM2).toBe(0);
  });
});

describe('cells judged by their centre', () => {
  it.each([
    [1.4, [0]],
    [1.6, [0, 1]],
    [3, [0, 1, 2]],
  ])('a strip to x = %f has the centres', (x1, cells) => {
    const strip = box(0, 0, x1, 1);
    expect([...centreCells(DECK, strip, layRegion(DECK, strip))].sort()).toEqual(cells);
  });

  it('leave out centres over an opening', () => {
    const upper = box(0, 1, 3, 2);
    expect([...centreCells(DECK, upper, layRegion(DECK, upper))].sort()).toEqual([3, 5]);
  });
});
