/** Which maps the open scene has something to show on. */

import { useMemo } from 'react';
import type { MapMatter } from './facts/map-groups.ts';
import { useScene, useView } from './use-stores.ts';

export function useMapMatter(): MapMatter {
  const hasRuns = useScene((state) => (state.snapshot?.runs.length ?? 0) > 0);
  const hasWater = useScene((state) => state.snapshot?.report.water !== undefined);
  const isCompared = useView((state) => state.compared !== null);
  return useMemo(() => ({ hasRuns, hasWater, isCompared }), [hasRuns, hasWater, isCompared]);
}
