/** Run-off: peak and annual coefficients as types that can't be swapped, and the tables they come from. */

import type { Source } from './source.ts';

declare const KIND: unique symbol;

/** Share of a short, strong rain that flows off at its peak [-]; for litres per second only. */
export type PeakC = number & { readonly [KIND]: 'peak' };
/** Share of a year's rain that flows off [-]; for cubic metres per year only. */
export type AnnualC = number & { readonly [KIND]: 'annual' };

/**
 * Marks a number as a peak coefficient.
 * @param value - coefficient [-]
 * @returns the same number [-]
 * @throws RangeError outside 0 to 1
 */
export function peakC(value: number): PeakC {
  return checked(value, 'peakC') as PeakC;
}

/**
 * Marks a number as an annual coefficient.
 * @param value - coefficient [-]
 * @returns the same number [-]
 * @throws RangeError outside 0 to 1
 */
export function annualC(value: number): AnnualC {
  return checked(value, 'annualC') as AnnualC;
}

function checked(value: number, name: string): number {
  if (!(value >= 0 && value <= 1)) throw new RangeError(`${name}: a run-off coefficient lies from 0 to 1, not ${value}`);
  return value;
}

export const RUNOFF_TABLE_IDS = ['din-1986-100', 'fll-depth'] as const;
export type RunoffTableId = (typeof RUNOFF_TABLE_IDS)[number];

/** What the rain falls on. */
export const RUNOFF_SURFACES = ['sealed', 'open joints', 'gravel', 'grass paver', 'bound gravel'] as const;
export type RunoffSurface = (typeof RUNOFF_SURFACES)[number];

/** A range with its lower limit out and its upper limit in, or the other way round. */
export interface Band {
  readonly from: number;
  readonly to: number;
  /** Whether `from` itself belongs to the band; `to` then does not. */
  readonly fromIncluded: boolean;
}

export interface RunoffRow<C extends PeakC | AnnualC> {
  /** As in the table, in English. */
  readonly name: string;
  readonly surface: RunoffSurface | 'planted' | 'bare deck';
  /** Depth of substrate; for planted rows [mm]. */
  readonly depthMm?: Band;
  /** Pitch of the deck [°]. */
  readonly pitchDeg?: Band;
  readonly c: C;
  readonly source: Source;
}

/** What a zone is to a run-off table. */
export interface RunoffArea {
  readonly surface: RunoffSurface | 'planted' | 'bare deck' | null;
  readonly depthMm: number;
  readonly pitchDeg: number;
}
