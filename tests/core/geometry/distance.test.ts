/** True distances: points and lines against straight pieces, regions and boxes. */

import { describe, expect, it } from 'vitest';
import { boundsMeet, crossingShare, nearestOfRegion, nearestOnPiece } from '../../../src/core/geometry/distance.ts';
import { box, hole, holed, region } from '../../helpers/deck-builder.ts';

describe('nearest point of a piece', () => {
  it.each([
    // Piece (0, 0)–(4, 0)
    ['beside it', [1, 3], { distanceM: 3, x: 1, y: 0 }],
    ['beyond its end: 3, 4, 5', [7, 4], { distanceM: 5, x: 4, y: 0 }],
    ['on it', [2, 0], { distanceM: 0, x: 2, y: 0 }],
  ])('%s', (_, [x, y], nearest) => {
    expect(nearestOnPiece([0, 0, 4, 0], x, y)).toEqual(nearest);
  });

  it('of a piece of no length: the point itself', () => {
    expect(nearestOnPiece([1, 1, 1, 1], 4, 5)).toEqual({ distanceM: 5, x: 1, y: 1 });
  });
});

describe('nearest of a region', () => {
  const square = box(2, 2, 6, 6);

  it.each<[string, number[], number, [number, number] | null]>([
    ['a point beside a side', [4, 0.5], 1.5, [4, 2]],
    // Legs 1.5 and 2: 2.5 by Pythagoras
    ['a point before a corner', [0.5, 0], 2.5, [2, 2]],
    ['a point inside', [3, 3], 0, [3, 3]],
    // The same all along, so the place is open
    ['a line along a side, 0.3 m off', [0, 6.3, 9, 6.3], 0.3, null],
    ['a line that ends before the region', [0, 4, 1.2, 4], 0.8, [2, 4]],
    ['a line of two pieces, the second one nearer', [0, 0, 9, 0, 9, 4, 7, 4], 1, [6, 4]],
  ])('%s', (_, line, distanceM, place) => {
    const found = nearestOfRegion(line, square);
    expect(found.distanceM).toBeCloseTo(distanceM, 12);
    if (place) expect([found.x, found.y]).toEqual(place);
  });

  it('is 0 for a line that passes right through', () => {
    expect(nearestOfRegion([0, 4, 9, 4], square).distanceM).toBe(0);
  });

  it('of a slanted side: distance by the foot of the perpendicular', () => {
    // Side from (4, 0) to (0, 3), length 5; the origin is 4 · 3/5 = 2.4 away, foot at (1.44, 1.92)
    const found = nearestOfRegion([0, 0], region([4, 0], [4, 3], [0, 3]));
    expect(found.distanceM).toBeCloseTo(2.4, 12);
    expect([found.x, found.y]).toEqual([expect.closeTo(1.44, 12), expect.closeTo(1.92, 12)]);
  });

  it('counts the side of a hole: a point in it lies outside the region', () => {
    const found = nearestOfRegion([3.5, 4], holed(square, hole(3, 3, 5, 5)));
    expect(found).toEqual({ distanceM: 0.5, x: 3, y: 4 });
  });

  it('gives the crossing as the place where a line enters', () => {
    expect(nearestOfRegion([1, 3, 3, 3], square)).toEqual({ distanceM: 0, x: 2, y: 3 });
  });
});

describe('crossing', () => {
  it.each<[string, number[], number | null]>([
    ['a quarter of the way', [1, -1, 1, 1], 0.25],
    ['at the very end', [4, -1, 4, 1], 1],
    ['too short to reach', [1, 1, 1, 2], null],
    ['parallel', [0, 1, 4, 1], null],
  ])('%s', (_, to, share) => {
    expect(crossingShare([0, 0, 4, 0], to)).toBe(share);
  });
});

it('boxes meet where they overlap or touch', () => {
  const one = { minX: 0, minY: 0, maxX: 1, maxY: 1 };
  expect(boundsMeet(one, { minX: 0.5, minY: 0.5, maxX: 6, maxY: 6 })).toBe(true);
  expect(boundsMeet(one, { minX: 1, minY: 0, maxX: 6, maxY: 6 })).toBe(true);
  expect(boundsMeet(one, { minX: 0.5, minY: 1.1, maxX: 6, maxY: 6 })).toBe(false);
});
