/** Questions on a file and their answers, in German. */

import { MODEL_CHOICES_DE, MODEL_QUESTIONS_DE } from './de-model.ts';
import type { Choices, Group, Questions } from './en-questions.ts';
import { allDe, countDe, numberDe, placeDe, sizeDe, someDe } from './number-words.ts';
import { TERMS_DE } from './term-words.ts';

const { units, axes, separators, marks } = TERMS_DE;
const group = ({ count, from, to }: Group) => `${countDe(count)} × ${numberDe(from)} bis ${numberDe(to)}`;
const AXES = 'Wie liegen die Zahlen der Datei im Plan?';

export const QUESTIONS_DE: Questions = {
  ...MODEL_QUESTIONS_DE,
  ENCODING: (v) => `Text ist wohl mit dem falschen Zeichensatz gelesen, zum Beispiel „${v.sample}“. Welcher war gemeint?`,
  UNIT: (v) =>
    `Die Zeichnung misst ${sizeDe(v)} in ihren eigenen Einheiten (${v.said === 'none' ? 'keine Einheit angegeben' : units[v.said]}). Welche Einheit war gemeint?`,
  UNIT_DOUBTED: (v) =>
    `Die Datei gibt ${units[v.said]} an, das sind ${sizeDe(v)} m. Zur Größe passen ${units[v.guess]} besser. Was war gemeint?`,
  UNIT_DEGREES: (v) => `Die Werte sehen nach geografischer Länge und Breite aus (${placeDe(v, 5)}). In örtliche Meter umrechnen?`,
  AXES: () => AXES,
  AXES_APART: () => `Die Zeichnung läge neben der Decke oder gegen sie gespiegelt. ${AXES}`,
  AXES_NORTHING: () => `Die erste Zahl sieht nach Hochwert aus, die zweite nach Rechtswert. ${AXES}`,
  STRAY: (v) =>
    `${v.count === 1 ? 'Ein Punkt liegt' : `${countDe(v.count)} Punkte liegen`} ${v.farM} m vom Rest entfernt, bei ${placeDe(v, 1)}. Weglassen?`,
  LEVEL_UNIT: (v) => `Die Höhen reichen von ${numberDe(v.from)} bis ${numberDe(v.to)}. In welcher Einheit?`,
  LEVELS_ZERO: (v) =>
    `${v.count === 1 ? 'Die einzige Höhe ist' : `${allDe(v.count, 'Höhen')} sind`} 0. Ist das die Höhe, oder gibt es keine?`,
  LEVEL_GROUPS: (v) =>
    `Die Höhen bilden zwei Gruppen, ${group({ count: v.lowCount, from: v.lowFrom, to: v.lowTo })} und ${group({ count: v.highCount, from: v.highFrom, to: v.highTo })} m. Welches Höhensystem gilt?`,
  LEVELS_DOUBLE: (v) =>
    `${someDe(v.count, 'Stelle hat', 'Stellen haben')} zwei Höhen, die sich um bis zu ${numberDe(v.mostM)} m unterscheiden, zum Beispiel bei ${placeDe(v)}. Welche gilt?`,
  DECIMAL: (v) => `„${v.sample}“: ${v.large} oder ${v.small.replace('.', ',')}? Die Antwort gilt für die ganze Datei.`,
  SEPARATOR: (v) => `Welches Zeichen trennt die Spalten von „${v.sample}“?`,
  COLUMNS: (v) => `Was steht in welcher Spalte? Erste Zeile: ${v.sample}`,
  DATES: (v) => `In Zeile ${v.row} steht ein Datum (${v.sample}). War ${numberDe(v.number)} gemeint?`,
  TRUNCATED: (v) =>
    `Die Datei bricht mittendrin ab; ${someDe(v.count, 'Eintrag davor ist lesbar. Ihn verwenden?', 'Einträge davor sind lesbar. Sie verwenden?')}`,
  THIN: (v) =>
    `Die Vermessung hat ${countDe(v.count)} Höhen, eine Szene fasst höchstens ${countDe(v.most)}. Wie weit darf die Fläche durch die behaltenen von den weggelassenen abweichen?`,
  SIMPLIFY: (v) =>
    `${v.count === 1 ? 'Eine Linie hat' : `${countDe(v.count)} Linien haben`} bis zu ${countDe(v.most)} Punkte. Um höchstens ${v.errorMm} mm vereinfachen (${countDe(v.after)} Punkte, die Fläche ändert sich um ${numberDe(v.areaM2)} m²)?`,
};

export const CHOICES_DE: Choices = {
  ...MODEL_CHOICES_DE,
  ENCODING_AS: (v) => `${v.encoding}: ${v.sample}`,
  ENCODING_REPAIR: (v) => `Berichtigen: ${v.after}`,
  ENCODING_KEEP: (v) => `Lassen, wie es ist: ${v.before}`,
  UNIT: (v) => `${units[v.unit]}: ${sizeDe(v)} m`,
  DEGREES: (v) => `Länge und Breite: ${sizeDe(v)} m`,
  AXES: (v) => axes[v.axes],
  STRAY_LEAVE: () => 'Weglassen.',
  STRAY_KEEP: () => 'Behalten.',
  LEVEL_UNIT: (v) => `${units[v.unit]}: ${numberDe(v.from)} bis ${numberDe(v.to)} m`,
  ZERO_NONE: () => 'Es gibt keine Höhe.',
  ZERO_LEVEL: () => 'Die Höhe ist 0,000.',
  GROUP_LOW: (v) => `Untere: ${group(v)} m`,
  GROUP_HIGH: (v) => `Obere: ${group(v)} m`,
  GROUP_BOTH: () => 'Beide',
  DOUBLE_LOWER: () => 'Die untere: mehr Aufbau, mehr Last.',
  DOUBLE_UPPER: () => 'Die obere.',
  SEPARATOR: (v) => `mit ${separators[v.separator]}`,
  DECIMAL: (v) => `Dezimal${marks[v.mark].toLowerCase()}: ${v.number.replace('.', ',')}`,
  COLUMNS: (v) => v.columns,
  DATES_LEAVE: () => 'Diese Zeilen weglassen.',
  DATES_NUMBER: (v) => `Tag und Monat als Zahl lesen: ${numberDe(v.number)}.`,
  CUT_STOP: () => 'Nein, ich besorge die ganze Datei.',
  CUT_USE: () => 'Ja, den gelesenen Teil verwenden.',
  THIN: (v) =>
    `Um höchstens ${v.errorMm} mm: ${someDe(v.after, 'Höhe bleibt', 'Höhen bleiben')}, größte gefundene Abweichung ${numberDe(v.mostMm)}\u00A0mm.`,
  SIMPLIFY: (v) => `Vereinfachen: ${countDe(v.after)} Punkte.`,
  SIMPLIFY_KEEP: (v) => `Behalten: ${countDe(v.before)} Punkte.`,
};
