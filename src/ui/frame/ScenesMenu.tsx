/** Demo scenes and the file picker, behind one button. */

import { type ChangeEvent, type FocusEvent, type KeyboardEvent, useId, useRef, useState } from 'react';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import type { Opening } from '../use-open-scene.ts';
import type { Demo } from './TopStrip.tsx';

interface Props {
  readonly demos: readonly Demo[];
  readonly opening: Opening;
}

export function ScenesMenu({ demos, opening }: Props) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  // What had the focus is hidden now; a dialog that follows gives it back to the button.
  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && open) close();
  };
  const onBlur = (event: FocusEvent<HTMLElement>) => {
    // The file picker of the system takes the focus to nowhere: that is no reason to close.
    if (event.relatedTarget instanceof Node && !event.currentTarget.contains(event.relatedTarget)) setOpen(false);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only listens to what bubbles up from its button and list
    <div className="scenes" onKeyDown={onKeyDown} onBlur={onBlur}>
      <button ref={button} type="button" className="button" aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
        {t.scenes.button}
        <Icon name="down" />
      </button>
      {open && <button type="button" className="scenes-away" tabIndex={-1} aria-hidden="true" onClick={() => setOpen(false)} />}
      <div id={id} className="scenes-sheet sheet" hidden={!open}>
        <SceneChoice demos={demos} opening={opening} onDone={close} />
      </div>
    </div>
  );
}

interface ChoiceProps extends Props {
  readonly onDone: () => void;
}

/** The list itself; also stands in the empty page. */
export function SceneChoice({ demos, opening, onDone }: ChoiceProps) {
  const picker = useRef<HTMLInputElement>(null);
  const onPick = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    // The same file chosen again after mending it must count as a change.
    event.target.value = '';
    if (file === undefined) return;
    onDone();
    void opening.openFile(file);
  };
  return (
    <>
      <h2 className="sheet-title">{t.scenes.demos}</h2>
      <ul>
        {demos.map((demo) => (
          <li key={demo.id}>
            <button
              type="button"
              className="demo"
              onClick={() => {
                onDone();
                void opening.openDemo(demo.name, demo.load);
              }}
            >
              {demo.name}
            </button>
          </li>
        ))}
      </ul>
      <button type="button" className="button open-file" onClick={() => picker.current?.click()}>
        <Icon name="file" />
        {t.scenes.openFile}
      </button>
      <input
        ref={picker}
        type="file"
        accept=".json,application/json"
        hidden
        tabIndex={-1}
        aria-label={t.scenes.openFile}
        onChange={onPick}
      />
      <p className="small">{t.scenes.dropHint}</p>
    </>
  );
}
