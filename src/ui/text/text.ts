/** The table of sentences in the language spoken. Read it while rendering, never into a constant of a module: it changes with the language. */

import type { Language } from '../../model/language.ts';
import { type ShownUnits, USUAL_UNITS } from '../../model/shown-units.ts';
import { formatIn, measureIn } from '../format.ts';
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

/** From now on sentences and numbers are in this language and these units; who shows them renders again. */
export function speak(language: Language, units: ShownUnits = USUAL_UNITS): void {
  t = headed(TABLES[language], units);
  walk = t.walk;
  formatIn(language);
  measureIn(units);
}

/** The table with the units chosen in the headings of its columns; what has numbers in it is a function and asks for the unit itself. */
function headed(texts: Texts, { load, length }: ShownUnits): Texts {
  if (load === USUAL_UNITS.load && length === USUAL_UNITS.length) return texts;
  const chosen = <T>(entry: T): T => renamed(entry, (text) => text.replaceAll(USUAL_UNITS.load, load).replace(/\bmm\b/g, length));
  const { core, bays, zones, heaps, edges, water } = texts;
  return {
    ...texts,
    core: chosen(core),
    bays: chosen(bays),
    zones: chosen(zones),
    heaps: chosen(heaps),
    edges: chosen(edges),
    water: chosen(water),
  };
}

function renamed<T>(entry: T, rename: (text: string) => string): T {
  if (typeof entry === 'string') return rename(entry) as T;
  if (typeof entry !== 'object' || entry === null) return entry;
  if (Array.isArray(entry)) return entry.map((one) => renamed(one, rename)) as T;
  return Object.fromEntries(Object.entries(entry).map(([key, value]) => [key, renamed(value, rename)])) as T;
}
