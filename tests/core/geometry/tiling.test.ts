/** Gaps and overlaps of regions on a deck, areas by hand. */

import { describe, expect, it } from 'vitest';
import { gridOver } from '../../../src/core/geometry/grid.ts';
import { layDeck, layRegion } from '../../../src/core/geometry/region-cells.ts';
import { checkTiling, type Tiling } from '../../../src/core/geometry/tiling.ts';
import { ownCells } from '../../../src/core/geometry/zone-cells.ts';
import type { Region } from '../../../src/model/deck-input.ts';
import { box, hole, holed, region } from '../../helpers/deck-builder.ts';

function tiling(deckShape: Region, ...zones: Region[]): Tiling {
  const deck = layDeck(gridOver(deckShape.outer, 1, [0, 0]), deckShape);
  const cells = ownCells(
    zones.map((zone) => layRegion(deck, zone)),
    deck.grid.columns,
    deck.grid.rows,
  );
  return checkTiling(deck, zones, cells);
}

describe('gaps', () => {
  it('are told apart where they do not touch, largest first, with their place', () => {
    // 6 m × 1 m; missing: x 2 … 3 (cell 2) and 4 … 4.5 (cell 4)
    const found = tiling(box(0, 0, 6, 1), box(0, 0, 2, 1), box(3, 0, 4, 1), box(4.5, 0, 6, 1));
    expect(found.gaps).toEqual([
      { areaM2: expect.closeTo(1, 12), cell: 2 },
      { areaM2: expect.closeTo(0.5, 12), cell: 4 },
    ]);
    expect(found.gapM2).toBeCloseTo(1.5, 12);
    expect(found.coveredM2).toBeCloseTo(4.5, 12);
    expect(found.overlaps).toEqual([]);
  });

  it('that run on over several cells are one', () => {
    // A path of 0.2 m left bare over x 0 … 4 at y 1 … 1.2
    const found = tiling(box(0, 0, 4, 3), box(0, 0, 4, 1), box(0, 1.2, 4, 3));
    expect(found.gaps).toHaveLength(1);
    expect(found.gapM2).toBeCloseTo(0.8, 12);
  });

  it('do not count openings', () => {
    const found = tiling(holed(box(0, 0, 3, 3), hole(1, 1, 2.5, 2)), box(0, 0, 3, 3));
    expect(found.gaps).toEqual([]);
    // 9 − 1.5
    expect(found.coveredM2).toBeCloseTo(7.5, 12);
  });

  it('as thin as a millimetre are found', () => {
    // 1 mm × 2 m
    expect(tiling(box(0, 0, 4, 2), box(0, 0, 1.5, 2), box(1.501, 0, 4, 2)).gaps).toEqual([{ areaM2: expect.closeTo(0.002, 9), cell: 1 }]);
  });

  it('of rounding only are left out', () => {
    // 0.1 µm × 2 m = 2e-7 m²
    expect(tiling(box(0, 0, 4, 2), box(0, 0, 1.5, 2), box(1.500_000_1, 0, 4, 2)).gaps).toEqual([]);
  });
});

describe('overlaps', () => {
  it('of two zones', () => {
    // x 3 … 3.3 over a height of 2 m
    const found = tiling(box(0, 0, 6, 2), box(0, 0, 3.3, 2), box(3, 0, 6, 2));
    expect(found.overlaps).toEqual([{ a: 0, b: 1, areaM2: expect.closeTo(0.6, 12), cell: 3 }]);
    expect(found.overlapM2).toBeCloseTo(0.6, 12);
    expect(found.gapM2).toBe(0);
  });

  it('of three zones are told pair by pair, largest first', () => {
    // 0 … 3, 1 … 4.5 and 2 … 5: first and second 2 m², second and third 2.5, first and third 1
    const found = tiling(box(0, 0, 5, 1), box(0, 0, 3, 1), box(1, 0, 4.5, 1), box(2, 0, 5, 1));
    expect(found.overlaps.map(({ a, b, areaM2 }) => [a, b, areaM2])).toEqual([
      [1, 2, expect.closeTo(2.5, 12)],
      [0, 1, expect.closeTo(2, 12)],
      [0, 2, expect.closeTo(1, 12)],
    ]);
    expect(found.coveredM2).toBeCloseTo(5, 12);
    expect(found.gapM2).toBeCloseTo(0, 12);
  });

  it('of three zones within one cell leave the exact gap', () => {
    // x < 0.6, x > 0.4 and y < 0.5 fill the cell. Without the second: 0.6 + 0.5 − 0.3 = 0.8 filled, gap 0.2.
    expect(tiling(box(0, 0, 1, 1), box(0, 0, 0.6, 1), box(0.4, 0, 1, 1), box(0, 0, 1, 0.5)).gapM2).toBeCloseTo(0, 12);
    const two = tiling(box(0, 0, 1, 1), box(0, 0, 0.6, 1), box(0, 0, 1, 0.5));
    expect(two.gapM2).toBeCloseTo(0.2, 12);
    expect(two.overlapM2).toBeCloseTo(0.3, 12);
  });

  it('and gap in one cell do not cancel', () => {
    // Shares 0.5 + 0.5 = 1, yet y < x and y > 1 − x overlap on the right quarter and leave the left quarter bare.
    const found = tiling(box(0, 0, 1, 1), region([0, 0], [1, 0], [1, 1]), region([1, 0], [1, 1], [0, 1]));
    expect(found.gapM2).toBeCloseTo(0.25, 12);
    expect(found.overlapM2).toBeCloseTo(0.25, 12);
  });

  it('on the part beyond the deck do not count', () => {
    // Both zones reach 1 m beyond the deck; on it they share x 1 … 1.5.
    const found = tiling(box(0, 0, 2, 1), box(0, 0, 1.5, 2), box(1, 0, 2, 2));
    expect(found.overlapM2).toBeCloseTo(0.5, 12);
  });
});

it('tells nothing for zones that tile with slanting common edges', () => {
  const found = tiling(box(0, 0, 4, 4), region([0, 0], [1.3, 0], [2.6, 4], [0, 4]), region([1.3, 0], [4, 0], [4, 4], [2.6, 4]));
  expect([found.gaps, found.overlaps]).toEqual([[], []]);
  expect(found.coveredM2).toBeCloseTo(16, 9);
});
