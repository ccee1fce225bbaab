/** Edges, strips and falls in words: what is found, why it matters, what to do. */

import type { FindingFact, Rule } from '../../model/finding.ts';
import { number, type Words } from './rule-words.ts';

const mm = (value: number) => `${number(value, 0)} mm`;
/** Rounded to the unsafe side, so that 49.6 of 50 mm never reads as 50. */
const lessMm = (value: number) => mm(Math.floor(value + 1e-6));
const moreMm = (value: number) => mm(Math.ceil(value - 1e-6));
const areaM2 = (value: number) => `${number(value)} m²`;
function upstandWords({ where, value, limit, facts }: FindingFact): string {
  const name = facts.kind === 'threshold' ? `Sill ${facts.edge}` : `Upstand ${facts.edge}`;
  const height =
    value < 0
      ? `the finish of zone ${where.zone} lies ${moreMm(-value)} above the end of the membrane`
      : `the membrane ends ${lessMm(value)} above the finish of zone ${where.zone}`;
  return `${name}: ${height}, at least ${mm(limit)} are needed, ${moreMm(Number(facts.missingMm))} are missing. ${upstandAdvice(facts)}`;
}

function upstandAdvice(facts: FindingFact['facts']): string {
  const why = 'Splashing or standing water and snow run in behind it.';
  if (facts.kind === 'upstand') return `${why} Lower the finish there, or have the membrane carried higher.`;
  if (facts.drained)
    return `${why} Lower the finish or raise the sill; 0 to 20 mm only as a special construction that planner, roofer and client agree on in writing.`;
  return `${why} Put a drained channel before the door, lower the finish, or raise the sill.`;
}

const KIND: Readonly<Record<string, string>> = { upstand: 'upstand', threshold: 'sill', outlet: 'outlet', overflow: 'overflow' };

function stripWords({ where, value, limit, facts }: FindingFact): string {
  const near = value === 0 ? 'reaches' : `comes within ${number(Math.floor(100 * value + 1e-6) / 100)} m of`;
  const isOutlet = facts.kind === 'outlet' || facts.kind === 'overflow';
  const why = isOutlet
    ? 'Roots and leaves block it, and nobody finds it.'
    : 'Roots and wet soil work at the joint, and rain splashes soil up.';
  return `Zone ${where.zone}: the planting ${near} ${KIND[String(facts.kind)]} ${facts.edge}; ${number(limit)} m without plants are wanted. ${why} Lay a strip of gravel or paving${isOutlet ? ' round it' : ' along it'}.`;
}

function fallWords({ where, value, limit, severity, facts }: FindingFact): string {
  const most = Number(facts.mostPercent);
  const falls = most - value < 0.005 ? `${number(value)} %` : `${number(value)} to ${number(most)} %`;
  const places = Number(facts.places) > 1 ? ` in ${facts.places} places, the largest ${areaM2(Number(facts.largestM2))}` : '';
  const area = `${areaM2(Number(facts.areaM2))}${places}`;
  if (facts.surface === 'paving') {
    return `The finish of paving falls ${falls} on ${area} (zone ${where.zone}), less than ${number(limit)} %: surface water leaves through the joints only. Keep joints and base open to water, or give the finish a fall.`;
  }
  if (severity === 'note') {
    return `The membrane falls ${falls} on ${area}: under the ${number(limit)} % that are recommended. Puddles stay where the slab sags; fill elements and keep the outlets free.`;
  }
  return `The membrane falls ${falls} on ${area}, less than ${number(limit)} %. Water stands there, and sagging of the slab takes the rest of the fall. Have falls made before anything is laid, or add an outlet and drainage that copes with standing water.`;
}

export const EDGES_EN = {
  'edge.upstand': upstandWords,
  'edge.strip': stripWords,
  'level.fall': fallWords,
} satisfies Partial<Record<Rule, Words>>;
