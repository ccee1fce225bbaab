/** One way to build a zone up: its layers, one that takes what the levels leave, and the thicknesses that may be chosen in steps. */

import type { SceneLayer } from '../model/scene-file.ts';
import type { ResolvedMaterial } from '../project/materials.ts';
import type { StageChange } from './stage-change.ts';

/** Thicknesses are chosen in steps of this [mm]. */
export const STEP_MM = 10;

export interface RecipeLayer {
  /** As it stands in the scene; its thickness is set anew. */
  readonly layer: SceneLayer;
  readonly material: ResolvedMaterial;
  /** Before any step; of the rest layer it means nothing. */
  readonly startMm: number;
  /** Its thickness stays as written. */
  readonly untouched: boolean;
}

export interface Step {
  /** Whole steps: least and greatest number of them. */
  readonly from: number;
  readonly to: number;
  /** What one step does to which layer [mm]. */
  readonly moves: readonly { readonly layer: number; readonly mm: number }[];
}

export interface Recipe {
  /** Bottom to top. */
  readonly layers: readonly RecipeLayer[];
  readonly rest: number;
  readonly restMm: { readonly min: number; readonly max: number };
  readonly steps: readonly Step[];
  /** What it changes, for those changes that turn out to break a rule: materials brought, `substrate`. */
  readonly changes: readonly string[];
  /** Everything stays as it is. */
  readonly keeps: boolean;
  /** What the stages need besides, so that they lay its new layers; null for nothing. */
  readonly laid: StageChange | null;
}

/** Sum of the thicknesses besides the rest layer, before any step [mm]. */
export function startOthersMm({ layers, rest }: Recipe): number {
  return layers.reduce((sum, { startMm }, i) => (i === rest ? sum : sum + startMm), 0);
}

/** What one step adds to the layers besides the rest [mm]. */
export function stepMm({ moves }: Step): number {
  return moves.reduce((sum, { mm }) => sum + mm, 0);
}

/** Thicknesses besides the rest layer after so many steps [mm]. */
export function chosenMm({ layers, steps }: Recipe, counts: readonly number[]): number[] {
  const thickness = layers.map(({ startMm }) => startMm);
  steps.forEach((step, s) => {
    for (const { layer, mm } of step.moves) thickness[layer] += counts[s] * mm;
  });
  return thickness;
}
