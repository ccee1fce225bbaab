/** Heap heights by hand. */

import { describe, expect, it } from 'vitest';
import { heapRoom } from '../../../src/core/loads/heaps.ts';

describe('height of a heap', () => {
  it('is the room left over the weight of the material, rounded down: (15.0 − 4.0)/19.0 = 0.579, so 0.55 m', () => {
    expect(heapRoom(15, 4, 19)).toEqual({ heightM: 0.55, overKNm2: 0 });
  });

  it.each([
    // 0.05 … 1.15 in steps, from loads that no binary fraction holds
    [0.55, 10.45],
    [0.15, 2.85],
    [0.35, 6.65],
    [1.15, 21.85],
  ])('of exactly %f m keeps its last step', (heightM, roomKNm2) => {
    expect(heapRoom(40, 40 - roomKNm2, 19).heightM).toBe(heightM);
  });

  it('just below a step goes down to the one before: 10.44/19 = 0.5495', () => {
    expect(heapRoom(15, 15 - 10.44, 19).heightM).toBe(0.5);
  });

  it('is 0 where less than a step is left: 0.9/19 = 0.047', () => {
    expect(heapRoom(10, 9.1, 19)).toEqual({ heightM: 0, overKNm2: 0 });
  });

  it('is 0 with the overload where the bay is over: 15.24 − 12', () => {
    const { heightM, overKNm2 } = heapRoom(12, 15.24, 19);
    expect(heightM).toBe(0);
    expect(overKNm2).toBeCloseTo(3.24, 12);
  });

  it('at exactly the limit is 0 and not over, rounding of sums included', () => {
    expect(heapRoom(12, 12, 19)).toEqual({ heightM: 0, overKNm2: 0 });
    expect(heapRoom(0.3, 0.1 + 0.2, 19)).toEqual({ heightM: 0, overKNm2: 0 });
  });

  it('of a material without weight is a fault of the program', () => {
    expect(() => heapRoom(12, 1, 0)).toThrow(RangeError);
  });
});
