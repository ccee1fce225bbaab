/** What is asked of the engine anew whenever stage, map, picked cell, section, variant or chosen vehicle change. */

import type { Engine, Snapshot } from '../model/engine.ts';
import type { RunPose } from '../model/run.ts';
import type { WheelStand } from '../model/wheel-input.ts';
import type { SceneStore } from './scene-store.ts';
import type { ChosenRun, ViewStore } from './view-store.ts';

/** What follows stage, map, picked cell and chosen vehicle. */
export function refreshers(engine: Engine, view: ViewStore, store: SceneStore) {
  const refreshMap = newestOnly(
    async () => {
      const { map, stage, blocked, compared } = view.getState();
      const { snapshot } = store.getState();
      if (!map || !snapshot) return null;
      if (map === 'difference') return hasVariant(snapshot, compared) ? await engine.map(map, stage, compared) : null;
      return map === 'blocked' ? await engine.map(map, stage, blocked) : await engine.map(map, stage);
    },
    (cellMap) => store.setState({ cellMap }),
  );
  const refreshLog = newestOnly(
    async () => {
      const { cell, stage } = view.getState();
      return cell !== null && store.getState().snapshot ? await engine.coreLog(cell, stage) : null;
    },
    (coreLog) => store.setState({ coreLog }),
  );
  let posed: Snapshot | null = null;
  const refreshPoses = newestOnly(
    async () => {
      const { snapshot, poses } = store.getState();
      const found = await posesOf(engine, wantedRuns(snapshot, view.getState()), snapshot === posed ? poses : []);
      return { snapshot, found };
    },
    ({ snapshot, found }) => {
      posed = snapshot;
      store.setState({ poses: found });
    },
  );
  const refreshRise = newestOnly(
    async () => {
      const { blocked } = view.getState();
      return blocked !== null && store.getState().snapshot ? await engine.blockedOutlet(blocked) : null;
    },
    (rise) => store.setState({ rise }),
  );
  const refreshComparison = newestOnly(
    async () => {
      const { compared } = view.getState();
      const { snapshot } = store.getState();
      return compared !== null && hasVariant(snapshot, compared) ? await engine.compareVariant(compared) : null;
    },
    (comparison) => store.setState({ comparison }),
  );
  return { refreshMap, refreshLog, refreshPoses, refreshRise, refreshComparison, refreshSection: sectionRefresher(engine, view, store) };
}

export type Refresh = ReturnType<typeof refreshers>;

function sectionRefresher(engine: Engine, view: ViewStore, store: SceneStore): () => Promise<void> {
  return newestOnly(
    async () => {
      const { section, stage, language } = view.getState();
      if (section === null || store.getState().snapshot === null) return null;
      const { line, scale, heights } = section;
      const [drawing, file] = await Promise.all([
        engine.section(line, stage),
        engine.exportDrawn('section svg', { line, scale, exaggeration: heights, stage, language }),
      ]);
      return { of: section, drawing, svg: new TextDecoder().decode(file.bytes) };
    },
    (section) => store.setState({ section }),
  );
}

const hasVariant = (snapshot: Snapshot | null, id: string | null): boolean =>
  snapshot?.scene.variants?.some((variant) => variant.id === id) ?? false;

/** The outlet that lets water stand deepest when it is blocked: without end, where nothing lets it out. */
export function worstBlocked(snapshot: Snapshot | null): string | null {
  const blocked = snapshot?.report.water?.blocked ?? [];
  const depth = ({ depthMm }: (typeof blocked)[number]) => depthMm ?? Infinity;
  return (
    blocked.reduce<(typeof blocked)[number] | null>((most, one) => (most && depth(most) >= depth(one) ? most : one), null)?.outlet ?? null
  );
}

/** Asks anew whenever it is called; an answer that comes after a later question is dropped. */
export function newestOnly<T>(ask: () => Promise<T>, take: (answer: T) => void): () => Promise<void> {
  let ticket = 0;
  return async () => {
    const own = ++ticket;
    const answer = await ask();
    if (own === ticket) take(answer);
  };
}

/** Where vehicles stand; those that stand there already are not asked for again. */
async function posesOf(engine: Engine, wanted: readonly ChosenRun[], kept: readonly RunPose[]): Promise<RunPose[]> {
  const known = (want: ChosenRun) => kept.find(({ run, frontM, on }) => run === want.id && frontM === want.frontM && on === want.on);
  const found = await Promise.all(
    wanted.map(async (want) => known(want) ?? (await engine.runAt(want.id, { frontM: want.frontM, on: want.on }))),
  );
  return found.filter((pose) => pose !== null);
}

/** The chosen vehicle where it stands, and the other machines of the stage shown halfway along their lines. */
function wantedRuns(snapshot: Snapshot | null, { run, stage }: { run: ChosenRun | null; stage: number | null }): ChosenRun[] {
  const others = (snapshot?.runs ?? []).filter((one) => stage !== null && one.stage === stage && one.id !== run?.id);
  const middle = (travelM: number): WheelStand => ({ frontM: travelM / 2, on: 'wheels' });
  return [...(run && snapshot ? [run] : []), ...others.map(({ id, travelM }) => ({ id, ...middle(travelM) }))];
}
