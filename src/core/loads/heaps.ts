/** How high loose material may be heaped where some load stands already. */

/** Heights are told in whole steps of this, rounded down [m]; contract.md, section 2, Heap height. */
export const HEAP_STEP_M = 0.05;

/** This much over a limit is rounding, relative to it [-]. */
const ROUNDING = 1e-9;

export interface HeapRoom {
  /** In whole steps; 0 where there is no room. */
  readonly heightM: number;
  /** Load beyond the permitted one, 0 where it is kept [kN/m²]. */
  readonly overKNm2: number;
}

/**
 * Height that may still be heaped on a bay.
 * @param permittedKNm2 - load permitted at that stage [kN/m²]
 * @param thereKNm2 - load on the bay's worst patch of 1 m × 1 m at that stage, its stockpiles included [kN/m²]
 * @param looseKNm3 - saturated weight of the material lying loose [kN/m³]
 * @returns height, rounded down, and by how much the bay is over [m]
 * @throws RangeError if the material weighs nothing
 * @source contract.md, section 2, Heap height
 */
export function heapRoom(permittedKNm2: number, thereKNm2: number, looseKNm3: number): HeapRoom {
  if (!(looseKNm3 > 0)) throw new RangeError(`heapRoom: looseKNm3 must be > 0, got ${looseKNm3}`);
  const roomKNm2 = permittedKNm2 - thereKNm2;
  if (roomKNm2 < 0) return { heightM: 0, overKNm2: roomKNm2 < -ROUNDING * permittedKNm2 ? -roomKNm2 : 0 };
  const perMetre = Math.round(1 / HEAP_STEP_M);
  // A height of exactly a step must not lose that step to rounding; a whole number over 20 is 0.55, a sum of 0.05 is not.
  return { heightM: Math.floor((roomKNm2 / looseKNm3) * perMetre + ROUNDING) / perMetre, overKNm2: 0 };
}
