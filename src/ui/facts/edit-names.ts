/** A step of undo with the names people know. */

import type { Snapshot } from '../../model/engine.ts';
import type { SceneEdit } from '../../model/history.ts';

/** Layer and build-up of a step; where the scene no longer has them, what the file calls them. */
export function editNames({ buildUps }: Pick<Snapshot, 'buildUps'>, edit: SceneEdit): { readonly layer: string; readonly buildUp: string } {
  const buildUp = buildUps.find(({ id }) => id === edit.buildUp);
  return { layer: buildUp?.layers[edit.layer]?.name ?? String(edit.layer + 1), buildUp: buildUp?.name ?? edit.buildUp };
}
