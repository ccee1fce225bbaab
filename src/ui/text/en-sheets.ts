/** Sentences of the sheets: heap board, columns, edges, take-off, probes, sources. */

import type { ExportKind, ExportLanguage } from '../../model/engine.ts';
import type { ReportProbe, ReportTakeOff } from '../../model/report.ts';
import type { SceneEdge } from '../../model/scene-file.ts';
import type { SourceGrade, SourceUse } from '../../model/source.ts';
import type { HeapEntry } from '../facts/heap-board.ts';
import type { Grouping } from '../facts/take-off.ts';
import type { Judgement } from '../facts/utilisation.ts';
import {
  areaText,
  coordinateText,
  loadNumber,
  loadText,
  mmText,
  numberText,
  percentText,
  quantityOf,
  signedLoadText,
  signedMmText,
} from '../format.ts';
import { HEAP_LIMITS, JUDGEMENTS, many, NUMBER_NAMES } from './en-words.ts';

const heightText = (heightM: number) => quantityOf(heightM, 2, 'm');

/** Numbers of bays that nobody confirmed stand in brackets. */
const bracketed = (lines: readonly string[], confirmed: boolean): readonly string[] =>
  confirmed ? lines : lines.map((line, i) => `${i === 0 ? '(' : ''}${line}${i === lines.length - 1 ? ')' : ''}`);

export const heaps = {
  none: 'No heights can be given: this scene has no stage, no loose material or no bay with a permitted load.',
  railStage: 'Choose another stage on the rail.',
  lastStage: 'Heaps belong to a stage; this is the last one. Choose another on the rail.',
  material: 'Material',
  title: (material: string, number: number, stage: string) => `${material}: how high in stage ${number}, ${stage}`,
  plan: (title: string) => `Plan of the bays. ${title}. The table has the same numbers.`,
  says: 'Height of loose material that may lie all over a bay besides everything laid by the end of that stage and its own stockpiles, rounded down to 5 cm. Not for machines.',
  ...HEAP_LIMITS,
  large: 'Large plan',
  height: 'Height',
  permitted: 'Permitted, kN/m²',
  permittedLoad: (loadKNm2: number) => loadNumber(loadKNm2),
  noLimit: 'none given',
  entry: ({ state, heightM, overKNm2, confirmed }: HeapEntry) => {
    if (state === 'no limit') return 'nothing permitted';
    return bracketed([state === 'over' ? `over by ${loadText(overKNm2)}` : heightText(heightM)], confirmed).join('');
  },
  /** On the plan, under the name of the bay. */
  lines: ({ state, heightM, overKNm2, confirmed }: HeapEntry): readonly string[] => {
    if (state === 'no limit') return ['–'];
    return bracketed(state === 'over' ? ['over by', loadText(overKNm2)] : [heightText(heightM)], confirmed);
  },
} as const;

export const columns = {
  title: 'Columns',
  says: 'Permanent load of the deck nearest to each column, saturated: for the engineer’s punching check, not a check itself.',
  column: 'Column',
  pick: (id: string) => `Go to column ${id}`,
} as const;

export const edges = {
  none: 'No heights along edges: this scene names no sill and no upstand.',
  says: 'Least height of the top of the membrane above the finished level along each edge, in mm.',
  caption: 'Edges: least height, required height and what is missing, in mm',
  kind: (kind: SceneEdge['kind'], count: number) =>
    kind === 'threshold' ? many(count, 'door sill', 'door sills') : many(count, 'upstand', 'upstands'),
  edge: 'Edge',
  least: 'Least',
  required: 'Required',
  missing: 'Missing',
  enough: 'enough',
  nothing: 'nothing adjoins it',
  channel: 'drained channel',
  noChannel: 'no drained channel',
  pick: (id: string) => `Go to the lowest place of ${id}`,
} as const;

const GROUPING: Readonly<Record<Grouping, string>> = { material: 'Material', zone: 'Zone', stage: 'Stage' };

export type TakeOffKind = Extract<ExportKind, 'take-off csv' | 'take-off xlsx'>;

const SAVE: Readonly<Record<TakeOffKind, (language: ExportLanguage) => string>> = {
  'take-off csv': (language) => (language === 'de' ? 'CSV (German)' : 'CSV (English)'),
  'take-off xlsx': (language) => (language === 'de' ? 'Workbook (German)' : 'Workbook (English)'),
};

const BY: Readonly<Record<'volume' | 'weight', string>> = { volume: 'by volume', weight: 'by weight' };

export const takeoff = {
  none: 'Nothing to order: no zone has a layer.',
  says: 'Quantities of the build-ups in all zones; trees, walls and blocks are not in them. Tonnes: dry, and at most as delivered, wet through.',
  title: (scene: string) => `Take-off: ${scene}`,
  caption: 'Take-off by material: laid, to order, tonnes dry and at most, deliveries',
  by: 'By',
  grouping: GROUPING,
  large: 'Large table',
  save: (kind: TakeOffKind, language: ExportLanguage) => SAVE[kind](language),
  saved: (name: string) => `${name} was handed to the browser to be saved.`,
  notSaved: (why: string) => `The file could not be made (${why}). This is a fault of Loamdeck; the table itself is complete.`,
  material: 'Material',
  order: 'To order',
  tonnes: 't dry, at most',
  areaHead: 'm²',
  placedHead: 'm³ placed',
  laid: (areaM2: number, placedM3: number) => `Laid: ${areaText(areaM2)}, ${quantityOf(placedM3, 2, 'm³')}`,
  toOrder: ({ orderM2, orderM3, areaM2 }: ReportTakeOff) =>
    orderM3 === undefined ? areaText(orderM2 ?? areaM2) : quantityOf(orderM3, 1, 'm³'),
  orderOf: ({ orderM3 }: ReportTakeOff) => (orderM3 === undefined ? 'laps included' : 'loose'),
  deliveries: ({ deliveries, deliveryBy, deliveriesDry }: ReportTakeOff) => {
    if (deliveries === null) return 'no delivery size given';
    const dry = deliveriesDry === null || deliveriesDry === deliveries ? '' : `, ${numberText(deliveriesDry, 0)} if dry`;
    return `${many(deliveries, 'delivery', 'deliveries')}${deliveryBy === null ? '' : `, ${BY[deliveryBy]}`}${dry}`;
  },
  governs: ({ deliveryBy }: ReportTakeOff) => (deliveryBy === null ? '–' : BY[deliveryBy]),
  price: (price: number, currency: string) => `${numberText(price, 0)} ${currency}`.trim(),
  sum: 'All materials',
  priceSum: (price: number, currency: string, priced: number, all: number) => {
    const sum = `${numberText(price, 0)} ${currency}`.trim();
    return priced === all ? sum : `${sum} for ${numberText(priced, 0)} of ${numberText(all, 0)} materials; the others have no price`;
  },
  columns: (currency: string) => [
    'Material',
    'm² laid',
    'm² to order',
    'm³ placed',
    'm³ loose',
    't dry',
    't at most',
    'Deliveries',
    'Filled first',
    currency === '' ? 'Price' : `Price, ${currency}`,
  ],
} as const;

export const probes = {
  none: 'No depth was measured yet.',
  add: {
    pick: 'Pick the place where you measured, in the model or in a table, to enter a depth.',
    title: (x: number, y: number) => `Measured at x ${coordinateText(x)}, y ${coordinateText(y)} m`,
    layer: 'What was measured',
    whole: 'Whole build-up',
    measured: 'Depth measured',
    on: 'Measured on',
    by: 'Measured by',
    go: 'Compare with the plan',
  },
  remove: (id: string) => `Remove ${id}`,
  removeShort: 'Remove',
  measuredOn: (on: string, by: string) => `Measured${on === '' ? '' : ` on ${on}`}${by === '' ? '' : ` by ${by}`}`,
  countedAs: (layer: string) => `The difference counts as ${layer}.`,
  says: 'Depths measured on site against the calculated ones; the load is what it would be if the whole square metre were so.',
  place: (id: string, zone: string | null, bay: string | null) =>
    [id, ...(zone === null ? ['no zone here'] : [`zone ${zone}`]), ...(bay === null ? ['no bay here'] : [`bay ${bay}`])].join(' · '),
  measured: ({ plannedMm, measuredMm, differenceMm }: ReportProbe, layer: string | null) => {
    const what = layer ?? 'Whole build-up';
    if (plannedMm === null || differenceMm === null) return `${what}: ${mmText(measuredMm)} measured, nothing planned here to compare with`;
    return `${what}: ${mmText(measuredMm)} measured, ${mmText(plannedMm)} planned, ${signedMmText(differenceMm)}`;
  },
  means: ({ differenceKNm2, patchKNm2, utilisation }: ReportProbe, judgement: Judgement | null, confirmed: boolean) => {
    if (differenceKNm2 === null) return 'What that weighs is not known.';
    const load = `${signedLoadText(differenceKNm2)} saturated`;
    if (patchKNm2 === null || utilisation === null || judgement === null) return `${load}; no permitted load to compare with`;
    const words = judgement === 'over' || confirmed ? JUDGEMENTS[judgement] : 'not confirmed';
    return `${load}; ${loadText(patchKNm2)} in all, ${percentText(utilisation)}, ${words}`;
  },
} as const;

const GRADE_NAMES: Readonly<Record<SourceGrade, string>> = {
  read: 'Read',
  secondary: 'Secondary',
  'common practice': 'Common practice',
  'from memory': 'From memory',
  assumed: 'Assumed',
  entered: 'Entered in the scene',
  none: 'Arithmetic',
};

const GRADE_MEANINGS: Readonly<Record<SourceGrade, string>> = {
  read: 'the number was seen at that place',
  secondary: 'seen in a text or program that repeats the source',
  'common practice': 'usual in the trade, no published source',
  'from memory': 'not confirmed: look it up before relying on it',
  assumed: 'our own starting value: replace it by a data sheet',
  entered: 'given in the scene file',
  none: 'needs no source',
};

export const sources = {
  waiting: 'Collecting the sources…',
  says: 'Where the numbers come from that the scene file does not give itself. Values without a read source are starting values: data sheets of the products chosen replace them.',
  all: 'Also what this scene does not use',
  grade: (grade: SourceGrade, count: number) => `${GRADE_NAMES[grade]} · ${numberText(count, 0)}`,
  meaning: GRADE_MEANINGS,
  use: (kind: SourceUse['kind'], name: string, numbers: readonly string[], usedIn: readonly string[]) => {
    const words = numbers.map((key) => NUMBER_NAMES[key] ?? key).join(', ');
    const what = kind === 'rule' ? `Rule value for ${name}: ${words}` : `${name}: ${words}`;
    return usedIn.length === 0 ? what : `${what}. Used by ${usedIn.join(', ')}`;
  },
} as const;
