/** How the command line writes in a language: its words, decimal marks, places. */

import { countDe, countEn } from '../import/words/number-words.ts';
import type { Language } from '../model/language.ts';
import { CALLS_DE } from './words/de-calls.ts';
import { SUMMARY_DE } from './words/de-summary.ts';
import { CALLS_EN, type CallWords } from './words/en-calls.ts';
import { SUMMARY_EN, type SummaryWords } from './words/en-summary.ts';

export interface Writing {
  /** Of `check`. */
  readonly words: SummaryWords;
  /** Of the other commands. */
  readonly calls: CallWords;
  /** A number with so many decimals. */
  fixed(this: void, value: number, digits?: number): string;
  /** A whole number with its thousands grouped. */
  count(this: void, value: number): string;
  /** A number with as many decimals as it has. */
  plain(this: void, value: number): string;
  /** A number, or a dash where there is none. */
  orDash(this: void, value: number | null, digits?: number): string;
  /** A utilisation in percent, or a dash. */
  use(this: void, value: number | null): string;
  /** Coordinates. */
  place(this: void, at: readonly number[]): string;
}

function writing(words: Pick<Writing, 'words' | 'calls' | 'count'>, mark: '.' | ',', between: string): Writing {
  const marked = (text: string) => text.replace('.', mark);
  // What rounds to nothing has no sign.
  const fixed: Writing['fixed'] = (value, digits = 2) => marked(value.toFixed(digits).replace(/^-(?=[0.]+$)/, ''));
  return {
    ...words,
    fixed,
    plain: (value) => marked(String(value)),
    orDash: (value, digits) => (value === null ? '-' : fixed(value, digits)),
    use: (value) => (value === null ? '-' : `${fixed(100 * value, 1)} %`),
    place: (at) => at.map((value) => fixed(value)).join(between),
  };
}

export const WRITING: Readonly<Record<Language, Writing>> = {
  en: writing({ words: SUMMARY_EN, calls: CALLS_EN, count: countEn }, '.', ', '),
  de: writing({ words: SUMMARY_DE, calls: CALLS_DE, count: countDe }, ',', '; '),
};
