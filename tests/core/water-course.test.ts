/** Catchments, ponds and ways on small decks whose areas and volumes are known. */

import { describe, expect, it } from 'vitest';
import { refillCourse } from '../../src/core/water-course.ts';
import { NO_WAY_OUT, OFF_DECK } from '../../src/model/water-result.ts';
import { bay, box, buildUp, hole, holed, layer, region, zone } from '../helpers/deck-builder.ts';
import { levelLines, outlet, overflow, routed, TROUGH, TWO_TROUGHS, wetDeck } from '../helpers/water-builder.ts';

const FALL = levelLines(0, 4, [0, 0], [8, 0.16]);
const ROOF = levelLines(0, 4, [0, 0], [5, 0.1], [8, 0.04]);

describe('catchments', () => {
  it('one outlet takes the whole deck, and its mean coefficient', () => {
    // Zone of 16 m² at 0.3, 16 m² bare at 1: 4.8 + 16.
    const on = wetDeck(FALL, { zones: [zone('Z', box(0, 0, 4, 4), buildUp('u', [layer('substrate', 0.3)]))] });
    const { catchments, noWayOut } = routed(on, [outlet('O', 0.1, 2)], { zones: [{ peakC: 0.3, freePores: [0.1] }] });
    expect(catchments[0].areaM2).toBeCloseTo(32, 10);
    expect(catchments[0].effectiveM2).toBeCloseTo(20.8, 10);
    expect(noWayOut).toEqual({ areaM2: 0, effectiveM2: 0 });
  });

  it('a zone’s edge within a cell counts by area', () => {
    // 4.1 · 4 · 0.3 + 3.9 · 4 · 0.9
    const on = wetDeck(FALL, { zones: [zone('Z', box(0, 0, 4.1, 4), buildUp('u', []))] });
    const { catchments } = routed(on, [outlet('O', 0.1, 2)], { zones: [{ peakC: 0.3, freePores: [] }], bareC: 0.9 });
    expect(catchments[0].effectiveM2).toBeCloseTo(18.96, 10);
  });

  it('where zones overlap rain falls once', () => {
    // The whole deck twice: mean of 0.2 and 0.6.
    const zones = [zone('A', box(0, 0, 8, 4), buildUp('u', [])), zone('B', box(0, 0, 8, 4), buildUp('u', []))];
    const site = { zones: [0.2, 0.6].map((peakC) => ({ peakC, freePores: [] })) };
    expect(routed(wetDeck(FALL, { zones }), [outlet('O', 0.1, 2)], site).catchments[0].effectiveM2).toBeCloseTo(12.8, 10);
  });

  it('a ridge parts the deck', () => {
    // Ridge at 5 m of 8: 20 and 12 m².
    const { catchments } = routed(wetDeck(ROOF), [outlet('W', 0.1, 2), outlet('E', 7.9, 2)]);
    expect(catchments[0].areaM2).toBeCloseTo(20, 9);
    expect(catchments[1].areaM2).toBeCloseTo(12, 9);
  });

  it('add up to the deck, slanting edges and openings too', () => {
    const shape = holed(region([0, 0], [11.3, 1.7], [9.1, 8.2], [3.3, 9.9], [-1.2, 4.4]), hole(4.3, 3.1, 5.7, 4.9));
    const levels = { spots: Float64Array.of(-2, 0, 0.1, 12, 0, 0.25, 12, 10, 0.05, -2, 10, 0.2, 5, 5, -0.02), breaklines: [] };
    for (const cellM of [0.5, 0.23, 0.1]) {
      const on = wetDeck(levels, { cellM, deck: shape, bays: [bay('B', shape)] });
      const outlets = [outlet('A', 8.8, 7.9), outlet('B', 1, 2), outlet('C', 4, 8)];
      const { catchments, noWayOut, sinkAt } = routed(on, outlets);
      const sum = catchments.reduce((total, { areaM2 }) => total + areaM2, noWayOut.areaM2);
      expect(Math.abs(sum / on.prepared.ground.areaM2 - 1)).toBeLessThan(1e-9);
      expect(noWayOut.areaM2).toBe(0);
      expect(sinkAt.some((sink) => sink === OFF_DECK)).toBe(true);
    }
  });

  it('two outlets in one cell share it, and each takes all when the other is counted alone', () => {
    const { catchments } = routed(wetDeck(FALL), [outlet('A', 0.1, 2.1), outlet('B', 0.2, 2.2)]);
    expect(catchments.map(({ areaM2 }) => areaM2)).toEqual([16, 16]);
  });

  it('an overflow gets nothing while the outlet works, and all where there is no outlet', () => {
    const on = wetDeck(TROUGH);
    expect(routed(on, [outlet('O', 4, 2), overflow('V', 4.1, 3.9, 0.2)]).catchments.map(({ areaM2 }) => areaM2)).toEqual([32, 0]);
    expect(routed(on, [overflow('V', 4.1, 3.9, 0.2)]).catchments[0].areaM2).toBeCloseTo(32, 10);
  });

  it('deck that water cannot leave is told apart', () => {
    const none = routed(wetDeck(TROUGH), []);
    expect(none.noWayOut.areaM2).toBeCloseTo(32, 10);
    expect(none.sinkAt.every((sink) => sink === NO_WAY_OUT)).toBe(true);
    expect(none.ponds).toEqual([]);
  });
});

describe('ponds', () => {
  it('a trough without an outlet holds a prism up to its overflow', () => {
    // Triangle 4 m wide and 0.2 m deep, 4 m long: 0.5 · 4 · 0.2 · 4 = 1.6 m³. Middle cells lie 0.125 m from the line: 0.0125 m up.
    const { ponds, filledM } = routed(wetDeck(TROUGH), [overflow('V', 4.1, 3.9, 0.2)]);
    expect(ponds).toHaveLength(1);
    expect(ponds[0].bareLitres).toBeCloseTo(1600, 6);
    expect(ponds[0].litres).toBeCloseTo(1600, 6);
    expect(ponds[0].areaM2).toBeCloseTo(16, 10);
    expect(ponds[0].levelM).toBeCloseTo(0.2, 6);
    expect(ponds[0].depthM).toBeCloseTo(0.1875, 6);
    expect(ponds[0].sink).toBe(0);
    expect(filledM[0]).toBeCloseTo(0.3875, 9);
  });

  it('pores of 40 % hold 40 % of it', () => {
    const on = wetDeck(TROUGH, { zones: [zone('Z', box(0, 0, 8, 4), buildUp('u', [layer('light fill', 0.5)]))] });
    const { ponds } = routed(on, [overflow('V', 4.1, 3.9, 0.2)], { zones: [{ peakC: 1, freePores: [0.4] }] });
    expect(ponds[0].bareLitres).toBeCloseTo(1600, 6);
    expect(ponds[0].litres).toBeCloseTo(640, 6);
  });

  it('other pores are filled anew without routing anew', () => {
    const on = wetDeck(TROUGH, { zones: [zone('Z', box(0, 0, 8, 4), buildUp('u', [layer('light fill', 0.5)]))] });
    const site = (share: number) => ({ zones: [{ peakC: 1, freePores: [share] }] });
    const outlets = [overflow('V', 4.1, 3.9, 0.2)];
    const before = routed(on, outlets, site(1));
    const after = refillCourse(on, before, { ...before.site, ...site(0.4) });
    expect(after.ponds).toEqual(routed(on, outlets, site(0.4)).ponds);
    expect(after.sinkAt).toBe(before.sinkAt);
  });

  it('the trough that has no outlet fills to the saddle, the other not at all', () => {
    const { ponds, catchments } = routed(wetDeck(TWO_TROUGHS), [outlet('O', 6, 2)]);
    expect(catchments[0].areaM2).toBeCloseTo(32, 10);
    expect(ponds).toHaveLength(1);
    // Cells lie 0.125 m off the ridge, 0.0125 m below its level of 0.2 m.
    expect(ponds[0].levelM).toBeCloseTo(0.1875, 6);
    expect(ponds[0].cell % 32).toBeLessThan(16);
  });

  it('an inverted pyramid holds a third of base times height', () => {
    // 10 % to a point: 4 m × 4 m wide at 0.2 m: 16 · 0.2 / 3 = 1.0667 m³.
    const levels = {
      spots: Float64Array.of(4, 4, 0),
      breaklines: [Float64Array.of(0, 0, 0.4, 4, 4, 0, 8, 8, 0.4), Float64Array.of(0, 8, 0.4, 4, 4, 0, 8, 0, 0.4)],
    };
    const on = wetDeck(levels, { cellM: 0.1, deck: box(0, 0, 8, 8), bays: [bay('B', box(0, 0, 8, 8))] });
    const { ponds } = routed(on, [overflow('V', 4.1, 4.1, 0.2)]);
    expect(Math.abs(ponds[0].bareLitres / (3200 / 3) - 1)).toBeLessThan(0.002);
  });
});

describe('ways', () => {
  it('point down the fall, and their length grows with it', () => {
    const { bearingDeg, pathM, upstreamM2 } = routed(
      wetDeck(FALL),
      Array.from({ length: 16 }, (_, i) => outlet(`O${i}`, 0.1, 0.1 + 0.25 * i)),
    );
    const cell = 5 * 32 + 10;
    expect(bearingDeg[cell]).toBeCloseTo(270, 3);
    // The cell's lower side lies 2.5 m from the left edge: 5.5 m of way, 0.25 m wide.
    expect(pathM[cell]).toBeCloseTo(5.5, 9);
    expect(upstreamM2[cell]).toBeCloseTo(5.5 * 0.25, 9);
  });
});

describe('outlets', () => {
  const on = wetDeck(TROUGH);

  it('beside the deck by less than a cell go to the nearest one', () => {
    const { outletCells, faults } = routed(on, [outlet('O', 4.1, -0.2)]);
    expect(faults).toEqual([null]);
    expect(outletCells[0]).toBe(16);
  });

  it('farther off, and overflows without a level, are left out', () => {
    const { outletCells, faults, catchments } = routed(on, [outlet('far', 4, -1), overflow('V', 4, 1, null), outlet('O', 4, 2)]);
    expect(faults).toEqual(['off deck', 'no invert', null]);
    expect([...outletCells.subarray(0, 2)]).toEqual([-1, -1]);
    expect(catchments.map(({ areaM2 }) => Math.round(areaM2))).toEqual([0, 0, 32]);
  });

  it('an overflow below the membrane runs like an outlet', () => {
    const { faults, catchments } = routed(on, [overflow('V', 4.1, 2, -0.1)]);
    expect(faults).toEqual(['below deck']);
    expect(catchments[0].areaM2).toBeCloseTo(32, 10);
  });

  it('take water at the level of their own point: none stands beside one at the lowest line', () => {
    expect(routed(on, [outlet('O', 4, 2)]).ponds).toEqual([]);
  });
});

describe('edges', () => {
  const line = Float64Array.of(0, 0, 8, 0);

  it('let water over at their level', () => {
    const { catchments, ponds, ignoredSpills } = routed(wetDeck(TROUGH), [], { spills: [{ id: 'E', line, membraneTopM: 0.1 }] });
    expect(ignoredSpills).toEqual([]);
    expect(catchments[0].areaM2).toBeCloseTo(32, 10);
    expect(ponds[0].levelM).toBeCloseTo(0.1, 6);
    expect(ponds[0].sink).toBe(0);
  });

  it('where the deck lies higher than the edge they take what runs there, and lower nothing sooner', () => {
    // Along the left end, 0.3 m higher than the line of the trough, an edge at 0.1 m: water must come up to 0.3875 m first.
    const left = { id: 'E', line: Float64Array.of(0, 0, 0, 4), membraneTopM: 0.1 };
    const { ponds } = routed(wetDeck(TROUGH), [], { spills: [left] });
    expect(ponds[0].levelM).toBeCloseTo(0.3875, 6);
  });

  it('away from the rim of the deck they let nothing out', () => {
    const inside = Float64Array.of(0.5, 2, 7.5, 2);
    const { ignoredSpills, noWayOut } = routed(wetDeck(TROUGH), [], { spills: [{ id: 'E', line: inside, membraneTopM: 0.1 }] });
    expect(ignoredSpills).toEqual([0]);
    expect(noWayOut.areaM2).toBeCloseTo(32, 10);
  });
});

it('refuses a site of another deck', () => {
  expect(() => routed(wetDeck(null), [], { zones: [{ peakC: 1, freePores: [] }] })).toThrow(RangeError);
});
