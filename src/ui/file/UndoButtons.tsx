/** One step back, one step forth: two buttons that say what they would do. */

import { editText } from '../facts/edit-names.ts';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

const WAYS = ['undo', 'redo'] as const;

export function UndoButtons() {
  const history = useScene((state) => state.history);
  const snapshot = useScene((state) => state.snapshot);
  const travel = useScene((state) => state.travel);
  if (snapshot === null) return null;
  return (
    <div className="undo-buttons">
      {WAYS.map((way) => {
        const edit = history[way];
        const says = edit && editText(snapshot, edit);
        const title = says === null ? t.file[way] : way === 'undo' ? t.file.undoes(says) : t.file.redoes(says);
        return (
          // Not switched off when there is nothing left: the focus would fall to nowhere after the last step.
          <button
            key={way}
            type="button"
            className="icon-button"
            aria-label={title}
            title={title}
            aria-disabled={edit === null}
            onClick={() => travel(way)}
          >
            <Icon name={way} />
          </button>
        );
      })}
    </div>
  );
}
