/** Findings of places where appliances are set up, as facts: size, gradient, steps, obstacles, distance to the building. */

import type { FindingFact } from '../model/finding.ts';
import type { StandingRule } from '../model/fire-access.ts';
import type { ObstacleInput, SetUpInput } from '../model/route-input.ts';
import type { Limit } from '../model/rule-input.ts';
import { sourceLine } from '../model/source.ts';
import { deckSite } from './edge-facts.ts';
import type { Evaluation } from './evaluation.ts';
import { commonAreaM2 } from './geometry/common-area.ts';
import { type FramedRectangle, smallestAround } from './geometry/rectangles.ts';
import { regionAreaM2 } from './geometry/ring.ts';
import {
  type FacingBuilding,
  type Fit,
  facing,
  fitOf,
  obstaclesIn,
  type SteepPlace,
  type StepPlace,
  steepestIn,
  stepIn,
  stripBeside,
} from './rules/set-up.ts';

/** Sizes, gradients and distances this little off a limit are rounding. */
const ROUNDING = 1e-6;
/** A bay that shares less than this with the area touches it by rounding [m²]. */
const TOUCH_M2 = 0.01;

/** What a place comes to. */
export interface SetUpResult {
  readonly place: SetUpInput;
  readonly rule: StandingRule | null;
  readonly areaM2: number;
  /** Of which on the deck. */
  readonly onDeckM2: number;
  readonly around: FramedRectangle;
  readonly fit: Fit | null;
  readonly steepest: SteepPlace | null;
  readonly step: StepPlace | null;
  readonly facing: FacingBuilding | null;
  /** What stands in it, and in the strips that must be free, by name. */
  readonly standing: readonly string[];
  readonly strip: { readonly widthM: number; readonly limit: Limit; readonly names: readonly string[] } | null;
  readonly runOut: readonly string[];
  /** Bays it lies on, indices. */
  readonly bays: readonly number[];
}

/**
 * Size, gradient, steps and obstacles of each place.
 * @param on - evaluation [m]
 * @param places - places, local [m]
 * @param obstacles - what stands on the deck, local [m]
 * @returns results in the order of the places [m]
 * @source contract.md, section 4
 */
export function setUpResults(on: Evaluation, places: readonly SetUpInput[], obstacles: readonly ObstacleInput[]): SetUpResult[] {
  const site = deckSite(on);
  return places.map((place): SetUpResult => {
    const { area, table, kind, building } = place;
    const rule = table ? (kind === 'set-up' ? table.setUp : table.movement) : null;
    const around = smallestAround(area.outer);
    const lies = building ? facing(area, around, building) : null;
    const inIt = obstaclesIn(area, obstacles);
    const beside = obstacles.filter((one) => !inIt.includes(one));
    return {
      place,
      rule,
      areaM2: regionAreaM2(area),
      onDeckM2: commonAreaM2([area, on.input.deck]),
      around,
      fit: rule ? fitOf(area, rule) : null,
      steepest: steepestIn(site, area),
      step: stepIn(site, area),
      facing: lies,
      standing: inIt.map(({ name }) => name),
      strip: rule ? stripOf(rule, around, lies, beside) : null,
      runOut: rule?.runOutM ? namesIn(around, ['front', 'back'], rule.runOutM.value, beside) : [],
      bays: on.input.bays.flatMap(({ region }, b) => (commonAreaM2([area, region, on.input.deck]) > TOUCH_M2 ? [b] : [])),
    };
  });
}

type Side = Parameters<typeof stripBeside>[1];

function namesIn(around: FramedRectangle, sides: readonly Side[], widthM: number, obstacles: readonly ObstacleInput[]): string[] {
  const found = sides.flatMap((side) => obstaclesIn(stripBeside(around, side, widthM), obstacles));
  return [...new Set(found.map(({ name }) => name))];
}

/** What stands in the strips. Where nobody says how the place lies to a building, it is enough that one way of lying is free. */
function stripOf(
  rule: StandingRule,
  around: FramedRectangle,
  lies: FacingBuilding | null,
  obstacles: readonly ObstacleInput[],
): SetUpResult['strip'] {
  const { stripAlongM, stripAcrossM } = rule;
  if (!stripAlongM || !stripAcrossM) return null;
  // What the place is wider than asked for counts as strip.
  const spareM = Math.max(0, around.toT - around.fromT - rule.widthM.value);
  const along = (side: Side): NonNullable<SetUpResult['strip']> => {
    const widthM = Math.max(0, stripAlongM.value - spareM);
    return { widthM, limit: stripAlongM, names: widthM > ROUNDING ? namesIn(around, [side], widthM, obstacles) : [] };
  };
  const widthM = Math.max(0, stripAcrossM.value - spareM / 2);
  const across = { widthM, limit: stripAcrossM, names: widthM > ROUNDING ? namesIn(around, ['high', 'low'], widthM, obstacles) : [] };
  if (lies) return lies.lies === 'along' ? along(lies.away) : across;
  return [along('high'), along('low'), across].find(({ names }) => names.length === 0) ?? across;
}

/**
 * Findings of places where appliances are set up.
 * @param on - evaluation [m]
 * @param results - results of the places [m]
 * @param stepLimit - greatest step [mm]
 * @returns facts, place by place [-]
 * @source contract.md, section 4, `traffic.width` and `traffic.gradient`; `traffic.setup` for what these two don't cover
 */
export function setUpFacts(on: Evaluation, results: readonly SetUpResult[], stepLimit: Limit): FindingFact[] {
  const [x0, y0] = on.input.originM;
  return results.flatMap((result) => {
    const { place, around } = result;
    const { table } = place;
    if (!table) return [];
    const middle = middleOf(around);
    const make: Make = (fact, { why, source, at, facts }) => {
      const spot = at ?? { ...middle, zone: undefined };
      const zone = spot.zone === undefined ? {} : { zone: on.input.zones[spot.zone].id };
      const own = { why, area: place.id, kind: place.kind, country: table.country, rule: table.name };
      const text = typeof source === 'string' ? source : sourceLine(source.source);
      return { ...fact, where: { ...zone, at: [spot.x + x0, spot.y + y0] }, facts: { ...own, source: text, ...facts } };
    };
    return [...sizeFacts(result, make), ...surfaceFacts(result, make, stepLimit), ...roomFacts(result, make)];
  });
}

type Make = (
  fact: Pick<FindingFact, 'rule' | 'severity' | 'value' | 'limit' | 'unit'>,
  of: {
    readonly why: string;
    readonly source: Limit | string;
    readonly at?: { readonly x: number; readonly y: number; readonly zone?: number | undefined };
    readonly facts?: FindingFact['facts'];
  },
) => FindingFact;

function middleOf({ dirX, dirY, fromS, toS, fromT, toT }: FramedRectangle): { x: number; y: number } {
  const s = (fromS + toS) / 2;
  const t = (fromT + toT) / 2;
  return { x: s * dirX - t * dirY, y: s * dirY + t * dirX };
}

function sizeFacts({ rule, fit }: SetUpResult, make: Make): FindingFact[] {
  if (!rule || !fit || fit.widthM >= rule.widthM.value - ROUNDING) return [];
  const facts = { widthM: rule.widthM.value, lengthM: rule.lengthM.value };
  const fact = (value: number, limit: Limit) =>
    ({ rule: 'traffic.width', severity: 'check', value, limit: limit.value, unit: 'm' }) as const;
  // Too short for any rectangle of that length: its length is told.
  if (fit.widthM === 0) return [make(fact(fit.lengthM, rule.lengthM), { why: 'setUpLength', source: rule.lengthM, facts })];
  return [make(fact(fit.widthM, rule.widthM), { why: 'setUpWidth', source: rule.widthM, facts })];
}

function surfaceFacts({ place, steepest, step }: SetUpResult, make: Make, stepLimit: Limit): FindingFact[] {
  const found: FindingFact[] = [];
  const limit = place.table?.setUpPercent ?? null;
  if (steepest && limit && steepest.percent > limit.value + ROUNDING) {
    const fact = { rule: 'traffic.gradient', severity: 'check', value: steepest.percent, limit: limit.value, unit: '%' } as const;
    found.push(make(fact, { why: 'setUpSlope', source: limit, at: steepest }));
  }
  if (step && 1000 * step.heightM > stepLimit.value + 1000 * ROUNDING) {
    const fact = { rule: 'traffic.gradient', severity: 'check', value: 1000 * step.heightM, limit: stepLimit.value, unit: 'mm' } as const;
    found.push(make(fact, { why: 'setUpStep', source: stepLimit, at: step }));
  }
  return found;
}

function roomFacts({ rule, standing, strip, runOut, facing: lies, areaM2, onDeckM2 }: SetUpResult, make: Make): FindingFact[] {
  const found: FindingFact[] = [];
  const add = (why: string, source: Limit | string, [value, limit, unit]: [number, number, string], facts: FindingFact['facts'] = {}) => {
    const severity = why === 'beyond' ? 'note' : 'check';
    found.push(make({ rule: 'traffic.setup', severity, value, limit, unit }, { why, source, facts }));
  };
  if (standing.length > 0) add('standing', 'the scene file', [standing.length, 0, '-'], { names: standing.join('\n') });
  if (strip && strip.names.length > 0) {
    add('strip', strip.limit, [strip.names.length, 0, '-'], { names: strip.names.join('\n'), stripM: strip.limit.value });
  }
  if (rule?.runOutM && runOut.length > 0) {
    add('runOut', rule.runOutM, [runOut.length, 0, '-'], { names: runOut.join('\n'), runOutM: rule.runOutM.value });
  }
  if (rule && lies) {
    const { wallLeastM, wallMostM, wallAcrossM } = rule;
    const most = lies.lies === 'along' ? wallMostM : wallAcrossM;
    if (most && lies.distanceM > most.value + ROUNDING) add('far', most, [lies.distanceM, most.value, 'm'], { lies: lies.lies });
    if (lies.lies === 'along' && wallLeastM && lies.distanceM < wallLeastM.value - ROUNDING)
      add('near', wallLeastM, [lies.distanceM, wallLeastM.value, 'm'], { lies: lies.lies });
  }
  if (areaM2 - onDeckM2 > TOUCH_M2) add('beyond', 'the scene file', [areaM2 - onDeckM2, 0, 'm²'], {});
  return found;
}
