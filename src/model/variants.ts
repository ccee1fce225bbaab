/** Two schemes for one deck, side by side. Plain data. */

import type { Issue } from './issue.ts';
import type { ReportChange } from './scene-change.ts';
import type { SceneScheme } from './scheme.ts';

/** Classes of the map of differences, kN/m² after less before; the middle one is no difference. */
export const DIFFERENCE_LIMITS_KNM2 = [-5, -2, -0.5, -0.05, 0.05, 0.5, 2, 5] as const;

/** From much lighter to much heavier, one more than limits. */
export const DIFFERENCE_CLASSES = [
  'lighter 5',
  'lighter 2',
  'lighter 0.5',
  'lighter',
  'same',
  'heavier',
  'heavier 0.5',
  'heavier 2',
  'heavier 5',
] as const;
export type DifferenceClass = (typeof DIFFERENCE_CLASSES)[number];

/** A stage by its id, with the name the scene gives it. */
export interface StageNamed {
  readonly id: string;
  readonly name: string;
}

/** What stands at the top of a scheme's column. */
export interface SchemeFigures {
  readonly saturatedKN: number;
  readonly dryKN: number;
  readonly stops: number;
  readonly checks: number;
  /** Greatest utilisation of any bay, finished garden and stages alike; null without any limit. */
  readonly worst: { readonly bay: string; readonly stage: StageNamed | null; readonly utilisation: number } | null;
  /** Bays over their limit, in the garden or in a stage. */
  readonly baysOver: number;
  readonly baysNotConfirmed: number;
  /** Water held, mean over the zoned area [l/m²]. */
  readonly heldLm2: number;
  /** Sum of the take-off's prices; null where a material has none. */
  readonly price: number | null;
}

export interface TakeOffChange {
  readonly material: string;
  readonly name: string;
  readonly massKg: { readonly before: number; readonly after: number };
  readonly placedM3: { readonly before: number; readonly after: number };
}

/** The scene as it stands (before) against a kept variant (after). */
export interface VariantComparison {
  readonly variant: string;
  readonly before: SchemeFigures;
  readonly after: SchemeFigures;
  readonly report: ReportChange;
  readonly takeOff: readonly TakeOffChange[];
  /** Each change of the scheme once, in words of the language spoken. */
  readonly changes: readonly string[];
}

export type VariantAnswer =
  | { readonly ok: true; readonly comparison: VariantComparison }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Another scene file against the scene as it stands. */
export interface FileComparison {
  /** Of the other scene. */
  readonly name: string;
  /** Its scheme, where nothing but the scheme differs: then it can be kept as a variant. */
  readonly scheme: SceneScheme | null;
  /** Each change once, in words of the language spoken, load plan first; empty where both say the same. */
  readonly groups: readonly { readonly title: string; readonly lines: readonly string[] }[];
}

export type FileAnswer =
  /** `notes`: what was done to read the file's text. */
  | { readonly ok: true; readonly comparison: FileComparison; readonly notes: readonly string[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };
