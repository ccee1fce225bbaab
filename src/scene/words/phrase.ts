/** Messages on scene files: what was found, what was expected and what to do are phrases with values, told in any language. */

import type { Phrase } from '../../model/issue.ts';
import type { Language } from '../../model/language.ts';
import { ADVICE_DE } from './de-advice.ts';
import { FOUND_DE } from './de-found.ts';
import { THINGS_DE } from './de-things.ts';
import { WANTED_DE } from './de-wanted.ts';
import { ADVICE_EN } from './en-advice.ts';
import { FOUND_EN } from './en-found.ts';
import { THINGS_EN } from './en-things.ts';
import { WANTED_EN } from './en-wanted.ts';
import type { Tell } from './phrase-values.ts';

const EN = { ...FOUND_EN, ...WANTED_EN, ...ADVICE_EN, ...THINGS_EN };
const PHRASES: Readonly<Record<Language, typeof EN>> = {
  en: EN,
  de: { ...FOUND_DE, ...WANTED_DE, ...ADVICE_DE, ...THINGS_DE },
};

export type PhraseId = keyof typeof EN;
type Values<Id extends PhraseId> = Parameters<(typeof EN)[Id]>[0];

/** A message as phrases, and told in English. */
export interface IssueWords {
  readonly got: string;
  readonly expected: string;
  readonly mend: string;
  readonly phrases: { readonly got: Phrase; readonly expected: Phrase; readonly mend: Phrase };
}

/** A phrase with the values that it is filled with. */
export function phrase<Id extends PhraseId>(id: Id, ...values: object extends Values<Id> ? [] : [Values<Id>]): Phrase {
  return { id, values: (values[0] ?? {}) as Phrase['values'] };
}

/** What has no words: numbers, and what the file itself holds. */
export const asIs = (text: string | number): Phrase => phrase('asIs', { text });

/** The sentence of a phrase. */
export function tell({ id, values }: Phrase, language: Language): string {
  const table: Readonly<Record<string, ((values: never, tell: Tell) => string) | undefined>> = PHRASES[language];
  const make = table[id];
  if (make === undefined) throw new RangeError(`tell: a phrase of scene files, not "${id}"`);
  return make(values as never, (inner) => tell(inner, language));
}

/** Words of a message. */
export function worded(got: Phrase, expected: Phrase, mend: Phrase): IssueWords {
  const phrases = { got, expected, mend };
  return { got: tell(got, 'en'), expected: tell(expected, 'en'), mend: tell(mend, 'en'), phrases };
}
