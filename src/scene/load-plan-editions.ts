/** Editions of load plans: which revision of a document is known from when, and which of two is the later one. */

import type { SceneBasis, SceneFile } from '../model/scene-file.ts';

export interface Edition {
  /** Null where it is not said. */
  readonly revision: string | null;
  /** ISO date of the document; null where it is not said or cannot be sorted. */
  readonly date: string | null;
}

const ISO_DATE = /\b\d{4}-\d{2}-\d{2}\b/;
const GERMAN_DATE = /\b(\d{2})\.(\d{2})\.(\d{4})\b/;
/** As people write it in a sentence: a word for revision, then capitals or a number. */
const REVISION = /\b(?:[Rr]ev(?:ision)?|REV|[Ii]ndex)\b\.?:?\s*([A-Z]{1,2}\d{0,2}|\d{1,3})\b/;
/** What load plans are called where no other document is meant. */
const LOAD_PLAN = /load plan|lastenplan|belastungsplan/i;

/** The date that a text tells first, as it can be sorted. */
function dateIn(text: string): string | null {
  const iso = ISO_DATE.exec(text)?.[0];
  const [, day, month, year] = GERMAN_DATE.exec(text) ?? [];
  return iso ?? (year === undefined ? null : `${year}-${month}-${day}`);
}

/** Names of documents are compared without case and double blanks. */
export const documentKey = (document: string): string => document.trim().replace(/\s+/g, ' ').toLowerCase();

/** Edition that a bay's load is taken from; null where neither revision nor date is said. */
export function editionOf(basis: SceneBasis | undefined): Edition | null {
  const revision = basis?.revision?.trim() || null;
  const date = basis?.date === undefined ? null : dateIn(basis.date);
  return revision === null && date === null ? null : { revision, date };
}

/**
 * Editions of a document that the sentences of the history tell of.
 * @param scene - the scene
 * @param document - name of the document; where the file knows only one, a sentence may call it the load plan
 * @returns in the order of the history
 */
export function editionsInHistory(scene: Pick<SceneFile, 'history' | 'deck'>, document: string): Edition[] {
  const key = documentKey(document);
  const documents = new Set(scene.deck.bays.flatMap(({ basis }) => (basis?.document?.trim() ? [documentKey(basis.document)] : [])));
  return (scene.history ?? []).flatMap(({ says }): Edition[] => {
    const named = documentKey(says).includes(key) || (documents.size === 1 && LOAD_PLAN.test(says));
    const revision = named ? REVISION.exec(says)?.[1] : undefined;
    return revision === undefined ? [] : [{ revision, date: dateIn(says) }];
  });
}

/** Whether an edition is earlier than another by its date or by its revision; what cannot be compared decides nothing. */
export function isEarlier(one: Edition, other: Edition): boolean {
  const byDate = one.date !== null && other.date !== null && one.date < other.date;
  return byDate || before(rankOf(one.revision), rankOf(other.revision));
}

interface Rank {
  readonly kind: string;
  readonly at: number;
}

function before(one: Rank | null, other: Rank | null): boolean {
  return one !== null && other !== null && one.kind === other.kind && one.at < other.at;
}

/** A … Z, AA …; 0, 1, 2 …; numbers behind the same letters. */
function rankOf(revision: string | null): Rank | null {
  const parts = /^([A-Za-z]{0,2})(\d{0,6})$/.exec(revision ?? '');
  if (parts === null || revision === '') return null;
  const [letters, digits] = [(parts[1] ?? '').toUpperCase(), parts[2] ?? ''];
  if (digits !== '') return { kind: `${letters}#`, at: Number(digits) };
  return { kind: 'letters', at: [...letters].reduce((at, letter) => at * 26 + letter.charCodeAt(0) - 64, 0) };
}
