/** Messages on drawings: made of an id and what their sentences fill in. */

import type { Issue } from '../model/issue.ts';
import { type IssueId, type IssueValues, tell, type Values } from './words/import-words.ts';

export interface IssuePlace {
  readonly path?: string;
  readonly line?: number;
}

/**
 * Makes an issue with a code of this folder, told in English.
 * @param level - an error keeps the drawing from being used
 * @param id - its code, or with a variant where the code has several sentences
 * @param values - what the sentences fill in
 * @param place - layer or place in the file, and its line
 */
export function issueOf<I extends IssueId>(
  level: Issue['level'],
  id: I,
  values: IssueValues<I>,
  { path = '', line }: IssuePlace = {},
): Issue {
  const said = { id, values: values as Values };
  const words = tell('issues', id, said.values, 'en') ?? { got: id, expected: id, mend: id };
  return { code: id.replace(/:.*$/, ''), level, path, ...(line === undefined ? {} : { line }), ...words, said };
}
