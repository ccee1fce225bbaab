/** Findings of edges, strips and falls, as facts. */

import type { DeckRims, EdgeLimits } from '../model/edge-input.ts';
import type { FindingFact, Severity, Where } from '../model/finding.ts';
import type { Limit } from '../model/rule-input.ts';
import { sourceLine } from '../model/source.ts';
import type { Evaluation } from './evaluation.ts';
import { boundsOf } from './geometry/ring.ts';
import type { DeckSite } from './rules/deck-site.ts';
import type { EdgeUpstand } from './rules/edges.ts';
import { type FlatArea, flatMembrane, flatPaving } from './rules/falls.ts';
import { nearPlanting } from './rules/strips.ts';

/** A height this little under its limit is rounding [m]. */
const ROUNDING_M = 1e-6;

/**
 * What the rules of edges and falls look at.
 * @param on - evaluation [m]
 * @returns deck, surfaces and zones [m]
 * @source none: arithmetic
 */
export function deckSite({ input, prepared, finishSurfaces }: Evaluation): DeckSite {
  return {
    ground: prepared.ground,
    deckSurface: prepared.deckSurface,
    zones: input.zones,
    zoneBounds: input.zones.map((zone) => boundsOf(zone.region.outer)),
    zoneCells: prepared.zones,
    finishSurfaces,
  };
}

/**
 * Findings of strips and falls: of shapes, levels and the roles of layers, not of their thicknesses.
 * @param on - evaluation [m]
 * @param rims - edges and outlets, local [m]
 * @param limits - limits [mm]
 * @returns facts, grouped by rule [-]
 * @source contract.md, sections 2 and 4
 */
export function surfaceFacts(on: Evaluation, rims: DeckRims, limits: EdgeLimits): FindingFact[] {
  const site = deckSite(on);
  const placed = placedOn(on);
  return [...stripFacts(site, rims, limits, placed), ...fallFacts(site, limits, placed)];
}

function placedOn({ input }: Evaluation): Placed {
  return (x, y, zone) => ({
    ...(zone < 0 ? {} : { zone: input.zones[zone].id }),
    at: [x + input.originM[0], y + input.originM[1]],
  });
}

type Placed = (x: number, y: number, zone: number) => Where;

/**
 * Findings of edges that are too low.
 * @param on - evaluation [m]
 * @param rims - edges and outlets, local [m]
 * @param upstands - least heights per edge [m]
 * @returns facts in the order of the edges [-]
 * @source contract.md, sections 2 and 4
 */
export function upstandFacts(on: Evaluation, rims: DeckRims, upstands: readonly EdgeUpstand[]): FindingFact[] {
  const placed = placedOn(on);
  return upstands.flatMap(({ least, required }, e): FindingFact[] => {
    if (!least || 1000 * least.heightM >= required.value - 1000 * ROUNDING_M) return [];
    const { id, kind, drainedChannel } = rims.edges[e];
    return [
      {
        rule: 'edge.upstand',
        severity: 'stop',
        where: placed(least.x, least.y, least.zone),
        value: 1000 * least.heightM,
        limit: required.value,
        unit: 'mm',
        facts: {
          edge: id,
          kind,
          drained: drainedChannel ? 1 : 0,
          missingMm: required.value - 1000 * least.heightM,
          source: sourceLine(required.source),
        },
      },
    ];
  });
}

function stripFacts(site: DeckSite, rims: DeckRims, { stripM }: EdgeLimits, placed: Placed): FindingFact[] {
  return nearPlanting(site, rims, stripM.value).map(({ zone, kind, id, nearest }) => ({
    rule: 'edge.strip',
    severity: 'check',
    where: placed(nearest.x, nearest.y, zone),
    value: nearest.distanceM,
    limit: stripM.value,
    unit: 'm',
    facts: { kind, edge: id, source: sourceLine(stripM.source) },
  }));
}

function fallFacts(site: DeckSite, { fallPercent, recommendedFallPercent }: EdgeLimits, placed: Placed): FindingFact[] {
  const fact = (surface: string, severity: Severity, flat: FlatArea | null, limit: Limit): FindingFact[] => {
    if (!flat) return [];
    const { areaM2, largestM2, places, leastPercent, mostPercent } = flat;
    const facts = { surface, areaM2, largestM2, places, mostPercent, source: sourceLine(limit.source) };
    return [
      {
        rule: 'level.fall',
        severity,
        where: placed(flat.x, flat.y, flat.zone),
        value: leastPercent,
        limit: limit.value,
        unit: '%',
        facts,
      },
    ];
  };
  return [
    ...fact('membrane', 'check', flatMembrane(site, 0, fallPercent.value), fallPercent),
    ...fact('membrane', 'note', flatMembrane(site, fallPercent.value, recommendedFallPercent.value), recommendedFallPercent),
    ...fact('paving', 'note', flatPaving(site, fallPercent.value), fallPercent),
  ];
}
