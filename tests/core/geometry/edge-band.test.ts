/** The band along open edges, counted by hand. */

import { expect, it } from 'vitest';
import { edgeBandCells } from '../../../src/core/geometry/edge-band.ts';
import { layDeck } from '../../../src/core/geometry/region-cells.ts';
import { box, gridOf, hole, holed } from '../../helpers/deck-builder.ts';

const count = (cells: Uint8Array) => cells.reduce((sum, one) => sum + one, 0);

it('10 m × 10 m, band 2 m: centres at 0.5 and 1.5 from an edge, all but 6 × 6 cells', () => {
  expect(count(edgeBandCells(layDeck(gridOf(10, 10), box(0, 0, 10, 10)), 2))).toBe(100 - 36);
});

it('an opening has a band of its own, and no cells inside', () => {
  // Opening of 1 cell in the midst of 11 × 11: rows 5, columns 5. Beyond the outer band (7 × 7 left, columns 2 to 8) lie about it the cells whose
  // centres are within 2 m of its sides: 3 columns × 5 rows and 5 × 3 (sides 0.5 and 1.5 away), and the 4 corners at (1.5, 1.5): √4.5 = 2.12 are not.
  const ground = layDeck(gridOf(11, 11), holed(box(0, 0, 11, 11), hole(5, 5, 6, 6)));
  const cells = edgeBandCells(ground, 2);
  expect(cells[5 * 11 + 5]).toBe(0);
  expect([cells[5 * 11 + 7], cells[7 * 11 + 6], cells[7 * 11 + 7], cells[5 * 11 + 8]]).toEqual([1, 1, 0, 0]);
  // 121 − 49 outside, and 5 × 5 less 4 corners less the opening itself.
  expect(count(cells)).toBe(72 + 20);
});
