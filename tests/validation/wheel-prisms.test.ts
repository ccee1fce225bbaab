/**
 * Wheels spread by prisms: a rectangle that grows with depth. Slopes 1:1, 30° and 2:1 (each side grows by the depth in all) as
 * in EN 1991-2:2003, 4.3.6 and 4.9.1 [from memory]; AASHTO LRFD 3.6.1.2.5 and 3.6.1.2.6, editions up to 2014 [secondary].
 * The results are arithmetic on those rules, worked out by hand with the figures shown.
 */

import { describe, expect, it } from 'vitest';
import { layerTops, mergedPatch, patchKPa } from '../../src/core/loads/wheel-stress.ts';
import type { WheelPatch } from '../../src/model/wheel-input.ts';
import { buildUp, layer } from '../helpers/deck-builder.ts';

const TAN_30 = Math.tan(Math.PI / 6);

function wheel(loadKN: number, alongM: number, acrossM: number, y = 0): WheelPatch {
  return { x: 0, y, dirX: 1, dirY: 0, alongM, acrossM, loadKN };
}

describe('150 kN on 0.40 m × 0.40 m at 1.50 m', () => {
  it.each([
    // Sides 0.4 + 2 · 1.5 · tan: 2.132051, 1.9 and 3.4 m
    ['30°', TAN_30, 32.998649],
    ['2:1', 0.5, 41.551247],
    ['1:1', 1, 12.975779],
  ])('%s', (_, slope, kPa) => {
    expect(patchKPa(wheel(150, 0.4, 0.4), 1.5 * slope)).toBeCloseTo(kPa, 6);
  });

  it('two such wheels 1.80 m apart touch at 1.4/(2 tan): 1.212436 m for 30°, 1.400000 m for 2:1', () => {
    const axle = [wheel(150, 0.4, 0.4, -0.9), wheel(150, 0.4, 0.4, 0.9)];
    for (const [slope, touchM] of [
      [TAN_30, 1.212436],
      [0.5, 1.4],
    ]) {
      expect(mergedPatch(axle, 0, (touchM - 1e-5) * slope).wheels).toBe(1);
      expect(mergedPatch(axle, 0, (touchM + 1e-5) * slope).wheels).toBe(2);
    }
  });

  it('an axle of 300 kN merged, 30°: 3.932051 m × 2.132051 m, 35.785294 kPa', () => {
    const { kPa, alongM, acrossM, loadKN } = mergedPatch([wheel(150, 0.4, 0.4, -0.9), wheel(150, 0.4, 0.4, 0.9)], 0, 1.5 * TAN_30);
    expect(alongM).toBeCloseTo(2.132051, 6);
    expect(acrossM).toBeCloseTo(3.932051, 6);
    expect(loadKN).toBe(300);
    expect(kPa).toBeCloseTo(35.785294, 6);
  });
});

describe('50 kN on 0.20 m × 0.40 m through 0.08 m of paving at 1:1 and 0.04 + 0.25 + 0.30 m unbound', () => {
  const layers = [layer('light fill', 0.3), layer('base course', 0.25), layer('bedding', 0.04), layer('surfacing', 0.08)];
  const onMembrane = (unbound: number) => {
    const spreads = layers.map(({ role }) => ({ dispersal: role === 'surfacing' ? 1 : unbound, bearingKPa: null }));
    return layerTops(buildUp('lane', layers), spreads, () => true, false).at(-1)?.spread.fixed ?? Number.NaN;
  };

  it('30°: 1.041273 m × 1.241273 m, 38.684576 kPa', () => {
    // 0.08 + 0.59 · 0.577350 = 0.420637 on every side
    expect(0.2 + 2 * onMembrane(TAN_30)).toBeCloseTo(1.041273, 6);
    expect(patchKPa(wheel(50, 0.2, 0.4), onMembrane(TAN_30))).toBeCloseTo(38.684576, 6);
    // Half of a slab of 0.35 m at 1:1 beneath
    expect(patchKPa(wheel(50, 0.2, 0.4), onMembrane(TAN_30) + 0.175)).toBeCloseTo(22.584619, 6);
  });

  it('2:1: 0.950 m × 1.150 m, 45.766590 kPa', () => {
    expect(onMembrane(0.5)).toBeCloseTo(0.375, 12);
    expect(patchKPa(wheel(50, 0.2, 0.4), onMembrane(0.5))).toBeCloseTo(45.76659, 6);
  });
});

describe('AASHTO LRFD: 20 in × 10 in of contact, each side grows by the factor times the fill', () => {
  it('145 kN on 0.51 m × 0.25 m grown to 3.81 m × 1.75 m by factor 1.0 and 1.50 m (axle of two wheels): 21.747282 kPa', () => {
    // Wheels 1.80 m apart: 0.51 + 1.80 + 1.50 = 3.81 m across
    const axle = [wheel(72.5, 0.25, 0.51, -0.9), wheel(72.5, 0.25, 0.51, 0.9)];
    expect(mergedPatch(axle, 1, 0.75).kPa).toBeCloseTo(21.747282, 6);
  });

  it('16 kip under 24 in with factor 1.15: 47.6 in × 37.6 in, 1287.3234 psf', () => {
    const inch = 0.0254;
    const kipKN = 4.4482216152605;
    const kPa = patchKPa(wheel(16 * kipKN, 10 * inch, 20 * inch), (1.15 * 24 * inch) / 2);
    // 1 kPa = 20.885434 psf
    expect(kPa * 20.885434).toBeCloseTo(1287.3234, 3);
  });

  it('wheels 72 in apart interact from 45.2174 in down', () => {
    const inch = 0.0254;
    const axle = [wheel(71, 10 * inch, 20 * inch, -36 * inch), wheel(71, 10 * inch, 20 * inch, 36 * inch)];
    const spread = (depthIn: number) => (1.15 * depthIn * inch) / 2;
    expect(mergedPatch(axle, 0, spread(45.21)).wheels).toBe(1);
    expect(mergedPatch(axle, 0, spread(45.22)).wheels).toBe(2);
  });
});

// DIN 1072, substitute area load of class 16/16 [from memory]: 160 kN / (3 m × 6 m) = 8.8889. An outrigger of 144 kN at 800 kN/m² (Swiss
// guideline on fire-brigade areas, 2015, as a forum quotes it [secondary]) stands on 0.18 m²; 52,000 lb on 2 ft × 2 ft (New York City
// Fire Code 503.2.2.2 [read]) press 13,000 psf = 622.656 kPa.
it('supports of fire appliances', () => {
  expect(patchKPa(wheel(144, Math.sqrt(0.18), Math.sqrt(0.18)), 0)).toBeCloseTo(800, 9);
  expect(patchKPa(wheel(231.387, 0.6096, 0.6096), 0)).toBeCloseTo(622.656, 2);
});
