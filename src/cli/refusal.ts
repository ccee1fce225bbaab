/** Why a call is not understood, and in which language that is told. */

import type { Language } from '../model/language.ts';
import type { RefusalWords } from './words/en-usage.ts';

export type Why = (words: RefusalWords) => string;

/** What the reader of arguments threw. */
export function notParsed(error: unknown): Why {
  const { code, message } = error as { code?: string; message: string };
  const flag = /'(-[^\s'=<,]+)/.exec(message)?.[1] ?? /(-[^\s'=<,]+)/.exec(message)?.[1];
  return (t) => (flag === undefined ? t.notUnderstood(message) : (t.option(code, flag) ?? t.notUnderstood(message)));
}

/** Told before the call is understood: the language stands in it, or it is English. */
export function languageAsked(args: readonly string[]): Language {
  const asked = args.some((one, i) => one === '--language=de' || (one === '--language' && args[i + 1] === 'de'));
  return asked ? 'de' : 'en';
}
