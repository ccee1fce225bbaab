/** Everything that can be saved, behind one button. */

import { useRef, useState } from 'react';
import type { HandoverPicture } from '../../model/engine.ts';
import { LANGUAGES, type Language } from '../../model/language.ts';
import { LANGUAGE_NAMES } from '../frame/LanguageChoice.tsx';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useSaving } from '../use-saving.ts';
import { useView } from '../use-stores.ts';
import { DrawingExports } from './DrawingExports.tsx';
import { PictureExports } from './PictureExports.tsx';
import { TableExports } from './TableExports.tsx';

export function ExportMenu() {
  const dialog = useRef<HTMLDialogElement>(null);
  const [open, setOpen] = useState(false);
  // Kept while the sheet is closed: pictures of several views go into one handover.
  const [pictures, setPictures] = useState<readonly HandoverPicture[]>([]);
  const onOpen = () => {
    setOpen(true);
    dialog.current?.showModal();
  };
  return (
    <>
      <button type="button" className="button strip-button" aria-haspopup="dialog" onClick={onOpen}>
        <Icon name="save" />
        <span>{t.exports.button}</span>
      </button>
      <dialog ref={dialog} className="sheet dialog export-sheet" aria-labelledby="export-title" onClose={() => setOpen(false)}>
        {open && <Sheet pictures={pictures} onPictures={setPictures} onClose={() => dialog.current?.close()} />}
      </dialog>
    </>
  );
}

interface SheetProps {
  readonly pictures: readonly HandoverPicture[];
  readonly onPictures: (pictures: readonly HandoverPicture[]) => void;
  readonly onClose: () => void;
}

function Sheet({ pictures, onPictures, onClose }: SheetProps) {
  const spoken = useView((state) => state.language);
  const [language, setLanguage] = useState<Language>(spoken);
  const saving = useSaving();
  return (
    <>
      <header className="export-head">
        <h2 id="export-title" className="sheet-title">
          {t.exports.title}
        </h2>
        <button type="button" className="icon-button" aria-label={t.exports.close} onClick={onClose}>
          <Icon name="close" />
        </button>
      </header>
      <p className="small">{t.exports.says}</p>
      <label className="section-choice">
        <span>{t.exports.language}</span>
        <select value={language} onChange={({ target }) => setLanguage(LANGUAGES.find((one) => one === target.value) ?? language)}>
          {LANGUAGES.map((one) => (
            <option key={one} value={one} lang={one}>
              {LANGUAGE_NAMES[one]}
            </option>
          ))}
        </select>
      </label>
      <p role="status" className="export-said">
        {saving.busy ? t.exports.working : saving.said}
      </p>
      <div className="export-groups">
        <PictureExports saving={saving} pictures={pictures} onPictures={onPictures} />
        <DrawingExports saving={saving} language={language} />
        <TableExports saving={saving} language={language} pictures={pictures} />
      </div>
    </>
  );
}
