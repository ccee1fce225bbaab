/** Steps of undo in the words people know. */

import type { Snapshot } from '../../model/engine.ts';
import type { SceneEdit, ThicknessEdit } from '../../model/history.ts';
import type { Travelled } from '../../store/scene-store.ts';
import { t } from '../text/text.ts';

type Named = Pick<Snapshot, 'buildUps'>;

/** Layer and build-up of a step; where the scene no longer has them, what the file calls them. */
function namesOfLayer({ buildUps }: Named, edit: ThicknessEdit): { readonly layer: string; readonly buildUp: string } {
  const buildUp = buildUps.find(({ id }) => id === edit.buildUp);
  return { layer: buildUp?.layers[edit.layer]?.name ?? String(edit.layer + 1), buildUp: buildUp?.name ?? edit.buildUp };
}

/** What a step did. */
export function editText(snapshot: Named, edit: SceneEdit): string {
  if (edit.kind === 'parts') return t.edits.step(edit);
  const { layer, buildUp } = namesOfLayer(snapshot, edit);
  return t.file.thickness(layer, buildUp, edit.fromMm, edit.toMm);
}

/** What undo or redo just did. */
export function travelledSentence(snapshot: Named, { way, edit }: Travelled): string {
  if (edit.kind === 'parts') return way === 'undo' ? t.edits.undone(edit) : t.edits.redone(edit);
  const { layer, buildUp } = namesOfLayer(snapshot, edit);
  return way === 'undo' ? t.file.undone(layer, buildUp, edit.fromMm) : t.file.redone(layer, buildUp, edit.toMm);
}
