/** The engine behind the app: a session plus the picture of its scene. Runs in a worker; tests run it in their own thread. */

import { buildPicture, type PictureMemory } from '../mesh/build-picture.ts';
import type { Engine, OpenAnswer, Snapshot } from '../model/engine.ts';
import type { Project } from '../project/evaluate-project.ts';
import { furnitureOf } from '../project/furniture.ts';
import { buildUpViews, Session, type SessionAnswer } from '../project/session.ts';
import { stageViews } from '../project/stage-views.ts';

/**
 * A new engine.
 * @returns engine without a scene
 */
export function createEngine(): Engine {
  const session = new Session();
  let memory: PictureMemory | undefined;

  const answer = (work: () => SessionAnswer): OpenAnswer => {
    const started = performance.now();
    const { project, issues } = work();
    if (!project) return { ok: false, issues };
    const evaluatedMs = performance.now() - started;
    const drawn = buildPicture(pictureInput(project), memory);
    memory = drawn.memory;
    return { ok: true, snapshot: snapshotOf(project, drawn.picture, evaluatedMs), warnings: issues };
  };

  return {
    open: async (text) => answer(() => session.open(text)),
    setThickness: async (buildUp, layer, thicknessMm) => answer(() => session.setThickness(buildUp, layer, thicknessMm)),
    map: async (kind, stage) => session.map(kind, stage),
    coreLog: async (cell, stage) => session.coreLog(cell, stage),
  };
}

function pictureInput({ evaluation, scene }: Project) {
  return {
    input: evaluation.input,
    deckSurface: evaluation.prepared.deckSurface,
    finishSurfaces: evaluation.finishSurfaces,
    layerStages: evaluation.plan.layerStages,
    objectStages: evaluation.plan.objectStages,
    furniture: furnitureOf(scene, evaluation.input.originM),
  };
}

function snapshotOf(project: Project, picture: Snapshot['picture'], evaluatedMs: number): Snapshot {
  const { evaluation } = project;
  return {
    scene: project.scene,
    report: project.report,
    stages: stageViews(project),
    grid: evaluation.prepared.ground.grid,
    originM: evaluation.input.originM,
    picture,
    bayAt: evaluation.bayAt,
    buildUps: buildUpViews(project),
    evaluatedMs,
  };
}
