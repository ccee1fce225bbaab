/** Words of a comparison of two scenes. Whole sentences, one per kind of change, so that other languages can follow. */

import { dayIn } from '../model/date-text.ts';
import type { Language } from '../model/language.ts';
import type { ChangedItem, ChangeGroup, ReportChange, SceneChange } from '../model/scene-change.ts';

/** A change with its values as text. */
export interface ChangeWords {
  readonly item: string;
  readonly id: string;
  readonly what: string;
  readonly before: string;
  readonly after: string;
}

export interface DiffText {
  readonly groups: Readonly<Record<ChangeGroup, string>>;
  readonly items: Readonly<Record<ChangedItem, string>>;
  readonly none: string;
  readonly notGiven: string;
  readonly same: string;
  readonly added: (words: ChangeWords) => string;
  readonly removed: (words: ChangeWords) => string;
  readonly renamed: (words: ChangeWords) => string;
  readonly moved: (words: ChangeWords) => string;
  readonly changed: (words: ChangeWords) => string;
  readonly reordered: (words: ChangeWords) => string;
  readonly area: (addedM2: string, removedM2: string) => string;
  readonly weight: (before: string, after: string) => string;
  readonly bay: (id: string, finished: readonly [string, string], worstStage: readonly [string, string]) => string;
  readonly zone: (id: string, depths: readonly [string, string], loads: readonly [string, string]) => string;
  readonly results: string;
  /** A number with so many decimals; as it stands in the file where none are given. */
  readonly number: (value: number, digits?: number) => string;
  /** A text that may be a day. */
  readonly day: (text: string) => string;
}

const plainNumber = (value: number, digits?: number) => (digits === undefined ? String(value) : value.toFixed(digits));

const DIFF_EN: DiffText = {
  groups: {
    'load plan': 'Load plan',
    geometry: 'Shapes and levels',
    'build-ups': 'Build-ups',
    materials: 'Materials',
    stages: 'Stages',
    objects: 'Objects',
    water: 'Water',
    traffic: 'Vehicles and lanes',
    other: 'Other',
  },
  items: {
    scene: 'scene',
    deck: 'deck',
    bay: 'bay',
    column: 'column',
    outlet: 'outlet',
    edge: 'edge',
    material: 'material',
    vehicle: 'vehicle',
    'build-up': 'build-up',
    zone: 'zone',
    object: 'object',
    lane: 'lane',
    'set-up area': 'set-up area',
    stage: 'stage',
    'access point': 'access point',
    view: 'view',
    probe: 'probe',
  },
  none: 'The two scenes say the same.',
  notGiven: 'not given',
  same: 'No bay or zone comes out otherwise.',
  added: ({ item, id }) => `${item} ${id} is new`,
  removed: ({ item, id }) => `${item} ${id} is gone`,
  renamed: ({ item, before, after }) => `${item} ${before} is now called ${after}`,
  moved: ({ item, id, what }) => `${item}${id && ` ${id}`}: ${what} moved`,
  changed: ({ item, id, what, before, after }) => `${item}${id && ` ${id}`}: ${what} before ${before}; now ${after}`,
  reordered: ({ item, before, after }) => `order of every ${item}: before ${before}; now ${after}`,
  area: (addedM2, removedM2) => `${addedM2} m² more, ${removedM2} m² less`,
  weight: (before, after) => `Weight saturated ${before} → ${after} kN`,
  bay: (id, [before, after], [worst, newWorst]) => `bay ${id}: finished ${before} → ${after}, worst stage ${worst} → ${newWorst}`,
  zone: (id, [depth, newDepth], [load, newLoad]) =>
    `zone ${id}: mean depth ${depth} → ${newDepth} mm, greatest load ${load} → ${newLoad} kN/m²`,
  results: 'What comes out',
  number: plainNumber,
  day: (text) => text,
};

const DIFF_DE: DiffText = {
  groups: {
    'load plan': 'Lastenplan',
    geometry: 'Formen und Höhen',
    'build-ups': 'Aufbauten',
    materials: 'Materialien',
    stages: 'Bauzustände',
    objects: 'Objekte',
    water: 'Wasser',
    traffic: 'Fahrzeuge und Zufahrten',
    other: 'Sonstiges',
  },
  items: {
    scene: 'Szene',
    deck: 'Decke',
    bay: 'Feld',
    column: 'Stütze',
    outlet: 'Ablauf',
    edge: 'Rand',
    material: 'Material',
    vehicle: 'Fahrzeug',
    'build-up': 'Aufbau',
    zone: 'Zone',
    object: 'Objekt',
    lane: 'Zufahrt',
    'set-up area': 'Aufstellfläche',
    stage: 'Bauzustand',
    'access point': 'Zugang',
    view: 'Ansicht',
    probe: 'Messung',
  },
  none: 'Beide Szenen sagen dasselbe.',
  notGiven: 'ohne Angabe',
  same: 'Kein Feld und keine Zone hat ein anderes Ergebnis.',
  added: ({ item, id }) => `${item} ${id} ist neu`,
  removed: ({ item, id }) => `${item} ${id} entfällt`,
  renamed: ({ item, before, after }) => `${item} ${before} heißt jetzt ${after}`,
  moved: ({ item, id, what }) => `${item}${id && ` ${id}`}: ${what} verschoben`,
  changed: ({ item, id, what, before, after }) => `${item}${id && ` ${id}`}: ${what} bisher ${before}; jetzt ${after}`,
  reordered: ({ item, before, after }) => `Reihenfolge (${item}): bisher ${before}; jetzt ${after}`,
  area: (addedM2, removedM2) => `${addedM2} m² mehr, ${removedM2} m² weniger`,
  weight: (before, after) => `Gewicht wassergesättigt ${before} → ${after} kN`,
  bay: (id, [before, after], [worst, newWorst]) =>
    `Feld ${id}: fertige Anlage ${before} → ${after}, ungünstigster Bauzustand ${worst} → ${newWorst}`,
  zone: (id, [depth, newDepth], [load, newLoad]) =>
    `Zone ${id}: mittlere Aufbauhöhe ${depth} → ${newDepth} mm, größte Last ${load} → ${newLoad} kN/m²`,
  results: 'Was herauskommt',
  number: (value, digits) => plainNumber(value, digits).replace('.', ','),
  day: (text) => dayIn(text, 'de'),
};

/** Words by language. */
export const DIFF_TEXT: Readonly<Record<Language, DiffText>> = { en: DIFF_EN, de: DIFF_DE };

/** One change as a line. */
export function changeLine(change: SceneChange, text: DiffText): string {
  const value = (of: unknown) => valueText(of, change.unit, text);
  const { before, after, what, name } = change;
  const id = name === undefined ? change.id : `${change.id} (${name})`;
  const says = text[change.kind]({ item: text.items[change.item], id, what, before: value(before), after: value(after) });
  const { area } = change;
  return area ? `${says} (${text.area(text.number(area.addedM2, 2), text.number(area.removedM2, 2))})` : says;
}

function valueText(value: unknown, unit: string, text: DiffText): string {
  if (value === null || value === undefined) return text.notGiven;
  if (typeof value === 'object' && !Array.isArray(value) && 'min' in value && 'max' in value) {
    const { min, max, nominal } = value as { min: number; max: number; nominal?: number };
    return `${text.number(min)}–${text.number(max)}${nominal === undefined ? '' : ` (${text.number(nominal)})`} ${unit}`.trimEnd();
  }
  if (Array.isArray(value) && value.every((one) => typeof one === 'string')) return value.join(', ') || '–';
  if (typeof value === 'number') return `${text.number(value)} ${unit}`.trimEnd();
  return typeof value === 'string' ? text.day(value) : JSON.stringify(value);
}

/** All changes by group, then what comes out otherwise. */
export function diffLines(changes: readonly SceneChange[], report: ReportChange, text: DiffText): string[] {
  const groups = [...new Set(changes.map(({ group }) => group))];
  const told = groups.flatMap((group) => [
    text.groups[group],
    ...changes.filter((change) => change.group === group).map((change) => `  ${changeLine(change, text)}`),
    '',
  ]);
  const percent = (value: number | null) => (value === null ? '-' : `${text.number(100 * value, 1)} %`);
  const number = (value: number | null, digits: number) => (value === null ? '-' : text.number(value, digits));
  const bays = report.bays.map(({ id, utilisation, worstStageUtilisation: worst }) =>
    text.bay(id, [percent(utilisation.before), percent(utilisation.after)], [percent(worst.before), percent(worst.after)]),
  );
  const zones = report.zones.map(({ id, meanDepthMm: depth, greatestKNm2: load }) =>
    text.zone(id, [number(depth.before, 0), number(depth.after, 0)], [number(load.before, 2), number(load.after, 2)]),
  );
  const { before, after } = report.saturatedKN;
  const results = [text.weight(number(before, 1), number(after, 1)), ...bays, ...zones].map((line) => `  ${line}`);
  const come = bays.length + zones.length > 0 ? [text.results, ...results] : [text.same];
  return [...(changes.length === 0 ? [text.none, ''] : told), ...come];
}
