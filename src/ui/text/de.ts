/** Every sentence the user reads, in German, as the trade speaks on site. */

import { dayIn } from '../../model/date-text.ts';
import {
  areaText,
  coordinateText,
  levelText,
  loadNumber,
  mmText,
  numberText,
  percentText,
  quantityOf,
  quantityText,
  thicknessOf,
  unitText,
  wholePercent,
} from '../format.ts';
import { edit, edits, newScene } from './de-edits.ts';
import { exports, settings } from './de-export.ts';
import { file } from './de-file.ts';
import { help } from './de-help.ts';
import { imports } from './de-import.ts';
import { live } from './de-live.ts';
import { buildUpTexts } from './de-materials.ts';
import { draw } from './de-plan.ts';
import { sceneTexts } from './de-scenes.ts';
import { section } from './de-section.ts';
import { columns, edges, heaps, probes, sources, takeoff } from './de-sheets.ts';
import { siteTexts } from './de-site.ts';
import { stageEditor } from './de-stages.ts';
import { lighten, variants } from './de-variants.ts';
import { savedViews } from './de-views.ts';
import { walk } from './de-walk.ts';
import { water } from './de-water.ts';
import { wheels } from './de-wheels.ts';
import {
  allOf,
  basisShort,
  basisText,
  CASE_NAMES,
  JUDGEMENTS,
  LIMITS,
  MAP_BASES,
  MAP_GROUP_NAMES,
  MAP_NAMES,
  MAP_QUANTITIES,
  margin,
  missingText,
  OTHERS,
  PARTS,
  RULES,
  STATUS,
} from './de-words.ts';
import { list, many } from './en-words.ts';
import type { Texts } from './text.ts';

export const de: Texts = {
  app: {
    name: 'Loamdeck',
    title: (scene) => `${scene} – Loamdeck`,
    statement: 'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Kein Standsicherheitsnachweis.',
    statementShort: 'Kein Standsicherheits\u00ADnachweis.',
    statementFull:
      'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Kein Standsicherheitsnachweis. Es entscheiden der Tragwerksplaner und die örtlichen Vorschriften.',
    noScene: 'Keine Szene geöffnet',
    working: 'Es wird gerechnet…',
    follows: { tables: 'Tabellen folgen…', map: 'Die Karte folgt…', section: 'Der Schnitt folgt…' },
    skip: 'Zu den Tabellen springen',
    language: 'Sprache',
  },
  ...sceneTexts,
  number: {
    refused: (read) => {
      if (read.why === 'empty') return 'Bitte eine Zahl eingeben.';
      if (read.why === 'no unit') return 'Fuß oder Zoll? Bitte ft, in, mm, cm oder m hinter die Zahl schreiben.';
      if (read.why === 'ambiguous')
        return `Das könnte ${read.small.replace('.', ',')} oder ${read.large} heißen. Bitte eines davon eingeben.`;
      return 'Das ist keine Zahl. Gelesen werden Ziffern mit einem Dezimalkomma oder Dezimalpunkt.';
    },
    outOfRange: (min, max, unit) => `Bitte eine Zahl von ${min} bis ${max} ${unit} eingeben.`,
    less: (label) => `${label}: weniger`,
    more: (label) => `${label}: mehr`,
  },
  core: {
    title: 'Schichtprofil',
    emptyTitle: 'Eine Stelle auf der Decke wählen',
    emptyHow:
      'Ins Modell klicken oder tippen oder eine Tabellenzeile wählen: Jede Stelle zeigt ihre Lagen im Maßstab und ihr Gewicht Zeile für Zeile.',
    place: (x, y) => `x ${coordinateText(x)}, y ${coordinateText(y)} m`,
    cell: (column, row) => `Spalte ${column}, Reihe ${row}`,
    zone: (name) => `Zone ${name}`,
    share: (share) => `${percentText(share)} der Zelle`,
    noZone: 'Hier liegt kein Aufbau: die bloße Decke.',
    stage: (number, name) => `Wie in Bauzustand ${number}, ${name}`,
    finishedGarden: 'Fertige Anlage',
    finished: (m) => `Fertighöhe ${levelText(m)}`,
    membrane: (m) => `Abdichtung ${levelText(m)}`,
    drawing: (names) => `Säule der Lagen von oben nach unten: ${names}. Die Tabelle darunter hat jede Zahl.`,
    layerLine: ({ thicknessMm, intoVoidsLm2, dryKNm2, saturatedKNm2, makeUp }) =>
      `${thicknessOf(thicknessMm)} ${makeUp ? 'Ausgleich ' : ''}${intoVoidsLm2 > 0 ? '+ Hohlräume ' : ''}· ${loadNumber(dryKNm2)} / ${loadNumber(saturatedKNm2)}`,
    labelsSay: 'Beschriftung: Dicke · trocken / wassergesättigt, kN/m².',
    notYet: 'noch nicht eingebaut',
    thin: 'Markierte Lagen sind dicker gezeichnet, als sie sind.',
    sumTitle: 'Gewicht Zeile für Zeile',
    layer: 'Lage',
    mm: 'mm',
    dry: 'trocken',
    saturated: 'gesättigt',
    unit: 'kN/m²',
    total: 'Summe',
    other: (kind, id) => OTHERS[kind](id),
    unexplained: 'Aus den Zeilen nicht erklärt',
    rounding: 'Die Zeilen sind so gerundet, dass sie die Summe ergeben.',
    bay: (bay) => `Feld ${bay}`,
    noBay: 'Hier ist kein Feld: Nichts sagt, was die Decke trägt.',
    patch: 'Fläche 1 × 1 m',
    permitted: 'Zulässig',
    noPermitted: 'keine zulässige Last angegeben',
    limitOf: 'Grenzwert für',
    limitName: (kind) => LIMITS[kind] ?? kind,
    basis: 'Grundlage',
    left: margin,
    close: 'Gewählte Stelle aufheben',
  },
  basis: {
    short: (basis, missing) => (basis === undefined || missing.length > 0 ? missingText(missing) : basisText({ ...basis, by: '' })),
    given: (basis, missing) => (basis === undefined || missing.length > 0 ? missingText(missing) : basisText(basis)),
  },
  judgement: (judgement) => JUDGEMENTS[judgement],
  thickness: {
    title: 'Dicken',
    of: (zones) => {
      const shown = zones.slice(0, 6);
      const rest = zones.length - shown.length;
      return `In ${many(zones.length, 'Zone', 'Zonen')}: ${rest > 0 ? `${shown.join(', ')} und ${rest} weiteren` : list(shown, 'und')}`;
    },
    choose: 'Aufbau',
    field: (name) => `Dicke von ${name}`,
    nominal: (min, max) => `Ausgleich, ${mmText(min)} bis ${mmText(max)}; dies ist die Nenndicke`,
    none: 'Keine Lage dieses Aufbaus hat eine einstellbare Dicke.',
    layers: (count) => (count === 1 ? 'Die eine Lage' : `${allOf(count, 'Lagen')}, von oben nach unten`),
    source: (source) => `Quelle: ${source}`,
  },
  map: {
    label: 'Karte',
    none: 'Keine',
    noMap: 'Keine Karte',
    group: (group) => MAP_GROUP_NAMES[group],
    name: (kind) => MAP_NAMES[kind],
    quantity: (kind) => MAP_QUANTITIES[kind],
    basis: (kind) => MAP_BASES[kind],
    unit: (unit) => (unit === '-' ? '%' : unitText(unit)),
    place: 'Karte gezeichnet',
    top: 'obenauf',
    slab: 'auf Decke',
  },
  legend: {
    title: 'Legende',
    rolesTitle: 'Lagen und Teile',
    stage: (number, name) => `Bauzustand ${number}, ${name}`,
    finished: 'Fertige Anlage',
    allStages: 'Alle Bauzustände',
    unit: (unit) => `Einheit: ${unit}`,
    upTo: (limit) => `bis ${limit}`,
    above: (limit) => `über ${limit}`,
    range: (from, to) => `${from} bis ${to}`,
    overWord: 'über Grenzwert',
    overShort: 'über',
    spread: (min, mean, max) => `Kleinster ${min}, Mittel ${mean}, größter ${max}`,
    cells: (count, cellM) => `${many(count, 'Zelle', 'Zellen')} von ${quantityText(cellM * 1000, 'mm')}`,
    noData: (count, areaM2) =>
      count === 0 ? 'ohne Wert: keine Zelle' : `ohne Wert: ${many(count, 'Zelle', 'Zellen')}, ${areaText(areaM2)}`,
    unconfirmed: 'nicht bestätigt',
    bases: (bases) => `Zulässige Lasten: ${list(bases.map(basisShort), 'und')}`,
    empty: 'Hier hat keine Zelle einen Wert.',
    waiting: 'Die Karte wird berechnet…',
    hide: (name) => `${name} ausblenden`,
    show: (name) => `${name} einblenden`,
    only: (name) => `Nur ${name} zeigen`,
    onlyWord: 'nur',
    hiddenWord: 'verborgen',
    showAll: 'Alles zeigen',
    exploded: 'Dünne Bahnen sind dicker gezeichnet, als sie sind.',
  },
  tools: {
    title: 'Ansicht',
    explode: 'Fächern',
    explodeField: 'Aufgefächert um',
    cut: 'Anschnitt',
    cutPlace: 'Lage des Anschnitts',
    cutLook: 'Blick',
    looks: { 0: 'nach +y', 90: 'nach +x', 180: 'nach −y', 270: 'nach −x' },
    home: 'Gesamt',
    plan: 'Plan',
    side: 'Seite',
    help: 'Hilfe',
    percent: (ratio) => percentText(ratio),
    starting: 'Das Modell wird gezeichnet…',
    lost: 'Der Grafiktreiber hat das Bild verloren. Es wird neu gezeichnet; die Tabellen arbeiten weiter.',
    unavailable:
      'Hier gibt es kein 3D: Dieser Browser oder dieses Gerät bietet kein WebGL2. Der Plan unten, die Tabellen und alle Prüfungen arbeiten trotzdem.',
    region: 'Modell der Decke',
  },
  tabs: {
    title: 'Tabellen',
    core: 'Profil',
    bays: 'Felder',
    findings: 'Befunde',
    zones: 'Zonen',
    cells: 'Zellen',
    heaps: 'Haufwerke',
    edges: 'Ränder',
    site: 'Baustelle',
    wheels: 'Räder',
    water: 'Wasser',
    takeoff: 'Massen',
    probes: 'Messungen',
    sources: 'Quellen',
    stage: 'Bauzustände',
    stops: (count) => many(count, 'Befund mit Stopp', 'Befunde mit Stopp'),
  },
  bays: {
    allWithin: (bays, bases) =>
      bays === 1
        ? `Das eine Feld hält die zulässige Last ein: ${list(bases.map(basisShort), 'und')}`
        : `${allOf(bays, 'Felder')} halten die zulässigen Lasten ein: ${list(bases.map(basisShort), 'und')}`,
    allWithinAdd: 'In der fertigen Anlage und in jedem Bauzustand.',
    otherStops: (count) => `${many(count, 'Stopp', 'Stopps')} außer den Lasten der Felder: siehe Befunde.`,
    notChecked: (parts) => `Nicht Teil dieses Ergebnisses: ${parts.join('; ')}.`,
    counts: ({ over, notConfirmed, noLimit, within }) =>
      [
        `${over} überschritten`,
        ...(notConfirmed > 0 ? [`${notConfirmed} nicht bestätigt`] : []),
        ...(noLimit > 0 ? [`${noLimit} ohne zulässige Last`] : []),
        `${within} eingehalten`,
      ].join(', '),
    overUnconfirmed: (count) =>
      count === 1
        ? 'Von den überschrittenen ist 1 Feld auch nicht bestätigt.'
        : `Von den überschrittenen sind ${numberText(count, 0)} Felder auch nicht bestätigt.`,
    none: 'Diese Szene hat keine Felder: Nichts sagt, was die Decke trägt.',
    noneAdd:
      'Felder und ihre zulässigen Lasten werden unter „Bearbeiten“, „Plan“ eingegeben: gezeichnet oder aus den Achsen des Lastenplans gebildet.',
    column: 'Feld',
    load: 'Last und zulässig, kN/m²',
    utilisation: 'Ausnutzung',
    caption: 'Felder, das ungünstigste zuerst: Last, zulässige Last mit Grundlage, Ausnutzung',
    of: (load, permitted) => `${loadNumber(load)} von ${loadNumber(permitted)}`,
    withoutLimit: (load) => `${loadNumber(load)}, keine zulässige Last`,
    governing: (kind) => CASE_NAMES[kind],
    stage: (number, name) => `Bauzustand ${number}, ${name}`,
    status: (status) => STATUS[status],
    margin,
    pick: (id) => `Zu Feld ${id} gehen`,
    band: (low, high, ofGoverning) => {
      // Word joiners keep the two ends in one line.
      const band = `${wholePercent(low)}\u2060–\u2060${wholePercent(high)}\u202F%`;
      return ofGoverning ? `Toleranzen: ${band}` : `fertige Anlage, Toleranzen: ${band}`;
    },
    bandOver: 'kann innerhalb der Toleranzen überschritten sein',
    note: ({ confirmed, permanent, total }) => {
      if (!confirmed) return 'nicht bestätigt';
      if (permanent.permittedKNm2 !== null) return quantityOf(permanent.permittedKNm2, 1, 'kN/m²');
      return total ? `gesamt ${quantityOf(total.permittedKNm2, 1, 'kN/m²')}` : 'keine zulässige Last';
    },
  },
  findings: {
    none: 'Kein Befund. Das heißt nur, dass die eingegebenen Zahlen keine Regel dieser Version verletzen.',
    severity: { stop: 'Stopp', check: 'Prüfen', note: 'Hinweis' },
    meaning: { stop: 'darf so nicht gebaut werden', check: 'jemand muss es ansehen', note: 'zur Kenntnis' },
    group: (severity, count) => `${severity} · ${numberText(count, 0)}`,
    zone: (id) => `Zone ${id}`,
    bay: (id) => `Feld ${id}`,
    stage: (id) => `Bauzustand ${id}`,
    stageNamed: (number, name, id) => `Bauzustand ${number}, ${name} (${id})`,
    object: (id) => `Objekt ${id}`,
    at: (x, y) => `x ${coordinateText(x)}, y ${coordinateText(y)} m`,
    rule: (rule, count) => (count === 1 ? RULES[rule] : `${RULES[rule]} · ${numberText(count, 0)}`),
    source: (rule, source) => (source === '' ? `Regel ${rule}` : `Regel ${rule} · ${source}`),
    more: (count) => `${numberText(count, 0)} weitere zeigen`,
    whole: 'Die Szene als Ganzes',
  },
  zones: {
    caption: 'Zonen: Fläche, Dicke, wassergesättigte Last, Fertighöhe; jede lässt sich ausblenden oder allein zeigen',
    zone: 'Zone',
    area: 'm²',
    depth: 'Aufbau\u00ADhöhe, mm',
    load: 'Gesättigt, kN/m²',
    range: (min, max) => `${min} bis ${max}`,
    short: (areaM2) => `${areaText(areaM2)} zu dick für die Fertighöhe`,
    over: (areaM2) => `${areaText(areaM2)} nicht bis zur Fertighöhe gefüllt`,
    pick: (name) => `Zu Zone ${name} gehen`,
    hide: (name) => `Zone ${name} ausblenden`,
    unhide: (name) => `Zone ${name} einblenden`,
    only: (name) => `Nur Zone ${name} zeigen`,
    none: 'Diese Szene hat keine Zonen.',
  },
  cells: {
    chooseMap: 'Diese Tabelle führt die Werte einer Karte auf. Bitte eine wählen:',
    scope: 'Welche Zellen',
    highest: 'Höchste',
    lowest: 'Niedrigste',
    towards: (bearingDeg) => `Richtung ${numberText(bearingDeg, 0)}°`,
    inBay: (bay) => `Feld ${bay}`,
    shown: (shown, all, lowFirst) =>
      `${numberText(shown, 0)} von ${many(all, 'Zelle', 'Zellen')} gezeigt, ${lowFirst ? 'niedrigste' : 'höchste'} zuerst`,
    caption: (quantity, unit, stage) => `${quantity}, ${unit}. ${stage}.`,
    column: 'Sp.',
    row: 'Reihe',
    value: 'Wert',
    remark: 'Bemerkung',
    over: 'über',
    unconfirmed: 'nicht bestätigt',
    pick: (column, row) => `Spalte ${column}, Reihe ${row}`,
    none: 'Keine Zelle hat einen Wert.',
  },
  stage: {
    title: 'Bauzustände',
    list: 'Bauzustände; die Pfeiltasten wechseln den Bauzustand',
    play: 'Bauzustände abspielen',
    pause: 'Anhalten',
    previous: 'Voriger Bauzustand',
    next: 'Nächster Bauzustand',
    finished: 'Fertige Anlage',
    number: (number, all) => `Bauzustand ${number} von ${all}`,
    worst: (ratio, bay, judgement) => `Höchstens ${percentText(ratio)} in Feld ${bay}, ${JUDGEMENTS[judgement]}`,
    worstUnconfirmed: (ratio, bay) => `Höchstens ${percentText(ratio)} in Feld ${bay}, nicht bestätigt`,
    unconfirmed: (count) => many(count, 'Feld ist nicht bestätigt', 'Felder sind nicht bestätigt'),
    sheetOpen: 'Blatt öffnen',
    sheetClose: 'Blatt schließen',
    lays: 'Eingebaut',
    laysLine: (name, areaM2) => `${name} ${areaText(areaM2)}`,
    laysFull: (areaM2, volumeM3) => `${areaText(areaM2)}, ${quantityText(volumeM3, 'm³')} eingebaut`,
    objects: 'Aufgestellt',
    nothing: 'In diesem Bauzustand wird nichts eingebaut.',
    stockpiles: 'Haufwerke',
    floodTitle: 'Flutprobe',
    stockpile: (id, material, heightM) => `${id}: ${material}, ${numberText(heightM, 2)} m hoch`,
    flood: (mm) => `Flutprobe: ${mmText(mm)} Wasser`,
    holds: 'Haltepunkte',
    hold: (id, says) => `${id} ${says}`,
    released: (by, on) =>
      by === '' ? `freigegeben am ${dayIn(on, 'de')}, von wem ist nicht genannt` : `freigegeben durch ${by} am ${dayIn(on, 'de')}`,
    open: (by) => (by === '' ? 'offen: nicht freigegeben' : `offen: freizugeben durch ${by}`),
    evidence: (evidence) => `Beleg: ${evidence}`,
    openCount: (count) => many(count, 'offener Haltepunkt', 'offene Haltepunkte'),
    cautions: 'Vorsicht',
    cautionCount: (count) => many(count, 'Warnhinweis', 'Warnhinweise'),
    stockpileCount: (count) => many(count, 'Haufwerk', 'Haufwerke'),
    derived: 'Bauzustände aus den Aufbauten abgeleitet: Die Datei nennt keine.',
    gardenSays: 'Alles ist eingebaut; kein Haufwerk und keine Flutprobe ist übrig.',
    weight: (placedKN) => `${quantityText(placedKN, 'kN')} eingebaut, wassergesättigt`,
  },
  plan: {
    label: 'Plan der Decke mit Zonen, Feldern und Abläufen. Mit der Tastatur lassen sich Stellen in den Tabellen wählen.',
  },
  live,
  help,
  draw,
  file,
  edit,
  edits,
  stageEditor,
  savedViews,
  newScene,
  imports,
  variants,
  lighten,
  empty: {
    title: 'Was auf der Decke liegt und was die Decke tragen darf',
    says: 'Eine Szene mit einer begrünten Decke öffnen: ihre Lagen in 3D, die Last jeder Zelle gegen die zulässige Last ihres Feldes, in der fertigen Anlage und in jedem Bauzustand.',
    working: 'Die Szene wird geöffnet…',
  },
  heaps,
  columns,
  edges,
  wheels,
  water,
  takeoff,
  probes,
  sources,
  section,
  exports,
  settings,
  ...siteTexts,
  ...buildUpTexts,
  part: (kind) => PARTS[kind],
  walk,
};
