/** A person on a level square of 10 m by 10 m with a shaft in its middle: expected places follow from the girth of 0.3 m. */

import { describe, expect, it } from 'vitest';
import type { SurfaceAt } from '../../src/view3d/top-index.ts';
import { heading, placed, walked } from '../../src/view3d/walker.ts';

/** A 1 m step up from x = 8 on; a shaft from 4 to 6. */
const surfaceAt: SurfaceAt = (x, y) => {
  if (x < 0 || y < 0 || x > 10 || y > 10) return null;
  if (x > 4 && x < 6 && y > 4 && y < 6) return null;
  return { part: 0, zM: x >= 8 ? 1 : 0 };
};
const terrain = { surfaceAt, obstacles: [{ distanceM: (x: number, y: number) => Math.hypot(x - 2, y - 8) - 0.2 }] };
const at = (x: number, y: number) => ({ x, y, zM: 0, headingDeg: 0, pitchDeg: 0 });

describe('walked', () => {
  it('goes its way on free ground', () => {
    const foot = walked(terrain, at(1, 1), [1, 0.5]);
    expect(foot.x).toBeCloseTo(2, 9);
    expect(foot.y).toBeCloseTo(1.5, 9);
  });

  it.each([
    ['edge', at(1, 2), [-5, 0], (x: number) => x >= 0.3 && x < 0.46],
    ['shaft', at(1, 5), [8, 0], (x: number) => x <= 3.7 && x > 3.54],
    ['step too high', at(6.5, 2), [3, 0], (x: number) => x <= 7.7 && x > 7.54],
    // Trunk of 0.2 m and girth of 0.3 m: no nearer than 0.5 m to x = 2.
    ['trunk', at(0.8, 8), [3, 0], (x: number) => x <= 1.5 && x > 1.34],
  ] as const)('stops at the %s', (_, from, by, holds) => {
    expect(holds(walked(terrain, from, by).x)).toBe(true);
  });

  it('goes along an edge it runs into', () => {
    const foot = walked(terrain, at(1, 2), [-3, 3]);
    expect(foot.x).toBeLessThan(0.46);
    expect(foot.y).toBeGreaterThan(4);
  });
});

it('looks clockwise from +y', () => {
  expect(heading(90, 1, 0).map((value) => Math.round(1e9 * value) / 1e9)).toEqual([1, 0]);
  expect(heading(0, 0, 1)).toEqual([1, 0]);
});

it('finds ground beside a shaft, and none far off the deck', () => {
  const foot = placed(terrain, [5, 5], 0);
  expect(foot).not.toBeNull();
  expect(surfaceAt(foot!.x, foot!.y)).not.toBeNull();
  expect(placed(terrain, [200, 200], 0)).toBeNull();
});
