/** Words of print sheets and cards in the language that each is in. */

import type { Language } from '../../model/language.ts';
import { print as dePrint } from './de-print.ts';
import { print as enPrint } from './en-print.ts';
import type { Worded } from './text.ts';

export type PrintWords = Worded<typeof enPrint>;

const WORDS: Readonly<Record<Language, PrintWords>> = { en: enPrint, de: dePrint };

export const printWords = (language: Language): PrintWords => WORDS[language];
