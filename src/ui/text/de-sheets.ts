/** The sheets in German: heap board, columns, edges, take-off, probes, sources. */

import { dayIn } from '../../model/date-text.ts';
import type { SourceGrade } from '../../model/source.ts';
import type { Grouping } from '../facts/take-off.ts';
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
import { HEAP_LIMITS, JUDGEMENTS, NUMBER_NAMES } from './de-words.ts';
import { many } from './en-words.ts';
import type { Texts } from './text.ts';

const heightText = (heightM: number) => quantityOf(heightM, 2, 'm');

/** Numbers of bays that nobody confirmed stand in brackets. */
const bracketed = (lines: readonly string[], confirmed: boolean): readonly string[] =>
  confirmed ? lines : lines.map((line, i) => `${i === 0 ? '(' : ''}${line}${i === lines.length - 1 ? ')' : ''}`);

export const heaps: Texts['heaps'] = {
  none: 'Es lassen sich keine Höhen angeben: Diese Szene hat keinen Bauzustand, kein Schüttgut oder kein Feld mit zulässiger Last.',
  railStage: 'Einen anderen Bauzustand in der Leiste wählen.',
  lastStage: 'Haufwerke gehören zu einem Bauzustand; dies ist der letzte. Einen anderen in der Leiste wählen.',
  material: 'Material',
  title: (material, number, stage) => `${material}: wie hoch in Bauzustand ${number}, ${stage}`,
  plan: (title) => `Plan der Felder. ${title}. Die Tabelle hat dieselben Zahlen.`,
  says: 'Höhe von Schüttgut, das überall auf einem Feld liegen darf, zusätzlich zu allem, was am Ende dieses Bauzustands eingebaut ist, und zu seinen eigenen Haufwerken; auf 5 cm abgerundet. Nicht für Maschinen.',
  ...HEAP_LIMITS,
  large: 'Großer Plan',
  height: 'Höhe',
  permitted: 'Zulässig, kN/m²',
  permittedLoad: (loadKNm2) => loadNumber(loadKNm2),
  noLimit: 'nicht angegeben',
  entry: ({ state, heightM, overKNm2, confirmed }) => {
    if (state === 'no limit') return 'nichts zulässig';
    return bracketed([state === 'over' ? `um ${loadText(overKNm2)} überschritten` : heightText(heightM)], confirmed).join('');
  },
  lines: ({ state, heightM, overKNm2, confirmed }) => {
    if (state === 'no limit') return ['–'];
    return bracketed(state === 'over' ? ['zu viel:', loadText(overKNm2)] : [heightText(heightM)], confirmed);
  },
};

export const columns: Texts['columns'] = {
  title: 'Stützen',
  says: 'Ständige Last der Deckenfläche, die jeder Stütze am nächsten liegt, wassergesättigt: für den Durchstanznachweis des Tragwerksplaners, selbst kein Nachweis.',
  column: 'Stütze',
  pick: (id) => `Zu Stütze ${id} gehen`,
};

export const edges: Texts['edges'] = {
  none: 'Keine Anschlusshöhen: Diese Szene nennt keine Schwelle und keine Aufkantung.',
  says: 'Kleinste Höhe der Abdichtung über der Fertighöhe an jedem Rand, in mm.',
  caption: 'Ränder: kleinste Höhe, verlangte Höhe und was fehlt, in mm',
  kind: (kind, count) => (kind === 'threshold' ? many(count, 'Türschwelle', 'Türschwellen') : many(count, 'Aufkantung', 'Aufkantungen')),
  edge: 'Rand',
  least: 'Kleinste',
  required: 'Verlangt',
  missing: 'Fehlt',
  enough: 'genug',
  nothing: 'nichts grenzt an',
  channel: 'Rinne mit Ablauf',
  noChannel: 'keine Rinne mit Ablauf',
  pick: (id) => `Zur niedrigsten Stelle von ${id} gehen`,
};

const GROUPING: Readonly<Record<Grouping, string>> = { material: 'Material', zone: 'Zone', stage: 'Bauzustand' };

const SAVE: Texts['takeoff']['save'] = (kind, language) => {
  const inWords = language === 'de' ? 'Deutsch' : 'Englisch';
  return kind === 'take-off csv' ? `CSV (${inWords})` : `Arbeitsmappe (${inWords})`;
};

const BY: Readonly<Record<'volume' | 'weight', string>> = { volume: 'nach Volumen', weight: 'nach Gewicht' };

export const takeoff: Texts['takeoff'] = {
  none: 'Nichts zu bestellen: Keine Zone hat eine Lage.',
  says: 'Mengen der Aufbauten aller Zonen; Bäume, Mauern und Blöcke sind nicht dabei. Tonnen: trocken und höchstens bei Lieferung, wassergesättigt.',
  title: (scene) => `Massenermittlung: ${scene}`,
  caption: 'Massen nach Material: verlegt, zu bestellen, Tonnen trocken und höchstens, Lieferungen',
  by: 'Nach',
  grouping: GROUPING,
  large: 'Große Tabelle',
  save: SAVE,
  saved: (name) => `${name} wurde dem Browser zum Speichern übergeben.`,
  notSaved: (why) =>
    `Die Datei konnte nicht erstellt werden (${why}). Das ist ein Fehler von Loamdeck; die Tabelle selbst ist vollständig.`,
  material: 'Material',
  order: 'Zu bestellen',
  tonnes: 't trocken, höchstens',
  areaHead: 'm²',
  placedHead: 'm³ eingebaut',
  laid: (areaM2, placedM3) => `Verlegt: ${areaText(areaM2)}, ${quantityOf(placedM3, 2, 'm³')}`,
  toOrder: ({ orderM2, orderM3, areaM2 }) => (orderM3 === undefined ? areaText(orderM2 ?? areaM2) : quantityOf(orderM3, 1, 'm³')),
  orderOf: ({ orderM3 }) => (orderM3 === undefined ? 'mit Überlappung' : 'lose'),
  deliveries: ({ deliveries, deliveryBy, deliveriesDry }) => {
    if (deliveries === null) return 'Liefergröße nicht angegeben';
    const dry = deliveriesDry === null || deliveriesDry === deliveries ? '' : `, trocken ${numberText(deliveriesDry, 0)}`;
    return `${many(deliveries, 'Lieferung', 'Lieferungen')}${deliveryBy === null ? '' : ` ${BY[deliveryBy]}`}${dry}`;
  },
  governs: ({ deliveryBy }) => (deliveryBy === null ? '–' : BY[deliveryBy]),
  price: (price, currency) => `${numberText(price, 0)} ${currency}`.trim(),
  sum: 'Alle Materialien',
  priceSum: (price, currency, priced, all) => {
    const sum = `${numberText(price, 0)} ${currency}`.trim();
    return priced === all
      ? sum
      : `${sum} für ${numberText(priced, 0)} von ${numberText(all, 0)} Materialien; die übrigen haben keinen Preis`;
  },
  columns: (currency) => [
    'Material',
    'm² verlegt',
    'm² zu bestellen',
    'm³ eingebaut',
    'm³ lose',
    't trocken',
    't höchstens',
    'Lieferungen',
    'Maßgebend',
    currency === '' ? 'Preis' : `Preis, ${currency}`,
  ],
};

export const probes: Texts['probes'] = {
  none: 'Es wurde noch keine Dicke gemessen.',
  add: {
    pick: 'Um eine Dicke einzugeben, im Modell oder in einer Tabelle die Stelle wählen, an der gemessen wurde.',
    title: (x, y) => `Gemessen bei x ${coordinateText(x)}, y ${coordinateText(y)} m`,
    layer: 'Was gemessen wurde',
    whole: 'Ganzer Aufbau',
    measured: 'Gemessene Dicke',
    on: 'Gemessen am',
    by: 'Gemessen von',
    go: 'Mit dem Plan vergleichen',
  },
  remove: (id) => `${id} entfernen`,
  removeShort: 'Entfernen',
  measuredOn: (on, by) => `Gemessen${on === '' ? '' : ` am ${dayIn(on, 'de')}`}${by === '' ? '' : ` von ${by}`}`,
  countedAs: (layer) => `Der Unterschied zählt als ${layer}.`,
  says: 'Auf der Baustelle gemessene Dicken gegen die berechneten; die Last gilt, wenn der ganze Quadratmeter so wäre.',
  place: (id, zone, bay) =>
    [id, zone === null ? 'hier keine Zone' : `Zone ${zone}`, bay === null ? 'hier kein Feld' : `Feld ${bay}`].join(' · '),
  measured: ({ plannedMm, measuredMm, differenceMm }, layer) => {
    const what = layer ?? 'Ganzer Aufbau';
    if (plannedMm === null || differenceMm === null)
      return `${what}: ${mmText(measuredMm)} gemessen, hier ist nichts geplant, das sich vergleichen ließe`;
    return `${what}: ${mmText(measuredMm)} gemessen, ${mmText(plannedMm)} geplant, ${signedMmText(differenceMm)}`;
  },
  means: ({ differenceKNm2, patchKNm2, utilisation }, judgement, confirmed) => {
    if (differenceKNm2 === null) return 'Was das wiegt, ist nicht bekannt.';
    const load = `${signedLoadText(differenceKNm2)} wassergesättigt`;
    if (patchKNm2 === null || utilisation === null || judgement === null) return `${load}; keine zulässige Last zum Vergleich`;
    const words = judgement === 'over' || confirmed ? JUDGEMENTS[judgement] : 'nicht bestätigt';
    return `${load}; zusammen ${loadText(patchKNm2)}, ${percentText(utilisation)}, ${words}`;
  },
};

const GRADE_NAMES: Readonly<Record<SourceGrade, string>> = {
  read: 'Gelesen',
  secondary: 'Aus zweiter Hand',
  'common practice': 'Baupraxis',
  'from memory': 'Aus dem Gedächtnis',
  assumed: 'Angenommen',
  entered: 'In der Szene eingegeben',
  none: 'Rechnung',
};

export const sources: Texts['sources'] = {
  waiting: 'Quellen werden zusammengestellt…',
  says: 'Woher die Zahlen kommen, die die Szenendatei nicht selbst angibt. Werte ohne gelesene Quelle sind Ausgangswerte: Die Datenblätter der gewählten Produkte ersetzen sie.',
  all: 'Auch, was diese Szene nicht benutzt',
  grade: (grade, count) => `${GRADE_NAMES[grade]} · ${numberText(count, 0)}`,
  meaning: {
    read: 'die Zahl wurde an dieser Stelle gesehen',
    secondary: 'gesehen in einem Text oder Programm, das die Quelle wiedergibt',
    'common practice': 'im Fach üblich, keine veröffentlichte Quelle',
    'from memory': 'nicht bestätigt: nachschlagen, bevor man sich darauf verlässt',
    assumed: 'eigener Ausgangswert: durch ein Datenblatt ersetzen',
    entered: 'in der Szenendatei angegeben',
    none: 'braucht keine Quelle',
  },
  use: (kind, name, numbers, usedIn) => {
    const words = numbers.map((key) => NUMBER_NAMES[key] ?? key).join(', ');
    const what = kind === 'rule' ? `Regelwert für ${name}: ${words}` : `${name}: ${words}`;
    return usedIn.length === 0 ? what : `${what}. Benutzt von ${usedIn.join(', ')}`;
  },
};
