/** Edges and outlets of the deck as the edge rules take them: local metres, levels as in the file. */

import type { Limit, RuleLimits } from './rule-input.ts';

export interface EdgeInput {
  readonly id: string;
  readonly kind: 'upstand' | 'threshold';
  readonly drainedChannel: boolean;
  /** x y per vertex. */
  readonly line: Float64Array;
  /** Level at which the membrane ends [m]. */
  readonly membraneTopM: number;
}

/** An edge with the height it must keep above the finish. */
export interface RequiredEdge extends EdgeInput {
  readonly requiredMm: number;
}

export interface OutletInput {
  readonly id: string;
  readonly kind: 'outlet' | 'overflow';
  readonly x: number;
  readonly y: number;
}

/** What bounds and pierces a deck. */
export interface DeckRims {
  readonly edges: readonly EdgeInput[];
  readonly outlets: readonly OutletInput[];
}

/** The limits of edges and falls. */
export interface EdgeLimits extends Pick<RuleLimits, 'upstandMm' | 'sillMm' | 'stripM' | 'fallPercent'> {
  /** Falls from the least one up to here are told, but not asked to be looked at [%]. */
  readonly recommendedFallPercent: Limit;
}
