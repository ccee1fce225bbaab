/** All sentences on files that are read, by language. What lacks in one does not compile. */

import type { FactValue } from '../../model/drawing.ts';
import type { Language } from '../../model/language.ts';
import { ISSUES_DE } from './de-issues.ts';
import { MENDS_DE } from './de-mends.ts';
import { CHOICES_DE, QUESTIONS_DE } from './de-questions.ts';
import { ISSUES_EN, type Issues, type IssueWords } from './en-issues.ts';
import { MENDS_EN, type Mends } from './en-mends.ts';
import { CHOICES_EN, type Choices, QUESTIONS_EN, type Questions } from './en-questions.ts';

export type Values = Readonly<Record<string, FactValue>>;
export type QuestionCode = keyof Questions;
export type ChoiceCode = keyof Choices;
export type MendCode = keyof Mends;
export type IssueId = keyof Issues;

/** What a sentence fills in. */
export type QuestionValues<C extends QuestionCode> = Parameters<Questions[C]>[0];
export type ChoiceValues<C extends ChoiceCode> = Parameters<Choices[C]>[0];
export type MendValues<C extends MendCode> = Parameters<Mends[C]>[0];
export type IssueValues<C extends IssueId> = Parameters<Issues[C]>[0];

interface Words {
  readonly questions: Questions;
  readonly choices: Choices;
  readonly mends: Mends;
  readonly issues: Issues;
}

const WORDS: Readonly<Record<Language, Words>> = {
  en: { questions: QUESTIONS_EN, choices: CHOICES_EN, mends: MENDS_EN, issues: ISSUES_EN },
  de: { questions: QUESTIONS_DE, choices: CHOICES_DE, mends: MENDS_DE, issues: ISSUES_DE },
};

type Told<K extends keyof Words> = Words[K][keyof Words[K]] extends (...values: never[]) => infer T ? T : never;

/** The sentence with this code; null where there is none, as in a result of another version. */
export function tell<K extends keyof Words>(part: K, code: string, values: Values, language: Language): Told<K> | null {
  const words: object = WORDS[language][part];
  // Codes and values were made together, by the functions that ask for the right ones.
  return Object.hasOwn(words, code) ? (words as Record<string, (values: Values) => Told<K>>)[code](values) : null;
}

export type { IssueWords };
