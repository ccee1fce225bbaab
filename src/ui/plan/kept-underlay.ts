/** The picture below the plan, kept in the browser's own storage for the next visit; one per name of a scene. */

import type { Underlay } from '../../store/plan-draw.ts';

const NAME = 'loamdeck-underlay';
const STORE = 'pictures';

const done = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

async function withPictures<T>(mode: IDBTransactionMode, work: (store: IDBObjectStore) => IDBRequest<T>): Promise<T> {
  const opening = indexedDB.open(NAME, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
  const database = await done(opening);
  try {
    return await done(work(database.transaction(STORE, mode).objectStore(STORE)));
  } finally {
    database.close();
  }
}

/** False where the browser keeps nothing. */
export async function keepUnderlay(scene: string, underlay: Underlay | null): Promise<boolean> {
  try {
    if (underlay === null) {
      await withPictures('readwrite', (store) => store.delete(scene));
      return true;
    }
    await withPictures('readwrite', (store) => store.put(underlay, scene));
    return true;
  } catch {
    return false;
  }
}

export async function keptUnderlay(scene: string): Promise<Underlay | null> {
  try {
    return (await withPictures('readonly', (store) => store.get(scene) as IDBRequest<Underlay | undefined>)) ?? null;
  } catch {
    return null;
  }
}
