/** Area common to polygons, by hand. */

import { expect, it } from 'vitest';
import { commonAreaM2 } from '../../../src/core/geometry/common-area.ts';
import { box, ring } from '../../helpers/deck-builder.ts';

it('two squares of 4 that share a corner of 1 by 2: 2 m²; apart or touching: 0', () => {
  expect(commonAreaM2([box(0, 0, 4, 4), box(3, 2, 7, 6)])).toBeCloseTo(2, 12);
  expect(commonAreaM2([box(0, 0, 4, 4), box(4, 0, 8, 4)])).toBe(0);
  expect(commonAreaM2([box(0, 0, 4, 4), box(5, 0, 8, 4)])).toBe(0);
});

it('with a third, a triangle of half the square, and a hole of 0.5 by 0.5 in it', () => {
  const triangle = { outer: ring([0, 0], [4, 0], [0, 4]), holes: [] };
  expect(commonAreaM2([box(0, 0, 4, 4), triangle])).toBeCloseTo(8, 12);
  const holed = { outer: box(0, 0, 4, 4).outer, holes: [ring([1, 1], [1, 1.5], [1.5, 1.5], [1.5, 1])] };
  expect(commonAreaM2([holed, triangle, box(0, 0, 2, 2)])).toBeCloseTo(4 - 0.25, 12);
});
