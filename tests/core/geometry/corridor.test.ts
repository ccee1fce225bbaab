/** The ground a vehicle covers: areas by hand. */

import { expect, it } from 'vitest';
import { polygonAreaM2 } from '../../../src/core/geometry/convex-clip.ts';
import { corridorPieces } from '../../../src/core/geometry/corridor.ts';
import { isInside } from '../../../src/core/geometry/ring.ts';
import { ring } from '../../helpers/deck-builder.ts';

const area = (pieces: readonly number[][]) => pieces.reduce((sum, piece) => sum + polygonAreaM2(piece), 0);
const covers = (pieces: readonly number[][], x: number, y: number) =>
  pieces.some((piece) => isInside({ outer: Float64Array.from(piece), holes: [] }, x, y));

it('straight: length times width', () => {
  expect(area(corridorPieces(ring([1, 1], [4, 5]), 2))).toBeCloseTo(5 * 2, 12);
});

it('right angle: 11 · 2 + 2 · 9 = 40 m², with the outer corner and nothing twice', () => {
  const pieces = corridorPieces(ring([0, 0], [10, 0], [10, 10]), 2);
  expect(area(pieces)).toBeCloseTo(40, 9);
  expect([covers(pieces, 10.9, -0.9), covers(pieces, 9.1, 0.9), covers(pieces, 8.9, 1.1)]).toEqual([true, true, false]);
  for (const piece of pieces) expect(polygonAreaM2(piece)).toBeGreaterThan(0);
});

it('right back: the strip there and back, and half a width beyond', () => {
  const pieces = corridorPieces(ring([0, 0], [10, 0], [2, 0]), 2);
  expect(covers(pieces, 10.9, 0.9)).toBe(true);
  expect(area(pieces)).toBeCloseTo(11 * 2 + 9 * 2, 9);
});

it('a short leg in a sharp corner leaves no ground out', () => {
  const pieces = corridorPieces(ring([0, 0], [10, 0], [10, 0.5], [0, 0.5]), 2);
  expect([covers(pieces, 5, -0.9), covers(pieces, 5, 1.4), covers(pieces, 10.5, 0.25), covers(pieces, 9.5, 0.25)]).toEqual([
    true,
    true,
    true,
    true,
  ]);
});
