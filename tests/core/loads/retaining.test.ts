/** Statics of retaining edges: by hand, by integration, and at the limits. */

import { describe, expect, it } from 'vitest';
import { basePressure, earthPressure, type RetainingInput, retainingStatics } from '../../../src/core/loads/retaining.ts';

/** Ka = 1/3 at 30°; heel 0.8 m, 0.8 m of soil on it. */
const wall: RetainingInput = {
  retainedM: 1,
  baseM: 1,
  stemM: 0.2,
  slabM: 0.2,
  soilKNm3: 18,
  frictionDeg: 30,
  surchargeKNm2: 3,
  baseFriction: 0.5,
  wallKNm3: 25,
};

describe('retainingStatics', () => {
  it('by hand', () => {
    const found = retainingStatics(wall);
    // 18/3 · 1²/2 and 3/3 · 1; moments 3/3 + 1/2
    expect(found.soilThrustKNm).toBeCloseTo(3, 12);
    expect(found.surchargeThrustKNm).toBeCloseTo(1, 12);
    expect(found.overturningKN).toBeCloseTo(1.5, 12);
    // Stem 0.2 · 0.8 · 25 = 4, slab 1 · 0.2 · 25 = 5
    expect(found.ownKNm).toBeCloseTo(9, 12);
    // Soil 0.8 · 0.8 · 18 = 11.52 at 0.6; 4 · 0.1 + 5 · 0.5 + 11.52 · 0.6 = 9.812
    expect(found.bare.verticalKNm).toBeCloseTo(20.52, 12);
    expect(found.bare.stabilisingKN).toBeCloseTo(9.812, 12);
    expect(found.bare.slidingRatio).toBeCloseTo((0.5 * 20.52) / 4, 12);
    expect(found.bare.overturningRatio).toBeCloseTo(9.812 / 1.5, 12);
    // Live 0.8 · 3 = 2.4 at 0.6: 1.44
    expect(found.loaded.verticalKNm).toBeCloseTo(22.92, 12);
    expect(found.loaded.stabilisingKN).toBeCloseTo(11.252, 12);
  });

  it('without live load both cases are one', () => {
    const { bare, loaded, surchargeThrustKNm } = retainingStatics({ ...wall, surchargeKNm2: 0 });
    expect(surchargeThrustKNm).toBe(0);
    expect(loaded).toEqual(bare);
  });

  it('the resultant lies where the moments about the foot say: within the base on the soil side of the foot', () => {
    const { bare, overturningKN } = retainingStatics(wall);
    const fromFootM = wall.baseM / 2 - bare.eccentricityM;
    expect(fromFootM * bare.verticalKNm).toBeCloseTo(bare.stabilisingKN - overturningKN, 12);
  });

  it('a wall that falls over has no pressure under it', () => {
    // Soil of 2 m behind a base of 0.3 m: weights 0.05 · 1.95 · 25 + 0.3 · 0.05 · 25 + 0.25 · 1.95 · 18 = 11.5875, their moment at most 0.3 times that,
    // 3.5; the thrust alone turns with 18/3 · 2²/2 · 2/3 = 8
    const { bare } = retainingStatics({ ...wall, retainedM: 2, baseM: 0.3, stemM: 0.05, slabM: 0.05, surchargeKNm2: 0 });
    expect(bare.overturningRatio).toBeLessThan(0.5);
    expect(bare.pressure).toBeNull();
  });

  it.each([
    ['stem as wide as the base', { stemM: 1 }],
    ['no stem', { stemM: 0 }],
    ['slab as thick as the wall is high', { slabM: 1 }],
    ['no slab', { slabM: 0 }],
    ['weightless soil', { soilKNm3: 0 }],
    ['friction of 90°', { frictionDeg: 90 }],
    ['friction below 0', { frictionDeg: -1 }],
    ['no number', { retainedM: Number.NaN }],
  ])('refuses %s', (_, change) => {
    expect(() => retainingStatics({ ...wall, ...change })).toThrow(RangeError);
  });
});

describe('earthPressure', () => {
  it('a fluid presses evenly all round', () => {
    const { active, atRest, passive } = earthPressure(0);
    for (const coefficient of [active, atRest, passive]) expect(coefficient).toBeCloseTo(1, 12);
  });
});

describe('basePressure', () => {
  it.each([0, 0.1, 1 / 6, 0.2, 0.4, 0.49])('carries the force at its place, e = %s of 1 m', (e) => {
    const found = basePressure(10, e, 1);
    if (!found) throw new Error('no pressure');
    // A trapezoid or triangle over the contact width: area = force, centroid = e from the middle.
    const areaKNm = ((found.maxKPa + found.minKPa) / 2) * found.contactM;
    const fromRimM = (found.contactM * (found.maxKPa + 2 * found.minKPa)) / (3 * (found.maxKPa + found.minKPa));
    expect(areaKNm).toBeCloseTo(10, 9);
    expect(0.5 - fromRimM).toBeCloseTo(e, 9);
    expect(found.effectiveKPa * found.effectiveM).toBeCloseTo(10, 9);
  });

  it('nothing bears where the resultant leaves the base', () => {
    expect(basePressure(10, 0.5, 1)).toBeNull();
    expect(basePressure(10, -0.7, 1)).toBeNull();
  });

  it('refuses no force and no base', () => {
    expect(() => basePressure(0, 0, 1)).toThrow('verticalKNm');
    expect(() => basePressure(1, 0, 0)).toThrow('baseM');
  });
});
