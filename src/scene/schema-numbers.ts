/** Building blocks of the schema: numbers with their range and unit in words, names, points. */

import { z } from 'zod';

// The page forbids code made from text; without this the library would try it and the browser would log a refusal.
z.config({ jitless: true });

interface Range {
  readonly min?: number;
  /** As min, but the limit itself is refused. */
  readonly above?: number;
  readonly max?: number;
}

/** A number with its meaning, range and unit; the words serve messages and editors alike. */
export function quantity(says: string, unit: string, range: Range = {}) {
  const { min, above, max } = range;
  let schema = z.number();
  if (min !== undefined) schema = schema.min(min);
  if (above !== undefined) schema = schema.gt(above);
  if (max !== undefined) schema = schema.max(max);
  return schema.describe(`${says}: a number${rangeText(range)} [${unit}]`);
}

function rangeText({ min, above, max }: Range): string {
  if (max !== undefined) return min === undefined ? ` above ${above ?? '-∞'} and at most ${max}` : ` from ${min} to ${max}`;
  if (above !== undefined) return ` above ${above}`;
  return min === undefined ? '' : ` of ${min} or more`;
}

/** A number above zero. */
export function positive(says: string, unit: string) {
  return quantity(says, unit, { above: 0 });
}

/** Free text. */
export function text(says: string) {
  return z.string().describe(`${says}: a text`);
}

/** A list with its meaning. */
export function list<T extends z.ZodType>(item: T, says: string) {
  return z.array(item).describe(`${says}: a list`);
}

/** A list that must hold something. */
export function filledList<T extends z.ZodType>(item: T, says: string) {
  return z.array(item).min(1).describe(`${says}: a list with at least one entry`);
}

/** One of a few words. */
export function choice<const T extends readonly [string, ...string[]]>(words: T, says: string) {
  return z.enum(words).describe(`${says}: one of ${words.map((word) => `"${word}"`).join(', ')}`);
}

export function flag(says: string) {
  return z.boolean().describe(`${says}: true or false`);
}

export const idSchema = z.string().min(1).max(100).describe('Short name, once only in its list: a text of 1 to 100 characters');

/** The id of something else in the scene or the catalogue. */
export function reference(says: string) {
  return z.string().min(1).max(100).describe(`${says}: an id`);
}

const eastM = quantity('Coordinate x, to the right or east', 'm');
const northM = quantity('Coordinate y, upwards on the plan or north', 'm');
const levelM = quantity('Level z, upwards', 'm');

export const pointSchema = z.tuple([eastM, northM]).describe('Point: a list of two numbers [x, y] [m]');
export const point3Schema = z.tuple([eastM, northM, levelM]).describe('Point with level: a list of three numbers [x, y, z] [m]');

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
