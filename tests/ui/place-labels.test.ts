/** Labels beside the core log: never over each other, never outside, as near to their layers as that allows. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeLabels } from '../../src/ui/facts/place-labels.ts';

describe('placeLabels', () => {
  it('leaves labels where they want to be when there is room', () => {
    expect(placeLabels([20, 60, 100], 30, 0, 120)).toEqual([20, 60, 100]);
  });

  it('pushes two labels apart evenly', () => {
    // by hand: both want 50, each 30 high: they stand at 35 and 65, whose middle is 50
    expect(placeLabels([50, 50], 30, 0, 100)).toEqual([35, 65]);
  });

  it('pushes a pile at the lower end up and leaves the one above alone', () => {
    // by hand: three at 98 need 90 px and end at 100: 25 is in no one's way, the others stand at 25, 55, 85
    expect(placeLabels([98, 98, 98], 30, 0, 100)).toEqual([25, 55, 85]);
    expect(placeLabels([5, 98, 98], 30, 0, 100)).toEqual([15, 55, 85]);
  });

  it('fills the room exactly where it must', () => {
    expect(placeLabels([0, 0, 0, 0], 25, 0, 100)).toEqual([12.5, 37.5, 62.5, 87.5]);
  });

  it('refuses what cannot fit', () => {
    expect(() => placeLabels([10, 20], 60, 0, 100)).toThrow(RangeError);
  });

  it('keeps order, distance and bounds for any wishes', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -50, max: 450, noNaN: true }), { minLength: 1, maxLength: 12 }), (wishes) => {
        const wanted = [...wishes].sort((a, b) => a - b);
        const placed = placeLabels(wanted, 30, 0, 400);
        expect(placed).toHaveLength(wanted.length);
        placed.forEach((centre, i) => {
          expect(centre).toBeGreaterThanOrEqual(15 - 1e-9);
          expect(centre).toBeLessThanOrEqual(385 + 1e-9);
          if (i > 0) expect(centre - placed[i - 1]!).toBeGreaterThanOrEqual(30 - 1e-9);
        });
      }),
    );
  });
});
