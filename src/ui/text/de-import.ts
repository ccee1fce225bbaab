/** Sentences of the import page in German. */

import type { DrawingKind, LayerRole } from '../../model/drawing.ts';
import type { DrawnPart, Taking } from '../../model/drawn-parts.ts';
import type { ImportTarget } from '../../store/import-store.ts';
import { numberText } from '../format.ts';
import type { ColumnRole } from './en-import.ts';
import { many } from './en-words.ts';
import type { Texts } from './text.ts';

const KINDS: Readonly<Record<DrawingKind, string>> = {
  dxf: 'Zeichnung (DXF)',
  geojson: 'Karte (GeoJSON)',
  landxml: 'Vermessungsdaten (LandXML)',
  ifc: 'Gebäudemodell (IFC)',
  table: 'Punktliste',
  scene: 'Szene',
};

const ROLES: Readonly<Record<LayerRole, string>> = {
  outline: 'Umriss der Decke',
  openings: 'Öffnungen',
  bays: 'Felder',
  zones: 'Zonen',
  edges: 'Ränder',
  columns: 'Stützen',
  outlets: 'Abläufe',
  levels: 'Höhen',
  trees: 'Bäume',
  axes: 'Achsen eines Rasters',
  ignore: 'ohne Verwendung',
};

const COLUMNS: Readonly<Record<ColumnRole, string>> = {
  id: 'Name, Nr.',
  x: 'x (Ost)',
  y: 'y (Nord)',
  z: 'Höhe',
  layer: 'Art des Punkts',
  '-': 'ohne Verwendung',
};

const COUNTS: Readonly<Record<DrawnPart, (count: number) => string>> = {
  outline: () => 'Umriss der Decke',
  openings: (count) => many(count, 'Öffnung', 'Öffnungen'),
  levels: (count) => many(count, 'Höhe', 'Höhen'),
  bays: (count) => many(count, 'Feld', 'Felder'),
  zones: (count) => many(count, 'Zone', 'Zonen'),
  edges: (count) => many(count, 'Rand', 'Ränder'),
  columns: (count) => many(count, 'Stütze', 'Stützen'),
  outlets: (count) => many(count, 'Ablauf', 'Abläufe'),
  trees: (count) => many(count, 'Baum', 'Bäume'),
};

const TAKINGS: Readonly<Record<Taking, string>> = { add: 'hinzufügen', replace: 'ersetzen', leave: 'weglassen' };

const TARGETS: Readonly<Record<ImportTarget, string>> = {
  new: 'Eine neue Szene',
  into: 'In die offene Szene',
  underlay: 'Linien unter dem Plan, zum Nachzeichnen',
};

const metres = (value: number) => numberText(value, 2);

export const imports: Texts['imports'] = {
  title: (name) => `Gelesen aus ${name}`,
  leave: 'Verlassen, ohne etwas zu übernehmen',
  reading: (name, megabytes) => `${name} wird gelesen, ${numberText(megabytes, megabytes < 10 ? 1 : 0)} MB`,
  readingAgain: 'Wird mit den Antworten noch einmal gelesen',
  share: (share) => `${numberText(Math.floor(100 * share), 0)} %`,
  background: 'Alles andere kann inzwischen weitergehen. Die Datei bleibt auf diesem Gerät.',
  cancel: 'Abbrechen',
  crashed: (name) =>
    `Das Lesen von ${name} brach ab, wahrscheinlich weil der Speicher nicht reichte. Nichts wurde geändert. Bitte einen kleineren Export öffnen: nur die Layer der Decke.`,
  stays: 'Bis zur Übernahme wird nichts geändert.',
  kind: (kind) => KINDS[kind],
  points: (count) => many(count, 'Punkt', 'Punkte'),
  size: (widthM, heightM) => `${metres(widthM)} × ${metres(heightM)} m`,
  corner: (x, y) => `Ecke links unten bei x ${metres(x)}, y ${metres(y)}`,
  before: 'In der Datei',
  after: 'So wird es liegen',
  beforeAfter: 'Zeichnung',
  fileSize: (width, height) => `${numberText(width, 2)} × ${numberText(height, 2)} in den Zahlen der Datei`,
  picture: (which, size) => `${which}: ${size}, Norden oben`,
  north: 'N',
  openDeck: 'Gestrichelt: die Decke der offenen Szene.',
  apart: (metresAway) =>
    `Die Zeichnung liegt ${numberText(metresAway, 0)} m neben der offenen Decke. Bitte Einheit und Achsen prüfen, und ob beide vom selben Punkt zählen.`,
  notDrawn: (count) => `${many(count, 'kleine Linie fehlt', 'kleine Linien fehlen')} nur in diesem Bild.`,
  questions: (count) => many(count, 'offene Frage', 'offene Fragen'),
  questionsSay: 'Die beste Annahme ist gekennzeichnet. Die Zeichnung folgt jeder Antwort.',
  settled: (count) => `Durch die Datei geklärt (${count}); änderbar`,
  guess: 'beste Annahme',
  table: 'Spalten der Liste',
  tableSays: 'Die ersten Zeilen, wie sie in der Datei stehen.',
  column: (name) => `Spalte ${name}`,
  columnRole: (role) => COLUMNS[role],
  layers: (count) => many(count, 'Layer', 'Layer'),
  layersSay: 'Was jeder Layer ist. Aus Namen und Inhalt angenommen; bitte prüfen.',
  layer: 'Layer',
  hidden: 'in der Zeichnung ausgeschaltet',
  used: 'gelesen',
  ignored: 'weggelassen',
  nothing: 'nichts',
  use: 'Verwenden als',
  roleOf: (layer) => `Verwendung von Layer ${layer}`,
  role: (role) => ROLES[role],
  mends: 'Was beim Lesen geändert wurde',
  noMends: 'Nichts wurde geändert.',
  onLayer: (layer, says) => `Layer ${layer}: ${says}`,
  issues: (count) => many(count, 'Hinweis zur Datei', 'Hinweise zur Datei'),
  take: 'Übernehmen',
  target: 'Was daraus wird',
  targetName: (target) => TARGETS[target],
  parts: 'Was übernommen wird',
  part: (part, count) => COUNTS[part](count),
  taking: (taking) => TAKINGS[taking],
  takingOf: (part) => `Was damit geschieht: ${part}`,
  keeps: 'Ersetzte Teile gleichen Namens behalten, was für sie eingegeben wurde.',
  noParts: 'Noch nichts. Bitte einem Layer eine Verwendung geben.',
  bayLoads: (count) =>
    `${many(count, 'Feld kommt', 'Felder kommen')} ohne zulässige Last: bitte aus dem Lastenplan eingeben. Bis dahin gilt es nie als eingehalten.`,
  waitZones: (count) => `Aufbau von ${many(count, 'Zone', 'Zonen')}`,
  starter: 'ein neuer: Schutzvlies, noch zu ergänzen',
  leaveZones: 'die Zonen weglassen',
  waitColumns: (count) => `Größe von ${many(count, 'Stütze', 'Stützen')} ohne gezeichnete Größe`,
  width: 'Breite',
  depth: 'Tiefe',
  waitTrees: (count) => `Gewicht und Verteilung von ${many(count, 'Baum', 'Bäumen')}`,
  mass: 'Gewicht je Baum',
  spread: 'Durchmesser der Verteilung',
  waitEdges: (count) => `Art und Abdichtungsende von ${many(count, 'Rand', 'Rändern')}`,
  edgeKind: 'Art',
  edgeKinds: (kind) => ({ upstand: 'Aufkantung', threshold: 'Türschwelle' })[kind],
  membraneTop: 'Oberkante der Abdichtung',
  leftUntil: 'Ohne diese Angaben werden sie weggelassen.',
  entryWrong: 'Bitte eine Zahl über 0 eingeben.',
  levelWrong: 'Bitte eine Höhe in Metern eingeben.',
  withErrors: 'Bitte zuerst beheben, was unter der Zeichnung steht: Mit einem Fehler dort kann nichts übernommen werden.',
  toNew: 'Szene beginnen',
  toInto: 'In die Szene übernehmen',
  toUnderlay: 'Unter den Plan legen',
  refused: 'Es wurde nicht übernommen. Die Szene bleibt, wie sie war.',
  history: 'Was gelesen und berichtigt wurde',
  historySays: 'Steht in der Szene, seit sie aus Zeichnungen gelesen wurde.',
};
