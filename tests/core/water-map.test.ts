/** Maps of water on small decks worked out by hand. */

import { describe, expect, it } from 'vitest';
import { blockedOutlet } from '../../src/core/blocked-outlet.ts';
import { waterMap } from '../../src/core/water-map.ts';
import { CELL_NO_DATA, CELL_ON_DECK, NO_OUTLET_CLASSES } from '../../src/model/maps.ts';
import { levelLines, outlet, overflow, routed, TROUGH, wetDeck } from '../helpers/water-builder.ts';

/** Falls 20 mm per metre to the west. */
const FALL = levelLines(0, 4, [0, 0], [8, 0.16]);
/** Ridge at 5 m. */
const ROOF = levelLines(0, 4, [0, 0], [5, 0.1], [8, 0.04]);

describe('catchments', () => {
  it('name every outlet, then what no outlet drains; areas are those of the shares', () => {
    const on = wetDeck(ROOF);
    const course = routed(on, [outlet('W', 0.1, 2), outlet('E', 7.9, 2)]);
    const map = waterMap(on, 'catchment', { course, rainLpsHa: 300, blocked: null });
    expect(map.names).toEqual(['W', 'E', ...NO_OUTLET_CLASSES]);
    // Ridge at 5 m of 8, 4 m wide
    expect(map.classM2?.[0]).toBeCloseTo(20, 9);
    expect(map.classM2?.[1]).toBeCloseTo(12, 9);
    expect(map.classM2?.slice(2)).toEqual([0, 0, 0]);
    const { columns, cellM } = on.prepared.ground.grid;
    // West of the ridge to W, east of it to E.
    const at = (xM: number) => map.values[Math.floor(2 / cellM) * columns + Math.floor(xM / cellM)];
    expect([at(1), at(4.5), at(5.5), at(7)]).toEqual([0, 0, 1, 1]);
    expect(map.stage).toBeNull();
  });

  it('tell what goes to an overflow only, and what has no way out', () => {
    const on = wetDeck(TROUGH);
    const over = waterMap(on, 'catchment', { course: routed(on, [overflow('V', 4.1, 3.9, 0.2)]), rainLpsHa: null, blocked: null });
    expect(over.names).toEqual([...NO_OUTLET_CLASSES]);
    expect(over.classM2?.[0]).toBeCloseTo(32, 9);
    const none = waterMap(on, 'catchment', { course: routed(on, []), rainLpsHa: null, blocked: null });
    expect(none.classM2?.[2]).toBeCloseTo(32, 9);
    expect(none.values.every((value) => value === 2)).toBe(true);
  });
});

describe('flow', () => {
  const on = wetDeck(FALL);
  const course = routed(
    on,
    [0.5, 1, 1.5, 2, 2.5, 3, 3.5].map((y, i) => outlet(`O${i}`, 0.1, y)),
  );

  it('is the way times rain times coefficient; without rain the way alone', () => {
    const way = waterMap(on, 'flow', { course, rainLpsHa: null, blocked: null });
    const flow = waterMap(on, 'flow', { course, rainLpsHa: 300, blocked: null });
    expect([way.unit, flow.unit]).toEqual(['m', 'l/(s·m)']);
    // 300 l/(s·ha) is 0.03 l/(s·m²)
    flow.values.forEach((value, cell) => {
      expect(value).toBeCloseTo(0.03 * way.values[cell], 5);
    });
    // A way straight down 8 m and, at the bottom, along the edge to an outlet
    expect(way.max).toBeGreaterThan(7.7);
    expect(way.max).toBeLessThan(9);
    expect(way.directionDeg?.some((deg) => Math.abs(deg - 270) < 1e-3)).toBe(true);
  });
});

describe('standing water', () => {
  it('stands in the trough up to its overflow, less deep up its sides', () => {
    // Trough 4 m wide to each side rising 0.1 per metre; overflow at 0.2: at 1 m from the line 0.1 m.
    const on = wetDeck(TROUGH);
    const course = routed(on, [overflow('V', 4.1, 3.9, 0.2)]);
    const map = waterMap(on, 'ponding', { course, rainLpsHa: null, blocked: null });
    map.values.forEach((mm, cell) => {
      const depthMm = 1000 * (0.2 - on.prepared.deckLevelsM[cell]);
      if (depthMm > 0.02) expect(mm).toBeCloseTo(depthMm, 1);
      else expect(map.flags[cell]).toBe(CELL_ON_DECK | CELL_NO_DATA);
    });
  });

  it('is none where all drains, and that of the blocked outlet once it is blocked', () => {
    const on = wetDeck(TROUGH);
    const course = routed(on, [outlet('O', 4, 2), overflow('V', 4.1, 3.9, 0.15)]);
    expect(waterMap(on, 'ponding', { course, rainLpsHa: null, blocked: null }).dataCells).toBe(0);
    expect(waterMap(on, 'blocked', { course, rainLpsHa: null, blocked: null }).dataCells).toBe(0);
    const blocked = waterMap(on, 'blocked', { course, rainLpsHa: null, blocked: blockedOutlet(on, course, 0) });
    expect(blocked.dataCells).toBeGreaterThan(0);
    blocked.values.forEach((mm, cell) => {
      const depthMm = 1000 * (0.15 - on.prepared.deckLevelsM[cell]);
      if (depthMm > 0.02) expect(mm).toBeCloseTo(depthMm, 1);
      else expect(mm).toBeNaN();
    });
  });
});
