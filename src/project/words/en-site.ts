/** Loads that are not as planned, in words: what may come within tolerances, and what was measured. */

import type { FindingFact } from '../../model/finding.ts';
import { number, type WhyWords } from './rule-words.ts';

const kNm2 = (value: number | string) => `${number(Number(value))} kN/m²`;
const share = ({ value, limit }: FindingFact) => `${number((100 * value) / limit, 1)} %`;
const signed = (value: number, digits: number) => `${value > 0 ? '+' : ''}${number(value, digits)}`;
const withImposed = ({ rule }: FindingFact) => (rule === 'load.total' ? ', imposed load included,' : '');

/** By `facts.why` of the findings `load.permanent` and `load.total`. */
export const SITE_EN = {
  tolerance: (f: FindingFact) =>
    `Bay ${f.where.bay} could go over within tolerances: with every layer as thick and as heavy as it may come out, its worst patch of 1 m × 1 m${withImposed(f)} reaches ${kNm2(f.value)}, permitted are ${kNm2(f.limit)} (${share(f)}); planned are ${kNm2(f.facts.plannedKNm2)}. Hold closer tolerances there and probe the depths, or plan a lighter build-up.`,
  probe: (f: FindingFact) =>
    `Bay ${f.where.bay}: probe ${f.facts.probe} in zone ${f.where.zone} found ${number(Number(f.facts.measuredMm), 0)} mm${f.facts.whole ? ' in all' : ''}, planned are ${number(Number(f.facts.plannedMm), 0)}. ${signed(Number(f.facts.measuredMm) - Number(f.facts.plannedMm), 0)} mm of ${f.facts.countedAs} bring ${signed(Number(f.facts.differenceKNm2), 2)} kN/m²; if the square metre there is so,${withImposed(f)} it carries ${kNm2(f.value)}, permitted are ${kNm2(f.limit)} (${share(f)}). Probe around it, and take off what is too much before more is laid.`,
} satisfies WhyWords;
