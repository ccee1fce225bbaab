/** A load plan that contradicts itself or is out of date, and loads entered twice, in English words. */

import type { FindingFact } from '../../model/finding.ts';
import { namesIn, number, type WhyWords } from './rule-words.ts';

const kNm2 = (value: number | string) => `${number(Number(value))} kN/m²`;
const edition = (revision: string | number, date: string | number) =>
  [revision === '' ? '' : `revision ${revision}`, date === '' ? '' : `of ${date}`].filter((part) => part !== '').join(' ');

function knowing({ bays, inHistory }: FindingFact['facts']): string {
  const ids = bays === '' ? [] : namesIn(bays);
  if (ids.length === 0) return 'the history of the file knows';
  const more = ids.length > 3 ? ` and ${ids.length - 3} more` : '';
  const told = `${ids.length === 1 ? 'bay' : 'bays'} ${ids.slice(0, 3).join(', ')}${more}`;
  return inHistory ? `${told} and the history of the file know` : `${told} ${ids.length === 1 ? 'knows' : 'know'}`;
}

/** By `facts.why` of `load.basis`, and of `load.imposed` for loads entered twice. */
export const LOAD_PLAN_EN = {
  included: (f: FindingFact) =>
    `Bay ${f.where.bay}: the basis of its permitted load says “${f.facts.words}”, yet ${kNm2(f.value)} stand as permitted permanent load${Number(f.facts.imposedKNm2) < 0 ? '' : `, and ${kNm2(f.facts.imposedKNm2)} of imposed load beside it`}. The same load may be permitted twice. Ask the structural engineer; if it is the total, enter it as the total load.`,
  'total below': (f: FindingFact) =>
    `Bay ${f.where.bay}: the permitted total of ${kNm2(f.limit)} is less than its permitted ${f.facts.part} load of ${kNm2(f.value)} alone. One of the two is wrong; the total is held to. Compare with the load plan.`,
  'total other': (f: FindingFact) =>
    `Bay ${f.where.bay}: permitted are ${kNm2(f.facts.permanentKNm2)} permanent and ${kNm2(f.facts.imposedKNm2)} imposed, together ${kNm2(f.value)}, and a total of ${kNm2(f.limit)}. All three are held to, so the strictest counts. If the load plan gives only one of them, leave out the others.`,
  twice: (f: FindingFact) =>
    `Zone ${f.where.zone} and ${f.facts.name} (${f.where.object}): the zone is meant to carry ${kNm2(f.limit)} imposed load, and on ${number(Number(f.facts.areaM2), 1)} m² of it ${f.facts.name} brings ${kNm2(f.value)} more, as a permanent load. If both are the same load, it counts twice: keep the imposed load of the zone and take the object out.`,
  earlier: (f: FindingFact) =>
    `Bay ${f.where.bay}: its permitted load is from ${f.facts.document}, ${edition(f.facts.revision, f.facts.date)}; ${knowing(f.facts)} ${edition(f.facts.laterRevision, f.facts.laterDate)}. Enter what the latest load plan permits here, or ask the structural engineer which one holds.`,
} satisfies WhyWords;
