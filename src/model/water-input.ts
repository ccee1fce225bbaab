/** What water on a deck is worked out from: outlets, edges it can spill over, run-off of the zones, pores of their layers. Local metres. */

import type { OutletInput } from './edge-input.ts';

export interface WaterOutlet extends OutletInput {
  /** What it can take; null where the scene does not say [l/s]. */
  readonly lps: number | null;
  /** Level at which an overflow begins to run, or an outlet set above the membrane to take water; datum of the deck's levels; null where the scene does not say [m]. */
  readonly invertM: number | null;
}

/** An edge of the deck that water runs over once it stands high enough. */
export interface SpillInput {
  readonly id: string;
  /** x y per vertex. */
  readonly line: Float64Array;
  /** Level at which the membrane ends [m]. */
  readonly membraneTopM: number;
}

export interface WaterZone {
  /** Peak run-off coefficient [-]. */
  readonly peakC: number;
  /**
   * Per layer, bottom to top: share of its thickness that only ponded water fills. What the layer holds is in its saturated weight
   * and not counted again. Of an element: its free volume per m² over its thickness, less what an infill takes of it [-].
   */
  readonly freePores: readonly number[];
}

export interface WaterSite {
  readonly outlets: readonly WaterOutlet[];
  readonly spills: readonly SpillInput[];
  /** As many as the deck has zones. */
  readonly zones: readonly WaterZone[];
  /** Peak run-off coefficient of deck without a zone [-]. */
  readonly bareC: number;
}

/** Why an outlet could not be taken as drawn. All but `below deck` leave it out of the calculation. */
export type OutletFault =
  /** More than a cell away from any deck. */
  | 'off deck'
  /** An overflow without a level. */
  | 'no invert'
  /** An overflow whose level lies at or below the membrane there: it runs like an outlet. */
  | 'below deck';
