/** Numbers in a field: shown in the unit chosen, read with any unit of length written behind them. */

import { type NumberRead, readNumber } from '../model/parse-number.ts';
import { INCHES_PER_FOOT, MM_PER_INCH } from '../model/shown-units.ts';
import { lengthFieldText, numberText, unitText } from './format.ts';

const MM_PER: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  '"': MM_PER_INCH,
  '″': MM_PER_INCH,
  ft: MM_PER_INCH * INCHES_PER_FOOT,
  "'": MM_PER_INCH * INCHES_PER_FOOT,
  '′': MM_PER_INCH * INCHES_PER_FOOT,
};

const WITH_UNIT = /^(.*?)\s*(mm|cm|m|in|"|″|ft|'|′)$/i;
const FEET_AND_INCHES = /^([+\-−]?)\s*(\d+)\s*(?:ft|'|′)\s*(\d.*?)\s*(?:in|"|″)$/i;

/** Unit behind a field. */
export const fieldUnit = (unit: string): string => (unit === 'mm' ? unitText(unit) : unit);

/** Value of a field as it is shown. */
export const inField = (value: number, unit: string, decimals: number): string =>
  unit === 'mm' ? lengthFieldText(value, decimals) : numberText(value, decimals);

/**
 * Reads what was typed into a field of a unit. Lengths may carry mm, cm, m, in, ft, or feet and inches; without one they are in the
 * unit shown. Feet and inches without a mark could be either and are not read.
 */
export function readField(typed: string, unit: string): NumberRead {
  if (unit !== 'mm' && unit !== 'm') return readNumber(typed);
  const text = typed.trim().replace(/[\s\u00A0\u2000-\u200A\u202F\u205F]+/g, ' ');
  const perField = unit === 'mm' ? 1 : 1000;
  const both = FEET_AND_INCHES.exec(text);
  if (both !== null) return feetAndInches(both, perField);
  const one = WITH_UNIT.exec(text);
  const shown = fieldUnit(unit);
  const mark = one?.[2]?.toLowerCase() ?? shown;
  const read = readNumber(one === null ? text : (one[1] ?? ''));
  if (!read.ok) return read;
  if (mark === unit) return read;
  const perMark = MM_PER[mark];
  return perMark === undefined ? { ok: false, why: 'no unit' } : { ok: true, value: clean((read.value * perMark) / perField) };
}

function feetAndInches([, sign, feet, inches]: RegExpExecArray, perField: number): NumberRead {
  const read = readNumber(inches ?? '');
  if (!read.ok) return read;
  if (read.value >= INCHES_PER_FOOT) return { ok: false, why: 'not a number' };
  const valueMm = (Number(feet) * INCHES_PER_FOOT + read.value) * MM_PER_INCH;
  return { ok: true, value: clean((sign === '' || sign === '+' ? valueMm : -valueMm) / perField) };
}

/** Conversions leave crumbs in the last digits. */
const clean = (value: number): number => Number(value.toPrecision(12));
