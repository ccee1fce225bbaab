/** Takes what was read over: as a scene, into the open one by one step of undo, or as lines under the plan. */

import { useState } from 'react';
import { takeParts } from '../../edit/take-parts.ts';
import type { DrawnPart, DrawnParts, Takings } from '../../model/drawn-parts.ts';
import { DRAWN_PARTS } from '../../model/drawn-parts.ts';
import type { EditPart, PartsEdit } from '../../model/history.ts';
import type { ReadView } from '../../model/importer.ts';
import type { Issue } from '../../model/issue.ts';
import { underlayLinesOf } from '../../store/underlay-lines.ts';
import { takingsOf } from '../facts/import-facts.ts';
import { useStores } from '../use-stores.ts';

export interface Take {
  readonly busy: boolean;
  /** Why the open scene did not take it. */
  readonly refused: readonly Issue[];
  take(): Promise<void>;
}

export function useTake(read: ReadView): Take {
  const { scene, view, imports } = useStores();
  const [refused, setRefused] = useState<readonly Issue[]>([]);
  const [busy, setBusy] = useState(false);
  const done = () => {
    imports.getState().close();
    view.getState().edit('plan');
  };
  const toScene = async () => {
    const { draft, target, takings } = imports.getState();
    if (draft === null) return;
    const taken = await imports.getState().take(minuteOf(new Date()));
    if (taken === null) return;
    const { parts, history, sceneText } = taken;
    if (target === 'new') {
      if (sceneText === null) return;
      imports.getState().close();
      await scene.getState().openText(read.name, sceneText, true);
      view.getState().edit('plan');
      return;
    }
    const into = takingsOf(draft, takings);
    const errors = await scene.getState().edit((old) => takeParts(old, parts, into, history), importOf(parts, into, read.name));
    setRefused(errors);
    if (errors.length === 0) done();
  };
  const take = async () => {
    setBusy(true);
    setRefused([]);
    try {
      const { target } = imports.getState();
      if (target !== 'underlay') return await toScene();
      view.getState().setUnderlayLines(underlayLinesOf(read.name, read.preview));
      done();
    } finally {
      setBusy(false);
    }
  };
  return { busy, refused, take };
}

const EDITED: Readonly<Record<DrawnPart, EditPart>> = {
  outline: 'outline',
  openings: 'opening',
  levels: 'levels',
  bays: 'bay',
  zones: 'zone',
  edges: 'edge',
  columns: 'column',
  outlets: 'outlet',
  trees: 'object',
};

/** One kind of part is named, several are the scene. */
function importOf(parts: DrawnParts, takings: Takings, name: string): PartsEdit {
  const taken = DRAWN_PARTS.filter((part) => parts[part] !== undefined && takings[part] !== 'leave');
  const [only, second] = taken;
  return { kind: 'parts', act: 'import', part: only !== undefined && second === undefined ? EDITED[only] : 'scene', names: [name] };
}

/** Date and time to the minute, in universal time. */
const minuteOf = (when: Date): string => `${when.toISOString().slice(0, 16)}Z`;
