/** What stands in the middle before any scene is open. */

import { useState } from 'react';
import { t } from '../text/text.ts';
import type { Opening } from '../use-open-scene.ts';
import { useScene } from '../use-stores.ts';
import { NewScene } from './NewScene.tsx';
import { SceneChoice } from './ScenesMenu.tsx';
import type { Demo } from './TopStrip.tsx';

const NOTHING = () => undefined;

export function EmptyState({ demos, opening }: { readonly demos: readonly Demo[]; readonly opening: Opening }) {
  const [asks, setAsks] = useState(false);
  const working = useScene((state) => state.status === 'working');
  if (working) {
    return (
      <div className="empty">
        <p>{t.empty.working}</p>
      </div>
    );
  }
  return (
    <div className="empty">
      <h2>{t.empty.title}</h2>
      <p>{t.empty.says}</p>
      <p className="small">{t.app.statementFull}</p>
      <SceneChoice demos={demos} opening={opening} onDone={NOTHING} onNew={() => setAsks(true)} />
      {asks && <NewScene onClose={() => setAsks(false)} />}
    </div>
  );
}
