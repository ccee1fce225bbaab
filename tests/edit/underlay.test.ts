/** A picture placed by two of its points; by hand. */

import { expect, it } from 'vitest';
import { pixelOfPlan, placedByDistance, placedByPoints, planOfPixel, type UnderlayPlace } from '../../src/edit/underlay.ts';

const place = (result: ReturnType<typeof placedByPoints>): UnderlayPlace => {
  if ('refused' in result) throw new Error(result.refused);
  return result;
};

it('100 px to the right are 5 m to the east: 0.05 m a pixel, down is south', () => {
  const at = place(
    placedByPoints(
      [
        [10, 20],
        [110, 20],
      ],
      [
        [2, 3],
        [7, 3],
      ],
    ),
  );
  expect(planOfPixel(at, [10, 20])).toEqual([2, 3]);
  expect(planOfPixel(at, [10, 40])).toEqual([2, 2]);
});

it('a picture that lies on its side: to the right is north, down is east', () => {
  const at = place(
    placedByPoints(
      [
        [0, 0],
        [100, 0],
      ],
      [
        [392_000, 5_812_000],
        [392_000, 5_812_010],
      ],
    ),
  );
  expect(planOfPixel(at, [0, 50])).toEqual([392_005, 5_812_000]);
  const [u, v] = pixelOfPlan(at, [392_001, 5_812_002]);
  expect([u, v].map((n) => Number(n.toFixed(6)))).toEqual([20, 10]);
});

it('both points come to lie where they should, and every pixel finds back', () => {
  const at = place(
    placedByPoints(
      [
        [13, 57],
        [431, 222],
      ],
      [
        [4, 9],
        [-3, 17],
      ],
    ),
  );
  for (const [pixel, to] of [
    [
      [13, 57],
      [4, 9],
    ],
    [
      [431, 222],
      [-3, 17],
    ],
  ] as const) {
    const [x, y] = planOfPixel(at, pixel);
    expect(Math.hypot(x - to[0], y - to[1])).toBeLessThan(1e-12);
    const [u, v] = pixelOfPlan(at, to);
    expect(Math.hypot(u - pixel[0], v - pixel[1])).toBeLessThan(1e-9);
  }
});

it('by their distance: the first stays, the turn stays, 10 m become 25 m', () => {
  const now: UnderlayPlace = { a: 0.1, b: 0, dx: 1, dy: 2 };
  const at = place(
    placedByDistance(
      [
        [0, 0],
        [100, 0],
      ],
      25,
      now,
    ),
  );
  expect(at).toEqual({ a: 0.25, b: 0, dx: 1, dy: 2 });
});

it('two points that are one, or no distance, give no place', () => {
  expect(
    placedByPoints(
      [
        [1, 1],
        [1, 1],
      ],
      [
        [0, 0],
        [1, 1],
      ],
    ),
  ).toEqual({ refused: 'same point' });
  expect(
    placedByPoints(
      [
        [1, 1],
        [2, 1],
      ],
      [
        [0, 0],
        [0, 0],
      ],
    ),
  ).toEqual({ refused: 'same point' });
  expect(
    placedByDistance(
      [
        [0, 0],
        [1, 0],
      ],
      0,
      { a: 1, b: 0, dx: 0, dy: 0 },
    ),
  ).toEqual({ refused: 'length not above 0' });
});
