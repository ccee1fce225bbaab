/** Which keys do what, the switch for still pictures, and the remarks that go with every scene. */

import { useEffect, useRef } from 'react';
import { StillChoice } from '../settings/StillChoice.tsx';
import { t } from '../text/text.ts';

const GROUPS = ['model', 'rail', 'tables', 'plan', 'walk'] as const;

export function KeysHelp({ onClose }: { readonly onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  return (
    <dialog ref={dialog} className="sheet dialog" aria-labelledby="help-title" onClose={onClose}>
      <h2 id="help-title" className="sheet-title">
        {t.help.title}
      </h2>
      {GROUPS.map((group) => (
        <section key={group}>
          <h3>{t.help[group]}</h3>
          <dl className="keys">
            {t.help.keys[group].map(([key, does]) => (
              <div key={key}>
                <dt>{key}</dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
      <StillChoice />
      <p>{t.app.statementFull}</p>
      <p className="small">{t.file.built(t.file.time(new Date(import.meta.env.VITE_BUILT)))}</p>
      <button type="button" className="button" onClick={() => dialog.current?.close()}>
        {t.help.close}
      </button>
    </dialog>
  );
}
