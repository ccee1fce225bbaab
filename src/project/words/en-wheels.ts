/** Wheels in words: pressure on layers, vehicles in bays; what is found, why it matters, who decides. */

import type { FindingFact, Rule } from '../../model/finding.ts';
import { byWhy, number, type WhyWords, type Words } from './rule-words.ts';

const kPa = (value: number | string) => `${number(Number(value), 0)} kPa`;
const kNm2 = (value: number) => `${number(value)} kN/m²`;
const percent = ({ value, limit }: FindingFact) => (limit > 0 ? ` (${number((100 * value) / limit, 0)} %)` : '');
const when = ({ where }: FindingFact) => (where.stage ? `, stage ${where.stage}` : '');
/** By how the pressure comes about. */
const TOGETHER: Readonly<Record<string, string>> = {
  'one wheel': '',
  'sum of wheels': ', where the patches of several wheels overlap',
  'enclosing rectangle': ', several wheels taken as one patch around them all',
};

/** By `facts.why`. */
export const STRESS_EN = {
  spread: (fact: FindingFact) => {
    const { where, value, limit, severity, facts } = fact;
    const mend = where.stage
      ? 'Take a lighter machine, lay boards or plates, or place more before it drives there'
      : 'Take a layer that bears more, or more thickness above it';
    const look = severity === 'stop' ? mend : 'Near the limit: prove the bearing by data sheet and test';
    const found = `${pressing(fact)} presses ${kPa(value)} on ${facts.layer}${TOGETHER[String(facts.governs)]}: ${parts(fact)}; it bears ${kPa(limit)}${percent(fact)}.`;
    return `${found} An elastic half-space would give ${kPa(facts.elasticKPa)} from the wheels. ${look}; the structural engineer decides.`;
  },
  elastic: (fact: FindingFact) =>
    `${pressing(fact)} presses ${kPa(sumKPa(fact))} on ${fact.facts.layer} if wheels spread with depth as entered, and that is borne (${kPa(fact.limit)}). By the second opinion, an elastic half-space, it is ${kPa(fact.value)}${percent(fact)}: ${elasticParts(fact)}. Under thin cover the elastic peak is the higher one; layers on a stiff slab are no half-space, so neither is exact. Ask for a proof of the bearing, or take more thickness above it; the structural engineer decides.`,
  begins: (fact: FindingFact) =>
    `${pressing(fact)} would press ${kPa(fact.value)} on ${fact.facts.layer}${TOGETHER[String(fact.facts.governs)]} as the stage begins, before what it lays lies on top: ${parts(fact)}; it bears ${kPa(fact.limit)}${percent(fact)}. Let it drive only on what is laid, tipping ahead of itself, or on boards or plates; the structural engineer decides.`,
} satisfies WhyWords;

const pressing = (fact: FindingFact) => `Zone ${fact.where.zone}${when(fact)}: ${fact.facts.vehicle} (${fact.facts.run})`;
const sumKPa = ({ facts }: FindingFact) => Number(facts.wheelsKPa) + Number(facts.aboveKPa);

const parts = (fact: FindingFact) => partsOf(fact, Number(fact.facts.wheelsKPa));
const elasticParts = (fact: FindingFact) => partsOf(fact, Number(fact.facts.elasticKPa));

function partsOf({ facts }: FindingFact, pressedKPa: number): string {
  const factor = Number(facts.factor) === 1 ? '' : `, dynamic factor ${facts.factor}`;
  return `${kPa(pressedKPa)} from ${facts.by === 'support' ? 'one support' : 'wheels'}${factor} and ${kPa(facts.aboveKPa)} from what lies above`;
}

/** By `facts.why`. */
export const BAY_EN = {
  'not permitted': (f: FindingFact) =>
    `Bay ${f.where.bay}${when(f)}: ${f.facts.vehicle} (${f.facts.run}) is not among the vehicles that the load plan permits there. Keep it off, or have the structural engineer permit it.`,
  'not said': (f: FindingFact) =>
    `Bay ${f.where.bay}${when(f)}: the load plan does not say which vehicles may enter; ${f.facts.vehicle} (${f.facts.run}) does. Ask the structural engineer, for a fire appliance the fire authority too.`,
  load: (f: FindingFact) =>
    `Bay ${f.where.bay}${when(f)}: ${number(Number(f.facts.standingKN), 1)} kN of ${f.facts.vehicle} (${f.facts.run}) stand on it at once, ${kNm2(f.value)} over its area; ${kNm2(f.limit)} are permitted${percent(f)}. Take a lighter vehicle or another way; the structural engineer must check wheels and supports in any case.`,
} satisfies WhyWords;

export const WHEELS_EN = {
  'stress.layer': byWhy(STRESS_EN),
  'traffic.bay': byWhy(BAY_EN),
} satisfies Partial<Record<Rule, Words>>;
