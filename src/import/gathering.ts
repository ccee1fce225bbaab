/** What a reader gathers: shapes, counts by layer, questions, changes and messages. */

import type { Answers, Choice, Mend, Question } from '../model/drawing.ts';
import type { Issue } from '../model/issue.ts';
import type { PointM } from '../model/scene-file.ts';
import { shorten } from '../scene/path.ts';
import { type IssuePlace, issueOf } from './issue-of.ts';
import { MAX_ENTITIES, MAX_ISSUES, MAX_POINTS, MAX_TEXT } from './limits.ts';
import type { RawShape } from './raw-shapes.ts';
import {
  type ChoiceCode,
  type ChoiceValues,
  type IssueId,
  type IssueValues,
  type MendCode,
  type MendValues,
  type QuestionCode,
  type QuestionValues,
  tell,
  type Values,
} from './words/import-words.ts';
import { type KindNote, notedKind, type WholeKind } from './words/kind-words.ts';

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

/** An answer to choose. */
export function choiceOf<C extends ChoiceCode>(value: string, code: C, values: ChoiceValues<C>, sizeM?: PointM): Choice {
  return { value, code, values: values as Values, says: tell('choices', code, values as Values, 'en') ?? code, ...(sizeM && { sizeM }) };
}

export interface Asking<C extends QuestionCode> {
  readonly id: string;
  readonly code: C;
  readonly values: QuestionValues<C>;
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

  /** Counts what was left out: a kind of its own, or the file's name for it and why. */
  ignored(layer: string, kind: WholeKind): void;
  ignored(layer: string, name: string, note: KindNote | null): void;
  ignored(layer: string, kind: string, note: KindNote | null = null): void {
    this.#count(this.layer(layer).ignored, note === null ? kind : notedKind(kind, note));
  }

  #count(counts: Record<string, number>, kind: string): void {
    counts[kind] = (counts[kind] ?? 0) + 1;
    this.#entities += 1;
    if (this.#entities > MAX_ENTITIES) {
      throw new StopReading(issueOf('error', 'TOO_MANY_ENTITIES', { most: MAX_ENTITIES }));
    }
  }

  add(shape: RawShape): void {
    this.points += shape.kind === 'path' ? shape.points.length / 2 : 1;
    if (this.points > MAX_POINTS) {
      throw new StopReading(issueOf('error', 'TOO_MANY_POINTS', { most: MAX_POINTS }));
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
    if (lost > 0) this.warning('TEXT_LOST', { count: lost, sample: lostSample });
    if (looksActive > 0) this.mend('TEXT_KEPT', { count: looksActive, sample });
    if (shortened > 0) this.mend('TEXT_SHORTENED', { count: shortened, most: MAX_TEXT });
  }

  mend<C extends MendCode>(code: C, values: MendValues<C>, layer?: string): void {
    const says = tell('mends', code, values as Values, 'en') ?? code;
    this.mends.push({ code, ...(layer === undefined ? {} : { layer }), values: values as Values, says });
  }

  /** Asks, and goes on with the answer or the best guess. */
  ask<C extends QuestionCode>({ id, code, values, choices, guess, certain = false, free }: Asking<C>): string {
    const answer = Object.hasOwn(this.#answers, id) ? this.#answers[id] : undefined;
    const known = answer !== undefined && (choices.some(({ value }) => value === answer) || free?.(answer) === true);
    if (answer !== undefined && !known) {
      const offered = shorten(choices.map(({ value }) => value).join(', '), MAX_CHOICES);
      this.error('ANSWER_UNKNOWN', { answer: answer.slice(0, 60), choices: offered }, { path: id });
    }
    const taken = known ? answer : guess;
    const says = tell('questions', code, values as Values, 'en') ?? code;
    this.questions.push({ id, code, values: values as Values, says, choices, guess, taken, answered: known, certain });
    return taken;
  }

  /** Answer to a question that may not have come up. */
  answerTo(id: string): string | undefined {
    return Object.hasOwn(this.#answers, id) ? this.#answers[id] : undefined;
  }

  error<I extends IssueId>(id: I, values: IssueValues<I>, at?: IssuePlace): void {
    this.#add(issueOf('error', id, values, at));
  }

  warning<I extends IssueId>(id: I, values: IssueValues<I>, at?: IssuePlace): void {
    this.#add(issueOf('warning', id, values, at));
  }

  #add(issue: Issue): void {
    if (this.#issues.length < MAX_ISSUES) this.#issues.push(issue);
    else this.#moreIssues += 1;
  }

  issues(): readonly Issue[] {
    if (this.#moreIssues === 0) return this.#issues;
    return [...this.#issues, issueOf('warning', 'MORE_ISSUES', { count: this.#moreIssues, most: MAX_ISSUES })];
  }
}
