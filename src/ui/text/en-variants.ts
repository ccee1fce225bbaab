/** Sentences of variants side by side, and of lightening zones. */

import type {
  LightenAim,
  LightenBay,
  LightenHindrance,
  LightenObstacle,
  LightenPassing,
  LightenProgress,
  LightenUnmet,
  ThicknessSpread,
} from '../../model/lighten.ts';
import type { LightenCase, WithCases } from '../../model/lighten-cases.ts';
import type { SchemeFigures } from '../../model/variants.ts';
import { loadText, mmText, numberText, percentText, quantityOf, signedText } from '../format.ts';
import { list, many } from './en-words.ts';

export const variants = {
  says: 'Keep what stands as a variant, change it, and hold one against the other. The scene itself is the one that is judged; variants are kept in its file.',
  name: 'Name of the variant',
  proposed: (id: string) => `Variant ${id}`,
  before: (name: string) => `Before ${name}`,
  withoutName: (name: string) => `Without a name it is called “${name}”.`,
  keep: 'Keep what stands',
  none: 'No variant is kept yet.',
  list: 'Variants',
  shown: 'stands now',
  compare: 'Compare',
  takeOver: 'Take over',
  remove: 'Remove',
  compareName: (name: string) => `Compare ${name} with what stands`,
  takeOverName: (name: string) => `Take over ${name}; what stands is kept`,
  removeName: (name: string) => `Remove ${name}`,
  map: 'Show the difference on the model',
  comparing: 'Comparing…',
  figures: 'Side by side',
  quantity: 'Quantity',
  now: 'What stands',
  difference: 'Difference',
  saturated: 'Load, saturated',
  dry: 'Load, dry',
  kN: (value: number) => quantityOf(value, 0, 'kN'),
  kNDifference: (value: number) => `${signedText(value, 0)} kN`,
  worst: 'Highest utilisation',
  worstOf: (worst: SchemeFigures['worst']) => {
    if (worst === null) return 'no limit given';
    return worst.stage === null
      ? `${percentText(worst.utilisation)} in bay ${worst.bay}`
      : `${percentText(worst.utilisation)} in bay ${worst.bay}, stage ${worst.stage.id} (${worst.stage.name})`;
  },
  over: 'Bays over their limit',
  notConfirmed: 'Bays not confirmed',
  stops: 'Findings: stop',
  checks: 'Findings: check',
  held: 'Water held, mean',
  lm2: (value: number) => quantityOf(value, 1, 'l/m²'),
  price: 'Price of the materials',
  noPrice: 'not all priced',
  count: (value: number) => numberText(value, 0),
  signed: (value: number, decimals: number) => signedText(value, decimals),
  bays: 'Bays that come out otherwise',
  bay: 'Bay',
  garden: 'Finished garden',
  stage: 'Worst stage',
  zones: 'Zones that come out otherwise',
  zone: 'Zone',
  depth: 'Mean depth',
  load: 'Highest load',
  takeOff: 'Materials',
  material: 'Material',
  volume: 'Placed',
  mass: 'Mass, wet through',
  m3: (value: number) => quantityOf(value, 1, 'm³'),
  tonnes: (massKg: number) => quantityOf(massKg / 1000, 1, 't'),
  changes: 'What was changed',
  same: 'Nothing differs.',
  change: (from: string, to: string) => `${from} to ${to}`,
  nothing: 'none',
  file: {
    pick: 'Compare with a file…',
    two: 'Two files',
    offer: (first: string, second: string) => `${first} is opened, and ${second} is held against it.`,
    go: 'Compare these two',
    title: (file: string) => `${file} against what stands`,
    same: (file: string) => `${file} says the same as what stands.`,
    differs: 'More differs than build-ups, zones and stages, so it is not kept as a variant. Each change once, the load plan first:',
    refused: (file: string) => `${file} was not compared`,
    unreadable: (file: string) => `${file} could not be read from the disk.`,
    working: 'Comparing…',
  },
} as const;

const AIMS: Readonly<Record<LightenAim, string>> = { cost: 'Cheapest', weight: 'Lightest', change: 'Least exchanged' };
const KEPT_AS: Readonly<Record<LightenAim, string>> = { cost: 'cheapest', weight: 'lightest', change: 'least exchanged' };
const CASES: Readonly<Record<LightenBay['kind'], string>> = {
  permanent: 'finished garden',
  total: 'finished garden with imposed load',
  stage: 'stage',
};
const HINDRANCES: Readonly<Record<LightenHindrance, string>> = {
  'substrate depth': 'the least depth of substrate',
  'tree soil': 'the soil that trees need',
  room: 'the finished levels, which leave no room for lighter fills',
  'base course': 'the least base course under vehicles',
  'locked zones': 'zones that stay as they are',
};
const PASSINGS: Readonly<Record<LightenPassing, string>> = {
  locked: 'it stays as it is',
  'not within its levels': 'its build-up does not fit its finished levels yet',
  'no layer to change': 'no layer of it may change',
};
const UNSOLVED: Readonly<Record<'no common answer' | 'time' | 'no prices', string>> = {
  'no common answer': 'each limit can be kept, but not all of them together',
  time: 'no answer was found in time',
  'no prices': 'the materials have no prices',
};

const UNMET: Readonly<Record<LightenUnmet['why'], string>> = {
  'no common answer': 'it can be kept by itself, but not together with the others',
  time: 'no answer was found in time',
};

const caseOf = (kind: LightenBay['kind'], stage: string | null) => (stage === null ? CASES[kind] : `${CASES[kind]} ${stage}`);
const casesOf = (cases: readonly LightenCase[]) =>
  list(
    cases.map(({ kind, stage }) => caseOf(kind, stage)),
    'and',
  );

const spread = (one: ThicknessSpread | null) => {
  if (one === null) return 'none';
  return one.max - one.min < 0.5 ? mmText(one.mean) : `${mmText(one.min)} to ${mmText(one.max)}`;
};

export const lighten = {
  open: 'Look for lighter build-ups…',
  says: 'Looks for lighter fills and other thicknesses in the zones that are too heavy for their bays. Finished levels, least depths, the order of layers and every limit are kept.',
  aim: 'Looking for',
  aims: AIMS,
  zones: 'Zones',
  zonesOver: 'Those that reach places over their limit',
  zonesChosen: 'These',
  locked: 'Stays as it is',
  least: 'Thinnest layer to be added',
  find: 'Look for it',
  cancel: 'Stop looking',
  working: (progress: 'started' | LightenProgress) =>
    progress === 'started'
      ? 'Looking… The model and its numbers go on meanwhile.'
      : `Looking… ${AIMS[progress.aim]}, round ${progress.round}: ${many(progress.baysLeft, 'bay is', 'bays are')} still over a limit. The model and its numbers go on meanwhile.`,
  nothing: 'This scene has no zone yet, so there is nothing to lighten.',
  within: 'No bay is over its limit.',
  stale: 'The scene was changed since. Look again.',
  answer: (aim: LightenAim, savedKN: number) => `${AIMS[aim]}: ${numberText(savedKN, 0)} kN less`,
  stopped: 'This answer keeps every limit, but it is not proven to be the best: there may be a better one.',
  unmet: ({ bay, cases, beforeKNm2, afterKNm2, permittedKNm2, why }: WithCases<LightenUnmet>) =>
    `Still over its limit: bay ${bay}, ${casesOf(cases)}, ${loadText(afterKNm2)} of ${loadText(permittedKNm2)}, ${loadText(beforeKNm2)} before: ${UNMET[why]}.`,
  exchanged: (m3: number) => `${numberText(m3, 1)} m³ exchanged`,
  price: (before: number, after: number, currency: string) =>
    `Materials: ${numberText(before, 0)} to ${numberText(after, 0)} ${currency} (${signedText(after - before, 0)})`,
  noPrice: 'Not all materials have a price, so nothing is said of cost.',
  takeOver: 'Take over',
  keep: 'Keep as a variant',
  keptAs: (aim: LightenAim) => `Lightened, ${KEPT_AS[aim]}`,
  kept: 'Kept as a variant.',
  zone: (zone: string, buildUp: string, savedKN: number) => `Zone ${zone}, build-up ${buildUp}: ${numberText(savedKN, 1)} kN less`,
  laidIn: (stage: string) => `What is new is laid in stage ${stage}, whose places are added to.`,
  layer: 'Layer',
  before: 'Before',
  after: 'After',
  spread,
  loads: 'Loads against their limits',
  place: 'Bay and case',
  loadCase: (bay: string, kind: LightenBay['kind'], stage: string | null) => `${bay}, ${caseOf(kind, stage)}`,
  permitted: 'Permitted',
  binding: 'this limit shaped the answer',
  newFindings: (count: number) => `${many(count, 'finding comes', 'findings come')} with it`,
  obstacle: ({ bay, cases, lightestKNm2, permittedKNm2, othersKNm2 }: WithCases<LightenObstacle>) =>
    `Bay ${bay}, ${casesOf(cases)}: as light as it may be, it is still ${loadText(lightestKNm2)} of ${loadText(permittedKNm2)}; ${loadText(othersKNm2)} of that is what else stands there.`,
  inTheWay: (hindrances: readonly LightenHindrance[]) => `In the way: ${hindrances.map((one) => HINDRANCES[one]).join('; ')}.`,
  obstacles: 'What stands in the way',
  showPlace: 'Show',
  unsolved: (aim: LightenAim, why: 'no common answer' | 'time' | 'no prices') => `${AIMS[aim]}: ${UNSOLVED[why]}.`,
  passedOver: (zone: string, why: LightenPassing) => `Zone ${zone} was passed over: ${PASSINGS[why]}.`,
  leftOut: (zone: string, material: string, mm: number, says: string) =>
    `Zone ${zone}: ${material} was left out from ${mmText(mm)} on. ${says}`,
  leftThick: (zone: string, mm: number, says: string) => `Zone ${zone}: substrate thinner by ${mmText(mm)} or more was left out. ${says}`,
  engineer: 'Compares entered loads with entered limits. The structural engineer decides.',
} as const;
