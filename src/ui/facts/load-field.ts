/** A load per area as it is typed: in the unit shown or in the one written behind it; what no deck carries is asked back. */

import { type NumberRead, readNumber } from '../../model/parse-number.ts';
import { type LoadUnit, PER_KNM2 } from '../../model/shown-units.ts';

/** As people write them, lower case without spaces. */
const SPELLINGS: Readonly<Record<string, LoadUnit>> = {
  'kn/m²': 'kN/m²',
  'kn/m2': 'kN/m²',
  'kn/qm': 'kN/m²',
  kpa: 'kN/m²',
  'kg/m²': 'kg/m²',
  'kg/m2': 'kg/m²',
  'kg/qm': 'kg/m²',
  't/m²': 't/m²',
  't/m2': 't/m²',
  't/qm': 't/m²',
  psf: 'psf',
  'lb/ft²': 'psf',
  'lb/ft2': 'psf',
};

const WITH_UNIT = /^(.*?)\s*(kn\s*\/\s*(?:m²|m2|qm)|kpa|kg\s*\/\s*(?:m²|m2|qm)|t\s*\/\s*(?:m²|m2|qm)|psf|lb\s*\/\s*(?:ft²|ft2))$/i;

export type LoadRead = Extract<NumberRead, { ok: false }> | { readonly ok: true; readonly valueKNm2: number; readonly typed: number };

/** Conversions leave crumbs in the last digits. */
const clean = (value: number): number => Number(value.toPrecision(12));

/**
 * Reads a load.
 * @param typed - number, with or without a unit
 * @param shown - unit of a number without one
 */
export function readLoad(typed: string, shown: LoadUnit): LoadRead {
  const match = WITH_UNIT.exec(typed.trim());
  const unit = match === null ? shown : SPELLINGS[(match[2] ?? '').toLowerCase().replace(/\s/g, '')];
  const read = readNumber(match === null ? typed : (match[1] ?? ''));
  if (!read.ok) return read;
  if (unit === undefined) return { ok: false, why: 'no unit' };
  return { ok: true, valueKNm2: clean(read.value / PER_KNM2[unit]), typed: read.value };
}

/** Permitted loads of decks under gardens are far below this [kN/m²]. */
export const DOUBTFUL_KNM2 = 60;
/** Nothing that people build on is less than this [kN/m²]. */
const LEAST_KNM2 = 0.5;

export interface OtherReading {
  readonly unit: LoadUnit;
  readonly valueKNm2: number;
}

/**
 * What a load too large to be true may have been meant as: the same figures in a smaller unit.
 * @returns empty where the load may well be true
 */
export function otherReadings(valueKNm2: number, typed: number): readonly OtherReading[] {
  if (valueKNm2 <= DOUBTFUL_KNM2) return [];
  return (['kg/m²', 'psf'] as const)
    .map((unit) => ({ unit, valueKNm2: clean(typed / PER_KNM2[unit]) }))
    .filter((reading) => reading.valueKNm2 >= LEAST_KNM2 && reading.valueKNm2 <= DOUBTFUL_KNM2);
}
