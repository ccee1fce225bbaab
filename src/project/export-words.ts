/** Words of the tables that are saved, in English and German. */

import type { ExportLanguage } from '../model/engine.ts';
import type { ExportTableId } from '../model/export-table.ts';

interface TableWords {
  readonly title: string;
  readonly heads: readonly string[];
  readonly note: string;
}

interface ExportWords {
  readonly tables: Readonly<Record<ExportTableId, TableWords>>;
  readonly loose: string;
  readonly by: Readonly<Record<'volume' | 'weight', string>>;
  readonly outlet: Readonly<Record<'outlet' | 'overflow', string>>;
  readonly confirmed: string;
  readonly notConfirmed: string;
}

const NO_CHECK_EN = 'Compares entered loads with entered limits. Not a structural check: the structural engineer and local rules decide.';
const NO_CHECK_DE =
  'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Kein Standsicherheitsnachweis: Es entscheiden Tragwerksplaner und örtliche Vorschriften.';
const NO_DRAINAGE_EN = 'No drainage design: the drainage engineer and the local code decide.';
const NO_DRAINAGE_DE = 'Keine Entwässerungsplanung: Es entscheiden Entwässerungsplaner und örtliche Vorschriften.';
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
    'run-off': {
      title: 'Run-off',
      heads: [
        'zone',
        'area m²',
        'held m³',
        'free l/m²',
        'peak coefficient',
        'row of the table',
        'design rain l/s',
        'annual coefficient',
        'row of the table, year',
        'm³ a year',
        'flow in the drainage l/(s·m)',
        'it carries l/(s·m)',
      ],
      note: `Peak coefficients for litres per second, annual ones for cubic metres a year: never one for the other. ${NO_DRAINAGE_EN} ${NO_CHECK_EN}`,
    },
    outlets: {
      title: 'Outlets',
      heads: ['outlet', 'kind', 'drains m²', 'must take l/s', 'takes l/s', 'use %', 'runs at m', 'water then mm'],
      note: `Outlets: design rain, all at work. Overflows: extreme rain less the design flow, outlets blocked. ${NO_DRAINAGE_EN} ${NO_CHECK_EN}`,
    },
    'blocked outlets': {
      title: 'Blocked outlets',
      heads: ['outlet', 'water to level m', 'depth mm', 'area m²', 'water m³', 'then into', 'worst bay', 'kN/m² there', 'use %'],
      note: `One outlet blocked, the others at work. An empty level: nothing lets the water out. Saturated garden and water on the worst patch of 1 m × 1 m. ${NO_DRAINAGE_EN} ${NO_CHECK_EN}`,
    },
  },
  loose: 'm³ loose',
  by: { volume: 'volume', weight: 'weight' },
  outlet: { outlet: 'outlet', overflow: 'overflow' },
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
    'run-off': {
      title: 'Abfluss',
      heads: [
        'Zone',
        'Fläche m²',
        'gespeichert m³',
        'frei l/m²',
        'Spitzenabflussbeiwert',
        'Zeile der Tabelle',
        'Bemessungsregen l/s',
        'Jahresabflussbeiwert',
        'Zeile der Tabelle, Jahr',
        'm³ im Jahr',
        'Durchfluss der Dränung l/(s·m)',
        'möglich l/(s·m)',
      ],
      note: `Spitzenabflussbeiwerte gelten für Liter je Sekunde, Jahresabflussbeiwerte für Kubikmeter im Jahr, nie umgekehrt. ${NO_DRAINAGE_DE} ${NO_CHECK_DE}`,
    },
    outlets: {
      title: 'Abläufe',
      heads: [
        'Ablauf',
        'Art',
        'Einzugsfläche m²',
        'erforderlich l/s',
        'Leistung l/s',
        'Ausnutzung %',
        'springt an bei m',
        'Wasserstand mm',
      ],
      note: `Abläufe: Bemessungsregen, alle in Betrieb. Notüberläufe: Starkregen abzüglich Bemessungsabfluss, Abläufe verstopft. ${NO_DRAINAGE_DE} ${NO_CHECK_DE}`,
    },
    'blocked outlets': {
      title: 'Verstopfte Abläufe',
      heads: [
        'Ablauf',
        'Wasser bis m',
        'Tiefe mm',
        'Fläche m²',
        'Wasser m³',
        'dann über',
        'ungünstigstes Feld',
        'dort kN/m²',
        'Ausnutzung %',
      ],
      note: `Je ein Ablauf verstopft, die anderen in Betrieb. Ohne Höhe: Das Wasser findet keinen Weg. Wassergesättigter Aufbau und Wasser auf dem höchsten Quadratmeter. ${NO_DRAINAGE_DE} ${NO_CHECK_DE}`,
    },
  },
  loose: 'm³ lose',
  by: { volume: 'Volumen', weight: 'Gewicht' },
  outlet: { outlet: 'Ablauf', overflow: 'Notüberlauf' },
  confirmed: 'bestätigt',
  notConfirmed: 'NICHT BESTÄTIGT',
};

export const EXPORT_WORDS: Readonly<Record<ExportLanguage, ExportWords>> = { en: EN, de: DE };
