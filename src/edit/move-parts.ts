/** Parts moved, turned, mirrored and copied as they are. */

import type { ScenePatch } from '../model/history.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';

/** x' = a·x - b·y + dx and y' = b·x + a·y + dy: shift and turn (a² + b² = 1), scale where asked. Exact for a plain shift. */
export interface Placement {
  readonly a: number;
  readonly b: number;
  readonly dx: number;
  readonly dy: number;
}

/**
 * A plain shift.
 * @param dx - along x [m]
 * @param dy - along y [m]
 * @returns placement
 */
export function shift(dx: number, dy: number): Placement {
  return { a: 1, b: 0, dx, dy };
}

/**
 * A turn about a point.
 * @param about - stays where it is [m]
 * @param turnDeg - counter-clockwise [°]
 * @returns placement
 */
export declare function turn(about: PointM, turnDeg: number): Placement;

/**
 * Moves parts with all that belongs to them: holes, the building line, a zone's own finish (plane or spots; levels stay).
 * Neighbours stay: see `shared-vertices.ts` for what moves together.
 * @param scene - the scene
 * @param selected - parts
 * @param placement - where to; within a gesture always from the scene at its beginning
 * @returns what changes
 */
export declare function moved(scene: SceneFile, selected: readonly Selected[], placement: Placement): ScenePatch;

/**
 * Copies parts beside the originals, with new ids. What stages place of a zone or an object, they place of its copy. A copied bay keeps neither permitted loads
 * nor basis: these hold for the place they were given for.
 * @param scene - the scene
 * @param selected - parts; the outline of the deck is not copied
 * @param placement - where the copies lie
 * @returns what changes and the copies
 */
export declare function duplicated(
  scene: SceneFile,
  selected: readonly Selected[],
  placement: Placement,
): { readonly patch: ScenePatch; readonly selected: readonly Selected[] };
