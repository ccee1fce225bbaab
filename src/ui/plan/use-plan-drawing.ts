/** Points set one after another until something becomes of them: a part, a cut, the scale of the picture below. */

import { useMemo } from 'react';
import { type Given, withNew, withNewHole } from '../../edit/new-part.ts';
import { patched, patchOf } from '../../edit/point-lists.ts';
import { split } from '../../edit/split.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import type { DrawnKind, PlanStore } from '../../store/plan-draw.ts';
import { DRAWN_AS, givenOf } from '../facts/drawn-kinds.ts';
import { joined } from '../facts/plan-drag.ts';
import { t } from '../text/text.ts';
import { type Stores, useStores } from '../use-stores.ts';
import { buildUpFor, withChosenBuildUp } from './begin-build-up.ts';
import { usePlanStore } from './plan-context.ts';
import { problemOfShape } from './shape-problem.ts';
import { type Made, type PlanEdits, stepOf, usePlanEdits } from './use-plan-edits.ts';

export interface PlanDrawing {
  /** `reachM`: so near to the first point, the area is closed. */
  setPoint(at: PointM, reachM?: number): void;
  back(): void;
  finish(): void;
}

/** Points of a part being drawn at least. */
export const LEAST_POINTS = { area: 3, line: 2, point: 1 } as const;

export const formOf = (tool: string, kind: DrawnKind) => (tool === 'draw' ? DRAWN_AS[kind].form : 'line');

/** Both corners of a rectangle as its outline, counter-clockwise. */
export function rectangleOf([x1, y1]: PointM, [x2, y2]: PointM): readonly PointM[] {
  const [left, right, low, high] = [Math.min(x1, x2), Math.max(x1, x2), Math.min(y1, y2), Math.max(y1, y2)];
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

export function usePlanDrawing(): PlanDrawing {
  const stores = useStores();
  const plan = usePlanStore();
  const edits = usePlanEdits();
  return useMemo(() => planDrawing(stores, plan, edits), [stores, plan, edits]);
}

function planDrawing(stores: Stores, plan: PlanStore, edits: PlanEdits): PlanDrawing {
  const end = async (points: readonly PointM[]) => {
    const { tool, kind } = plan.getState();
    const form = formOf(tool, kind);
    const least = LEAST_POINTS[form];
    if (points.length < least) {
      plan.getState().tell({ issues: [], says: t.draw.drawing.tooFew(least), at: null });
      return;
    }
    if (tool === 'split') {
      const [selected] = stores.view.getState().selected;
      if (selected === undefined) return;
      const done = await edits.run(
        (scene) => split(scene, selected, points),
        ({ selected: pieces }) => stepOf('split', selected.part, edits.names(Array.isArray(pieces) ? pieces : [selected])),
      );
      if (done) plan.getState().choose();
      return;
    }
    const problem = problemOfShape({ form, points }, stores.view.getState().language);
    if (problem !== null) {
      plan.getState().tell(problem);
      return;
    }
    if (await add(stores, plan, edits, points)) plan.getState().setPoints([]);
  };
  return {
    setPoint(at, reachM = 0) {
      const { tool, kind, rectangle, points, setPoints } = plan.getState();
      if (tool === 'scale') {
        setPoints([...points.slice(-1), at]);
        return;
      }
      const form = formOf(tool, kind);
      const [first] = points;
      const last = points.at(-1);
      if (form === 'point') void end([at]);
      else if (form === 'area' && rectangle && first !== undefined) {
        if (at[0] !== first[0] && at[1] !== first[1]) void end(rectangleOf(first, at));
      } else if (form === 'area' && first !== undefined && points.length >= LEAST_POINTS.area && lengthTo(first, at) <= reachM)
        void end(points);
      // The second press of a double click adds nothing.
      else if (last === undefined || lengthTo(last, at) > 0) setPoints([...points, at]);
    },
    back() {
      const { points, setPoints } = plan.getState();
      setPoints(points.slice(0, -1));
    },
    finish: () => void end(plan.getState().points),
  };
}

const lengthTo = (from: PointM, to: PointM) => Math.hypot(to[0] - from[0], to[1] - from[1]);

/** True where the part now stands in the scene. */
async function add({ scene: store, view }: Stores, plan: PlanStore, edits: PlanEdits, points: readonly PointM[]): Promise<boolean> {
  const { kind, given } = plan.getState();
  const as = DRAWN_AS[kind];
  const file = store.getState().snapshot?.scene;
  if (file === undefined) return false;
  const tell = (says: string) => plan.getState().tell({ issues: [], says, at: null });
  if (kind === 'hole') return addHole(view.getState().selected, edits, points, tell);
  const { stage } = view.getState();
  const stageId = stage === null ? undefined : file.stages?.[stage]?.id;
  const said: Given = { ...given[kind], ...givenOf(as), ...(stageId !== undefined && { stage: stageId }) };
  const made = newPart(file, kind, points, said);
  if ('needs' in made) {
    tell(stillNeeded(made.needs));
    return false;
  }
  const done = await edits.run(
    (scene) => {
      const again = newPart(scene, kind, points, said);
      return 'needs' in again ? { patch: {} } : again;
    },
    ({ selected }) =>
      stepOf(as.part === 'outline' ? 'change' : 'add', as.part, edits.names(selected === undefined ? [] : [selected as Selected])),
  );
  if (done && plan.getState().tab === 'parts') plan.getState().showTab('chosen');
  return done;
}

function stillNeeded(needs: readonly (keyof Given)[]): string {
  const { drawing } = t.draw;
  if (needs.includes('zone')) return drawing.needFinish;
  const labels = needs.filter((key) => key !== 'stage').map((key) => t.draw.field(key));
  return labels.length === 0 ? drawing.needStage : drawing.needs(labels);
}

/** The patch that adds a part, its build-up before it where that is one to begin with. */
function newPart(
  scene: SceneFile,
  kind: DrawnKind,
  points: readonly PointM[],
  given: Given,
): Made | { readonly needs: readonly (keyof Given)[] } {
  const { part } = DRAWN_AS[kind];
  const wish = kind === 'zone' ? buildUpFor(scene, given.buildup) : undefined;
  const { buildup: _, ...others } = given;
  const begun = wish === undefined ? { scene, id: undefined } : withChosenBuildUp(scene, wish);
  const made = withNew(begun.scene, part, points, { ...others, ...(begun.id !== undefined && { buildup: begun.id }) });
  if ('needs' in made) return made;
  const next = patched(begun.scene, made.patch);
  return { ...made, patch: patchOf(scene, patched(next, joined(next, part, points))) };
}

async function addHole(
  selected: readonly Selected[],
  edits: PlanEdits,
  points: readonly PointM[],
  tell: (says: string) => void,
): Promise<boolean> {
  const [zone] = selected;
  if (zone?.part !== 'zone' || selected.length !== 1) {
    tell(t.draw.drawing.needZone);
    return false;
  }
  return edits.run((scene) => ({ patch: withNewHole(scene, zone.id, points) }), stepOf('change', 'zone', [zone.id]));
}
