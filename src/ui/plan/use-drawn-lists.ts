/** The parts of the plan as they can be seen, caught and chosen: hidden ones are not there, locked ones only attract. */

import { useMemo } from 'react';
import { type PlanShape, planShapes } from '../../edit/plan-shapes.ts';
import { type PointList, pointLists } from '../../edit/point-lists.ts';
import { bothIndexes, type SnapIndex, snapIndex, snapIndexOfLines } from '../../edit/snap.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import type { PlanLayer } from '../../store/plan-draw.ts';
import { layerOf } from '../facts/plan-hit.ts';
import { underlayPoints } from '../facts/underlay-paths.ts';
import { useScene, useView } from '../use-stores.ts';
import { usePlan } from './plan-context.ts';

export interface DrawnLists {
  /** Everything seen. */
  readonly shapes: readonly PlanShape[];
  /** What can be chosen: seen and not locked. */
  readonly lists: readonly PointList[];
  readonly index: SnapIndex;
}

const EMPTY: DrawnLists = { shapes: [], lists: [], index: snapIndex([]) };

export const useSceneFile = (): SceneFile | null => useScene((state) => state.snapshot?.scene ?? null);

/** Id of the stage shown; null for the finished garden. */
export function useStageId(): string | null {
  const stage = useView((state) => state.stage);
  return useScene((state) => (stage === null ? null : (state.snapshot?.scene.stages?.[stage]?.id ?? null)));
}

export function useDrawnLists(): DrawnLists {
  const scene = useSceneFile();
  const stage = useStageId();
  const hidden = usePlan((state) => state.hidden);
  const locked = usePlan((state) => state.locked);
  const under = useUnderlayIndex();
  return useMemo(() => {
    if (scene === null) return EMPTY;
    const isSeen = (list: PointList) => {
      const layer = layerOf(list);
      return layer !== null && !hidden.has(layer) && (list.stage === undefined || list.stage === stage);
    };
    const shapes = planShapes(scene).filter(isSeen);
    const lists = pointLists(scene).filter((list) => isSeen(list) && !locked.has(layerOf(list) as PlanLayer));
    return { shapes, lists, index: under === null ? snapIndex(shapes) : bothIndexes(snapIndex(shapes), under) };
  }, [scene, stage, hidden, locked, under]);
}

/** Built once for the lines under the plan, not with every change of the scene. */
function useUnderlayIndex(): SnapIndex | null {
  const lines = useView((state) => state.underlayLines);
  const isShown = lines?.shown === true;
  const { at, layers, off } = lines ?? {};
  return useMemo(
    () => (isShown && at && layers && off ? snapIndexOfLines(underlayPoints({ at, layers, off })) : null),
    [isShown, at, layers, off],
  );
}
