/** Saving the scene, behind one button; asks for the name where the browser would not. */

import { useEffect, useRef, useState } from 'react';
import { Menu } from '../parts/Menu.tsx';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';
import { KeptList } from './KeptList.tsx';
import { ShareLink } from './ShareLink.tsx';
import type { Autosave } from './use-autosave.ts';
import { type Save, useSave } from './use-save.ts';

export function FileMenu({ autosave }: { readonly autosave: Autosave }) {
  const saving = useSave();
  const open = useScene((state) => state.snapshot !== null);
  const saved = useScene((state) => state.saved);
  if (!open) return null;
  return (
    <>
      <Menu label={t.file.menu}>
        {(close, shown) => (
          <>
            <SaveButton saving={saving} anew={false} onDone={close} />
            <SaveButton saving={saving} anew onDone={close} />
            <p className="small">{t.file.lastSaved(saved && t.file.time(saved.at))}</p>
            <p className="small">{t.file.stays}</p>
            {shown && <ShareLink />}
            {shown && <KeptList autosave={autosave} onDone={close} />}
          </>
        )}
      </Menu>
      <p className={saving.failed ? 'file-failed' : 'unseen'} role="status">
        {saving.said}
      </p>
      {saving.asks !== null && <NameDialog proposed={saving.asks} onGive={saving.give} />}
    </>
  );
}

function SaveButton({ saving, anew, onDone }: { readonly saving: Save; readonly anew: boolean; readonly onDone: () => void }) {
  return (
    <button
      type="button"
      className="demo"
      onClick={() => {
        onDone();
        void saving.save(anew);
      }}
    >
      {anew ? t.file.saveAs : t.file.save}
    </button>
  );
}

function NameDialog({ proposed, onGive }: { readonly proposed: string; readonly onGive: Save['give'] }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [name, setName] = useState(proposed);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  return (
    <dialog ref={dialog} className="sheet dialog" aria-labelledby="name-title" onClose={() => void onGive(null)}>
      <h2 id="name-title" className="sheet-title">
        {t.file.nameTitle}
      </h2>
      <form
        method="dialog"
        onSubmit={(event) => {
          event.preventDefault();
          void onGive(name);
        }}
      >
        <label className="file-name">
          {t.file.name}
          <input type="text" value={name} onChange={(event) => setName(event.target.value)} />
        </label>
        <p className="small">{t.file.nameAdd}</p>
        <button type="submit" className="button button-main">
          {t.file.save}
        </button>
        <button type="button" className="button" onClick={() => dialog.current?.close()}>
          {t.file.cancel}
        </button>
      </form>
    </dialog>
  );
}
