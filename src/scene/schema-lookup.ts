/** Finds what the schema says about a place in a scene file. */

import { z } from 'zod';
import type { Phrase } from '../model/issue.ts';
import type { Path } from './path.ts';
import { sceneFileSchema } from './schema.ts';
import { meaningOf } from './schema-numbers.ts';
import { phrase } from './words/phrase.ts';

/**
 * Schema at a place.
 * @param path - place in the file
 * @param root - the file's parsed JSON; chooses among the variants (`kind`, number or object)
 * @returns the schema there, or null where the schema has no such place
 */
export function schemaAt(path: Path, root: unknown): z.ZodType | null {
  let schema: z.ZodType | null = sceneFileSchema;
  let value = root;
  for (const step of path) {
    schema = child(plain(schema, value), step);
    if (schema === null) return null;
    value = typeof value === 'object' && value !== null ? (value as Record<string | number, unknown>)[step] : undefined;
  }
  return plain(schema, value);
}

/** Keys an object may have. */
export function knownKeys(schema: z.ZodType | null): readonly string[] {
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
}

/** What a place is to hold: meaning, range and unit. */
export function wantedAt(path: Path, schema: z.ZodType | null): Phrase {
  if (schema === null) return phrase('somethingElse');
  const known = meaningOf(schema);
  if (known === null && schema.description === undefined) return phrase('somethingElse');
  const says = known?.says ?? schema.description ?? '';
  const key = path.findLast((step) => typeof step === 'string') ?? '';
  return phrase('ofKey', { key, meaning: says.charAt(0).toLowerCase() + says.slice(1), kind: known?.kind ?? phrase('anObject') });
}

/** Kinds of values that a wrong one may have been meant for. */
export type ValueKind = 'number' | 'numbers' | 'text' | 'flag' | 'other';

export function kindOfValue(schema: z.ZodType | null): ValueKind {
  if (schema instanceof z.ZodNumber) return 'number';
  if (schema instanceof z.ZodString) return 'text';
  if (schema instanceof z.ZodBoolean) return 'flag';
  // A thickness is a number or a range of numbers.
  if (schema instanceof z.ZodUnion && schema.options.some((option) => option instanceof z.ZodNumber)) return 'number';
  return schema instanceof z.ZodTuple ? 'numbers' : 'other';
}

/** Words among which a text, or the `kind` of an object, chooses. */
export function choices(schema: z.ZodType | null): readonly string[] {
  if (schema instanceof z.ZodEnum) return schema.options.map(String);
  if (!(schema instanceof z.ZodUnion)) return [];
  return schema.options.flatMap((option) => (option instanceof z.ZodObject ? kinds(option.shape.kind) : []));
}

function kinds(schema: unknown): string[] {
  return schema instanceof z.ZodLiteral ? [...schema.values].map(String) : [];
}

function child(schema: z.ZodType | null, step: string | number): z.ZodType | null {
  if (schema instanceof z.ZodObject) return Object.hasOwn(schema.shape, step) ? (schema.shape[step] as z.ZodType) : null;
  if (schema instanceof z.ZodArray) return schema.element as z.ZodType;
  if (schema instanceof z.ZodTuple) return (schema.def.items[Number(step)] as z.ZodType | undefined) ?? null;
  if (schema instanceof z.ZodRecord) return schema.valueType as z.ZodType;
  // The key that chooses among variants, where it is missing or wrong: the variants themselves.
  return schema instanceof z.ZodUnion && step === 'kind' ? schema : null;
}

/** Without the wrapper of an optional key; of variants the one that fits the value. */
function plain(schema: z.ZodType | null, value: unknown): z.ZodType | null {
  if (schema instanceof z.ZodExactOptional) return plain(schema.def.innerType as z.ZodType, value);
  if (!(schema instanceof z.ZodUnion) || typeof value !== 'object' || value === null || Array.isArray(value)) return schema;
  const options = schema.options.filter((option) => option instanceof z.ZodObject);
  const kind = (value as { kind?: unknown }).kind;
  return (
    options.find((option) => kinds(option.shape.kind).includes(String(kind))) ?? (options.length === 1 ? (options[0] ?? null) : schema)
  );
}
