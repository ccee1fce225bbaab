/** Words of the tables that are saved, in English and German. */

import type { ExportLanguage } from '../model/engine.ts';
import type { ExportTableId } from './export-tables.ts';

interface TableWords {
  readonly title: string;
  readonly heads: readonly string[];
  readonly note: string;
}

interface ExportWords {
  readonly tables: Readonly<Record<ExportTableId, TableWords>>;
  readonly loose: string;
  readonly by: Readonly<Record<'volume' | 'weight', string>>;
  readonly confirmed: string;
  readonly notConfirmed: string;
}

const NO_CHECK_EN = 'Compares entered loads with entered limits. Not a structural check: the structural engineer and local rules decide.';
const NO_CHECK_DE =
  'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Kein Standsicherheitsnachweis: Es entscheiden Tragwerksplaner und örtliche Vorschriften.';
const ORDER_EN =
  'Turn-ups at edges and waste are not in it. A material of two sheets counts its area once. Mass at most is wet through (sheets and elements dry); deliveries are counted by it.';
const ORDER_DE =
  'Ohne Aufkantungen und Verschnitt. Zweilagige Bahnen zählen mit ihrer Fläche einmal. Masse höchstens: wassergesättigt (Bahnen und Elemente trocken); danach zählen die Fuhren.';

const EN: ExportWords = {
  tables: {
    'take-off': {
      title: 'Take-off',
      heads: [
        'material',
        'name',
        'laid m²',
        'placed m³',
        'to order',
        'unit',
        'dry kg',
        'at most kg',
        'deliveries',
        'governed by',
        'deliveries if dry',
        'price',
        'currency',
      ],
      note: `${ORDER_EN} ${NO_CHECK_EN}`,
    },
    'take-off by zone': {
      title: 'Take-off by zone',
      heads: ['zone', 'material', 'name', 'laid m²', 'placed m³'],
      note: NO_CHECK_EN,
    },
    'take-off by stage': {
      title: 'Take-off by stage',
      heads: ['stage', 'material', 'name', 'laid m²', 'placed m³'],
      note: NO_CHECK_EN,
    },
    bays: {
      title: 'Bays',
      heads: [
        'bay',
        'area m²',
        'mean kN/m²',
        'worst cell kN/m²',
        'worst patch of 1 m × 1 m kN/m²',
        'permitted permanent kN/m²',
        'use %',
        'use at least %',
        'use at most %',
        'imposed kN/m²',
        'permitted imposed kN/m²',
        'use in all %',
        'worst stage',
        'there kN/m²',
        'permitted there kN/m²',
        'use there %',
        'basis',
        'document',
        'revision',
        'date',
        'by',
      ],
      note: `Loads saturated. ${NO_CHECK_EN}`,
    },
    heaps: {
      title: 'Heap heights',
      heads: ['bay', 'stage', 'material', 'name', 'height m', 'over by kN/m²', 'basis'],
      note: `Rounded down to 0.05 m, on top of all that lies on the worst patch of 1 m × 1 m at that stage, its own stockpiles included; the material wet through. ${NO_CHECK_EN}`,
    },
    columns: {
      title: 'Columns',
      heads: ['column', 'share m²', 'permanent kN', 'permanent t'],
      note: `Saturated load of the deck area nearest to each column; walls under the deck are not known here. No support reaction; punching is for the structural engineer. ${NO_CHECK_EN}`,
    },
    edges: { title: 'Edges', heads: ['edge', 'least upstand mm', 'required mm', 'at x m', 'at y m'], note: NO_CHECK_EN },
  },
  loose: 'm³ loose',
  by: { volume: 'volume', weight: 'weight' },
  confirmed: 'confirmed',
  notConfirmed: 'NOT CONFIRMED',
};

const DE: ExportWords = {
  tables: {
    'take-off': {
      title: 'Massenermittlung',
      heads: [
        'Material',
        'Bezeichnung',
        'verlegt m²',
        'eingebaut m³',
        'zu bestellen',
        'Einheit',
        'trocken kg',
        'höchstens kg',
        'Fuhren',
        'maßgebend',
        'Fuhren, wenn trocken',
        'Preis',
        'Währung',
      ],
      note: `${ORDER_DE} ${NO_CHECK_DE}`,
    },
    'take-off by zone': {
      title: 'Massen nach Zone',
      heads: ['Zone', 'Material', 'Bezeichnung', 'verlegt m²', 'eingebaut m³'],
      note: NO_CHECK_DE,
    },
    'take-off by stage': {
      title: 'Massen nach Bauzustand',
      heads: ['Bauzustand', 'Material', 'Bezeichnung', 'verlegt m²', 'eingebaut m³'],
      note: NO_CHECK_DE,
    },
    bays: {
      title: 'Felder',
      heads: [
        'Feld',
        'Fläche m²',
        'Mittel kN/m²',
        'höchste Zelle kN/m²',
        'höchster Quadratmeter kN/m²',
        'zulässig ständig kN/m²',
        'Ausnutzung %',
        'Ausnutzung mindestens %',
        'Ausnutzung höchstens %',
        'Nutzlast kN/m²',
        'zulässige Nutzlast kN/m²',
        'Ausnutzung gesamt %',
        'ungünstigster Bauzustand',
        'dort kN/m²',
        'dort zulässig kN/m²',
        'Ausnutzung dort %',
        'Grundlage',
        'Dokument',
        'Index',
        'Datum',
        'von',
      ],
      note: `Lasten wassergesättigt. ${NO_CHECK_DE}`,
    },
    heaps: {
      title: 'Haufwerkshöhen',
      heads: ['Feld', 'Bauzustand', 'Material', 'Bezeichnung', 'Höhe m', 'überschritten um kN/m²', 'Grundlage'],
      note: `Auf 0,05 m abgerundet, zusätzlich zu allem, was in diesem Bauzustand auf dem höchsten Quadratmeter liegt, eigene Haufwerke eingeschlossen; Material wassergesättigt. ${NO_CHECK_DE}`,
    },
    columns: {
      title: 'Stützen',
      heads: ['Stütze', 'Einzugsfläche m²', 'ständig kN', 'ständig t'],
      note: `Wassergesättigte Last der Deckenfläche, die jeder Stütze am nächsten liegt; Wände unter der Decke sind hier nicht bekannt. Keine Auflagerkraft; das Durchstanzen beurteilt der Tragwerksplaner. ${NO_CHECK_DE}`,
    },
    edges: {
      title: 'Anschlüsse',
      heads: ['Rand', 'kleinste Anschlusshöhe mm', 'erforderlich mm', 'bei x m', 'bei y m'],
      note: NO_CHECK_DE,
    },
  },
  loose: 'm³ lose',
  by: { volume: 'Volumen', weight: 'Gewicht' },
  confirmed: 'bestätigt',
  notConfirmed: 'NICHT BESTÄTIGT',
};

export const EXPORT_WORDS: Readonly<Record<ExportLanguage, ExportWords>> = { en: EN, de: DE };
