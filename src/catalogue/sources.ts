/** Sources that several catalogue entries share, and short ways to grade the rest. */

import type { Source } from '../model/source.ts';

/**
 * Our own starting value, to be replaced by a data sheet.
 * @param document - what the value rests on
 * @param url - address of a published range that the value lies in
 * @returns the graded source
 */
export function assumed(document: string, url?: string): Source {
  return url === undefined ? { document, grade: 'assumed' } : { document, grade: 'assumed', url };
}

/**
 * Usage of the trade without a published source.
 * @param document - what is usual
 * @returns the graded source
 */
export function commonPractice(document: string): Source {
  return { document, grade: 'common practice' };
}

/**
 * A remembered value, not confirmed.
 * @param document - document or quantity remembered
 * @param place - table or clause
 * @returns the graded source
 */
export function fromMemory(document: string, place?: string): Source {
  return place === undefined ? { document, grade: 'from memory' } : { document, place, grade: 'from memory' };
}

/**
 * Density chosen by us inside a range read in a table of moist, loosely tipped materials for roof planting.
 * @param row - the row of that table and its range
 * @returns the graded source: the range was read, the value in it is ours
 */
export function insideMoistBulk(row: string): Source {
  return assumed(`our value in the read range of moist bulk densities: ${row}`, 'http://www.fjknorr.com/lasten.html');
}

/**
 * Density chosen by us inside a range read in a table of light and ordinary fills as built in.
 * @param row - the row of that table and its range
 * @returns the graded source: the range was read, the value in it is ours
 */
export function insideBuiltIn(row: string): Source {
  return assumed(
    `our value in the read range of built-in densities: ${row}`,
    'https://www.weka.de/handwerker-bauunternehmer/15-leichtbaustoffe-im-erdbau/',
  );
}

export const GRANULAR_SPREAD: Source = {
  document: '2:1 prism method (half the depth on every side)',
  place: 'as a public soil-mechanics program computes it; presumes compacted granular material',
  grade: 'secondary',
};

/** The 2:1 slope is not proven for loose, light or organic material; the value stands as the tool's default for granular layers. */
export const LOOSE_SPREAD: Source = assumed('default for granular layers; needs evidence for this material under wheels');

export const SLAB_SPREAD: Source = fromMemory('EN 1991-2:2003, 1:1 through surfacing and concrete', '4.3.6');

export const NO_SPREAD: Source = assumed('no spread counted: sheets, hollow elements, foam boards and decks');

export const SHEET_LAP: Source = commonPractice('laps of 10 to 20 cm on rolls of 2 m and cutting');

export const CUTTING: Source = assumed('butt-jointed rolls, cutting at edges only');

export const FLEECE_THICKNESS: Source = fromMemory('needle-punched non-woven under 2 kPa');

export const FOOT_ONLY: Source = assumed('foot traffic and furniture only, set low so that wheels are reported');

export const UNDER_WHEELS: Source = assumed('tyre pressure on a paving laid for vehicles; breaking of single units is not checked');

export const SOIL_BEARING: Source = assumed('planted soil in moist state: foot traffic and light plant on boards');

export const BASE_BEARING: Source = assumed(
  'compacted base course; dense gravel is remembered as 600 kPa and more, medium dense as 200 to 600 kPa',
);

export const FILL_BEARING: Source = assumed('fill held in place by elements and layers above; by data sheet under vehicles');

export const BASE_COMPACTION: Source = fromMemory('base gravel, loose to compacted 1.20 to 1.30');

export const BEDDING_COMPACTION: Source = fromMemory('bedding sand and chippings, loose to compacted 1.15 to 1.25');

export const SUBSTRATE_COMPACTION: Source = fromMemory('substrates, loose to settled 1.10 to 1.25');

export const EXPANDED_CLAY_COMPACTION: Source = fromMemory('expanded clay, loose to placed 1.05 to 1.15');

export const FILL_COMPACTION: Source = assumed('single-sized fill, little settlement: 1.05 to 1.10');

/** 1.05 / 0.97, both related to the material in the bank. */
export const GRAVEL_COMPACTION: Source = {
  document: 'Table of bulking factors, gravel: loose 1.05, compacted 0.97',
  grade: 'read',
  url: 'https://www.scribd.com/document/663198882',
};

export const TIPPER: Source = commonPractice('articulated tipper, 25 m³ body, about 24 t load');

export const WALKING_FLOOR: Source = commonPractice('articulated lorry with moving floor, 60 m³ used, about 24 t load');

export const NOMINAL_SIZE: Source = commonPractice('nominal size of the unit');

export const FILL_WATER: Source = assumed('water kept by the grains after draining; saturated density counts it');

/** What is left between the grains after draining: total voids less the water they keep. */
export const GRAIN_PORES: Source = assumed('single-sized grains have about 40 % of voids; what they keep after draining is not in it');

export const FINE_PORES: Source = assumed('mixed grains have 20 to 35 % of voids; what they keep after draining is not in it');

export const SUBSTRATE_PORES: Source = assumed('air left in a substrate at its full water capacity, about 10 to 20 % by volume');

export const ELEMENT_PORES: Source = assumed('hollow element, about 5 % of its volume is plastic');

export const GRAVEL_FLOW: Source = assumed(
  'our value in the read range for gravel, 0.001 to 1 m/s; falls with fines and under load',
  'https://lfweb.sjgov.org/EHD/0/doc/455058/Page78.aspx',
);

export const FOAM_GLASS_FLOW: Source = assumed('low end of 0.01 to 0.1 m/s that a supplier of compacted foam-glass gravel states');

/** Grains let water in between them and lift less; that must be proved for the material laid. */
export const SEALED: Source = assumed('taken as a sealed block, the safe side; "grains" only with evidence');
