/** The whole page: strip on top, core log, model, tables, stages; puts the stores within reach of every part. */

import './tokens.css';
import './themes.css';
import './app.css';
import './edit/edit.css';
import './parts/parts.css';
import './parts/fields.css';
import './file/file.css';
import './frame/frame.css';
import './frame/legend.css';
import './frame/plan.css';
import './frame/tools.css';
import './import/import.css';
import './import/import-picture.css';
import './log/log.css';
import './section/section.css';
import './export/export.css';
import './sheets/paper.css';
import './sheets/sheet-parts.css';
import './sheets/talk.css';
import './side/register.css';
import './side/side.css';
import './side/sheets.css';
import './side/water.css';
import './side/wheels.css';
import './stage/stage.css';
import './variants/variants.css';
import './walk/walk.css';
import { type ReactNode, useMemo } from 'react';
import type { ImportStore } from '../store/import-store.ts';
import type { SceneStore } from '../store/scene-store.ts';
import type { ViewStore } from '../store/view-store.ts';
import { EditPanel } from './edit/EditPanel.tsx';
import { RecoveredStrip } from './file/RecoveredStrip.tsx';
import { useAutosave } from './file/use-autosave.ts';
import { useLeaveWarning } from './file/use-leave-warning.ts';
import { useLink } from './file/use-link.ts';
import { useUndoKeys } from './file/use-undo-keys.ts';
import { AddressStrip } from './frame/AddressStrip.tsx';
import { FileDrop } from './frame/FileDrop.tsx';
import { LiveSummary } from './frame/LiveSummary.tsx';
import { RefusalSheet } from './frame/RefusalSheet.tsx';
import { type Demo, TopStrip } from './frame/TopStrip.tsx';
import { ViewArea } from './frame/ViewArea.tsx';
import { ImportPage } from './import/ImportPage.tsx';
import { useLanguage } from './language.ts';
import { CorePanel } from './log/CorePanel.tsx';
import { Follows } from './parts/Follows.tsx';
import { Hatches } from './parts/Hatches.tsx';
import { WithDerivations } from './sheets/DerivationDialog.tsx';
import { SheetOverlay } from './sheets/SheetOverlay.tsx';
import { TalkMode } from './sheets/TalkMode.tsx';
import { SidePanel } from './side/SidePanel.tsx';
import { StageRail } from './stage/StageRail.tsx';
import { t } from './text/text.ts';
import { useBehind } from './use-behind.ts';
import { useDriving } from './use-driving.ts';
import { useLayout } from './use-media.ts';
import { useOpenScene } from './use-open-scene.ts';
import { usePlaying } from './use-playing.ts';
import { useStillMotion } from './use-still-motion.ts';
import { StoresContext, useScene, useView } from './use-stores.ts';
import { useTheme } from './use-theme.ts';
import { WalkPanels } from './walk/WalkPanels.tsx';

export interface AppProps {
  readonly scene: SceneStore;
  readonly view: ViewStore;
  readonly imports: ImportStore;
  readonly demos: readonly Demo[];
  readonly canvas: ReactNode;
}

export function App({ scene, view, imports, demos, canvas }: AppProps) {
  const stores = useMemo(() => ({ scene, view, imports }), [scene, view, imports]);
  return (
    <StoresContext value={stores}>
      <Hatches />
      <WithDerivations>
        <Page demos={demos} canvas={canvas} />
      </WithDerivations>
      <TalkMode />
      <SheetOverlay />
      <ImportPage />
    </StoresContext>
  );
}

function Page({ demos, canvas }: Pick<AppProps, 'demos' | 'canvas'>) {
  const layout = useLayout();
  const opening = useOpenScene();
  const empty = useScene((state) => state.snapshot === null);
  usePlaying();
  useUndoKeys();
  useLeaveWarning();
  useLink(opening);
  const autosave = useAutosave();
  useBehind();
  useDriving();
  useStillMotion();
  useTheme();
  useLanguage();
  const walking = useView((state) => state.walk !== null) && !empty;
  const editor = useView((state) => (empty || walking ? null : state.editor));
  // What stands before the page is all that keys and readers reach.
  const covered = useView((state) => state.sheet !== null || state.card !== null) && !empty;
  return (
    <div className={`page ${empty ? 'page-empty' : walking ? 'page-walk' : `page-${layout}`}${editor ? ' page-edit' : ''}`} inert={covered}>
      {!empty && !walking && (
        <a className="skip" href="#tables">
          {t.app.skip}
        </a>
      )}
      {!walking && <TopStrip demos={demos} opening={opening} autosave={autosave} />}
      {editor && <EditPanel editor={editor} />}
      {layout === 'split' && !empty && !walking && !editor && (
        <aside className="area-core" aria-label={t.core.title}>
          <CorePanel />
        </aside>
      )}
      <ViewArea layout={layout} bare={walking} canvas={canvas} demos={demos} opening={opening} />
      {!empty && !walking && (!editor || layout === 'split') && <SidePanel layout={layout} />}
      {walking && <WalkPanels />}
      {layout !== 'phone' && !empty && !walking && (
        <section className="area-rail" aria-label={t.stage.title}>
          <Follows what="tables" />
          <StageRail />
        </section>
      )}
      {!walking && <RecoveredStrip autosave={autosave} />}
      {!walking && <AddressStrip demos={demos} />}
      <RefusalSheet opening={opening} />
      {!walking && <FileDrop opening={opening} />}
      {!walking && <LiveSummary />}
    </div>
  );
}
