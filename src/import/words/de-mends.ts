/** What was changed while reading, in German. */

import { MODEL_MENDS_DE } from './de-model.ts';
import type { Mends } from './en-mends.ts';
import { countDe, numberDe, placeDe, sizeDe, someDe } from './number-words.ts';
import { TERMS_DE } from './term-words.ts';

const { units, axes, separators, marks } = TERMS_DE;
const wurde = (count: number) => (count === 1 ? 'wurde' : 'wurden');
const KEPT = { lower: 'untere', upper: 'obere' } as const;

export const MENDS_DE: Mends = {
  ...MODEL_MENDS_DE,
  TEXT_DECODED: (v) => `Text wurde als ${v.encoding} gelesen.`,
  TEXT_DECODED_LOSSY: () => 'Text wurde als UTF-8 gelesen; einige Buchstaben sind verloren.',
  TEXT_UNBROKEN: (v) => `Mit falschem Zeichensatz gelesene Buchstaben wurden berichtigt: „${v.before}“ heißt „${v.after}“.`,
  LINE_ENDS: () => 'Verschiedene Zeilenenden wurden gleich gelesen.',
  TEXT_KEPT: (v) =>
    `${someDe(v.count, 'Text sieht', 'Texte sehen')} nach Formel oder Auszeichnung aus und ${v.count === 1 ? 'bleibt' : 'bleiben'} einfacher Text: „${v.sample}“.`,
  TEXT_SHORTENED: (v) => `${someDe(v.count, 'Text wurde', 'Texte wurden')} auf ${countDe(v.most)} Zeichen gekürzt.`,
  NUMBER_MARKS: (v) =>
    `${someDe(v.count, 'Zahl wurde', 'Zahlen wurden')} trotz ungewöhnlicher Minuszeichen, Leerzeichen oder Hochkommas gelesen, zum Beispiel „${v.sample}“.`,
  HEADER_REPEATED: (v) => `Der Tabellenkopf steht noch ${countDe(v.count)}-mal in der Tabelle; diese Zeilen wurden weggelassen.`,
  TABLE_READ: (v) =>
    `Die Tabelle wurde mit ${separators[v.separator]} zwischen den Spalten und Dezimal${marks[v.mark].toLowerCase()} gelesen.`,
  UNIT_CHANGED: (v) =>
    `Längen wurden von ${units[v.unit]} in Meter umgerechnet: Aus ${sizeDe(v)} in der Datei wurden ${sizeDe({ width: v.widthM, height: v.heightM })} m.`,
  DEGREES_CHANGED: (v) =>
    `Länge und Breite wurden in Meter östlich und nördlich von ${numberDe(v.latitude, 7)}° Breite, ${numberDe(v.longitude, 7)}° Länge umgerechnet.`,
  AXES_CHANGED: (v) => `Die Achsen wurden geändert: ${axes[v.axes]}.`,
  NORTH_EAST: () => 'Die Datei nennt Nord vor Ost; beide wurden getauscht.',
  LEVELS_CHANGED: (v) =>
    `Höhen wurden von ${units[v.unit]} in Meter umgerechnet: Aus ${numberDe(v.from)} bis ${numberDe(v.to)} in der Datei wurden ${numberDe(v.fromM)} bis ${numberDe(v.toM)} m.`,
  LEVELS_DROPPED: (v) => `${someDe(v.count, 'Höhe', 'Höhen')} 0 ${wurde(v.count)} nicht als ${v.count === 1 ? 'Höhe' : 'Höhen'} gewertet.`,
  LEVELS_SPLIT: (v) => `Von zwei Gruppen von Höhen wurde die ${KEPT[v.kept]} behalten; ${someDe(v.count, 'Höhe', 'Höhen')} weggelassen.`,
  LEVELS_DOUBLE: (v) =>
    `${someDe(v.count, 'Stelle hat', 'Stellen haben')} mehr als eine Höhe; die ${KEPT[v.kept]} wurde behalten. Größter Unterschied ${numberDe(v.mostM)} m, bei ${placeDe(v)}.`,
  STRAY_DROPPED: (v) => `${someDe(v.count, 'Punkt', 'Punkte')} in ${v.farM} m Abstand vom Rest ${wurde(v.count)} weggelassen.`,
  FAR_FROM_ORIGIN: (v) =>
    `Die Koordinaten liegen bei ${v.x}; ${v.y} m. Gerechnet wird von einem nahen Punkt aus, ausgegeben werden die Koordinaten der Datei.`,
  RINGS_CLOSED: (v) =>
    `${someDe(v.count, 'Umriss war', 'Umrisse waren')} nicht geschlossen (Lücke bis ${numberDe(v.gapMm)} mm) und ${wurde(v.count)} geschlossen.`,
  LINES_CHAINED: (v) =>
    `${someDe(v.count, 'Linie', 'Linien')} mit höchstens ${v.toleranceMm} mm Abstand der Enden wurden zu ${countDe(v.rings)} geschlossenen und ${countDe(v.open)} offenen verbunden; größte Lücke ${numberDe(v.gapMm)} mm.`,
  POINTS_REPEATED: (v) =>
    `${someDe(v.count, 'Punkt, der auf dem vorigen lag, wurde', 'Punkte, die auf dem vorigen lagen, wurden')} entfernt.`,
  SHAPES_REPEATED: (v) =>
    `${someDe(v.count, 'doppelt gezeichnete Form wurde', 'doppelt gezeichnete Formen wurden')} an ihrer Stelle nur einmal genommen.`,
  CURVES_TO_CHORDS: (v) =>
    `${someDe(v.count, 'Bogen wurde', 'Bögen wurden')} in gerade Sehnen zerlegt, höchstens ${v.errorMm} mm neben dem Bogen.`,
  SIMPLIFIED: (v) =>
    `${someDe(v.count, 'Linie wurde', 'Linien wurden')} um höchstens ${v.errorMm} mm vereinfacht: Aus ${countDe(v.before)} Punkten wurden ${countDe(v.after)}, die Fläche änderte sich um ${numberDe(v.areaM2)} m².`,
  LEVELS_THINNED: (v) =>
    `Von ${countDe(v.count)} Höhen wurden ${countDe(v.after)} behalten: Die Fläche durch sie weicht von jeder weggelassenen Höhe um höchstens ${v.errorMm} mm ab; größte gefundene Abweichung ${numberDe(v.mostMm)} mm.`,
  FACES_TO_POINTS: (v) =>
    `${someDe(v.count, 'Dreieck', 'Dreiecke')} der Oberfläche „${v.surface}“ ${v.count === 1 ? 'gab seine' : 'gaben ihre'} Eckpunkte; dazwischen wird neu vermascht.`,
  FEATURES_CUT: (v) => `Die Datei bricht mittendrin ab; ${someDe(v.count, 'Eintrag', 'Einträge')} davor ${wurde(v.count)} gelesen.`,
};
