/** Messages on drawings in German. */

import { ADVICE_DE, FILE_KINDS_DE } from './de-files.ts';
import { MODEL_ISSUES_DE } from './de-model.ts';
import type { Issues, IssueWords } from './en-issues.ts';
import { kindsTold } from './kind-words.ts';
import { countDe, someDe, spotDe } from './number-words.ts';
import { TERMS_DE } from './term-words.ts';

const says = (got: string, expected: string, mend: string): IssueWords => ({ got, expected, mend });

const ANY_DRAWING =
  'eine Zeichnung als DXF, ein Modell als IFC, Flächen als GeoJSON, Punkte als CSV oder LandXML oder eine Szene (*.scene.json)';
const AGAIN = 'Die Datei noch einmal speichern oder senden oder eine frühere Kopie öffnen.';
const EXPORT_AGAIN = 'Noch einmal exportieren.';
const ENCLOSES = 'ein Umriss, der eine Fläche umschließt';
const CHECK_THERE = 'Er wurde weggelassen; die Zeichnung dort prüfen.';
const ONE_OUTLINE = 'ein geschlossener Umriss der Decke';
const CLOSE_OUTLINE = 'Dem Layer mit dem Deckenrand die Verwendung Umriss geben; die Linie in der Zeichnung schließen.';

const DRAWINGS = {
  dxf: 'eine DXF-Zeichnung',
  geojson: 'eine Karte in GeoJSON',
  landxml: 'Vermessungsdaten in LandXML',
  ifc: 'ein Gebäudemodell in IFC',
  table: 'eine Tabelle oder ein anderer Text',
} as const;

export const ISSUES_DE: Issues = {
  ...MODEL_ISSUES_DE,
  FILE_EMPTY: () => says('eine leere Datei (0 Byte)', ANY_DRAWING, AGAIN),
  'FILE_EMPTY:blank': () => says('eine Datei nur aus Leerzeichen', ANY_DRAWING, AGAIN),
  FILE_TOO_LARGE: (v) => says(`${v.sizeMB} MB`, `höchstens ${countDe(v.most)} MB`, 'Zu groß: Nur die Layer der Decke exportieren.'),
  FILE_KIND: (v) => says(FILE_KINDS_DE[v.what], ANY_DRAWING, ADVICE_DE[v.advice]),
  'FILE_KIND:xml': (v) => says(`XML anderer Art (${v.root})`, ANY_DRAWING, 'LandXML, DXF oder CSV anfordern.'),
  'FILE_KIND:drawing': (v) =>
    says(DRAWINGS[v.kind], 'eine Szene (*.scene.json)', 'Als Zeichnung einlesen: import nimmt DXF, IFC, GeoJSON, LandXML und CSV.'),
  TOO_MANY_ENTITIES: (v) =>
    says(`mehr als ${countDe(v.most)} Elemente`, `höchstens ${countDe(v.most)}`, 'Nur die Layer der Decke exportieren.'),
  TOO_MANY_POINTS: (v) =>
    says(
      `mehr als ${countDe(v.most)} Punkte`,
      `höchstens ${countDe(v.most)} Punkte in einer Zeichnung`,
      'Zu groß: Nur die Layer der Decke exportieren oder Bögen mit weniger Punkten zeichnen.',
    ),
  TEXT_LOST: (v) =>
    says(
      `${someDe(v.count, 'Text', 'Texte')} mit verlorenen Buchstaben, zum Beispiel „${v.sample}“`,
      'vollständige Buchstaben mit Akzenten und Umlauten',
      'Die Buchstaben gingen beim Schreiben der Datei verloren; noch einmal exportieren, am besten in UTF-8, oder die Namen prüfen.',
    ),
  ANSWER_UNKNOWN: (v) => says(`„${v.answer}“`, `eines von ${v.choices}`, 'Eines davon wählen.'),
  MORE_ISSUES: (v) =>
    says(
      someDe(v.count, 'weitere Meldung', 'weitere Meldungen'),
      `höchstens ${countDe(v.most)} in einer Liste`,
      'Die obigen beheben und die Datei noch einmal lesen.',
    ),
  FILE_TRUNCATED: (v) =>
    says(
      `das Ende der Datei bei ${v.unit === 'line' ? 'Zeile' : 'Byte'} ${v.at}, nach ${someDe(v.count, 'Eintrag', 'Einträgen')}`,
      'eine am Ende abgeschlossene Datei',
      'Sie wurde wohl nicht vollständig gespeichert oder gesendet. Noch einmal speichern oder senden oder den gelesenen Teil verwenden.',
    ),
  'FILE_TRUNCATED:json': () => says('JSON, das abbricht oder gegen seine Regeln verstößt', 'eine vollständige Datei', EXPORT_AGAIN),
  BLOCK_MISSING: (v) =>
    says(
      `ein eingefügter Block „${v.block}“, der nicht in der Datei ist`,
      'jeder eingefügte Block in derselben Datei',
      'Die Zeichnung mit ihren Blöcken exportieren oder die Blöcke auflösen.',
    ),
  BLOCK_CYCLE: (v) =>
    says(
      `ein Block „${v.block}“, der sich selbst enthält, oder Blöcke, die mehr als ${countDe(v.most)}-fach ineinander stecken`,
      'Blöcke, die enden',
      'Ab dort weggelassen; den Block auflösen und noch einmal exportieren.',
    ),
  BLOCKS_TOO_MANY: (v) =>
    says(
      `Blöcke, die auf mehr als ${countDe(v.most)} Elemente anwachsen`,
      `höchstens ${countDe(v.most)}`,
      'Nichts wurde geändert. Nur die Layer der Decke exportieren, ohne Pflanzen und Möbel.',
    ),
  NOTHING_FOUND: (v) =>
    says(
      v.kinds === '' ? 'nichts gezeichnet' : `nichts Verwendbares (${kindsTold(v.kinds, 'de')})`,
      'Umrisse, Linien, Punkte oder Höhen',
      'Den Plan als Linien und geschlossene Polylinien im Modellbereich exportieren, mit eingebundenen Blöcken und Referenzen.',
    ),
  NUMBER_BAD: (v) =>
    says(
      `${someDe(v.count, 'Element', 'Elemente')} mit einer Koordinate, die keine Zahl ist, zuerst „${v.found}“`,
      'endliche Zahlen mit Dezimalpunkt',
      'Sie wurden weggelassen; die Zeichnung noch einmal exportieren.',
    ),
  'NUMBER_BAD:survey': (v) =>
    says(
      `${someDe(v.count, 'Eintrag', 'Einträge')} mit einer Koordinate, die keine Zahl ist, zuerst „${v.found}“`,
      'Nord, Ost und Höhe als endliche Zahlen',
      'Sie wurden weggelassen; die Datei noch einmal exportieren.',
    ),
  'NUMBER_BAD:row': (v) =>
    says(
      `${someDe(v.count, 'Zeile', 'Zeilen')} mit einer Koordinate, die keine Zahl ist, zuerst „${v.found}“`,
      'endliche Zahlen in den Spalten x und y',
      'Diese Zeilen wurden weggelassen; die Zellen berichtigen oder andere Spalten wählen.',
    ),
  DXF_DAMAGED: (v) =>
    says(
      `„${v.found}“ nach ${someDe(v.count, 'Element', 'Elementen')}`,
      'die Nummer eines Gruppencodes in jeder zweiten Zeile',
      'Die Datei wurde unterwegs verändert oder beschädigt; noch einmal als DXF in Textform exportieren.',
    ),
  GEOJSON_DAMAGED: (v) =>
    says(
      `${someDe(v.count, 'Objekt', 'Objekte')} in falscher Form, das erste hier`,
      'eine Geometrie mit Koordinaten als Listen endlicher Zahlen',
      'Sie wurden weggelassen; die Datei noch einmal exportieren.',
    ),
  XML_ENTITIES: () =>
    says(
      'eine Datei, die eigene Entitäten festlegt',
      'einfaches LandXML',
      'Nichts wurde gelesen: Solche Dateien können endlos anwachsen. Noch einmal exportieren.',
    ),
  XML_DAMAGED: (v) => says(`XML, das in Zeile ${v.line} gegen seine Regeln verstößt: ${v.problem}`, 'wohlgeformtes LandXML', EXPORT_AGAIN),
  TOO_DEEP: (v) =>
    says(`Elemente, die mehr als ${countDe(v.most)}-fach ineinander stecken`, 'LandXML, das nie so tief reicht', EXPORT_AGAIN),
  ROWS_RAGGED: (v) =>
    says(
      `${someDe(v.count, 'Zeile', 'Zeilen')} mit anderer Zahl von Spalten, die erste mit ${v.cells}`,
      `${v.columns} Spalten wie in den anderen Zeilen`,
      'Diese Zeilen wurden weggelassen; das Zeichen zwischen den Spalten prüfen.',
    ),
  LEVELS_MISSING: (v) =>
    says(
      `${countDe(v.count)} von ${countDe(v.of)} Punkten ohne Höhe`,
      'eine Höhe für jeden Punkt',
      'Sie geben keine Höhe; prüfen, ob ein Teil der Decke ohne Höhen bleibt.',
    ),
  LEVELS_TOO_MANY: (v) =>
    says(
      `${countDe(v.count)} Höhen und ${countDe(v.lines)} Punkte auf Linien mit Höhen`,
      `höchstens ${countDe(v.most)} Höhen und ${countDe(v.mostLines)} Punkte auf Linien, die sich dann ausdünnen lassen`,
      'Beim Vermesser nur die Punkte auf der Decke anfordern, ausgedünnt auf einen je 10 bis 20 cm.',
    ),
  LEVELS_TOO_ROUGH: (v) =>
    says(
      `${countDe(v.count)} Höhen, so uneben, dass selbst bei ${v.errorMm} mm Abweichung mehr als ${countDe(v.most)} bleiben müssten`,
      'eine Vermessung der bloßen Decke',
      'Beim Vermesser nur die Punkte auf der Decke anfordern: mitgemessene Pflanzen, Mauern, Autos und Menschen machen die Fläche uneben.',
    ),
  LEVELS_THINNED_APART: (v) =>
    says(
      `Höhen, die als eine Fläche der Layer ${v.layers} ausgedünnt wurden und jetzt anders verwendet werden`,
      'alle diese Layer als Höhen verwendet, und keine anderen mit Höhen',
      'Die genannte größte Abweichung gilt für diese Layer zusammen. Ihnen ihre Verwendung zurückgeben oder sie vom Vermesser ausdünnen lassen.',
    ),
  RING_TOO_FEW_POINTS: (v) => says(`ein Umriss aus ${someDe(v.count, 'Punkt', 'Punkten')} bei ${spotDe(v)}`, ENCLOSES, CHECK_THERE),
  'RING_TOO_FEW_POINTS:none': () => says('ein Umriss aus 0 Punkten', ENCLOSES, CHECK_THERE),
  RING_ZERO_AREA: (v) => says(`ein Umriss ohne Fläche bei ${spotDe(v)}`, ENCLOSES, CHECK_THERE),
  RING_CROSSES_ITSELF: (v) =>
    says(
      `der Rand ${v.name === '' ? 'eines Umrisses' : `von „${v.name}“`}, der sich bei ${spotDe(v)} selbst ${v.how === 'cross' ? 'kreuzt' : 'berührt'}`,
      'Kanten, die sich nur an ihren Enden treffen, damit Fläche und Last berechenbar sind',
      'Die Zeichnung dort berichtigen oder die Form teilen, bevor sie als Fläche dient.',
    ),
  'ROLE_UNKNOWN:layer': (v) =>
    says(`eine Verwendung für einen Layer „${v.layer}“`, `einer der Layer ${v.layers}`, 'Den Namen des Layers prüfen.'),
  ROLE_UNKNOWN: (v) => says(`die Verwendung „${v.role}“`, `eine von ${v.roles}`, 'Eine davon wählen.'),
  'OUTLINE_MISSING:role': () => says('kein Layer als Umriss angegeben', ONE_OUTLINE, CLOSE_OUTLINE),
  OUTLINE_MISSING: (v) => says(`kein geschlossener Umriss auf Layer „${v.layer}“`, ONE_OUTLINE, CLOSE_OUTLINE),
  OUTLINE_SEVERAL: (v) =>
    says(
      `${countDe(v.count)} geschlossene Umrisse`,
      'ein Umriss der Decke',
      'Der größte wurde genommen; Öffnungen gehören auf einen eigenen Layer, andere Decken in eine eigene Datei.',
    ),
  RING_OPEN: (v) =>
    says(
      `eine Linie auf Layer „${v.layer}“, die nicht schließt (Lücke ${v.gapMm} mm zwischen ${spotDe(v)} und ${spotDe({ x: v.endX, y: v.endY })})`,
      'ein geschlossener Umriss; Lücken bis 50 mm werden geschlossen',
      'Die Linie in der Zeichnung schließen oder auf einen Layer mit anderer Verwendung legen.',
    ),
  BAY_HOLES: (v) =>
    says(
      `${someDe(v.count, 'Feld', 'Felder')} mit Löchern`,
      'Felder aus je einem Umriss',
      'Ihre Löcher wurden weggelassen. Öffnungen der Decke auf einem eigenen Layer zeichnen.',
    ),
  SHAPE_UNFIT: (v) =>
    says(
      `${someDe(v.count, 'Form', 'Formen')} auf Layer „${v.layer}“, ${v.count === 1 ? 'die dort nicht verwendbar ist' : 'die dort nicht verwendbar sind'}`,
      TERMS_DE.wanted[v.wanted],
      'Weggelassen; dem Layer eine andere Verwendung geben oder die Zeichnung berichtigen.',
    ),
  AXES_UNFIT: () =>
    says(
      'Linien, die kein Raster bilden',
      'gerade Achsen in zwei Richtungen im rechten Winkel, je Richtung mindestens zwei',
      'Die Achsabstände von Hand eingeben oder die Felder als Umrisse zeichnen.',
    ),
};
