/** Bays of a grid of axes, put into the scene. */

import type { AxisGrid } from '../model/drawing.ts';
import type { ScenePatch } from '../model/history.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';

export interface AxisBays {
  readonly patch: ScenePatch;
  /** The bays made. */
  readonly selected: readonly Selected[];
  /** Ids of bays that kept limits and basis: the same id and the same area as before. */
  readonly kept: readonly string[];
  /** Ids of former bays whose limits and basis are gone with them: to be told before it is done. */
  readonly lost: readonly string[];
  /** Pieces smaller than `SLIVER_M2`. */
  readonly slivers: readonly string[];
}

/**
 * Replaces all bays of the scene by the fields of a grid, cut to the outline of the deck. A bay keeps its limits, vehicles and basis only where
 * a former bay has the same id and covers the same area; a limit never goes to another area.
 * @param scene - the scene
 * @param grid - axes
 * @returns what changes, and what is kept and lost
 * @throws RangeError as `baysFromAxes`
 */
export declare function withBaysFromAxes(scene: SceneFile, grid: AxisGrid): AxisBays;
