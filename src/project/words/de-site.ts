/** Loads that are not as planned, in German words: what may come within tolerances, and what was measured. */

import type { FindingFact } from '../../model/finding.ts';
import type { SITE_EN } from './en-site.ts';
import { type Like, numberDe } from './rule-words.ts';

const kNm2 = (value: number | string) => `${numberDe(Number(value))} kN/m²`;
const share = ({ value, limit }: FindingFact) => `${numberDe((100 * value) / limit, 1)} %`;
const signed = (value: number, digits: number) => `${value > 0 ? '+' : ''}${numberDe(value, digits)}`;
const withImposed = ({ rule }: FindingFact) => (rule === 'load.total' ? ' einschließlich Nutzlast' : '');

/** By `facts.why` of the findings `load.permanent` and `load.total`. */
export const SITE_DE: Like<typeof SITE_EN> = {
  tolerance: (f) =>
    `Feld ${f.where.bay} könnte innerhalb der Toleranzen überschritten werden: Wird jede Lage so dick und so schwer, wie sie ausfallen darf, erreicht der ungünstigste Bereich von 1 m × 1 m${withImposed(f)} ${kNm2(f.value)}, zulässig sind ${kNm2(f.limit)} (${share(f)}); geplant sind ${kNm2(f.facts.plannedKNm2)}. Dort engere Toleranzen einhalten und die Dicken prüfen, oder einen leichteren Aufbau planen.`,
  probe: (f) =>
    `Feld ${f.where.bay}: Messung ${f.facts.probe} in Zone ${f.where.zone} ergab ${numberDe(Number(f.facts.measuredMm), 0)} mm${f.facts.whole ? ' insgesamt' : ''}, geplant sind ${numberDe(Number(f.facts.plannedMm), 0)}. ${signed(Number(f.facts.measuredMm) - Number(f.facts.plannedMm), 0)} mm (${f.facts.countedAs}) bringen ${signed(Number(f.facts.differenceKNm2), 2)} kN/m²; ist der Quadratmeter dort so, trägt er${withImposed(f)} ${kNm2(f.value)}, zulässig sind ${kNm2(f.limit)} (${share(f)}). Rundherum nachmessen und abtragen, was zu viel ist, bevor mehr aufgebracht wird.`,
};
