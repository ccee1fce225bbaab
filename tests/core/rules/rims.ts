/** Edges, outlets and limits for tests of the edge rules. */

import type { DeckRims, EdgeInput, EdgeLimits, OutletInput } from '../../../src/model/edge-input.ts';
import type { Limit } from '../../../src/model/rule-input.ts';

const limit = (value: number, document: string): Limit => ({ value, source: { document, grade: 'assumed' } });

export const EDGE_LIMITS: EdgeLimits = {
  upstandMm: limit(150, 'heights'),
  sillMm: limit(50, 'heights'),
  stripM: limit(0.3, 'strips'),
  fallPercent: limit(1.5, 'falls'),
  recommendedFallPercent: limit(2, 'better falls'),
};

/** An upstand to 0.630 unless `over` says otherwise. */
export function edge(id: string, line: readonly number[], over: Partial<EdgeInput> = {}): EdgeInput {
  return { id, kind: 'upstand', drainedChannel: false, line: Float64Array.from(line), membraneTopM: 0.63, ...over };
}

export function rims(edges: readonly EdgeInput[], outlets: readonly OutletInput[] = []): DeckRims {
  return { edges, outlets };
}
