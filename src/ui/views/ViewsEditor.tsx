/** Saved views: kept from what is seen, gone to, named, put in order, removed. */

import './views.css';
import { type KeyboardEvent, useState } from 'react';
import { moveView, removeView } from '../../edit/views.ts';
import type { Snapshot } from '../../model/engine.ts';
import type { SceneView } from '../../model/scene-file.ts';
import { viewShow } from '../../model/view-show.ts';
import { Refused } from '../edit/Refused.tsx';
import { useEdit } from '../edit/use-edit.ts';
import { walkViews } from '../facts/walk-views.ts';
import { TableHead } from '../parts/TableHead.tsx';
import { t, walk } from '../text/text.ts';
import { useScene, useStores } from '../use-stores.ts';
import { goToView } from '../walk/go-to-view.ts';
import { KeepView } from './KeepView.tsx';
import { ViewForm } from './ViewForm.tsx';

export function ViewsEditor() {
  const snapshot = useScene((state) => state.snapshot);
  return snapshot === null ? null : <Views snapshot={snapshot} />;
}

function Views({ snapshot }: { readonly snapshot: Snapshot }) {
  const { view: store } = useStores();
  const { issues, run } = useEdit();
  const [chosen, setChosen] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const words = t.savedViews;
  const views = walkViews(snapshot, walk.made);
  const own = (snapshot.scene.views ?? []).length > 0;
  const at = views.findIndex(({ id }) => id === chosen);
  const go = (index: number) => {
    const view = views[index];
    if (view === undefined) return;
    setChosen(view.id);
    goToView(store, snapshot, view, index);
  };
  const move = async (from: number, to: number) => {
    const view = views[from];
    if (!own || view === undefined || to < 0 || to >= views.length) return;
    const done = await run((scene) => moveView(scene, view.id, to), { act: 'order', part: 'view', names: [view.name] });
    if (done) setSaid(words.moved(view.name, to + 1, views.length));
  };
  const remove = async (view: SceneView) => {
    if (await run((scene) => removeView(scene, view.id), { act: 'remove', part: 'view', names: [view.name] })) setChosen(null);
  };
  const take = () => void run(() => ({ views }), { act: 'add', part: 'view', names: views.map(({ name }) => name) });
  const shown = own ? views[at] : undefined;
  return (
    <div className="views-editor">
      <p className="small">{own ? words.says : words.made}</p>
      <div className="views-tools">
        <KeepView
          snapshot={snapshot}
          views={views}
          at={at < 0 ? views.length : at + 1}
          className="button"
          onKept={(_, id) => setChosen(id)}
        />
        {!own && (
          <button type="button" className="button" onClick={take}>
            {words.take}
          </button>
        )}
      </div>
      <Refused issues={issues} />
      <ViewsTable snapshot={snapshot} views={views} at={at} onGo={go} onMove={move} />
      <p className="unseen" role="status">
        {said}
      </p>
      {shown && <ViewForm key={shown.id} snapshot={snapshot} view={shown} at={at} count={views.length} onMove={move} onRemove={remove} />}
    </div>
  );
}

interface TableProps {
  readonly snapshot: Snapshot;
  readonly views: readonly SceneView[];
  readonly at: number;
  readonly onGo: (at: number) => void;
  readonly onMove: (from: number, to: number) => void;
}

function ViewsTable({ snapshot, views, at, onGo, onMove }: TableProps) {
  const words = t.savedViews;
  const onKeyDown = (event: KeyboardEvent, index: number) => {
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (step === undefined || !event.altKey) return;
    event.preventDefault();
    onMove(index, index + step);
  };
  return (
    <table className="numbers views-table">
      <caption className="unseen">{words.caption}</caption>
      <TableHead heads={[words.head, words.shows]} />
      <tbody>
        {views.map((view, index) => (
          <tr key={view.id} data-picked={index === at}>
            <th scope="row">
              <button
                type="button"
                className="row-button"
                aria-current={index === at}
                aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown"
                onClick={() => onGo(index)}
                onKeyDown={(event) => onKeyDown(event, index)}
              >
                {words.go(index + 1, view.name)}
              </button>
              {view.says && <span className="small block">{view.says}</span>}
            </th>
            <td>{showText(snapshot, view)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What a view shows besides where one stands. */
function showText({ stages }: Snapshot, view: SceneView): string {
  const words = t.savedViews;
  const { stage, explode, map, cut, lift, plain } = viewShow(view.show);
  const at = stages.findIndex(({ id }) => id === stage);
  return [
    at < 0 ? words.finished : words.stage(at + 1, stages[at]?.name ?? ''),
    ...(explode > 0 ? [words.exploded] : []),
    ...(map === null ? [] : [words.map(t.map.name(map))]),
    ...(cut === null ? [] : [words.cut]),
    ...(lift ? [words.lift] : []),
    ...(plain ? [words.plain] : []),
  ].join(' · ');
}
