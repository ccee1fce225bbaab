/** Reads TypeScript as text for the contract tests: files of src, and the same text with comments or strings blanked. */

import { readdirSync, readFileSync } from 'node:fs';
import { resolve, sep } from 'node:path';

export const ROOT = resolve(import.meta.dirname, '../..');
export const SRC = resolve(ROOT, 'src');

/** TypeScript files of src, or of one of its folders, as paths from src with `/`. */
export function sourceFiles(folder = ''): string[] {
  return readdirSync(SRC, { recursive: true, encoding: 'utf8' })
    .map((file) => file.split(sep).join('/'))
    .filter((file) => file.startsWith(folder && `${folder}/`) && /\.tsx?$/.test(file))
    .sort();
}

export function readSource(file: string): string {
  return readFileSync(resolve(SRC, file), 'utf8');
}

/**
 * Comments, quoted text, templates and regular expressions, in that order of the alternatives. A slash starts a regular
 * expression only after a sign that cannot end an operand. A template ends at its next backtick.
 */
const TOKENS =
  /(?<comment>\/\/[^\n]*|\/\*[\s\S]*?\*\/)|(?<string>'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\[\s\S]|[^`\\])*`)|(?<regex>(?<=(?:^|[(,=:[!&|?{};]|return|=>)\s*)\/(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n[])+\/[a-z]*)/g;

const blank = (text: string) => text.replace(/[^\n]/g, ' ');

/** The text without comments; every other sign keeps its place. */
export function withoutComments(text: string): string {
  return text.replace(TOKENS, (token, comment: string | undefined) => (comment === undefined ? token : blank(token)));
}

/** The text without comments, and with only the quotes left of strings; every other sign keeps its place. */
export function codeOnly(text: string): string {
  return text.replace(TOKENS, (token, comment: string | undefined) =>
    comment === undefined ? token[0] + blank(token.slice(1, -1)) + token.at(-1) : blank(token),
  );
}
