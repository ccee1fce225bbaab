/** What calls of `diff` and `lighten` ask for. */

import { parseArgs } from 'node:util';
import { isLanguage, type Language } from '../model/language.ts';
import { LIGHTEN_AIMS } from '../model/lighten.ts';
import type { LightenCall } from './lighten-run.ts';
import { notParsed, type Why } from './refusal.ts';

export type ChangeCall =
  | { readonly command: 'diff'; readonly before: string; readonly after: string; readonly json: boolean; readonly language: Language }
  | ({ readonly command: 'lighten'; readonly file: string } & LightenCall);

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
 * @returns the call, null for help; a function says why it was not understood
 */
export function readChangeCall(command: ChangeCall['command'], args: readonly string[]): ChangeCall | Why | null {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    return notParsed(error);
  }
  const { values, positionals } = parsed;
  if (values.help) return null;
  const { json = false, zones, locked, out, language = 'en' } = values;
  if (!isLanguage(language)) return (t) => t.language(language);
  if (command === 'diff') {
    const stray = (['by', 'zones', 'locked', 'out'] as const).find((flag) => values[flag] !== undefined);
    if (stray) return (t) => t.ofLighten(stray);
    if (positionals.length !== 2) return (t) => t.twoScenes(positionals.length);
    return { command, before: positionals[0], after: positionals[1], json, language };
  }
  if (positionals.length !== 1) return (t) => t.oneScene(positionals.length);
  const by = LIGHTEN_AIMS.find((aim) => aim === values.by);
  const { by: wanted } = values;
  if (wanted !== undefined && !by) return (t) => t.by(wanted);
  return { command, file: positionals[0], by, zones: zones?.split(','), locked: locked?.split(','), json, out, language };
}

function parse(args: readonly string[]) {
  return parseArgs({ args: [...args], allowPositionals: true, options: OPTIONS });
}
