/** Puts into the store what the engine answers to an edit: all at once, or first what is calculated and then the report. */

import type { EditAnswer, Engine, Preview, Spoken } from '../model/engine.ts';
import { isWaterMap, type MapKind } from '../model/maps.ts';
import { type Aftermath, answered, type Edited } from './edit-queue.ts';
import type { Refresh } from './refreshers.ts';
import type { SceneState, SceneStore } from './scene-store.ts';
import type { ViewStore } from './view-store.ts';

/** Tables follow a drag that never rests at least this often [ms]. */
const PATIENCE_MS = 300;

interface Takes {
  edited(edited: Edited | null): Promise<void>;
  finished(spoken: Spoken): Promise<void>;
}

export function takeAnswers(view: ViewStore, store: SceneStore, refresh: Refresh): Takes {
  const all = () => Promise.all(Object.values(refresh).map((again) => again()));
  return {
    async edited(edited) {
      if (edited === null) return;
      const { answer, travelled, told } = edited;
      if (!answer.ok && told) {
        // What the scene was warned of before is no reason.
        told(answer.issues.filter(({ level }) => level === 'error'));
        return;
      }
      if (!answer.ok) {
        refuse(store, answer);
        return;
      }
      const { warnings } = answer;
      const previewed = 'preview' in answer;
      if (previewed) store.setState((old) => ({ ...withPreview(old, answer.preview, view.getState()), travelled, warnings }));
      else store.setState({ snapshot: answer.snapshot, history: answer.snapshot.history, behind: null, travelled, warnings });
      told?.([]);
      leaveWhatIsGone(view, store);
      if (previewed) await refresh.refreshLog();
      else await all();
    },
    async finished({ warnings, ...words }) {
      const { snapshot, behind } = store.getState();
      if (snapshot === null) return;
      store.setState({ snapshot: { ...snapshot, ...words }, warnings, behind: null });
      const { refreshMap, refreshLog, ...others } = refresh;
      await Promise.all([...Object.values(others), ...(behind === 'tables' ? [] : [refreshMap])].map((again) => again()));
    },
  };
}

/** What a preview brings beside what is still of the state before. */
function withPreview(
  old: SceneState,
  { map, ...preview }: Preview,
  asked: { readonly map: MapKind | null; readonly stage: number | null },
): Pick<SceneState, 'snapshot' | 'history' | 'behind' | 'cellMap'> {
  // Another map may have been chosen meanwhile: it has been asked for, and comes next.
  const fits = map !== null && map.kind === asked.map && map.stage === asked.stage;
  return {
    snapshot: old.snapshot && { ...old.snapshot, ...preview },
    history: preview.history,
    behind: fits || asked.map === null ? 'tables' : 'tables and map',
    cellMap: fits ? map : old.cellMap,
  };
}

/** A stage or map that the scene no longer has cannot go on being shown. */
function leaveWhatIsGone(view: ViewStore, store: SceneStore): void {
  const { snapshot } = store.getState();
  const { stage, map, showStage, showMap } = view.getState();
  if (stage !== null && stage >= (snapshot?.stages?.length ?? Infinity)) showStage(null);
  if (map !== null && isWaterMap(map) && snapshot?.report && snapshot.report.water === undefined) showMap(null);
}

function refuse(store: SceneStore, { issues }: Extract<EditAnswer, { ok: false }>): void {
  store.setState({ refused: { fileName: store.getState().fileName, issues, ofEdit: true } });
}

/** The report of what is shown already, when no edit waits or it has been missing for long. */
export function reportsFollow(engine: Engine, store: SceneStore, finished: Takes['finished']): Aftermath {
  let sinceMs = 0;
  store.subscribe(({ behind }, before) => {
    if (behind !== null && before.behind === null) sinceMs = performance.now();
  });
  return {
    overdue: () => store.getState().behind !== null && performance.now() - sinceMs > PATIENCE_MS,
    async run(givesWay) {
      if (store.getState().behind === null) return;
      const spoken = await answered(engine.finish(givesWay));
      if (spoken === null) return;
      if ('ok' in spoken) refuse(store, spoken);
      else await finished(spoken);
    },
  };
}
