/** Zones as the build-up rules see them: round layers, and limits that are easy to tell apart. */

import { BUILD_UP_RULES, findBuildUpFacts } from '../../src/core/rules/build-up-rules.ts';
import type { FindingFact, Rule } from '../../src/model/finding.ts';
import type { Role } from '../../src/model/roles.ts';
import type { LayerFacts, Limit, RuleLimits, RuleSite, TreeFacts, ZoneFacts } from '../../src/model/rule-input.ts';

/** A layer of 10 mm named after its role; an element has voids and could hold water. */
export function layer(role: Role, over: Partial<LayerFacts> = {}): LayerFacts {
  const element = role === 'drainage element';
  return {
    name: role,
    role,
    orientation: null,
    infill: false,
    voidLm2: element ? 27 : 0,
    retentionLm2: element ? 12 : 0,
    mineral: false,
    leastM: 0.01,
    greatestM: 0.01,
    ...over,
  };
}

/** A layer of one thickness [mm]. */
export const thick = (role: Role, mm: number, over: Partial<LayerFacts> = {}): LayerFacts =>
  layer(role, { leastM: mm / 1000, greatestM: mm / 1000, ...over });

export const HOLDING = layer('drainage element', { orientation: 'retention' });
export const DRAINING = layer('drainage element', { orientation: 'drained' });
export const INFILL = layer('drainage fill', { infill: true });

/** Planting that breaks no rule. */
export const PLANTING: readonly LayerFacts[] = [layer('protection'), HOLDING, layer('filter'), thick('substrate', 300)];
/** Paving that breaks no rule, also under wheels. */
export const PAVING: readonly LayerFacts[] = [
  layer('protection'),
  layer('slip'),
  DRAINING,
  INFILL,
  layer('filter'),
  thick('base course', 200),
  layer('bedding'),
  layer('surfacing'),
];

const limit = (value: number, document: string): Limit => ({ value, source: { document, grade: 'assumed' } });

export const LIMITS: RuleLimits = {
  substrateMm: new Map([
    ['lawn', limit(150, 'lawn table')],
    ['trees', limit(600, 'tree table')],
  ]),
  treeSoilM3: limit(12, 'soil volume'),
  treeSoilMm: limit(1000, 'soil depth'),
  subsoilBelowMm: limit(400, 'subsoil'),
  baseCourseMm: limit(150, 'base'),
  liftMm: limit(250, 'lift'),
  upstandMm: limit(150, 'upstand'),
  sillMm: limit(50, 'sill'),
  stripM: limit(0.3, 'strip'),
  fallPercent: limit(1.5, 'fall'),
  pondMm: limit(20, 'pond'),
  slidingRatio: limit(1.5, 'sliding'),
  overturningRatio: limit(1.5, 'overturning'),
};

export interface Case {
  readonly form?: string;
  readonly trafficked?: boolean;
  readonly site?: Partial<RuleSite>;
  readonly trees?: readonly TreeFacts[];
}

/** Facts of one zone Z; the membrane resists roots unless the site says otherwise. */
export function facts(layers: readonly LayerFacts[], { form, trafficked = false, site, trees = [] }: Case = {}): FindingFact[] {
  const zone: ZoneFacts = { id: 'Z', vegetationForm: form ?? null, trafficked, layers };
  return findBuildUpFacts([zone], trees, { limits: LIMITS, rootResistant: true, ...site });
}

/** Names of the rules broken, in the order of the list. */
export const broken = (layers: readonly LayerFacts[], over: Case = {}): Rule[] => facts(layers, over).map((fact) => fact.rule);

/** Layers with some left out, by role. */
export const without = (layers: readonly LayerFacts[], ...roles: readonly Role[]): LayerFacts[] =>
  layers.filter((entry) => !roles.includes(entry.role));

export const ALL_WHYS: readonly string[] = BUILD_UP_RULES.map((rule) => rule.why);
