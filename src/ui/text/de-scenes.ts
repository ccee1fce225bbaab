/** Opening scenes and what could not be opened, in German. */

import { many } from './en-words.ts';
import type { Texts } from './text.ts';

const DEMO_NAMES: Readonly<Record<string, string>> = {
  terrace: 'Kleine Terrasse',
  courtyard: 'Innenhof über einer Tiefgarage',
  'problem-deck': 'Problemdecke: von jeder Art ein Fehler',
  district: 'Quartiersdecke, 1,5 ha',
};

export const sceneTexts: Pick<Texts, 'scenes' | 'refusal'> = {
  scenes: {
    button: 'Szenen',
    title: 'Szene öffnen',
    demos: 'Erfundene Beispielszenen',
    demoName: (id) => DEMO_NAMES[id] ?? id,
    openFile: 'Datei öffnen…',
    dropHint:
      'Oder eine Datei irgendwo auf diese Seite ziehen: eine Szene, eine Zeichnung (DXF), ein Gebäudemodell (IFC), eine Karte (GeoJSON), Punkte (CSV, XYZ, LandXML). Sie bleibt auf diesem Gerät.',
    veil: 'Eine Datei hier ablegen, um sie zu öffnen',
    folder: 'Das ist ein Ordner, erwartet wurde eine Datei.',
    several: (count) => `Erwartet wurde eine Datei, gegeben wurden ${count}. Mehrere Dateien nacheinander lesen.`,
    noFile: 'Das Abgelegte ist keine Datei. Bitte als Datei speichern und diese ablegen.',
    unreadable: (name) => `${name} konnte nicht gelesen werden. Bitte prüfen, ob es die Datei noch gibt und ob sie geöffnet werden darf.`,
    demoFailed: (name) => `Die Beispielszene „${name}“ konnte nicht geladen werden. Bitte die Verbindung prüfen und noch einmal versuchen.`,
  },
  refusal: {
    title: (fileName) => `${fileName} wurde nicht geöffnet`,
    titleEdit: 'Diese Änderung wurde nicht übernommen',
    stays: 'Die vorher geöffnete Szene bleibt, wie sie war.',
    issues: (count) => many(count, 'Punkt zu beheben', 'Punkte zu beheben'),
    close: 'Schließen',
    warnings: (count) => many(count, 'Hinweis zur Datei', 'Hinweise zur Datei'),
    copy: 'Liste kopieren',
    copied: 'Kopiert',
  },
};
