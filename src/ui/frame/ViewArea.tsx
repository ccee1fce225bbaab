/** The model, free of anything over it, with its map bar, cut, tools and legend around it; or the choice of scenes, or the plan. */

import type { ReactNode } from 'react';
import { SectionPanel } from '../section/SectionPanel.tsx';
import { t } from '../text/text.ts';
import type { Layout } from '../use-media.ts';
import type { Opening } from '../use-open-scene.ts';
import { useScene, useView } from '../use-stores.ts';
import { CutStrip } from './CutStrip.tsx';
import { EmptyState } from './EmptyState.tsx';
import { ExplodeTool } from './ExplodeTool.tsx';
import { Legend } from './Legend.tsx';
import { MapBar } from './MapBar.tsx';
import { PlanFallback } from './PlanFallback.tsx';
import type { Demo } from './TopStrip.tsx';
import { ViewTools } from './ViewTools.tsx';

interface Props {
  readonly layout: Layout;
  /** The model alone, without anything to work with. */
  readonly bare: boolean;
  readonly canvas: ReactNode;
  readonly demos: readonly Demo[];
  readonly opening: Opening;
}

export function ViewArea({ layout, bare, canvas, demos, opening }: Props) {
  const hasScene = useScene((state) => state.snapshot !== null);
  const state = useView((view) => view.canvas);
  const flat = state === 'unavailable';
  return (
    <main className={hasScene ? 'area-view view' : 'area-view'} aria-label={t.tools.region}>
      {hasScene ? (
        <>
          {!bare && <MapBar layout={layout} />}
          {!bare && !flat && <CutStrip />}
          <div className="view-shared">
            <div className="view-canvas">
              {flat ? <PlanFallback /> : canvas}
              {state === 'starting' && <p className="view-note">{t.tools.starting}</p>}
              {state === 'lost' && (
                <p className="view-note" role="alert">
                  {t.tools.lost}
                </p>
              )}
            </div>
            {!bare && <SectionPanel />}
          </div>
          {!bare && <ViewTools flat={flat} explode={layout !== 'phone'} />}
          {!bare && layout === 'phone' && !flat && <ExplodeTool lying />}
          {!bare && <Legend layout={layout} />}
        </>
      ) : (
        <EmptyState demos={demos} opening={opening} />
      )}
    </main>
  );
}
