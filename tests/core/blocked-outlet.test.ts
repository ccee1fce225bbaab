/** Water at a blocked outlet: levels, litres and loads by hand. */

import { describe, expect, it } from 'vitest';
import { blockedOutlet } from '../../src/core/blocked-outlet.ts';
import { evaluate } from '../../src/core/evaluate.ts';
import { standingWater } from '../../src/core/standing-water.ts';
import { bay, box, buildUp, deck, layer, loaded, zone } from '../helpers/deck-builder.ts';
import { outlet, overflow, routed, TROUGH, TWO_TROUGHS, wetDeck } from '../helpers/water-builder.ts';

describe('a blocked outlet in a trough', () => {
  const on = wetDeck(TROUGH, {
    zones: [zone('Z', box(0, 0, 8, 4), buildUp('u', [layer('substrate', 0.3, { saturatedFixedKNm2: 6, dryFixedKNm2: 4 })]))],
    bays: [bay('W', box(0, 0, 4, 4)), bay('E', box(4, 0, 8, 4), { permanentKNm2: null, imposedKNm2: null, totalKNm2: 8 })],
  });
  const bare = routed(on, [outlet('O', 4, 2), overflow('V', 4.1, 3.9, 0.2)], { zones: [{ peakC: 1, freePores: [1] }] });
  const found = blockedOutlet(on, bare, 0);

  it('rises to the overflow', () => {
    expect(found.levelM).toBe(0.2);
    expect(found.into).toBe(1);
    expect(found.overCell).toBe(15 * 32 + 16);
  });

  // Triangle 4 m wide, 0.2 m deep, 4 m long: 1.6 m³; 15.696 kN, half of it in each bay of 16 m²: 0.4905 kN/m².
  it('holds a prism, half of it in each bay', () => {
    expect(found.water!.litres).toBeCloseTo(1600, 6);
    expect(found.water!.areaM2).toBeCloseTo(16, 10);
    expect(found.water!.mostM).toBeCloseTo(0.1875, 9);
    expect(found.water!.bays.map(({ waterMeanKNm2 }) => waterMeanKNm2)).toEqual([expect.closeTo(0.4905, 9), expect.closeTo(0.4905, 9)]);
    expect(found.water!.bays[0].meanKNm2).toBeCloseTo(6.4905, 9);
  });

  // The window on the cell beside the line reaches from 0.375 m on one side to 0.625 m on the other: cells at 0.375 (half),
  // 0.125, 0.125, 0.375 and 0.625 m (half), depths 0.1625, 0.1875, 0.1875, 0.1625, 0.1375 m: (0.08125 + 0.1875 + 0.1875 + 0.1625
  // + 0.06875) / 4 = 0.171875 m, 1.68609 kN/m².
  it('is judged by the greatest mean over a square metre', () => {
    const [west, east] = found.water!.bays;
    expect(west.patchKNm2).toBeCloseTo(6 + 9.81 * 0.171875, 9);
    expect(west.permanentUtilisation).toBeCloseTo(0.768609375, 9);
    expect(west.totalUtilisation).toBeNull();
    expect(east.permanentUtilisation).toBeNull();
    expect(east.totalUtilisation).toBeCloseTo((6 + 9.81 * 0.171875) / 8, 9);
  });

  it('weighs 40 % of it in pores of 40 %', () => {
    const pores = routed(on, [outlet('O', 4, 2), overflow('V', 4.1, 3.9, 0.2)], { zones: [{ peakC: 1, freePores: [0.4] }] });
    const { water, levelM } = blockedOutlet(on, pores, 0);
    expect(levelM).toBe(0.2);
    expect(water!.litres).toBeCloseTo(640, 6);
    expect(water!.bays[0].waterMeanKNm2).toBeCloseTo(0.4 * 0.4905, 9);
    water!.cells.forEach((_, i) => {
      expect(water!.waterKNm2[i]).toBeCloseTo(9.81 * 0.4 * water!.depthM[i], 5);
    });
  });
});

describe('ways out', () => {
  it('over the saddle to the next outlet, whose side stays dry', () => {
    const on = wetDeck(TWO_TROUGHS);
    const course = routed(on, [outlet('A', 2, 2), outlet('B', 6, 2)]);
    const { levelM, into, water } = blockedOutlet(on, course, 0);
    expect(into).toBe(1);
    // Middles of the cells at the ridge lie 0.125 m from it: 0.1875 m.
    expect(levelM).toBeCloseTo(0.1875, 9);
    // To both sides cells at 0.125, 0.375 … 1.625 m, sum 6.125 m: (7 · 0.1875 - 0.6125) · 0.25 m · 2 · 4 m = 1.4 m³.
    expect(water!.litres).toBeCloseTo(1400, 6);
    expect([...water!.cells].every((cell) => cell % 32 < 16)).toBe(true);
  });

  it('over an edge', () => {
    const on = wetDeck(TROUGH);
    const spills = [{ id: 'E', line: Float64Array.of(0, 0, 8, 0), membraneTopM: 0.15 }];
    const { levelM, into, water } = blockedOutlet(on, routed(on, [outlet('O', 4, 2), overflow('V', 4, 3, 0.2)], { spills }), 0);
    expect([levelM, into]).toEqual([0.15, 2]);
    // 0.5 · 3 m · 0.15 m · 4 m
    expect(water!.litres).toBeCloseTo(900, 6);
  });

  it('none: no depth is made up', () => {
    const on = wetDeck(TROUGH);
    expect(blockedOutlet(on, routed(on, [outlet('O', 4, 2)]), 0)).toEqual({ outlet: 0, levelM: null, into: -1, overCell: -1, water: null });
  });

  it('a second outlet in the same cell: nothing rises', () => {
    const on = wetDeck(TROUGH);
    const { into, water } = blockedOutlet(on, routed(on, [outlet('A', 4.1, 2.1), outlet('B', 4.2, 2.2)]), 0);
    expect(into).toBe(1);
    expect(water).toMatchObject({ litres: 0, areaM2: 0, mostM: 0, bays: [] });
  });

  it('refuses overflows and outlets that are left out', () => {
    const on = wetDeck(TROUGH);
    const course = routed(on, [outlet('far', 50, 2), overflow('V', 4, 2, 0.2)]);
    for (const index of [0, 1, 2, -1]) expect(() => blockedOutlet(on, course, index)).toThrow(RangeError);
  });
});

describe('water at one level', () => {
  // 0.1 m on a level deck of 4 m × 2 m: 2.5 m · 2 m · 0.1 m · 0.4 = 200 l in the zone, 1.5 m · 2 m · 0.1 m = 300 l beside it; the
  // zone ends within a cell of 1 m.
  const plain = deck({
    zones: [zone('Z', box(0, 0, 2.5, 2), loaded(6))],
    bays: [bay('W', box(0, 0, 2, 2)), bay('E', box(2, 0, 4, 2))],
  });

  it('counts pores and bare deck within a cell', () => {
    const on = evaluate(plain);
    const water = standingWater(on, routed(on, [], { zones: [{ peakC: 1, freePores: [0.4] }] }), 0.1);
    expect(water.litres).toBeCloseTo(500, 9);
    // West: 0.4 · 0.1 m; east: (0.5 m · 0.04 m + 1.5 m · 0.1 m) / 2 m = 0.085 m.
    expect(water.bays.map(({ waterMeanKNm2 }) => waterMeanKNm2)).toEqual([expect.closeTo(0.3924, 9), expect.closeTo(0.83385, 9)]);
    expect(water.bays[0].patchKNm2).toBeCloseTo(6.3924, 9);
  });

  it('leaves dry what lies higher, and changes no evaluation', () => {
    const on = wetDeck(TROUGH);
    const before = on.patchKNm2.slice();
    const water = standingWater(on, routed(on, []), 0.1);
    expect(water.areaM2).toBeCloseTo(8, 10);
    // 0.5 · 2 m · 0.1 m · 4 m
    expect(water.litres).toBeCloseTo(400, 6);
    expect(on.patchKNm2).toEqual(before);
    expect(standingWater(on, routed(on, []), -1)).toMatchObject({ litres: 0, bays: [] });
  });
});
