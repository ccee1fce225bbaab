/** Opening scenes and what could not be opened, in German. */

import { numberText } from '../format.ts';
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
    dropHint: 'Oder eine *.scene.json-Datei irgendwo auf diese Seite ziehen. Sie bleibt auf diesem Gerät.',
    veil: 'Eine Szenendatei hier ablegen, um sie zu öffnen',
    folder: 'Das ist ein Ordner. Bitte die eine *.scene.json-Datei daraus ablegen.',
    several: (count) => `Es kamen ${count} Dateien zugleich. Bitte immer nur eine Szenendatei ablegen.`,
    noFile: 'Das Abgelegte ist keine Datei. Bitte als *.scene.json-Datei speichern und diese ablegen.',
    tooLarge: (name, sizeMB, limitMB) =>
      `${name} hat ${numberText(sizeMB, 1)} MB; eine Szenendatei darf ${limitMB} MB haben. Bitte prüfen, ob es eine Szene ist und keine Zeichnung und kein Modell.`,
    unreadable: (name) => `${name} konnte nicht gelesen werden. Bitte prüfen, ob es die Datei noch gibt und ob sie geöffnet werden darf.`,
    notText: (name) => `${name} ist keine Textdatei in UTF-8. Bitte als UTF-8-Text speichern oder die *.scene.json-Datei wählen.`,
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
