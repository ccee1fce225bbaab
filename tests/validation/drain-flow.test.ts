/**
 * Flow and head in drainage layers.
 * McEnroe (1993), J. Environ. Eng. 119(2), 262–270, and Giroud et al. (1992, 2000): formulas from memory. The heads of McEnroe were confirmed by a
 * second program that integrates R(1 − X) = Y(1 + dY/dX), Y(0) = RS (check-values.md, section 6); here that is done again, in the last test.
 */

import { describe, expect, it } from 'vitest';
import { darcyLsm, flatHeadM, giroudHeadM, mcEnroeHeadM, stripFlowLsm } from '../../src/core/water/drain-flow.ts';

const MM_PER_HOUR = 1e-3 / 3600;
const CASES = [
  // 380 l/(s·ha) · 0.3 = 1.14e-5 m/s
  { name: 'A', lengthM: 20, slope: 0.02, permeabilityMs: 0.05, inflowMs: 1.14e-5, mcEnroe: 0.142911, giroud: 0.14279, flat: 0.301993 },
  {
    name: 'B',
    lengthM: 20,
    slope: 0.02,
    permeabilityMs: 0.05,
    inflowMs: 10 * MM_PER_HOUR,
    mcEnroe: 0.044599,
    giroud: 0.04443,
    flat: 0.149071,
  },
  {
    name: 'C',
    lengthM: 30,
    slope: 0.03,
    permeabilityMs: 0.01,
    inflowMs: 2 * MM_PER_HOUR,
    mcEnroe: 0.048663,
    giroud: 0.048271,
    flat: 0.223607,
  },
  {
    name: 'D',
    lengthM: 20,
    slope: 0.05,
    permeabilityMs: 0.001,
    inflowMs: 1 * MM_PER_HOUR,
    mcEnroe: 0.09186,
    giroud: 0.091318,
    flat: 0.333333,
  },
];

describe('heads', () => {
  it.each(CASES)('case $name', (layer) => {
    expect(mcEnroeHeadM(layer)).toBeCloseTo(layer.mcEnroe, 6);
    expect(giroudHeadM(layer)).toBeCloseTo(layer.giroud, 6);
    expect(flatHeadM(layer)).toBeCloseTo(layer.flat, 6);
    expect(Math.abs(giroudHeadM(layer) / mcEnroeHeadM(layer) - 1)).toBeLessThan(0.01);
  });

  it('published exercise (pipes 30 ft apart, 13 in in 24 h, k 0.006 cm/s, slope 1.8 %), heads by both formulas', () => {
    const layer = { lengthM: 15 * 0.3048, slope: 0.018, permeabilityMs: 6e-5, inflowMs: (13 * 0.0254) / 86400 };
    expect(mcEnroeHeadM(layer)).toBeCloseTo(1.127238, 5);
    expect(giroudHeadM(layer)).toBeCloseTo(1.101966, 5);
    expect(flatHeadM(layer)).toBeCloseTo(1.153884, 5);
  });

  it('runs through R = 1/4 without a step', () => {
    const slope = 0.02;
    const at = (r: number) =>
      mcEnroeHeadM({ lengthM: 10, slope, permeabilityMs: 0.01, inflowMs: (r * 0.01 * slope ** 2) / (1 + slope ** 2) });
    const quarter = at(0.25);
    for (const step of [1e-7, 9e-7, 1.1e-6, 1e-5]) {
      // The head grows by less than five times the change of R here, as the whole of it at R = 1/4 is 0.06 m.
      expect(Math.abs(at(0.25 - step) - quarter)).toBeLessThan(5 * step);
      expect(Math.abs(at(0.25 + step) - quarter)).toBeLessThan(5 * step);
    }
    expect(at(0.25 - 1e-3)).toBeLessThan(quarter);
    expect(at(0.25 + 1e-3)).toBeGreaterThan(quarter);
  });

  it('is the flat parabola on no slope, and nearly so on next to none', () => {
    const layer = { lengthM: 10, permeabilityMs: 0.01, inflowMs: 1e-6 };
    expect(mcEnroeHeadM({ ...layer, slope: 0 })).toBeCloseTo(0.1, 9);
    expect(giroudHeadM({ ...layer, slope: 0 })).toBeCloseTo(0.1, 9);
    expect(mcEnroeHeadM({ ...layer, slope: 1e-5 })).toBeCloseTo(0.1, 3);
  });

  it('stands nowhere without rain', () => {
    expect(mcEnroeHeadM({ lengthM: 10, slope: 0.02, permeabilityMs: 0.01, inflowMs: 0 })).toBe(0);
    expect(giroudHeadM({ lengthM: 10, slope: 0.02, permeabilityMs: 0.01, inflowMs: 0 })).toBe(0);
  });
});

describe('flow per metre', () => {
  it.each([
    [0.01, 0.1, 0.02, 0.02],
    [0.1, 0.3, 0.02, 0.6],
  ])('Darcy, k %d m/s, t %d m, s %d: %d l/(s·m)', (k, t, s, q) => {
    expect(darcyLsm(k, t, s)).toBeCloseTo(q, 9);
  });

  it('380 l/(s·ha) on 20 m: 0.76, with C = 0.3 0.228 l/(s·m)', () => {
    expect(stripFlowLsm(380, 20)).toBeCloseTo(0.76, 9);
    expect(stripFlowLsm(380 * 0.3, 20)).toBeCloseTo(0.228, 9);
  });
});

describe('the differential equation behind McEnroe', () => {
  // Flow through a section: k · y · (dy/dx + S) · cos²α = r · (L − x), from the free drain (y = r L / (k S … ) at X = 0 in his variables) uphill.
  it.each(CASES)('case $name by Runge and Kutta', ({ lengthM, slope, permeabilityMs, inflowMs, mcEnroe }) => {
    const r = (inflowMs * (1 + slope ** 2)) / (permeabilityMs * slope ** 2);
    // R(1 − X) = Y(1 + dY/dX), X and Y scaled by L and L · S, and Y(0) = R · S.
    const rise = (x: number, y: number) => (r * (1 - x)) / y - 1;
    const steps = 200_000;
    const h = 1 / steps;
    let y = r * slope;
    let most = y;
    for (let i = 0; i < steps && y > 0; i++) {
      // Steep at the drain: the first steps are taken in smaller ones.
      const parts = i < 200 ? 400 : 1;
      for (let p = 0; p < parts; p++) {
        const d = h / parts;
        const x = i * h + p * d;
        const a = rise(x, y);
        const b = rise(x + d / 2, y + (d / 2) * a);
        const c = rise(x + d / 2, y + (d / 2) * b);
        const e = rise(x + d, y + d * c);
        y += (d / 6) * (a + 2 * b + 2 * c + e);
      }
      most = Math.max(most, y);
      if (y < most * 0.9) break;
    }
    expect(most * lengthM * slope).toBeCloseTo(mcEnroe, 5);
  });
});
