/** Rules on how thick layers must or may be. */

import type { FindingFact } from '../../model/finding.ts';
import type { LayerFacts, RuleLimits, RuleSite, TreeFacts, ZoneFacts } from '../../model/rule-input.ts';
import { sourceLine } from '../../model/source.ts';
import { type Breach, type BuildUpRule, depthBreach } from './build-up-rule.ts';

/** Depths are met to the millimetre, as the make-up layer is; contract.md, section 2 [mm]. */
const ROUNDING_MM = 1;

export const DEPTH_RULES: readonly BuildUpRule[] = [
  { name: 'depth.vegetation', severity: 'check', why: 'vegetation', breaches: tooThin },
  { name: 'depth.vegetation', severity: 'note', why: 'unknown form', breaches: unknownForm },
  { name: 'depth.vegetation', severity: 'check', why: 'subsoil', breaches: organicTooDeep },
  { name: 'depth.base', severity: 'check', why: 'base', breaches: thinBase },
  { name: 'depth.lift', severity: 'note', why: 'lift', breaches: inLifts },
];

const sumMm = (layers: readonly LayerFacts[], role: LayerFacts['role'], key: 'leastM' | 'greatestM') =>
  layers.reduce((sum, layer) => sum + (layer.role === role ? layer[key] * 1000 : 0), 0);

/** Grass in a grid or between slabs roots in what fills them: no substrate of its own, and none is asked for. */
function growsInSurfacing(layers: readonly LayerFacts[]): boolean {
  return layers.some((layer) => layer.role === 'surfacing') && !layers.some((layer) => layer.role === 'substrate');
}

function tooThin({ vegetationForm, layers }: ZoneFacts, { limits }: RuleSite): Breach[] {
  const limit = vegetationForm === null ? undefined : limits.substrateMm.get(vegetationForm);
  const leastMm = sumMm(layers, 'substrate', 'leastM');
  if (!limit || leastMm > limit.value - ROUNDING_MM || growsInSurfacing(layers)) return [];
  return [depthBreach(leastMm, limit, { form: vegetationForm ?? '' })];
}

function unknownForm({ vegetationForm, layers }: ZoneFacts, { limits }: RuleSite): Breach[] {
  if (vegetationForm === null || limits.substrateMm.has(vegetationForm) || growsInSurfacing(layers)) return [];
  return [{ value: sumMm(layers, 'substrate', 'leastM'), limit: 0, unit: 'mm', facts: { form: vegetationForm } }];
}

/** From the lowest substrate with organic matter up: what lies below it may be as deep as one likes. */
function organicTooDeep({ layers }: ZoneFacts, { limits: { subsoilBelowMm } }: RuleSite): Breach[] {
  const lowest = layers.findIndex((layer) => layer.role === 'substrate' && !layer.mineral);
  const deepMm = sumMm(layers.slice(lowest), 'substrate', 'greatestM');
  if (lowest < 0 || deepMm < subsoilBelowMm.value + ROUNDING_MM) return [];
  return [depthBreach(deepMm, subsoilBelowMm, { layer: layers[lowest].name })];
}

function thinBase({ layers, trafficked }: ZoneFacts, { limits: { baseCourseMm } }: RuleSite): Breach[] {
  const leastMm = sumMm(layers, 'base course', 'leastM');
  return trafficked && leastMm <= baseCourseMm.value - ROUNDING_MM ? [depthBreach(leastMm, baseCourseMm, {})] : [];
}

/** Base courses only: they are compacted, and a plate reaches no deeper. */
function inLifts({ layers }: ZoneFacts, { limits: { liftMm } }: RuleSite): Breach[] {
  return layers.flatMap((layer) => {
    const thickMm = layer.greatestM * 1000;
    if (layer.role !== 'base course' || thickMm < liftMm.value + ROUNDING_MM) return [];
    return [depthBreach(thickMm, liftMm, { layer: layer.name, lifts: Math.ceil(thickMm / liftMm.value - 1e-9) })];
  });
}

/**
 * Whether a tree has the soil it needs: depth at its place, and its share of the zone's substrate.
 * @param tree - the soil it stands in [m³]
 * @param limits - least volume [m³] and depth [mm]
 * @returns nothing, or one fact for each of the two that falls short [-]
 * @source the limits' own sources
 */
export function treeSoil(tree: TreeFacts, limits: RuleLimits): FindingFact[] {
  const found: FindingFact[] = [];
  const where = { ...(tree.zone === null ? {} : { zone: tree.zone }), object: tree.id, at: tree.at };
  const fact = (value: number, limit: number, unit: string, facts: FindingFact['facts']) =>
    found.push({ rule: 'depth.vegetation', severity: 'check', where, value, limit, unit, facts });
  const { treeSoilMm, treeSoilM3 } = limits;
  const soilMm = tree.soilM * 1000;
  if (soilMm <= treeSoilMm.value - ROUNDING_MM) {
    fact(soilMm, treeSoilMm.value, 'mm', { why: 'tree depth', source: sourceLine(treeSoilMm.source) });
  }
  // Without any soil, how much of it is no further news.
  if (soilMm > 0 && tree.shareM3 < treeSoilM3.value * (1 - 1e-9)) {
    const facts = { why: 'tree volume', sharedBy: tree.sharedBy, source: sourceLine(treeSoilM3.source) };
    fact(tree.shareM3, treeSoilM3.value, 'm³', facts);
  }
  return found;
}
