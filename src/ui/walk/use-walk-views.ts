/** Going from view to view, and between the bare deck and the finished garden. */

import { useEffect, useMemo, useState } from 'react';
import type { Snapshot } from '../../model/engine.ts';
import type { SceneView } from '../../model/scene-file.ts';
import { walkViews } from '../facts/walk-views.ts';
import { useTexts } from '../language.ts';
import { useStores, useView } from '../use-stores.ts';
import { goToView } from './go-to-view.ts';

/** All stages together take no longer than this [ms]. */
const CHANGE_MS = 2600;
const LONGEST_STEP_MS = 420;

export interface WalkViews {
  readonly views: readonly SceneView[];
  go(at: number): void;
  step(by: number): void;
}

export function useWalkViews(snapshot: Snapshot): WalkViews {
  const { view: store } = useStores();
  const words = useTexts().walk.made;
  const views = useMemo(() => walkViews(snapshot, words), [snapshot, words]);
  return useMemo(() => {
    const go = (at: number) => {
      const index = Math.min(views.length - 1, Math.max(0, at));
      const view = views[index];
      if (view !== undefined) goToView(store, snapshot, view, index);
    };
    return { views, go, step: (by) => go((store.getState().walk?.at ?? 0) + by) };
  }, [views, store, snapshot]);
}

/** Steps through the stages by itself while `changing`; with still pictures it is there at once. */
export function useBeforeAfter(stages: number): () => void {
  const { view: store } = useStores();
  const changing = useView((state) => state.walk?.changing ?? false);
  const towards = useView((state) => state.walk?.bare ?? false);
  const [up, setUp] = useState(false);
  useEffect(() => {
    if (!changing) return;
    const timer = setInterval(
      () => {
        const { walk, stage, showStage, setWalk } = store.getState();
        if (walk === null) return;
        const at = walk.bare ? -1 : (stage ?? stages);
        const next = at + (up ? 1 : -1);
        setWalk({ bare: next < 0, changing: up ? next < stages : next >= 0 });
        showStage(next < 0 || next >= stages ? null : next);
      },
      Math.min(LONGEST_STEP_MS, CHANGE_MS / (stages + 1)),
    );
    return () => clearInterval(timer);
  }, [changing, store, stages, up]);
  return () => {
    const { stillMotion, setWalk, showStage, pickCell } = store.getState();
    pickCell(null);
    setUp(towards);
    if (stillMotion) showStage(null);
    setWalk(stillMotion ? { bare: !towards, lifted: false, onFoot: false } : { changing: true, lifted: false, onFoot: false });
  };
}
