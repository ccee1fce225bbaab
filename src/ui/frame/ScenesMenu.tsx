/** Demo scenes and the file picker, behind one button. */

import { type ChangeEvent, useRef, useState } from 'react';
import { Icon } from '../parts/Icon.tsx';
import { Menu } from '../parts/Menu.tsx';
import { t } from '../text/text.ts';
import type { Opening } from '../use-open-scene.ts';
import { NewScene } from './NewScene.tsx';
import type { Demo } from './TopStrip.tsx';

interface Props {
  readonly demos: readonly Demo[];
  readonly opening: Opening;
}

export function ScenesMenu({ demos, opening }: Props) {
  const [asks, setAsks] = useState(false);
  return (
    <>
      <Menu label={t.scenes.button}>
        {(close) => <SceneChoice demos={demos} opening={opening} onDone={close} onNew={() => setAsks(true)} />}
      </Menu>
      {asks && <NewScene onClose={() => setAsks(false)} />}
    </>
  );
}

interface ChoiceProps extends Props {
  readonly onDone: () => void;
  readonly onNew: () => void;
}

/** The list itself; also stands in the empty page. */
export function SceneChoice({ demos, opening, onDone, onNew }: ChoiceProps) {
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
      <button
        type="button"
        className="button open-file"
        onClick={() => {
          onDone();
          onNew();
        }}
      >
        <Icon name="pencil" />
        {t.newScene.open}
      </button>
      <button type="button" className="button open-file" onClick={() => picker.current?.click()}>
        <Icon name="file" />
        {t.scenes.openFile}
      </button>
      <input ref={picker} type="file" hidden tabIndex={-1} aria-label={t.scenes.openFile} onChange={onPick} />
      <p className="small">{t.scenes.dropHint}</p>
    </>
  );
}
