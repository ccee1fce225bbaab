/** Heights of the membrane along the edges of the deck: sills first, and what they lack. */

import type { ReportEdge } from '../../model/report.ts';
import type { SceneEdge, SceneFile } from '../../model/scene-file.ts';

export interface ListedEdge extends ReportEdge {
  readonly kind: SceneEdge['kind'];
  readonly drainedChannel: boolean;
  /** How much is missing to what is required; 0 where it is enough [mm]. */
  readonly missingMm: number;
}

/** Less than this is rounding [mm]. */
const ROUNDING_MM = 1e-6;

/** Sills, then upstands; within each what lacks most first, then the lowest. */
export function listEdges(edges: readonly ReportEdge[], scene: SceneFile): ListedEdge[] {
  const given = new Map(scene.deck.edges?.map((edge) => [edge.id, edge]));
  const listed = edges.map((edge): ListedEdge => {
    const { kind = 'upstand', drainedChannel = false } = given.get(edge.id) ?? {};
    const missing = edge.leastUpstandMm === null ? 0 : edge.requiredMm - edge.leastUpstandMm;
    return { ...edge, kind, drainedChannel, missingMm: missing > ROUNDING_MM ? missing : 0 };
  });
  const rank = ({ kind }: ListedEdge) => (kind === 'threshold' ? 0 : 1);
  const height = ({ leastUpstandMm }: ListedEdge) => leastUpstandMm ?? Number.MAX_VALUE;
  return listed.sort((a, b) => rank(a) - rank(b) || b.missingMm - a.missingMm || height(a) - height(b));
}
