/** Lists that scroll under what is held at their ends. */

import { expect, it } from 'vitest';
import { edgeScrollPx } from '../../src/ui/facts/edge-scroll.ts';

const LIST = { top: 100, bottom: 400 };

it('stays where the pointer is away from both ends', () => {
  expect([140, 250, 360].map((at) => edgeScrollPx(at, LIST))).toEqual([0, 0, 0]);
});

it('goes towards the end the pointer is at, faster the nearer, and no faster beyond it', () => {
  const down = [361, 380, 400, 600].map((at) => edgeScrollPx(at, LIST));
  expect(down[0]).toBeGreaterThan(0);
  expect(down[1]).toBeGreaterThan(down[0]!);
  expect(down[2]).toBeGreaterThan(down[1]!);
  expect(down[3]).toBe(down[2]);
  // 361 is as far from 400 as 139 from 100.
  expect([139, 120, 100, -100].map((at) => -edgeScrollPx(at, LIST))).toEqual(down);
});

it('of a list of 60 px leaves a third in the middle where nothing moves, and of one without height all', () => {
  const low = { top: 0, bottom: 60 };
  expect([20, 30, 40].map((at) => edgeScrollPx(at, low))).toEqual([0, 0, 0]);
  expect([edgeScrollPx(19, low) < 0, edgeScrollPx(41, low) > 0]).toEqual([true, true]);
  expect(edgeScrollPx(5, { top: 5, bottom: 5 })).toBe(0);
});
