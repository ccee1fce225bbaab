/** The summary of a check in German. */

import { dayIn } from '../../model/date-text.ts';
import type { SummaryWords } from './en-summary.ts';

export const SUMMARY_DE: SummaryWords = {
  notACheck:
    'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Kein Standsicherheitsnachweis: Es entscheiden Tragwerksplaner und örtliche Vorschriften.',
  deck: (areaM2, zonedM2, cells, cellM) => `Decke ${areaM2} m², davon ${zonedM2} m² mit Aufbau; ${cells} Zellen von ${cellM} m`,
  weight: (dryKN, saturatedKN, objectsKN) =>
    `Gewicht ${dryKN} kN trocken, ${saturatedKN} kN wassergesättigt, davon Objekte ${objectsKN} kN`,
  verdict: (over, open, within) => `Felder: ${over} überschritten, ${open} nicht bestätigt, ${within} innerhalb der zulässigen Lasten`,
  notChecked: (list) => `Nicht Teil dieses Ergebnisses: ${list}`,
  bays: 'Felder, das ungünstigste zuerst (kN/m² auf dem ungünstigsten Bereich von 1 m × 1 m, wassergesättigt; Nutzlast: die größte, die eine Zone darauf tragen soll)',
  baysHead: [
    'Feld',
    'ständig',
    'zulässig',
    'Ausn.',
    'Nutzlast',
    'zulässig',
    'Ausn.',
    'ungünstigster Zustand',
    'dort',
    'zulässig',
    'Ausn.',
    'Grundlage',
  ],
  inAll: (kNm2) => `${kNm2} insgesamt`,
  basis: (document, revision, date) => `${document}, Index ${revision}, ${dayIn(date, 'de')}`,
  notConfirmed: 'NICHT BESTÄTIGT',
  zones: 'Zonen (wassergesättigt, kN/m²)',
  zonesHead: ['Zone', 'Fläche m²', 'Aufbauhöhe mm', 'Ausgleich mm', 'kleinste', 'mittlere', 'größte', 'speichert l/m²'],
  stages: 'Bauzustände',
  stagesHead: ['', 'Bauzustand', 'eingebaut kN', 'ungünstigstes Feld', 'Ausn.'],
  noFindings: 'Keine Befunde.',
  findings: (stop, check, note) => `Befunde: ${stop} × Stopp, ${check} × Prüfen, ${note} × Hinweis`,
  severity: { stop: 'Stopp', check: 'Prüfen', note: 'Hinweis' },
  at: (place) => `[bei ${place}]`,

  columns: [
    'Stützen: ständige Last, wassergesättigt, der jeder Stütze nächsten Deckenfläche, die schwerste zuerst. Wände unter der Decke sind hier nicht',
    'bekannt. Keine Auflagerkraft und kein Nachweis: Das Durchstanzen beurteilt der Tragwerksplaner.',
  ],
  columnsHead: ['Stütze', 'Fläche m²', 'kN', 't'],

  edges: 'Schwellen und Aufkantungen (mm, um die die Abdichtung über der Fertighöhe endet, wie gebaut, an der kleinsten Stelle)',
  edgesHead: ['Rand', 'Art', 'kleinste', 'erforderlich', 'Reserve', 'Zone', 'bei'],
  sill: (drained) => (drained ? 'Schwelle, mit Rinne' : 'Schwelle, ohne Rinne'),
  upstand: 'Aufkantung',
  noneAdjoins: 'keine angrenzend',

  heaps: [
    'Haufwerkshöhen in m, die in jedem Bauzustand eingehalten sind, auf 0,05 m abgerundet, zusätzlich zu allem, was dann auf dem ungünstigsten',
    'Bereich von 1 m × 1 m des Feldes liegt (Lagen, Objekte, eigene Haufwerke); Material wassergesättigt. Höhen je Bauzustand im Bericht (--json).',
    'Nur aus der Last gerechnet: Böschung, Abstand zum Rand, Wind und Reichweite des Geräts können weniger zulassen.',
  ],
  heapsHead: ['Feld', 'engster Zustand'],
  noPermitted: 'keine zulässige Last',
  alreadyOver: (kNm2) => `schon um ${kNm2} kN/m² überschritten`,

  probes:
    'Wie verlegt: gemessene Dicken, der Unterschied als Last wassergesättigt, und die Ausnutzung, wenn der ganze Quadratmeter dort so ist',
  probesHead: ['Messung', 'Zone', 'Lage', 'geplant mm', 'gemessen', 'Unterschied', 'kN/m²', 'Feld', 'dann kN/m²', 'Ausn.', ''],
  wholeDepth: 'gesamt',
  noZoneThere: 'keine Zone dort',
  noLayerThere: 'keine Zone mit solcher Lage dort',
  weighsSame: 'bei jeder Dicke gleich schwer',
  countedAs: (layer) => `gezählt als ${layer}`,

  lanes: 'Feuerwehrzufahrten, wie gezeichnet (es entscheidet die Brandschutzbehörde)',
  lanesHead: ['Zufahrt', 'Regel', 'Breite m', 'verlangt', 'kleinster Außenradius', 'steilste %', 'Stufe mm'],
  straight: 'gerade',
  setUps:
    'Aufstell- und Bewegungsflächen (es entscheidet die Brandschutzbehörde); Drücke eines Rades oder einer Abstützung auf die Abdichtung',
  setUpsHead: [
    'Fläche',
    'Art',
    'Regel',
    'Fahrzeug',
    'm × m',
    'frei',
    'verlangt',
    'steilste %',
    'Stufe mm',
    'Räder kPa',
    'Abstützung kPa',
    'Felder',
  ],
  setUpKind: { 'set-up': 'Aufstellfläche', movement: 'Bewegungsfläche' },
  noRule: 'keine',
  tooShort: 'zu kurz',
  reach: 'Erreichbarkeit zu Beginn des Bauzustands: über befahrbaren Grund, mit Kran oder Schlauch; wie breit ein Weg ist, zählt nicht',
  reachHead: ['Bauzustand', 'Zonen', 'Fläche m²', 'nicht erreichbar m²'],

  takeOff: [
    'Massenermittlung: m² und m³ verlegt und eingebaut; zu bestellen mit Überlappung oder lose. Ohne Aufkantungen und Verschnitt; zweilagige Bahnen',
    'zählen mit ihrer Fläche einmal. Tonnen trocken und wassergesättigt als höchste Masse bei der Anlieferung (Bahnen und Elemente trocken), nach der',
    'die Fuhren zählen. Nach Zone und Bauzustand im Bericht (--json).',
  ],
  takeOffHead: ['Material', 'm²', 'eingebaut m³', 'bestellen', '', 't trocken', 't nass', 'Fuhren', ''],
  price: 'Preis',
  loose: 'm³ lose',
  deliveries: (by, ifDry) => `nach ${by === 'volume' ? 'Volumen' : 'Gewicht'}${ifDry === null ? '' : `, trocken ${ifDry}`}`,

  tolerances: [
    'Toleranzen: Ausnutzung jedes Feldes durch die fertige Anlage, wenn jede Lage so dünn und leicht oder so dick und schwer gerät, wie sie darf. Eine',
    'Ausgleichslage unter fester Fertighöhe hält diese, nur ihre Dichte schwankt; Gewichte je m² (Bahnen, Elemente, Pflanzen) schwanken nicht.',
  ],
  tolerancesHead: ['Feld', 'mindestens', 'geplant', 'höchstens', ''],
  over: 'überschritten',
  couldGoOver: 'könnte überschreiten',

  wheels:
    'Räder (kPa; die am meisten ausgenutzte Lage mit dem, was darüber liegt; auf der Abdichtung nur Räder, verteilt und wie im elastischen Halbraum)',
  wheelsHead: [
    'Linie',
    'Fahrzeug',
    'Bauzustand',
    'Zone',
    'Lage',
    'höchster',
    'trägt',
    'Ausn.',
    'Abdichtung',
    'elastisch',
    'in Feldern kN/m²',
    'zulässig',
  ],

  walls: [
    'Stützwände: Winkelstützen je Meter, entwässerter Boden, charakteristische Werte, ungünstiger von Nutzlast hinter der Wand und auch auf dem Sporn.',
    'Kein Nachweis: Die Wand weist der Tragwerksplaner nach. Last auf der Decke sind Steg und Fußplatte; der Boden darauf zählt mit seiner Zone.',
  ],
  wallsHead: [
    'Rand',
    'Eigen kN/m',
    'Ka',
    'Nutzlast kN/m²',
    'Erddruck kN/m',
    'Gleiten',
    'Kippen',
    'Ausmitte m',
    'ein Sechstel m',
    'höchster kPa',
    'trägt kPa',
    'auf',
  ],
  fallsOver: 'kippt',
  notKnown: 'unbekannt',

  held: (m3, lm2) => `Wasser: ganz gefüllt ${m3} m³ gespeichert, ${lm2} l/m² Decke`,
  heldFree: (m3, lm2, freeM3, percent) =>
    `Wasser: ganz gefüllt ${m3} m³ gespeichert, ${lm2} l/m² Decke; davon ${freeM3} m³ frei, wenn ${percent} % gefüllt`,
  undrained: (m2) => `${m2} m² Decke entwässern zu keinem Ablauf`,
  noRain: 'Die Szene gibt keinen Regen an: Einzugsflächen werden genannt, Abflüsse nicht',
  rain: (design, extreme, source) => `Regen ${design} l/(s·ha), Starkregen ${extreme} l/(s·ha) (${source})`,
  flow: (lps, meanC, table) => `${lps} l/s beim Bemessungsregen, mittlerer Spitzenabflussbeiwert ${meanC} (${table})`,
  yearly: (m3, mm) => `${m3} m³ im Jahr von ${mm} mm (Jahresabflussbeiwerte)`,
  runOff:
    'Abfluss der Zonen (gespeichert m³; Spitzenabflussbeiwert und seine Zeile; Durchfluss der Dränung l/(s·m) am Ende des längsten Weges und möglicher)',
  runOffHead: ['Zone', 'speichert', 'frei l/m²', 'C Spitze', 'l/s', 'Zeile', 'C Jahr', 'm³/Jahr', 'Dränung', 'Durchfluss', 'möglich'],
  carries: (lsm, headMm, ofMm) => `${lsm}, Druckhöhe ${headMm} von ${ofMm} mm`,
  outlets:
    'Abläufe und Notüberläufe (Bemessungsregen, alle in Betrieb; Notüberläufe: Starkregen abzüglich Bemessungsabfluss, Abläufe verstopft)',
  outletsHead: ['', 'Art', 'Fläche m²', 'l/s', 'Leistung', 'Ausn.', 'springt an bei m', 'Wasser mm'],
  outletKind: { outlet: 'Ablauf', overflow: 'Notüberlauf' },
  ponds: (count, most) =>
    `Stehendes Wasser, wo die Decke kein Gefälle zu einem Ablauf hat (${count}${most === null ? '' : `, die tiefsten ${most}`})`,
  pondsHead: ['Zone', 'Tiefe mm', 'Fläche m²', 'Liter', 'bei'],
  blocked: 'Je ein Ablauf verstopft, die anderen in Betrieb (wassergesättigte Anlage und Wasser, ungünstigster Bereich von 1 m × 1 m)',
  blockedHead: ['Ablauf', 'bis Höhe m', 'Tiefe mm', 'Fläche m²', 'm³', 'dann über', 'ungünstigstes Feld', 'kN/m²', 'Ausn.'],
  noEnd: 'ohne Ende',
  uplift: (up, down) => `Auftrieb leichter Lagen (kN/m², trocken; Beiwerte ${up} aufwärts, ${down} abwärts; ab 1 gehalten)`,
  upliftHead: ['Zone', 'Bauzustand', 'Lage', 'Wasser mm', 'hebt', 'hält', 'Verhältnis', 'fehlt'],
  finished: 'fertig',
  noDrainageDesign: 'Keine Entwässerungsplanung: Es entscheiden Entwässerungsplaner und örtliche Vorschriften.',
};
