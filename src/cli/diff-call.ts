/** What calls of `diff` and `lighten` ask for. */

import { parseArgs } from 'node:util';
import { isLanguage, type Language } from '../model/language.ts';
import { LIGHTEN_AIMS } from '../model/lighten.ts';
import type { LightenCall } from './lighten-run.ts';

/** Why a language was not understood. */
export const languageRefused = (found: string) => `--language takes en or de, found "${found}".`;

export type ChangeCall =
  | { readonly command: 'diff'; readonly before: string; readonly after: string; readonly json: boolean; readonly language: Language }
  | ({ readonly command: 'lighten'; readonly file: string } & LightenCall);

export const CHANGE_USAGE = `     npm run --silent diff -- A B [--json] [--language en|de]
     npm run --silent lighten -- FILE [--by cost|weight|change] [--zones A,B] [--locked A,B] [--out NEW] [--json] [--language en|de]
`;

const OPTIONS = {
  json: { type: 'boolean' },
  by: { type: 'string' },
  zones: { type: 'string' },
  locked: { type: 'string' },
  out: { type: 'string' },
  language: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
} as const;

/**
 * Reads the call.
 * @param command - which of the two
 * @param args - arguments after it
 * @returns the call, null for help; a text says why it was not understood
 */
export function readChangeCall(command: ChangeCall['command'], args: readonly string[]): ChangeCall | string | null {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    return `The call was not understood: ${(error as Error).message}`;
  }
  const { values, positionals } = parsed;
  if (values.help) return null;
  const { json = false, zones, locked, out, language = 'en' } = values;
  if (!isLanguage(language)) return languageRefused(language);
  if (command === 'diff') {
    const stray = (['by', 'zones', 'locked', 'out'] as const).find((flag) => values[flag] !== undefined);
    if (stray) return `--${stray} belongs to lighten.`;
    if (positionals.length !== 2) return `Two scene files were expected, ${positionals.length} given: the one before, then the one after.`;
    return { command, before: positionals[0], after: positionals[1], json, language };
  }
  if (positionals.length !== 1)
    return `One scene file was expected, ${positionals.length === 0 ? 'none was' : `${positionals.length} were`} given.`;
  const by = LIGHTEN_AIMS.find((aim) => aim === values.by);
  if (values.by !== undefined && !by) return `--by takes one of: ${LIGHTEN_AIMS.join(', ')}; found "${values.by}".`;
  return { command, file: positionals[0], by, zones: zones?.split(','), locked: locked?.split(','), json, out, language };
}

function parse(args: readonly string[]) {
  return parseArgs({ args: [...args], allowPositionals: true, options: OPTIONS });
}
