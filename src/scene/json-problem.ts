/** Says in plain words why a JSON text breaks where it breaks. */

import type { Phrase } from '../model/issue.ts';
import type { SceneIssueCode } from './issue-codes.ts';
import { MAX_DEPTH } from './limits.ts';
import { type Path, pathText, shorten } from './path.ts';
import { asIs, type IssueWords, phrase, worded } from './words/phrase.ts';

/** What the reader was looking for when the text broke. */
export type Wanted = 'value' | 'key' | 'colon' | 'list-end' | 'object-end' | 'string' | 'depth' | 'end';

export interface JsonProblem extends IssueWords {
  readonly code: SceneIssueCode;
  readonly offset: number;
  readonly path: Path;
}

interface Break {
  readonly text: string;
  readonly at: number;
  readonly path: Path;
  readonly wanted: Wanted;
}

type Explanation = IssueWords & { readonly code: SceneIssueCode };

const QUOTES = "'`´‘’‚‛“”„‟«»";
/** A name, number or other run without JSON's own marks. */
const RUN = /[^\s,:;[\]{}"]+/y;
const NOT_FINITE = /^[+-]?(?:nan|inf|infinity|∞|undefined|#\w*)$/i;
const NUMBER_LIKE = /^[+\-−–.]?[.\d][\d.,_'’eE+\-−\s]*$/;
const UNIT = /^(?:mm|cm|m|m²|m2|kg|t|kN\S*|%|°)$/;
/** Digits after a narrow or non-breaking blank, as typesetters part thousands. */
const THOUSANDS = /^[\u00a0\u2009\u202f]\d+/;
/** What may stand behind a backslash, as it is written. */
const ESCAPES = '\\" \\\\ \\/ \\b \\f \\n \\r \\t \\u0000';
const WORDS: ReadonlyMap<string, string> = new Map([
  ['true', 'true'],
  ['false', 'false'],
  ['yes', 'true'],
  ['no', 'false'],
  ['none', 'null'],
  ['nil', 'null'],
  ['null', 'null'],
]);
const WANTED: Readonly<Record<Wanted, Phrase>> = {
  value: phrase('jsonValue'),
  key: phrase('jsonKey'),
  colon: phrase('jsonColon'),
  'list-end': phrase('commaOrBracket'),
  'object-end': phrase('commaOrBrace'),
  string: phrase('restOfText'),
  depth: phrase('bracketsDeep', { n: MAX_DEPTH }),
  end: phrase('nothingMore'),
};

/**
 * Explains a break in a JSON text.
 * @param where - the text, where it breaks and what was looked for
 * @returns code, place and words
 */
export function explainBreak(where: Break): JsonProblem {
  const tries = [
    tooDeep,
    truncated,
    insideString,
    decimalComma,
    trailingComma,
    comment,
    quotes,
    notFinite,
    numberForm,
    word,
    missingComma,
    afterEnd,
    other,
  ];
  for (const attempt of tries) {
    const explanation = attempt(where);
    if (explanation !== null)
      return { ...explanation, offset: where.at, path: where.wanted === 'depth' ? where.path.slice(0, 3) : [...where.path] };
  }
  throw new RangeError(`explainBreak: no explanation for "${where.wanted}"`);
}

function runAt({ text, at }: Break): string {
  RUN.lastIndex = at;
  return RUN.exec(text)?.[0] ?? '';
}

function lineAt(text: string, at: number): string {
  return /^[^\r\n]*/.exec(text.slice(at, at + 80))?.[0] ?? '';
}

function quoted(text: string): string {
  return `"${shorten(text)}"`;
}

function tooDeep({ wanted, path }: Break): Explanation | null {
  if (wanted !== 'depth') return null;
  return { code: 'JSON_TOO_DEEP', ...worded(phrase('bracketsInside', { n: path.length }), WANTED.depth, phrase('checkWriter')) };
}

function truncated(where: Break): Explanation | null {
  const { text, at, path, wanted } = where;
  if (wanted === 'end') return null;
  const rest = text.slice(at, at + 12);
  const cutShort =
    rest === '' ||
    (at + rest.length === text.length && /^(?:-|t|tr|tru|f|fa|fal|fals|n|nu|nul|\.|\.?\d*[eE][+-]?|\\|\\u[0-9a-fA-F]{0,3})$/.test(rest));
  if (!cutShort) return null;
  const end = { n: byteOffset(text, text.length), c: columnAt(text, text.length) };
  const found = path.length === 0 ? phrase('endOfText', end) : phrase('endOfTextIn', { ...end, path: pathText(path) });
  return { code: 'JSON_TRUNCATED', ...worded(found, phrase('andRest', { what: WANTED[wanted] }), phrase('cutShort')) };
}

function insideString({ text, at, wanted }: Break): Explanation | null {
  if (wanted !== 'string') return null;
  const next = text.charAt(at);
  if (next === '\n' || next === '\r')
    return { code: 'JSON_STRING_OPEN', ...worded(phrase('lineEndInText'), phrase('closingQuote'), phrase('closeText')) };
  const wantedInText = phrase('plainCharacters', { list: ESCAPES });
  if (next === '\\')
    return { code: 'JSON_ESCAPE', ...worded(asIs(quoted(text.slice(at, at + 2))), wantedInText, phrase('doubleBackslash')) };
  if (next === '\t') return { code: 'JSON_ESCAPE', ...worded(phrase('tabInText'), wantedInText, phrase('writeTab')) };
  const control = phrase('controlInText', { n: next.charCodeAt(0) });
  return { code: 'JSON_ESCAPE', ...worded(control, wantedInText, phrase('dropInvisible')) };
}

/** `"heightM": 0,8` breaks where the next key should stand; `[1,05]` where the number cannot begin with 0. */
function decimalComma(where: Break): Explanation | null {
  const { text, at, wanted } = where;
  const digitsAt = wanted === 'list-end' && /\d/.test(text[at] ?? '') && text[at - 1] === '0' ? at - 1 : at;
  if (wanted !== 'key' && digitsAt === at) return null;
  const before = /(-?\d[\d.]*),[ \t]*$/.exec(text.slice(Math.max(0, digitsAt - 40), digitsAt));
  const after = /^\d+/.exec(text.slice(digitsAt, digitsAt + 40));
  if (before === null || after === null) return null;
  const whole = before[1] ?? '';
  const advice = phrase('commaPartsEntries', { a: `${whole.replaceAll('.', '')}.${after[0]}` });
  return { code: 'DECIMAL_COMMA', ...worded(asIs(`${whole},${after[0]}`), phrase('decimalPoint'), advice) };
}

function trailingComma({ text, at, wanted }: Break): Explanation | null {
  const next = text.charAt(at);
  if ((wanted !== 'value' && wanted !== 'key') || !']}'.includes(next) || !/,\s*$/.test(text.slice(Math.max(0, at - 200), at))) return null;
  return { code: 'JSON_TRAILING_COMMA', ...worded(phrase('commaBefore', { mark: next }), phrase('noLastComma'), phrase('dropComma')) };
}

function comment({ text, at }: Break): Explanation | null {
  if (!/^(?:\/\/|\/\*|#|--|<!--)/.test(text.slice(at, at + 4))) return null;
  const found = phrase('aComment', { text: quoted(lineAt(text, at)) });
  return { code: 'JSON_COMMENT', ...worded(found, phrase('noComments'), phrase('dropComment')) };
}

function quotes({ text, at, wanted }: Break): Explanation | null {
  const next = text.charAt(at);
  if (!QUOTES.includes(next) || /\d/.test(text[at - 1] ?? '')) return null;
  const found = asIs(shorten(lineAt(text, at).replace(/[,:}\]].*$/, '')));
  return { code: 'JSON_QUOTES', ...worded(found, phrase(wanted === 'key' ? 'straightKey' : 'straightText'), phrase('putBetween')) };
}

function notFinite(where: Break): Explanation | null {
  const run = runAt(where);
  if (where.wanted !== 'value' || !NOT_FINITE.test(run)) return null;
  return { code: 'JSON_NOT_FINITE', ...worded(asIs(shorten(run)), phrase('aNumber'), phrase('giveTrueNumber')) };
}

/** `.5`, `+5`, `5.`, `007`, `1_000`, `250mm`, `1 000`: the part before the break was read as a number already. */
function numberForm(where: Break): Explanation | null {
  const { text, at, wanted } = where;
  let token = runAt(where) || (THOUSANDS.exec(text.slice(at, at + 20))?.[0] ?? '');
  if (wanted === 'list-end' || wanted === 'object-end') {
    const before = /(?:^|[\s,:[])(-?[\d.]+[eE+\-\d]*)( ?)$/.exec(text.slice(Math.max(0, at - 40), at));
    if (before === null || token === '') return null;
    if (before[2] !== '' && !/^\d{3}(?:\D|$)/.test(token) && !UNIT.test(token)) return null;
    token = `${before[1]}${before[2]}${token}`;
  } else if (wanted !== 'value' || !NUMBER_LIKE.test(token)) return null;
  return { code: 'JSON_NUMBER', ...worded(asIs(quoted(token)), phrase('plainNumber'), numberAdvice(token)) };
}

function numberAdvice(token: string): Phrase {
  const unit = /^(-?\d+(?:\.\d+)?)\s*(?:mm|cm|m|kg|t|kN|%|°)/.exec(token);
  if (unit !== null) return phrase('alone', { a: unit[1] ?? '' });
  const plain = token
    .replace(/[−–]/g, '-')
    .replace(/[\s_'’]/g, '')
    .replace(/^\+/, '')
    .replace(/^(-?)0+(?=\d)/, '$1')
    .replace(/^(-?)\./, '$10.')
    .replace(/\.$/, '');
  return /^-?\d+(?:\.\d+)?$/.test(plain) ? phrase('writeInstead', { a: plain }) : phrase('digitsOnly');
}

function word(where: Break): Explanation | null {
  const run = runAt(where);
  const right = WORDS.get(run.toLowerCase());
  if (where.wanted === 'value' && right !== undefined)
    return { code: 'JSON_SYNTAX', ...worded(asIs(quoted(run)), WANTED.value, phrase('smallLetters', { a: right })) };
  if (run === '' || !/^[\p{L}_$]/u.test(run)) return null;
  if (where.wanted === 'key')
    return { code: 'JSON_UNQUOTED_KEY', ...worded(asIs(quoted(run)), WANTED.key, phrase('withItsQuotes', { value: shorten(run) })) };
  if (where.wanted !== 'value') return null;
  return { code: 'JSON_QUOTES', ...worded(asIs(shorten(run)), phrase('straightText'), phrase('putBetween')) };
}

function missingComma(where: Break): Explanation | null {
  const { text, at, wanted } = where;
  const next = text.charAt(at);
  if ((wanted !== 'list-end' && wanted !== 'object-end') || !/["{[\d\-\p{L}]/u.test(next)) return null;
  const line = lineAt(text, at);
  return { code: 'JSON_MISSING_COMMA', ...worded(asIs(quoted(line)), WANTED[wanted], phrase('putComma')) };
}

function afterEnd({ text, at, wanted }: Break): Explanation | null {
  if (wanted !== 'end') return null;
  return { code: 'JSON_AFTER_END', ...worded(asIs(quoted(lineAt(text, at))), WANTED.end, phrase('dropRest')) };
}

function other({ text, at, wanted }: Break): Explanation {
  const found = lineAt(text, at);
  let advice = phrase('mendHere');
  if (found.startsWith(',')) advice = phrase('dropExtraComma');
  if (/^[\]}]/.test(found) && wanted.endsWith('-end')) advice = phrase('closeBrackets');
  return { code: 'JSON_SYNTAX', ...worded(asIs(quoted(found)), WANTED[wanted], advice) };
}

/**
 * Line of an offset.
 * @param text - the text
 * @param offset - position in it
 * @returns line, from 1
 */
export function lineOfOffset(text: string, offset: number): number {
  let line = 1;
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) line += 1;
  return line;
}

/**
 * Column of an offset.
 * @param text - the text
 * @param offset - position in it
 * @returns column, from 1
 */
export function columnAt(text: string, offset: number): number {
  return offset - text.lastIndexOf('\n', offset - 1);
}

function byteOffset(text: string, offset: number): number {
  return new TextEncoder().encode(text.slice(0, offset)).length;
}
