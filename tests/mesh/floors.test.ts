/** Floors of the exploded view. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DRAWN_SHEET_M, drawnExtras, floorGapM, floorLifts, layerFloors } from '../../src/mesh/floors.ts';
import { ROLES, type Role } from '../../src/model/roles.ts';

const stack = (...roles: Role[]) => roles.map((role) => ({ role, drawn: true }));

describe('floors of layers', () => {
  it('like roles of all zones share a floor, unused floors are left out', () => {
    const lawn = stack('protection', 'drainage element', 'filter', 'substrate');
    const path = stack('protection', 'drainage element', 'separation', 'base course', 'bedding', 'surfacing');
    // by hand: roles in use in their order: protection 1, element 2, separation 3, filter 4, base 5, bedding 6, surfacing 7, substrate 8
    expect(layerFloors([lawn, path])).toEqual([
      [1, 2, 4, 8],
      [1, 2, 3, 5, 6, 7],
    ]);
  });

  it('the order of a build-up wins over the usual order of roles', () => {
    // by hand: filter on role floor 8; the protection above it must go to 9, the next one to 10
    expect(layerFloors([stack('filter', 'protection', 'protection'), stack('protection', 'base course')])).toEqual([
      [2, 3, 4],
      [1, 3],
    ]);
  });

  it('a flush infill stays with the element it fills and opens no floor', () => {
    const layers = stack('drainage element', 'drainage fill', 'substrate').map((one, k) => ({ ...one, drawn: k !== 1 }));
    expect(layerFloors([layers])).toEqual([[1, 1, 2]]);
  });
});

describe('drawn thickness', () => {
  it('sheets grow to two centimetres and push up what lies above', () => {
    // by hand: 4 mm → +16 mm, 60 mm → +0, 1 mm → +19 mm, none → +0
    const extras = drawnExtras([0.004, 0.06, 0.001, 0, 0.25]);
    const close = (bottomM: number, topM: number) => ({ bottomM: expect.closeTo(bottomM, 12), topM: expect.closeTo(topM, 12) });
    expect(extras).toEqual([close(0, 0.016), close(0.016, 0.016), close(0.016, 0.035), close(0.035, 0.035), close(0.035, 0.035)]);
    expect(DRAWN_SHEET_M).toBe(0.02);
  });
});

describe('lifts', () => {
  it('by hand', () => {
    // Slab −0.35 … 0.75 (an upstand), sheet 0.00 … 0.12 on a fall, empty floor, lawn 0.10 … 0.60; gap 0.25.
    // Sheet: 0.75 + 0.25 − 0.00 = 1.00, reaches 1.12. Lawn: 1.12 + 0.25 − 0.10 = 1.27.
    const lifts = floorLifts(
      [
        { lowM: -0.35, highM: 0.75 },
        { lowM: 0, highM: 0.12 },
        { lowM: Infinity, highM: -Infinity },
        { lowM: 0.1, highM: 0.6 },
      ],
      0.25,
    );
    expect([...lifts]).toEqual([0, 1, 1, 1.27].map((lift) => expect.closeTo(lift, 12)));
  });

  it('never fall, even where a floor lies high by itself', () => {
    // by hand: the second floor is 5 m up already and needs no lift; the third must clear it: 6 + 0.25 − 0 = 6.25
    const ranges = [
      { lowM: 0, highM: 1 },
      { lowM: 5, highM: 6 },
      { lowM: 0, highM: 0.1 },
    ];
    expect([...floorLifts(ranges, 0.25)]).toEqual([0, 0, 6.25]);
  });

  it('gap: 0.25 m on small decks, 3 % of the size on large ones', () => {
    expect(floorGapM(5)).toBe(0.25);
    expect(floorGapM(100)).toBe(3);
  });

  it('any stacks: floors strictly apart, order kept (seed 3)', () => {
    const one = fc.record({
      role: fc.constantFrom(...ROLES),
      thicknessM: fc.constantFrom(0, 0.001, 0.02, 0.3),
      slopeM: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(fc.array(one, { maxLength: 8 }), { minLength: 1, maxLength: 5 }), (zones) => {
        const floors = layerFloors(zones.map((zone) => zone.map(({ role, thicknessM }) => ({ role, drawn: thicknessM > 0 }))));
        const ranges: { lowM: number; highM: number }[] = [{ lowM: -0.3, highM: 1 }];
        zones.forEach((zone, z) => {
          const extras = drawnExtras(zone.map((l) => l.thicknessM));
          let bottomM = 0;
          zone.forEach((l, k) => {
            const floor = floors[z]![k]!;
            if (l.thicknessM > 0) {
              ranges[floor] ??= { lowM: Infinity, highM: -Infinity };
              const lowM = bottomM + extras[k]!.bottomM;
              const highM = bottomM + l.thicknessM + extras[k]!.topM + l.slopeM;
              ranges[floor] = { lowM: Math.min(ranges[floor].lowM, lowM), highM: Math.max(ranges[floor].highM, highM) };
              expect(extras[k]!.topM + l.thicknessM - extras[k]!.bottomM).toBeGreaterThanOrEqual(DRAWN_SHEET_M - 1e-12);
            }
            bottomM += l.thicknessM;
          });
          const drawn = floors[z]!.filter((_, k) => zone[k]!.thicknessM > 0);
          expect(drawn.every((floor, i) => i === 0 || floor > drawn[i - 1]!)).toBe(true);
        });
        // No floor without a layer, so no hole in the array.
        expect(Object.keys(ranges)).toHaveLength(ranges.length);
        const lifts = floorLifts(ranges, 0.25);
        for (let f = 1; f < ranges.length; f++) {
          expect(lifts[f]! + ranges[f]!.lowM).toBeGreaterThanOrEqual(lifts[f - 1]! + ranges[f - 1]!.highM + 0.25 - 1e-9);
        }
      }),
      { seed: 3, numRuns: 200 },
    );
  });
});
