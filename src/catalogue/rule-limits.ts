/** Values the build-up and edge rules start from, each with its source; a scene's `limits` replace them. */

import type { Limit, RuleLimits } from '../model/rule-input.ts';
import type { Source } from '../model/source.ts';
import { assumed, commonPractice, fromMemory } from './sources.ts';

const GUIDE_DEPTH = 'FLL green-roof guideline, guide values for depths of layers';
const guideDepth = (row: string): Source => fromMemory(GUIDE_DEPTH, row);

interface DepthRow {
  /** Key as written in `vegetation.form`. */
  readonly form: string;
  readonly leastMm: number;
  readonly source: Source;
}

/** The low end of each guide range. */
export const SUBSTRATE_DEPTHS: readonly DepthRow[] = [
  { form: 'moss and sedum', leastMm: 20, source: guideDepth('moss and sedum 2 to 6 cm') },
  { form: 'sedum, moss and herbs', leastMm: 60, source: guideDepth('sedum, moss and herbs 6 to 10 cm') },
  { form: 'sedum, herbs and grass', leastMm: 100, source: guideDepth('sedum, herbs and grass 10 to 15 cm') },
  { form: 'extensive grass', leastMm: 150, source: guideDepth('grass and herbs 15 to 20 cm') },
  { form: 'lawn', leastMm: 150, source: guideDepth('lawn 15 to 35 cm') },
  { form: 'low shrubs', leastMm: 150, source: guideDepth('perennials and low shrubs 15 to 50 cm') },
  { form: 'perennials', leastMm: 150, source: guideDepth('perennials and low shrubs 15 to 50 cm') },
  { form: 'shrubs to 1.5 m', leastMm: 200, source: guideDepth('shrubs 20 to 60 cm') },
  { form: 'shrubs to 3 m', leastMm: 300, source: commonPractice('shrubs 30 to 60 cm on podium decks') },
  { form: 'large shrubs to 6 m', leastMm: 350, source: guideDepth('tall shrubs 35 to 70 cm') },
  { form: 'small trees to 10 m', leastMm: 600, source: guideDepth('small trees 60 to 125 cm and more') },
  { form: 'trees to 15 m', leastMm: 1000, source: guideDepth('trees 100 cm and more') },
];

/** Both heights as a building glossary repeats them. */
const upstandRule = (where: string): Source => ({
  document: `German flat-roof guideline and DIN 18531-1, membrane above the finish ${where}`,
  place: 'as in the glossary entry "Anschluss"',
  grade: 'secondary',
  url: 'https://www.baunetzwissen.de',
});

/** Codes of today use partial factors instead; the structural engineer proves the wall by them. */
const globalFactor = (against: string): Source => fromMemory(`global safety of 1.5 against ${against}, as before partial factors`);

export const DEFAULT_LIMITS: RuleLimits = {
  substrateMm: new Map(SUBSTRATE_DEPTHS.map(({ form, leastMm, source }): [string, Limit] => [form, { value: leastMm, source }])),
  treeSoilM3: { value: 12, source: fromMemory('FLL recommendations for tree pits, 12 m³ of soil to root in') },
  treeSoilMm: { value: 600, source: guideDepth('small trees 60 to 125 cm and more') },
  subsoilBelowMm: { value: 400, source: commonPractice('below 35 to 40 cm substrate has no organic matter') },
  baseCourseMm: { value: 150, source: commonPractice('base course 15 to 30 cm, more for heavy vehicles by calculation') },
  liftMm: { value: 250, source: commonPractice('base course in lifts of at most 30 cm loose, about 25 cm compacted') },
  upstandMm: { value: 150, source: upstandRule('at a pitch up to 5°') },
  sillMm: { value: 50, source: upstandRule('at a door with a drained channel') },
  stripM: { value: 0.3, source: commonPractice('strip of 30 to 50 cm without plants along façades, upstands and round outlets') },
  fallPercent: { value: 1.5, source: commonPractice('falls of 1.5 to 2 % on layers that bear water; guidelines recommend 2 %') },
  pondMm: { value: 20, source: assumed('shallower puddles stay within fleece and element; a check of ours, no rule of a guideline') },
  slidingRatio: { value: 1.5, source: globalFactor('sliding') },
  overturningRatio: { value: 1.5, source: globalFactor('overturning') },
};

/** Falls below the least one are a check, falls from there up to this one a note. */
export const RECOMMENDED_FALL: Limit = {
  value: 2,
  source: {
    document: 'German flat-roof guideline, 2 % recommended for every layer that bears water',
    place: 'as several German building pages repeat it',
    grade: 'secondary',
  },
};

/** Density of a retaining edge where the scene gives none [kg/m³]. */
export const WALL_DENSITY: Limit = {
  value: 2500,
  source: commonPractice('reinforced concrete 2500 kg/m³; EN 1991-1-1 rounds it up to 25 kN/m³'),
};

/** Partial factors of the check whether light layers float; national annexes differ (1.0 to 1.1 and 0.9 to 0.95). */
export const UPLIFT_FACTORS: Readonly<Record<'upFactor' | 'downFactor', Limit>> = {
  upFactor: { value: 1, source: fromMemory('EN 1997-1, recommended factor on permanent uplift (UPL)', 'Table A.15') },
  downFactor: {
    value: 0.9,
    source: {
      document: 'EN 1997-1, recommended factor on stabilising weight (UPL), as several texts repeat it',
      place: 'Table A.15',
      grade: 'secondary',
    },
  },
};

/** What one city asks for beyond the guide values: no default, for those who plan there and as a check. */
export interface SoilRule {
  readonly substrateMm: Limit;
  readonly treeSoilM2: Limit;
  readonly treeSoilMm: Limit;
}

const MUNICIPAL_TEXT: Source = {
  document: 'Hamburg development plans, binding text on planting over garages below ground',
  place: 'at least 80 cm of substrate; trees at least 1.0 m over 12 m² each',
  grade: 'read',
  url: 'https://api.hamburg.de',
};

export const MUNICIPAL_SOIL: SoilRule = {
  substrateMm: { value: 800, source: MUNICIPAL_TEXT },
  treeSoilM2: { value: 12, source: MUNICIPAL_TEXT },
  treeSoilMm: { value: 1000, source: MUNICIPAL_TEXT },
};
