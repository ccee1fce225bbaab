/** Messages on scene files in any language: the same place, level and code, the sentences told anew. */

import type { Issue } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import { tell } from './words/phrase.ts';

/**
 * An issue in a language. What is not made of phrases stays as it was told.
 * @param issue - issue in whatever language
 * @param language - language wanted
 * @returns the issue with its sentences in that language
 */
export function issueIn(issue: Issue, language: Language): Issue {
  const { phrases } = issue;
  if (phrases === undefined) return issue;
  return { ...issue, got: tell(phrases.got, language), expected: tell(phrases.expected, language), mend: tell(phrases.mend, language) };
}
