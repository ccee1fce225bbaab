import { describe, expect, it } from 'vitest';
import { signedAreaM2 } from '../../../src/core/geometry/ring.ts';
import { governingPressure, greatestSum, layerTops, mergedPatch, patchKPa, patchRing } from '../../../src/core/loads/wheel-stress.ts';
import type { WheelPatch } from '../../../src/model/wheel-input.ts';
import { buildUp, layer } from '../../helpers/deck-builder.ts';
import { randomFrom } from '../../helpers/scene-builder.ts';

function wheel(x: number, y: number, loadKN = 20, over: Partial<WheelPatch> = {}): WheelPatch {
  return { x, y, dirX: 1, dirY: 0, alongM: 0.2, acrossM: 0.4, loadKN, ...over };
}

const heading = (deg: number) => ({ dirX: Math.cos((deg * Math.PI) / 180), dirY: Math.sin((deg * Math.PI) / 180) });

describe('growth and weight above each layer', () => {
  // Bottom to top: sheet, fill as make-up layer at 10 kN/m³, base 0.2 m at 20 kN/m³, slab 0.1 m at 25 kN/m³
  const stack = buildUp(
    'lane',
    [
      layer('protection', 0.005, { saturatedFixedKNm2: 0.01 }),
      layer('light fill', 0.3, { rangeM: { min: 0, max: 1 }, saturatedPerMKNm3: 10 }),
      layer('base course', 0.2, { saturatedPerMKNm3: 20 }),
      layer('surfacing', 0.1, { saturatedPerMKNm3: 25 }),
    ],
    0.5,
  );
  const spreads = [0, 0.5, 0.5, 1].map((dispersal) => ({ dispersal, bearingKPa: null }));

  it('adds up from the top down, the make-up layer per metre', () => {
    const tops = layerTops(stack, spreads, () => true, true);
    expect(tops.map((top) => top.layer)).toEqual([3, 2, 1, 0, -1]);
    const near = (values: readonly number[], wanted: readonly number[]) =>
      expect(values).toEqual(wanted.map((value) => expect.closeTo(value, 12)));
    // 0.1 · 1; then 0.2 · 0.5 more
    near(
      tops.map((top) => top.spread.fixed),
      [0, 0.1, 0.2, 0.2, 0.2],
    );
    near(
      tops.map((top) => top.spread.perM),
      [0, 0, 0, 0.5, 0.5],
    );
    // Vegetation 0.5; slab 2.5; base 4; fill 10 per metre; sheet 0.01
    near(
      tops.map((top) => top.above.fixed),
      [0.5, 3, 7, 7, 7.01],
    );
    near(
      tops.map((top) => top.above.perM),
      [0, 0, 0, 10, 10],
    );
    near(
      tops.map((top) => top.depth.fixed),
      [0, 0.1, 0.3, 0.3, 0.305],
    );
  });

  it('leaves out what is not placed', () => {
    const tops = layerTops(stack, spreads, (i) => i < 3, false);
    expect(tops.map((top) => top.layer)).toEqual([2, 1, 0, -1]);
    expect(tops[0].spread.fixed).toBe(0);
    expect(tops[1].above.fixed).toBeCloseTo(4, 12);
  });
});

describe('patches', () => {
  it('grow on every side, at any heading', () => {
    for (const deg of [0, 37, 90, 211]) {
      const ring = patchRing(wheel(5, 7, 20, heading(deg)), 0.3);
      // (0.2 + 0.6) · (0.4 + 0.6)
      expect(signedAreaM2(ring)).toBeCloseTo(0.8, 12);
    }
  });

  it('press evenly: 20 kN on 0.8 m²', () => {
    expect(patchKPa(wheel(0, 0), 0.3)).toBeCloseTo(25, 12);
  });
});

describe('wheels that overlap', () => {
  it('do not add where they only touch', () => {
    // Grown to 1.0 m across, 1.0 m apart
    expect(greatestSum([wheel(0, 0), wheel(0, 1)], 0, 0.3)).toEqual({ kPa: patchKPa(wheel(0, 0), 0.3), wheels: 1 });
    expect(greatestSum([wheel(0, 0), wheel(0, 0.999)], 0, 0.3).wheels).toBe(2);
  });

  it('add: 25 kPa and 12.5 kPa', () => {
    expect(greatestSum([wheel(0, 0), wheel(0, 0.9, 10)], 0, 0.3).kPa).toBeCloseTo(37.5, 12);
  });

  it('three in a row whose outer ones do not reach each other: two at a time', () => {
    const row = [wheel(0, -0.6), wheel(0, 0), wheel(0, 0.6)];
    // Grown to 1.0 m across: the outer ones meet in the middle patch only from 1.2 m apart; they are 1.2 m apart
    expect(greatestSum(row, 1, 0.3)).toMatchObject({ wheels: 2 });
    expect(greatestSum(row, 1, 0.3).kPa).toBeCloseTo(50, 12);
    // With 1.4 m across all three press in the middle: 3 · 20/(1.2 · 1.4)
    expect(greatestSum(row, 1, 0.5).kPa).toBeCloseTo(60 / 1.68, 12);
  });

  it('at a right angle they add where they cross', () => {
    const crossed = [wheel(0, 0, 20, { alongM: 2, acrossM: 0.2 }), wheel(0, 0, 20, { alongM: 2, acrossM: 0.2, dirX: 0, dirY: 1 })];
    expect(greatestSum(crossed, 0, 0).kPa).toBeCloseTo(100, 9);
  });

  it('is what the densest of many sampled points finds, for patches at any angle', () => {
    const random = randomFrom(5);
    for (let round = 0; round < 40; round++) {
      const wheels = Array.from({ length: 4 }, () => wheel(random() - 0.5, random() - 0.5, 10 + 10 * random(), heading(360 * random())));
      const found = greatestSum(wheels, 0, 0.15).kPa;
      let sampled = 0;
      for (let i = 0; i < 4000; i++) {
        const [a, c] = [(random() - 0.5) * 0.5, (random() - 0.5) * 0.7];
        const { x, y, dirX, dirY } = wheels[0];
        const [px, py] = [x + a * dirX - c * dirY, y + a * dirY + c * dirX];
        let sum = 0;
        for (const one of wheels) {
          const along = (px - one.x) * one.dirX + (py - one.y) * one.dirY;
          const across = (py - one.y) * one.dirX - (px - one.x) * one.dirY;
          if (Math.abs(along) < 0.25 && Math.abs(across) < 0.35) sum += one.loadKN / (0.5 * 0.7);
        }
        sampled = Math.max(sampled, sum);
      }
      // A meeting too small for any of the samples may be missed by them, never by the other.
      expect(found).toBeGreaterThanOrEqual(sampled - 1e-9);
      const possible = [0, 1, 2, 3, 4, 5, 6, 7].map(
        (set) => (wheels[0].loadKN + [1, 2, 3].reduce((sum, i) => sum + ((set >> (i - 1)) & 1) * wheels[i].loadKN, 0)) / 0.35,
      );
      expect(possible.some((kPa) => Math.abs(kPa - found) < 1e-9)).toBe(true);
    }
  });
});

describe('the enclosing rectangle', () => {
  it('takes what hangs together, also by way of a third', () => {
    const row = [wheel(0, -0.9), wheel(0, 0), wheel(0, 0.9), wheel(0, 5)];
    // 60 kN on 0.8 m × (1.8 + 1.0) m
    expect(mergedPatch(row, 0, 0.3)).toMatchObject({ wheels: 3, loadKN: 60 });
    expect(mergedPatch(row, 0, 0.3).kPa).toBeCloseTo(60 / (0.8 * 2.8), 12);
  });

  it('is never more than the greatest sum of those it takes, being the mean over all of them', () => {
    const random = randomFrom(8);
    for (let round = 0; round < 200; round++) {
      const wheels = Array.from({ length: 5 }, () => wheel(2 * random(), 2 * random(), 5 + 20 * random(), heading(360 * random())));
      const spread = 0.5 * random();
      const peak = Math.max(...wheels.map((_, i) => greatestSum(wheels, i, spread).kPa));
      for (const i of wheels.keys()) expect(mergedPatch(wheels, i, spread).kPa).toBeLessThanOrEqual(peak + 1e-9);
    }
  });

  it('governs for a light wheel beside a heavy one that it does not share a point with', () => {
    // Chain: light wheel at 0, a second that touches both, heavy one at 1.8 m: in the light patch 10 + 10, the rectangle has 120 kN
    const chain = [wheel(0, 0, 8), wheel(0, 0.9, 8), wheel(0, 1.8, 200)];
    // 16 kN/0.8 m² = 20 kPa; 216 kN/(0.8 · 2.8) = 96.4 kPa
    expect(governingPressure(chain, 0, 0.3)).toMatchObject({ governs: 'enclosing rectangle' });
    expect(governingPressure(chain, 0, 0.3).kPa).toBeCloseTo(216 / 2.24, 9);
    expect(governingPressure(chain, 2, 0.3)).toMatchObject({ governs: 'sum of wheels' });
  });
});

it('a wheel alone is said to be alone', () => {
  expect(governingPressure([wheel(0, 0)], 0, 0.3)).toEqual({ kPa: 20 / 0.8, governs: 'one wheel' });
});
