/** The cut plane from direction and position. Expected values by hand for bounds of 10 × 6 m. */

import { describe, expect, it } from 'vitest';
import { cutPlane } from '../../src/view3d/cut-plane.ts';

const BOUNDS = { min: [0, 0, 0], max: [10, 6, 1] } as const;
const plane = (lookDeg: number, position: number) => cutPlane(BOUNDS, { on: true, lookDeg, position });

describe('cut plane', () => {
  it.each([
    // Looking north: from y = 0 to y = 6.
    [0, 0.5, 3],
    [0, 0, 0],
    [0, 1, 6],
    // Looking east: from x = 0 to x = 10.
    [90, 0.25, 2.5],
    // Looking south: from -6 to 0 along (0, -1).
    [180, 0.5, -3],
    [180, 0.25, -4.5],
    // Looking north-east: from 0 to (10 + 6) / √2 = 11.3137.
    [45, 0.5, 5.656854249],
  ])('looking %i°, at %f: %f m along the look', (lookDeg, position, offsetM) => {
    expect(plane(lookDeg, position).offsetM).toBeCloseTo(offsetM, 8);
  });

  it('goes through its own point', () => {
    const { x, y, lookX, lookY, offsetM } = plane(60, 0.3);
    expect(x * lookX + y * lookY).toBeCloseTo(offsetM, 9);
    expect(Math.hypot(lookX, lookY)).toBeCloseTo(1, 12);
  });
});
