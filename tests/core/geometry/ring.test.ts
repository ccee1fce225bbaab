/** Rings: areas and centroids by cutting into rectangles by hand. */

import { describe, expect, it } from 'vitest';
import { boundsOf, centroidM, directedRing, isInside, regionAreaM2, ringsOf, signedAreaM2 } from '../../../src/core/geometry/ring.ts';
import { box, boxRing, type Corner, hole, holed, region, ring } from '../../helpers/deck-builder.ts';

/** 4 × 1 lying, 1 × 2 standing on its left end. */
const ELL: readonly Corner[] = [
  [0, 0],
  [4, 0],
  [4, 1],
  [1, 1],
  [1, 3],
  [0, 3],
];

describe('area and centroid', () => {
  it('of an L: 4 · 1 + 1 · 2 = 6, clockwise negative', () => {
    expect(signedAreaM2(ring(...ELL))).toBe(6);
    expect(signedAreaM2(ring(...[...ELL].reverse()))).toBe(-6);
  });

  it('keeps all digits far from the origin', () => {
    const far = ELL.map(([x, y]): Corner => [x + 3_500_000, y + 5_800_000]);
    expect(signedAreaM2(ring(...far))).toBe(6);
  });

  it('puts the centroid of the L at the weighted mean of its two rectangles', () => {
    // 4 m² at (2, 0.5) and 2 m² at (0.5, 2): x = (4·2 + 2·0.5)/6 = 1.5, y = (4·0.5 + 2·2)/6 = 1
    const [x, y] = centroidM(ring(...ELL));
    expect(x).toBeCloseTo(1.5, 12);
    expect(y).toBeCloseTo(1, 12);
  });

  it('takes holes off: 6 · 4 − 2 · 1 − 1 · 1 = 21', () => {
    const shape = holed(box(0, 0, 6, 4), hole(1, 1, 3, 2), hole(4, 2, 5, 3));
    expect(regionAreaM2(shape)).toBe(21);
    expect(ringsOf(shape)).toEqual([shape.outer, ...shape.holes]);
  });
});

describe('direction and bounds', () => {
  it('leaves a ring of the wanted direction alone and reverses the other', () => {
    const lower = boxRing(0, 0, 2, 1);
    expect(directedRing(lower, true)).toBe(lower);
    expect([...directedRing(lower, false)]).toEqual([0, 1, 2, 1, 2, 0, 0, 0]);
  });

  it('gives the smallest upright box', () => {
    expect(boundsOf(ring([2, -1], [5, 3], [-4, 2]))).toEqual({ minX: -4, minY: -1, maxX: 5, maxY: 3 });
  });
});

describe('inside', () => {
  it('counts lower and left edges in, upper and right edges out', () => {
    const unit = box(0, 0, 1, 1);
    const corners: Corner[] = [
      [0, 0],
      [0.5, 0],
      [0, 0.5],
      [1, 0.5],
      [0.5, 1],
      [1, 1],
    ];
    expect(corners.map(([x, y]) => isInside(unit, x, y))).toEqual([true, true, true, false, false, false]);
  });

  it('gives every point of a shared slanting edge to exactly one neighbour', () => {
    const left = region([0, 0], [1.3, 0], [2.9, 4], [0, 4]);
    const right = region([1.3, 0], [5, 0], [5, 4], [2.9, 4]);
    for (let k = 0; k < 16; k++) {
      const y = k / 4;
      // The edge from (1.3, 0) to (2.9, 4) runs 0.4 m across per metre up.
      const x = 1.3 + 0.4 * y;
      expect([isInside(left, x, y), isInside(right, x, y)].filter(Boolean), `at ${x}, ${y}`).toHaveLength(1);
    }
  });

  it('is not inside a hole', () => {
    const frame = holed(box(0, 0, 4, 4), hole(1, 1, 3, 3));
    expect(isInside(frame, 0.5, 2)).toBe(true);
    expect(isInside(frame, 2, 2)).toBe(false);
    expect(isInside(frame, 3.5, 2)).toBe(true);
  });
});
