/** Findings of lanes, machines and reach in stages, as facts. */

import type { FindingFact, Where } from '../model/finding.ts';
import type { AccessInput, LaneInput, PlantInput } from '../model/route-input.ts';
import type { Source } from '../model/source.ts';
import { sourceLine } from '../model/source.ts';
import { deckSite } from './edge-facts.ts';
import type { Evaluation } from './evaluation.ts';
import { at as atCell } from './findings.ts';
import { corridorPieces } from './geometry/corridor.ts';
import { centroidM } from './geometry/ring.ts';
import { type BoundedStretch, boundedStretch } from './rules/lane-bounds.ts';
import { type Bend, bendsOf, bendWidthM, drawnTransitionM, type LaneProfile, laneProfile, straightWidthM } from './rules/route-geometry.ts';
import { obstaclesIn } from './rules/set-up.ts';
import { weakGround } from './stages/plant.ts';
import { type ZoneReach, zoneReaches } from './stages/reach.ts';

/** Widths and gradients this little off a limit are rounding. */
const ROUNDING = 1e-6;

/** What a lane comes to. */
export interface LaneResult {
  readonly lane: LaneInput;
  readonly bends: readonly Bend[];
  /** Bend with the least outer radius; null for a straight lane. */
  readonly tightest: Bend | null;
  /** Greatest width asked for, straight or in a bend that is permitted, and that bend [m]. */
  readonly requiredM: number;
  readonly widest: Bend | null;
  readonly profile: LaneProfile;
  /** Longest stretch bounded on both sides with less between than the rule asks for there; null where there is none or no such rule. */
  readonly bounded: BoundedStretch | null;
}

/**
 * Bends, width and gradient of each lane.
 * @param on - evaluation [m]
 * @param lanes - lanes, local [m]
 * @returns results in the order of the lanes [m]
 * @source contract.md, section 4
 */
export function laneResults(on: Evaluation, lanes: readonly LaneInput[]): LaneResult[] {
  const site = deckSite(on);
  return lanes.map((lane): LaneResult => {
    // Where no width is drawn, the vehicle's own: the outer radius then comes out small, which is on the safe side.
    const bends = bendsOf(lane.line, lane.widthM ?? lane.vehicleWidthM);
    const bounded = lane.table.bounded ? boundedStretch(lane.line, lane.bounds ?? [], lane.table.bounded.value) : null;
    let requiredM = straightWidthM(lane.table, bounded?.lengthM ?? 0);
    let widest: Bend | null = null;
    for (const bend of lane.table.bends ? bends : []) {
      const widthM = bendWidthM(lane.table.bends!, bend.outerM) ?? 0;
      if (widthM <= requiredM) continue;
      requiredM = widthM;
      widest = bend;
    }
    const tightest = bends.reduce<Bend | null>((least, bend) => (least && least.outerM <= bend.outerM ? least : bend), null);
    return { lane, bends, tightest, requiredM, widest, profile: laneProfile(site, lane.line), bounded };
  });
}

/**
 * Findings of lanes.
 * @param on - evaluation [m]
 * @param results - results of the lanes [m]
 * @returns facts, lane by lane [-]
 * @source contract.md, section 4, `traffic.width`, `traffic.bend` and `traffic.gradient`
 */
export function laneFacts(on: Evaluation, results: readonly LaneResult[]): FindingFact[] {
  return results.flatMap((result) => {
    const make = maker(on, result);
    return [...bendFacts(result, make), ...blockedFacts(result, make), ...widthFacts(result, make), ...gradientFacts(result, make)];
  });
}

type Make = (fact: Pick<FindingFact, 'rule' | 'severity' | 'value' | 'limit' | 'unit'>, of: Detail) => FindingFact;

interface Detail {
  readonly why: string;
  readonly place: { readonly x: number; readonly y: number; readonly zone?: number } | null;
  readonly source: Source;
  readonly facts?: FindingFact['facts'];
}

function maker(on: Evaluation, { lane }: LaneResult): Make {
  const [x0, y0] = on.input.originM;
  return (fact, { why, place, source, facts }) => {
    const zone: Where = place?.zone === undefined ? {} : { zone: on.input.zones[place.zone].id };
    const where: Where = place ? { ...zone, at: [place.x + x0, place.y + y0] } : {};
    const { country, name } = lane.table;
    return { ...fact, where, facts: { why, route: lane.id, country, rule: name, source: sourceLine(source), ...facts } };
  };
}

function bendFacts({ lane, bends, tightest }: LaneResult, make: Make): FindingFact[] {
  const table = lane.table.bends;
  if (!table || !tightest) return [];
  const tight = bends.filter(({ outerM }) => bendWidthM(table, outerM) === null);
  if (tight.length > 0) {
    const fact = { rule: 'traffic.bend', severity: 'stop', value: tightest.outerM, limit: table.leastOuterM, unit: 'm' } as const;
    return [
      make(fact, { why: 'radius', place: tightest, source: table.source, facts: { count: tight.length, turnDeg: tightest.turnDeg } }),
    ];
  }
  const { transitionM } = lane.table;
  const { widthM } = lane;
  if (!transitionM || widthM === null) return [];
  const drawn = bends.flatMap((bend) => {
    const lengthM = drawnTransitionM(table, bend, widthM);
    return lengthM === null ? [] : [{ bend, lengthM }];
  });
  const least = drawn.reduce<(typeof drawn)[number] | null>((low, one) => (low && low.lengthM <= one.lengthM ? low : one), null);
  if (!least || least.lengthM >= transitionM.value - ROUNDING) return [];
  const fact = { rule: 'traffic.bend', severity: 'check', value: Math.max(0, least.lengthM), limit: transitionM.value, unit: 'm' } as const;
  return [make(fact, { why: 'transition', place: least.bend, source: transitionM.source })];
}

const DRAWING: Source = { document: 'the scene file', grade: 'entered' };

/** Objects and openings within the width drawn, or else the vehicle's own. */
function blockedFacts({ lane }: LaneResult, make: Make): FindingFact[] {
  const widthM = lane.widthM ?? lane.vehicleWidthM;
  const pieces = corridorPieces(lane.line, widthM).map((piece) => ({ outer: Float64Array.from(piece), holes: [] }));
  const inIt = (lane.obstacles ?? []).filter((one) => pieces.some((piece) => obstaclesIn(piece, [one]).length > 0));
  if (inIt.length === 0) return [];
  const [x, y] = centroidM(inIt[0].rings[0]);
  const fact = { rule: 'traffic.width', severity: 'check', value: inIt.length, limit: 0, unit: '-' } as const;
  return [
    make(fact, { why: 'blocked', place: { x, y }, source: DRAWING, facts: { names: inIt.map(({ name }) => name).join('\n'), widthM } }),
  ];
}

function widthFacts(result: LaneResult, make: Make): FindingFact[] {
  const { bounded } = result.lane.table;
  const stretch = result.bounded;
  if (!bounded || !stretch || stretch.lengthM <= bounded.overM + ROUNDING) return drawnWidthFacts(result, make);
  const fact = { rule: 'traffic.width', severity: 'check', value: stretch.clearM, limit: bounded.value, unit: 'm' } as const;
  const facts = { overM: bounded.overM, lengthM: stretch.lengthM };
  const walls = make(fact, { why: 'walls', place: stretch, source: bounded.source, facts });
  // The width drawn is told by itself only where the lane's own rule asks for it, straight or in a bend.
  const own = drawnWidthFacts({ ...result, requiredM: ownWidthM(result) }, make).filter(({ facts: { why } }) => why !== 'bounded');
  return [walls, ...own];
}

function ownWidthM({ lane, requiredM, widest }: LaneResult): number {
  return widest ? requiredM : straightWidthM(lane.table, 0);
}

function drawnWidthFacts({ lane, requiredM, widest }: LaneResult, make: Make): FindingFact[] {
  const { widthM, table, line } = lane;
  const [x, y] = line;
  const place = widest ?? { x, y };
  const source = widest && table.bends ? table.bends.source : table.straightM.source;
  const facts = widest ? { outerM: widest.outerM } : {};
  const fact = (value: number, limit: number) => ({ rule: 'traffic.width', severity: 'check', value, limit, unit: 'm' }) as const;
  if (widthM === null) return [make(fact(0, requiredM), { why: 'undrawn', place, source, facts })];
  if (widthM < requiredM - ROUNDING) return [make(fact(widthM, requiredM), { why: widest ? 'bend' : 'straight', place, source, facts })];
  const { bounded } = table;
  const lengthM = line.reduce(
    (sum, _, i) => (i % 2 === 0 && i > 0 ? sum + Math.hypot(line[i] - line[i - 2], line[i + 1] - line[i - 1]) : sum),
    0,
  );
  if (!bounded || lengthM <= bounded.overM || widthM >= bounded.value - ROUNDING) return [];
  const note = { ...fact(widthM, bounded.value), severity: 'note' } as const;
  return [make(note, { why: 'bounded', place: { x, y }, source: bounded.source, facts: { overM: bounded.overM } })];
}

function gradientFacts({ lane, profile }: LaneResult, make: Make): FindingFact[] {
  const { gradientPercent, setUpPercent, stepMm } = lane.table;
  const { steepest, step } = profile;
  const found: FindingFact[] = [];
  const fact = (severity: 'check' | 'note', value: number, limit: number, unit: string) =>
    ({ rule: 'traffic.gradient', severity, value, limit, unit }) as const;
  if (steepest && gradientPercent && steepest.percent > gradientPercent.value + ROUNDING) {
    found.push(
      make(fact('check', steepest.percent, gradientPercent.value, '%'), {
        why: 'gradient',
        place: steepest,
        source: gradientPercent.source,
      }),
    );
  } else if (steepest && setUpPercent && steepest.percent > setUpPercent.value + ROUNDING) {
    found.push(
      make(fact('note', steepest.percent, setUpPercent.value, '%'), { why: 'setUp', place: steepest, source: setUpPercent.source }),
    );
  }
  if (step && stepMm && 1000 * step.heightM > stepMm.value + 1000 * ROUNDING) {
    found.push(make(fact('check', 1000 * step.heightM, stepMm.value, 'mm'), { why: 'step', place: step, source: stepMm.source }));
  }
  return found;
}

/**
 * Machines on ground that does not bear them when their stage begins.
 * @param on - evaluation [-]
 * @param plants - machines with their routes, local [m]
 * @returns facts, machine by machine [-]
 * @source contract.md, section 4, `stage.plant`
 */
export function plantFacts(on: Evaluation, plants: readonly PlantInput[]): FindingFact[] {
  const { input, plan } = on;
  const [x0, y0] = input.originM;
  return weakGround(input.deck, input.zones, plan, plants).map(({ plant, zone, layer, areaM2, x, y }): FindingFact => {
    const stood = zone < 0 || layer < 0 ? null : input.zones[zone].buildUp.layers[layer];
    return {
      rule: 'stage.plant',
      severity: 'stop',
      where: { ...(zone < 0 ? {} : { zone: input.zones[zone].id }), stage: plan.stages[plant.stage].id, at: [x + x0, y + y0] },
      value: areaM2,
      limit: 0,
      unit: 'm²',
      facts: { vehicle: plant.vehicle, layer: stood?.name ?? '', role: stood?.role ?? 'membrane' },
    };
  });
}

/** Reach of every stage and zone, and what is found. */
export interface ReachResult {
  readonly reaches: readonly ZoneReach[];
  readonly facts: readonly FindingFact[];
}

/**
 * Ground that can't be reached when its turn comes.
 * @param on - evaluation [-]
 * @param access - access points, local [m]
 * @returns reach per stage and zone, and facts [m²]
 * @source contract.md, section 4, `stage.reach`
 */
export function reachResult(on: Evaluation, access: readonly AccessInput[]): ReachResult {
  const { input, plan, prepared } = on;
  const site = { ground: prepared.ground, zones: input.zones, laid: prepared.zones, owners: prepared.zoneCells, plan };
  const reaches = zoneReaches(site, access);
  const unknown = access.filter(({ kind, reachM }) => reachM === null && (kind === 'crane' || kind === 'blower')).map(({ id }) => id);
  const facts = reaches
    .filter(({ unreachedM2 }) => unreachedM2 > 0)
    .map(
      ({ stage, zone, areaM2, unreachedM2, cell, blown }): FindingFact => ({
        rule: 'stage.reach',
        severity: 'check',
        where: { zone: input.zones[zone].id, stage: plan.stages[stage].id, ...atCell(on, cell) },
        value: unreachedM2,
        limit: 0,
        unit: 'm²',
        facts: { zoneM2: areaM2, blown: blown ? 1 : 0, noReach: unknown.join(', ') },
      }),
    );
  return { reaches, facts };
}
