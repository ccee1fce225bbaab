/** Vertices at the same place belong together: they are moved, put in and taken out in all parts that have them. */

import type { ScenePatch } from '../model/history.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import { isSameList, type ListRef, type PlanPoint, type PointList, pointLists, withPointLists } from './point-lists.ts';

/** A vertex of a list of points, by its index there. */
export interface VertexRef extends ListRef {
  readonly index: number;
}

/** An edge between two neighbouring points of a list; the last edge of an area leads back to its first point. */
export interface EdgeRef extends ListRef {
  /** Index of its first point. */
  readonly edge: number;
  readonly a: PointM;
  readonly b: PointM;
}

export type EdgeEnds = Pick<EdgeRef, 'a' | 'b'>;

/** Points nearer to an edge than this lie on it [m]. */
export const ON_EDGE_M = 1e-6;

/**
 * All vertices of all parts at the very same coordinates. Places (outlets, trees, spot levels …) count only where asked for.
 * @param scene - the scene
 * @param at - coordinates
 * @param places - parts that are a single point, too
 * @returns the vertices; for a closed list both its first and its repeated last point
 */
export function sharedVertices(scene: SceneFile, at: PointM, places = false): readonly VertexRef[] {
  return pointLists(scene).flatMap(({ part, id, piece, form, points }) => {
    if (form === 'point' && !places) return [];
    return points.flatMap((point, index) => (isAt(point, at) ? [{ part, id, ...(piece === undefined ? {} : { piece }), index }] : []));
  });
}

export const isAt = (point: PlanPoint, at: PlanPoint): boolean => point[0] === at[0] && point[1] === at[1];

/**
 * Sets vertices to places. Indices hold for the scene as it stands, so that a drag says absolute ends: take the references once when it begins.
 * Points that come to lie on their neighbour stay in the list until `settled`.
 * @param scene - the scene
 * @param moves - vertices and where they go
 * @returns what changes
 */
export function withVerticesAt(
  scene: SceneFile,
  moves: readonly { readonly vertices: readonly VertexRef[]; readonly to: PointM }[],
): ScenePatch {
  const places = new Map<string, Map<number, PointM>>();
  for (const { vertices, to } of moves) {
    for (const vertex of vertices) {
      const key = listKey(vertex);
      places.set(key, (places.get(key) ?? new Map()).set(vertex.index, to));
    }
  }
  return withPointLists(scene, (list) => {
    const to = places.get(listKey(list));
    return to === undefined ? list.points : list.points.map((point, i) => put(point, to.get(i)));
  });
}

const listKey = ({ part, id, piece }: ListRef) => `${part} ${id} ${piece ?? ''}`;

/** The level of a point stays. */
function put(point: PlanPoint, to: PointM | undefined): PlanPoint {
  if (to === undefined || isAt(point, to)) return point;
  return point[2] === undefined ? [to[0], to[1]] : [to[0], to[1], point[2]];
}

/**
 * Moves a vertex in all parts that share it, or in one alone.
 * @param scene - the scene
 * @param from - where it is
 * @param to - where it goes
 * @param alone - the one list it moves in; without it, in all
 * @returns what changes
 */
export function movedVertex(scene: SceneFile, from: PointM, to: PointM, alone?: ListRef): ScenePatch {
  return withVerticesAt(scene, [{ vertices: together(scene, from, alone), to }]);
}

/** All vertices at a place, or those of one list. */
const together = (scene: SceneFile, at: PointM, alone: ListRef | undefined) =>
  sharedVertices(scene, at).filter((vertex) => alone === undefined || isSameList(vertex, alone));

/**
 * Moves an edge parallel to itself, in all parts that share its ends, or in one alone.
 * @param scene - the scene
 * @param edge - the edge, its ends as they stand
 * @param offsetM - to the left of its direction; below 0 to the right [m]
 * @param alone - the one list it moves in; without it, in all
 * @returns what changes
 */
export function movedEdge(scene: SceneFile, { a, b }: EdgeEnds, offsetM: number, alone?: ListRef): ScenePatch {
  const [toA, toB] = parallelEdge(a, b, offsetM);
  return withVerticesAt(scene, [
    { vertices: together(scene, a, alone), to: toA },
    { vertices: together(scene, b, alone), to: toB },
  ]);
}

/**
 * Where the ends of an edge come to lie when it moves parallel to itself.
 * @param a - first end
 * @param b - second end
 * @param offsetM - to the left of the direction from a to b [m]
 * @returns both ends
 * @throws RangeError where both ends are the same point
 */
export function parallelEdge(a: PointM, b: PointM, offsetM: number): readonly [PointM, PointM] {
  const [alongX, alongY] = [b[0] - a[0], b[1] - a[1]];
  const lengthM = Math.hypot(alongX, alongY);
  if (lengthM === 0) throw new RangeError(`parallelEdge: an edge has two different ends, found (${a[0]}, ${a[1]}) twice`);
  const [dx, dy] = [(-alongY / lengthM) * offsetM, (alongX / lengthM) * offsetM];
  return [
    [a[0] + dx, a[1] + dy],
    [b[0] + dx, b[1] + dy],
  ];
}

/**
 * Puts a point into an edge, in all parts that have this edge, whichever way round. Breaklines get the level between.
 * @param scene - the scene
 * @param edge - the edge
 * @param at - the new point, as exact as it is
 * @param alone - the one list it is put into; without it, into all
 * @returns what changes
 */
export function insertedVertex(scene: SceneFile, { a, b }: EdgeEnds, at: PointM, alone?: ListRef): ScenePatch {
  if (isAt(a, at) || isAt(b, at)) return {};
  return withPointLists(scene, (list) => {
    if (alone !== undefined && !isSameList(list, alone)) return list.points;
    return withInserted(list, at, (from, to) => (isAt(from, a) && isAt(to, b)) || (isAt(from, b) && isAt(to, a)));
  });
}

/**
 * Puts a point into every edge that passes through it (nearer than `ON_EDGE_M`), so that areas which meet there have the very same point and no slivers arise.
 * @param scene - the scene
 * @param at - the point
 * @returns what changes; nothing where no edge passes
 */
export function withVertexInserted(scene: SceneFile, at: PointM): ScenePatch {
  return withVerticesInserted(scene, [at]);
}

/**
 * The same for several points at once.
 * @param scene - the scene
 * @param points - the points
 * @returns what changes
 */
export function withVerticesInserted(scene: SceneFile, points: readonly PointM[]): ScenePatch {
  return withPointLists(scene, (list) =>
    points.reduce<readonly PlanPoint[]>(
      (now, at) => withInserted({ form: list.form, points: now }, at, (from, to) => passes(from, to, at)),
      list.points,
    ),
  );
}

/** Whether a point lies on an edge and not at one of its ends. */
export function passes(a: PlanPoint, b: PlanPoint, at: PlanPoint): boolean {
  const [alongX, alongY] = [b[0] - a[0], b[1] - a[1]];
  const [x, y] = [at[0] - a[0], at[1] - a[1]];
  const along = x * alongX + y * alongY;
  const squared = alongX * alongX + alongY * alongY;
  if (along <= 0 || along >= squared || isNear(a, at) || isNear(b, at)) return false;
  const across = alongX * y - alongY * x;
  return across * across <= ON_EDGE_M * ON_EDGE_M * squared;
}

const isNear = (a: PlanPoint, at: PlanPoint) => Math.hypot(at[0] - a[0], at[1] - a[1]) <= ON_EDGE_M;

type Edges = Pick<PointList, 'form' | 'points'>;

/** A list that has the point already stays. */
function withInserted({ form, points }: Edges, at: PointM, isEdge: (a: PlanPoint, b: PlanPoint) => boolean): readonly PlanPoint[] {
  if (form === 'point') return points;
  const last = form === 'area' ? points.length : points.length - 1;
  for (let i = 0; i < last; i++) {
    const [from, to] = [points[i], points[(i + 1) % points.length]];
    if (!isEdge(from, to)) continue;
    if (points.some((point) => isAt(point, at))) return points;
    return [...points.slice(0, i + 1), between(from, to, at), ...points.slice(i + 1)];
  }
  return points;
}

function between(from: PlanPoint, to: PlanPoint, at: PointM): PlanPoint {
  if (from[2] === undefined || to[2] === undefined) return [at[0], at[1]];
  const whole = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const share = Math.hypot(at[0] - from[0], at[1] - from[1]) / whole;
  return [at[0], at[1], from[2] + share * (to[2] - from[2])];
}

/**
 * Takes a vertex out of all parts that have it, or of one. A part that would have too few points left keeps it.
 * @param scene - the scene
 * @param at - where it is
 * @param alone - the one list it is taken out of; without it, of all
 * @returns what changes, and the lists that had to keep it
 */
export function removedVertex(
  scene: SceneFile,
  at: PointM,
  alone?: ListRef,
): { readonly patch: ScenePatch; readonly kept: readonly ListRef[] } {
  const kept: ListRef[] = [];
  const patch = withPointLists(scene, (list) => {
    const { part, id, piece, form, points } = list;
    if (form === 'point' || (alone !== undefined && !isSameList(list, alone))) return points;
    const left = points.filter((point) => !isAt(point, at));
    if (left.length === points.length) return points;
    const different = new Set(left.map(([x, y]) => `${x} ${y}`)).size;
    if (different >= (form === 'area' ? 3 : 2)) return left;
    kept.push({ part, id, ...(piece === undefined ? {} : { piece }) });
    return points;
  });
  return { patch, kept };
}

/**
 * Takes out points that lie on their neighbour in the list, as a drag may leave them. A list that would have too few points left stays, for the check to refuse.
 * @param scene - the scene
 * @returns what changes
 */
export function settled(scene: SceneFile): ScenePatch {
  return withPointLists(scene, ({ form, points }) => {
    const left = points.filter((point, i) => i === 0 || !isAt(point, points[i - 1]));
    return left.length === points.length || left.length < (form === 'area' ? 3 : 2) ? points : left;
  });
}
