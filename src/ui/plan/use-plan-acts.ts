/** What pointers do in the plan: choose, drag corners, edges and parts, set points of what is drawn. */

import { useEffect, useMemo, useRef, useState } from 'react';
import { shapeOf } from '../../edit/plan-shapes.ts';
import { type ListRef, type PointList, patched } from '../../edit/point-lists.ts';
import type { SnapAsk } from '../../edit/snap.ts';
import { snapped } from '../../edit/snap.ts';
import type { EditPart } from '../../model/history.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import type { PlanAim } from '../../store/plan-draw.ts';
import { DRAWN_AS } from '../facts/drawn-kinds.ts';
import { type Drag, dragged, dropped, flatPoint } from '../facts/plan-drag.ts';
import { hitsAt, layerOf, nearestPoint, nearestSide, nextOf } from '../facts/plan-hit.ts';
import { atPixel, gridStepM } from '../facts/plan-surface.ts';
import { useStores } from '../use-stores.ts';
import { usePlanStore } from './plan-context.ts';
import { firstFault } from './shape-problem.ts';
import { type DrawnLists, useDrawnLists } from './use-drawn-lists.ts';
import { type PlanDrawing, usePlanDrawing } from './use-plan-drawing.ts';
import { stepOf, usePlanEdits } from './use-plan-edits.ts';
import { type PointerAct, type PointerDoes, REACH_PX } from './use-pointers.ts';

/** Sides shorter than this have no handle in their middle [px]. */
export const HANDLE_SIDE_PX = 46;
/** Lines of the grid that catches are at least this far apart [px]. */
export const CATCH_GRID_PX = 7;

export interface PlanDragging {
  readonly drag: Drag;
  readonly to: PointM;
  /** The scene as it would be. */
  readonly scene: SceneFile;
}

export interface PlanActs {
  readonly does: PointerDoes;
  readonly dragging: PlanDragging | null;
  readonly hovered: Selected | null;
  readonly drawing: PlanDrawing;
  readonly drawn: DrawnLists;
}

export function usePlanActs(originM: PointM): PlanActs {
  const { scene, view } = useStores();
  const plan = usePlanStore();
  const edits = usePlanEdits();
  const drawn = useDrawnLists();
  const drawing = usePlanDrawing();
  const [dragging, setDragging] = useState<PlanDragging | null>(null);
  const [hovered, setHovered] = useState<Selected | null>(null);
  // What the pointers of now need of this moment's plan.
  const now = useRef({ drawn, drawing, dragging });
  now.current = { drawn, drawing, dragging };
  // A part that went while it was held is no longer held.
  const file = scene.getState().snapshot?.scene;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another scene ends what was under way in the one before
  useEffect(() => setDragging(null), [file]);

  const does = useMemo<PointerDoes>(() => {
    const metresOf = (px: number) => px / (plan.getState().surface?.scalePx ?? 1);
    const placeOf = ({ at }: PointerAct): PointM => {
      const { surface } = plan.getState();
      const [x, y] = surface === null ? [0, 0] : atPixel(at, surface);
      return [x + originM[0], y + originM[1]];
    };
    const reachOf = ({ by }: PointerAct) => metresOf(REACH_PX[by]);
    const aimAt = (at: PointM, act: PointerAct, more: Partial<SnapAsk> = {}): PlanAim => {
      const { snapping, surface } = plan.getState();
      if (!snapping || act.free || surface === null) return { at: rounded(at), caught: null, guide: null };
      const grid = { stepM: gridStepM(surface, CATCH_GRID_PX), at: [0, 0] as PointM, turnDeg: 0 };
      const found = snapped(now.current.drawn.index, { at, toleranceM: reachOf(act), grid, ...more });
      return { at: found.kind === null ? rounded(found.at) : found.at, caught: found.kind, guide: found.guide };
    };
    const drawingAim = (act: PointerAct): PlanAim => {
      const { points, rectangle } = plan.getState();
      const from = points.at(-1);
      const before = points.at(-2);
      return aimAt(placeOf(act), act, {
        drawn: points,
        ...(from !== undefined && !rectangle && { from }),
        ...(from !== undefined && before !== undefined && !rectangle && { guides: [[before, from]] as const }),
      });
    };
    const chosenLists = (): readonly PointList[] => {
      const { selected } = view.getState();
      const [one] = selected;
      if (selected.length !== 1 || one === undefined) return [];
      return now.current.drawn.lists.filter(({ part, id }) => part === one.part && id === one.id);
    };
    const grabbed = (act: PointerAct): Drag | null => {
      const at = placeOf(act);
      return handleAt(at, chosenLists(), reachOf(act), metresOf(HANDLE_SIDE_PX)) ?? partAt(at, reachOf(act));
    };
    const partAt = (at: PointM, reachM: number): Drag | null => {
      const { selected } = view.getState();
      const hit = hitsAt(at, now.current.drawn.lists, reachM).find(({ part, id }) => isIn(selected, { part, id }));
      if (hit === undefined || hit.part === 'outline') return null;
      const nearest = nearestPoint(at, hit.points, Number.POSITIVE_INFINITY);
      const anchor = nearest === null ? at : flatPoint(hit.points[nearest] as PointM);
      return { kind: 'parts', of: selected, grab: at, anchor };
    };
    const rules = () => {
      const { shared, locked } = plan.getState();
      const isLocked = (list: ListRef) => {
        const layer = layerOf(list);
        return layer === null || locked.has(layer);
      };
      return { shared, isLocked };
    };
    const dragAim = (drag: Drag, act: PointerAct): PlanAim => {
      const at = placeOf(act);
      if (drag.kind === 'parts') {
        const moving = drag.of.flatMap((one) => {
          const file = scene.getState().snapshot?.scene;
          return (file && shapeOf(file, one)?.points.map(flatPoint)) ?? [];
        });
        return aimAt([drag.anchor[0] + at[0] - drag.grab[0], drag.anchor[1] + at[1] - drag.grab[1]], act, { moving });
      }
      if (drag.kind === 'edge') return aimAt(at, act, { moving: [drag.edge.a, drag.edge.b] });
      if (drag.kind === 'insert') return aimAt(at, act, { from: drag.edge.a });
      return aimAt(at, act, { moving: [drag.from], ...(drag.before !== null && { from: drag.before }) });
    };
    const isDrawing = () => plan.getState().tool !== 'choose';
    return {
      hover(act) {
        if (act === null) {
          plan.getState().setAim(null);
          setHovered(null);
          return;
        }
        if (isDrawing()) {
          plan.getState().setAim(drawingAim(act));
          return;
        }
        plan.getState().setAim({ at: placeOf(act), caught: null, guide: null });
        const [first] = hitsAt(placeOf(act), now.current.drawn.lists, reachOf(act));
        setHovered(first === undefined ? null : { part: first.part, id: first.id });
      },
      tap(act) {
        if (isDrawing()) {
          now.current.drawing.setPoint(drawingAim(act).at, reachOf(act));
          return;
        }
        const at = placeOf(act);
        const lists = chosenLists();
        const corner = lists.flatMap((list) => {
          const index = nearestPoint(at, list.points, reachOf(act));
          return index === null || list.form === 'point' ? [] : [{ piece: list.piece, index }];
        })[0];
        if (corner !== undefined && !act.adds) {
          plan.getState().setVertex(corner);
          return;
        }
        chooseAt(hitsAt(at, now.current.drawn.lists, reachOf(act)), act.adds);
      },
      grabs(act) {
        if (isDrawing()) {
          const { rectangle, points, tool, kind } = plan.getState();
          const draws = tool === 'draw' && rectangle && DRAWN_AS[kind].form === 'area';
          if (draws && points.length === 0) now.current.drawing.setPoint(drawingAim(act).at, reachOf(act));
          // Fingers set a point where they are lifted, so that one sees what it catches.
          return draws || act.by === 'touch';
        }
        const drag = grabbed(act);
        const file = scene.getState().snapshot?.scene;
        if (drag === null || file === undefined) return false;
        setDragging({ drag, to: drag.kind === 'parts' ? drag.anchor : placeOf(act), scene: file });
        now.current.dragging = { drag, to: placeOf(act), scene: file };
        return true;
      },
      drag(act) {
        if (isDrawing()) {
          plan.getState().setAim(drawingAim(act));
          return;
        }
        const held = now.current.dragging;
        const file = scene.getState().snapshot?.scene;
        if (held === null || file === undefined) return;
        const aim = dragAim(held.drag, act);
        plan.getState().setAim(aim);
        setDragging({ drag: held.drag, to: aim.at, scene: patched(file, dragged(file, held.drag, aim.at, rules())) });
      },
      drop(act) {
        if (isDrawing()) {
          now.current.drawing.setPoint(drawingAim(act).at, reachOf(act));
          return;
        }
        const held = now.current.dragging;
        setDragging(null);
        plan.getState().setAim(null);
        if (held === null) return;
        const to = dragAim(held.drag, act).at;
        void letGo(held.drag, to);
      },
      cancel() {
        setDragging(null);
        plan.getState().setAim(null);
      },
    };

    function chooseAt(hits: readonly PointList[], adds: boolean): void {
      const { selected, select } = view.getState();
      plan.getState().setVertex(null);
      plan.getState().tell(null);
      if (adds) {
        const [hit] = hits.filter(({ part }) => selected.length === 0 || part === selected[0]?.part);
        if (hit !== undefined) select(toggledIn(selected, { part: hit.part, id: hit.id }));
        return;
      }
      const hit = nextOf<Selected>(hits, selected);
      select(hit === null ? [] : [{ part: hit.part, id: hit.id }]);
      if (hit !== null && plan.getState().tab === 'parts') plan.getState().showTab('chosen');
    }

    async function letGo(drag: Drag, to: PointM): Promise<void> {
      const file = scene.getState().snapshot?.scene;
      if (file === undefined) return;
      const patch = dropped(file, drag, to, rules());
      const fault = firstFault(file, patched(file, patch), view.getState().language);
      if (fault !== null) {
        plan.getState().tell(fault);
        return;
      }
      const refs = drag.kind === 'parts' ? drag.of : [{ part: drag.of.part as EditPart, id: drag.of.id }];
      const act = drag.kind === 'insert' ? 'change' : 'move';
      await edits.run((at) => ({ patch: dropped(at, drag, to, rules()) }), stepOf(act, refs[0]?.part ?? 'scene', edits.names(refs)));
    }
  }, [scene, view, plan, edits, originM]);
  return { does, dragging, hovered, drawing, drawn };
}

/** A hand's place to the millimetre. */
const rounded = ([x, y]: PointM): PointM => [Math.round(x * 1000) / 1000, Math.round(y * 1000) / 1000];

const isIn = (selected: readonly Selected[], one: Selected) => selected.some(({ part, id }) => part === one.part && id === one.id);

const toggledIn = (selected: readonly Selected[], one: Selected): readonly Selected[] =>
  isIn(selected, one) ? selected.filter(({ part, id }) => part !== one.part || id !== one.id) : [...selected, one];

/** Corner, handle in the middle of a side, or side of a chosen part. */
function handleAt(at: PointM, lists: readonly PointList[], reachM: number, handleSideM: number): Drag | null {
  for (const { part, id, piece, form, points } of lists) {
    if (form === 'point') continue;
    const of: ListRef = { part, id, ...(piece === undefined ? {} : { piece }) };
    const corner = nearestPoint(at, points, reachM);
    if (corner !== null) {
      const before = points[form === 'area' ? (corner + points.length - 1) % points.length : corner - 1];
      return { kind: 'vertex', of, from: flatPoint(points[corner] as PointM), before: before === undefined ? null : flatPoint(before) };
    }
  }
  for (const { part, id, piece, form, points } of lists) {
    if (form === 'point') continue;
    const of: ListRef = { part, id, ...(piece === undefined ? {} : { piece }) };
    const side = nearestSide(at, { points, form }, reachM);
    if (side === null) continue;
    const [a, b] = [flatPoint(points[side] as PointM), flatPoint(points[(side + 1) % points.length] as PointM)];
    const middle: PointM = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    const isLong = Math.hypot(b[0] - a[0], b[1] - a[1]) >= handleSideM;
    if (isLong && Math.hypot(at[0] - middle[0], at[1] - middle[1]) <= reachM) return { kind: 'insert', of, edge: { a, b } };
    return { kind: 'edge', of, edge: { a, b }, grab: at };
  }
  return null;
}
