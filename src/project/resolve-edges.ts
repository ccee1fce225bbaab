/** Edges and outlets of a scene in local metres, and what their rules find. */

import { RECOMMENDED_FALL } from '../catalogue/rule-limits.ts';
import { deckSite, surfaceFacts, upstandFacts } from '../core/edge-facts.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { edgeUpstand, requiredUpstand } from '../core/rules/edges.ts';
import type { DeckRims, RequiredEdge } from '../model/edge-input.ts';
import type { FindingFact } from '../model/finding.ts';
import type { ReportEdge } from '../model/report.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import { siteAlong } from './kept-ground.ts';
import type { KeptParts } from './kept-parts.ts';
import { ruleLimits } from './resolve-rules.ts';
import { localLine } from './resolve-shapes.ts';

/** Edges and outlets in local coordinates, in the order of the file. */
export function deckRims({ deck }: SceneFile, originM: PointM): DeckRims {
  return {
    edges: (deck.edges ?? []).map(({ id, kind, line, membraneTopM, drainedChannel }) => ({
      id,
      kind,
      drainedChannel: drainedChannel ?? false,
      line: localLine(line, originM),
      membraneTopM,
    })),
    outlets: (deck.outlets ?? []).map(({ id, kind, at }) => ({ id, kind, x: at[0] - originM[0], y: at[1] - originM[1] })),
  };
}

/** Edges with the heights they must keep, for the map of upstands. */
export function requiredEdges(scene: SceneFile, originM: PointM): RequiredEdge[] {
  const limits = ruleLimits(scene.limits);
  return deckRims(scene, originM).edges.map((edge) => ({ ...edge, requiredMm: requiredUpstand(edge, limits).value }));
}

/** What the report takes from edges and falls: findings, and least heights where the scene draws edges. */
export interface EdgePart {
  readonly facts: readonly FindingFact[];
  readonly report: { readonly edges?: readonly ReportEdge[] };
}

/** Heights at edges, strips without plants and falls of one evaluation. */
export function edgePart(scene: SceneFile, on: Evaluation, kept: KeptParts): EdgePart {
  const { originM, zones } = on.input;
  const rims = kept.get('rims', [...originM, scene.deck], () => deckRims(scene, originM));
  const limits = { ...ruleLimits(scene.limits), recommendedFallPercent: RECOMMENDED_FALL };
  const site = deckSite(on);
  const upstands = rims.edges.map((edge, e) =>
    kept.get(`edge ${e}`, [edge, scene.limits, ...siteAlong(on, edge.line)], () => edgeUpstand(site, edge, limits)),
  );
  const { ground, deckSurface, zones: laid } = on.prepared;
  const zoned = zones.flatMap(({ id, region, buildUp }, z) => {
    const roles = `${id} ${buildUp.vegetationKNm2 > 0} ${buildUp.layers.map(({ role }) => role).join()}`;
    return [region, laid[z], on.finishSurfaces[z], roles];
  });
  const surfaces = kept.get('strips and falls', [rims, scene.limits, ground, deckSurface, ...zoned], () => surfaceFacts(on, rims, limits));
  const facts = [...upstandFacts(on, rims, upstands), ...surfaces];
  if (rims.edges.length === 0) return { facts, report: {} };
  const edges = upstands.map(
    ({ least, required }, e): ReportEdge => ({
      id: rims.edges[e].id,
      leastUpstandMm: least ? 1000 * least.heightM : null,
      at: least ? [least.x + originM[0], least.y + originM[1]] : null,
      zone: least ? zones[least.zone].id : null,
      requiredMm: required.value,
    }),
  );
  return { facts, report: { edges } };
}
