/** Water in words: outlets, overflows, ponds, drainage and uplift; what is found, why it matters, what to do, who decides. */

import { slotLengthMm } from '../../core/water/runoff.ts';
import type { FindingFact, Rule } from '../../model/finding.ts';
import { byWhy, namesIn, number, type WhyWords, type Words } from './rule-words.ts';

const DECIDES = 'The drainage engineer and the local code decide.';
const lps = (value: number | string) => `${number(Number(value), 2)} l/s`;
const lsm = (value: number | string) => `${number(Number(value), 3)} l/(s·m)`;
const kNm2 = (value: number | string) => `${number(Number(value))} kN/m²`;
const areaM2 = (value: number | string) => `${number(Number(value), 1)} m²`;
/** Up, so that 20.2 of 20 mm never reads as 20. */
const mm = (value: number | string) => `${number(Math.ceil(Number(value) - 1e-6), 0)} mm`;
const percent = ({ value, limit }: FindingFact) => `${number((100 * value) / limit, 1)} %`;
const litres = (value: number | string) =>
  Number(value) < 1000 ? `${number(Number(value), 0)} l` : `${number(Number(value) / 1000, 1)} m³`;
const about = (value: number | string) => number(Number(value), 2);
/** Head over a slot that is named as an example [mm]. */
const SLOT_HEAD_MM = 40;

export const OUTLET_EN = {
  'off deck': ({ where }: FindingFact) =>
    `Outlet ${where.object} is drawn off the deck, so no water is counted to it. Draw it where it stands.`,
  'no capacity': ({ where, value, facts }: FindingFact) => {
    const drains = facts.rain
      ? `${lps(value)} in the design rain (${areaM2(facts.areaM2)}, mean coefficient ${about(facts.c)})`
      : `${areaM2(facts.areaM2)} of deck`;
    return `Outlet ${where.object} drains ${drains}, and the file does not say what it can take. Enter its capacity as built in, strainer and head included. ${DECIDES}`;
  },
  capacity: (f: FindingFact) =>
    `Outlet ${f.where.object} gets ${lps(f.value)} in the design rain off ${areaM2(f.facts.areaM2)} (mean coefficient ${about(f.facts.c)}); it takes ${lps(f.limit)} (${percent(f)}). ${f.severity === 'stop' ? 'Water backs up in the drainage. Add an outlet, or choose a larger one.' : 'Little is left: leaves and a little more rain take it.'} ${DECIDES}`,
  'no way out': ({ value, facts }: FindingFact) =>
    facts.any
      ? `${areaM2(value)} of the deck drain to no outlet: water finds no way out of there. Add an outlet, or falls that lead to one. ${DECIDES}`
      : `No outlet is drawn: the water of ${areaM2(value)} of deck has no way out. Draw outlets and overflows as they are. ${DECIDES}`,
  'no row': ({ where, facts }: FindingFact) =>
    `Zone ${where.zone}: no row of the table of run-off coefficients fits (${facts.table}), so all of its rain is counted (C = 1.0). Give the build-up a "runoff" of its own, with its source, to count less.`,
  'over edge': ({ value, facts }: FindingFact) =>
    `${areaM2(value)} of the deck drain over ${facts.kind === 'threshold' ? 'sill' : 'upstand'} ${facts.edge} in any rain: the end of its membrane is given no higher than the deck there${facts.kind === 'threshold' ? ', and the water runs into the building' : ''}. Outlets and overflows are counted without that water. Check its level; it stands on the datum of the deck's levels. ${DECIDES}`,
  'passed by': ({ where, value, facts }: FindingFact) =>
    `Outlet ${where.object} gets the water of ${areaM2(facts.areaM2)}, while that of ${areaM2(value)} (area times coefficient) passes it within one cell, ${number(Number(facts.cellM))} m: whether the outlet takes it is not known, and its flow may be much greater, that of the next one less. Draw the outlet in the low line of the levels, or take smaller cells. ${DECIDES}`,
  'no levels': () =>
    `The file gives no levels of the membrane, so the deck counts as level at 0.000: which water runs to which outlet, how deep it stands and what it weighs are not known. Enter the levels. ${DECIDES}`,
} satisfies WhyWords;

export const OVERFLOW_EN = {
  'off deck': ({ where }: FindingFact) =>
    `Overflow ${where.object} is drawn off the deck, so it is not counted. Draw it at the edge of the deck.`,
  'no invert': ({ where }: FindingFact) =>
    `Overflow ${where.object} has no level at which it begins to run, so it is not counted. Enter "invertM", on the datum of the deck's levels.`,
  'below deck': ({ where, facts }: FindingFact) =>
    `Overflow ${where.object} begins to run at ${about(facts.invertM)} m, below the membrane there: it runs in any rain, as an outlet does. Check its level; it stands on the datum of the deck's levels.`,
  'no capacity': ({ where, value, facts }: FindingFact) =>
    `Overflow ${where.object} ${facts.rain ? `must carry ${lps(value)}` : 'must relieve'} off ${areaM2(facts.areaM2)}, and the file does not say what it can take. Enter its capacity at the head that the upstands allow. ${DECIDES}`,
  capacity: (f: FindingFact) => {
    const slotM = slotLengthMm(Math.max(0, f.value - f.limit), SLOT_HEAD_MM) / 1000;
    const found = `Overflow ${f.where.object} must carry ${lps(f.value)} off ${areaM2(f.facts.areaM2)} in the extreme rain, less what the outlets take in the design rain; it takes ${lps(f.limit)} (${percent(f)}).`;
    if (f.severity !== 'stop') return `${found} Little is left. ${DECIDES}`;
    return `${found} Water rises above its level and loads the deck. Make it larger or add one: for the rest a slot of about ${number(Math.ceil(100 * slotM) / 100)} m at ${SLOT_HEAD_MM} mm of water (weir formula from memory). ${DECIDES}`;
  },
  'over finish': ({ where, value, facts }: FindingFact) =>
    `Before overflow ${facts.overflow} runs, water stands up to ${mm(value)} deep on the finish${where.zone ? ` of zone ${where.zone}` : ''}, on ${areaM2(facts.areaM2)} in all. Set the overflow lower, or accept it there in writing: people slip, soil floats off. ${DECIDES}`,
  none: ({ where }: FindingFact) =>
    `No overflow relieves outlet ${where.object}: with the outlets blocked its water finds no other way off the deck. Add an overflow at this low place, with free outfall. ${DECIDES}`,
  'over edge': ({ where, value, facts }: FindingFact) =>
    facts.kind === 'threshold'
      ? `With the outlets blocked, the water of outlet ${where.object} rises ${mm(value)} and runs over sill ${facts.edge} into the building before any overflow runs. Add an overflow there, lower than the sill. ${DECIDES}`
      : `With the outlets blocked, the water of outlet ${where.object} rises ${mm(value)} and runs over upstand ${facts.edge} before any overflow runs: behind the membrane it does damage. Add an overflow there, lower than the upstand. ${DECIDES}`,
} satisfies WhyWords;

export const POND_EN = {
  pond: ({ where, value, limit, facts }: FindingFact) =>
    `Water stays up to ${mm(value)} deep${where.zone ? ` in zone ${where.zone}` : ''}, on ${areaM2(facts.areaM2)} (${litres(facts.litres)} in the pores and above): the deck has no fall to an outlet there, ${mm(limit)} are let pass. Its weight, ${kNm2(facts.waterKNm2)} on the mean, is in no bay's load. Roots drown, a base freezes. Have falls made, or set an outlet at the lowest point. ${DECIDES}`,
  'pond load': ({ where, value, facts }: FindingFact) =>
    `Water stays up to ${mm(facts.depthMm)} deep on ${areaM2(facts.areaM2)}, with every outlet at work: the deck has no fall to an outlet there. With it bay ${where.bay} uses ${number(value, 1)} % of what is permitted: the saturated garden and ${kNm2(facts.waterKNm2)} of water on the mean${Number(facts.count) > 1 ? `; over are ${facts.bays}` : ''}. Have falls made, set an outlet at the lowest point, or build lighter. The structural engineer decides.`,
  raised: ({ where, value, limit, facts }: FindingFact) =>
    `Outlet ${facts.outlet} takes water only from ${number(Number(facts.levelM), 3)} m on, above the membrane: up to ${mm(value)} stay${where.zone ? ` in zone ${where.zone}` : ''}, on ${areaM2(facts.areaM2)} (${litres(facts.litres)} in the pores and above), ${mm(limit)} are let pass. The water's weight, ${kNm2(facts.waterKNm2)} on the mean, is in no bay's load. Set the outlet lower; where the water is meant to stay, give its depth as "pondMm" under "limits" and that weight to the structural engineer. ${DECIDES}`,
  unbounded: ({ facts }: FindingFact) =>
    `With outlet ${facts.outlet} blocked, water rises without end: no other outlet, no overflow and no edge of known height lets it out, so its load can't be told. Add an overflow, and draw the edges. The structural engineer must know how high water can stand.`,
  blocked: ({ where, value, facts }: FindingFact) =>
    `With outlet ${facts.outlet} blocked, water stands up to ${mm(facts.depthMm)} deep before it runs off${facts.into === '' ? '' : ` at ${facts.into}`}. Bay ${where.bay} then uses ${number(value, 1)} % of what is permitted, the saturated garden and ${kNm2(facts.waterKNm2)} of water on the mean${Number(facts.count) > 1 ? `; over are ${facts.bays}` : ''}. Set an overflow lower, or build lighter. The structural engineer decides whether the case counts.`,
} satisfies WhyWords;

export const FLOW_EN = {
  element: (f: FindingFact) =>
    `Zone ${f.where.zone}: in the design rain ${lsm(f.value)} run in ${f.facts.layer} at the end of the longest way; it carries ${lsm(f.limit)} (${percent(f)}), as given for its fall. Water backs up into what lies above. Take an element that carries more, or shorten the way by another outlet. ${DECIDES}`,
  fill: ({ where, value, limit, facts }: FindingFact) =>
    `Zone ${where.zone}: in the design rain water stands ${mm(value)} high in ${facts.layer} (by the second formula ${mm(facts.secondMm)}), which is ${number(limit, 0)} mm thick: ${lsm(facts.flowLsm)} come, running full it carries ${lsm(facts.capacityLsm)}. Water backs up into what lies above. Lay it thicker or coarser, use an element, or shorten the way by another outlet. ${DECIDES}`,
} satisfies WhyWords;

function upliftWords({ where, value, facts }: FindingFact): string {
  const when = where.stage ? `, stage ${where.stage}, while not all lies on it` : '';
  const water = `${mm(facts.waterMm)} above the membrane (${facts.given ? 'the level given' : 'until an overflow runs'})`;
  const mend = where.stage
    ? 'Lay what holds it down the same day, keep the outlets free and pump when it rains.'
    : 'Set the overflow lower, lay more weight on it, or take a fill that water gets into (with evidence).';
  const counted = facts.sealed ? 'counted as a sealed block' : 'counted by its grains';
  return `Zone ${where.zone}${when}: ${facts.layer} (${counted}) floats when water stands ${water}: ${kNm2(facts.upliftKNm2)} lift, ${kNm2(facts.holdingKNm2)} dry hold, with the factors ${number(Math.floor(100 * value + 1e-6) / 100)} instead of 1; ${kNm2(facts.ballastKNm2)} are missing. ${mend} The structural engineer and the geotechnical code decide.`;
}

const MOST_NAMED = 4;

function namedZones(text: string | number): string {
  const zones = namesIn(text);
  if (zones.length > MOST_NAMED) return `${zones.length} zones`;
  return zones.length === 1 ? `zone ${zones[0]}` : `zones ${zones.join(', ')}`;
}

export const UPLIFT_EN = {
  floats: upliftWords,
  unknown: ({ facts }: FindingFact) =>
    `Whether the light layers of ${namedZones(facts.zones)} can float is not known: no overflow and no edge says how high water can stand there. Draw the overflows with their levels, or give the level under "flotation". ${DECIDES}`,
} satisfies WhyWords;

export const WATER_EN = {
  'water.outlet': byWhy(OUTLET_EN),
  'water.overflow': byWhy(OVERFLOW_EN),
  'water.pond': byWhy(POND_EN),
  'water.flow': byWhy(FLOW_EN),
  'float.uplift': byWhy(UPLIFT_EN),
} satisfies Partial<Record<Rule, Words>>;
