/** The last states of scenes in the browser's own storage; every call fails where the browser refuses it. */

import type { KeptState } from '../../model/kept-state.ts';

/** States that are kept; older ones make room. */
export const MOST_KEPT = 20;

const NAME = 'loamdeck';
const STORE = 'states';

function done<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function withStates<T>(mode: IDBTransactionMode, work: (states: IDBObjectStore) => Promise<T>): Promise<T> {
  const opening = indexedDB.open(NAME, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE, { keyPath: 'id', autoIncrement: true });
  const database = await done(opening);
  try {
    const transaction = database.transaction(STORE, mode);
    const ended = new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error);
    });
    const [result] = await Promise.all([work(transaction.objectStore(STORE)), ended]);
    return result;
  } finally {
    database.close();
  }
}

export function keepState(state: Omit<KeptState, 'id'>): Promise<void> {
  return withStates('readwrite', async (states) => {
    await done(states.add(state));
    const ids = await done(states.getAllKeys());
    for (const id of ids.slice(0, -MOST_KEPT)) states.delete(id);
  });
}

/** Newest first. */
export async function keptStates(): Promise<KeptState[]> {
  const all = await withStates('readonly', (states) => done(states.getAll() as IDBRequest<KeptState[]>));
  return all.reverse();
}

/** What a run left unsaved was taken over or is not wanted: it stays in the list, but is not offered again. */
export function settle(session: string): Promise<void> {
  return withStates('readwrite', async (states) => {
    const all = (await done(states.getAll())) as KeptState[];
    for (const state of all) if (state.session === session && state.unsaved) states.put({ ...state, unsaved: false });
  });
}

/**
 * The state to offer on a start: the newest of a run that has ended and left it unsaved.
 * @param states - newest first
 * @param running - sessions of tabs that are still open
 */
export function leftUnsaved(states: readonly KeptState[], running: ReadonlySet<string>): KeptState | null {
  const seen = new Set<string>();
  for (const state of states) {
    if (running.has(state.session) || seen.has(state.session)) continue;
    seen.add(state.session);
    if (state.unsaved) return state;
  }
  return null;
}
