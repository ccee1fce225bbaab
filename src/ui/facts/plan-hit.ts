/** What of the plan lies under a pointer: points before lines before areas, the small before the large. */

import { type PlanPoint, type PointList, zoneOfFinish } from '../../edit/point-lists.ts';
import type { PointM } from '../../model/scene-file.ts';
import type { Selected } from '../../model/selected.ts';
import type { PlanLayer } from '../../store/plan-draw.ts';
import { type Box, isInside } from './place.ts';

/** Areas over one another: what one draws on comes first, what lies under everything last. */
const AREA_ORDER = ['stockpile', 'object', 'set-up area', 'zone', 'bay', 'opening', 'outline'] as const;

export const layerOf = ({ part }: Pick<PointList, 'part'>): PlanLayer | null => (part === 'probe' ? null : part);

/** Distance of a point from a stretch. */
export function distanceM([x, y]: PointM, from: PlanPoint, to: PlanPoint): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - from[0]) * dx + (y - from[1]) * dy) / square));
  return Math.hypot(x - from[0] - along * dx, y - from[1] - along * dy);
}

/** Index of the nearest point within reach; null for none. */
export function nearestPoint(at: PointM, points: readonly PlanPoint[], reachM: number): number | null {
  return nearest(points.length, (i) => lengthTo(at, points[i] as PlanPoint), reachM);
}

/** Index of the nearest side within reach, by its first point; null for none. */
export function nearestSide(at: PointM, { points, form }: Pick<PointList, 'points' | 'form'>, reachM: number): number | null {
  const sides = form === 'area' ? points.length : points.length - 1;
  return nearest(Math.max(0, sides), (i) => distanceM(at, points[i] as PlanPoint, points[(i + 1) % points.length] as PlanPoint), reachM);
}

const lengthTo = (at: PointM, point: PlanPoint) => Math.hypot(at[0] - point[0], at[1] - point[1]);

function nearest(count: number, distanceOf: (index: number) => number, reachM: number): number | null {
  let best: number | null = null;
  let leastM = reachM;
  for (let i = 0; i < count; i++) {
    const far = distanceOf(i);
    if (far <= leastM) {
      best = i;
      leastM = far;
    }
  }
  return best;
}

/** How a list is met: by its point, its line, or because the pointer is in it. */
function rankOf(at: PointM, list: PointList, lists: readonly PointList[], reachM: number): number | null {
  const { form, points, part, id, piece } = list;
  if (form === 'point') return nearestPoint(at, points, reachM) === null ? null : 0;
  if (form === 'line') return nearestSide(at, list, reachM) === null ? null : 1;
  if (piece !== undefined || !isInside(at, points as readonly PointM[])) return null;
  const holes = lists.filter((other) => other.part === part && other.id === id && typeof other.piece === 'number');
  if (holes.some((hole) => isInside(at, hole.points as readonly PointM[]))) return null;
  const order = AREA_ORDER.indexOf(part as (typeof AREA_ORDER)[number]);
  return 2 + (order < 0 ? AREA_ORDER.length : order);
}

/** Everything at a place, the first to be meant first. */
export function hitsAt(at: PointM, lists: readonly PointList[], reachM: number): PointList[] {
  return lists
    .flatMap((list) => {
      const rank = rankOf(at, list, lists, reachM);
      return rank === null ? [] : [{ list, rank }];
    })
    .sort((a, b) => a.rank - b.rank)
    .map(({ list }) => list);
}

/** Levels of a finish lie close together all over a zone: they are met only while it, or one of them, is chosen. */
export function meetable(lists: readonly PointList[], chosen: readonly Selected[]): readonly PointList[] {
  const zones = new Set(chosen.map(({ part, id }) => (part === 'finish' ? zoneOfFinish(id) : part === 'zone' ? id : null)));
  return lists.filter(({ part, id }) => part !== 'finish' || zones.has(zoneOfFinish(id)));
}

/** Parts of which every point lies in a box, edges included. The deck itself is never one of several, and levels of a finish go with their zone. */
export function partsWithin(lists: readonly PointList[], { min, max }: Box): readonly Selected[] {
  const isWithin = ([x, y]: PlanPoint) => x >= min[0] && x <= max[0] && y >= min[1] && y <= max[1];
  const parts = new Map<string, Selected & { readonly isWhole: boolean }>();
  for (const { part, id, points } of lists) {
    const key = `${part} ${id}`;
    parts.set(key, { part, id, isWhole: (parts.get(key)?.isWhole ?? part !== 'outline') && points.every(isWithin) });
  }
  const goesAlong = ({ part, id }: Selected) => part === 'finish' && parts.get(`zone ${zoneOfFinish(id)}`)?.isWhole === true;
  return [...parts.values()].flatMap(({ part, id, isWhole }) => (isWhole && !goesAlong({ part, id }) ? [{ part, id }] : []));
}

/** The one to be chosen by a tap: the next one where the first is chosen already. */
export function nextOf<T extends Selected>(hits: readonly T[], chosen: readonly Selected[]): T | null {
  const at = hits.findIndex((hit) => chosen.some((one) => one.part === hit.part && one.id === hit.id));
  return hits[(at + 1) % Math.max(1, hits.length)] ?? null;
}

/** Area of a ring [m²] and length of an open line [m], as they are shown while drawing. */
export function ringAreaM2(points: readonly PlanPoint[]): number {
  const [originX, originY] = points[0] ?? [0, 0];
  let twice = 0;
  points.forEach(([x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] as PlanPoint;
    twice += (x - originX) * (nextY - originY) - (nextX - originX) * (y - originY);
  });
  return Math.abs(twice) / 2;
}

export const lineLengthM = (points: readonly PlanPoint[]): number =>
  points.slice(1).reduce((sum, point, i) => sum + lengthTo([point[0], point[1]], points[i] as PlanPoint), 0);
