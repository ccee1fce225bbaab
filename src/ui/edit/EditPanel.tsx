/** The editor beside the model: one page at a time, chosen by tabs. Its pages load when they are first opened. */

import { type KeyboardEvent, lazy, type ReactNode, Suspense, useRef } from 'react';
import { EDITORS, type EditorName } from '../../store/edit-view.ts';
import { Icon } from '../parts/Icon.tsx';
import { tabAfter } from '../parts/tab-keys.ts';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';

const PlanEditor = lazy(() => import('../plan/PlanEditor.tsx').then((module) => ({ default: module.PlanEditor })));
const BuildUpEditor = lazy(() => import('../build-ups/BuildUpEditor.tsx').then((module) => ({ default: module.BuildUpEditor })));
const StageEditor = lazy(() => import('../stages/StageEditor.tsx').then((module) => ({ default: module.StageEditor })));
const VariantSheet = lazy(() => import('../variants/VariantSheet.tsx').then((module) => ({ default: module.VariantSheet })));
const LightenSheet = lazy(() => import('../lighten/LightenSheet.tsx').then((module) => ({ default: module.LightenSheet })));
const ViewsEditor = lazy(() => import('../views/ViewsEditor.tsx').then((module) => ({ default: module.ViewsEditor })));

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
  const list = useRef<HTMLDivElement>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const to = tabAfter(event.key, EDITORS.indexOf(editor), EDITORS.length);
    if (to === null) return;
    event.preventDefault();
    edit(EDITORS[to] ?? null);
    list.current?.querySelectorAll('button')[to]?.focus();
  };
  return (
    <section className="area-edit" aria-label={t.edit.title}>
      <div className="edit-head">
        <div ref={list} role="tablist" className="edit-tabs" aria-label={t.edit.title} onKeyDown={onKeyDown}>
          {EDITORS.map((one) => (
            <button
              key={one}
              id={`edit-tab-${one}`}
              type="button"
              role="tab"
              aria-selected={one === editor}
              aria-controls="edit-page"
              tabIndex={one === editor ? 0 : -1}
              onClick={() => edit(one)}
            >
              {t.edit.pages[one]}
            </button>
          ))}
        </div>
        <button type="button" className="icon-button" aria-label={t.edit.leave} title={t.edit.leave} onClick={() => edit(null)}>
          <Icon name="close" />
        </button>
      </div>
      <div key={editor} role="tabpanel" id="edit-page" className="edit-page" aria-labelledby={`edit-tab-${editor}`}>
        <Suspense fallback={null}>{PAGES[editor]()}</Suspense>
      </div>
    </section>
  );
}
