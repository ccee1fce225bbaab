/** Begins a scene from nothing: its name and the size of a deck, which is then drawn, imported or changed in the editor. */

import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import { newScene } from '../../edit/new-scene.ts';
import { fieldUnit, readField } from '../field-units.ts';
import { t } from '../text/text.ts';
import { useStores } from '../use-stores.ts';

/** Larger decks are refused by the scene's own check. */
const SIDES_M = { least: 1, most: 1000 };

export function NewScene({ onClose }: { readonly onClose: () => void }) {
  const { scene, view } = useStores();
  const dialog = useRef<HTMLDialogElement>(null);
  const [name, setName] = useState('');
  const [sides, setSides] = useState(['', '']);
  const [problem, setProblem] = useState('');
  const sideFields = useRef<(HTMLInputElement | null)[]>([]);
  const id = useId();
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  const onSubmit = async (event: FormEvent) => {
    event.preventDefault();
    const [lengthM, widthM] = sides.map(sideOf);
    if (lengthM === null || lengthM === undefined || widthM === null || widthM === undefined) {
      setProblem(t.newScene.sidesWrong(SIDES_M.least, SIDES_M.most));
      sideFields.current[lengthM === null ? 0 : 1]?.focus();
      return;
    }
    const called = name.trim() || t.newScene.unnamed;
    dialog.current?.close();
    await scene.getState().openText(called, `${JSON.stringify(newScene(called, lengthM, widthM), null, 2)}\n`, true);
    view.getState().edit('plan');
    // The dialog gives the focus back to the menu; work goes on in the editor, once it is there.
    requestAnimationFrame(() => document.getElementById('edit-plan')?.focus());
  };
  return (
    <dialog ref={dialog} className="sheet dialog" aria-labelledby={`${id}-title`} onClose={onClose}>
      <h2 id={`${id}-title`} className="sheet-title">
        {t.newScene.title}
      </h2>
      <form className="new-scene" onSubmit={(event) => void onSubmit(event)}>
        <label className="file-name">
          {t.newScene.name}
          <input
            type="text"
            className="text-field"
            autoComplete="off"
            value={name}
            aria-describedby={`${id}-unnamed`}
            onChange={(event) => setName(event.target.value)}
          />
        </label>
        <p id={`${id}-unnamed`} className="small">
          {t.newScene.withoutName(t.newScene.unnamed)}
        </p>
        <div className="new-scene-sides">
          {[t.newScene.length, t.newScene.width].map((label, side) => (
            <label key={label} className="file-name">
              {label}
              <span className="number-field">
                <input
                  ref={(field) => {
                    sideFields.current[side] = field;
                  }}
                  type="text"
                  inputMode="decimal"
                  autoComplete="off"
                  aria-invalid={problem !== '' && sideOf(sides[side] ?? '') === null}
                  aria-describedby={problem === '' ? undefined : `${id}-problem`}
                  value={sides[side]}
                  onChange={(event) => setSides(sides.map((old, at) => (at === side ? event.target.value : old)))}
                />
                <span className="unit">{fieldUnit('m')}</span>
              </span>
            </label>
          ))}
        </div>
        {problem !== '' && (
          <p id={`${id}-problem`} className="field-problem" role="alert">
            {problem}
          </p>
        )}
        <p className="small">{t.newScene.says}</p>
        <p>
          <button type="submit" className="button button-main">
            {t.newScene.begin}
          </button>
          <button type="button" className="button" onClick={() => dialog.current?.close()}>
            {t.file.cancel}
          </button>
        </p>
      </form>
    </dialog>
  );
}

/** Length typed, in metres; null where it is none or no side of a deck. */
function sideOf(typed: string): number | null {
  const read = readField(typed, 'm');
  return read.ok && read.value >= SIDES_M.least && read.value <= SIDES_M.most ? read.value : null;
}
