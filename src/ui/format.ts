/** Numbers as the user reads them: fixed decimals per unit, unit after a narrow no-break space, true minus sign. */

import { dayIn, dayOf } from '../model/date-text.ts';
import type { Language } from '../model/language.ts';
import { INCHES_PER_FOOT, type LoadUnit, MM_PER_INCH, PER_KNM2, PER_MM, type ShownUnits, USUAL_UNITS } from '../model/shown-units.ts';

const NARROW_SPACE = '\u202F';
const MINUS = '\u2212';
const LOCALES: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE' };

let locale = LOCALES.en;

/** Decimal and group marks of this language from now on. */
export function formatIn(language: Language): void {
  locale = LOCALES[language];
}

let units = USUAL_UNITS;

/** Loads per area and thicknesses in these units from now on. */
export function measureIn(shown: ShownUnits): void {
  units = shown;
}

const formats = new Map<string, Intl.NumberFormat>();

function formatOf(decimals: number, signDisplay: 'negative' | 'exceptZero'): Intl.NumberFormat {
  const key = `${locale} ${decimals} ${signDisplay}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals, signDisplay });
    formats.set(key, format);
  }
  return format;
}

/** A number without its unit; never "-0". */
export function numberText(value: number, decimals: number): string {
  return formatOf(decimals, 'negative').format(value).replace('-', MINUS);
}

/** A number with its sign, but for zero. */
export function signedText(value: number, decimals: number): string {
  return formatOf(decimals, 'exceptZero').format(value).replace('-', MINUS);
}

/** Decimals shown for a unit. */
function decimalsOf(unit: string): number {
  switch (unit) {
    case 'mm':
    case '-':
      return 0;
    case 'm':
    case 'l/(s·m)':
      return 3;
    case 'kN/m²':
    case '%':
      return 2;
    default:
      return 1;
  }
}

const LOAD_DECIMALS: Readonly<Record<LoadUnit, number>> = { 'kN/m²': 2, 't/m²': 3, 'kg/m²': 0, psf: 1 };
/** As fine as whole millimetres. */
const LENGTH_DECIMALS = { mm: 0, cm: 1, m: 3 } as const;
const INCH_DECIMALS = 2;

/** Name of a unit as it is shown. */
export function unitText(unit: string): string {
  return unit === 'kN/m²' ? units.load : unit === 'mm' ? units.length : unit;
}

/** A load per area without its unit, in the unit that loads are shown in. */
export function loadNumber(valueKNm2: number): string {
  return numberText(valueKNm2 * PER_KNM2[units.load], LOAD_DECIMALS[units.load]);
}

const signedLoadNumber = (valueKNm2: number): string => signedText(valueKNm2 * PER_KNM2[units.load], LOAD_DECIMALS[units.load]);

/** A difference of loads with its sign and unit. */
export const signedLoadText = (valueKNm2: number): string => withUnit(signedLoadNumber(valueKNm2), units.load);

/** A thickness in the unit that thicknesses are shown in; feet and inches carry their own marks. */
function lengthNumber(valueMm: number, decimals: number): string {
  const { length } = units;
  if (length === 'ft-in') return feetText(valueMm);
  return numberText(valueMm * PER_MM[length], LENGTH_DECIMALS[length] + decimals);
}

function feetText(valueMm: number): string {
  const hundredths = Math.round((Math.abs(valueMm) / MM_PER_INCH) * 10 ** INCH_DECIMALS);
  const perFoot = INCHES_PER_FOOT * 10 ** INCH_DECIMALS;
  const [feet, rest] = [Math.floor(hundredths / perFoot), (hundredths % perFoot) / 10 ** INCH_DECIMALS];
  const inches = withUnit(numberText(rest, Number.isInteger(rest) ? 0 : INCH_DECIMALS), 'in');
  const text = feet === 0 ? inches : rest === 0 ? withUnit(numberText(feet, 0), 'ft') : `${withUnit(numberText(feet, 0), 'ft')} ${inches}`;
  return valueMm < 0 && hundredths > 0 ? `${MINUS}${text}` : text;
}

/** A thickness in a field, whose unit stands behind it. */
export const lengthFieldText = (valueMm: number, decimals: number): string => lengthNumber(valueMm, decimals);

function lengthText(valueMm: number, decimals: number): string {
  const number = lengthNumber(valueMm, decimals);
  return units.length === 'ft-in' ? number : withUnit(number, units.length);
}

/** A number with its unit; a ratio (unit "-") is not a quantity of this kind: use `percentText`. */
export function quantityText(value: number, unit: string): string {
  if (unit === 'kN/m²') return withUnit(loadNumber(value), units.load);
  if (unit === 'mm') return lengthText(value, 0);
  return withUnit(numberText(value, decimalsOf(unit)), unit);
}

/** A number with its unit and as many decimals as asked for. */
export function quantityOf(value: number, decimals: number, unit: string): string {
  if (unit === 'kN/m²' && units.load !== 'kN/m²') return quantityText(value, unit);
  if (unit === 'mm') return lengthText(value, decimals);
  return withUnit(numberText(value, decimals), unit);
}

/** The value alone as it stands in the column of a table headed by its unit; ratios in percent. */
export function cellText(value: number, unit: string): string {
  if (unit === 'kN/m²') return loadNumber(value);
  if (unit === 'mm') return lengthNumber(value, 0);
  return unit === '-' ? percentText(value) : numberText(value, decimalsOf(unit));
}

/** A value of a map with its unit; ratios in percent. */
export function valueText(value: number, unit: string): string {
  return unit === '-' ? percentText(value) : quantityText(value, unit);
}

function withUnit(number: string, unit: string): string {
  return `${number}${NARROW_SPACE}${unit}`;
}

export const loadText = (valueKNm2: number): string => quantityText(valueKNm2, 'kN/m²');
export const mmText = (valueMm: number): string => quantityText(valueMm, 'mm');
/** A difference in millimetres with its sign. */
export const signedMmText = (valueMm: number): string => (valueMm > 0 ? `+${lengthText(valueMm, 0)}` : lengthText(valueMm, 0));
/** A thickness with its unit. */
export const thicknessOf = (valueMm: number): string => lengthText(valueMm, thicknessDecimals(valueMm));
/** Kilograms as tonnes without the unit. */
export const tonnesText = (massKg: number): string => numberText(massKg / 1000, 2);
/** A thickness without its unit; sheets are thinner than a millimetre, so down to tenths of one below 10 mm. */
export function thicknessText(valueMm: number): string {
  return lengthNumber(valueMm, thicknessDecimals(valueMm));
}

const thicknessDecimals = (valueMm: number): number => (valueMm < 10 && !Number.isInteger(valueMm) ? 1 : 0);

export const areaText = (valueM2: number): string => quantityText(valueM2, 'm²');

/** Slivers that are nothing in square metres. */
const SMALL_M2 = 0.1;

/** An area that may be a sliver: small ones in square centimetres. */
export const sliverText = (valueM2: number): string =>
  valueM2 < SMALL_M2 ? withUnit(numberText(valueM2 * 1e4, valueM2 < 1e-3 ? 2 : 0), 'cm²') : areaText(valueM2);

/** A level with its sign. */
export function levelText(levelM: number): string {
  return withUnit(signedText(levelM, 3), 'm');
}

/** A coordinate of the file, to the centimetre. */
export function coordinateText(valueM: number): string {
  return numberText(valueM, 2);
}

/** Finer differences from the limit are those of numbers kept in 32 bits. */
const MOST_DECIMALS = 4;

/**
 * A ratio in percent with one decimal; with more where one decimal would show 100.0 for something that is not exactly
 * at the limit.
 */
export function percentText(ratio: number): string {
  const percent = ratio * 100;
  for (let decimals = 1; decimals <= MOST_DECIMALS; decimals++) {
    if (Number(percent.toFixed(decimals)) !== 100) return withUnit(numberText(percent, decimals), '%');
  }
  return withUnit(numberText(percent, 1), '%');
}

/** A round limit of a class in percent. */
export function wholePercentText(ratio: number): string {
  return withUnit(numberText(ratio * 100, 0), '%');
}

/** Whole percent, for words that are read aloud. */
export function wholePercent(ratio: number): string {
  const percent = ratio * 100;
  return numberText(percent, Math.round(percent) === 100 && !isAtLimit(ratio) ? 2 : 0);
}

/** Rounding of sums; the check uses the same allowance before it says "over". */
const AT_LIMIT = 1e-9;

/** Neither over nor under its limit. */
export function isAtLimit(ratio: number): boolean {
  return Math.abs(ratio - 1) <= AT_LIMIT;
}

/** A day of a file; anything else as it stands. */
export const dayText = (day: string): string => dayIn(day, locale === LOCALES.de ? 'de' : 'en');

/** Day and time of day, to the minute. */
export function timeText(when: Date): string {
  const time = new Intl.DateTimeFormat(locale, { timeStyle: 'short' }).format(when);
  return `${dayText(dayOf(when))}, ${time}`;
}
