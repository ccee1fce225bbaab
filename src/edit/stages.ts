/** Stages as a whole: added, copied, taken out, renamed, put in another order. */

import type { ScenePatch } from '../model/history.ts';
import type { SceneFile, SceneStage, SceneView } from '../model/scene-file.ts';
import { nextId } from './next-id.ts';

/** Ids of parts within stages; hold points of different stages may share theirs, but new ones do not. */
export const stageIds = (scene: SceneFile): string[] => (scene.stages ?? []).map(({ id }) => id);
export const stockpileIds = (scene: SceneFile): string[] =>
  (scene.stages ?? []).flatMap(({ stockpiles = [] }) => stockpiles.map(({ id }) => id));
export const holdPointIds = (scene: SceneFile): string[] =>
  (scene.stages ?? []).flatMap(({ holdPoints = [] }) => holdPoints.map(({ id }) => id));

/** Id of a stage to be added. */
export const nextStageId = (scene: SceneFile): string => nextId('S', stageIds(scene));

/**
 * Adds a stage that brings nothing yet.
 * @param scene - scene
 * @param at - its place in the order, from 0
 * @param stage - id and name
 */
export function addStage(scene: SceneFile, at: number, stage: Pick<SceneStage, 'id' | 'name'>): ScenePatch {
  return { stages: (scene.stages ?? []).toSpliced(at, 0, stage) };
}

/**
 * Adds the same stage again behind itself. Its stockpiles and hold points get ids of their own; nothing of it is released yet.
 * @param scene - scene
 * @param id - stage to copy
 * @param copy - id and name of the copy
 */
export function copyStage(scene: SceneFile, id: string, copy: Pick<SceneStage, 'id' | 'name'>): ScenePatch {
  const stages = scene.stages ?? [];
  const at = stages.findIndex((stage) => stage.id === id);
  const from = stages[at];
  if (from === undefined) return {};
  const piles = stockpileIds(scene);
  const holds = holdPointIds(scene);
  const fresh = (letter: string, taken: string[]): string => {
    const next = nextId(letter, taken);
    taken.push(next);
    return next;
  };
  const stockpiles = from.stockpiles?.map((pile) => ({ ...pile, id: fresh('K', piles) }));
  const holdPoints = from.holdPoints?.map(({ on: _, ...hold }) => ({ ...hold, id: fresh('H', holds) }));
  const made = { ...from, ...copy, ...(stockpiles ? { stockpiles } : {}), ...(holdPoints ? { holdPoints } : {}) };
  return { stages: stages.toSpliced(at + 1, 0, made) };
}

/**
 * Takes a stage out. After the last one, the scene names no stages.
 * @param scene - scene
 * @param id - stage
 */
export function removeStage(scene: SceneFile, id: string): ScenePatch {
  return replaceStages(
    scene,
    (scene.stages ?? []).filter((stage) => stage.id !== id),
  );
}

/**
 * Gives the scene other stages. Saved views that showed one that is gone show the finished garden.
 * @param scene - scene
 * @param stages - all of them, in order
 */
export function replaceStages({ views = [] }: SceneFile, stages: readonly SceneStage[]): ScenePatch {
  const ids = new Set(stages.map(({ id }) => id));
  const isGone = ({ show }: SceneView) => typeof show?.stage === 'string' && show.stage !== 'finished' && !ids.has(show.stage);
  const kept = views.map((view) => (isGone(view) ? { ...view, show: { ...view.show, stage: 'finished' } } : view));
  return { stages: stages.length > 0 ? stages : null, ...(views.some(isGone) ? { views: kept } : {}) };
}

/**
 * Moves a stage to another place in the order.
 * @param scene - scene
 * @param id - stage
 * @param to - its new place, from 0
 */
export function moveStage(scene: SceneFile, id: string, to: number): ScenePatch {
  const stages = scene.stages ?? [];
  const moved = stages.find((stage) => stage.id === id);
  if (moved === undefined) return {};
  return { stages: stages.filter((stage) => stage !== moved).toSpliced(to, 0, moved) };
}

/** What a stage may be given; an empty list, 0 and an empty text take it out. */
export type StageChange = Partial<Omit<SceneStage, 'id'>>;

/**
 * Changes a stage.
 * @param scene - scene
 * @param id - stage
 * @param change - new values of what changes
 */
export function changeStage(scene: SceneFile, id: string, change: StageChange): ScenePatch {
  const stages = (scene.stages ?? []).map((stage) => (stage.id === id ? withoutEmpty({ ...stage, ...change }) : stage));
  return { stages };
}

function withoutEmpty(stage: SceneStage): SceneStage {
  const isEmpty = (key: string, value: unknown) =>
    key !== 'name' && (value === 0 || value === undefined || (Array.isArray(value) && value.length === 0));
  return Object.fromEntries(Object.entries(stage).filter(([key, value]) => !isEmpty(key, value))) as unknown as SceneStage;
}
