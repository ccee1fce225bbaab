/** Words of the handover page, in English and German. */

import { dayIn } from '../model/date-text.ts';
import type { ExportLanguage } from '../model/engine.ts';
import type { Severity } from '../model/finding.ts';
import type { SourceGrade } from '../model/source.ts';

export interface HandoverWords {
  readonly title: (scene: string) => string;
  readonly madeOn: (date: string) => string;
  readonly says: string;
  readonly contents: string;
  readonly findings: string;
  readonly findingHeads: readonly string[];
  readonly noFinding: string;
  readonly counts: (stop: number, check: number, note: number) => string;
  readonly severity: Readonly<Record<Severity, string>>;
  readonly notChecked: (parts: string) => string;
  readonly holds: string;
  readonly holdHeads: readonly string[];
  readonly noHolds: string;
  readonly open: string;
  readonly sources: string;
  readonly sourceHeads: readonly string[];
  readonly grade: Readonly<Record<SourceGrade, string>>;
  readonly plan: string;
  readonly section: string;
  readonly pictures: string;
  readonly tables: string;
  readonly files: string;
  readonly fileHeads: readonly string[];
  readonly filesSay: string;
  readonly bytes: (count: string) => string;
  readonly noChecksum: string;
  readonly place: (zone: string, bay: string, stage: string, object: string) => string;
}

const joined = (parts: readonly (readonly [string, string])[]) =>
  parts
    .filter(([, id]) => id !== '')
    .map(([word, id]) => `${word} ${id}`)
    .join(', ');

const EN: HandoverWords = {
  title: (scene) => `Handover: ${scene}`,
  madeOn: (date) => `Made on ${date}`,
  says: 'Compares entered loads with entered limits. Not a structural check: the structural engineer and local rules decide.',
  contents: 'Contents',
  findings: 'Findings',
  findingHeads: ['Weight', 'What', 'Where', 'Source', 'Rule'],
  noFinding: 'No finding. That says only that no rule of this version was broken by the numbers entered.',
  counts: (stop, check, note) => `Stop: ${stop} · Check: ${check} · Note: ${note}`,
  severity: { stop: 'Stop', check: 'Check', note: 'Note' },
  notChecked: (parts) => `Not part of this result: ${parts}.`,
  holds: 'Hold points',
  holdHeads: ['Stage', 'Hold point', 'What', 'Released by', 'On', 'Evidence'],
  noHolds: 'The file names no hold points.',
  open: 'open',
  sources: 'Sources of what this scene rests on',
  sourceHeads: ['Grade', 'Source', 'Numbers'],
  grade: {
    read: 'read',
    secondary: 'secondary',
    'common practice': 'common practice',
    'from memory': 'from memory, not confirmed',
    assumed: 'assumed',
    entered: 'entered in the scene',
    none: 'arithmetic',
  },
  plan: 'Plan',
  section: 'Section',
  pictures: 'Pictures',
  tables: 'Tables',
  files: 'Files in this page',
  fileHeads: ['File', 'Size', 'SHA-256'],
  filesSay: 'Each file can be saved from here. Its checksum must be the one beside it; a file that was changed has another.',
  bytes: (count) => `${count} bytes`,
  noChecksum: 'not calculated: the page it was made on was not opened over a secure connection',
  place: (zone, bay, stage, object) =>
    joined([
      ['zone', zone],
      ['bay', bay],
      ['stage', stage],
      ['object', object],
    ]),
};

const DE: HandoverWords = {
  title: (scene) => `Übergabe: ${scene}`,
  madeOn: (date) => `Erstellt am ${dayIn(date, 'de')}`,
  says: 'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Kein Standsicherheitsnachweis: Es entscheiden Tragwerksplaner und örtliche Vorschriften.',
  contents: 'Inhalt',
  findings: 'Befunde',
  findingHeads: ['Gewicht', 'Was', 'Wo', 'Quelle', 'Regel'],
  noFinding: 'Kein Befund. Das heißt nur: Die eingegebenen Zahlen verletzen keine Regel dieser Fassung.',
  counts: (stop, check, note) => `Stopp: ${stop} · Prüfen: ${check} · Hinweis: ${note}`,
  severity: { stop: 'Stopp', check: 'Prüfen', note: 'Hinweis' },
  notChecked: (parts) => `Nicht Teil dieses Ergebnisses: ${parts}.`,
  holds: 'Haltepunkte',
  holdHeads: ['Bauzustand', 'Haltepunkt', 'Was', 'Freigegeben von', 'Am', 'Nachweis'],
  noHolds: 'Die Datei nennt keine Haltepunkte.',
  open: 'offen',
  sources: 'Quellen, auf denen diese Szene beruht',
  sourceHeads: ['Güte', 'Quelle', 'Zahlen'],
  grade: {
    read: 'gelesen',
    secondary: 'aus zweiter Hand',
    'common practice': 'übliche Praxis',
    'from memory': 'aus dem Gedächtnis, nicht bestätigt',
    assumed: 'angenommen',
    entered: 'in der Szene eingetragen',
    none: 'Rechnung',
  },
  plan: 'Grundriss',
  section: 'Schnitt',
  pictures: 'Bilder',
  tables: 'Tabellen',
  files: 'Dateien in dieser Seite',
  fileHeads: ['Datei', 'Größe', 'SHA-256'],
  filesSay: 'Jede Datei lässt sich von hier speichern. Ihre Prüfsumme muss die danebenstehende sein; eine geänderte Datei hat eine andere.',
  bytes: (count) => `${count} Byte`,
  noChecksum: 'nicht berechnet: Die Seite war nicht über eine gesicherte Verbindung geöffnet',
  place: (zone, bay, stage, object) =>
    joined([
      ['Zone', zone],
      ['Feld', bay],
      ['Bauzustand', stage],
      ['Objekt', object],
    ]),
};

export const HANDOVER_WORDS: Readonly<Record<ExportLanguage, HandoverWords>> = { en: EN, de: DE };
