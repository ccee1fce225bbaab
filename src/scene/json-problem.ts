/** Says in plain words why a JSON text breaks where it breaks. */

import type { SceneIssueCode } from './issue-codes.ts';
import type { IssueWords } from './issue-list.ts';
import { MAX_DEPTH } from './limits.ts';
import { type Path, pathText, shorten } from './path.ts';

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
const WORDS: ReadonlyMap<string, string> = new Map([
  ['true', 'true'],
  ['false', 'false'],
  ['yes', 'true'],
  ['no', 'false'],
  ['none', 'null'],
  ['nil', 'null'],
  ['null', 'null'],
]);
const EXPECTED: Readonly<Record<Wanted, string>> = {
  value: 'a value: a number, a text in quotation marks, true, false, a list or an object',
  key: 'a key in quotation marks',
  colon: 'a colon between key and value',
  'list-end': 'a comma or the closing bracket ]',
  'object-end': 'a comma or the closing brace }',
  string: 'the rest of a text and its closing quotation mark',
  depth: `brackets nested at most ${MAX_DEPTH} deep`,
  end: 'nothing more after the end of the scene',
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

/** Where the reader stands, e.g. ` inside zones[7].outline`. */
function inside(path: Path): string {
  return path.length === 0 ? '' : ` inside ${pathText(path)}`;
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
  const got = `more than ${path.length} brackets inside each other`;
  return { code: 'JSON_TOO_DEEP', got, expected: EXPECTED.depth, mend: 'Check what wrote this file; a scene is never nested so deeply.' };
}

function truncated(where: Break): Explanation | null {
  const { text, at, path, wanted } = where;
  if (wanted === 'end') return null;
  const rest = text.slice(at, at + 12);
  const cutShort =
    rest === '' ||
    (at + rest.length === text.length && /^(?:-|t|tr|tru|f|fa|fal|fals|n|nu|nul|\.|\.?\d*[eE][+-]?|\\|\\u[0-9a-fA-F]{0,3})$/.test(rest));
  if (!cutShort) return null;
  return {
    code: 'JSON_TRUNCATED',
    got: `the end of the text at byte ${byteOffset(text, text.length)}, column ${columnAt(text, text.length)}${inside(path)}`,
    expected: `${EXPECTED[wanted]} and the rest of the scene`,
    mend: 'The file stops in the middle and was probably not saved or sent completely. Save or send it again, or open an earlier copy.',
  };
}

function insideString({ text, at, wanted }: Break): Explanation | null {
  if (wanted !== 'string') return null;
  const next = text.charAt(at);
  if (next === '\n' || next === '\r') {
    return {
      code: 'JSON_STRING_OPEN',
      got: 'the end of the line in the middle of a text',
      expected: 'a closing quotation mark before the end of the line',
      mend: 'Close the text with a quotation mark; write a line break inside a text as \\n.',
    };
  }
  const got =
    next === '\\'
      ? quoted(text.slice(at, at + 2))
      : next === '\t'
        ? 'a tab inside a text'
        : `the control character ${next.charCodeAt(0)} inside a text`;
  const mend =
    next === '\\'
      ? 'Write each backslash twice (\\\\).'
      : next === '\t'
        ? 'Write the tab as \\t or as blanks.'
        : 'Delete the invisible character.';
  return { code: 'JSON_ESCAPE', got, expected: 'plain characters, or one of \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u0000', mend };
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
  return {
    code: 'DECIMAL_COMMA',
    got: `${whole},${after[0]}`,
    expected: 'a number with a decimal point',
    mend: `Write ${whole.replaceAll('.', '')}.${after[0]}; a comma parts entries here.`,
  };
}

function trailingComma({ text, at, wanted }: Break): Explanation | null {
  const next = text.charAt(at);
  if ((wanted !== 'value' && wanted !== 'key') || !']}'.includes(next) || !/,\s*$/.test(text.slice(Math.max(0, at - 200), at))) return null;
  return {
    code: 'JSON_TRAILING_COMMA',
    got: `a comma before the closing ${next}`,
    expected: 'no comma after the last entry',
    mend: 'Delete the comma.',
  };
}

function comment({ text, at }: Break): Explanation | null {
  if (!/^(?:\/\/|\/\*|#|--|<!--)/.test(text.slice(at, at + 4))) return null;
  const got = `a comment: ${quoted(lineAt(text, at))}`;
  return {
    code: 'JSON_COMMENT',
    got,
    expected: 'no comments, since JSON has none',
    mend: 'Delete the comment, or put its text into "about" or "says".',
  };
}

function quotes({ text, at, wanted }: Break): Explanation | null {
  const next = text.charAt(at);
  if (!QUOTES.includes(next) || /\d/.test(text[at - 1] ?? '')) return null;
  const got = shorten(lineAt(text, at).replace(/[,:}\]].*$/, ''));
  const what = wanted === 'key' ? 'a key' : 'a text';
  return { code: 'JSON_QUOTES', got, expected: `${what} in straight double quotation marks`, mend: 'Put it between " and ".' };
}

function notFinite(where: Break): Explanation | null {
  const run = runAt(where);
  if (where.wanted !== 'value' || !NOT_FINITE.test(run)) return null;
  return {
    code: 'JSON_NOT_FINITE',
    got: shorten(run),
    expected: 'a number',
    mend: 'Give the true number, or leave the key out where it is not required.',
  };
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
  return { code: 'JSON_NUMBER', got: quoted(token), expected: 'a plain number such as 250, 0.8 or -1.25', mend: numberMend(token) };
}

function numberMend(token: string): string {
  const unit = /^(-?\d+(?:\.\d+)?)\s*(?:mm|cm|m|kg|t|kN|%|°)/.exec(token);
  if (unit !== null) return `Write ${unit[1]} alone; the unit stands in the key.`;
  const plain = token
    .replace(/[−–]/g, '-')
    .replace(/[\s_'’]/g, '')
    .replace(/^\+/, '')
    .replace(/^(-?)0+(?=\d)/, '$1')
    .replace(/^(-?)\./, '$10.')
    .replace(/\.$/, '');
  return /^-?\d+(?:\.\d+)?$/.test(plain)
    ? `Write ${plain}.`
    : 'Write digits with a decimal point, without unit, blanks or thousands marks.';
}

function word(where: Break): Explanation | null {
  const run = runAt(where);
  const right = WORDS.get(run.toLowerCase());
  if (where.wanted === 'value' && right !== undefined)
    return { code: 'JSON_SYNTAX', got: quoted(run), expected: EXPECTED.value, mend: `Write ${right} in small letters.` };
  if (run === '' || !/^[\p{L}_$]/u.test(run)) return null;
  if (where.wanted === 'key')
    return {
      code: 'JSON_UNQUOTED_KEY',
      got: quoted(run),
      expected: EXPECTED.key,
      mend: `Write "${shorten(run)}" with its quotation marks.`,
    };
  if (where.wanted !== 'value') return null;
  return { code: 'JSON_QUOTES', got: shorten(run), expected: 'a text in straight double quotation marks', mend: 'Put it between " and ".' };
}

function missingComma(where: Break): Explanation | null {
  const { text, at, wanted } = where;
  const next = text.charAt(at);
  if ((wanted !== 'list-end' && wanted !== 'object-end') || !/["{[\d\-\p{L}]/u.test(next)) return null;
  const line = lineAt(text, at);
  return {
    code: 'JSON_MISSING_COMMA',
    got: quoted(line),
    expected: EXPECTED[wanted],
    mend: 'Put a comma between the two entries.',
  };
}

function afterEnd({ text, at, wanted }: Break): Explanation | null {
  if (wanted !== 'end') return null;
  const mend = 'Delete what follows the last closing brace; a file holds one scene.';
  return { code: 'JSON_AFTER_END', got: quoted(lineAt(text, at)), expected: EXPECTED.end, mend };
}

function other({ text, at, wanted }: Break): Explanation {
  const found = lineAt(text, at);
  let mend = 'Mend the text at this place; an editor that knows JSON marks it.';
  if (found.startsWith(',')) mend = 'Delete the extra comma, or put in the entry that is missing.';
  if (/^[\]}]/.test(found) && wanted.endsWith('-end')) mend = 'Check that every [ is closed by ] and every { by }.';
  return { code: 'JSON_SYNTAX', got: quoted(found), expected: EXPECTED[wanted], mend };
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
