/** Units that loads per area and thicknesses are read and typed in. Files and calculation never change with them. */

import { GRAVITY_MS2 } from './units.ts';

export const LOAD_UNITS = ['kN/m²', 't/m²', 'kg/m²', 'psf'] as const;
export type LoadUnit = (typeof LOAD_UNITS)[number];

export const LENGTH_UNITS = ['mm', 'cm', 'm', 'ft-in'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];

export interface ShownUnits {
  readonly load: LoadUnit;
  readonly length: LengthUnit;
}

export const USUAL_UNITS: ShownUnits = { load: 'kN/m²', length: 'mm' };

/** International inch and foot, exact. */
export const MM_PER_INCH = 25.4;
export const INCHES_PER_FOOT = 12;
/** International pound as a force under standard gravity, exact [N]. */
const NEWTON_PER_POUND = 0.45359237 * 9.80665;
const M2_PER_FT2 = 0.3048 ** 2;

/**
 * What one kilonewton per square metre is in each unit. Tonnes and kilograms by the 9.81 m/s² of every weight here, so that
 * they give back the masses that were entered; pounds are a unit of force by definition.
 */
export const PER_KNM2: Readonly<Record<LoadUnit, number>> = {
  'kN/m²': 1,
  't/m²': 1 / GRAVITY_MS2,
  'kg/m²': 1000 / GRAVITY_MS2,
  psf: (1000 * M2_PER_FT2) / NEWTON_PER_POUND,
};

export const PER_MM: Readonly<Record<Exclude<LengthUnit, 'ft-in'>, number>> = { mm: 1, cm: 0.1, m: 0.001 };
