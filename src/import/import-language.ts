/** What was read of a file, told in another language: the same codes and values, the sentences told anew. */

import type { Choice, ImportResult, Mend, Question } from '../model/drawing.ts';
import type { Issue } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import { issueIn } from '../scene/issue-language.ts';
import { tell } from './words/import-words.ts';

/**
 * A result of reading, with questions, changes and messages in a language.
 * @param result - as it was read, in whatever language
 * @param language - language wanted
 * @returns the same with its sentences told in that language
 */
export function importIn(result: ImportResult, language: Language): ImportResult {
  return {
    ...result,
    questions: result.questions.map((question) => questionIn(question, language)),
    mends: result.mends.map((mend) => mendIn(mend, language)),
    issues: result.issues.map((issue) => importIssueIn(issue, language)),
  };
}

function questionIn(question: Question, language: Language): Question {
  const { code, values, choices } = question;
  const says = tell('questions', code, values, language) ?? question.says;
  return { ...question, says, choices: choices.map((choice) => choiceIn(choice, language)) };
}

function choiceIn(choice: Choice, language: Language): Choice {
  return { ...choice, says: tell('choices', choice.code, choice.values, language) ?? choice.says };
}

/** A change made while reading, in a language. */
export function mendIn(mend: Mend, language: Language): Mend {
  return { ...mend, says: tell('mends', mend.code, mend.values, language) ?? mend.says };
}

/** A message on a drawing, a draft or the scene made of it, in a language. */
export function importIssueIn(issue: Issue, language: Language): Issue {
  if (issue.said === undefined) return issueIn(issue, language);
  return { ...issue, ...tell('issues', issue.said.id, issue.said.values, language) };
}
