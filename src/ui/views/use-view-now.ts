/** The view as it is seen now, ready to be kept. */

import { useCallback } from 'react';
import { viewFrom } from '../../edit/views.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { Point3M, SceneView } from '../../model/scene-file.ts';
import type { ViewState } from '../../store/view-store.ts';
import { cellCentre } from '../facts/place.ts';
import { useStores } from '../use-stores.ts';
import { lookOf } from '../walk/go-to-view.ts';

export interface ViewNow {
  readonly view: Pick<SceneView, 'eye' | 'target' | 'show'>;
  /** A cut that is seen from behind or from its end cannot be kept. */
  readonly cutLost: boolean;
}

/** Gives null without a 3D view. */
export function useViewNow(snapshot: Snapshot): () => ViewNow | null {
  const { view } = useStores();
  return useCallback(() => viewNow(snapshot, view.getState()), [snapshot, view]);
}

function viewNow(snapshot: Snapshot, { stand, stage, explode, map, cut, cell, walk }: ViewState): ViewNow | null {
  const seen = stand?.();
  if (!seen) return null;
  const faces = cut.lookDeg === lookOf(seen.eye, seen.target);
  const lift = walk?.lifted === true && cell !== null;
  // Lifted layers are those under the target.
  const target: Point3M = lift ? [...cellCentre(snapshot.grid, cell), seen.target[2]] : seen.target;
  const show = {
    stage: stage === null ? null : (snapshot.stages[stage]?.id ?? null),
    explode,
    map,
    cut: cut.on && faces ? cut.position : null,
    lift,
    plain: walk?.plain ?? false,
  };
  return { view: viewFrom({ eye: seen.eye, target }, show, snapshot), cutLost: cut.on && !faces };
}
