/** Collects issues while a scene is checked; words are only made for those that will be shown. */

import type { Issue } from '../model/issue.ts';
import type { SceneIssueCode } from './issue-codes.ts';
import { MAX_ISSUES } from './limits.ts';
import { type Path, pathText } from './path.ts';
import { type IssueWords, phrase, worded } from './words/phrase.ts';

export class IssueList {
  readonly #lineAt: (path: Path) => number | undefined;
  readonly #shown: { readonly error: Issue[]; readonly warning: Issue[] } = { error: [], warning: [] };
  readonly #count = { error: 0, warning: 0 };

  constructor(lineAt: (path: Path) => number | undefined) {
    this.#lineAt = lineAt;
  }

  get hasErrors(): boolean {
    return this.#count.error > 0;
  }

  error(code: SceneIssueCode, path: Path, words: () => IssueWords): void {
    this.#add('error', code, path, words);
  }

  warning(code: SceneIssueCode, path: Path, words: () => IssueWords): void {
    this.#add('warning', code, path, words);
  }

  /** Line at which a place of the file begins. */
  lineAt(path: Path): number | undefined {
    return this.#lineAt(path);
  }

  /** Errors first, at most `MAX_ISSUES`, then one that counts the rest. */
  list(): readonly Issue[] {
    const shown = [...this.#shown.error, ...this.#shown.warning].slice(0, MAX_ISSUES);
    const more = this.#count.error + this.#count.warning - shown.length;
    if (more === 0) return shown;
    const level = this.hasErrors ? 'error' : 'warning';
    const words = worded(phrase('furtherMessages', { n: more }), phrase('messagesInList', { n: MAX_ISSUES }), phrase('mendAndOpen'));
    return [...shown, { code: 'MORE_ISSUES' satisfies SceneIssueCode, level, path: '', ...words }];
  }

  #add(level: 'error' | 'warning', code: SceneIssueCode, path: Path, words: () => IssueWords): void {
    this.#count[level] += 1;
    if (this.#shown[level].length >= MAX_ISSUES) return;
    const line = this.#lineAt(path);
    this.#shown[level].push({ code, level, path: pathText(path), ...(line === undefined ? {} : { line }), ...words() });
  }
}
