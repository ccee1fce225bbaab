/** What one lightening works on, and scenes with some choices, evaluated on top of each other. */

import { evaluate } from '../core/evaluate.ts';
import type { Evaluation } from '../core/evaluation.ts';
import type { LightenLeftOut, LightenLoad, LightenOptions, LightenProgress } from '../model/lighten.ts';
import type { Report } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { Project } from '../project/evaluate-project.ts';
import { reportWithFacts } from '../project/report.ts';
import { type ResolvedScene, resolveScene } from '../project/resolve-scene.ts';
import { speakProject } from '../project/speak.ts';
import { applyChoices } from './apply.ts';
import type { Candidates } from './candidates.ts';
import type { Caps } from './caps.ts';
import type { Site } from './ground.ts';
import type { Choice } from './options.ts';
import type { Solver } from './solver.ts';
import type { ZoneTask } from './task.ts';
import type { BayLimit } from './windows.ts';

export interface Work {
  readonly solver: Solver;
  readonly site: Site;
  readonly project: Project;
  readonly limits: readonly BayLimit[];
  /** Zones of which the window on a cell holds something. */
  readonly seen: (cell: number) => readonly number[];
  readonly options: LightenOptions;
  readonly onProgress: (progress: LightenProgress) => void;
  readonly candidates: Candidates;
  readonly caps: Caps;
  readonly leftOut: LightenLeftOut[];
  /** Evaluation and scene that trials are made from, used up and written anew: held once, as no search may go on from what another has used up. */
  readonly trials: { last: { readonly resolved: ResolvedScene; readonly on: Evaluation } | null };
}

export interface Trial {
  readonly scene: SceneFile;
  readonly resolved: ResolvedScene;
  readonly on: Evaluation;
}

/** A limit's name. */
export const keyOf = ({ bay, kind, stage }: Pick<LightenLoad, 'bay' | 'kind' | 'stage'>): string => JSON.stringify([bay, kind, stage]);

/** A scene with some choices, evaluated on top of the trial before. */
export function evaluated(work: Work, tasks: readonly ZoneTask[], choices: readonly Choice[]): Trial {
  const scene = choices.length === 0 ? work.project.scene : applyChoices(work.project, tasks, choices);
  const { cellM } = work.project.resolved.input;
  const resolved = resolveScene(scene, { cellM, previous: work.trials.last?.resolved });
  const on = evaluate(resolved.input, work.trials.last?.on);
  work.trials.last = { resolved, on };
  return { scene, resolved, on };
}

/** Told in the language of the project. */
export function reportIn({ language }: Project, { scene, resolved, on }: Trial): Report {
  return speakProject({ scene, resolved, evaluation: on, ...reportWithFacts(scene, on), language: 'en' }, language).report;
}
