/** Edits of the scene from a page of the editor, with the errors by which the last one was refused. */

import { useCallback, useState } from 'react';
import type { PartsEdit, ScenePatch } from '../../model/history.ts';
import type { Issue } from '../../model/issue.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { useScene } from '../use-stores.ts';

export interface Editing {
  /** Why the last edit was refused; empty where it was done. */
  readonly issues: readonly Issue[];
  /** True where the edit was done. */
  run(make: (scene: SceneFile) => ScenePatch, edit: Omit<PartsEdit, 'kind'>, gesture?: number): Promise<boolean>;
}

export function useEdit(): Editing {
  const edit = useScene((state) => state.edit);
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  const run = useCallback(
    async (make: (scene: SceneFile) => ScenePatch, what: Omit<PartsEdit, 'kind'>, gesture?: number) => {
      const found = await edit(make, { kind: 'parts', ...what }, gesture);
      setIssues(found);
      return found.length === 0;
    },
    [edit],
  );
  return { issues, run };
}
