/** Sätze zum Ausgabeblatt und zu den Einstellungen. */

import type { ExportTableId } from '../../model/export-table.ts';
import type { Texts } from './text.ts';

const TABLES: Readonly<Record<ExportTableId, string>> = {
  'take-off': 'Massen',
  'take-off by zone': 'Massen nach Zonen',
  'take-off by stage': 'Massen nach Bauzuständen',
  bays: 'Felder',
  heaps: 'Haufwerkshöhen',
  columns: 'Stützen',
  edges: 'Ränder',
  'run-off': 'Abfluss',
  outlets: 'Abläufe',
  'blocked outlets': 'Verstopfte Abläufe',
};

export const exports: Texts['exports'] = {
  button: 'Ausgabe',
  title: 'Ausgabe',
  says: 'Die Dateien entstehen auf diesem Gerät und bleiben darauf.',
  close: 'Schließen',
  language: 'Sprache der Dateien',
  picture: 'Bild des Modells',
  pictureSays: 'Wie es jetzt zu sehen ist, mit Legende. PNG.',
  size: 'Größe',
  sizeText: (width, height) => `${width} × ${height}`,
  ownSize: 'Eigene Größe',
  width: 'Breite',
  height: 'Höhe',
  savePicture: 'PNG speichern',
  keepPicture: 'Für die Übergabe merken',
  kept: (count) => (count === 1 ? '1 Bild ist für die Übergabe gemerkt.' : `${count} Bilder sind für die Übergabe gemerkt.`),
  noPicture: 'Kein Bild: Dieser Browser oder dieses Gerät bietet keine 3D-Ansicht oder keine so große.',
  drawings: 'Zeichnungen',
  scale: 'Maßstab des Grundrisses',
  scaleText: (to) => `1 : ${to}`,
  planSvg: 'Grundriss, SVG',
  planDxf: 'Grundriss, DXF',
  sectionSvg: 'Schnitt, SVG',
  sectionDxf: 'Schnitt, DXF',
  noSection: 'Es ist kein Schnitt zu sehen. Mit „Schnitt“ neben dem Modell einen zeichnen.',
  model: 'Modell',
  glb: 'Modell, GLB',
  glbSays: 'Die fertige Anlage in Metern, ein Knoten je Lage und Zone, Lasten in den Extras.',
  tables: 'Tabellen',
  table: 'Tabelle',
  tableName: (id) => TABLES[id],
  csv: 'Tabelle, CSV',
  xlsx: 'Alle Tabellen, Arbeitsmappe',
  files: 'Szene und Bericht',
  scene: 'Szenendatei',
  report: 'Bericht, JSON',
  handover: 'Übergabe',
  handoverSays:
    'Alles in einer Seite, die ohne Server aufgeht: Befunde, Tabellen, Grundriss, Schnitt, Bilder, Haltepunkte, Quellen und die Dateien mit ihren Prüfsummen.',
  html: 'Übergabe, HTML',
  working: 'Die Datei entsteht…',
  of: (scene, stage) => `${scene} · ${stage}`,
  map: (quantity, unit, basis) => `${quantity}, ${unit}. ${basis}.`,
};

export const settings: Texts['settings'] = {
  button: 'Einstellungen',
  title: 'Einstellungen',
  loads: 'Flächenlasten',
  lengths: 'Dicken und Tiefen',
  lengthNames: { mm: 'mm', cm: 'cm', m: 'm', 'ft-in': 'Fuß und Zoll' },
  unitsSay:
    'Nur zum Lesen und Eintippen: Die Tabellen dieser Seite richten sich danach; Szenendatei, Ausgaben, Drucke, Zeichnungen und Herleitungen behalten kN/m², mm und m und nennen sie. 1 t/m² sind 9,81 kN/m², 1 kN/m² sind 20,885 psf. Koordinaten, Höhen und Entfernungen bleiben in Metern.',
  theme: 'Aussehen',
  themes: { paper: 'Papier', projector: 'Beamer', sun: 'Sonne' },
  themesSay:
    'Beamer: kräftige Linien für die Leinwand im hellen Raum. Sonne: Schwarz auf Weiß für den Bildschirm im Freien. Gedruckt wird immer wie auf Papier.',
  motion: 'Bewegung',
  close: 'Schließen',
};
