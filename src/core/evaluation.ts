/** Everything the core knows of one deck: what `evaluate` returns and reports, maps and pictures read. */

import type { DeckInput } from '../model/deck-input.ts';
import type { StackCoefficients } from './layers/coefficients.ts';
import type { MakeUp } from './layers/make-up.ts';
import type { Surface } from './levels/surface.ts';
import type { ZoneBayShare } from './loads/bays.ts';
import type { LayerField, ZoneCoefficients } from './loads/field.ts';
import type { PreparedDeck } from './prepare.ts';
import type { StagePlan } from './stages/plan.ts';

export interface Spread {
  readonly min: number;
  readonly mean: number;
  readonly max: number;
}

export interface ZoneResult {
  readonly areaM2: number;
  readonly depthM: Spread;
  readonly makeUpM: Spread | null;
  /** Volume of the make-up layer [m³]. */
  readonly makeUpM3: number;
  readonly dryKNm2: Spread;
  readonly saturatedKNm2: Spread;
  readonly heldLm2: Spread;
  /** As built: membrane + layers. */
  readonly finishedM: Spread;
  readonly dryKN: number;
  readonly saturatedKN: number;
}

/** Greatest window mean in a bay and the cell it is centred on (-1 where the bay has no cell). */
export interface Patch {
  readonly kNm2: number;
  readonly cell: number;
}

export interface BayResult {
  readonly areaM2: number;
  readonly meanKNm2: number;
  readonly peakKNm2: number;
  readonly patch: Patch;
  readonly permanentUtilisation: number | null;
  readonly imposedKNm2: number;
  readonly imposedUtilisation: number | null;
  /** Permanent + imposed, for bays with a total limit. */
  readonly total: { readonly patch: Patch; readonly utilisation: number } | null;
  readonly stages: readonly { readonly patch: Patch; readonly utilisation: number | null }[];
  readonly worstStage: number;
}

/** Loads per cell, kept so that a small change touches few of them. NaN where a cell, or a window, has no deck. */
export interface JudgedFields {
  /** Finished garden: load per unit of deck on each cell with any deck [kN/m²]. */
  readonly loadKNm2: Float64Array;
  /** Finished garden: mean over 1 m × 1 m centred on each cell [kN/m²]. */
  readonly patchKNm2: Float64Array;
  /** The same with the imposed loads; null where no bay has a total limit. */
  readonly totalPatchKNm2: Float64Array | null;
  /** The same at the end of each stage, with its stockpiles and flood test. */
  readonly stagePatchKNm2: readonly Float64Array[];
  /** Greatest stage patch / permitted over all stages, where a bay judges the cell [-]. */
  readonly worstUtilisation: Float64Array;
  readonly worstStage: Int16Array;
  /** Bay that judges each cell (the weaker one where bays overlap), -1 for none. */
  readonly bayAt: Int16Array;
}

export interface Evaluation extends JudgedFields {
  readonly input: DeckInput;
  readonly prepared: PreparedDeck;
  readonly plan: StagePlan;
  /** Per zone; null for finish `build-up`. */
  readonly finishSurfaces: readonly (Surface | null)[];
  readonly makeUps: readonly MakeUp[];
  readonly field: LayerField;
  /** Finished garden, per zone. */
  readonly stacks: readonly StackCoefficients[];
  /** Per stage, per zone: what is placed by its end. */
  readonly stageStacks: readonly (readonly StackCoefficients[])[];
  /** Saturated load per stage. */
  readonly stageLoads: readonly ZoneCoefficients[];
  readonly zoneShares: readonly ZoneBayShare[];
  readonly zones: readonly ZoneResult[];
  readonly bays: readonly BayResult[];
  readonly totals: {
    readonly dryKN: number;
    readonly saturatedKN: number;
    readonly objectsKN: number;
  };
  /** Weight placed in each stage, saturated, stockpiles and flood test not counted [kN]. */
  readonly placedKN: readonly number[];
}
