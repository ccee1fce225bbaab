/** What the history keeps of a load plan that is entered: which edition, for which bays. */

import type { ScenePatch } from '../model/history.ts';
import type { SceneBay, SceneFile, SceneHistoryEntry } from '../model/scene-file.ts';

export interface EnteredPlan {
  readonly document: string;
  readonly revision: string;
  /** Null while none is given. */
  readonly date: string | null;
}

export interface PlanNote {
  /** Day of the entry, ISO. */
  readonly on: string;
  /** The sentence that is kept. */
  readonly says: (plan: EnteredPlan, bays: string) => string;
}

/**
 * Adds to a change of bays what the history keeps of the load plan entered by it. Entries of the same day grow and change with what is
 * typed further, so that an edition is told once; entries of other days stay.
 * @param scene - scene as it stands
 * @param patch - the change of its bays
 * @param note - day and sentence
 * @returns the patch, with the history where the document, revision or date of a bay changed
 */
export function withPlanNote(scene: SceneFile, patch: ScenePatch, note: PlanNote): ScenePatch {
  const was = new Map(scene.deck.bays.map((bay) => [bay.id, enteredOf(bay)]));
  const kept: History = scene.history ?? [];
  let history = kept;
  for (const bay of patch.deck?.bays ?? []) {
    // A new bay, as of a split, has its plan from another.
    if (!was.has(bay.id)) continue;
    const [old, now] = [was.get(bay.id) ?? null, enteredOf(bay)];
    if (old !== null && now !== null && sameAs(old, now)) continue;
    if (old !== null) history = withoutBay(history, bay.id, old, note);
    if (now !== null) history = withBay(history, bay.id, now, note);
  }
  return history === kept ? patch : { ...patch, history: history.length > 0 ? history : null };
}

function enteredOf({ basis }: SceneBay): EnteredPlan | null {
  const [document, revision, date] = [basis?.document?.trim(), basis?.revision?.trim(), basis?.date?.trim()];
  return document && revision ? { document, revision, date: date || null } : null;
}

function sameAs(one: EnteredPlan, other: EnteredPlan): boolean {
  return one.document === other.document && one.revision === other.revision && one.date === other.date;
}

type History = readonly SceneHistoryEntry[];

/** Stands for the bays in a sentence, so that those of an entry can be read again. */
const BAYS = '\u0000';

/** Bays that an entry of the day names for this plan; null where it is about something else. */
function baysOf({ on, says }: SceneHistoryEntry, plan: EnteredPlan, note: PlanNote): string[] | null {
  const [head = '', tail = ''] = note.says(plan, BAYS).split(BAYS);
  if (on !== note.on || !says.startsWith(head) || !says.endsWith(tail) || says.length < head.length + tail.length) return null;
  return says.slice(head.length, says.length - tail.length).split(', ');
}

function withoutBay(history: History, bay: string, plan: EnteredPlan, note: PlanNote): History {
  const next = history.flatMap((entry) => {
    const bays = baysOf(entry, plan, note);
    if (!bays?.includes(bay)) return [entry];
    const left = bays.filter((id) => id !== bay);
    return left.length === 0 ? [] : [{ ...entry, says: note.says(plan, left.join(', ')) }];
  });
  return next.length === history.length && next.every((entry, i) => entry === history[i]) ? history : next;
}

function withBay(history: History, bay: string, plan: EnteredPlan, note: PlanNote): History {
  const at = history.findIndex((entry) => baysOf(entry, plan, note) !== null);
  const bays = at < 0 ? [] : (baysOf(history[at] as SceneHistoryEntry, plan, note) ?? []);
  const entry = { on: note.on, says: note.says(plan, [...bays.filter((id) => id !== bay), bay].join(', ')) };
  return at < 0 ? [...history, entry] : history.map((one, i) => (i === at ? entry : one));
}
