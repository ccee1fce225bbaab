/** What is asked and said on building models alone, in German. */

import type { Levels, MapPlace, ModelChoices, ModelIssues, ModelMends, ModelQuestions, SlabWay } from './en-model.ts';
import { allDe, countDe, numberDe, someDe } from './number-words.ts';

const at = ({ fromM, toM }: Levels) =>
  numberDe(fromM) === numberDe(toM) ? `Oberkante bei ${numberDe(fromM)} m` : `Oberkante von ${numberDe(fromM)} bis ${numberDe(toM)} m`;
const storey = (name: string) => (name === '' ? 'ohne Geschoss' : `Geschoss „${name}“`);
const area = (areaM2: number) => `${numberDe(areaM2, 1)} m²`;
const place = ({ eastM, northM, levelM, turnDeg }: MapPlace) =>
  `Ost ${numberDe(eastM)} m, Nord ${numberDe(northM)} m, Höhe ${numberDe(levelM)} m, gedreht um ${numberDe(turnDeg)}°`;

const WAYS: Readonly<Record<SlabWay, string>> = {
  profile: 'Ihre Ecken sind die des Profils in der Datei',
  faces: 'Ihr Umriss wurde aus den nach oben zeigenden Flächen der Datei zusammengesetzt und behält deren Ecken',
  mesh: 'Ihr Körper ist in der Datei verschnitten, gebogen oder gezogen; ihr Umriss stammt deshalb aus einem daraus erzeugten Dreiecksnetz, mit 180 geraden Sehnen je Vollkreis',
};

export const MODEL_QUESTIONS_DE: ModelQuestions = {
  SLAB: (v) =>
    `Das Modell hat ${someDe(v.count, 'Deckenplatte', 'Deckenplatten')}; ${v.count === v.offered ? 'alle stehen' : `die ${countDe(v.offered)} größten stehen`} zur Wahl. Welche ist die Decke?`,
  ORIGIN: (v) => `Das Modell gibt an, wo sein Ursprung auf der Karte liegt: ${place(v)}. Welche Koordinaten sind gewünscht?`,
};

export const MODEL_CHOICES_DE: ModelChoices = {
  SLAB: (v) => `„${v.name}“ (${v.kind}), ${storey(v.storey)}, ${area(v.areaM2)}, ${at(v)}`,
  SLAB_STOREY: (v) => `${allDe(v.count, 'Deckenplatten')} (${storey(v.storey)}) zusammen als eine Decke, ${area(v.areaM2)}, ${at(v)}`,
  ORIGIN_PROJECT: () => 'Die des Projekts, wie gezeichnet.',
  ORIGIN_MAP: (v) => `Die der Karte: ${place(v)}.`,
};

export const MODEL_MENDS_DE: ModelMends = {
  SLAB_READ: (v) => `Die Decke ist „${v.name}“: ${WAYS[v.way]}; ${at(v)}.`,
  SLABS_UNITED: (v) =>
    `${someDe(v.count, 'Deckenplatte', 'Deckenplatten')} eines Geschosses wurden vereinigt; das ergibt ${someDe(v.areas, 'Fläche', 'Flächen')}.`,
  SLAB_OPENINGS: (v) =>
    `${someDe(v.through, 'Öffnung geht', 'Öffnungen gehen')} durch die Decke und ${v.through === 1 ? 'ist' : 'sind'} ausgeschnitten.`,
  OPENINGS_MESHED: (v) =>
    `${someDe(v.count, 'Öffnung ist', 'Öffnungen sind')} in diesem Netz, so tief wie im Modell: durch die Decke oder als Stufe in der Oberseite.`,
  PARTS_COVERED: (v) =>
    `${someDe(v.count, 'Teil liegt', 'Teile liegen')} ganz oder teilweise unter anderen; die Höhen sind die der obersten.`,
  OPENINGS_LEFT: (v) =>
    `Nicht ausgeschnitten, weil nicht durchgehend: ${someDe(v.recesses, 'Vertiefung', 'Vertiefungen')} in der Oberseite, ${someDe(v.below, 'Öffnung', 'Öffnungen')} nur von unten.`,
  STEPS_KEPT: (v) =>
    `Teile der Oberseite liegen nebeneinander auf verschiedener Höhe: An ${someDe(v.count, 'Rand', 'Rändern')} um sie wurden die Höhen ${v.insideMm} mm weiter innen abgenommen, damit die Stufen bleiben.`,
  COLUMNS_TURNED: (v) =>
    `${someDe(v.count, 'Stütze steht', 'Stützen stehen')} um bis zu ${numberDe(v.mostDeg, 1)}° gedreht: Ort und Größe bleiben, die Seiten liegen entlang der Achsen.`,
  COLUMNS_BOXED: (v) =>
    `${someDe(v.count, 'Stütze zählt', 'Stützen zählen')} mit dem Rechteck um ${v.count === 1 ? 'ihren' : 'den'} Querschnitt.`,
  MAP_LEFT: (v) => `Die Koordinaten bleiben die des Projekts; sein Ursprung liegt auf der Karte bei ${place(v)}.`,
  MAP_TAKEN: (v) => `Der Plan wurde auf die Karte gelegt: ${place(v)}. Längen behalten den Maßstab des Projekts.`,
  MAP_SCALE: (v) =>
    `Das Modell nennt einen Maßstab zur Karte: 1 m im Modell ist dort ${numberDe(v.scale, 8)} m. Er wurde nicht angewandt; Längen sind die des Modells.`,
  WORLD_LEFT: (v) =>
    `Das Koordinatensystem des ganzen Modells liegt nicht in seinem Ursprung: x ${numberDe(v.xM)} m, y ${numberDe(v.yM)} m, z ${numberDe(v.zM)} m, gedreht um ${numberDe(v.turnDeg)}°, geneigt um ${numberDe(v.tiltDeg)}°. Es wurde nicht angewandt; Lage und Höhen mit den Plänen vergleichen.`,
  TRUE_NORTH: (v) =>
    `Geografisch Nord liegt ${numberDe(v.turnDeg)}° im Uhrzeigersinn von der nach oben zeigenden Achse des Plans; der Plan wurde nicht gedreht.`,
  SITE_LEVEL: (v) => `Das Grundstück nennt als eigene Höhe ${numberDe(v.levelM)} m; die Höhen bleiben die des Projekts, ohne sie.`,
};

const says = (got: string, expected: string, mend: string) => ({ got, expected, mend });
const SLAB = 'eine Deckenplatte (IfcSlab oder IfcRoof) mit einem Körper';

export const MODEL_ISSUES_DE: ModelIssues = {
  'FILE_KIND:schema': (v) =>
    says(
      v.schema === '' ? 'ein Gebäudemodell, das sein Schema nicht nennt' : `ein Gebäudemodell nach dem Schema ${v.schema}`,
      'IFC2X3 oder IFC4',
      'Decken und Stützen noch einmal als IFC4 oder IFC2X3 exportieren.',
    ),
  NO_SLAB: (v) =>
    says(
      `ein Gebäudemodell mit ${someDe(v.slabs, 'Deckenplatte', 'Deckenplatten')} und ${someDe(v.columns, 'Stütze', 'Stützen')}`,
      SLAB,
      'Das Tragwerksmodell oder den Umriss der Decke als DXF anfordern.',
    ),
  'NO_SLAB:body': (v) =>
    says(
      `${someDe(v.slabs, 'Deckenplatte', 'Deckenplatten')} ohne lesbaren Körper und ${someDe(v.columns, 'Stütze', 'Stützen')}`,
      SLAB,
      'Das Modell noch einmal mit Körpern exportieren (Reference View oder Coordination View) oder den Umriss der Decke als DXF.',
    ),
  MODEL_SHAPE: (v) =>
    says(
      `${someDe(v.count, 'Deckenplatte', 'Deckenplatten')} ohne lesbaren Körper, zum Beispiel „${v.sample}“`,
      'extrudierte Profile, Flächen oder mit Ebenen verschnittene Körper',
      'Sie stehen nicht zur Wahl. Ist die Decke darunter, sie noch einmal exportieren oder ihren Umriss als DXF.',
    ),
  MODEL_OPENINGS: (v) =>
    says(
      `${someDe(v.count, 'Öffnung', 'Öffnungen')} von „${v.name}“ ohne lesbaren Körper`,
      'extrudierte Profile, Flächen oder mit Ebenen verschnittene Körper',
      'Die Decke ist gelesen, als wären sie geschlossen: im Plan einzeichnen oder das Modell noch einmal exportieren.',
    ),
  MODEL_PROJECTIONS: (v) =>
    says(
      `${someDe(v.count, 'Anformung', 'Anformungen')} an „${v.name}“`,
      'eine Deckenplatte nur mit Öffnungen',
      'Sie fehlen in Umriss und Höhen: im Plan einzeichnen.',
    ),
  OPENINGS_BESIDE: (v) =>
    says(
      `${someDe(v.count, 'Öffnung', 'Öffnungen')} von „${v.name}“, von oben gesehen neben der Decke`,
      'Öffnungen, die ihre Deckenplatte schneiden',
      'Für sie ist nichts ausgeschnitten. Fehlt eine, sie im Plan einzeichnen oder das Modell noch einmal exportieren.',
    ),
  MODEL_SLABS_LEFT: (v) =>
    says(
      `${someDe(v.count, 'Deckenplatte', 'Deckenplatten')} mehr, als betrachtet werden`,
      `höchstens ${countDe(v.most)} Deckenplatten`,
      'Fehlt die Decke, nur ihr Geschoss exportieren.',
    ),
  MODEL_UNIT: (v) =>
    says(
      v.unitM > 0 ? `eine Längeneinheit von ${numberDe(v.unitM, 7)} m` : 'eine Längeneinheit, die nicht lesbar ist',
      'Meter mit Vorsatz, Fuß, Zoll oder Yard',
      'Nach der Einheit wird gefragt: die wählen, die die wahre Größe ergibt, und eine bekannte Länge prüfen.',
    ),
  MODEL_DAMAGED: (v) =>
    says(
      `${someDe(v.count, 'Zeile', 'Zeilen')} in falscher Form`,
      'Einträge mit Nummer, Typ und Werten',
      'Weggelassen; das Modell noch einmal exportieren, wenn etwas fehlt.',
    ),
};
