/** What a reader gathers: shapes, counts by layer, questions, changes and messages. */

import type { Answers, Choice, FactValue, Mend, Question } from '../model/drawing.ts';
import type { Issue } from '../model/issue.ts';
import { shorten } from '../scene/path.ts';
import type { ImportIssueCode } from './issue-codes.ts';
import { MAX_ENTITIES, MAX_ISSUES, MAX_POINTS, MAX_TEXT } from './limits.ts';
import { MEND_TEXT, type MendCode } from './mend-text.ts';
import { QUESTION_TEXT, type QuestionCode } from './question-text.ts';
import type { RawShape } from './raw-shapes.ts';

interface Words {
  readonly got: string;
  readonly expected: string;
  readonly mend: string;
  readonly path?: string;
  readonly line?: number;
}

/** Longest list of choices in a message [characters]. */
const MAX_CHOICES = 300;

/** Ends the reading of a file with one error; never leaves this folder. */
export class StopReading extends Error {
  readonly issue: Issue;
  constructor(issue: Issue) {
    super(issue.code);
    this.issue = issue;
  }
}

/** Makes an issue with a code of this folder. */
export function issueOf(code: ImportIssueCode, level: Issue['level'], { path = '', ...words }: Words): Issue {
  return { code, level, path, ...words };
}

export interface Asking {
  readonly id: string;
  readonly code: QuestionCode;
  readonly values?: Readonly<Record<string, FactValue>>;
  readonly choices: readonly Choice[];
  readonly guess: string;
  readonly certain?: boolean;
  /** Whether a free answer is allowed too. */
  readonly free?: (answer: string) => boolean;
}

interface LayerCounts {
  hidden: boolean;
  readonly used: Record<string, number>;
  readonly ignored: Record<string, number>;
}

export class Gathering {
  readonly layers = new Map<string, LayerCounts>();
  readonly mends: Mend[] = [];
  readonly questions: Question[] = [];
  shapes: RawShape[] = [];
  points = 0;
  readonly #answers: Answers;
  readonly #issues: Issue[] = [];
  readonly #kept = { looksActive: 0, sample: '', shortened: 0, lost: 0, lostSample: '' };
  readonly #layerNames = new Map<string, string>();
  #moreIssues = 0;
  #entities = 0;

  constructor(answers: Answers) {
    this.#answers = answers;
  }

  layer(name: string): LayerCounts {
    let layer = this.layers.get(name);
    if (layer === undefined) {
      layer = { hidden: false, used: Object.create(null), ignored: Object.create(null) };
      this.layers.set(name, layer);
    }
    return layer;
  }

  used(layer: string, kind: string): void {
    this.#count(this.layer(layer).used, kind);
  }

  ignored(layer: string, kind: string): void {
    this.#count(this.layer(layer).ignored, kind);
  }

  #count(counts: Record<string, number>, kind: string): void {
    counts[kind] = (counts[kind] ?? 0) + 1;
    this.#entities += 1;
    if (this.#entities > MAX_ENTITIES) {
      throw new StopReading(
        issueOf('TOO_MANY_ENTITIES', 'error', {
          got: `more than ${MAX_ENTITIES} entities`,
          expected: `at most ${MAX_ENTITIES}`,
          mend: 'Export only the layers of the deck.',
        }),
      );
    }
  }

  add(shape: RawShape): void {
    this.points += shape.kind === 'path' ? shape.points.length / 2 : 1;
    if (this.points > MAX_POINTS) {
      throw new StopReading(
        issueOf('TOO_MANY_POINTS', 'error', {
          got: `more than ${MAX_POINTS} points`,
          expected: `at most ${MAX_POINTS} points in one drawing`,
          mend: 'Too large here: export only the layers of the deck, or draw curves with fewer points.',
        }),
      );
    }
    this.shapes.push(shape);
  }

  /** A text from the file, as plain text of bounded length. */
  text(text: string): string {
    const clean = text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ').trim();
    if (/^[=@]|^[+-](?![\d.,\s])|<\s*\/?\s*(?:script|img|svg|iframe|a)\b/i.test(clean)) {
      this.#kept.looksActive += 1;
      if (this.#kept.sample === '') this.#kept.sample = clean.slice(0, 60);
    }
    if (/\p{L}\?\p{Ll}|\uFFFD/u.test(clean)) {
      this.#kept.lost += 1;
      if (this.#kept.lostSample === '') this.#kept.lostSample = clean.slice(0, 60);
    }
    if (clean.length <= MAX_TEXT) return clean;
    this.#kept.shortened += 1;
    return `${clean.slice(0, MAX_TEXT - 1)}…`;
  }

  /** Name of a layer as plain text; never empty. */
  layerName(raw: string): string {
    let name = this.#layerNames.get(raw);
    if (name === undefined) {
      name = this.text(raw) || '0';
      this.#layerNames.set(raw, name);
    }
    return name;
  }

  /** Says what became of texts; called once all are read. */
  tellTexts(): void {
    const { looksActive, sample, shortened, lost, lostSample } = this.#kept;
    if (lost > 0) {
      this.warning('TEXT_LOST', {
        got: `${lost} ${lost === 1 ? 'text' : 'texts'} with lost letters, for example "${lostSample}"`,
        expected: 'letters with accents and umlauts whole',
        mend: 'The letters were lost when the file was written; export it again, best in UTF-8, or check the names.',
      });
    }
    if (looksActive > 0) this.mend('TEXT_KEPT', { count: looksActive, sample });
    if (shortened > 0) this.mend('TEXT_SHORTENED', { count: shortened, most: MAX_TEXT });
  }

  mend(code: MendCode, values: Readonly<Record<string, FactValue>> = {}, layer?: string): void {
    this.mends.push({ code, ...(layer === undefined ? {} : { layer }), values, says: MEND_TEXT[code](values) });
  }

  /** Asks, and goes on with the answer or the best guess. */
  ask({ id, code, values = {}, choices, guess, certain = false, free }: Asking): string {
    const answer = Object.hasOwn(this.#answers, id) ? this.#answers[id] : undefined;
    const known = answer !== undefined && (choices.some(({ value }) => value === answer) || free?.(answer) === true);
    if (answer !== undefined && !known) {
      this.error('ANSWER_UNKNOWN', {
        path: id,
        got: `"${answer.slice(0, 60)}"`,
        expected: `one of ${shorten(choices.map(({ value }) => value).join(', '), MAX_CHOICES)}`,
        mend: 'Choose one of these.',
      });
    }
    const taken = known ? answer : guess;
    this.questions.push({ id, code, values, says: QUESTION_TEXT[code](values), choices, guess, taken, answered: known, certain });
    return taken;
  }

  /** Answer to a question that may not have come up. */
  answerTo(id: string): string | undefined {
    return Object.hasOwn(this.#answers, id) ? this.#answers[id] : undefined;
  }

  error(code: ImportIssueCode, words: Words): void {
    this.#add(issueOf(code, 'error', words));
  }

  warning(code: ImportIssueCode, words: Words): void {
    this.#add(issueOf(code, 'warning', words));
  }

  #add(issue: Issue): void {
    if (this.#issues.length < MAX_ISSUES) this.#issues.push(issue);
    else this.#moreIssues += 1;
  }

  issues(): readonly Issue[] {
    if (this.#moreIssues === 0) return this.#issues;
    const more = issueOf('MORE_ISSUES', 'warning', {
      got: `${this.#moreIssues} further ${this.#moreIssues === 1 ? 'message' : 'messages'}`,
      expected: `at most ${MAX_ISSUES} in one list`,
      mend: 'Mend those above and read the file again.',
    });
    return [...this.#issues, more];
  }
}
