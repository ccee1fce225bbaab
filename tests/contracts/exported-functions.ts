/** Finds the exported functions of a TypeScript text with their doc comments, parameters and bodies. */

import { codeOnly } from './source-text.ts';

export interface ExportedFunction {
  readonly name: string;
  /** Text of the doc comment right above, without its stars; empty if there is none. */
  readonly doc: string;
  /** Names in order; null for a parameter that is taken apart and so has no name of its own. */
  readonly params: readonly (string | null)[];
  readonly returnsNothing: boolean;
  readonly throwsItself: boolean;
}

const CLOSER: Record<string, string> = { '(': ')', '[': ']', '{': '}', '<': '>' };

/** Index of the bracket that closes the one at `open`; the `>` of `=>` closes nothing. */
function closing(code: string, open: number): number {
  const wanted: string[] = [];
  for (let at = open; at < code.length; at++) {
    const sign = code[at]!;
    if (sign === '>' && code[at - 1] === '=') continue;
    if (sign in CLOSER && (sign !== '<' || at === open || isTypeBracket(code, at))) wanted.push(CLOSER[sign]!);
    else if (sign === wanted.at(-1)) wanted.pop();
    if (wanted.length === 0) return at;
  }
  throw new Error(`closing: no bracket closes the one at ${open}`);
}

/** `<` opens type arguments only right after a name; the formatter puts spaces around the comparison. */
function isTypeBracket(code: string, at: number): boolean {
  return /\w/.test(code[at - 1] ?? '');
}

/** Splits at commas that stand in no bracket. */
function splitList(list: string): string[] {
  const parts: string[] = [];
  let start = 0;
  for (let at = 0; at < list.length; at++) {
    const sign = list[at]!;
    if (sign in CLOSER && (sign !== '<' || isTypeBracket(list, at))) at = closing(list, at);
    else if (sign === ',') {
      parts.push(list.slice(start, at));
      start = at + 1;
    }
  }
  return [...parts, list.slice(start)].filter((part) => part.trim() !== '');
}

function paramName(param: string): string | null {
  return /^\s*(?:\.\.\.)?\s*(\w+)/.exec(param)?.[1] ?? null;
}

/** Index of the brace that opens the body, past a return type that may hold braces of its own; -1 for a bare signature. */
function bodyStart(code: string, afterParams: number): number {
  let expectsType = false;
  for (let at = afterParams; at < code.length; at++) {
    const sign = code[at]!;
    if (sign === ';' || /^\n(export|\/\*\*)/.test(code.slice(at, at + 8))) return -1;
    if (sign === '{' && !expectsType) return at;
    if (sign in CLOSER && (sign !== '<' || isTypeBracket(code, at))) {
      at = closing(code, at);
      expectsType = false;
    } else if (/\S/.test(sign)) expectsType = /[:|&?>]/.test(sign) && (sign !== '>' || code[at - 1] === '=');
  }
  return -1;
}

function docBefore(text: string, start: number): string {
  const before = text.slice(0, start).trimEnd();
  const open = before.lastIndexOf('/**');
  if (!before.endsWith('*/') || open < 0 || before.indexOf('*/', open) !== before.length - 2) return '';
  return before
    .slice(open + 3, -2)
    .split('\n')
    .map((line) => line.replace(/^\s*\* ?/, ''))
    .join('\n')
    .trim();
}

const DECLARATION =
  /^export\s+(?:default\s+)?(?:(?:async\s+)?function\s*\*?\s*(?<named>\w+)|const\s+(?<arrow>\w+)\s*(?::[^=\n]+)?=\s*(?:async\s*)?(?=[(<]))/gm;

/**
 * All exported functions, also arrow functions held by a constant. Of overloads only the first signature counts: it carries
 * the doc comment.
 */
export function exportedFunctions(text: string): ExportedFunction[] {
  const code = codeOnly(text);
  const found = new Map<string, ExportedFunction>();
  for (const match of code.matchAll(DECLARATION)) {
    const name = match.groups!.named ?? match.groups!.arrow!;
    let open = match.index + match[0].length;
    if (code[open] === '<') open = closing(code, open) + 1;
    const close = closing(code, open);
    const arrow = /^\s*(?::[^;]*?)?=>/.exec(code.slice(close + 1));
    if (match.groups!.arrow !== undefined && arrow === null) continue;
    const body = bodyStart(code, close + 1 + (match.groups!.arrow === undefined ? 0 : arrow![0].length));
    if (found.has(name)) continue;
    found.set(name, {
      name,
      doc: docBefore(text, match.index),
      params: splitList(code.slice(open + 1, close)).map(paramName),
      returnsNothing: /^\s*:\s*(void|never|Promise<void>)\s*({|;|=>)/.test(code.slice(close + 1)),
      throwsItself: body >= 0 && /\bthrow\b/.test(code.slice(body, closing(code, body))),
    });
  }
  return [...found.values()];
}
