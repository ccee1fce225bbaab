/** The model with everything that lies over it, or what stands there instead: the choice of scenes, or the plan. */

import type { ReactNode } from 'react';
import { en as t } from '../text/en.ts';
import type { Layout } from '../use-media.ts';
import type { Opening } from '../use-open-scene.ts';
import { useScene, useView } from '../use-stores.ts';
import { EmptyState } from './EmptyState.tsx';
import { Legend } from './Legend.tsx';
import { MapBar } from './MapBar.tsx';
import { PlanFallback } from './PlanFallback.tsx';
import type { Demo } from './TopStrip.tsx';
import { ViewTools } from './ViewTools.tsx';

interface Props {
  readonly layout: Layout;
  readonly canvas: ReactNode;
  readonly demos: readonly Demo[];
  readonly opening: Opening;
}

export function ViewArea({ layout, canvas, demos, opening }: Props) {
  const hasScene = useScene((state) => state.snapshot !== null);
  const state = useView((view) => view.canvas);
  return (
    <main className="area-view view" aria-label={t.tools.region}>
      {hasScene ? (
        <>
          {state === 'unavailable' ? <PlanFallback /> : <div className="view-canvas">{canvas}</div>}
          {state === 'starting' && <p className="view-note">{t.tools.starting}</p>}
          {state === 'lost' && (
            <p className="view-note" role="alert">
              {t.tools.lost}
            </p>
          )}
          <MapBar layout={layout} />
          <Legend layout={layout} />
          <ViewTools flat={state === 'unavailable'} />
        </>
      ) : (
        <EmptyState demos={demos} opening={opening} />
      )}
    </main>
  );
}
