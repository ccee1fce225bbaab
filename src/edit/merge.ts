/** Touching areas made one. */

import type { ScenePatch } from '../model/history.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import type { Refused } from './refusal.ts';

export interface MergedParts {
  readonly patch: ScenePatch;
  readonly selected: Selected;
  /** Keys in which the areas differed: of zones the first one's hold; of bays the lower limit holds, a limit that not all have is left out, and the basis goes, so that it is not confirmed. */
  readonly differing: readonly string[];
}

/**
 * Makes zones, or bays, one. All coordinates stay the very same numbers; points between that lie on a straight edge and belong to no other part go.
 * @param scene - the scene
 * @param selected - two or more zones, or two or more bays; the first gives id, name, build-up, finish
 * @returns what changes, or why it cannot be
 */
export declare function merged(scene: SceneFile, selected: readonly Selected[]): MergedParts | Refused;
