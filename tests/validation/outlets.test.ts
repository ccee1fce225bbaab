/** Overflow slot. EN 12056-3:2001, L = 24 000 · Q / h^1.5: formula from memory; the lengths are arithmetic on it. */

import { expect, it } from 'vitest';
import { slotLengthMm } from '../../src/core/water/runoff.ts';

it.each([
  // 75 · 24 000 / 40^1.5 = 1 800 000 / 252.98221 = 7115.12; / 100^1.5 = 1800.
  [75, 40, 7115.12],
  [75, 100, 1800],
])('%d l/s at %d mm of water: %d mm', (flowLps, headMm, lengthMm) => {
  expect(slotLengthMm(flowLps, headMm)).toBeCloseTo(lengthMm, 2);
});

it('four times the head carries eight times the water', () => {
  expect(slotLengthMm(10, 30) / slotLengthMm(10, 120)).toBeCloseTo(8, 9);
});
