/** Bays on cells, and how a region is shared among them, exact where all boundaries meet in one cell. */

import { describe, expect, it } from 'vitest';
import { layBays, splitAmongBays } from '../../../src/core/geometry/bay-split.ts';
import { gridOver } from '../../../src/core/geometry/grid.ts';
import { layDeck, layRegion } from '../../../src/core/geometry/region-cells.ts';
import type { Region } from '../../../src/model/deck-input.ts';
import { box, region } from '../../helpers/deck-builder.ts';

function setUp(deckShape: Region, ...bays: Region[]) {
  const deck = layDeck(gridOver(deckShape.outer, 1, [0, 0]), deckShape);
  const laid = layBays(deck, bays);
  const split = (shape: Region) => {
    const pieces = splitAmongBays(deck, laid, shape, layRegion(deck, shape));
    return [...pieces.bays].map((bay, i) => ({ bay, share: pieces.shares[i] }));
  };
  return { deck, bays: laid, split };
}

/** Deck 2 m × 1 m, bays meeting at x = 0.5. */
const TWO = () => setUp(box(0, 0, 2, 1), box(0, 0, 0.5, 1), box(0.5, 0, 2, 1));

describe('bays on cells', () => {
  it('have a cell alone, or share it', () => {
    const { bays } = TWO();
    expect([...bays.sole]).toEqual([-2, 1]);
    expect(bays.shared.get(0)).toEqual([
      { bay: 0, share: 0.5 },
      { bay: 1, share: 0.5 },
    ]);
  });

  it('judge the cells whose centre is theirs, and all their cells where no centre is', () => {
    const { bays } = TWO();
    // The centre (0.5, 0.5) lies on the common edge, which is the left edge of the second bay.
    expect([...bays.judged[1]].sort()).toEqual([0, 1]);
    expect([...bays.judged[0]]).toEqual([0]);
  });

  it('have an edge cell alone if they have all the deck in it', () => {
    const { bays } = setUp(box(0, 0, 1.5, 1), box(0, 0, 1.5, 1));
    expect([...bays.sole]).toEqual([0, 0]);
  });

  it('leave cells without a bay', () => {
    expect([...setUp(box(0, 0, 3, 1), box(0, 0, 1.5, 1)).bays.sole]).toEqual([0, -2, -1]);
  });

  it('that overlap share the cell they overlap in, whole', () => {
    const { bays } = setUp(box(0, 0, 3, 1), box(0, 0, 2, 1), box(1, 0, 3, 1));
    expect([...bays.sole]).toEqual([0, -2, 1]);
    expect(bays.shared.get(1)).toEqual([
      { bay: 0, share: 1 },
      { bay: 1, share: 1 },
    ]);
  });
});

describe('a region among bays', () => {
  const byBay = (pieces: readonly { bay: number; share: number }[]) =>
    [0, 1].map((bay) => pieces.filter((p) => p.bay === bay).reduce((sum, p) => sum + p.share, 0));

  it('across the border: half of each half', () => {
    const shares = byBay(TWO().split(box(0, 0, 2, 0.5)));
    expect(shares[0]).toBeCloseTo(0.25, 12);
    expect(shares[1]).toBeCloseTo(0.25, 12);
  });

  it('slanting: the triangle y < x has 1/8 left of x = 0.5 and 3/8 right of it (products would say 1/4 each)', () => {
    const shares = byBay(TWO().split(region([0, 0], [1, 0], [1, 1])));
    expect(shares[0]).toBeCloseTo(1 / 8, 12);
    expect(shares[1]).toBeCloseTo(3 / 8, 12);
  });

  it('on one side only has nothing on the other', () => {
    expect(byBay(TWO().split(box(0.6, 0, 0.9, 1)))).toEqual([0, expect.closeTo(0.3, 12)]);
  });

  it('where the deck ends in the same cell too', () => {
    // Deck y < 0.6; triangle y < x; left of 0.5: all 1/8 of it; right: x from 0.5: ∫ min(x, 0.6) dx = (0.5 + 0.6)/2 · 0.1 + 0.6 · 0.4 = 0.295
    const { split } = setUp(box(0, 0, 1, 0.6), box(0, 0, 0.5, 1), box(0.5, 0, 1, 1));
    const shares = byBay(split(region([0, 0], [1, 0], [1, 1])));
    expect(shares[0]).toBeCloseTo(0.125, 12);
    expect(shares[1]).toBeCloseTo(0.295, 12);
  });

  it('names no pieces in cells that are one bay’s alone', () => {
    expect(TWO().split(box(1, 0, 2, 1))).toEqual([]);
  });
});
