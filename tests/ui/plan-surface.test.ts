/** The plan's drawing surface: places and pixels, by hand. */

import { describe, expect, it } from 'vitest';
import {
  atPixel,
  fitted,
  fittedBeside,
  gridStepM,
  pinched,
  roundAlong,
  roundStep,
  toPixel,
  zoomed,
} from '../../src/ui/facts/plan-surface.ts';

// 20 px per metre, the origin at 100 / 300
const SURFACE = { scalePx: 20, panPx: [100, 300] } as const;

describe('places and pixels', () => {
  it('y runs up on the deck and down on the page', () => {
    // 100 + 4 · 20 = 180; 300 − 5 · 20 = 200
    expect(toPixel([4, 5], SURFACE)).toEqual([180, 200]);
    expect(atPixel([180, 200], SURFACE)).toEqual([4, 5]);
  });

  it('zooming keeps what is under the pointer', () => {
    const nearer = zoomed(SURFACE, 1.5, [180, 200]);
    expect(nearer.scalePx).toBe(30);
    expect(atPixel([180, 200], nearer)).toEqual([4, 5]);
    // One metre to the right is 30 px farther now.
    expect(toPixel([5, 5], nearer)).toEqual([210, 200]);
  });

  it('never zooms beyond its ends', () => {
    expect(zoomed(SURFACE, 1e6, [0, 0]).scalePx).toBe(1000);
    expect(zoomed(SURFACE, 1e-6, [0, 0]).scalePx).toBe(0.4);
  });

  it('fits a box with a margin', () => {
    // 10 m × 5 m into 400 × 300 less 50 on every side: 300 / 10 = 30 px, 200 / 5 = 40 px; 30 it is.
    const surface = fitted({ min: [10, 10], max: [20, 15] }, { width: 400, height: 300 }, 50);
    expect(surface.scalePx).toBe(30);
    // Its middle, 15 / 12.5, in the middle of the page.
    expect(toPixel([15, 12.5], surface)).toEqual([200, 150]);
  });

  it('keeps clear of buttons over the upper right corner, where it would come under them', () => {
    const buttons = { width: 60, height: 100 };
    // 10 m square into 400 × 600 less 20: 36 px per metre, from 20 to 380, and from 120 down. The buttons end at 100: nothing is in the way.
    const upright = { width: 400, height: 600 };
    const square = { min: [0, 0], max: [10, 10] } as const;
    expect(fittedBeside(square, upright, 20, buttons)).toEqual(fitted(square, upright, 20));
    // 400 × 400: from 20 down, below the buttons, which begin at 340: 320 px are left for 10 m.
    const beside = fittedBeside(square, { width: 400, height: 400 }, 20, buttons);
    expect(beside.scalePx).toBe(32);
    expect(toPixel([0, 0], beside)[0]).toBe(20);
    expect(toPixel([10, 10], beside)[0]).toBe(340);
    // One of 5 m is 180 px wide about the middle, from 110 to 290: the buttons begin at 340.
    const narrow = { min: [0, 0], max: [5, 10] } as const;
    expect(fittedBeside(narrow, { width: 400, height: 400 }, 20, buttons)).toEqual(fitted(narrow, { width: 400, height: 400 }, 20));
  });

  it('two fingers take the plan between them along', () => {
    // Middle from 200 / 200 to 240 / 200, distance from 100 to 200 px: twice as near.
    const before = atPixel([200, 200], SURFACE);
    const after = pinched(
      SURFACE,
      [
        [150, 200],
        [250, 200],
      ],
      [
        [140, 200],
        [340, 200],
      ],
    );
    expect(after.scalePx).toBe(40);
    expect(toPixel(before, after)).toEqual([240, 200]);
  });
});

describe('round distances', () => {
  it.each([
    [0.9, 1],
    [1, 1],
    [1.2, 2],
    [2.1, 5],
    [6, 10],
    [0.03, 0.05],
    [0.011, 0.02],
    [0.1, 0.1],
  ])('%f becomes %f', (least, step) => {
    expect(roundStep(least)).toBe(step);
  });

  it('lines of the grid keep apart', () => {
    // 24 px at 20 px per metre are 1.2 m, so 2 m.
    expect(gridStepM(SURFACE, 24)).toBe(2);
  });
});

describe('a place on a line', () => {
  const upright = [
    [6, 0],
    [6, 18],
  ] as const;

  it('moves along it to the grid', () => {
    // 13.66 / 0.2 = 68.3, so 68 · 0.2 = 13.6.
    expect(roundAlong([6, 13.66], upright, 0.2)).toEqual([6, 13.6]);
    expect(
      roundAlong(
        [3.32, 2],
        [
          [0, 2],
          [9, 2],
        ],
        0.5,
      ),
    ).toEqual([3.5, 2]);
  });

  it('never beyond its end, and not at all on a slope', () => {
    // The next line of the grid would be at 18.5.
    expect(roundAlong([6, 17.9], [upright[0], [6, 18]], 18.5)).toEqual([6, 17.9]);
    expect(
      roundAlong(
        [1.23, 1.23],
        [
          [0, 0],
          [2, 2],
        ],
        0.5,
      ),
    ).toEqual([1.23, 1.23]);
  });
});
