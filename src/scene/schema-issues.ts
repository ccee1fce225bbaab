/** Puts what the schema refuses into our words: place, found, expected, mend. */

import type { z } from 'zod';
import type { Phrase } from '../model/issue.ts';
import type { IssueList } from './issue-list.ts';
import { nearestName } from './nearest-name.ts';
import { type Path, pathText, shorten, valueAt } from './path.ts';
import { choices, kindOfValue, knownKeys, schemaAt, type ValueKind, wantedAt } from './schema-lookup.ts';
import { asIs, type IssueWords, phrase, worded } from './words/phrase.ts';

type Refusal = z.core.$ZodIssue;

/**
 * Reports all the schema refuses.
 * @param refusals - as the schema gives them
 * @param root - the file's parsed JSON
 * @param issues - receives the messages
 */
export function reportRefusals(refusals: readonly Refusal[], root: unknown, issues: IssueList): void {
  const flat = refusals.flatMap((refusal) => flatten(refusal, []));
  const meant = misspelt(flat, root);
  for (const { refusal, path } of flat) {
    if (!meant.has(pathText(path))) report(refusal, path, root, issues);
  }
}

interface Placed {
  readonly refusal: Refusal;
  readonly path: Path;
}

/** Of several variants, the refusals of the one whose outer kind fits. */
function flatten(refusal: Refusal, before: Path): Placed[] {
  const path: Path = [...before, ...(refusal.path as (string | number)[])];
  if (refusal.code !== 'invalid_union') return [{ refusal, path }];
  const near = refusal.errors.find((branch) => !branch.some((inner) => inner.path.length === 0 && inner.code === 'invalid_type'));
  return near === undefined ? [{ refusal, path }] : near.flatMap((inner) => flatten(inner, path));
}

/** Missing keys that stand in the file under a misspelt name: one message is enough. */
function misspelt(flat: readonly Placed[], root: unknown): Set<string> {
  const meant = new Set<string>();
  for (const { refusal, path } of flat) {
    if (refusal.code !== 'unrecognized_keys') continue;
    const missing = knownKeys(schemaAt(path, root)).filter((key) => valueAt(root, [...path, key]) === undefined);
    for (const key of refusal.keys.slice(0, 50)) {
      const nearest = nearestName(key, missing);
      if (nearest !== null) meant.add(pathText([...path, nearest]));
    }
  }
  return meant;
}

/** One refusal with what the messages need. */
interface Case {
  readonly path: Path;
  readonly value: unknown;
  readonly issues: IssueList;
  /** What the schema says of the place. */
  readonly schema: () => z.ZodType | null;
}

function report(refusal: Refusal, path: Path, root: unknown, issues: IssueList): void {
  const value = valueAt(root, path);
  const schema = () => schemaAt(path, root);
  if (refusal.code === 'unrecognized_keys') {
    for (const key of refusal.keys) reportUnknownKey([...path, key], root, issues);
  } else if (value === undefined) {
    issues.error('MISSING_KEY', path, () => missingWords(path, schema()));
  } else if (refusal.code === 'too_small' || refusal.code === 'too_big') {
    if (typeof value === 'number') issues.error('OUT_OF_RANGE', path, () => rangeWords(value, wantedAt(path, schema())));
    else reportLength(refusal.code === 'too_big' ? Number(refusal.maximum) : 0, { path, value, issues, schema });
  } else if (refusal.code === 'invalid_value' || (refusal.code === 'invalid_union' && refusal.discriminator !== undefined)) {
    issues.error('WRONG_VALUE', path, () => choiceWords(value, path, schema()));
  } else {
    reportType({ path, value, issues, schema });
  }
}

function missingWords(path: Path, schema: z.ZodType | null): IssueWords {
  const key = String(path.at(-1));
  const advice = path.length > 1 ? phrase('addKeyTo', { key, where: pathText(path.slice(0, -1)) }) : phrase('addKey', { key });
  return worded(phrase('noKey', { key }), oneOf(path, schema), advice);
}

/** The words among which a place chooses; else what it is to hold. */
function oneOf(path: Path, schema: z.ZodType | null): Phrase {
  const words = choices(schema);
  return words.length === 0 ? wantedAt(path, schema) : phrase('oneOfWords', { list: words.map((word) => `"${word}"`).join(', ') });
}

/**
 * Reports a key the scene file does not have.
 * @param path - place of the key
 * @param root - the file's parsed JSON
 * @param issues - receives the message
 */
export function reportUnknownKey(path: Path, root: unknown, issues: IssueList): void {
  issues.error('UNKNOWN_KEY', path, () => {
    const key = String(path.at(-1));
    const known = knownKeys(schemaAt(path.slice(0, -1), root));
    const nearest = nearestName(key, known);
    return worded(
      phrase('theKey', { key: shorten(key) }),
      known.length === 0 ? phrase('ownKey') : phrase('oneOfNames', { list: known }),
      nearest === null ? phrase('checkSpelling') : phrase('didYouMean', { what: `"${nearest}"` }),
    );
  });
}

function rangeWords(value: number, wanted: Phrase): IssueWords {
  return worded(asIs(value), wanted, phrase(value < 0 ? 'checkSign' : 'checkValueAndUnit'));
}

function choiceWords(value: unknown, path: Path, schema: z.ZodType | null): IssueWords {
  const nearest = typeof value === 'string' ? nearestName(value, choices(schema)) : null;
  const advice = nearest === null ? phrase('chooseOne') : phrase('didYouMean', { what: `"${nearest}"` });
  return worded(describeValue(value), oneOf(path, schema), advice);
}

/** `[1,5, 2,3]` is good JSON, but four numbers where a point has two. */
function reportLength(size: number, { path, value, issues, schema }: Case): void {
  const items: readonly unknown[] = Array.isArray(value) ? value : [];
  const tooLong = size > 0 && items.length > size;
  if (tooLong && items.length === 2 * size && items.every(Number.isInteger)) {
    const meant = Array.from({ length: size }, (_, i) => `${items[2 * i]}.${Math.abs(Number(items[2 * i + 1]))}`);
    issues.error('DECIMAL_COMMA', path, () =>
      worded(
        phrase('numbersFound', { n: items.length, list: describeValue(value) }),
        wantedAt(path, schema()),
        phrase('commasMeant', { list: `[${meant.join(', ')}]` }),
      ),
    );
    return;
  }
  issues.error('WRONG_LENGTH', path, () => {
    const found = describeValue(value);
    return worded(
      Array.isArray(value) ? phrase('entriesFound', { n: items.length, list: found }) : found,
      wantedAt(path, schema()),
      phrase(tooLong ? 'justTheseNumbers' : 'addMissing'),
    );
  });
}

function reportType({ path, value, issues, schema }: Case): void {
  const at = schema();
  const wanted = wantedAt(path, at);
  const kind = kindOfValue(at);
  const words = (advice: Phrase) => () => worded(describeValue(value), wanted, advice);
  if (typeof value === 'number' && !Number.isFinite(value)) {
    issues.error('NOT_FINITE', path, words(phrase('tooLarge')));
  } else if (typeof value === 'number' && kind === 'number') {
    issues.error('OUT_OF_RANGE', path, () => rangeWords(value, wanted));
  } else {
    const comma = typeof value === 'string' && isOfNumbers(kind) && /^\s*[-−]?[\d.\s]*\d,\d+\s*$/.test(value);
    issues.error(comma ? 'DECIMAL_COMMA' : 'WRONG_TYPE', path, words(typeAdvice(value, kind)));
  }
}

const isOfNumbers = (kind: ValueKind) => kind === 'number' || kind === 'numbers';

function typeAdvice(value: unknown, kind: ValueKind): Phrase {
  if (value === null) return phrase('giveValue');
  if (typeof value !== 'string')
    return kind === 'text' && typeof value === 'number' ? phrase('quoteValue', { value }) : phrase('checkBrackets');
  if (!isOfNumbers(kind))
    return kind === 'flag' && /^(true|false)$/i.test(value) ? phrase('unquoted', { a: value.toLowerCase() }) : phrase('checkBrackets');
  return numberAdvice(value.trim().replace(/−/g, '-'));
}

/** What a text in place of a number may have meant. */
function numberAdvice(plain: string): Phrase {
  if (/^-?\d{1,3},\d{3}$/.test(plain)) return phrase('thousandsOrPoint', { a: plain.replace(',', '.'), b: plain.replace(',', '') });
  if (/^-?[\d.\s]*\d,\d+$/.test(plain)) return phrase('withPoint', { a: plain.replace(/[.\s]/g, '').replace(',', '.') });
  if (/^-?\d+(\.\d+)?$/.test(plain)) return phrase('unquoted', { a: plain });
  const unit = /^(-?\d+(?:[.,]\d+)?)\s*[a-z%°²³/]+\d?$/i.exec(plain);
  return unit?.[1] === undefined ? phrase('giveNumber') : phrase('aloneUnquoted', { a: unit[1].replace(',', '.') });
}

/** What stands in the file, short. */
export function describeValue(value: unknown): Phrase {
  if (Array.isArray(value))
    return value.length > 6 ? phrase('listOf', { n: value.length }) : asIs(shorten(JSON.stringify(value, brief), 60));
  if (typeof value === 'object' && value !== null) {
    const keys = Object.keys(value).slice(0, 8);
    if (keys.length === 0) return phrase('emptyObject');
    return phrase('objectWith', { keys: keys.map((key) => shorten(key)) });
  }
  return asIs(typeof value === 'string' ? `"${shorten(value, 60)}"` : String(value));
}

/** Keeps a huge entry of a short list out of the message. */
function brief(key: string, value: unknown): unknown {
  if (key !== '' && Array.isArray(value) && value.length > 6) return '[…]';
  return typeof value === 'string' ? shorten(value) : value;
}
