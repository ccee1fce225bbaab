/** Constants of the contract and the only unit conversions in the code. */

/** Gravity, mass to weight [m/s²]; contract.md. */
export const GRAVITY_MS2 = 9.81;

/** Mass of one litre of water [kg]; contract.md. */
export const WATER_KG_PER_L = 1;

/** Weight of one litre of water on a square metre [kN/m² per l/m²]. */
export const WATER_KNM2_PER_LM2 = (WATER_KG_PER_L * GRAVITY_MS2) / 1000;

/**
 * Weight of a mass.
 * @param massKg - mass [kg] (or kg/m², kg/m³: the result follows)
 * @returns weight [kN] (or kN/m², kN/m³)
 */
export function weightKN(massKg: number): number {
  return (massKg * GRAVITY_MS2) / 1000;
}

/**
 * Millimetres to metres.
 * @param lengthMm - length [mm]
 * @returns length [m]
 */
export function metresFromMm(lengthMm: number): number {
  return lengthMm / 1000;
}

/**
 * Metres to millimetres.
 * @param lengthM - length [m]
 * @returns length [mm]
 */
export function mmFromMetres(lengthM: number): number {
  return lengthM * 1000;
}
