/**
 * An L-shaped retaining edge, per metre of its length: earth pressure, pressure under its base, sliding and overturning.
 * The soil stands on the base slab behind the stem; the foot of the L is at the stem's free face.
 */

/** Earth-pressure coefficients of level, dry-drained soil behind a smooth upright face [-]. */
export interface EarthPressure {
  readonly active: number;
  readonly atRest: number;
  readonly passive: number;
}

export interface WallShape {
  /** From the underside of the base slab to the surface of the soil. */
  readonly retainedM: number;
  /** Width of the base slab, from the free face of the stem to its end under the soil. */
  readonly baseM: number;
  readonly stemM: number;
  /** Thickness of the base slab. */
  readonly slabM: number;
  readonly wallKNm3: number;
}

export interface RetainingInput extends WallShape {
  readonly soilKNm3: number;
  readonly frictionDeg: number;
  /** Live load on the soil behind the wall. */
  readonly surchargeKNm2: number;
  /** Tangent of the angle of friction under the base [-]. */
  readonly baseFriction: number;
}

/** Pressure under the base, without tension. */
export interface BasePressure {
  readonly maxKPa: number;
  readonly minKPa: number;
  /** Width that presses. */
  readonly contactM: number;
  /** Reduced width centred on the resultant, and the even pressure on it. */
  readonly effectiveM: number;
  readonly effectiveKPa: number;
}

/** One case of load; all forces per metre of wall. */
export interface RetainingCase {
  readonly verticalKNm: number;
  /** Moment of the weights about the foot of the L [kN]. */
  readonly stabilisingKN: number;
  /** Distance of the resultant from the middle of the base; negative towards the soil. */
  readonly eccentricityM: number;
  /** Null where the resultant falls outside the base. */
  readonly pressure: BasePressure | null;
  /** Friction under the base / thrust [-]. */
  readonly slidingRatio: number;
  /** Stabilising / overturning moment about the foot [-]. */
  readonly overturningRatio: number;
}

export interface RetainingResult {
  readonly active: number;
  readonly soilThrustKNm: number;
  readonly surchargeThrustKNm: number;
  /** Moment of the thrusts about the foot of the L [kN]. */
  readonly overturningKN: number;
  /** Weight of stem and base slab. */
  readonly ownKNm: number;
  /** The live load pushes, and does not stand on the heel. */
  readonly bare: RetainingCase;
  /** The live load pushes and stands on the heel. */
  readonly loaded: RetainingCase;
}

/**
 * Earth-pressure coefficients after Rankine, and at rest after Jaky.
 * @param frictionDeg - angle of internal friction [°]
 * @returns coefficients [-]
 * @throws RangeError if the angle is not from 0 to below 90
 * @source Rankine: Ka = tan²(45° − φ/2), Kp = 1/Ka; Jaky: K0 = 1 − sin φ; check-values.md, 10
 */
export function earthPressure(frictionDeg: number): EarthPressure {
  if (!(frictionDeg >= 0 && frictionDeg < 90))
    throw new RangeError(`earthPressure: frictionDeg must be from 0 to below 90, not ${frictionDeg}`);
  const friction = (frictionDeg * Math.PI) / 180;
  const active = Math.tan(Math.PI / 4 - friction / 2) ** 2;
  return { active, atRest: 1 - Math.sin(friction), passive: 1 / active };
}

/**
 * Pressure under a base that cannot pull: a trapezoid while the resultant is in the middle third, else a triangle.
 * @param verticalKNm - vertical force per metre of wall [kN/m]
 * @param eccentricityM - distance of the resultant from the middle, either way [m]
 * @param baseM - width of the base [m]
 * @returns pressures and widths; null where the resultant falls on the rim or outside the base [kPa]
 * @throws RangeError if force or width is not positive
 * @source statics of a rigid base: q = V/B (1 ± 6e/B), q = 2V/(3(B/2 − e)); reduced width B − 2e after Meyerhof; check-values.md, 10
 */
export function basePressure(verticalKNm: number, eccentricityM: number, baseM: number): BasePressure | null {
  if (!(verticalKNm > 0)) throw new RangeError(`basePressure: verticalKNm must be positive, not ${verticalKNm}`);
  if (!(baseM > 0)) throw new RangeError(`basePressure: baseM must be positive, not ${baseM}`);
  const e = Math.abs(eccentricityM);
  const effectiveM = baseM - 2 * e;
  if (!(effectiveM > 0)) return null;
  const effectiveKPa = verticalKNm / effectiveM;
  const evenKPa = verticalKNm / baseM;
  if (6 * e <= baseM) {
    const swing = (6 * e) / baseM;
    return { maxKPa: evenKPa * (1 + swing), minKPa: evenKPa * (1 - swing), contactM: baseM, effectiveM, effectiveKPa };
  }
  const contactM = 3 * (baseM / 2 - e);
  return { maxKPa: (2 * verticalKNm) / contactM, minKPa: 0, contactM, effectiveM, effectiveKPa };
}

/**
 * Weight of stem and base slab.
 * @param wall - shape of the wall [m]
 * @returns weight per metre of wall [kN/m]
 * @source none: arithmetic
 */
export function ownWeightKNm(wall: WallShape): number {
  return (wall.stemM * (wall.retainedM - wall.slabM) + wall.baseM * wall.slabM) * wall.wallKNm3;
}

/**
 * Statics of an L-shaped retaining edge, per metre, all values characteristic. Drained soil with a level surface; no
 * water pressure, no passive pressure before the foot, no friction on the stem.
 * @param wall - shape, soil and live load [m]
 * @returns thrusts, and both cases of live load [kN/m]
 * @throws RangeError if the soil does not push, or stem or base slab leave no room for soil
 * @source Rankine thrusts ½ Ka γ H² at H/3 and Ka q H at H/2; check-values.md, 10
 */
export function retainingStatics(wall: RetainingInput): RetainingResult {
  const { retainedM, baseM, stemM, slabM, soilKNm3, surchargeKNm2, wallKNm3 } = wall;
  if (!(stemM > 0 && stemM < baseM)) throw new RangeError(`retainingStatics: stemM must be above 0 and below baseM, not ${stemM}`);
  if (!(slabM > 0 && slabM < retainedM)) throw new RangeError(`retainingStatics: slabM must be above 0 and below retainedM, not ${slabM}`);
  if (!(soilKNm3 > 0)) throw new RangeError(`retainingStatics: soilKNm3 must be positive, not ${soilKNm3}`);
  const { active } = earthPressure(wall.frictionDeg);
  const soilThrustKNm = (active * soilKNm3 * retainedM ** 2) / 2;
  const surchargeThrustKNm = active * surchargeKNm2 * retainedM;
  const overturningKN = (soilThrustKNm * retainedM) / 3 + (surchargeThrustKNm * retainedM) / 2;
  const heelM = baseM - stemM;
  const stemKNm = stemM * (retainedM - slabM) * wallKNm3;
  const slabKNm = baseM * slabM * wallKNm3;
  const soilKNm = heelM * (retainedM - slabM) * soilKNm3;
  const liveKNm = heelM * surchargeKNm2;
  const heelArmM = stemM + heelM / 2;
  const weightsKNm = stemKNm + slabKNm + soilKNm;
  const weightsKN = (stemKNm * stemM) / 2 + (slabKNm * baseM) / 2 + soilKNm * heelArmM;
  const push = { thrustKNm: soilThrustKNm + surchargeThrustKNm, overturningKN };
  return {
    active,
    soilThrustKNm,
    surchargeThrustKNm,
    overturningKN,
    ownKNm: ownWeightKNm(wall),
    bare: caseOf(wall, push, weightsKNm, weightsKN),
    loaded: caseOf(wall, push, weightsKNm + liveKNm, weightsKN + liveKNm * heelArmM),
  };
}

interface Push {
  readonly thrustKNm: number;
  readonly overturningKN: number;
}

function caseOf(wall: RetainingInput, push: Push, verticalKNm: number, stabilisingKN: number): RetainingCase {
  const eccentricityM = wall.baseM / 2 - (stabilisingKN - push.overturningKN) / verticalKNm;
  return {
    verticalKNm,
    stabilisingKN,
    eccentricityM,
    pressure: basePressure(verticalKNm, eccentricityM, wall.baseM),
    slidingRatio: (wall.baseFriction * verticalKNm) / push.thrustKNm,
    overturningRatio: stabilisingKN / push.overturningKN,
  };
}
