/** What lies below the plan, a picture and lines, kept in the browser's own storage for the next visit; one each per name of a scene. */

import type { Underlay } from '../../store/plan-draw.ts';
import type { UnderlayLines } from '../../store/underlay-lines.ts';

interface Kept {
  readonly pictures: Underlay;
  readonly lines: UnderlayLines;
}
type Kind = keyof Kept;

const NAME = 'loamdeck-underlay';
/** 2: lines. */
const VERSION = 2;
const KINDS: readonly Kind[] = ['pictures', 'lines'];

const done = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

async function withKept<T>(kind: Kind, mode: IDBTransactionMode, work: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const opening = indexedDB.open(NAME, VERSION);
  opening.onupgradeneeded = () => {
    const { result } = opening;
    for (const one of KINDS) if (!result.objectStoreNames.contains(one)) result.createObjectStore(one);
  };
  const database = await done(opening);
  try {
    return await done(work(database.transaction(kind, mode).objectStore(kind)));
  } finally {
    database.close();
  }
}

/** False where the browser keeps nothing. */
export async function keepUnder<K extends Kind>(kind: K, scene: string, value: Kept[K] | null): Promise<boolean> {
  try {
    if (value === null) await withKept(kind, 'readwrite', (store) => store.delete(scene));
    else await withKept(kind, 'readwrite', (store) => store.put(value, scene));
    return true;
  } catch {
    return false;
  }
}

export async function keptUnder<K extends Kind>(kind: K, scene: string): Promise<Kept[K] | null> {
  try {
    return (await withKept(kind, 'readonly', (store) => store.get(scene) as IDBRequest<Kept[K] | undefined>)) ?? null;
  } catch {
    return null;
  }
}
