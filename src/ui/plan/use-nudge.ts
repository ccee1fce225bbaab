/** What is chosen, moved by arrow keys in steps of the grid, or deleted: a corner, or whole parts. */

import { useMemo } from 'react';
import { moved, shift } from '../../edit/move-parts.ts';
import { type PlanPart, pointLists } from '../../edit/point-lists.ts';
import { removed } from '../../edit/references.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import { dropped, flatPoint } from '../facts/plan-drag.ts';
import { gridStepM } from '../facts/plan-surface.ts';
import { useStores } from '../use-stores.ts';
import { dragRules } from './drag-rules.ts';
import { CATCH_GRID_PX } from './plan-aims.ts';
import { usePlanStore } from './plan-context.ts';
import { removeCorner } from './remove-corner.ts';
import { stepOfParts, usePlanEdits } from './use-plan-edits.ts';

export function useNudge() {
  const { view } = useStores();
  const plan = usePlanStore();
  const edits = usePlanEdits();
  return useMemo(() => {
    const cornerIn = (scene: SceneFile) => {
      const { vertex } = plan.getState();
      const [one] = view.getState().selected;
      if (vertex === null || one === undefined) return null;
      const list = pointLists(scene).find(({ part, id, piece }) => part === one.part && id === one.id && piece === vertex.piece);
      const at = list?.points[vertex.index];
      return list === undefined || at === undefined ? null : { list, at: flatPoint(at) };
    };
    return {
      /** Steps to the right and upwards. */
      move(right: number, up: number) {
        const { surface } = plan.getState();
        const { selected } = view.getState();
        if (surface === null || selected.length === 0) return;
        const stepM = gridStepM(surface, CATCH_GRID_PX);
        const by: PointM = [right * stepM, up * stepM];
        void edits.run(
          (scene) => {
            const corner = cornerIn(scene);
            if (corner === null) return { patch: moved(scene, selected, shift(by[0], by[1])) };
            const { list, at } = corner;
            const of = { part: list.part as PlanPart, id: list.id, ...(list.piece === undefined ? {} : { piece: list.piece }) };
            return {
              patch: dropped(scene, { kind: 'vertex', of, from: at, before: null }, [at[0] + by[0], at[1] + by[1]], dragRules(plan)),
            };
          },
          stepOfParts('move', selected),
        );
      },
      remove() {
        const { selected, select } = view.getState();
        if (selected.length === 0) return;
        if (plan.getState().vertex !== null) {
          removeCorner(plan, view, edits);
          return;
        }
        void edits
          .run((scene) => ({ patch: removed(scene, selected) }), stepOfParts('remove', selected))
          .then((done) => {
            if (done) select([]);
          });
      },
    };
  }, [view, plan, edits]);
}
