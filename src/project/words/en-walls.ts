/** Retaining edges in words: what is found, why it matters, what to do. */

import type { FindingFact, Rule } from '../../model/finding.ts';
import { byWhy, number, type WhyWords, type Words } from './rule-words.ts';

/** Rounded to the unsafe side, so that 1.497 never reads as 1.50. */
const less = (value: number) => number(Math.floor(100 * value + 1e-6) / 100);
const more = (value: number) => number(Math.ceil(100 * value - 1e-6) / 100);
const kPa = (value: number) => `${number(Math.ceil(10 * value - 1e-6) / 10, 1)} kPa`;
const ENGINEER = 'The structural engineer proves the wall.';

function slidingWords({ where, value, limit, facts }: FindingFact): string {
  const asked = value < 1 ? `it does not hold, ${number(limit)} are asked for` : `${number(limit)} are asked for`;
  if (facts.why === 'overturning') {
    return `Retaining edge ${where.object}: the moment that holds it is ${less(value)} times the one that turns it over; ${asked}. Make the base slab wider or the wall lower. ${ENGINEER}`;
  }
  return `Retaining edge ${where.object}: friction under the base is ${less(value)} times the thrust of the soil; ${asked}. It stands with tan δ = ${number(Number(facts.baseFriction))}; have that measured for the sheets that lie there. Make the base slab wider, the wall lower or the backfill lighter, or hold its foot against something fixed: no anchor through the membrane. ${ENGINEER}`;
}

/** By `facts.why`. */
export const BEARING_EN = {
  unknown: ({ where, value, facts }: FindingFact) =>
    `Retaining edge ${where.object}: up to ${kPa(value)} press under its base, ${facts.layers === 0 ? 'and no layer is drawn between it and the membrane' : 'and what it stands on has no permitted pressure'}. The structural engineer and the data sheets say whether that can be borne.`,
  pressure: ({ where, value, limit, severity, facts }: FindingFact) =>
    `Retaining edge ${where.object}: up to ${kPa(value)} press under its base, ${facts.layer} below it bears ${number(limit, 1)} kPa${severity === 'stop' ? '' : ' (near the limit)'}. Make the base slab wider, or have it stand on a layer that bears more. ${ENGINEER}`,
  tension: ({ where, value, limit, facts }: FindingFact) =>
    `Retaining edge ${where.object}: the resultant lies ${more(value)} m from the middle of its base, more than a sixth of the width (${less(limit)} m): the base opens and presses on ${less(Number(facts.contactM))} m of ${number(Number(facts.baseM))} m. Make the base slab wider. ${ENGINEER}`,
  soil: ({ where, value, limit, facts }: FindingFact) =>
    `Retaining edge ${where.object}: ${where.zone ? `the build-up of zone ${where.zone} behind it is ${less(value)} m deep` : 'no build-up lies behind it'}, while it retains ${number(limit)} m. The soil on its base slab is counted with the zone, so up to ${more(Number(facts.missingKNm2))} kN/m² are missing from the loads of the deck. Draw the soil as it will lie, or turn the wall to the other side.`,
} satisfies WhyWords;

export const WALLS_EN = {
  'wall.sliding': slidingWords,
  'wall.bearing': byWhy(BEARING_EN),
} satisfies Partial<Record<Rule, Words>>;
