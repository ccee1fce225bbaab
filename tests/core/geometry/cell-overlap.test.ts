/** Area common to regions within one cell, where the product of their shares would be wrong. */

import { expect, it } from 'vitest';
import { sharedInCell } from '../../../src/core/geometry/cell-overlap.ts';
import { box, gridOf, hole, holed, region } from '../../helpers/deck-builder.ts';

const UNIT = gridOf(1, 1);
const LOWER_RIGHT = region([0, 0], [1, 0], [1, 1]);
const LOWER_LEFT = region([0, 0], [1, 0], [0, 1]);

it.each([
  ['one region: its own share', [LOWER_RIGHT], 0.5],
  ['across each other: 0.6 · 0.5', [box(0, 0, 0.6, 1), box(0, 0, 1, 0.5)], 0.3],
  ['side by side: nothing (the product would be 0.16)', [box(0, 0, 0.4, 1), box(0.6, 0, 1, 1)], 0],
  ['along each other: 0.6 − 0.4 (the product would be 0.36)', [box(0, 0, 0.6, 1), box(0.4, 0, 1, 1)], 0.2],
  ['two triangles: the quarter under both diagonals', [LOWER_RIGHT, LOWER_LEFT], 0.25],
  ['the same region twice: itself', [LOWER_RIGHT, LOWER_RIGHT], 0.5],
  ['with a hole: half less a quarter', [holed(box(0, 0, 1, 1), hole(0, 0, 0.5, 0.5)), box(0, 0, 0.5, 1)], 0.25],
  ['three: 0.4 · 0.5', [box(0, 0, 0.6, 1), box(0.2, 0, 1, 1), box(0, 0, 1, 0.5)], 0.2],
  [
    'not convex: the notch of the U is missing, 1 − 0.2 · 0.5 of the strip x 0.2 … 0.8 is 0.6 − 0.1',
    [region([0, 0], [1, 0], [1, 1], [0.6, 1], [0.6, 0.5], [0.4, 0.5], [0.4, 1], [0, 1]), box(0.2, 0, 0.8, 1)],
    0.5,
  ],
])('%s', (_, regions, share) => {
  expect(sharedInCell(UNIT, 0, regions)).toBeCloseTo(share, 12);
});

it('counts in the cell asked for, as a share of it', () => {
  // Cell 4 of 3 × 2 cells of 0.5 m is x 10.5 … 11, y 5.5 … 6; of it x < 10.75 and y > 5.75: a quarter
  const grid = { columns: 3, rows: 2, cellM: 0.5, x0M: 10, y0M: 5 };
  expect(sharedInCell(grid, 4, [box(9, 4, 10.75, 7), box(10, 5.75, 12, 9)])).toBeCloseTo(0.25, 12);
});
