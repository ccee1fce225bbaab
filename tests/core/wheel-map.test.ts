import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/core/evaluate.ts';
import { createRasteriser } from '../../src/core/geometry/coverage.ts';
import { axlePath, wheelsAt } from '../../src/core/loads/wheel-path.ts';
import { patchKPa, patchRing } from '../../src/core/loads/wheel-stress.ts';
import { wheelEnvelope } from '../../src/core/wheel-envelope.ts';
import { wheelMap } from '../../src/core/wheel-map.ts';
import { CELL_NO_DATA, CELL_ON_DECK, CELL_OVER } from '../../src/model/maps.ts';
import type { WheelLayer, WheelRun } from '../../src/model/wheel-input.ts';
import { bay, box, buildUp, deck, layer, zone } from '../helpers/deck-builder.ts';
import { CART, COURSES_ONLY, cartRun } from '../helpers/wheel-builder.ts';

const { lane: LANE, spreads: SPREADS } = COURSES_ONLY;

/** 16 m × 4 m. */
function laid(cellM: number, zones = [zone('Z', box(0, 0, 16, 4), LANE)]) {
  return evaluate(deck({ cellM, deck: box(0, 0, 16, 4), bays: [bay('B', box(0, 0, 16, 4))], zones }));
}
const wheels = (layers: readonly (readonly WheelLayer[])[], ...runs: readonly WheelRun[]) => ({ runs, layers });
/** Value of the cell that holds a point. */
const at = (values: Float32Array, cellM: number, x: number, y: number) =>
  values[Math.floor(y / cellM) * Math.round(16 / cellM) + Math.floor(x / cellM)];

describe('on the membrane, patches of 0.7 m × 0.9 m', () => {
  const map = wheelMap(laid(0.25), 'wheel-membrane', wheels([SPREADS], cartRun([1, 2, 15, 2])), null);

  it('is the pressure itself in cells that a patch covers whole, and its share in others', () => {
    // 30 kN / (0.7 · 0.9); the left wheel's patch reaches across from y = 2.15 to 3.05
    expect(at(map.values, 0.25, 8, 2.6)).toBeCloseTo(30 / 0.63, 4);
    // Of the cells from 2 to 2.25 it covers 0.1 of 0.25, of those from 3 to 3.25 0.05
    expect(at(map.values, 0.25, 8, 2.1)).toBeCloseTo((30 / 0.63) * 0.4, 4);
    expect(at(map.values, 0.25, 8, 3.1)).toBeCloseTo((30 / 0.63) * 0.2, 4);
    expect(map.max).toBeCloseTo(30 / 0.63, 4);
    expect([map.unit, map.classLimits]).toEqual(['kPa', null]);
  });

  it('has no value where no wheel comes', () => {
    const cell = 2 * 64 + 32;
    expect(map.values[cell]).toBeNaN();
    expect(map.flags[cell]).toBe(CELL_ON_DECK | CELL_NO_DATA);
    // Before the start the wheels behind are not looked at: the patch at x = 1 ends at 0.65
    expect(at(map.values, 0.25, 0.3, 2.6)).toBeNaN();
  });

  it('is the same left and right of the line', () => {
    for (let x = 0.85; x < 15.2; x += 0.25) {
      for (const y of [2.1, 2.4, 2.6, 2.9, 3.1]) expect(at(map.values, 0.25, x, y)).toBeCloseTo(at(map.values, 0.25, x, 4 - y), 4);
    }
  });
});

it('where patches overlap their pressures add: 1.4 m wide, 1.2 m apart', () => {
  const deep = buildUp('deep', [layer('light fill', 1)]);
  const on = laid(0.25, [zone('Z', box(0, 0, 16, 4), deep)]);
  const map = wheelMap(on, 'wheel-membrane', wheels([[{ dispersal: 0.5, bearingKPa: null }]], cartRun([1, 2, 15, 2])), null);
  // 30 kN / (1.2 · 1.4) each; of the cells from 2 to 2.25 the first 0.1 lies under both
  const one = 30 / 1.68;
  expect(at(map.values, 0.25, 8, 2.1)).toBeCloseTo((one * (2 * 0.1 + 0.15)) / 0.25, 4);
  expect(at(map.values, 0.25, 8, 2.4)).toBeCloseTo(one, 4);
});

describe('bearing used', () => {
  const used = (cellM: number) => wheelMap(laid(cellM), 'wheel-bearing', wheels([SPREADS], cartRun([1, 2, 15, 2])), null);

  it('tells the layer that is used most: base course of 100 kPa under 0.1 m of slabs', () => {
    const map = used(0.25);
    // Patch 0.4 m × 0.6 m of 125 kPa; wheels stop on multiples of 0.25 m, so 0.2 of a cell's 0.25 m lie under one: 100 kPa and 2.5 above
    expect(at(map.values, 0.25, 8.1, 2.6)).toBeCloseTo(1.025, 5);
    expect(map.flags[10 * 64 + 32]).toBe(CELL_ON_DECK | CELL_OVER);
    expect(map.classLimits).toEqual([0.5, 0.8, 1, 1.2]);
  });

  it('comes to the envelope’s peak as cells get smaller, and never above it', () => {
    const { layers } = wheelEnvelope(laid(0.25), cartRun([1, 2, 15, 2]), [SPREADS]);
    const exact = Math.max(...layers.map(({ kPa, permittedKPa }) => kPa / (permittedKPa ?? Number.POSITIVE_INFINITY)));
    // 125 + 2.5 of 100 kPa
    expect(exact).toBeCloseTo(1.275, 9);
    const found = [0.5, 0.25, 0.1, 0.05].map((cellM) => used(cellM).max);
    for (const [i, value] of found.entries()) {
      expect(value).toBeLessThanOrEqual(exact + 1e-6);
      if (i > 0) expect(value).toBeGreaterThanOrEqual((found[i - 1] ?? 0) - 1e-6);
    }
    expect(found.at(-1)).toBeCloseTo(exact, 5);
  });

  it('a zone beside is pressed where the patch laps onto it, as its own layers spread it', () => {
    const thin = buildUp('thin', [layer('base course', 0.1, { saturatedPerMKNm3: 20 })]);
    const zones = [zone('Z', box(0, 0, 16, 2.75), LANE), zone('N', box(0, 2.75, 16, 4), thin)];
    const layers = [SPREADS, [{ dispersal: 0.5, bearingKPa: 500 }]];
    const map = wheelMap(laid(0.05, zones), 'wheel-bearing', wheels(layers, cartRun([1, 2, 15, 2])), null);
    // The left tyre reaches to y = 2.8: 30 kN on 0.2 m × 0.4 m of the thin zone's top, nothing above
    expect(at(map.values, 0.05, 8.02, 2.77)).toBeCloseTo(375 / 500, 4);
    expect(at(map.values, 0.05, 8.02, 2.83)).toBeNaN();
  });
});

it('only plant of the stage asked for counts', () => {
  const map = wheelMap(laid(0.25), 'wheel-membrane', wheels([SPREADS], cartRun([1, 2, 15, 2], { stage: 0 })), null);
  expect(map.dataCells).toBe(0);
  expect(() => wheelMap(laid(0.25), 'wheel-membrane', wheels([SPREADS]), 99)).toThrow(RangeError);
});

it.each([0, 0.3, 0.7])('stamped at one place the cells hold all of the load, patches grown by %f m overlapping or not', (spreadM) => {
  const on = laid(0.25);
  const { grid } = on.prepared.ground;
  // On the skew, so that no side runs along the grid; 80 kN in all
  const standing = wheelsAt(axlePath([3, 1.6, 13, 2.4], 4), CART, 6, 1);
  const inCells = createRasteriser(grid).raise(
    standing.map((wheel) => patchRing(wheel, spreadM)),
    standing.map((wheel) => patchKPa(wheel, spreadM)),
    new Float64Array(grid.columns * grid.rows),
  );
  expect(inCells * grid.cellM ** 2).toBeCloseTo(80, 9);
});
