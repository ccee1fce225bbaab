/** One saved view: name, caption, its place in the order, and the way it is seen, taken anew. */

import { useState } from 'react';
import { changeView, type ViewChange } from '../../edit/views.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { SceneView } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { useEdit } from '../edit/use-edit.ts';
import { MoveButtons } from '../parts/MoveButtons.tsx';
import { TextField } from '../parts/TextField.tsx';
import { t } from '../text/text.ts';
import { useViewNow } from './use-view-now.ts';

interface Props {
  readonly snapshot: Snapshot;
  readonly view: SceneView;
  readonly at: number;
  readonly count: number;
  readonly onMove: (from: number, to: number) => void;
  readonly onRemove: (view: SceneView) => void;
}

export function ViewForm({ snapshot, view, at, count, onMove, onRemove }: Props) {
  const { issues, run } = useEdit();
  const [said, setSaid] = useState('');
  const now = useViewNow(snapshot);
  const words = t.savedViews;
  const change = (act: 'rename' | 'change', to: ViewChange) =>
    run((scene) => changeView(scene, view.id, to), { act, part: 'view', names: [to.name ?? view.name] });
  const onAgain = async () => {
    const seen = now();
    if (seen === null) {
      setSaid(words.noView);
      return;
    }
    if (await change('change', seen.view)) setSaid(seen.cutLost ? `${words.kept(view.name)} ${words.cutLost}` : words.kept(view.name));
  };
  return (
    <fieldset className="view-form">
      <legend className="block-title">{words.chosen}</legend>
      <span className="view-field">
        <span aria-hidden="true">{words.name}</span>
        <TextField label={words.name} value={view.name} required onCommit={(name) => void change('rename', { name })} />
      </span>
      <span className="view-field">
        <span aria-hidden="true">{words.words}</span>
        <TextField label={words.words} value={view.says ?? ''} lines={2} onCommit={(says) => void change('change', { says })} />
      </span>
      <Refused issues={issues} />
      <div className="views-tools">
        <button type="button" className="button" onClick={onAgain}>
          {words.again}
        </button>
        <MoveButtons
          labels={{ up: words.earlier, down: words.later }}
          first={at === 0}
          last={at === count - 1}
          onMove={(way) => onMove(at, way === 'up' ? at - 1 : at + 1)}
        />
        <button type="button" className="button" onClick={() => onRemove(view)}>
          {words.remove}
        </button>
      </div>
      <p role="status" className="small">
        {said}
      </p>
    </fieldset>
  );
}
