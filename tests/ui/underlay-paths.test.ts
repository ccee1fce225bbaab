/** Lines under the plan: the coordinates of the drawing come back to the digit. */

import { expect, it } from 'vitest';
import { underlayPath, underlayPoints } from '../../src/ui/facts/underlay-paths.ts';

/** Corner at (392000.1, 5812000.7): what lies at (392001.334, 5812004) is 1.234 and 3.3 from it, with crumbs. */
const AT = [392_000.1, 5_812_000.7] as const;
const layer = (name: string, points: readonly number[], starts: readonly number[]) => ({
  name,
  points: Float64Array.from(points),
  starts: Uint32Array.from(starts),
});
const BEDS = layer('Beds', [392_001.334 - AT[0], 5_812_004 - AT[1], 0, 0, 5, 6], [0, 2]);

it('points add up to what stands in the drawing; hidden layers are left out', () => {
  const lines = underlayPoints({ at: AT, layers: [BEDS, layer('Axes', [1, 1, 2, 2], [0])], off: new Set(['Axes']) });
  expect(lines).toEqual([
    [
      [392_001.334, 5_812_004],
      [392_000.1, 5_812_000.7],
    ],
    [[392_005.1, 5_812_006.7]],
  ]);
});

it('a path in metres, a place as a dot', () => {
  expect(underlayPath(layer('Beds', [0, 0, 2, 1.5, 5, 6], [0, 2]))).toBe('M0 0L2 1.5M5 6h0');
});
