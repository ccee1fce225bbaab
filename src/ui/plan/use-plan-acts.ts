/** What pointers do in the plan: choose, drag corners, edges and parts, set points of what is drawn. */

import { type Dispatch, type RefObject, type SetStateAction, useEffect, useMemo, useRef, useState } from 'react';
import { patched } from '../../edit/point-lists.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import { isDrawing } from '../../store/plan-draw.ts';
import { DRAWN_AS } from '../facts/drawn-kinds.ts';
import { boxOf } from '../facts/place.ts';
import { type Drag, dragged, dropped } from '../facts/plan-drag.ts';
import { hitsAt, meetable, nearestPoint, nextOf, partsWithin } from '../facts/plan-hit.ts';
import { t } from '../text/text.ts';
import { type Stores, useStores } from '../use-stores.ts';
import { dragRules } from './drag-rules.ts';
import { type HeldDrag, liveDrag } from './live-drag.ts';
import { type PlanAims, planAims } from './plan-aims.ts';
import { usePlanStore } from './plan-context.ts';
import { addedTo, HANDLE_SIDE_PX, handleAt, partAt, toggledIn } from './plan-grabs.ts';
import { firstFault } from './shape-problem.ts';
import { type DrawnLists, useDrawnLists } from './use-drawn-lists.ts';
import { type PlanDrawing, usePlanDrawing } from './use-plan-drawing.ts';
import { type PlanEdits, type Step, stepOfParts, usePlanEdits } from './use-plan-edits.ts';
import type { PointerAct, PointerDoes } from './use-pointers.ts';

export interface PlanDragging {
  readonly drag: Drag;
  /** The scene when the drag began … */
  readonly from: SceneFile;
  /** … and as it would be. */
  readonly scene: SceneFile;
  /** Whether model and numbers go along, follow at the end, or are being worked out after it. */
  readonly follows: 'now' | 'later' | 'soon';
}

export interface PlanActs {
  readonly does: PointerDoes;
  readonly dragging: PlanDragging | null;
  readonly hovered: Selected | null;
  readonly drawing: PlanDrawing;
}

/** What pointers of this moment work on. */
interface Work extends Stores {
  readonly plan: ReturnType<typeof usePlanStore>;
  readonly edits: PlanEdits;
  readonly aims: PlanAims;
  readonly now: RefObject<{ readonly drawn: DrawnLists; readonly drawing: PlanDrawing }>;
  readonly held: RefObject<HeldDrag | null>;
  readonly setDragging: Dispatch<SetStateAction<PlanDragging | null>>;
  readonly setHovered: (hovered: Selected | null) => void;
}

export function usePlanActs(originM: PointM): PlanActs {
  const stores = useStores();
  const plan = usePlanStore();
  const edits = usePlanEdits();
  const drawn = useDrawnLists();
  const drawing = usePlanDrawing();
  const [dragging, setDragging] = useState<PlanDragging | null>(null);
  const [hovered, setHovered] = useState<Selected | null>(null);
  const now = useRef({ drawn, drawing });
  now.current = { drawn, drawing };
  const held = useRef<HeldDrag | null>(null);
  const file = stores.scene.getState().snapshot?.scene;
  // A part that went while it was held is no longer held; the scene that follows the drag is no other.
  useEffect(() => {
    if (held.current?.live.isOwn(file)) return;
    held.current?.live.stop();
    held.current = null;
    setDragging(null);
  }, [file]);
  const does = useMemo(() => {
    const aims = planAims(plan, originM, () => held.current?.index ?? now.current.drawn.index);
    const work: Work = { ...stores, plan, edits, aims, now, held, setDragging, setHovered };
    const [choosing, drawingDoes] = [choosingDoes(work), drawingDoesOf(work)];
    const one = () => (isDrawing(plan.getState().tool) ? drawingDoes : choosing);
    return {
      hover: (act) => one().hover(act),
      tap: (act) => one().tap(act),
      grabs: (act) => one().grabs(act),
      drag: (act) => one().drag(act),
      drop: (act) => one().drop(act),
      cancel: () => one().cancel(),
    } satisfies PointerDoes;
  }, [stores, plan, edits, originM]);
  return { does, dragging, hovered, drawing };
}

/** While something is drawn. */
function drawingDoesOf({ plan, aims, now, setHovered }: Work): PointerDoes {
  const aim = (act: PointerAct) => plan.getState().setAim(aims.drawing(act));
  const set = (act: PointerAct) => now.current.drawing.setPoint(aims.drawing(act).at, aims.reachOf(act));
  return {
    hover(act) {
      setHovered(null);
      if (act === null) plan.getState().setAim(null);
      else aim(act);
    },
    tap: set,
    grabs(act) {
      const { rectangle, points, tool, kind } = plan.getState();
      const isRectangle = tool === 'draw' && rectangle && DRAWN_AS[kind].form === 'area';
      if (isRectangle && points.length === 0) set(act);
      // Fingers set a point where they are lifted, so that one sees what it catches.
      return isRectangle || act.by === 'touch';
    },
    drag: aim,
    drop: set,
    cancel: () => plan.getState().setAim(null),
  };
}

/** While parts are chosen and moved. */
function choosingDoes(work: Work): PointerDoes {
  const { scene, view, plan, aims, now, held, setDragging, setHovered } = work;
  const fileOf = () => scene.getState().snapshot?.scene;
  const box = boxChoice(work);
  const letGo = () => {
    const was = held.current;
    held.current = null;
    setDragging(null);
    plan.getState().setAim(null);
    return was;
  };
  return {
    hover(act) {
      if (act === null) {
        plan.getState().setAim(null);
        setHovered(null);
        return;
      }
      const at = aims.placeOf(act);
      plan.getState().setAim({ at, caught: null, guide: null });
      const [first] = hitsAt(at, meetable(now.current.drawn.lists, view.getState().selected), aims.reachOf(act));
      setHovered(first === undefined ? null : { part: first.part, id: first.id });
    },
    tap(act) {
      const at = aims.placeOf(act);
      const corner = addsOf(work, act) ? undefined : cornersAt(work, at, aims.reachOf(act))[0];
      if (corner === undefined) chooseAt(work, at, act);
      else plan.getState().setVertex(corner);
    },
    grabs(act) {
      const at = aims.placeOf(act);
      if (act.adds || plan.getState().tool === 'box') {
        box.to(at, at);
        return true;
      }
      const reachM = aims.reachOf(act);
      const { selected } = view.getState();
      const drag =
        handleAt(at, chosenLists(work), reachM, aims.metresOf(HANDLE_SIDE_PX)) ?? partAt(at, now.current.drawn.lists, selected, reachM);
      const from = fileOf();
      if (drag === null || from === undefined) return false;
      const step = stepOfDrag(drag);
      held.current = { drag, from, index: now.current.drawn.index, step, live: liveDrag(work, from, step) };
      return true;
    },
    drag(act) {
      const { box: open } = plan.getState();
      if (open !== null) box.to(open.from, aims.placeOf(act));
      if (held.current === null) return;
      const { drag, from, live } = held.current;
      const aim = aims.dragging(drag, act, from);
      plan.getState().setAim(aim);
      const patch = dragged(from, drag, aim.at, dragRules(plan));
      const follows = live.follow(patch) ? 'now' : 'later';
      setDragging({ drag, from, scene: patched(from, patch), follows });
    },
    drop(act) {
      box.choose();
      // What the parts were before still catches.
      const to = held.current && aims.dragging(held.current.drag, act, held.current.from).at;
      const was = letGo();
      if (was !== null && to !== null) void drop(work, was, to);
    },
    cancel() {
      plan.getState().setBox(null);
      letGo()?.live.takeBack();
    },
  };
}

/** A box drawn round parts adds those that lie wholly in it. */
function boxChoice({ view, plan, now }: Work) {
  return {
    to: (from: PointM, to: PointM) =>
      plan
        .getState()
        .setBox({ from, to, inside: partsWithin(meetable(now.current.drawn.lists, view.getState().selected), boxOf([from, to])) }),
    choose() {
      const { box, setBox, setVertex, tell, tab, showTab } = plan.getState();
      if (box === null) return;
      setBox(null);
      if (box.inside.length === 0) {
        tell({ issues: [], says: t.draw.box.none, at: null, note: true });
        return;
      }
      setVertex(null);
      tell(null);
      view.getState().select(addedTo(view.getState().selected, box.inside));
      if (tab === 'parts') showTab('chosen');
    },
  };
}

function chosenLists({ view, now }: Work) {
  const { selected } = view.getState();
  const [one] = selected;
  if (selected.length !== 1 || one === undefined) return [];
  return now.current.drawn.lists.filter(({ part, id }) => part === one.part && id === one.id);
}

const addsOf = ({ plan }: Work, { adds }: PointerAct): boolean => adds || plan.getState().tool === 'box';

const cornersAt = (work: Work, at: PointM, reachM: number) =>
  chosenLists(work).flatMap(({ piece, points, form }) => {
    const index = form === 'point' ? null : nearestPoint(at, points, reachM);
    return index === null ? [] : [{ piece, index }];
  });

function chooseAt(work: Work, at: PointM, act: PointerAct): void {
  const { view, plan, now, aims } = work;
  const { selected, select } = view.getState();
  const hits = hitsAt(at, meetable(now.current.drawn.lists, selected), aims.reachOf(act));
  plan.getState().setVertex(null);
  plan.getState().tell(null);
  if (addsOf(work, act)) {
    // Of what lies over one another, first what is of a kind with those chosen.
    const others = hits.filter(({ part }) => part !== 'outline');
    const hit = others.find((one) => selected.some(({ part }) => part === one.part)) ?? others[0];
    if (hit === undefined && !act.adds) select([]);
    if (hit !== undefined) select(toggledIn(selected, { part: hit.part, id: hit.id }));
    return;
  }
  const hit = nextOf<Selected>(hits, selected);
  select(hit === null ? [] : [{ part: hit.part, id: hit.id }]);
  if (hit !== null && plan.getState().tab === 'parts') plan.getState().showTab('chosen');
}

function stepOfDrag(drag: Drag): Step {
  return stepOfParts(
    drag.kind === 'insert' ? 'change' : 'move',
    drag.kind === 'parts' ? drag.of : [{ part: drag.of.part, id: drag.of.id }],
  );
}

/** Checked first by the routine of files, so that a crossing is shown where it is; what cannot be leaves all as it was. */
async function drop({ view, plan, edits, setDragging }: Work, { drag, from, step, live }: HeldDrag, to: PointM): Promise<void> {
  const rules = dragRules(plan);
  const patch = dropped(from, drag, to, rules);
  const fault = firstFault(from, patched(from, patch), view.getState().language);
  if (fault !== null) {
    plan.getState().tell(fault);
    live.takeBack();
    return;
  }
  live.stop();
  // In a large scene this takes a while: what was dragged stays where it was put until then.
  const settling: PlanDragging = { drag, from, scene: patched(from, patch), follows: 'soon' };
  setDragging(() => settling);
  const done = await edits.run((scene) => ({ patch: live.last(patch, scene) ?? dropped(scene, drag, to, rules) }), step, live.gesture);
  setDragging((now) => (now === settling ? null : now));
  if (!done) live.takeBack();
}
