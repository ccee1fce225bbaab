/** Building blocks of the schema: numbers with their range and unit in words, names, points. */

import { z } from 'zod';
import type { Phrase } from '../model/issue.ts';
import { phrase, tell } from './words/phrase.ts';

// The page forbids code made from text; without this the library would try it and the browser would log a refusal.
z.config({ jitless: true });

interface Range {
  readonly min?: number;
  /** As min, but the limit itself is refused. */
  readonly above?: number;
  readonly max?: number;
}

interface Meaning {
  readonly says: string;
  readonly kind: Phrase;
}

const MEANINGS = new WeakMap<z.ZodType, Meaning>();

/** What a place means and what kind of value it holds; editors get both in English. */
export function described<T extends z.ZodType>(schema: T, says: string, kind: Phrase): T {
  const done = schema.describe(`${says}: ${tell(kind, 'en')}`);
  MEANINGS.set(done, { says, kind });
  return done;
}

/** As it was described; null for what holds no value of its own. */
export const meaningOf = (schema: z.ZodType): Meaning | null => MEANINGS.get(schema) ?? null;

/** A number with its meaning, range and unit; the words serve messages and editors alike. */
export function quantity(says: string, unit: string, range: Range = {}) {
  const { min, above, max } = range;
  let schema = z.number();
  if (min !== undefined) schema = schema.min(min);
  if (above !== undefined) schema = schema.gt(above);
  if (max !== undefined) schema = schema.max(max);
  return described(schema, says, rangePhrase(range, unit));
}

function rangePhrase({ min, above, max }: Range, unit: string): Phrase {
  if (max !== undefined)
    return min === undefined
      ? phrase('numberAboveAtMost', { a: above ?? '-∞', b: max, unit })
      : phrase('numberFromTo', { a: min, b: max, unit });
  if (above !== undefined) return phrase('numberAbove', { a: above, unit });
  return min === undefined ? phrase('numberOf', { unit }) : phrase('numberOrMore', { a: min, unit });
}

/** A number above zero. */
export function positive(says: string, unit: string) {
  return quantity(says, unit, { above: 0 });
}

/** Free text. */
export function text(says: string) {
  return described(z.string(), says, phrase('aText'));
}

/** A list with its meaning. */
export function list<T extends z.ZodType>(item: T, says: string) {
  return described(z.array(item), says, phrase('aList'));
}

/** A list that must hold something. */
export function filledList<T extends z.ZodType>(item: T, says: string) {
  return described(z.array(item).min(1), says, phrase('filledList'));
}

/** One of a few words. */
export function choice<const T extends readonly [string, ...string[]]>(words: T, says: string) {
  return described(z.enum(words), says, phrase('oneOfWords', { list: words.map((word) => `"${word}"`).join(', ') }));
}

export function flag(says: string) {
  return described(z.boolean(), says, phrase('trueOrFalse'));
}

export const idSchema = described(z.string().min(1).max(100), 'Short name, once only in its list', phrase('shortText'));

/** The id of something else in the scene or the catalogue. */
export function reference(says: string) {
  return described(z.string().min(1).max(100), says, phrase('anId'));
}

const eastM = quantity('Coordinate x, to the right or east', 'm');
const northM = quantity('Coordinate y, upwards on the plan or north', 'm');
const levelM = quantity('Level z, upwards', 'm');

export const pointSchema = described(z.tuple([eastM, northM]), 'Point', phrase('pointList'));
export const point3Schema = described(z.tuple([eastM, northM, levelM]), 'Point with level', phrase('levelPointList'));

export function polygon(says: string) {
  return list(pointSchema, `${says}, three or more points [x, y], open or closed, either way round, not crossing itself [m]`);
}

export function polyline(says: string) {
  return list(pointSchema, `${says}, two or more points [x, y] [m]`);
}

export const levelsShape = {
  spots: list(point3Schema, 'Spot levels [x, y, z] [m]'),
  breaklines: list(
    list(point3Schema, 'Breakline, two or more points [x, y, z] [m]'),
    'Breaklines: ridges, valleys and steps that stay edges of the surface',
  ).exactOptional(),
};
