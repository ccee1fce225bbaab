/** Build-ups as sums of a fixed part and a part per metre of make-up layer. */

import { describe, expect, it } from 'vitest';
import { fixedThicknessM, makeUpLayer, stackCoefficients } from '../../../src/core/layers/coefficients.ts';
import { buildUp, layer } from '../../helpers/deck-builder.ts';

/** Sheet 0.01 / 0.03 kN/m²; fill 2 / 3 kN/m³ and 50 l/m² per metre, 0.1 … 0.4 m, nominal 0.2; soil 10 / 15 kN/m³, 0.3 m, 400 l/m² per metre and 6 fixed. */
const LAYERS = [
  layer('protection', 0.004, { dryFixedKNm2: 0.01, saturatedFixedKNm2: 0.03 }),
  layer('light fill', 0.2, { rangeM: { min: 0.1, max: 0.4 }, dryPerMKNm3: 2, saturatedPerMKNm3: 3, heldPerMLm2: 50 }),
  layer('substrate', 0.3, { dryPerMKNm3: 10, saturatedPerMKNm3: 15, heldPerMLm2: 400, heldFixedLm2: 6 }),
];
const BUILD_UP = buildUp('b', LAYERS, 0.2);

describe('coefficients', () => {
  it('of the whole build-up', () => {
    const all = stackCoefficients(BUILD_UP, () => true, true);
    // 0.01 + 10 · 0.3 + vegetation 0.2
    expect(all.dry.fixed).toBeCloseTo(3.21, 12);
    expect(all.dry.perM).toBe(2);
    // 0.03 + 15 · 0.3 + 0.2
    expect(all.saturated.fixed).toBeCloseTo(4.73, 12);
    expect(all.saturated.perM).toBe(3);
    // 6 + 400 · 0.3
    expect(all.held.fixed).toBeCloseTo(126, 12);
    expect(all.held.perM).toBe(50);
    // 0.004 + 0.3
    expect(all.depth.fixed).toBeCloseTo(0.304, 12);
    expect(all.depth.perM).toBe(1);
  });

  it('of what is placed, without the vegetation', () => {
    const some = stackCoefficients(BUILD_UP, (i) => i < 2, false);
    expect(some.saturated).toEqual({ fixed: 0.03, perM: 3 });
    expect(some.depth).toEqual({ fixed: 0.004, perM: 1 });
    expect(some.held).toEqual({ fixed: 0, perM: 50 });
  });

  it('of nothing are nothing', () => {
    const none = stackCoefficients(BUILD_UP, () => false, false);
    expect(none.saturated).toEqual({ fixed: 0, perM: 0 });
  });
});

it('finds the make-up layer and the thickness of the others', () => {
  expect(makeUpLayer(BUILD_UP)).toBe(1);
  expect(fixedThicknessM(BUILD_UP)).toBeCloseTo(0.304, 12);
  const fixed = buildUp('f', [LAYERS[0], LAYERS[2]]);
  expect(makeUpLayer(fixed)).toBe(-1);
  expect(fixedThicknessM(fixed)).toBeCloseTo(0.304, 12);
});
