/** The editor beside the model: one page at a time, chosen by tabs. Its pages load when they are first opened. */

import { lazy, type ReactNode, Suspense, useRef } from 'react';
import { EDITORS, type EditorName } from '../../store/edit-view.ts';
import { Icon } from '../parts/Icon.tsx';
import { Tabs } from '../parts/Tabs.tsx';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { useKeptFocus } from './use-kept-focus.ts';

const PlanEditor = lazy(() => import('../plan/PlanEditor.tsx').then((module) => ({ default: module.PlanEditor })));
const BuildUpEditor = lazy(() => import('../build-ups/BuildUpEditor.tsx').then((module) => ({ default: module.BuildUpEditor })));
const StageEditor = lazy(() => import('../stages/StageEditor.tsx').then((module) => ({ default: module.StageEditor })));
const VariantSheet = lazy(() => import('../variants/VariantSheet.tsx').then((module) => ({ default: module.VariantSheet })));
const LightenSheet = lazy(() => import('../lighten/LightenSheet.tsx').then((module) => ({ default: module.LightenSheet })));
const ViewsEditor = lazy(() => import('../views/ViewsEditor.tsx').then((module) => ({ default: module.ViewsEditor })));

/** The button in the strip that opens the editor: the focus goes back to it. */
const EDIT_BUTTON = 'open-editor';

const PAGES: Readonly<Record<EditorName, () => ReactNode>> = {
  plan: () => <PlanEditor />,
  'build-ups': () => <BuildUpEditor />,
  stages: () => <StageEditor />,
  variants: () => <VariantSheet />,
  lighten: () => <LightenSheet />,
  views: () => <ViewsEditor />,
};

export function EditPanel({ editor }: { readonly editor: EditorName }) {
  const edit = useView((state) => state.edit);
  const panel = useRef<HTMLElement>(null);
  useKeptFocus(panel);
  const leave = () => {
    document.getElementById(EDIT_BUTTON)?.focus();
    edit(null);
  };
  return (
    <section ref={panel} className="area-edit" aria-label={t.edit.title}>
      <div className="edit-head">
        <Tabs
          names={EDITORS}
          chosen={editor}
          label={t.edit.title}
          id="edit"
          panel="edit-page"
          className="edit-tabs"
          onChoose={edit}
          says={(name) => t.edit.pages[name]}
        />
        <button type="button" className="icon-button" aria-label={t.edit.leave} title={t.edit.leave} onClick={leave}>
          <Icon name="close" />
        </button>
      </div>
      <div key={editor} role="tabpanel" id="edit-page" className="edit-page" aria-labelledby={`edit-${editor}`}>
        <Suspense fallback={null}>{PAGES[editor]()}</Suspense>
      </div>
    </section>
  );
}
