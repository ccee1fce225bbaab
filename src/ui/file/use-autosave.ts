/** Keeps copies of changed scenes in the browser, and offers on a start what a run before left unsaved. */

import { useCallback, useEffect, useState } from 'react';
import type { KeptState } from '../../model/kept-state.ts';
import type { SceneState, SceneStore } from '../../store/scene-store.ts';
import { useStores } from '../use-stores.ts';
import { keepState, keptStates, leftUnsaved, settle } from './kept-states.ts';
import { holdSession, runningSessions, SESSION } from './session-lock.ts';

/** A change is kept after this long at the latest. */
const WAIT_MS = 2000;

export interface Autosave {
  /** Left unsaved by a run before; null where there is none, or it was answered. */
  readonly offered: KeptState | null;
  /** The browser keeps no copies. */
  readonly refused: boolean;
  openState(state: KeptState): Promise<void>;
  discard(state: KeptState): Promise<void>;
}

export function useAutosave(): Autosave {
  const { scene } = useStores();
  const [offered, setOffered] = useState<KeptState | null>(null);
  const [refused, setRefused] = useState(false);
  const tried = useCallback(async (work: () => Promise<void>) => {
    try {
      await work();
      setRefused(false);
    } catch {
      setRefused(true);
    }
  }, []);
  useEffect(() => {
    holdSession();
    void tried(async () => setOffered(leftUnsaved(await keptStates(), await runningSessions())));
    return keepChanges(scene, (unsaved) => tried(() => keepNow(scene, unsaved)));
  }, [scene, tried]);
  const discard = async (state: KeptState) => {
    await tried(() => settle(state.session));
    // Gone from the screen only once the answer is stored: a reload right after it would ask again.
    setOffered(null);
  };
  return {
    offered,
    refused,
    discard,
    async openState(state) {
      await scene.getState().openText(state.fileName, state.text, true);
      // A state that no longer opens stays on offer.
      if (scene.getState().refused !== null) return;
      await tried(() => keepNow(scene, true));
      if (state.session !== SESSION) await discard(state);
    },
  };
}

async function keepNow(scene: SceneStore, unsaved: boolean): Promise<void> {
  const { snapshot, fileName, sceneText } = scene.getState();
  if (snapshot === null) return;
  const { text } = await sceneText('copy');
  await keepState({ session: SESSION, at: Date.now(), name: snapshot.scene.name, fileName, text, unsaved });
}

/** The same scene lies in a file now, or everything was undone. */
function isSettled(now: SceneState, before: SceneState): boolean {
  if (now.history.changed || !before.history.changed) return false;
  return (now.saved !== null && now.saved !== before.saved) || now.history.redo !== null;
}

/** @returns what ends it */
function keepChanges(scene: SceneStore, keep: (unsaved: boolean) => Promise<void>): () => void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  const stop = () => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
  };
  const unsubscribe = scene.subscribe((now, before) => {
    if (isSettled(now, before)) {
      stop();
      void keep(false);
    } else if (now.history.changed && now.history !== before.history) {
      // Not put off by further changes: a long drag is kept on its way.
      timer ??= setTimeout(() => {
        timer = null;
        if (scene.getState().history.changed) void keep(true);
      }, WAIT_MS);
    }
  });
  return () => {
    stop();
    unsubscribe();
  };
}
