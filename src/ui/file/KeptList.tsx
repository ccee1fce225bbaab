/** The last states the browser kept, to go back to. */

import { useEffect, useState } from 'react';
import type { KeptState } from '../../model/kept-state.ts';
import { t } from '../text/text.ts';
import { keptStates } from './kept-states.ts';
import type { Autosave } from './use-autosave.ts';

export function KeptList({ autosave, onDone }: { readonly autosave: Autosave; readonly onDone: () => void }) {
  const [states, setStates] = useState<readonly KeptState[] | null>(null);
  useEffect(() => {
    // What refuses to be read is said by the autosave itself.
    void keptStates().then(setStates, () => setStates([]));
  }, []);
  if (autosave.refused) return <p role="alert">{t.file.keepsNone}</p>;
  if (states === null) return null;
  if (states.length === 0) return <p className="small">{t.file.keptNone}</p>;
  return (
    <details className="kept">
      <summary>{t.file.kept(states.length)}</summary>
      <ul>
        {states.map((state) => (
          <li key={state.id}>
            <button
              type="button"
              className="demo"
              onClick={() => {
                onDone();
                void autosave.openState(state);
              }}
            >
              {t.file.keptState(state.name, t.file.time(new Date(state.at)))}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
