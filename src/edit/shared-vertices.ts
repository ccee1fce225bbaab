/** Vertices at the same place belong together: they are moved, put in and taken out in all parts that have them. */

import type { ScenePatch } from '../model/history.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import { type ListRef, type PlanPoint, pointLists } from './point-lists.ts';

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
export declare function withVerticesAt(
  scene: SceneFile,
  moves: readonly { readonly vertices: readonly VertexRef[]; readonly to: PointM }[],
): ScenePatch;

/**
 * Moves a vertex in all parts that share it, or in one alone.
 * @param scene - the scene
 * @param from - where it is
 * @param to - where it goes
 * @param alone - the one list it moves in; without it, in all
 * @returns what changes
 */
export declare function movedVertex(scene: SceneFile, from: PointM, to: PointM, alone?: ListRef): ScenePatch;

/**
 * Moves an edge parallel to itself, in all parts that share its ends, or in one alone.
 * @param scene - the scene
 * @param edge - the edge, its ends as they stand
 * @param offsetM - to the left of its direction; below 0 to the right [m]
 * @param alone - the one list it moves in; without it, in all
 * @returns what changes
 */
export declare function movedEdge(
  scene: SceneFile,
  edge: { readonly a: PointM; readonly b: PointM },
  offsetM: number,
  alone?: ListRef,
): ScenePatch;

/**
 * Where the ends of an edge come to lie when it moves parallel to itself.
 * @param a - first end
 * @param b - second end
 * @param offsetM - to the left of the direction from a to b [m]
 * @returns both ends
 * @throws RangeError where both ends are the same point
 */
export declare function parallelEdge(a: PointM, b: PointM, offsetM: number): readonly [PointM, PointM];

/**
 * Puts a point into an edge, in all parts that have this edge, whichever way round. Breaklines get the level between.
 * @param scene - the scene
 * @param edge - the edge
 * @param at - the new point, as exact as it is
 * @param alone - the one list it is put into; without it, into all
 * @returns what changes
 */
export declare function insertedVertex(
  scene: SceneFile,
  edge: { readonly a: PointM; readonly b: PointM },
  at: PointM,
  alone?: ListRef,
): ScenePatch;

/**
 * Puts a point into every edge that passes through it (nearer than `ON_EDGE_M`), so that areas which meet there have the very same point and no slivers arise.
 * @param scene - the scene
 * @param at - the point
 * @returns what changes; nothing where no edge passes
 */
export declare function withVertexInserted(scene: SceneFile, at: PointM): ScenePatch;

/**
 * Takes a vertex out of all parts that have it, or of one. A part that would have too few points left keeps it, and the check of the scene has nothing to refuse.
 * @param scene - the scene
 * @param at - where it is
 * @param alone - the one list it is taken out of; without it, of all
 * @returns what changes, and the lists that had to keep it
 */
export declare function removedVertex(
  scene: SceneFile,
  at: PointM,
  alone?: ListRef,
): { readonly patch: ScenePatch; readonly kept: readonly ListRef[] };

/**
 * Takes out points that lie on their neighbour in the list, as a drag may leave them.
 * @param scene - the scene
 * @returns what changes
 */
export declare function settled(scene: SceneFile): ScenePatch;
