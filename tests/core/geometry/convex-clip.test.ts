/** Polygons cut to convex shapes. */

import { describe, expect, it } from 'vitest';
import { areaInConvexM2, clipConvex, clipSide, polygonAreaM2 } from '../../../src/core/geometry/convex-clip.ts';
import { box, hole, holed, region } from '../../helpers/deck-builder.ts';

describe('area of a region in a triangle', () => {
  // Triangle (0, 0), (6, 0), (0, 6)
  const triangle = [0, 0, 6, 0, 0, 6];

  it.each([
    ['a square inside', box(1, 1, 2, 2), 1],
    ['a square that holds the triangle', box(-1, -1, 9, 9), 18],
    // 4 · 4 less the corner beyond x + y = 6, a triangle of 2 · 2/2
    ['a square cut at its corner', box(0, 0, 4, 4), 14],
    ['a square beyond', box(7, 7, 8, 8), 0],
    ['a square that touches', box(-2, 0, 0, 2), 0],
    // Square of 2 · 2 less its hole of 1 · 1
    ['a hole', holed(box(0, 0, 2, 2), hole(0.5, 0.5, 1.5, 1.5)), 3],
    // An L round the corner: 3 · 1 + 1 · 2
    ['a region that is not convex', region([0, 0], [3, 0], [3, 1], [1, 1], [1, 3], [0, 3]), 5],
    // A U whose two arms leave the triangle apart: of 1 · 8 each, y from 0 to 6 − x: 5.5 and 3.5 · 1 with foot 1 · 1 between
    ['a region that falls apart', region([0, 0], [3, 0], [3, 8], [2, 8], [2, 1], [1, 1], [1, 8], [0, 8]), 5.5 + 3.5 + 1],
  ])('%s', (_, shape, areaM2) => {
    expect(areaInConvexM2(shape, triangle)).toBeCloseTo(areaM2, 12);
  });
});

it('keeps one side of a line: of a unit square what lies below y = 0.25', () => {
  expect(polygonAreaM2(clipSide([0, 0, 1, 0, 1, 1, 0, 1], 0, 1, 0.25))).toBeCloseTo(0.25, 12);
});

it('leaves nothing of polygons apart', () => {
  expect(clipConvex([0, 0, 1, 0, 1, 1], [5, 5, 6, 5, 6, 6])).toEqual([]);
});
