/** Run-off coefficients by surface, depth and pitch: peaks by table, one list for the year. Each row with its source. */

import { type AnnualC, annualC, type Band, type PeakC, peakC, type RunoffRow, type RunoffTableId } from '../model/runoff.ts';
import type { Source } from '../model/source.ts';
import { assumed, fromMemory } from './sources.ts';

const DIN = 'DIN 1986-100:2016-12';
const CS = 'Table 9, Cs';

/** Planted rows: an information page and public code agree. */
const DIN_PLANTED: Source = { document: DIN, place: CS, grade: 'secondary', url: 'http://www.info-regenwasser.de/dachbegruenung/' };
/** For surfaces on the ground; on a deck what seeps through the joints comes too, only later. */
const DIN_PAVED: Source = { document: `${DIN}, as public code repeats it`, place: CS, grade: 'secondary' };
const DIN_MEMORY: Source = fromMemory(DIN, CS);
const FLL_PEAK: Source = fromMemory('FLL green-roof guideline, peak run-off coefficient by depth of layers');
const FLL_YEAR: Source = fromMemory(
  'FLL green-roof guideline, annual run-off coefficient by depth of layers, 650 to 800 mm of rain a year',
);
const DIN_MEAN: Source = assumed(`mean coefficient Cm of ${DIN}, Table 9, taken for the year`);

/** Over the lower limit, up to and with the upper one. */
const over = (from: number, to = Infinity): Band => ({ from, to, fromIncluded: false });
/** From the lower limit on, below the upper one. */
const from = (least: number, to = Infinity): Band => ({ from: least, to, fromIncluded: true });
const upTo = (to: number): Band => over(-1, to);

type Row<C extends PeakC | AnnualC> = RunoffRow<C>;
type Words = readonly [name: string, c: number];

/** The guideline writes "2 to 4 cm", then "over 4 to 6 cm": 2 cm itself belongs to the thinnest row. */
const TWO_TO_FOUR = over(19.999, 40);
const FLAT = upTo(5);
const STEEP = over(5);

const dinPlanted = ([name, c]: Words, depthMm: Band, pitchDeg: Band): Row<PeakC> => {
  return { name, surface: 'planted', depthMm, pitchDeg, c: peakC(c), source: DIN_PLANTED };
};
const fllPlanted = ([name, c]: Words, depthMm: Band, pitchDeg: Band): Row<PeakC> => {
  return { name, surface: 'planted', depthMm, pitchDeg, c: peakC(c), source: FLL_PEAK };
};
const yearPlanted = ([name, c]: Words, depthMm: Band): Row<AnnualC> => {
  return { name, surface: 'planted', depthMm, c: annualC(c), source: FLL_YEAR };
};

const PAVED: readonly Row<PeakC>[] = [
  { name: 'paving with sealed joints', surface: 'sealed', c: peakC(1), source: DIN_PAVED },
  { name: 'paving or slabs with open joints', surface: 'open joints', c: peakC(0.7), source: DIN_PAVED },
  { name: 'flat roof with gravel at up to 3°', surface: 'gravel', pitchDeg: upTo(3), c: peakC(0.8), source: DIN_PAVED },
  { name: 'grass pavers', surface: 'grass paver', c: peakC(0.4), source: DIN_MEMORY },
  { name: 'water-bound surface', surface: 'bound gravel', c: peakC(0.9), source: DIN_MEMORY },
  { name: 'concrete or membrane with nothing on it', surface: 'bare deck', c: peakC(1), source: DIN_PAVED },
];

/**
 * Peak coefficients by table. A zone's depth is its substrate alone: the guidelines may count drainage layers in, and a
 * thinner layer has the greater coefficient.
 */
export const PEAK_TABLES: Readonly<Record<RunoffTableId, readonly Row<PeakC>[]>> = {
  'din-1986-100': [
    dinPlanted(['extensive planting under 10 cm at up to 5°', 0.5], from(0, 100), FLAT),
    dinPlanted(['extensive planting from 10 cm at up to 5°', 0.4], from(100, 300), FLAT),
    dinPlanted(['intensive planting from 30 cm at up to 5°', 0.2], from(300), FLAT),
    dinPlanted(['extensive planting at over 5°', 0.7], from(0, 300), STEEP),
    ...PAVED,
  ],
  'fll-depth': [
    fllPlanted(['planting 2 to 4 cm at up to 5°', 0.7], TWO_TO_FOUR, FLAT),
    fllPlanted(['planting over 4 to 6 cm at up to 5°', 0.6], over(40, 60), FLAT),
    fllPlanted(['planting over 6 to 10 cm at up to 5°', 0.5], over(60, 100), FLAT),
    fllPlanted(['planting over 10 to 15 cm at up to 5°', 0.4], over(100, 150), FLAT),
    fllPlanted(['planting over 15 to 25 cm at up to 5°', 0.3], over(150, 250), FLAT),
    fllPlanted(['planting over 25 to 50 cm at up to 5°', 0.2], over(250, 500), FLAT),
    fllPlanted(['planting over 50 cm at up to 5°', 0.1], over(500), FLAT),
    fllPlanted(['planting 2 to 4 cm at over 5°', 0.8], TWO_TO_FOUR, STEEP),
    fllPlanted(['planting over 4 to 6 cm at over 5°', 0.7], over(40, 60), STEEP),
    fllPlanted(['planting over 6 to 10 cm at over 5°', 0.6], over(60, 100), STEEP),
    fllPlanted(['planting over 10 to 15 cm at over 5°', 0.5], over(100, 150), STEEP),
    ...PAVED,
  ],
};

/** Annual coefficients. Between 15 and 20 cm the extensive and the intensive row of the guideline say the same. */
export const ANNUAL_TABLE: readonly Row<AnnualC>[] = [
  yearPlanted(['planting 2 to 4 cm', 0.6], TWO_TO_FOUR),
  yearPlanted(['planting over 4 to 6 cm', 0.55], over(40, 60)),
  yearPlanted(['planting over 6 to 10 cm', 0.5], over(60, 100)),
  yearPlanted(['planting over 10 to 15 cm', 0.45], over(100, 150)),
  yearPlanted(['planting over 15 to 25 cm', 0.4], over(150, 250)),
  yearPlanted(['planting over 25 to 50 cm', 0.3], over(250, 500)),
  yearPlanted(['planting over 50 cm', 0.1], over(500)),
  { name: 'paving with sealed joints', surface: 'sealed', c: annualC(0.8), source: DIN_MEAN },
  { name: 'paving or slabs with open joints', surface: 'open joints', c: annualC(0.6), source: DIN_MEAN },
  { name: 'flat roof with gravel', surface: 'gravel', c: annualC(0.8), source: DIN_MEAN },
  {
    name: 'grass pavers',
    surface: 'grass paver',
    c: annualC(0.2),
    source: fromMemory(`mean coefficient Cm of ${DIN}, taken for the year`),
  },
  {
    name: 'water-bound surface',
    surface: 'bound gravel',
    c: annualC(0.7),
    source: fromMemory(`mean coefficient Cm of ${DIN}, taken for the year`),
  },
  { name: 'concrete or membrane with nothing on it', surface: 'bare deck', c: annualC(0.9), source: DIN_MEAN },
];

/** Table of peaks where a scene names none. */
export const DEFAULT_RUNOFF_TABLE: RunoffTableId = 'din-1986-100';

export const RUNOFF_TABLE_NAMES: Readonly<Record<RunoffTableId, string>> = {
  'din-1986-100': `${DIN}, ${CS}`,
  'fll-depth': 'FLL green-roof guideline by depth',
};
