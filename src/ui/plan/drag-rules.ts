/** What goes along with a dragged corner, as it is switched on this moment: locked sheets never do. */

import type { PlanStore } from '../../store/plan-draw.ts';
import type { DragRules } from '../facts/plan-drag.ts';
import { layerOf } from '../facts/plan-hit.ts';

export function dragRules(plan: PlanStore): DragRules {
  const { shared, locked } = plan.getState();
  return {
    shared,
    isLocked: (list) => {
      const layer = layerOf(list);
      return layer === null || locked.has(layer);
    },
  };
}
