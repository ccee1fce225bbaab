/** Whether a shape could stand in a scene: the same checks and the same words as for a file, while it is being drawn. */

import type { Issue } from '../model/issue.ts';
import type { Language } from '../model/language.ts';
import type { PointM } from '../model/scene-file.ts';
import type { PlanForm, PlanPoint } from './point-lists.ts';

/** Why a shape would be refused. */
export interface Fault {
  /** As the scene's check gives it, told in the language asked for; its path is empty or leads into the shape. */
  readonly issue: Issue;
  /** Where to mark it; null where it has no place (too few points). */
  readonly at: PointM | null;
  /** Edges that cross or touch, by the index of their first point; of the hole where `hole` is given. */
  readonly edges: readonly number[];
  readonly hole?: number;
}

export interface DrawnShape {
  readonly form: PlanForm;
  readonly points: readonly PlanPoint[];
  readonly holes?: readonly (readonly PlanPoint[])[];
  /** Still being drawn: the edge back to the first point does not count yet. */
  readonly open?: boolean;
}

/**
 * Faults of a shape.
 * @param shape - points as drawn
 * @param language - of the words
 * @returns the faults, those that would be told of the file; none for a sound shape
 */
export declare function shapeFaults(shape: DrawnShape, language: Language): readonly Fault[];
