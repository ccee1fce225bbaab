/** Objects and heaps: load per cell, weight, what each bay gets, what stands beyond the deck. */

import { describe, expect, it } from 'vitest';
import { layBays } from '../../../src/core/geometry/bay-split.ts';
import { gridOver } from '../../../src/core/geometry/grid.ts';
import { layDeck } from '../../../src/core/geometry/region-cells.ts';
import { layStanding, type StandingLoad } from '../../../src/core/loads/standing.ts';
import type { Ring } from '../../../src/model/deck-input.ts';
import { box, boxRing, hole, holed, ring } from '../../helpers/deck-builder.ts';

/** 4 m × 2 m, an opening x 3 … 4, y 1 … 2; bays meet at x = 1.5. */
const SHAPE = holed(box(0, 0, 4, 2), hole(3, 1, 4, 2));
const DECK = layDeck(gridOver(SHAPE.outer, 1, [0, 0]), SHAPE);
const BAYS = layBays(DECK, [box(0, 0, 1.5, 2), box(1.5, 0, 4, 2)]);

const stand = (...pieces: readonly (readonly [Ring, number])[]): StandingLoad =>
  layStanding(
    DECK,
    BAYS,
    null,
    pieces.map(([footprint, kNm2]) => ({ ring: footprint, kNm2 })),
  );
const onCell = (load: StandingLoad, cell: number) => {
  const i = load.sparse.cells.indexOf(cell);
  return i < 0 ? 0 : load.sparse.kNm2[i];
};

describe('a block', () => {
  it('stands on its cells by area and on each bay by area', () => {
    // x 0.5 … 2, y 0 … 1 at 3 kN/m²: 1.5 m² · 3 = 4.5 kN; bays: 1 m² and 0.5 m²
    const load = stand([boxRing(0.5, 0, 2, 1), 3]);
    expect(load.weightKN).toBeCloseTo(4.5, 12);
    expect([onCell(load, 0), onCell(load, 1), onCell(load, 4)]).toEqual([expect.closeTo(1.5, 12), expect.closeTo(3, 12), 0]);
    expect([...load.bayKN]).toEqual([expect.closeTo(3, 12), expect.closeTo(1.5, 12)]);
    expect([load.outsideM2, load.outsideKN]).toEqual([0, 0]);
  });

  it('beyond the deck and over an opening is told apart', () => {
    // x 2.5 … 5, y 0.5 … 2: 3.75 m². On the deck: y 0.5 … 1 for x 2.5 … 4 (0.75) and y 1 … 2 for x 2.5 … 3 (0.5).
    const load = stand([boxRing(2.5, 0.5, 5, 2), 2]);
    expect(load.weightKN).toBeCloseTo(2.5, 12);
    expect(load.outsideM2).toBeCloseTo(2.5, 12);
    expect(load.outsideKN).toBeCloseTo(5, 12);
    expect(load.bayKN[1]).toBeCloseTo(2.5, 12);
  });

  it('slanting across the border of two bays is split exactly', () => {
    // Triangle (1, 0) (2, 0) (2, 1), 8 kN/m²: left of x = 1.5 a triangle of 1/8 m², right of it 3/8 m²
    const load = stand([ring([1, 0], [2, 0], [2, 1]), 8]);
    expect([...load.bayKN]).toEqual([expect.closeTo(1, 12), expect.closeTo(3, 12)]);
  });
});

it('pieces that overlap add', () => {
  // Two strips of a wall that turns a corner share x 1 … 2, y 0 … 1.
  const load = stand([boxRing(0, 0, 2, 1), 5], [boxRing(1, 0, 2, 2), 5]);
  expect(onCell(load, 1)).toBeCloseTo(10, 12);
  expect(onCell(load, 0)).toBeCloseTo(5, 12);
  expect(load.weightKN).toBeCloseTo(20, 12);
});
