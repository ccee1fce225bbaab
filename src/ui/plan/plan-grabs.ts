/** What a press takes hold of: corner, handle in the middle of a side, side, or the chosen parts themselves. */

import type { ListRef, PlanPoint, PointList } from '../../edit/point-lists.ts';
import type { PointM } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import { type Drag, flatPoint } from '../facts/plan-drag.ts';
import { hitsAt, nearestPoint, nearestSide } from '../facts/plan-hit.ts';

/** Sides shorter than this have no handle in their middle [px]. */
export const HANDLE_SIDE_PX = 46;

export const isIn = (selected: readonly Selected[], one: Selected): boolean =>
  selected.some(({ part, id }) => part === one.part && id === one.id);

export const toggledIn = (selected: readonly Selected[], one: Selected): readonly Selected[] =>
  isIn(selected, one) ? selected.filter(({ part, id }) => part !== one.part || id !== one.id) : addedTo(selected, [one]);

/** With others: the deck itself is never one of several. */
export const addedTo = (selected: readonly Selected[], others: readonly Selected[]): readonly Selected[] => [
  ...selected.filter((one) => one.part !== 'outline' && !isIn(others, one)),
  ...others,
];

const refOf = ({ part, id, piece }: PointList): ListRef => ({ part, id, ...(piece === undefined ? {} : { piece }) });

/** Corners of all rings come before sides, so that a corner on a side is a corner. */
export function handleAt(at: PointM, lists: readonly PointList[], reachM: number, handleSideM: number): Drag | null {
  const shapes = lists.filter(({ form }) => form !== 'point');
  for (const list of shapes) {
    const found = cornerAt(at, list, reachM);
    if (found !== null) return found;
  }
  for (const list of shapes) {
    const found = sideAt(at, list, reachM, handleSideM);
    if (found !== null) return found;
  }
  return null;
}

function cornerAt(at: PointM, list: PointList, reachM: number): Drag | null {
  const { form, points } = list;
  const corner = nearestPoint(at, points, reachM);
  if (corner === null) return null;
  const before = points[form === 'area' ? (corner + points.length - 1) % points.length : corner - 1];
  return {
    kind: 'vertex',
    of: refOf(list),
    from: flatPoint(points[corner] as PlanPoint),
    before: before === undefined ? null : flatPoint(before),
  };
}

function sideAt(at: PointM, list: PointList, reachM: number, handleSideM: number): Drag | null {
  const { points } = list;
  const side = nearestSide(at, list, reachM);
  if (side === null) return null;
  const [a, b] = [flatPoint(points[side] as PlanPoint), flatPoint(points[(side + 1) % points.length] as PlanPoint)];
  const middle: PointM = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const isLong = Math.hypot(b[0] - a[0], b[1] - a[1]) >= handleSideM;
  const isMiddle = isLong && Math.hypot(at[0] - middle[0], at[1] - middle[1]) <= reachM;
  return isMiddle ? { kind: 'insert', of: refOf(list), edge: { a, b } } : { kind: 'edge', of: refOf(list), edge: { a, b } };
}

/** The chosen parts, held by the corner nearest to the pointer. The deck itself is not carried about. */
export function partAt(at: PointM, lists: readonly PointList[], selected: readonly Selected[], reachM: number): Drag | null {
  const hit = hitsAt(at, lists, reachM).find(({ part, id }) => isIn(selected, { part, id }));
  if (hit === undefined || hit.part === 'outline') return null;
  const nearest = nearestPoint(at, hit.points, Number.POSITIVE_INFINITY);
  const anchor = nearest === null ? at : flatPoint(hit.points[nearest] as PlanPoint);
  return { kind: 'parts', of: selected, grab: at, anchor };
}
