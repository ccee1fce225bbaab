/** Sentences of the site: how places are reached, open edges, lanes, retaining walls. */

import type { MapKind, NoOutletClass, ReachClass } from '../../model/maps.ts';
import type { SceneAccessPoint } from '../../model/scene-file.ts';
import type { DifferenceClass } from '../../model/variants.ts';
import { areaText, loadNumber, loadText, numberText, quantityOf } from '../format.ts';
import { list, many } from './en-words.ts';

const REACH: Readonly<Record<ReachClass, string>> = {
  driven: 'Plant drives there',
  lifted: 'By crane or hose only',
  unreached: 'Not reached',
  idle: 'Nothing to bring in this stage',
};

const REACH_SHORT: Readonly<Record<ReachClass, string>> = {
  driven: 'driven to',
  lifted: 'crane or hose',
  unreached: 'not reached',
  idle: 'nothing to bring',
};

const NO_OUTLET: Readonly<Record<NoOutletClass, string>> = {
  'overflow only': 'To an overflow only',
  'over an edge': 'Over an edge only',
  'no way out': 'No way out',
};

/** Classes of the map of differences. */
const DIFFERENCE: Readonly<Record<DifferenceClass, () => string>> = {
  'lighter 5': () => `Lighter by over ${loadText(5)}`,
  'lighter 2': () => `Lighter by ${loadNumber(2)} to ${loadText(5)}`,
  'lighter 0.5': () => `Lighter by ${loadNumber(0.5)} to ${loadText(2)}`,
  lighter: () => `Lighter by up to ${loadText(0.5)}`,
  same: () => 'No difference',
  heavier: () => `Heavier by up to ${loadText(0.5)}`,
  'heavier 0.5': () => `Heavier by ${loadNumber(0.5)} to ${loadText(2)}`,
  'heavier 2': () => `Heavier by ${loadNumber(2)} to ${loadText(5)}`,
  'heavier 5': () => `Heavier by over ${loadText(5)}`,
};

const isDifference = (id: string): id is DifferenceClass => id in DIFFERENCE;
const isNoOutlet = (id: string): id is NoOutletClass => id in NO_OUTLET;
const isReach = (id: string): id is ReachClass => id in REACH;

/** Maps of named classes. */
const classes = {
  /** In a legend. Classes that have no words of their own are named by their id, like outlets. */
  name: (kind: MapKind, id: string) => {
    if (kind === 'catchment') return isNoOutlet(id) ? NO_OUTLET[id] : `To outlet ${id}`;
    if (kind === 'difference' && isDifference(id)) return DIFFERENCE[id]();
    return kind === 'reach' && isReach(id) ? REACH[id] : id;
  },
  /** In a table. */
  short: (kind: MapKind, id: string) => {
    if (kind === 'catchment') return isNoOutlet(id) ? NO_OUTLET[id] : `to ${id}`;
    if (kind === 'difference' && isDifference(id)) return DIFFERENCE[id]();
    return kind === 'reach' && isReach(id) ? REACH_SHORT[id] : id;
  },
  /** On the model; outlets are marked there themselves. */
  onModel: (kind: MapKind, id: string) => {
    // Its classes lie in many small fields.
    if (kind === 'difference') return null;
    if (kind !== 'catchment') return id;
    return isNoOutlet(id) ? NO_OUTLET[id] : null;
  },
  area: (name: string, areaM2: number) => `${name}: ${areaText(areaM2)}`,
  caption: (quantity: string, stage: string) => `${quantity}. ${stage}.`,
  shown: (shown: number, all: number) => `${numberText(shown, 0)} of ${many(all, 'cell', 'cells')} shown`,
  everywhere: 'Whole deck',
  head: 'Class',
} as const;

const ACCESS: Readonly<Record<SceneAccessPoint['kind'], string>> = { ramp: 'ramp', crane: 'crane', blower: 'hose', gate: 'gate' };

const site = {
  /** On the post of an access point. */
  post: ({ id, kind }: SceneAccessPoint) => `${id} ${ACCESS[kind]}`,
  plan: 'Site',
  planTitle: 'Site plan: ways of machines, access points, reach and open edges, while a stage is shown',
  band: 'within 2 m of an open edge',
  short: 'below what is required',
  shortCells: (count: number) => `below what is required: ${many(count, 'cell', 'cells')}`,
  arrows: 'Arrows: the way it is laid, far to near',
  towards: (bearingDeg: number) => `laid towards ${numberText(bearingDeg, 0)}°`,
  none: 'Nothing to show: this scene names no lane, no access point and no set-up area.',
  block: 'Site',
  plant: (names: readonly string[]) => `On the way: ${list(names, 'and')}`,
  noPlant: 'No machine drives in this stage.',
  access: 'Access points',
  accessPoint: ({ id, kind, reachM }: SceneAccessPoint) =>
    kind === 'crane' || kind === 'blower'
      ? `${id}: ${ACCESS[kind]}, ${reachM === undefined ? 'reach not given, so it reaches nothing' : `reaches ${numberText(reachM, 1)} m`}`
      : `${id}: ${ACCESS[kind]}`,
  accessPick: (id: string) => `Go to access point ${id}`,
  reachTitle: 'Reach per stage',
  reachSays: 'When the stage begins: over ground that bears plant, by crane or hose. How wide a way is does not count.',
  reachCaption: 'Stages with what has to be brought: area, and what is not reached, in m²',
  reachStage: 'Stage',
  reachArea: 'To bring, m²',
  reachMissing: 'Not reached',
  reachAll: 'none',
  reachPick: (number: number, name: string) => `Show the map of reach in stage ${number}, ${name}`,
  reached: (areaM2: number, unreachedM2: number) =>
    unreachedM2 > 0
      ? `${areaText(unreachedM2)} of ${areaText(areaM2)} to bring something to can’t be reached.`
      : `All ${areaText(areaM2)} to bring something to can be reached.`,
  edgesTitle: 'Open edges',
  edges:
    'Within 2 m of an open edge people are secured or kept away by a barrier. Every edge of the deck and every opening counts as open: the file does not say where a guard or a high wall stands.',
  reachGarden: 'Reach belongs to a stage: choose one on the rail. In the finished garden nothing more is brought.',
  reachNoAccess: 'The file names no gate, ramp, crane or hose, so reach is not looked at.',
  reachDerived: 'These stages are derived from the build-ups, so reach is not looked at.',
} as const;

const two = (valueM: number) => quantityOf(valueM, 2, 'm');

/** Lanes for fire appliances. */
const lanes = {
  title: 'Lanes for fire appliances',
  says: 'As drawn, against the rule named. The fire authority decides.',
  pick: (id: string) => `Go to lane ${id}`,
  width: 'Width drawn',
  notDrawn: 'not drawn',
  required: 'Width asked for',
  short: (missingM: number) => `${two(missingM)} too narrow`,
  radius: 'Least outer radius',
  straight: 'straight',
  steepest: 'Steepest',
  step: 'Highest step',
  noStep: 'none',
  unknown: 'no zone under it',
  rule: 'Rule',
  ruleOf: (name: string, country: string) => `${name}, ${country}`,
  source: (source: string) => `Width: ${source}`,
  metres: two,
  percent: (percent: number) => quantityOf(percent, 1, '%'),
} as const;

const byBy = (widthM: number, lengthM: number) => `${numberText(widthM, 2)} × ${two(lengthM)}`;

/** Places where an appliance is set up or worked from. */
const areas = {
  title: 'Set-up and movement areas',
  says: 'On the finished garden. The fire authority decides.',
  pick: (id: string) => `Go to area ${id}`,
  kind: { 'set-up': 'set-up area', movement: 'movement area' },
  /** On the model. */
  label: (id: string, kind: 'set-up' | 'movement') => `${id} ${kind === 'set-up' ? 'set-up area' : 'movement area'}`,
  size: 'Size drawn',
  room: 'Free of obstacles in it',
  required: 'Size asked for',
  by: byBy,
  noRoom: (lengthM: number) => `no room ${two(lengthM)} long`,
  onDeck: 'On the deck',
  partOf: (onDeckM2: number, areaM2: number) => `${areaText(onDeckM2)} of ${areaText(areaM2)}`,
  building: 'To the building',
  standing: 'Stands in it',
  wheels: 'Membrane under wheels',
  support: 'Membrane under a support',
  pressure: (kPa: number) => quantityOf(kPa, 0, 'kPa'),
  bays: 'Stands in bays',
  forbidden: (bay: string) => `${bay}: vehicle not permitted`,
  overBay: (bay: string, kNm2: number, permittedKNm2: number) => `${bay}: ${loadNumber(kNm2)} of ${quantityOf(permittedKNm2, 2, 'kN/m²')}`,
} as const;

/** Retaining edges, per metre. */
const walls = {
  title: (count: number) => many(count, 'retaining edge', 'retaining edges'),
  says: 'Drained soil, characteristic values per metre. No proof: the structural engineer proves the wall.',
  pick: (id: string) => `Go to retaining edge ${id}`,
  fine: 'no finding',
  found: { stop: 'stop', check: 'to check', note: 'note' },
  thrust: (thrustKNm: number, surchargeKNm2: number) =>
    `Thrust ${quantityOf(thrustKNm, 2, 'kN/m')}, with ${quantityOf(surchargeKNm2, 2, 'kN/m²')} of live load behind it`,
  stands: (material: string | null, permittedKPa: number | null) =>
    material === null || permittedKPa === null
      ? 'Stands on a layer of unknown bearing'
      : `Stands on ${material}, which bears ${quantityOf(permittedKPa, 0, 'kPa')}`,
  caption: (id: string) => `Retaining edge ${id}: with the live load behind it alone, and on its heel as well`,
  bare: 'Load behind',
  loaded: 'And on heel',
  vertical: 'Weight, kN/m',
  eccentricity: (middleThirdM: number) => `Off centre, m (middle third to ${numberText(middleThirdM, 3)})`,
  most: 'Most pressure, kPa',
  least: 'Least pressure, kPa',
  contact: 'Base that presses, m',
  even: 'Even over the reduced base, kPa',
  sliding: 'Sliding, held ÷ pushed',
  overturning: 'Overturning, held ÷ turned',
  falls: 'falls over',
  /** Down, so that 1.497 never reads as 1.50. */
  ratio: (ratio: number) => numberText(Math.floor(100 * ratio + 1e-6) / 100, 2),
  metres: (valueM: number) => numberText(valueM, 3),
  pressure: (valueKPa: number) => numberText(valueKPa, 1),
} as const;

export const siteTexts = { classes, site, areas, lanes, walls } as const;
