/** Messages on scene files in another language: the same place, level and code, the sentences told anew. */

import type { Issue } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import { EXPECTED_DE, GOT_DE, KIND_OF_VALUE_DE, type Phrase, THINGS_DE } from './issue-words-de.ts';
import { MEND_DE } from './mend-words-de.ts';

interface Compiled {
  readonly matches: RegExp;
  readonly keys: readonly string[];
  readonly german: string;
}

const SLOT = /\{(\w+\*?)\}/g;

function compile(phrases: readonly Phrase[]): readonly Compiled[] {
  return phrases.map(([english, german]) => {
    const keys = [...english.matchAll(SLOT)].map(([, key]) => key ?? '');
    const literals = english.split(/\{\w+\*?\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&'));
    return { matches: new RegExp(`^${literals.join('(.+?)')}$`, 's'), keys, german };
  });
}

const EXPECTED = compile(EXPECTED_DE);
const KINDS = compile(KIND_OF_VALUE_DE);
const GOT = compile(GOT_DE);
const MEND = compile(MEND_DE);
const THINGS = compile([...EXPECTED_DE, ...GOT_DE, ...THINGS_DE]);

/** The first phrase that fits; `{name*}` slots are phrases themselves. Null where none does. */
function told(text: string, phrases: readonly Compiled[]): string | null {
  for (const { matches, keys, german } of phrases) {
    const found = matches.exec(text);
    if (!found) continue;
    return german.replace(SLOT, (_, key: string) => {
      const value = found[keys.indexOf(key) + 1] ?? '';
      // A long list of names ends in how many are left out.
      if (key === 'list') return value.replace(/ and (\d+) more$/, ' (und $1 weitere)');
      return key.endsWith('*') ? (told(value, THINGS) ?? value) : value;
    });
  }
  return null;
}

/** What a key is to hold: its own name stands for the meaning that the schema gives. */
function expectedDe(text: string, path: string): string | null {
  const whole = told(text, EXPECTED);
  if (whole !== null) return whole;
  const kind = told(text, KINDS);
  if (kind !== null) return kind;
  for (let at = text.indexOf(': '); at >= 0; at = text.indexOf(': ', at + 1)) {
    const rest = told(text.slice(at + 2), KINDS);
    const key = /([A-Za-z]\w*)(?:\[\d+\])*$/.exec(path)?.[1];
    if (rest !== null) return key === undefined ? rest : `"${key}": ${rest}`;
  }
  return null;
}

function mendDe(text: string): string | null {
  const psf = /^(.*) (Was psf meant\?.*)$/s.exec(text);
  const parts = psf ? [psf[1] ?? '', psf[2] ?? ''] : [text];
  const all = parts.map((part) => told(part, MEND));
  return all.includes(null) ? null : all.join(' ');
}

/**
 * An issue in a language. What has no words in it stays in English.
 * @param issue - issue in English
 * @param language - language wanted
 * @returns the issue with its sentences in that language
 */
export function issueIn(issue: Issue, language: Language): Issue {
  if (language === 'en') return issue;
  return {
    ...issue,
    got: told(issue.got, GOT) ?? issue.got,
    expected: expectedDe(issue.expected, issue.path) ?? issue.expected,
    mend: mendDe(issue.mend) ?? issue.mend,
  };
}
