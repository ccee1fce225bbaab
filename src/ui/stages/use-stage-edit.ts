/** Changes of one stage: what it is given, as one step of undo, and why it was refused. */

import { changeStage, type StageChange } from '../../edit/stages.ts';
import type { EditAct, EditPart } from '../../model/history.ts';
import type { SceneStage } from '../../model/scene-file.ts';
import { type Editing, useEdit } from '../edit/use-edit.ts';

export interface StageEditing extends Editing {
  /** `to` says what the stage, as it stands when its turn comes, is given. */
  change(act: EditAct, part: EditPart, name: string, to: (stage: SceneStage) => StageChange): Promise<boolean>;
}

export function useStageEdit(id: string): StageEditing {
  const { issues, run } = useEdit();
  return {
    issues,
    run,
    change: (act, part, name, to) =>
      run(
        (scene) => {
          const stage = scene.stages?.find((one) => one.id === id);
          return stage ? changeStage(scene, id, to(stage)) : {};
        },
        { act, part, names: [name] },
      ),
  };
}

/** The list with one entry changed; it is the entry as it stands then, so that edits in quick succession do not undo each other. */
export const changedAt = <T>(list: readonly T[] | undefined, at: number, change: (entry: T) => T): readonly T[] =>
  (list ?? []).map((entry, i) => (i === at ? change(entry) : entry));

/** The list without one entry. */
export const without = <T>(list: readonly T[] | undefined, at: number): readonly T[] => (list ?? []).toSpliced(at, 1);
