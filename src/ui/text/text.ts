/** The table of sentences in the language spoken. Read it while rendering, never into a constant of a module: it changes with the language. */

import type { Language } from '../../model/language.ts';
import { formatIn } from '../format.ts';
import { de } from './de.ts';
import { en } from './en.ts';
import { walk as enWalk } from './en-walk.ts';

/** The shape of the English table with any words in it, so that a language with a missing entry does not compile. */
export type Worded<T> = T extends (...given: infer Given) => infer Said
  ? (...given: Given) => Worded<Said>
  : T extends string
    ? string
    : T extends object
      ? { readonly [Key in keyof T]: Worded<T[Key]> }
      : T;

const EN = { ...en, walk: enWalk } as const;
export type Texts = Worded<typeof EN>;

const TABLES: Readonly<Record<Language, Texts>> = { en: EN, de };

export const textsOf = (language: Language): Texts => TABLES[language];

export let t: Texts = TABLES.en;
export let walk: Texts['walk'] = t.walk;

/** From now on sentences and numbers are in this language; who shows them renders again. */
export function speak(language: Language): void {
  t = TABLES[language];
  walk = t.walk;
  formatIn(language);
}
