/** Lines of a sum as shown add up to the total as shown. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundToSum } from '../../src/ui/facts/round-to-sum.ts';

describe('roundToSum', () => {
  it('leaves numbers that need no rounding', () => {
    expect(roundToSum([0.29, 1.1, 3.68], 2)).toEqual([0.29, 1.1, 3.68]);
  });

  it('rounds up those with the largest remainders until the total is reached', () => {
    // by hand: 3 × 0.335 = 1.005 → 1.01 (101 hundredths); floors 33 + 33 + 33 = 99, two are rounded up
    expect(roundToSum([0.336, 0.335, 0.334], 2)).toEqual([0.34, 0.34, 0.33]);
    // by hand: 0.004 · 3 = 0.012 → 0.01: one of three small lines shows it
    expect(roundToSum([0.004, 0.004, 0.004], 2)).toEqual([0.01, 0, 0]);
  });

  it('adds up for any lines, each within one step', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: 1, maxLength: 15 }), (values) => {
        const rounded = roundToSum(values, 2);
        const hundredths = rounded.map((value) => Math.round(value * 100));
        const total = values.reduce((sum, value) => sum + value, 0);
        expect(Math.abs(hundredths.reduce((sum, unit) => sum + unit, 0) - total * 100)).toBeLessThanOrEqual(0.5 + 1e-4);
        rounded.forEach((value, i) => {
          expect(Math.abs(value - values[i]!)).toBeLessThan(0.01 + 1e-7);
        });
      }),
    );
  });
});
