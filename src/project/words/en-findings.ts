/** Findings in English: what, where, why it matters, what to do. */

import type { FindingFact } from '../../model/finding.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { EDGES_EN } from './en-edges.ts';
import { LOAD_PLAN_EN } from './en-load-plan.ts';
import { ROUTES_EN } from './en-routes.ts';
import { BUILD_UPS_EN } from './en-rules.ts';
import { SITE_EN } from './en-site.ts';
import { WALLS_EN } from './en-walls.ts';
import { WATER_EN } from './en-water.ts';
import { WHEELS_EN } from './en-wheels.ts';
import { namesIn, number, type RuleWords, type WhyWords } from './rule-words.ts';

/** Loads that are not as planned; undefined for any other fact. */
const siteWords = (fact: FindingFact, scene: SceneFile) => (SITE_EN as WhyWords)[String(fact.facts.why)]?.(fact, scene);
/** Load plans that contradict themselves, loads entered twice; undefined for any other fact. */
const planWords = (fact: FindingFact, scene: SceneFile) => (LOAD_PLAN_EN as WhyWords)[String(fact.facts.why)]?.(fact, scene);
const percent = (fact: FindingFact) => `${number((100 * fact.value) / fact.limit, 1)} %`;
const kNm2 = (value: number) => `${number(value)} kN/m²`;
const areaM2 = (value: number) => (value < 0.01 ? `${number(value * 1e4, 1)} cm²` : `${number(value)} m²`);
const over = (fact: FindingFact) => (fact.severity === 'stop' ? `over by ${kNm2(fact.value - fact.limit)}` : 'near the limit');

export const FINDINGS_EN: RuleWords = {
  'load.permanent': (f, scene) =>
    siteWords(f, scene) ??
    `Bay ${f.where.bay}: the finished garden, saturated, brings ${kNm2(f.value)} on its worst patch of 1 m × 1 m, permitted are ${kNm2(f.limit)} (${percent(f)}, ${over(f)}). Use a lighter or thinner build-up there, or ask the structural engineer.`,
  'load.imposed': (f, scene) =>
    planWords(f, scene) ??
    `Bay ${f.where.bay}: a zone on it is meant to carry ${kNm2(f.value)} imposed load, permitted are ${kNm2(f.limit)} (${percent(f)}, ${over(f)}). Change the use or ask the structural engineer.`,
  'load.total': (f, scene) =>
    siteWords(f, scene) ??
    `Bay ${f.where.bay}: permanent and imposed load together reach ${kNm2(f.value)} on the worst patch of 1 m × 1 m, permitted in all are ${kNm2(f.limit)} (${percent(f)}, ${over(f)}). Lighten the build-up or the use, or ask the structural engineer.`,
  'load.stage': (f) =>
    `Bay ${f.where.bay}, stage ${f.where.stage}: ${kNm2(f.value)} on the worst patch of 1 m × 1 m while building, permitted are ${kNm2(f.limit)}${f.facts.ownLimit ? '' : ' (limit of the finished garden, as no stage load is given)'} (${percent(f)}, ${over(f)}). ${f.facts.heaped ? 'Heap less, heap elsewhere' : 'Lighten what lies there by then'}, or ask the structural engineer.`,
  'load.basis': (f, scene) => {
    const said = planWords(f, scene);
    if (said !== undefined) return said;
    const given = scene.deck.bays.find((bay) => bay.id === f.where.bay);
    if (given?.permanentKNm2 === undefined && given?.totalKNm2 === undefined) {
      return `Bay ${f.where.bay}: no permitted permanent or total load is given, so it is not judged. Ask the structural engineer for the load plan; until then this bay never counts as within its limit.`;
    }
    const basis = given.basis ?? {};
    const missing = (['document', 'revision', 'date'] as const).filter((key) => !basis[key]?.trim());
    return `Bay ${f.where.bay}: the permitted load is not confirmed, as its ${listed(missing)} ${missing.length === 1 ? 'is' : 'are'} missing. Ask the structural engineer for the load plan; until then this bay never counts as within its limit.`;
  },
  'depth.short': (f) =>
    `Zone ${f.where.zone}: no room for the build-up on ${areaM2(f.value)}: the finished level comes out up to ${number(Number(f.facts.mostMm), 0)} mm too high. Take a thinner build-up there or raise the finished level.`,
  'depth.over': (f) =>
    `Zone ${f.where.zone}: the build-up does not reach the finished level on ${areaM2(f.value)}: up to ${number(Number(f.facts.mostMm), 0)} mm are missing. Allow a thicker make-up layer or lower the finished level.`,
  'level.outside': (f) =>
    f.where.zone
      ? `Zone ${f.where.zone}: ${areaM2(f.value)} of ${areaM2(Number(f.facts.zoneM2))} lie outside its finish levels; the level of the nearest finish spot or edge between spots is used there. Give levels for the missing part.`
      : `${areaM2(f.value)} of ${areaM2(Number(f.facts.deckM2))} deck lie outside the surveyed levels; the level of the nearest surveyed edge is used there. Survey the missing part.`,
  'zone.gap': (f) =>
    f.where.zone
      ? `Zone ${f.where.zone}: its build-up has no layers yet, so ${areaM2(f.value)} count as bare deck. Give it layers.`
      : `${f.facts.count === 1 ? 'One gap' : `${f.facts.count} gaps`} between zones, ${areaM2(f.value)} in all${f.facts.count === 1 ? '' : `, the largest ${areaM2(Number(f.facts.largestM2))}`}: no build-up lies there and its load counts as nothing. Close the gap or say what lies there.`,
  'zone.overlap': (f) =>
    `Zones ${f.where.zone} and ${f.facts.other} overlap by ${areaM2(f.value)}; both build-ups are counted there. Draw one common edge.`,
  'zone.outside': (f) => {
    if (f.where.object) {
      return `${f.where.object}${f.where.stage ? ` in stage ${f.where.stage}` : ''} stands ${areaM2(f.value)} beyond the deck or over an opening; ${number(Number(f.facts.weightKN))} kN of it are not counted on the deck. Move it or draw what carries it.`;
    }
    return `Zone ${f.where.zone} lies ${areaM2(f.value)} beyond the deck or over an opening; that part is left out. Cut the zone at the edge.`;
  },
  'bay.gap': (f) =>
    f.facts.beyond
      ? `Bay ${f.where.bay} has no deck at all, so nothing is judged with it. Check its outline against the deck's.`
      : `${areaM2(f.value)} of deck belong to no bay (${f.facts.count === 1 ? 'one place' : `${f.facts.count} places`}): nothing is known of what they carry, and nothing there is judged. Complete the load plan.`,
  'bay.overlap': (f) =>
    `Bays ${f.where.bay} and ${f.facts.other} overlap by ${areaM2(f.value)}; each is judged with that part, the maps show the weaker one. Draw one common edge.`,
  'stage.order': (f) =>
    `Zone ${f.where.zone}, stage ${f.where.stage}: ${f.facts.layer} is laid before ${f.facts.below}, which belongs beneath it. Change the order of the stages.`,
  'stage.left': (f) =>
    f.where.object
      ? `${f.where.object} is placed in no stage, so its weight is missing from every stage. Add it to the stage that brings it.`
      : `Zone ${f.where.zone}: no stage places ${namesIn(f.facts.layers).join(', ')}, so the weight is missing from every stage. Add the role to a stage.`,
  ...BUILD_UPS_EN,
  ...EDGES_EN,
  ...WHEELS_EN,
  ...WALLS_EN,
  ...WATER_EN,
  ...ROUTES_EN,
};

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}
