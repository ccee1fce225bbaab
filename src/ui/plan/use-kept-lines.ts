/** Lines under the plan are kept for the next visit, and found again with the scene they were laid under. */

import { useEffect } from 'react';
import { t } from '../text/text.ts';
import { useStores, useView } from '../use-stores.ts';
import { keepUnder, keptUnder } from './kept-underlay.ts';
import { usePlan, usePlanStore } from './plan-context.ts';
import { useSceneFile } from './use-drawn-lists.ts';

/** A slider that is dragged is written once it rests [ms]. */
const REST_MS = 400;

export function useKeptLines(): void {
  const { view } = useStores();
  const plan = usePlanStore();
  const of = usePlan((state) => state.of);
  const name = useSceneFile()?.name ?? '';
  const lines = useView((state) => state.underlayLines);
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked for once for each deck
  useEffect(() => {
    let isWanted = view.getState().underlayLines === null;
    if (isWanted)
      void keptUnder('lines', name).then((kept) => {
        if (isWanted && kept !== null && view.getState().underlayLines === null) view.getState().setUnderlayLines(kept);
      });
    return () => {
      isWanted = false;
    };
  }, [view, name, of]);
  useEffect(() => {
    if (lines === null) return;
    const later = setTimeout(async () => {
      if (await keepUnder('lines', name, lines)) return;
      plan.getState().tell({ issues: [], says: t.draw.underlay.linesNotKept, at: null, note: true });
    }, REST_MS);
    return () => clearTimeout(later);
  }, [plan, name, lines]);
}
