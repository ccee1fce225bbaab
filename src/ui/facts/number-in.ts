/** Numbers in a language of their own, whatever the page speaks: a sheet or card may be in another one. */

import { dayIn, dayOf } from '../../model/date-text.ts';
import type { Language } from '../../model/language.ts';

const LOCALES: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE' };
const NARROW_SPACE = '\u202F';
const MINUS = '\u2212';

export interface NumbersIn {
  /** A number without its unit; never "-0". */
  number(value: number, decimals: number): string;
  quantity(value: number, decimals: number, unit: string): string;
  /** A ratio in percent. */
  percent(ratio: number): string;
  /** As many decimals as tell seven digits, none that are 0: what is worked out from it again comes out the same. */
  exact(value: number): string;
  date(date: Date): string;
}

const DIGITS = 7;

export function numbersIn(language: Language): NumbersIn {
  const locale = LOCALES[language];
  const number = (value: number, decimals: number) =>
    new Intl.NumberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals, signDisplay: 'negative' })
      .format(value)
      .replace('-', MINUS);
  const quantity = (value: number, decimals: number, unit: string) => `${number(value, decimals)}${NARROW_SPACE}${unit}`;
  // Beside 100 % one decimal could hide which side of the limit it is on.
  const percent = (ratio: number) => {
    const near = Math.abs(ratio - 1) > 1e-9 && Math.abs(ratio - 1) < 0.0005;
    return quantity(ratio * 100, near ? 3 : 1, '%');
  };
  const exact = (value: number) =>
    new Intl.NumberFormat(locale, { maximumSignificantDigits: DIGITS, signDisplay: 'negative', useGrouping: false })
      .format(value)
      .replace('-', MINUS);
  const date = (day: Date) => dayIn(dayOf(day), language);
  return { number, quantity, percent, exact, date };
}
