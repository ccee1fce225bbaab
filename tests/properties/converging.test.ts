/** Finer cells come nearer to what pencil and paper give. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centroidM, signedAreaM2 } from '../../src/core/geometry/ring.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { bay, buildUp, MAKE_UP, randomFrom, read, rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const SEED = 314159;

describe(`make-up volume of a sloping zone (seed ${SEED})`, () => {
  // by hand: between two planes the volume is area · thickness at the centroid. A boundary cell is sampled at its centre instead of the
  // middle of its part, at most c/2 away each way: error below boundary · c · (c/2) · (|gx| + |gy|).
  function errorM3(outline: readonly PointM[], cellM: number): { error: number; bound: number } {
    const flat = Float64Array.from(outline.flat());
    const [cx, cy] = centroidM(flat);
    const spots = rect(-1, -1, 11, 9).map(([x, y]): [number, number, number] => [x, y, 0.1 + 0.012 * x - 0.008 * y]);
    const deck = { outline: rect(0, 0, 10, 8), levels: { spots } };
    // Falls by 4 % along 60°: direction (sin 60°, cos 60°).
    const finish = { kind: 'plane' as const, at: [2, 3, 1] as const, fallPercent: 4, towardsDeg: 60 };
    const { report } = read(sceneOf({ deck, buildups: [MAKE_UP], zones: [zone('Z1', outline, 'make-up', { finish })] }), cellM);
    const [gx, gy] = [-0.04 * Math.sin(Math.PI / 3) - 0.012, -0.04 * 0.5 + 0.008];
    const finished = 1 - 0.04 * ((cx - 2) * Math.sin(Math.PI / 3) + (cy - 3) * 0.5);
    const thickness = finished - (0.1 + 0.012 * cx - 0.008 * cy) - 0.11;
    const exact = signedAreaM2(flat) * thickness;
    const [entry] = report.zones;
    const boundary = outline.reduce((length, [x, y], i) => {
      const [nx, ny] = outline[(i + 1) % outline.length];
      return length + Math.abs(nx - x) + Math.abs(ny - y) + cellM;
    }, 0);
    const error = Math.abs((entry.areaM2 * (entry.makeUpMm?.mean ?? Number.NaN)) / 1000 - exact);
    return { error, bound: boundary * cellM * (cellM / 2) * (Math.abs(gx) + Math.abs(gy)) };
  }

  it('within its bound at every size, and better than 0.1 % with cells of 0.1 m', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
        const random = randomFrom(seed);
        const corners = 3 + Math.floor(random() * 8);
        const outline = Array.from({ length: corners }, (_, i): PointM => {
          const angle = (2 * Math.PI * (i + 0.7 * random())) / corners;
          return [5 + 4.8 * Math.cos(angle), 4 + 3.8 * Math.sin(angle)];
        });
        const area = signedAreaM2(Float64Array.from(outline.flat()));
        const errors = [1, 0.5, 0.25, 0.1].map((cellM) => errorM3(outline, cellM));
        for (const { error, bound } of errors) expect(error).toBeLessThan(bound);
        expect(errors[3].error).toBeLessThan(1e-3 * area * 0.6);
        expect(errors[3].error).toBeLessThan(Math.max(1e-9, 0.5 * Math.max(errors[0].error, errors[1].error, errors[2].error)));
      }),
      { seed: SEED, numRuns: 12 },
    );
  });

  it('exact where cells tile the zone', () => {
    for (const cellM of [2, 1, 0.5, 0.25, 0.1]) expect(errorM3(rect(2, 2, 8, 6), cellM).error).toBeLessThan(1e-9);
  });
});

describe('patch of a tree', () => {
  function patch(spreadM: number, at: PointM, cellM: number): number {
    const outline = rect(0, 0, 6, 6);
    const objects = [{ kind: 'tree' as const, id: 'T1', at, massKg: 2400, spreadM }];
    const { report } = read(sceneOf({ deck: { outline, bays: [bay('A1', outline)] }, buildups: [SOIL_100], zones: [], objects }), cellM);
    return report.bays[0].permanent.patchKNm2;
  }

  // by hand: 2400 · 9.81 / 1000 = 23.544 kN
  it.each<[string, number, PointM, number]>([
    ['0.6 m spread: the whole tree stands in one window', 0.6, [3, 3], 23.544],
    ['0.6 m spread, off the lines of the grid', 0.6, [3.077, 2.931], 23.544],
    ['1.6 m spread: the window lies inside the disc', 1.6, [3.04, 3.01], 23.544 / (Math.PI * 0.64)],
    ['2.5 m spread', 2.5, [2.9, 3.3], 23.544 / (Math.PI * 1.5625)],
  ])('%s', (_, spreadM, at, exact) => {
    const errors = [1, 0.5, 0.25, 0.1, 0.05].map((cellM) => {
      const found = patch(spreadM, at, cellM);
      expect(found).toBeLessThanOrEqual(exact + 1e-9);
      return exact - found;
    });
    expect(errors[3]).toBeLessThan(0.01 * exact);
    expect(errors[4]).toBeLessThan(1e-9);
    expect(errors[4]).toBeLessThanOrEqual(errors[0] + 1e-9);
  });

  it('a disc cut by the deck edge leaves its outer half outside', () => {
    const outline = rect(0, 0, 6, 6);
    const objects = [{ kind: 'tree' as const, id: 'T1', at: [6, 3] as const, massKg: 2400, spreadM: 2 }];
    const { report } = read(sceneOf({ deck: { outline }, buildups: [buildUp('b', [{ material: 'sheet' }])], zones: [], objects }));
    expect(report.deck.objectsKN).toBeCloseTo(11.772, 9); // by hand: half of 23.544
    const outside = report.findings.find(({ rule, where }) => rule === 'zone.outside' && where.object === 'T1');
    expect(outside?.value).toBeCloseTo(Math.PI / 2, 9); // by hand: half of π · 1²
  });
});
