/** From pixels to places: where a pointer is, and what it catches while something is drawn or dragged. */

import { shapesOf } from '../../edit/plan-shapes.ts';
import { isAt } from '../../edit/shared-vertices.ts';
import { type SnapAsk, type SnapIndex, type SnapKind, type Snapped, snapped } from '../../edit/snap.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import type { PlanAim, PlanStore } from '../../store/plan-draw.ts';
import { type Drag, flatPoint } from '../facts/plan-drag.ts';
import { atPixel, gridStepM, roundAlong } from '../facts/plan-surface.ts';
import { type PointerAct, REACH_PX } from './use-pointers.ts';

/** Lines of the grid that catches are at least this far apart [px]. */
export const CATCH_GRID_PX = 7;

/** Directions from the point before, along which a place may slide. */
const DIRECTIONS: ReadonlySet<SnapKind> = new Set(['right angle', 'parallel', 'straight']);

/** Where what is caught leaves a place free to slide: along a direction as far as one likes, along an edge between its ends. */
function slideLine({ kind, guide, edges }: Snapped): readonly [PointM, PointM] | null {
  if (kind === null || guide === null) return null;
  const [from, to] = guide;
  if (DIRECTIONS.has(kind)) return [from, [2 * to[0] - from[0], 2 * to[1] - from[1]]];
  // Where a direction meets an edge, the place is fixed.
  return kind === 'edge' && edges.some(({ a, b }) => isAt(from, a) && isAt(to, b)) ? guide : null;
}

export interface PlanAims {
  metresOf(px: number): number;
  placeOf(act: PointerAct): PointM;
  reachOf(act: PointerAct): number;
  /** Of the next point. */
  drawing(act: PointerAct): PlanAim;
  /** Of what is dragged. */
  dragging(drag: Drag, act: PointerAct, scene: SceneFile): PlanAim;
}

/** A hand's place to the millimetre. */
const rounded = ([x, y]: PointM): PointM => [Math.round(x * 1000) / 1000, Math.round(y * 1000) / 1000];

export function planAims(plan: PlanStore, originM: PointM, index: () => SnapIndex): PlanAims {
  const metresOf = (px: number) => px / (plan.getState().surface?.scalePx ?? 1);
  const reachOf = ({ by }: PointerAct) => metresOf(REACH_PX[by]);
  const placeOf = ({ at }: PointerAct): PointM => {
    const { surface } = plan.getState();
    const [x, y] = surface === null ? [0, 0] : atPixel(at, surface);
    return [x + originM[0], y + originM[1]];
  };
  const aimAt = (at: PointM, act: PointerAct, more: Partial<SnapAsk>): PlanAim => {
    const { snapping, surface, tool } = plan.getState();
    // Points of the picture are where they are seen, not where the scene has something.
    if (!snapping || act.free || surface === null || tool === 'scale') return { at: rounded(at), caught: null, guide: null };
    const grid = { stepM: gridStepM(surface, CATCH_GRID_PX), at: [0, 0] as PointM, turnDeg: 0 };
    const caught = snapped(index(), { at, toleranceM: reachOf(act), grid, ...more });
    const { kind, guide } = caught;
    if (kind === null || kind === 'grid') return { at: rounded(caught.at), caught: kind, guide };
    const line = slideLine(caught);
    return { at: line === null ? caught.at : roundAlong(caught.at, line, grid.stepM), caught: kind, guide };
  };
  return {
    metresOf,
    placeOf,
    reachOf,
    drawing(act) {
      const { points, rectangle } = plan.getState();
      const [before, from] = [points.at(-2), points.at(-1)];
      if (from === undefined || rectangle) return aimAt(placeOf(act), act, { drawn: points });
      const guides = before === undefined ? {} : { guides: [[before, from]] as const };
      return aimAt(placeOf(act), act, { drawn: points, from, ...guides });
    },
    dragging(drag, act, scene) {
      const at = placeOf(act);
      if (drag.kind === 'edge') return aimAt(at, act, { moving: [drag.edge.a, drag.edge.b] });
      if (drag.kind === 'insert') return aimAt(at, act, { from: drag.edge.a });
      if (drag.kind === 'vertex') return aimAt(at, act, { moving: [drag.from], ...(drag.before !== null && { from: drag.before }) });
      const moving = shapesOf(scene, drag.of).flatMap(({ points }) => points.map(flatPoint));
      return aimAt([drag.anchor[0] + at[0] - drag.grab[0], drag.anchor[1] + at[1] - drag.grab[1]], act, { moving });
    },
  };
}
