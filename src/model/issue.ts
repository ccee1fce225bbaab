/** What is wrong with a file: data, never thrown, the same on the command line and in the app. */

import type { Language } from './language.ts';

/** Words with their values, to be told in any language; a value may be a phrase itself. */
export interface Phrase {
  readonly id: string;
  readonly values: Readonly<Record<string, string | number | Phrase | readonly string[]>>;
}

export interface Issue {
  /** Stable and searchable, e.g. `UNKNOWN_KEY`. */
  readonly code: string;
  /** An `error` keeps the scene from opening; a `warning` is told and the scene opens. */
  readonly level: 'error' | 'warning';
  /** Place in the file, e.g. `zones[3].outline[2]`; empty for the file as a whole. */
  readonly path: string;
  /** Line of the file at which that place begins, from 1, where it is known. */
  readonly line?: number;
  /** What was found. */
  readonly got: string;
  /** What was expected, with unit. */
  readonly expected: string;
  /** One thing the user can do. */
  readonly mend: string;
  /** Which sentences these are and what they fill in, where they can be told in another language. */
  readonly said?: { readonly id: string; readonly values: Readonly<Record<string, string | number>> };
  /** Of messages on scene files: each of the three, to be told in another language. */
  readonly phrases?: { readonly got: Phrase; readonly expected: Phrase; readonly mend: Phrase };
}

const LINE_WORDS = {
  en: { error: 'error', warning: 'warning', line: 'line', at: 'at', found: 'found', expected: 'expected' },
  de: { error: 'Fehler', warning: 'Warnung', line: 'Zeile', at: 'bei', found: 'gefunden:', expected: 'erwartet:' },
} as const;

/**
 * The one wording of an issue, used by the command line and the app.
 * @param issue - the issue
 * @returns e.g. `error UNKNOWN_KEY at zones[0].outlin (line 12): found "outlin"; expected one of outline, …. Did you mean "outline"?`
 */
export function issueLine(issue: Issue): string {
  return issueLineIn(issue, 'en');
}

/** The same around an issue told in another language. */
export function issueLineIn(issue: Issue, language: Language): string {
  const words = LINE_WORDS[language];
  const line = issue.line === undefined ? '' : `${words.line} ${issue.line}`;
  const place = issue.path === '' ? line : `${issue.path}${line && ` (${line})`}`;
  return `${words[issue.level]} ${issue.code}${place && ` ${words.at} ${place}`}: ${words.found} ${issue.got}; ${words.expected} ${issue.expected}. ${issue.mend}`;
}
