/** The stage shown, in words. */

import { isWaterMap, type MapKind } from '../model/maps.ts';
import { t } from './text/text.ts';
import { useScene, useView } from './use-stores.ts';

/** Name of the stage shown; some maps do not depend on it. */
export function useStageName(kind: MapKind | null): string {
  const stage = useView((state) => state.stage);
  const name = useScene((state) => (stage === null ? '' : (state.snapshot?.stages[stage]?.name ?? '')));
  if (kind === 'worst-stage' || kind === 'fall') return t.legend.allStages;
  if (kind === 'upstand' || (kind !== null && isWaterMap(kind))) return t.legend.finished;
  return stage === null ? t.legend.finished : t.legend.stage(stage + 1, name);
}

/** Number of a stage by its id, as the rail shows it; the id where there is no such stage. */
export function useStageNumber(): (id: string | null) => string | null {
  const stages = useScene((state) => state.snapshot?.stages);
  return (id) => {
    const at = stages?.findIndex((stage) => stage.id === id) ?? -1;
    return at < 0 ? id : String(at + 1);
  };
}
