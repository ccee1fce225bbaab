/** One button that keeps the view as it is seen now, behind the one last gone to; says that it did. */

import { useState } from 'react';
import { keepView, nextViewId } from '../../edit/views.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { SceneView } from '../../model/scene-file.ts';
import { Refused } from '../edit/Refused.tsx';
import { useEdit } from '../edit/use-edit.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { useViewNow } from './use-view-now.ts';

interface Props {
  readonly snapshot: Snapshot;
  /** Views shown now, kept by the scene or made. */
  readonly views: readonly SceneView[];
  /** Place of the new one. */
  readonly at: number;
  readonly className: string;
  readonly onKept: (at: number, id: string) => void;
}

export function KeepView({ snapshot, views, at, className, onKept }: Props) {
  const { issues, run } = useEdit();
  const [said, setSaid] = useState('');
  const able = useView((state) => state.stand !== null);
  const now = useViewNow(snapshot);
  const words = t.savedViews;
  const onClick = async () => {
    const seen = now();
    if (seen === null) return;
    const view = { id: nextViewId(views), name: words.newName(views.length + 1), ...seen.view };
    const done = await run((scene) => keepView(scene, view, at, views), { act: 'add', part: 'view', names: [view.name] });
    if (!done) return;
    setSaid(seen.cutLost ? `${words.kept(view.name)} ${words.cutLost}` : words.kept(view.name));
    onKept(at, view.id);
  };
  return (
    <>
      <button type="button" className={className} disabled={!able} onClick={onClick}>
        {words.keep}
      </button>
      <span role="status" className="small">
        {able ? said : words.noView}
      </span>
      <Refused issues={issues} />
    </>
  );
}
