/** Shadows are given up where frames in movement are slow, and only there. */

import { describe, expect, it } from 'vitest';
import { ShadowPace } from '../../src/view3d/shadow-pace.ts';

const SLOW = 300;
const QUICK = 16;

function afterFrames(...frames: (readonly [tookMs: number, shadows: boolean])[]): boolean {
  const pace = new ShadowPace();
  for (const [tookMs, shadows] of frames) pace.begin(tookMs, shadows);
  return pace.tooSlow;
}

describe('pace of frames with shadows', () => {
  it('is too slow after three slow ones', () => {
    // The first two begin before the cost of a second frame with shadows is known.
    expect(afterFrames([QUICK, true], [SLOW, true], [SLOW, true], [SLOW, true])).toBe(false);
    expect(afterFrames([QUICK, true], [SLOW, true], [SLOW, true], [SLOW, true], [SLOW, true])).toBe(true);
  });

  it('does not count frames that had no shadows', () => {
    expect(afterFrames([SLOW, false], [SLOW, false], [SLOW, false], [SLOW, false], [SLOW, true], [SLOW, true])).toBe(false);
  });

  it('begins anew once shadows were left out', () => {
    const movement = Array.from({ length: 4 }, () => [SLOW, true] as const);
    expect(afterFrames(...movement, [SLOW, false], ...movement)).toBe(false);
  });

  it('takes a quick frame as one slow one less: drivers take two at once, and hiccups are no pace', () => {
    const start = [QUICK, true] as const;
    const frames = (...tookMs: number[]) => afterFrames(start, start, ...tookMs.map((took) => [took, true] as const));
    expect(frames(590, 575, 2, 610)).toBe(false);
    expect(frames(590, 575, 2, 610, 620)).toBe(true);
    expect(frames(640, 16, 16, 640, 16, 640)).toBe(false);
  });
});
