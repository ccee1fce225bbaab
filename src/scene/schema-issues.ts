/** Puts what the schema refuses into our words: place, found, expected, mend. */

import type { z } from 'zod';
import type { IssueList, IssueWords } from './issue-list.ts';
import { nameList, nearestName } from './nearest-name.ts';
import { type Path, pathText, shorten, valueAt } from './path.ts';
import { choices, knownKeys, meaning, schemaAt } from './schema-lookup.ts';

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
  /** Meaning, range and unit of the place. */
  readonly says: () => string;
}

function report(refusal: Refusal, path: Path, root: unknown, issues: IssueList): void {
  const value = valueAt(root, path);
  const says = () => meaning(schemaAt(path, root));
  if (refusal.code === 'unrecognized_keys') {
    for (const key of refusal.keys) reportUnknownKey([...path, key], root, issues);
  } else if (value === undefined) {
    issues.error('MISSING_KEY', path, () => missingWords(path, choices(schemaAt(path, root)), says()));
  } else if (refusal.code === 'too_small' || refusal.code === 'too_big') {
    if (typeof value === 'number') issues.error('OUT_OF_RANGE', path, () => rangeWords(value, says()));
    else reportLength(refusal.code === 'too_big' ? Number(refusal.maximum) : 0, { path, value, issues, says });
  } else if (refusal.code === 'invalid_value' || (refusal.code === 'invalid_union' && refusal.discriminator !== undefined)) {
    issues.error('WRONG_VALUE', path, () => choiceWords(value, choices(schemaAt(path, root)), says()));
  } else {
    reportType({ path, value, issues, says });
  }
}

function missingWords(path: Path, words: readonly string[], says: string): IssueWords {
  const key = String(path.at(-1));
  const expected = words.length === 0 ? says : oneOf(words);
  return { got: `no "${key}"`, expected, mend: `Add "${key}"${path.length > 1 ? ` to ${pathText(path.slice(0, -1))}` : ''}.` };
}

function oneOf(words: readonly string[]): string {
  return `one of ${words.map((word) => `"${word}"`).join(', ')}`;
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
    const mend = nearest === null ? 'Delete it, or check its spelling and its place.' : `Did you mean "${nearest}"?`;
    return { got: `the key "${shorten(key)}"`, expected: known.length === 0 ? 'a key of your own' : `one of ${nameList(known)}`, mend };
  });
}

function rangeWords(value: number, expected: string): IssueWords {
  const mend = value < 0 ? 'Check the sign and the unit.' : 'Check the value and its unit.';
  return { got: String(value), expected, mend };
}

function choiceWords(value: unknown, words: readonly string[], says: string): IssueWords {
  const nearest = typeof value === 'string' ? nearestName(value, words) : null;
  const expected = words.length === 0 ? says : oneOf(words);
  const mend = nearest === null ? 'Choose one of them, in this spelling.' : `Did you mean "${nearest}"?`;
  return { got: describeValue(value), expected, mend };
}

/** `[1,5, 2,3]` is good JSON, but four numbers where a point has two. */
function reportLength(size: number, { path, value, issues, says }: Case): void {
  const items: readonly unknown[] = Array.isArray(value) ? value : [];
  const tooLong = size > 0 && items.length > size;
  if (tooLong && items.length === 2 * size && items.every(Number.isInteger)) {
    const meant = Array.from({ length: size }, (_, i) => `${items[2 * i]}.${Math.abs(Number(items[2 * i + 1]))}`);
    const mend = `If decimal commas were meant, write [${meant.join(', ')}] with points.`;
    issues.error('DECIMAL_COMMA', path, () => ({ got: `${items.length} numbers: ${describeValue(value)}`, expected: says(), mend }));
    return;
  }
  issues.error('WRONG_LENGTH', path, () => {
    const count = Array.isArray(value) ? `${items.length} ${items.length === 1 ? 'entry' : 'entries'}: ` : '';
    const mend = tooLong
      ? 'Give just these numbers; a decimal comma would part one number into two.'
      : 'Add what is missing, or leave the key out where it is not required.';
    return { got: `${count}${describeValue(value)}`, expected: says(), mend };
  });
}

function reportType({ path, value, issues, says }: Case): void {
  const expected = says();
  const words = (mend: string) => () => ({ got: describeValue(value), expected, mend });
  if (typeof value === 'number' && !Number.isFinite(value)) {
    issues.error('NOT_FINITE', path, words('The number is too large to calculate with; check it.'));
  } else if (typeof value === 'number' && /: a (whole )?number/.test(expected)) {
    issues.error('OUT_OF_RANGE', path, () => rangeWords(value, expected));
  } else {
    const comma = typeof value === 'string' && /number/.test(expected) && /^\s*[-−]?[\d.\s]*\d,\d+\s*$/.test(value);
    issues.error(comma ? 'DECIMAL_COMMA' : 'WRONG_TYPE', path, words(typeMend(value, expected)));
  }
}

function typeMend(value: unknown, says: string): string {
  if (value === null) return 'Give a value, or leave the key out where it is not required.';
  if (typeof value !== 'string')
    return /a text|an id/.test(says) && typeof value === 'number'
      ? `Write "${value}" in quotation marks.`
      : 'Check the brackets and the key.';
  if (!/number/.test(says))
    return /true or false/.test(says) && /^(true|false)$/i.test(value)
      ? `Write ${value.toLowerCase()} without quotation marks.`
      : 'Check the brackets and the key.';
  const plain = value.trim().replace(/−/g, '-');
  if (/^-?\d{1,3},\d{3}$/.test(plain))
    return `Write ${plain.replace(',', '.')} without quotation marks, or ${plain.replace(',', '')} if the comma parts thousands.`;
  if (/^-?[\d.\s]*\d,\d+$/.test(plain))
    return `Write ${plain.replace(/[.\s]/g, '').replace(',', '.')} with a point and without quotation marks.`;
  if (/^-?\d+(\.\d+)?$/.test(plain)) return `Write ${plain} without quotation marks.`;
  const unit = /^(-?\d+(?:[.,]\d+)?)\s*[a-z%°²³/]+\d?$/i.exec(plain);
  if (unit?.[1] !== undefined) return `Write ${unit[1].replace(',', '.')} alone, without quotation marks; the unit stands in the key.`;
  return 'Give a number, with a decimal point and without quotation marks.';
}

/** What stands in the file, short. */
export function describeValue(value: unknown): string {
  if (value === null) return 'null';
  if (Array.isArray(value)) return value.length > 6 ? `a list of ${value.length} entries` : shorten(JSON.stringify(value, brief), 60);
  if (typeof value === 'object')
    return `an object with ${nameList(
      Object.keys(value)
        .slice(0, 8)
        .map((key) => shorten(key)),
    )}`;
  return typeof value === 'string' ? `"${shorten(value, 60)}"` : String(value);
}

/** Keeps a huge entry of a short list out of the message. */
function brief(key: string, value: unknown): unknown {
  if (key !== '' && Array.isArray(value) && value.length > 6) return '[…]';
  return typeof value === 'string' ? shorten(value) : value;
}
