/** Chooses all parts that lie wholly in what the plan shows, without pointing at any. */

import { useCallback } from 'react';
import type { PointM } from '../../model/scene-file.ts';
import { boxOf } from '../facts/place.ts';
import { meetable, partsWithin } from '../facts/plan-hit.ts';
import { atPixel } from '../facts/plan-surface.ts';
import { useStores } from '../use-stores.ts';
import { usePlanStore } from './plan-context.ts';
import { useDrawnLists } from './use-drawn-lists.ts';

export function useChooseInView(): () => void {
  const { scene, view } = useStores();
  const plan = usePlanStore();
  const { lists } = useDrawnLists();
  return useCallback(() => {
    const { surface, sizePx, setVertex, tell } = plan.getState();
    const { snapshot } = scene.getState();
    if (surface === null || snapshot === null) return;
    const [originX, originY] = snapshot.originM;
    const corner = (at: PointM): PointM => {
      const [x, y] = atPixel(at, surface);
      return [x + originX, y + originY];
    };
    setVertex(null);
    tell(null);
    const { selected, select } = view.getState();
    select(partsWithin(meetable(lists, selected), boxOf([corner([0, 0]), corner([sizePx.width, sizePx.height])])));
  }, [scene, view, plan, lists]);
}
