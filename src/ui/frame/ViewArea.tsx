/** The model, free of anything over it, with its map bar, cut, tools and legend around it; or the choice of scenes, or the plan. */

import type { ReactNode } from 'react';
import { SectionPanel } from '../section/SectionPanel.tsx';
import { t } from '../text/text.ts';
import { type Layout, useMedia } from '../use-media.ts';
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

/** Beside the editor its tools and an upright slider would not all be in sight. */
const LOW_TABLET = '(pointer: coarse) and (max-height: 800px)';

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
  const editing = useView((view) => view.editor !== null);
  const low = useMedia(LOW_TABLET);
  const lying = layout === 'phone' || (editing && low);
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
          {!bare && <ViewTools flat={flat} explode={!lying} />}
          {!bare && lying && !flat && <ExplodeTool lying />}
          {!bare && <Legend layout={layout} />}
        </>
      ) : (
        <EmptyState demos={demos} opening={opening} />
      )}
    </main>
  );
}
