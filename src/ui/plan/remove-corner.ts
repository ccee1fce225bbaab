/** The chosen corner taken out of its part and, where corners move together, out of its neighbours. */

import { goesWith, limitedTo } from '../../edit/goes-with.ts';
import { isSameList, type ListRef, type PlanPart, pointLists } from '../../edit/point-lists.ts';
import { removedVertex } from '../../edit/shared-vertices.ts';
import type { PlanStore, PlanVertex } from '../../store/plan-draw.ts';
import type { ViewStore } from '../../store/view-store.ts';
import { flatPoint } from '../facts/plan-drag.ts';
import { dragRules } from './drag-rules.ts';
import { type PlanEdits, stepOf } from './use-plan-edits.ts';

export function removeCorner(plan: PlanStore, view: ViewStore, edits: PlanEdits, vertex: PlanVertex | null = plan.getState().vertex): void {
  const [one] = view.getState().selected;
  if (one === undefined || vertex === null) return;
  const { setVertex } = plan.getState();
  const { shared, isLocked } = dragRules(plan);
  const of: ListRef = { part: one.part as PlanPart, id: one.id, ...(vertex.piece === undefined ? {} : { piece: vertex.piece }) };
  const may = (list: ListRef) => isSameList(list, of) || (shared && goesWith(of.part).includes(list.part) && !isLocked(list));
  void edits
    .run(
      (scene) => {
        const at = pointLists(scene).find((list) => isSameList(list, of))?.points[vertex.index];
        if (at === undefined) return { refused: 'no such part' };
        const { patch, kept } = removedVertex(scene, flatPoint(at));
        if (kept.some((list) => isSameList(list, of))) return { refused: 'too few points' };
        return { patch: limitedTo(scene, patch, may) };
      },
      stepOf('change', one.part, [one.id]),
    )
    .then((done) => {
      if (done) setVertex(null);
    });
}
