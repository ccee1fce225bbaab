/** Rectangles of heaps, and bays under them. */

import { describe, expect, it } from 'vitest';
import { baysUnder, rectangleOf, rectangleOutline } from '../../src/edit/stockpiles.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { bay, rect, sceneOf } from '../helpers/scene-builder.ts';

describe('rectangles', () => {
  it('are known open or closed, either way round, from any corner', () => {
    const points = rect(1, 2, 4, 3.5);
    const wanted = { xM: 1, yM: 2, lengthM: 3, widthM: 1.5 };
    for (const outline of [points, [...points, points[0]!], [...points].reverse(), [...points.slice(2), ...points.slice(0, 2)]])
      expect(rectangleOf(outline)).toEqual(wanted);
    expect(rectangleOutline(wanted)).toEqual(points);
  });

  it('are not what stands at an angle or has another number of corners', () => {
    expect(rectangleOf([...rect(0, 0, 2, 2).slice(0, 3), [0, 2.1]])).toBeNull();
    expect(rectangleOf(rect(0, 0, 2, 2).slice(0, 3))).toBeNull();
  });

  it('come back with the extents typed', () => {
    // 1.1 + 2.2 is 3.3000000000000003 in binary.
    expect(rectangleOf(rectangleOutline({ xM: 1.1, yM: 0.7, lengthM: 2.2, widthM: 0.1 }))).toEqual({
      xM: 1.1,
      yM: 0.7,
      lengthM: 2.2,
      widthM: 0.1,
    });
  });
});

describe('bays under a heap', () => {
  const at = (dx: number, dy: number) => (points: readonly PointM[]) => points.map(([x, y]): PointM => [x + dx, y + dy]);
  it.each([
    [0, 0],
    [392_000, 5_812_000],
  ])('come with most of it first, and not where they only touch; at %s, %s', (dx, dy) => {
    const put = at(dx, dy);
    const scene = sceneOf({
      deck: {
        outline: put(rect(0, 0, 9, 3)),
        bays: [bay('A', put(rect(0, 0, 3, 3))), bay('B', put(rect(3, 0, 6, 3))), bay('C', put(rect(6, 0, 9, 3)))],
      },
    });
    // 0.5 m in A, 3 m in B, and the edge of C.
    expect(baysUnder(scene, put(rect(2.5, 1, 6, 2)))).toEqual(['B', 'A']);
  });
});
