/** Levels along straight pieces: linear on planes, bent where a piece crosses a side of the net. */

import { expect, it } from 'vitest';
import { netSurface } from '../../../src/core/levels/net.ts';
import { levelProfile, profileLevelM } from '../../../src/core/levels/profile.ts';
import { levelSurface } from '../../../src/core/levels/surface.ts';

/** Two planes that meet in a valley at x = 4: level 0.08 at x = 0 and 8, 0 in the valley. */
const VALLEY = netSurface(
  {
    spots: Float64Array.of(0, 0, 0.08, 8, 0, 0.08, 0, 4, 0.08, 8, 4, 0.08),
    breaklines: [Float64Array.of(4, 0, 0, 4, 4, 0)],
  },
  100,
);

it('on a plane: its two ends', () => {
  expect(levelProfile(levelSurface(0.3), [0, 0, 5, 0])).toEqual({ at: [0, 1], levelsM: [0.3, 0.3] });
});

it('over a valley: bends in it', () => {
  // From (1, 1) to (7, 1): 0.06, down to 0 half-way, up to 0.06
  const profile = levelProfile(VALLEY, [1, 1, 7, 1]);
  expect(profileLevelM(profile, 0)).toBeCloseTo(0.06, 12);
  expect(profileLevelM(profile, 0.25)).toBeCloseTo(0.03, 12);
  expect(profileLevelM(profile, 0.5)).toBeCloseTo(0, 12);
  expect(profileLevelM(profile, 1)).toBeCloseTo(0.06, 12);
  expect(profile.at.some((share) => Math.abs(share - 0.5) < 1e-12)).toBe(true);
});

it('along a side of the net: nothing is lost between two triangles', () => {
  const profile = levelProfile(VALLEY, [4, 0, 4, 4]);
  for (const share of [0, 0.3, 0.7, 1]) expect(profileLevelM(profile, share)).toBeCloseTo(0, 12);
});

it('goes on beyond the net by the level of its nearest point', () => {
  // From (4, 2) to (12, 2): 0 up to 0.08 at x = 8, the share of one half, then level
  const profile = levelProfile(VALLEY, [4, 2, 12, 2]);
  expect(profileLevelM(profile, 0.25)).toBeCloseTo(0.04, 12);
  expect(profileLevelM(profile, 0.5)).toBeCloseTo(0.08, 12);
  expect(profileLevelM(profile, 0.9)).toBeCloseTo(0.08, 12);
});
