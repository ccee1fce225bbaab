/** The states of an open scene, to go back and forth between. States share all that an edit left alone. */

import type { HistoryView, SceneEdit } from '../model/history.ts';

/** Steps that can be taken back. */
export const MOST_STEPS = 100;

interface Step<State> {
  readonly edit: SceneEdit;
  readonly before: State;
  readonly after: State;
  /** Edits of one gesture are one step. */
  readonly gesture: number | null;
}

export class History<State> {
  private past: readonly Step<State>[] = [];
  private future: readonly Step<State>[] = [];
  /** What could be done again before the last step: forgotten by it, but not where its gesture comes to nothing. */
  private undone: readonly Step<State>[] = [];
  private saved: State | null;
  private now: State;
  private readonly isSame: (one: State, other: State) => boolean;

  constructor(opened: State, unsaved = false, isSame: (one: State, other: State) => boolean = Object.is) {
    this.now = opened;
    this.isSame = isSame;
    this.saved = unsaved ? null : opened;
  }

  /** Takes a new state over; within one gesture the step before grows, and a gesture that ends where it began is none. */
  push(edit: SceneEdit, after: State, gesture: number | null): void {
    const last = this.past.at(-1);
    const grows = last !== undefined && gesture !== null && last.gesture === gesture && isOfSame(last.edit, edit);
    const step = grows ? { ...last, edit: joined(last.edit, edit), after } : { edit, before: this.now, after, gesture };
    const undone = grows ? this.undone : this.future;
    const kept = grows ? this.past.slice(0, -1) : this.past;
    if (changesNothing(step.edit) || this.isSame(step.before, step.after)) {
      this.past = kept;
      this.future = undone;
      this.now = step.before;
      return;
    }
    this.past = [...kept, step].slice(-MOST_STEPS);
    this.future = [];
    this.undone = undone;
    this.now = after;
  }

  /** The state one step back or forth, or null where there is none; it becomes the present one. */
  go(way: 'undo' | 'redo'): State | null {
    const step = way === 'undo' ? this.past.at(-1) : this.future[0];
    if (step === undefined) return null;
    if (way === 'undo') {
      this.past = this.past.slice(0, -1);
      this.future = [step, ...this.future];
      this.now = step.before;
    } else {
      // What is done again is complete: a later edit is a step of its own.
      this.past = [...this.past, { ...step, gesture: null }];
      this.future = this.future.slice(1);
      this.now = step.after;
    }
    return this.now;
  }

  get present(): State {
    return this.now;
  }

  markSaved(state: State): void {
    this.saved = state;
  }

  get isChanged(): boolean {
    return this.now !== this.saved;
  }

  view(): HistoryView {
    return { undo: this.past.at(-1)?.edit ?? null, redo: this.future[0]?.edit ?? null, changed: this.isChanged };
  }
}

function isOfSame(one: SceneEdit, other: SceneEdit): boolean {
  if (one.kind === 'thickness' && other.kind === 'thickness') return one.buildUp === other.buildUp && one.layer === other.layer;
  return one.kind === other.kind;
}

/** A gesture is told by where it began and what it came to. */
function joined(first: SceneEdit, last: SceneEdit): SceneEdit {
  return first.kind === 'thickness' && last.kind === 'thickness' ? { ...last, fromMm: first.fromMm } : last;
}

function changesNothing(edit: SceneEdit): boolean {
  return edit.kind === 'thickness' && edit.fromMm === edit.toMm;
}
