/** A plan: where points come to lie and how large words may be, by hand. */

import { describe, expect, it } from 'vitest';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { fittingLetters, planFrame, planPath, planPoint } from '../../src/ui/facts/plan-frame.ts';

// 20 m × 10 m at 1000 / 2000 of a large grid, origin at its corner
const SCENE = {
  deck: {
    outline: [
      [1000, 2000],
      [1020, 2000],
      [1020, 2010],
      [1000, 2010],
    ],
  },
} as unknown as SceneFile;
const FRAME = planFrame({ scene: SCENE, originM: [1000, 2000] }, 200, 5);

describe('frame', () => {
  it('gives the longer side the size asked for', () => {
    // 200 units over 20 m; y runs down, so the deck lies from -100 to 0
    expect(FRAME.scale).toBe(10);
    expect(FRAME.viewBox).toBe('-5 -105 210 110');
  });

  it('puts points and outlines in it', () => {
    expect(planPoint([1003, 2004], FRAME)).toEqual([30, -40]);
    expect(planPath(SCENE.deck.outline.slice(0, 3), FRAME)).toBe('M0 0L200 0L200 -100Z');
  });
});

describe('letters', () => {
  it('are as large as asked where there is room', () => {
    expect(fittingLetters(['A1'], { width: 100, height: 100 }, 15)).toBe(15);
  });

  it('shrink until the longest line fits the width', () => {
    // Ten letters of 0.43 em in 92 % of 43: 0.92 · 43 / 4.3 = 9.2
    expect(fittingLetters(['A', '0123456789'], { width: 43, height: 500 }, 15)).toBeCloseTo(9.2, 9);
  });

  it('shrink until all lines fit the height', () => {
    // Three lines of 1.1 em in 92 % of 33: 0.92 · 33 / 3.3 = 9.2
    expect(fittingLetters(['a', 'b', 'c'], { width: 500, height: 33 }, 15)).toBeCloseTo(9.2, 9);
  });
});
