/** What a drag in the plan does to the scene: a corner, a new corner, an edge parallel to itself, whole parts. */

import { goesWith, limitedTo } from '../../edit/goes-with.ts';
import { moved, shift } from '../../edit/move-parts.ts';
import type { PlanShape } from '../../edit/plan-shapes.ts';
import { isSameList, type ListRef, type PlanPoint, patched, patchOf } from '../../edit/point-lists.ts';
import { insertedVertex, movedEdge, movedVertex, settled, withVertexInserted } from '../../edit/shared-vertices.ts';
import type { ScenePatch } from '../../model/history.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';

interface Ends {
  readonly a: PointM;
  readonly b: PointM;
}

export type Drag =
  | { readonly kind: 'vertex'; readonly of: ListRef; readonly from: PointM; readonly before: PointM | null }
  | { readonly kind: 'insert'; readonly of: ListRef; readonly edge: Ends }
  | { readonly kind: 'edge'; readonly of: ListRef; readonly edge: Ends }
  | { readonly kind: 'parts'; readonly of: readonly Selected[]; readonly grab: PointM; readonly anchor: PointM };

export interface DragRules {
  /** Points in common move together. */
  readonly shared: boolean;
  readonly isLocked: (list: ListRef) => boolean;
}

/** Which lists a drag of one may change. */
function mayChange(of: ListRef, { shared, isLocked }: DragRules): (list: ListRef) => boolean {
  const along = goesWith(of.part);
  return (list) => isSameList(list, of) || (shared && along.includes(list.part) && !isLocked(list));
}

/** How far one has gone across an edge, to its left [m]. */
export function acrossM({ a, b }: Ends, from: PointM, to: PointM): number {
  const [alongX, alongY] = [b[0] - a[0], b[1] - a[1]];
  const lengthM = Math.hypot(alongX, alongY);
  return lengthM === 0 ? 0 : (alongX * (to[1] - from[1]) - alongY * (to[0] - from[0])) / lengthM;
}

/** The scene's coordinates have no crumbs of a shift: to the micrometre. */
const clean = (valueM: number): number => Math.round(valueM * 1e6) / 1e6;

/**
 * What a drag has changed when the pointer is there.
 * @param scene - the scene when the drag began
 * @param drag - what was taken hold of
 * @param to - where the pointer is, caught or not
 * @param rules - what goes along
 */
export function dragged(scene: SceneFile, drag: Drag, to: PointM, rules: DragRules): ScenePatch {
  if (drag.kind === 'parts') return moved(scene, drag.of, shift(clean(to[0] - drag.anchor[0]), clean(to[1] - drag.anchor[1])));
  const may = mayChange(drag.of, rules);
  if (drag.kind === 'vertex') return limitedTo(scene, movedVertex(scene, drag.from, to), may);
  if (drag.kind === 'insert') return limitedTo(scene, insertedVertex(scene, drag.edge, to), may);
  return limitedTo(scene, movedEdge(scene, drag.edge, clean(acrossM(drag.edge, drag.edge.a, to))), may);
}

/** The same once it is dropped: neighbours get the corner that came to lie on their edge, corners on one another become one. */
export function dropped(scene: SceneFile, drag: Drag, to: PointM, rules: DragRules): ScenePatch {
  if (drag.kind === 'parts') return dragged(scene, drag, to, rules);
  const may = mayChange(drag.of, rules);
  const first = patched(scene, dragged(scene, drag, to, rules));
  const met = drag.kind === 'edge' ? first : patched(first, limitedTo(first, withVertexInserted(first, to), may));
  return patchOf(scene, patched(met, limitedTo(met, settled(met), may)));
}

/** Neighbours of the same kind get the corners of a new area that lie on their edges. */
export function joined(scene: SceneFile, part: ListRef['part'], points: readonly PointM[]): ScenePatch {
  const next = points.reduce(
    (now, at) =>
      patched(
        now,
        limitedTo(now, withVertexInserted(now, at), (list) => list.part === part),
      ),
    scene,
  );
  return patchOf(scene, next);
}

/** The list of a place is made anew each time; its point is not. */
const isSame = (one: readonly PlanPoint[], other: readonly PlanPoint[]) =>
  one.length === other.length && one.every((point, i) => point === other[i]);

/** Shapes whose points differ from one scene to the next. */
export function changedShapes(before: readonly PlanShape[], after: readonly PlanShape[]): readonly PlanShape[] {
  const old = new Map(before.map((shape) => [`${shape.part} ${shape.id} ${shape.piece ?? ''}`, shape]));
  return after.filter((shape) => {
    const was = old.get(`${shape.part} ${shape.id} ${shape.piece ?? ''}`);
    return was === undefined || !isSame(was.points, shape.points) || was.holes !== shape.holes;
  });
}

export const flatPoint = ([x, y]: PlanPoint): PointM => [x, y];
