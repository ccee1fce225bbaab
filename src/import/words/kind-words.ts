/** Kinds of entities as they are counted by layer: the file's name for them told in words, and why one was left out. */

import type { Language } from '../../model/language.ts';
import { MODEL_NAMES } from './model-names.ts';
import { countDe, countEn, someDe, someEn } from './number-words.ts';

/** One and several, in English and German. */
type Forms = readonly [one: string, several: string, eins: string, mehrere: string];

/** What is counted without a name of the file. */
const WHOLE = {
  row: ['row', 'rows', 'Zeile', 'Zeilen'],
  'point of the surface': ['point of the surface', 'points of the surface', 'Punkt der Oberfläche', 'Punkte der Oberfläche'],
  'far from the rest': ['far from the rest', 'far from the rest', 'weit vom Rest entfernt', 'weit vom Rest entfernt'],
  'row without numbers': ['row without numbers', 'rows without numbers', 'Zeile ohne Zahlen', 'Zeilen ohne Zahlen'],
  'row without x and y': ['row without x and y', 'rows without x and y', 'Zeile ohne x und y', 'Zeilen ohne x und y'],
  'line of no length': ['line of no length', 'lines of no length', 'Linie ohne Länge', 'Linien ohne Länge'],
  'outline of fewer than three points': [
    'outline of fewer than three points',
    'outlines of fewer than three points',
    'Umriss aus weniger als drei Punkten',
    'Umrisse aus weniger als drei Punkten',
  ],
  'outline without area': ['outline without area', 'outlines without area', 'Umriss ohne Fläche', 'Umrisse ohne Fläche'],
  'feature without geometry': ['feature without geometry', 'features without geometry', 'Objekt ohne Geometrie', 'Objekte ohne Geometrie'],
  'corner of the slab': ['corner of the slab', 'corners of the slab', 'Ecke der Deckenplatte', 'Ecken der Deckenplatte'],
  'edge on the top': ['edge on the top', 'edges on the top', 'Kante auf der Oberseite', 'Kanten auf der Oberseite'],
  'list of points': ['list of points', 'lists of points', 'Punktliste', 'Punktlisten'],
} as const satisfies Readonly<Record<string, Forms>>;

const POLYLINE: Forms = ['polyline', 'polylines', 'Polylinie', 'Polylinien'];
const CLOSED: Forms = ['closed polyline', 'closed polylines', 'geschlossene Polylinie', 'geschlossene Polylinien'];
const TEXT: Forms = ['text', 'texts', 'Text', 'Texte'];
const FILLED: Forms = ['filled area', 'filled areas', 'gefüllte Fläche', 'gefüllte Flächen'];
const SOLID: Forms = ['solid body', 'solid bodies', 'Volumenkörper', 'Volumenkörper'];
const LEADER: Forms = ['leader', 'leaders', 'Führungslinie', 'Führungslinien'];
const POINT: Forms = ['point', 'points', 'Punkt', 'Punkte'];
const AREA: Forms = ['area', 'areas', 'Fläche', 'Flächen'];
const LINE: Forms = ['line', 'lines', 'Linie', 'Linien'];

/** Names of the file formats themselves: DXF in capitals, GeoJSON, LandXML and IFC as they write them. */
const NAMES: Readonly<Record<string, Forms>> = {
  LINE,
  LWPOLYLINE: POLYLINE,
  'LWPOLYLINE closed': CLOSED,
  POLYLINE,
  'POLYLINE closed': CLOSED,
  POINT,
  TEXT,
  MTEXT: TEXT,
  ATTRIB: TEXT,
  CIRCLE: ['circle', 'circles', 'Kreis', 'Kreise'],
  ARC: ['arc', 'arcs', 'Bogen', 'Bögen'],
  ELLIPSE: ['ellipse', 'ellipses', 'Ellipse', 'Ellipsen'],
  SPLINE: ['free curve', 'free curves', 'freie Kurve', 'freie Kurven'],
  SOLID: FILLED,
  TRACE: FILLED,
  '3DFACE': ['face', 'faces', '3D-Fläche', '3D-Flächen'],
  HATCH: ['hatch', 'hatches', 'Schraffur', 'Schraffuren'],
  INSERT: ['block', 'blocks', 'Block', 'Blöcke'],
  DIMENSION: ['dimension', 'dimensions', 'Bemaßung', 'Bemaßungen'],
  LEADER,
  MLEADER: LEADER,
  MULTILEADER: LEADER,
  IMAGE: ['picture', 'pictures', 'Bild', 'Bilder'],
  WIPEOUT: ['covered area', 'covered areas', 'abgedeckte Fläche', 'abgedeckte Flächen'],
  REGION: ['region', 'regions', 'Region', 'Regionen'],
  '3DSOLID': SOLID,
  BODY: SOLID,
  MESH: ['mesh', 'meshes', 'Netz', 'Netze'],
  MLINE: ['multiple line', 'multiple lines', 'Mehrfachlinie', 'Mehrfachlinien'],
  XLINE: ['endless line', 'endless lines', 'endlose Linie', 'endlose Linien'],
  RAY: ['endless line', 'endless lines', 'endlose Linie', 'endlose Linien'],
  ACAD_TABLE: ['table', 'tables', 'Tabelle', 'Tabellen'],
  OLE2FRAME: ['embedded object', 'embedded objects', 'eingebettetes Objekt', 'eingebettete Objekte'],
  TOLERANCE: ['tolerance frame', 'tolerance frames', 'Toleranzrahmen', 'Toleranzrahmen'],
  Point: POINT,
  MultiPoint: ['group of points', 'groups of points', 'Punktgruppe', 'Punktgruppen'],
  LineString: LINE,
  MultiLineString: ['group of lines', 'groups of lines', 'Liniengruppe', 'Liniengruppen'],
  Polygon: AREA,
  MultiPolygon: ['area of several parts', 'areas of several parts', 'mehrteilige Fläche', 'mehrteilige Flächen'],
  GeometryCollection: ['collection of shapes', 'collections of shapes', 'Sammlung von Formen', 'Sammlungen von Formen'],
  CgPoint: POINT,
  Boundary: ['boundary', 'boundaries', 'Rand', 'Ränder'],
  Breakline: ['breakline', 'breaklines', 'Bruchkante', 'Bruchkanten'],
  Alignment: ['alignment', 'alignments', 'Trasse', 'Trassen'],
  Parcel: ['parcel', 'parcels', 'Flurstück', 'Flurstücke'],
  PlanFeature: ['plan feature', 'plan features', 'Planobjekt', 'Planobjekte'],
  PipeNetwork: ['pipe network', 'pipe networks', 'Leitungsnetz', 'Leitungsnetze'],
  Roadway: ['road', 'roads', 'Straße', 'Straßen'],
  Contour: ['contour line', 'contour lines', 'Höhenlinie', 'Höhenlinien'],
  ...MODEL_NAMES,
  GradeModel: ['grade model', 'grade models', 'Gradientenmodell', 'Gradientenmodelle'],
};

/** What stands behind a name of the file. */
const BEHIND = {
  'in a block': 'in einem Block',
  'in paper space': 'im Papierbereich',
  'set invisible': 'unsichtbar gesetzt',
  tilted: 'gekippt',
  empty: 'leer',
  'without radius': 'ohne Radius',
  'over a whole turn': 'über eine volle Drehung',
  'without size': 'ohne Größe',
  'given by points to pass through': 'durch Stützpunkte gegeben',
  damaged: 'beschädigt',
  'of a kind not known': 'unbekannter Art',
  mesh: 'als Netz',
  'with a bad number': 'mit ungültiger Zahl',
  'out of form': 'in falscher Form',
  'empty or not known': 'leer oder unbekannt',
  'of a block that is not there': 'eines fehlenden Blocks',
  'of another drawing (XREF)': 'einer anderen Zeichnung (XREF)',
  'inside itself': 'in sich selbst',
  'not chosen': 'nicht gewählt',
  'not under the slab': 'nicht unter der Decke',
} as const;

export type WholeKind = keyof typeof WHOLE;
export type KindNote = keyof typeof BEHIND;

/** A counted kind: the file's name for it, with a note. */
export function notedKind(name: string, note: KindNote): string {
  return `${name.slice(0, 40)} ${note}`;
}

/** A polyline that the file itself says is closed. */
export const closedKind = (name: string): string => `${name} closed`;

/** Longest first: one note may end another. */
const NOTES = (Object.keys(BEHIND) as KindNote[]).sort((a, b) => b.length - a.length);

const TELLS = {
  en: (count: number, [one, several]: Forms) => someEn(count, one, several),
  de: (count: number, [, , eins, mehrere]: Forms) => someDe(count, eins, mehrere),
} as const satisfies Record<Language, unknown>;
const COUNTS = { en: countEn, de: countDe } as const satisfies Record<Language, unknown>;

/** So many of a kind, e.g. `3 closed polylines`; a name that has no words here stands for itself. */
export function kindCount(kind: string, count: number, language: Language): string {
  if (Object.hasOwn(WHOLE, kind)) return TELLS[language](count, WHOLE[kind as WholeKind]);
  if (Object.hasOwn(NAMES, kind)) return TELLS[language](count, NAMES[kind]);
  const note = NOTES.find((one) => kind.endsWith(` ${one}`));
  if (note === undefined) return `${COUNTS[language](count)} × ${kind}`;
  return `${kindCount(kind.slice(0, -note.length - 1), count, language)} ${language === 'de' ? BEHIND[note] : note}`;
}

/** Kinds with their counts in one text, which can be told again in another language. */
export function kindsText(counts: readonly (readonly [kind: string, count: number])[]): string {
  return counts.map(([kind, count]) => `${count}\t${kind}`).join('\n');
}

/** Such a text told. */
export const kindsTold = (text: string, language: Language) =>
  text
    .split('\n')
    .map((line) => line.split('\t'))
    .map(([count, kind = '']) => kindCount(kind, Number(count), language))
    .join(', ');
