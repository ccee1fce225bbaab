/** From scene text to evaluation and report: the one path that app, command line and tests take. */

import { evaluate } from '../core/evaluate.ts';
import type { Evaluation } from '../core/evaluation.ts';
import type { FindingFact } from '../model/finding.ts';
import type { Issue } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import type { Report } from '../model/report.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { parseScene, type SceneReading } from '../scene/parse-scene.ts';
import { phrase, worded } from '../scene/words/phrase.ts';
import { KeptParts } from './kept-parts.ts';
import { KNOWN_IDS } from './materials.ts';
import { allSteps, reportSteps } from './report.ts';
import { DEFAULT_CELL_M, type ResolvedScene, resolveScene } from './resolve-scene.ts';

/** A scene that is calculated, with or without its report. */
export interface Calculated {
  readonly scene: SceneFile;
  readonly resolved: ResolvedScene;
  readonly evaluation: Evaluation;
  /** What the report after the next edit can take over. */
  readonly kept?: KeptParts;
}

export interface Project extends Calculated {
  readonly report: Report;
  /** What the findings of the report are worded from, in their order. */
  readonly facts: readonly FindingFact[];
  /** Of the report and of names. */
  readonly language: Language;
}

export type ProjectReading =
  | { readonly project: Project; readonly issues: readonly Issue[] }
  | { readonly project: null; readonly issues: readonly Issue[] };

/**
 * Reads and evaluates a scene file.
 * @param text - the file's text
 * @param cellM - side of a cell instead of the scene's own [m]
 * @returns the project and warnings, or errors
 */
export function readProject(text: string, cellM?: number): ProjectReading {
  const reading = readSceneText(text, cellM);
  if (!reading.scene) return { project: null, issues: reading.issues };
  return { project: evaluateProject(reading.scene, { cellM }), issues: reading.issues };
}

/**
 * Reads a scene with the catalogue's materials and vehicles known, and refuses what would take too many cells.
 * @param text - the file's text
 * @param cellM - side of a cell instead of the scene's own [m]
 * @returns the scene and warnings, or errors
 */
export function readSceneText(text: string, cellM?: number): SceneReading {
  const reading = parseScene(text, KNOWN_IDS);
  const tooFine = reading.scene && tooManyCells(reading.scene, cellM);
  return tooFine ? { scene: null, issues: [tooFine] } : reading;
}

interface Options {
  readonly cellM?: number | undefined;
  readonly previous?: Calculated | undefined;
}

/**
 * Evaluates a checked scene.
 * @param scene - checked scene
 * @param options - `cellM` instead of the scene's own [m]; `previous` project, of which only what changed is done again and which is used up
 * @returns the project
 */
export function evaluateProject(scene: SceneFile, options: Options = {}): Project {
  return allSteps(projectSteps(calculate(scene, options)));
}

/** The calculation alone, which maps, core logs and the picture rest on. */
export function calculate(scene: SceneFile, { cellM, previous }: Options = {}): Calculated & { readonly kept: KeptParts } {
  const resolved = resolveScene(scene, { cellM, previous: previous?.resolved });
  const evaluation = evaluate(resolved.input, previous?.evaluation);
  return { scene, resolved, evaluation, kept: new KeptParts(previous?.kept) };
}

/** The report on what is calculated, step by step; whoever leaves off calculates anew from it all the same. */
export function* projectSteps(on: ReturnType<typeof calculate>): Generator<undefined, Project> {
  return { ...on, ...(yield* reportSteps(on.scene, on.evaluation, on.kept)), language: 'en' };
}

/** Most cells that are evaluated; beyond, memory of a phone or tablet would not do. */
const MAX_CELLS = 4e6;

function tooManyCells(scene: SceneFile, cellM: number | undefined): Issue | null {
  const side = cellM ?? scene.grid?.cellM ?? DEFAULT_CELL_M;
  const extent = (axis: 0 | 1) => {
    const { outline } = scene.deck;
    return (
      outline.reduce((high, point) => Math.max(high, point[axis]), -Infinity) -
      outline.reduce((low, point) => Math.min(low, point[axis]), Infinity)
    );
  };
  const cells = Math.ceil(extent(0) / side) * Math.ceil(extent(1) / side);
  if (cells <= MAX_CELLS) return null;
  return {
    code: 'TOO_MANY_CELLS',
    level: 'error',
    path: 'grid.cellM',
    ...worded(
      phrase('deckInCells', { a: extent(0).toFixed(1), b: extent(1).toFixed(1), c: side, n: cells }),
      phrase('cellsAtMost', { n: MAX_CELLS }),
      phrase('takeCells', { n: Math.ceil(100 * Math.sqrt((extent(0) * extent(1)) / MAX_CELLS)) / 100 }),
    ),
  };
}
