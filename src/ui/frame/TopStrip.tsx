/** Top of the page: name, open scene, the way to other scenes, and the statement that is never hidden. */

import { ExportMenu } from '../export/ExportMenu.tsx';
import { FileMenu } from '../file/FileMenu.tsx';
import { UndoButtons } from '../file/UndoButtons.tsx';
import type { Autosave } from '../file/use-autosave.ts';
import { Icon } from '../parts/Icon.tsx';
import { SettingsMenu } from '../settings/SettingsMenu.tsx';
import { SheetsMenu } from '../sheets/SheetsMenu.tsx';
import { t, walk } from '../text/text.ts';
import type { Opening } from '../use-open-scene.ts';
import { useScene, useView } from '../use-stores.ts';
import { LanguageChoice } from './LanguageChoice.tsx';
import { ScenesMenu } from './ScenesMenu.tsx';

export interface Demo {
  readonly id: string;
  readonly name: string;
  load(): Promise<string>;
}

interface Props {
  readonly demos: readonly Demo[];
  readonly opening: Opening;
}

export function TopStrip({ demos, opening, autosave }: Props & { readonly autosave: Autosave }) {
  const name = useScene((state) => state.snapshot?.scene.name);
  const changed = useScene((state) => state.history.changed);
  const saved = useScene((state) => state.saved);
  const working = useScene((state) => state.status === 'working');
  const editing = useView((state) => state.editor !== null);
  const edit = useView((state) => state.edit);
  const startWalk = useView((state) => state.startWalk);
  return (
    <header className="area-top top-strip">
      <h1 className="wordmark">
        <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
          <path d="M1 6q4.5-4 9 0t9 0" />
          <path d="M1 11q4.5-2.5 9 0t9 0" />
          <path d="M1 16h18" />
        </svg>
        {t.app.name}
      </h1>
      <ScenesMenu demos={demos} opening={opening} />
      <FileMenu autosave={autosave} />
      <UndoButtons />
      <p className="scene-name">
        <span className="scene-called">{working ? t.app.working : (name ?? t.app.noScene)}</span>{' '}
        {(changed || saved) && !working && (
          <span className="scene-state small">
            {changed && <span>{t.file.changed}</span>}
            <span className="scene-saved">
              {changed && <>{' · '}</>}
              {t.file.lastSaved(saved && t.file.time(saved.at))}
            </span>
          </span>
        )}
      </p>
      {name !== undefined && (
        <button type="button" className="button strip-button" onClick={startWalk}>
          <Icon name="eye" />
          <span>{walk.enter}</span>
        </button>
      )}
      {name !== undefined && (
        <button
          id="open-editor"
          type="button"
          className="button strip-button"
          aria-pressed={editing}
          onClick={() => edit(editing ? null : 'plan')}
        >
          <Icon name="pencil" />
          <span>{t.edit.open}</span>
        </button>
      )}
      <SheetsMenu />
      {name !== undefined && <ExportMenu />}
      <SettingsMenu />
      <LanguageChoice />
      <p className="statement">
        <span className="statement-full">{t.app.statementFull}</span>
        <span className="statement-long">{t.app.statement}</span>
        <span className="statement-short">{t.app.statementShort}</span>
      </p>
    </header>
  );
}
