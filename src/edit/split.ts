/** Areas cut in two along a drawn line. */

import type { ScenePatch } from '../model/history.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import type { Refused } from './refusal.ts';

export interface SplitParts {
  readonly patch: ScenePatch;
  /** The pieces, largest first; the largest keeps the id. */
  readonly selected: readonly Selected[];
}

/**
 * Cuts a zone or a bay along a drawn line. The pieces have the very same new vertices, which neighbours get as well. Holes stay on their side or are cut.
 * Pieces keep build-up, finish and use, or permitted loads and basis, as they lie where the whole one lay; stages that placed the zone place all its pieces.
 * @param scene - the scene
 * @param selected - zone or bay
 * @param line - drawn line, from edge to edge or beyond; a closed one cuts a piece out of a zone
 * @returns what changes, or why it cannot be
 */
export declare function split(scene: SceneFile, selected: Selected, line: readonly PointM[]): SplitParts | Refused;
