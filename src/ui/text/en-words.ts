/** Words and small phrases that sentences of `en.ts` are made of. */

import type { Rule } from '../../model/finding.ts';
import type { CoreLogOther, MapKind } from '../../model/maps.ts';
import type { PartKind } from '../../model/picture.ts';
import type { SceneBasis } from '../../model/scene-file.ts';
import type { BasisPart } from '../facts/basis.ts';
import type { BayCase, BayStatus } from '../facts/bay-verdict.ts';
import type { MapGroup } from '../facts/map-groups.ts';
import type { Judgement } from '../facts/utilisation.ts';
import { loadText, numberText } from '../format.ts';

export const many = (count: number, one: string, more: string): string => `${numberText(count, 0)} ${count === 1 ? one : more}`;

/** Of two things "both". */
export const allOf = (count: number, one: string, more: string): string =>
  count === 1 ? `The one ${one}` : count === 2 ? `Both ${more}` : `All ${many(count, one, more)}`;

export const list = (words: readonly string[], last: string): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;

export const basisText = ({ document, revision, date, by }: SceneBasis): string =>
  [`${document} rev ${revision}`, date, by].filter((part) => part !== undefined && part !== '').join(', ');

export const basisShort = ({ document, revision }: SceneBasis): string => `${document} rev ${revision}`;

export const missingText = (missing: readonly BasisPart[]): string => `not confirmed: no ${list(missing, 'or')}`;

/** What a height of a heap leaves out; for screen, paper and talk. */
export const HEAP_LIMITS = {
  loadOnly: 'From the load alone: the slope of the heap, distance from edges, wind and the reach of the machine may allow less.',
  unusual: 'Above 2 m: loose heaps on decks are usually kept lower (common practice, no rule).',
};

export const MAP_GROUP_NAMES: Readonly<Record<MapGroup, string>> = {
  loads: 'Loads',
  depths: 'Depths and levels',
  wheels: 'Wheels and stages',
  water: 'Water',
};

export const MAP_NAMES: Readonly<Record<MapKind, string>> = {
  load: 'Load',
  utilisation: 'Utilisation',
  'worst-stage': 'Worst stage',
  difference: 'Difference',
  depth: 'Depth',
  substrate: 'Substrate',
  'make-up': 'Make-up',
  finished: 'Finish',
  upstand: 'Upstand',
  fall: 'Fall',
  reach: 'Reach',
  'wheel-membrane': 'On membrane',
  'wheel-bearing': 'On layers',
  held: 'Held',
  catchment: 'Catchments',
  flow: 'Flow',
  ponding: 'Ponding',
  blocked: 'Blocked outlet',
};

export const MAP_QUANTITIES: Readonly<Record<MapKind, string>> = {
  load: 'Load per cell',
  utilisation: 'Utilisation: load over permitted load',
  'worst-stage': 'Utilisation in the worst stage',
  difference: 'Load of the variant less that of the scene',
  depth: 'Depth of the build-up',
  substrate: 'Depth of the substrate',
  'make-up': 'Thickness of the make-up layer',
  finished: 'Finished level',
  upstand: 'Membrane above the finish along edges',
  fall: 'Fall of the membrane',
  reach: 'How material is brought',
  'wheel-membrane': 'Pressure of wheels on the membrane',
  'wheel-bearing': 'Bearing of the layers used under wheels',
  held: 'Water held by the build-up',
  catchment: 'Which outlet takes the water',
  flow: 'Flow in the drainage',
  ponding: 'Water that stays, all outlets at work',
  blocked: 'Water that stands with one outlet blocked',
};

export const MAP_BASES: Readonly<Record<MapKind, string>> = {
  load: 'Saturated; build-ups, vegetation and objects, per area of deck in the cell',
  utilisation: 'Saturated; mean over 1.0 m × 1.0 m around the cell, against the permitted load of its bay',
  'worst-stage': 'Saturated, with stockpiles and flood tests; highest of all stages',
  difference: 'Saturated, finished garden; steps of 0.05, 0.5, 2 and 5 kN/m²',
  depth: 'All layers together, at the centre of the cell',
  substrate: 'All substrate layers together, in zones that have any',
  'make-up': 'As calculated from deck level, finished level and the other layers',
  finished: 'Top of the build-up, height system of the file',
  upstand: 'Top of the membrane at upstands and sills less the finished level beside them; least in each cell',
  fall: 'By the triangles between the given levels, at the centre of the cell',
  reach: 'As the stage begins; sheets and plants are carried',
  'wheel-membrane':
    'Wheels alone, greatest of all places; mean over each cell, exact peaks in the sheet Wheels. Point loads are in no load map',
  'wheel-bearing':
    'Wheels and weight above over what the layer bears, greatest of all layers and places; mean over each cell, exact peaks in the sheet Wheels',
  held: 'Water capacity of the layers and what elements keep, when full; mean over the zones of the cell',
  catchment:
    'Over the falls of the membrane. Areas are exact shares; a cell has the colour of the outlet that takes most of its water, so counted cells differ a little',
  flow: 'Per metre of width in the design rain, along the longest way; without rain, length of that way times coefficient',
  ponding: 'Depth above the membrane where it has no fall to an outlet',
  blocked: 'Depth above the membrane in rain without end, all other outlets at work and taking all that comes',
};

export const CASE_NAMES: Readonly<Record<BayCase['kind'], string>> = {
  permanent: 'Permanent load',
  imposed: 'Imposed load',
  total: 'Permanent and imposed load',
  stage: 'Stage',
};

export const JUDGEMENTS: Readonly<Record<Judgement, string>> = {
  over: 'over the limit',
  'at limit': 'at the limit',
  within: 'within the limit',
};

export const STATUS: Readonly<Record<BayStatus, string>> = {
  over: 'over the limit',
  'not confirmed': 'not confirmed',
  'no limit': 'no permitted load given',
  'at limit': 'at the limit',
  within: 'within the limit',
};

export const PARTS: Readonly<Record<PartKind, string>> = {
  'root barrier': 'Root barrier',
  protection: 'Protection',
  slip: 'Slip layer',
  'drainage element': 'Drainage element',
  'drainage fill': 'Drainage fill',
  'light fill': 'Light fill',
  separation: 'Separation',
  filter: 'Filter',
  'base course': 'Base course',
  bedding: 'Bedding',
  surfacing: 'Surfacing',
  'loose surfacing': 'Loose surfacing',
  edging: 'Edging',
  substrate: 'Substrate',
  vegetation: 'Vegetation',
  slab: 'Slab',
  column: 'Columns',
  outlet: 'Outlets',
  edge: 'Upstands and sills',
  'tree trunk': 'Tree trunks',
  'tree crown': 'Tree crowns',
  'line load': 'Walls and lines',
  retaining: 'Retaining walls',
  block: 'Blocks',
  stockpile: 'Stockpiles',
  'flood water': 'Flood water',
};

export const OTHERS: Readonly<Record<CoreLogOther['kind'], (id: string) => string>> = {
  vegetation: () => 'Vegetation',
  tree: (id) => `Tree ${id}`,
  line: (id) => `Line load ${id}`,
  block: (id) => `Block ${id}`,
  retaining: (id) => `Retaining wall ${id}`,
  stockpile: (id) => `Stockpile ${id}`,
  'flood test': () => 'Flood test',
};

/** By how much a load differs from its limit. */
export function margin(loadKNm2: number, permittedKNm2: number, judgement: Judgement): string {
  const gap = Math.abs(loadKNm2 - permittedKNm2);
  const amount = gap < 0.005 ? `less than ${loadText(0.01)}` : loadText(gap);
  if (judgement === 'at limit') return 'at the limit';
  return judgement === 'over' ? `over by ${amount}` : `${amount} left`;
}

/** What a permitted load is permitted for. */
export const LIMITS: Readonly<Record<string, string>> = {
  permanent: 'permanent load',
  stage: 'load while building',
  total: 'permanent and imposed load together',
};

/** Keys of numbers in words, for the list of sources. */
export const NUMBER_NAMES: Readonly<Record<string, string>> = {
  density: 'density',
  areal: 'mass per m²',
  thicknessMm: 'thickness',
  voidLm2: 'voids',
  retentionLm2: 'water kept',
  waterCapacityPercent: 'water capacity',
  compactionFactor: 'compaction',
  lapPercent: 'laps',
  bearingKPa: 'bearing',
  dispersal: 'spread of wheel loads',
  flowLsm: 'water flow',
  delivery: 'size of a delivery',
  kNm2: 'weight of the plants',
  widthM: 'width',
  axles: 'axles',
  grossKN: 'weight in all',
  loadKN: 'loads of the axles',
  atM: 'places of the axles',
  trackM: 'track',
  contactM: 'patches of the wheels',
  turningRadiusM: 'turning radius',
  pads: 'supports',
  slidingRatio: 'ratio against sliding',
  overturningRatio: 'ratio against overturning',
  wallDensity: 'density of retaining edges',
  recommendedFallPercent: 'recommended fall of surfaces',
  dynamicFactor: 'dynamic factor on wheels',
  substrateMm: 'least depth of substrate',
  treeSoilM3: 'soil of a tree, volume',
  treeSoilMm: 'soil of a tree, depth',
  subsoilBelowMm: 'depth from which mineral subsoil is needed',
  baseCourseMm: 'base course under vehicles',
  liftMm: 'thickness of one lift',
  upstandMm: 'height of upstands',
  sillMm: 'height of sills',
  stripM: 'strip without plants',
  fallPercent: 'fall of surfaces',
  straightM: 'width of a straight lane',
  bounded: 'width between walls',
  bends: 'width in bends',
  transitionM: 'transitions before and after bends',
  gradientPercent: 'gradient of a lane',
  setUpPercent: 'gradient of a set-up area',
  stepMm: 'steps in a lane',
  setUpStepMm: 'steps in a set-up area',
  'setUp.widthM': 'width of a set-up area',
  'setUp.lengthM': 'length of a set-up area',
  'setUp.stripAlongM': 'free strip beside a set-up area along a building',
  'setUp.stripAcrossM': 'free strips beside a set-up area across to a building',
  'setUp.wallLeastM': 'least distance of a set-up area to a building',
  'setUp.wallMostM': 'greatest distance of a set-up area to a building',
  'setUp.wallAcrossM': 'distance of a set-up area across to a building',
  'movement.widthM': 'width of a movement area',
  'movement.lengthM': 'length of a movement area',
  'movement.runOutM': 'transitions before and after a movement area',
  pondMm: 'depth of puddles',
  porePercent: 'pores that ponded water fills',
  permeabilityMs: 'permeability',
  uplift: 'how water lifts it',
  upFactor: 'factor on uplift',
  downFactor: 'factor on holding weight',
  treeSoilM2: 'soil of a tree, area',
  all: 'all its numbers',
};

/** What each rule looks at. */
export const RULES: Readonly<Record<Rule, string>> = {
  'load.basis': 'Basis of the permitted load',
  'load.permanent': 'Permanent load',
  'load.imposed': 'Imposed load',
  'load.total': 'Permanent and imposed load',
  'load.stage': 'Load while building',
  'stress.layer': 'Pressure on layers',
  'traffic.bay': 'Vehicles in bays',
  'traffic.width': 'Width for vehicles',
  'traffic.bend': 'Bends for vehicles',
  'traffic.gradient': 'Gradient for vehicles',
  'traffic.setup': 'Room for set-up areas',
  'depth.short': 'Too deep for the finished level',
  'depth.over': 'Not filled up to the finished level',
  'depth.vegetation': 'Depth for plants',
  'depth.lift': 'Thickness of lifts',
  'depth.base': 'Base course under vehicles',
  'level.outside': 'Beyond the surveyed levels',
  'level.fall': 'Fall of surfaces',
  'edge.upstand': 'Height of edges',
  'edge.strip': 'Strip without plants',
  'zone.overlap': 'Zones overlap',
  'zone.gap': 'Gaps between zones',
  'zone.outside': 'Beyond the deck',
  'bay.gap': 'Deck without a bay',
  'bay.overlap': 'Bays overlap',
  'order.protection': 'Protection of the membrane',
  'order.slip': 'Slip layer',
  'order.drainage': 'Drainage',
  'order.filter': 'Filter',
  'order.separation': 'Separation',
  'order.orientation': 'Which way up the element lies',
  'order.infill': 'Infill of the element',
  'order.root': 'Root barrier',
  'water.outlet': 'Outlets',
  'water.overflow': 'Overflows',
  'water.pond': 'Ponding',
  'water.flow': 'Flow in the drainage',
  'float.uplift': 'Uplift',
  'stage.order': 'Order of the stages',
  'stage.plant': 'Machines while building',
  'stage.reach': 'Reach',
  'stage.left': 'Placed in no stage',
  'wall.bearing': 'Bearing under walls',
  'wall.sliding': 'Sliding of walls',
};
