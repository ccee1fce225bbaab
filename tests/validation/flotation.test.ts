/**
 * Flotation of light layers: EN 1997-1, 2.4.7.4 (principle read at geotechnicaldesign.info/ec7p1/g2-4-h.html). Factors 1.0 and 0.9 recommended
 * (1.0 from memory, 0.9 in several texts), 1.1 and 0.9 in the United Kingdom (read at eurocode.us), 1.05 and 0.95 as remembered for Germany.
 * The build-up is our own example; the figures are arithmetic (check-values.md, section 9).
 */

import { describe, expect, it } from 'vitest';
import { type FloatLayer, worstUplift } from '../../src/core/water/flotation.ts';

/** 0.60 m light fill of 2.2 kN/m³ (1.32), 0.10 m · 17 (1.70) and 0.20 m · 13 (2.60): 5.62 kN/m². */
const build = (displaces: number): FloatLayer[] => [
  { thicknessM: 0.6, weightKNm2: 1.32, light: true, displaces },
  { thicknessM: 0.1, weightKNm2: 1.7, light: false, displaces: 0.7 },
  { thicknessM: 0.2, weightKNm2: 2.6, light: false, displaces: 0.4 },
];
const RECOMMENDED = { up: 1, down: 0.9 };
const KNM3 = 9.81;
/** The example rounds water to 10 kN/m³. */
const rounded = (utilisation: number) => (utilisation * KNM3) / 10;

describe('water up to the top of the light layer', () => {
  it.each([
    [1, 0.9, 1.18624],
    [1.1, 0.9, 1.304864],
    [1.05, 0.95, 1.179996],
  ])('sealed blocks, factors %d and %d: used %d times, they float', (up, down, utilisation) => {
    const found = worstUplift(build(1), 0.6, { up, down });
    expect(1 / Number(found?.ratio)).toBeCloseTo(rounded(utilisation), 5);
    expect(found?.ratio).toBeLessThan(1);
  });

  it('ballast over the light layer: 6 / 0.9 − 1.32 = 5.346667 kN/m² with water of 10 kN/m³', () => {
    const found = worstUplift(build(1), 0.6, RECOMMENDED);
    // What lies there, 4.3, and what is missing; 9.81 · 0.6 / 0.9 − 1.32 = 5.22.
    expect(4.3 + Number(found?.ballastKNm2)).toBeCloseTo(5.22, 9);
    expect((4.3 + 1.32 + Number(found?.ballastKNm2)) * (10 / KNM3) - 1.32).toBeCloseTo(5.346667, 6);
  });

  it('grains with 40 % of voids between them: used 0.711744 times, they stay', () => {
    const found = worstUplift(build(0.6), 0.6, RECOMMENDED);
    expect(1 / Number(found?.ratio)).toBeCloseTo(rounded(0.711744), 5);
    expect(found?.ballastKNm2).toBe(0);
  });
});

describe('other levels of water', () => {
  it('does not lift where water stays below', () => {
    expect(worstUplift(build(1), 0, RECOMMENDED)).toBeNull();
    const onElement: FloatLayer[] = [{ thicknessM: 0.06, weightKNm2: 0.4, light: false, displaces: 0.1 }, ...build(1)];
    expect(worstUplift(onElement, 0.06, RECOMMENDED)).toBeNull();
  });

  it('weighs ballast under water less what it pushes aside', () => {
    // Water 0.1 m over the light layer: holds 5.62 − 9.81 · 0.7 · 0.1 = 4.9333.
    expect(worstUplift(build(1), 0.7, RECOMMENDED)?.holdingKNm2).toBeCloseTo(4.9333, 9);
    // 0.2 m over it, all of the second layer and half of the third: less 9.81 · 0.4 · 0.1 more.
    expect(worstUplift(build(1), 0.8, RECOMMENDED)?.holdingKNm2).toBeCloseTo(4.5409, 9);
  });

  it('does not count what lies beneath the light layer, and looks at the upper one of two for itself', () => {
    const two: FloatLayer[] = [
      { thicknessM: 0.05, weightKNm2: 5, light: false, displaces: 1 },
      { thicknessM: 0.1, weightKNm2: 1.5, light: true, displaces: 1 },
      { thicknessM: 0.1, weightKNm2: 0.02, light: true, displaces: 1 },
      { thicknessM: 0.05, weightKNm2: 0.5, light: false, displaces: 1 },
    ];
    // Both: 2.02 · 0.9 / 1.962 = 0.927; the upper alone 0.52 · 0.9 / 0.981 = 0.477.
    const found = worstUplift(two, 0.25, RECOMMENDED);
    expect(found?.layer).toBe(2);
    expect(found?.ratio).toBeCloseTo(0.477064, 6);
  });
});
