/**
 * Retaining edges. No complete published example of an L-shaped wall was found; what is checked here:
 * - coefficients of Rankine and Jaky: closed formulas Ka = tan²(45° − φ/2), K0 = 1 − sin φ, Kp = 1/Ka, calculated outside the project;
 * - thrust of a uniform surcharge Ka q H at H/2: excerpt of a foundation handbook, th4.ilovetranslation.com;
 * - pressure under a rigid base: statics, calculated outside the project;
 * - an L-shape of two widths: worked outside the project, H = 1.00 m, stem and base slab 0.12 m, soil 19 kN/m³ and 32.5°, surcharge
 *   5 kN/m², concrete 25 kN/m³, tan δ = tan(2/3 · 32.5°) = 0.397275. Inputs are an example, not published.
 * - partial factors of EN 1997-1: resistance to sliding 1.1 in Germany (secondary), the others from memory; they serve to compare with
 *   the worked values, the tool itself does not use them.
 */

import { describe, expect, it } from 'vitest';
import { basePressure, earthPressure, type RetainingInput, retainingStatics } from '../../src/core/loads/retaining.ts';

describe('coefficients of earth pressure, to the printed digits', () => {
  it.each([
    [20, 0.490291, 0.65798, 2.039607],
    [25, 0.405859, 0.577382, 2.463913],
    [30, 0.333333, 0.5, 3],
    [32.5, 0.300983, 0.4627, 3.322451],
    [35, 0.27099, 0.426424, 3.690172],
    [40, 0.217443, 0.357212, 4.59891],
  ])('%s°', (frictionDeg, active, atRest, passive) => {
    const found = earthPressure(frictionDeg);
    expect(found.active).toBeCloseTo(active, 6);
    expect(found.atRest).toBeCloseTo(atRest, 6);
    expect(found.passive).toBeCloseTo(passive, 6);
  });
});

describe('base of 3 m under 300 kN/m', () => {
  it.each([
    { e: 0.3, greatest: 160, least: 40, contact: 3, reduced: 125 },
    { e: 0.5, greatest: 200, least: 0, contact: 3, reduced: 150 },
    { e: 0.6, greatest: 222.2222, least: 0, contact: 2.7, reduced: 166.6667 },
  ])('e = $e m', ({ e, greatest, least, contact, reduced }) => {
    for (const way of [1, -1]) {
      const found = basePressure(300, way * e, 3);
      expect(found?.maxKPa).toBeCloseTo(greatest, 4);
      expect(found?.minKPa).toBeCloseTo(least, 4);
      expect(found?.contactM).toBeCloseTo(contact, 9);
      expect(found?.effectiveKPa).toBeCloseTo(reduced, 4);
    }
  });
});

/** Printed as 0.397275. */
const BASE_FRICTION = Math.tan(((2 / 3) * 32.5 * Math.PI) / 180);
const narrow: RetainingInput = {
  retainedM: 1,
  baseM: 0.6,
  stemM: 0.12,
  slabM: 0.12,
  soilKNm3: 19,
  frictionDeg: 32.5,
  surchargeKNm2: 5,
  baseFriction: BASE_FRICTION,
  wallKNm3: 25,
};

describe('L-shape of 0.60 m', () => {
  const found = retainingStatics(narrow);

  it('thrusts and overturning moment', () => {
    expect(found.soilThrustKNm).toBeCloseTo(2.859334, 6);
    expect(found.surchargeThrustKNm).toBeCloseTo(1.504913, 6);
    expect(found.overturningKN).toBeCloseTo(1.705568, 6);
  });

  it('without live load on the heel: resultant outside the middle third', () => {
    const { bare } = found;
    expect(bare.verticalKNm).toBeCloseTo(12.4656, 6);
    expect(bare.stabilisingKN).toBeCloseTo(3.587616, 6);
    expect(bare.eccentricityM).toBeCloseTo(0.149021, 6);
    expect(bare.pressure?.maxKPa).toBeCloseTo(55.043292, 4);
    expect(bare.pressure?.minKPa).toBe(0);
    expect(bare.pressure?.contactM).toBeCloseTo(0.452938, 6);
    expect(bare.pressure?.effectiveM).toBeCloseTo(0.301959, 6);
    expect(bare.pressure?.effectiveKPa).toBeCloseTo(41.282469, 4);
    expect(bare.overturningRatio).toBeCloseTo(2.103473, 5);
    expect(bare.slidingRatio).toBeCloseTo(1.134735, 5);
  });

  it('with live load on the heel', () => {
    const { loaded } = found;
    expect(loaded.eccentricityM).toBeCloseTo(0.115275, 6);
    expect(loaded.pressure?.maxKPa).toBeCloseTo(53.649476, 4);
    expect(loaded.pressure?.minKPa).toBe(0);
    expect(loaded.pressure?.contactM).toBeCloseTo(0.554175, 6);
  });

  it('against partial factors: design approaches 2 and 1-1 fail in sliding', () => {
    const designKNm = 1.35 * found.soilThrustKNm + 1.5 * found.surchargeThrustKNm;
    const frictionKNm = BASE_FRICTION * found.bare.verticalKNm;
    expect(designKNm).toBeCloseTo(6.117471, 5);
    expect(frictionKNm / 1.1).toBeCloseTo(4.50206, 5);
    expect(frictionKNm).toBeCloseTo(4.952266, 5);
  });

  it('against partial factors: design approach 1-2, soil of tan φ / 1.25', () => {
    const designDeg = (Math.atan(Math.tan((32.5 * Math.PI) / 180) / 1.25) * 180) / Math.PI;
    expect(designDeg).toBeCloseTo(27.005947, 6);
    const weaker = retainingStatics({ ...narrow, frictionDeg: designDeg });
    expect(weaker.active).toBeCloseTo(0.375437, 6);
    // 1.0 and 1.3 on the two thrusts
    expect(weaker.soilThrustKNm + 1.3 * weaker.surchargeThrustKNm).toBeCloseTo(6.006997, 5);
  });

  it('against partial factors: overturning as loss of equilibrium, 0.9 · 3.587616 against 1.1 and 1.5', () => {
    expect(0.9 * found.bare.stabilisingKN).toBeCloseTo(3.228854, 6);
    expect((1.1 * found.soilThrustKNm) / 3 + (1.5 * found.surchargeThrustKNm) / 2).toBeCloseTo(2.177107, 6);
  });
});

describe('L-shape of 0.90 m', () => {
  const { bare, loaded, overturningKN } = retainingStatics({ ...narrow, baseM: 0.9 });

  it('without live load on the heel: resultant within the middle third', () => {
    expect(bare.verticalKNm).toBeCloseTo(18.3816, 6);
    expect(bare.stabilisingKN).toBeCloseTo(8.024616, 6);
    expect(overturningKN).toBeCloseTo(1.705568, 6);
    expect(bare.eccentricityM).toBeCloseTo(0.10623, 6);
    expect(bare.pressure?.maxKPa).toBeCloseTo(34.888236, 4);
    expect(bare.pressure?.minKPa).toBeCloseTo(5.959764, 4);
    expect(bare.pressure?.contactM).toBe(0.9);
    expect(bare.pressure?.effectiveM).toBeCloseTo(0.687541, 6);
    expect(bare.pressure?.effectiveKPa).toBeCloseTo(26.735294, 4);
    expect(bare.overturningRatio).toBeCloseTo(4.704952, 5);
    expect(bare.slidingRatio).toBeCloseTo(1.673265, 5);
    expect((BASE_FRICTION * bare.verticalKNm) / 1.1).toBeCloseTo(6.638675, 5);
  });

  it('with live load on the heel', () => {
    expect(loaded.eccentricityM).toBeCloseTo(0.077134, 6);
    expect(loaded.pressure?.maxKPa).toBeCloseTo(37.488236, 4);
    expect(loaded.pressure?.minKPa).toBeCloseTo(12.02643, 4);
  });
});
