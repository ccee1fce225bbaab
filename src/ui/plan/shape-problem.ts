/** Faults of changed shapes, found before anything is sent: with the words of the file's check, and the outline as it would have become. */

import { type PlanShape, planShapes } from '../../edit/plan-shapes.ts';
import { shapeFaults } from '../../edit/validity.ts';
import type { Language } from '../../model/language.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import type { PlanProblem } from '../../store/plan-draw.ts';
import { changedShapes, flatPoint } from '../facts/plan-drag.ts';

export function problemOfShape(shape: Pick<PlanShape, 'form' | 'points' | 'holes'>, language: Language): PlanProblem | null {
  const faults = shapeFaults(shape, language);
  if (faults.length === 0) return null;
  return {
    issues: faults.map(({ issue }) => issue),
    at: faults.find(({ at }) => at !== null)?.at ?? null,
    ghost: shape.points.map(flatPoint),
  };
}

/** Of the first changed shape that has one; null where all are sound. */
export function firstFault(before: SceneFile, after: SceneFile, language: Language): PlanProblem | null {
  for (const shape of changedShapes(planShapes(before), planShapes(after))) {
    const problem = problemOfShape(shape, language);
    if (problem !== null) return problem;
  }
  return null;
}
