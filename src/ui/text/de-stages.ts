/** Sentences of the stage editor in German. */

import type { HeapEntry } from '../facts/heap-board.ts';
import { areaText, loadText, numberText, percentText, quantityOf, quantityText } from '../format.ts';
import type { StagesGone } from './en-stages.ts';
import { list, many } from './en-words.ts';
import type { Texts } from './text.ts';

const heightText = (heightM: number) => quantityOf(heightM, 2, 'm');

const goneParts = ({ stockpiles, plant, floodTests, holdPoints, cautions }: StagesGone): string[] => [
  ...(stockpiles > 0 ? [many(stockpiles, 'Haufwerk', 'Haufwerke')] : []),
  ...(plant > 0 ? [many(plant, 'Maschine', 'Maschinen')] : []),
  ...(floodTests > 0 ? [many(floodTests, 'Flutprobe', 'Flutproben')] : []),
  ...(holdPoints > 0 ? [many(holdPoints, 'Haltepunkt', 'Haltepunkte')] : []),
  ...(cautions > 0 ? [many(cautions, 'Warnhinweis', 'Warnhinweise')] : []),
];

const heapAt = ({ state, heightM, overKNm2 }: HeapEntry, more: string, nothing: string) => {
  if (state === 'no limit') return 'keine zulässige Last, also keine Höhe';
  if (state === 'over') return `um ${loadText(overKNm2)} überschritten`;
  return heightM === 0 ? nothing : `${heightText(heightM)} ${more}`;
};

export const stageEditor: Texts['stageEditor'] = {
  list: {
    caption: 'Bauzustände der Reihe nach: ungünstigstes Feld mit Ausnutzung, Befunde',
    stage: 'Bauzustand',
    worst: 'Ungünstigstes Feld',
    findings: 'Befunde',
    choose: (number, name) => `${number} ${name}`,
    keys: 'Alt mit Pfeil auf oder ab verschiebt den gewählten Bauzustand.',
    worstOf: (bay, utilisation) => `${bay} · ${percentText(utilisation)}`,
    over: 'überschritten',
    unconfirmed: 'nicht bestätigt',
    noWorst: 'kein Grenzwert',
    counts: (stops, checks, notes) =>
      [
        ...(stops > 0 ? [many(stops, 'Stopp', 'Stopps')] : []),
        ...(checks > 0 ? [`${numberText(checks, 0)} zu prüfen`] : []),
        ...(notes > 0 ? [many(notes, 'Hinweis', 'Hinweise')] : []),
      ].join(', '),
    none: 'keine',
    drag: 'An eine andere Stelle der Reihenfolge ziehen',
    moved: (name, number, count) => `${name} ist jetzt Bauzustand ${number} von ${count}.`,
    tools: 'Der gewählte Bauzustand',
    before: 'Davor einfügen',
    after: 'Danach einfügen',
    first: 'Bauzustand hinzufügen',
    copy: 'Kopieren',
    remove: 'Entfernen',
    earlier: 'Früher',
    later: 'Später',
    newName: (number) => `Bauzustand ${number}`,
    copyName: (name) => `${name}, noch einmal`,
  },
  derive: {
    derived: 'Die Datei nennt keine Bauzustände. Diese folgen aus den Aufbauten: einer je Art der Lage, von unten nach oben.',
    nothing: 'Ohne Lagen lässt sich kein Bauzustand ableiten. Bitte Zonen mit einem Aufbau zeichnen oder einen Bauzustand hinzufügen.',
    write: 'In die Szene schreiben, um sie zu ändern',
    again: 'Aus den Aufbauten ableiten',
    ask: (gone) => {
      const parts = goneParts(gone);
      const stages = gone.stages === 1 ? 'Ihren Bauzustand' : `Ihre ${numberText(gone.stages, 0)} Bauzustände`;
      const with_ = parts.length > 0 ? `, dazu ${list(parts, 'und')}` : '';
      return `Je ein Bauzustand für jede Art von Lage ersetzt ${stages}${with_}. Rückgängig holt alles zurück.`;
    },
    replace: 'Ersetzen',
    keep: 'Meine behalten',
  },
  page: {
    label: (number, name) => `Bauzustand ${number}, ${name}`,
    name: 'Name',
    id: (id) => `Kennung ${id}`,
    pages: 'Seiten des Bauzustands',
    tabs: { lay: 'Einbau', heaps: 'Haufwerke', plant: 'Maschinen', holds: 'Haltepunkte' },
    tabCount: (name, count) => (count === 0 ? name : `${name} ${numberText(count, 0)}`),
    choose: 'Einen Bauzustand wählen, um ihn zu ändern. Das Modell zeigt die fertige Anlage.',
    findings: 'Befunde in diesem Bauzustand',
    noFindings: 'Kein Befund in diesem Bauzustand.',
    left: 'Am Ende übrig',
    plan: 'Im Plan zeichnen',
  },
  lay: {
    caption: (number) => `Was in Bauzustand ${number} eingebaut wird: ein Haken je Zone und Art der Lage`,
    says: 'Ein Haken baut die nächsten Lagen dieser Art ein, von unten nach oben.',
    done: (roles) => `Liegt schon in jeder Zone, die sie hat: ${list(roles, 'und')}.`,
    zone: 'Zone',
    all: 'Alle Zonen',
    group: (name, zones) => `${name}, ${many(zones, 'Zone', 'Zonen')}`,
    open: (name) => `Zonen von ${name}`,
    tick: (role, where, says) => `${role}, ${where}: ${says}`,
    state: {
      here: (layers, of) => (layers === of ? 'in diesem Bauzustand eingebaut' : `${layers} von ${of} Lagen in diesem Bauzustand eingebaut`),
      withTop: 'kommt mit der obersten Lage',
      before: (stage) => `liegt seit Bauzustand ${stage}`,
      later: (stage) => `kommt in Bauzustand ${stage}`,
      never: 'in keinem Bauzustand eingebaut',
      missing: (roles) => `darunter fehlt: ${list(roles, 'und')}`,
      idle: 'nichts mehr einzubauen',
      mixed: 'je nach Zone verschieden',
    },
    mark: {
      before: (stage) => `seit ${stage}`,
      later: (stage) => `in ${stage}`,
      never: 'bleibt übrig',
      missing: 'darunter fehlt',
      here: (layers, of) => `${layers} von ${of}`,
      withTop: 'mit oberster',
      idle: 'nichts mehr',
    },
    objects: 'Bäume, Mauern und Blöcke',
    object: (name, says) => `${name}: ${says}`,
    objectHere: 'in diesem Bauzustand aufgestellt',
    objectIn: (stage) => `in Bauzustand ${stage}`,
    objectNever: 'in keinem Bauzustand',
    noObjects: 'Die Szene hat keine Bäume, Mauern oder Blöcke.',
    weight: (placedKN) => `Dieser Bauzustand bringt ${quantityText(placedKN, 'kN')}, wassergesättigt.`,
  },
  heaps: {
    says: 'Höhen: was überall auf einem Feld liegen darf, zusätzlich zu allem, was am Ende dieses Bauzustands eingebaut ist und dort liegt; auf 5 cm abgerundet.',
    none: 'Kein Haufwerk in diesem Bauzustand.',
    title: (id) => `Haufwerk ${id}`,
    material: 'Material',
    height: 'Höhe',
    x: 'Linker Rand, x',
    y: 'Unterer Rand, y',
    length: 'Längs x',
    width: 'Längs y',
    outline: 'Ecken, je Zeile eine: x; y',
    weight: (areaM2, weightKN) => `${areaText(areaM2)}, ${quantityText(weightKN, 'kN')} lose und wassergesättigt`,
    offDeck: 'Liegt auf keinem Feld: Nichts sagt, was die Decke dort trägt.',
    room: (entry) =>
      `Feld ${entry.bay}: ${heapAt(entry, 'dürfen noch dazu', 'nichts mehr dazu')}${entry.confirmed ? '' : ', nicht bestätigt'}`,
    roomOf: (entry) => `${entry.bay}: ${heapAt(entry, 'zulässig', 'nichts zulässig')}${entry.confirmed ? '' : ', nicht bestätigt'}`,
    unknown: 'Die Höhe steht da, sobald das erste Haufwerk davon liegt.',
    tooHigh: (heightM, bay, entry) =>
      entry.state === 'over'
        ? `Feld ${bay} ist schon um ${loadText(entry.overKNm2)} überschritten.`
        : `${heightText(heightM)} sind ${heightText(heightM - entry.heightM)} mehr, als Feld ${bay} tragen darf. Das Haufwerk lässt sich anlegen; die Prüfung meldet dann Stopp.`,
    add: 'Anlegen',
    newTitle: 'Neues Haufwerk',
    bay: 'In der Mitte von Feld',
    remove: (id) => `Haufwerk ${id} entfernen`,
    ofScene: 'In den Aufbauten',
    ofCatalogue: 'Katalog und eigene Materialien',
    noMaterial: 'Kein Material der Szene oder des Katalogs liegt lose.',
    noBay: 'Die Szene hat noch keine Felder.',
  },
  plant: {
    none: 'In diesem Bauzustand fährt keine Maschine.',
    vehicle: 'Maschine',
    route: 'Weg, je Zeile ein Punkt: x; y',
    newTitle: 'Neue Maschine',
    add: 'Fahren lassen',
    remove: (name) => `${name} entfernen`,
    pressure: (kPa, bays) =>
      bays.length === 0
        ? `Höchstens ${quantityText(kPa, 'kPa')} auf der Abdichtung`
        : `Höchstens ${quantityText(kPa, 'kPa')} auf der Abdichtung; fährt über ${bays.length === 1 ? 'Feld' : 'die Felder'} ${list(bays, 'und')}`,
    offDeck: 'Berührt die Decke nicht.',
    layer: (name, utilisation) => `${name}: ${percentText(utilisation)} ihrer Tragfähigkeit`,
    ofScene: 'Eigene',
    ofCatalogue: 'Katalog',
    own: 'Eigene Maschinen',
    ownNone: 'Keine eigene in dieser Szene.',
    name: 'Name',
    source: 'Quelle: Datenblatt, Datum',
    widthM: 'Breite',
    axleHead: 'Achse',
    removeHead: 'Entfernen',
    axle: (number) => `Achse ${number}`,
    ofAxle: (number, what) => `Achse ${number}: ${what}`,
    atM: 'Von vorn',
    loadKN: 'Last',
    wheels: 'Räder',
    trackM: 'Spur',
    along: 'Aufstand längs',
    across: 'Aufstand quer',
    axleCaption: 'Achsen von vorn: Abstand, Last, Räder, Mitte der äußeren Reifen, Aufstandsfläche',
    addAxle: 'Achse hinzufügen',
    removeAxle: (number) => `Achse ${number} entfernen`,
    ownAdd: 'Maschine hinzufügen und ausfüllen',
    ownRemove: (name) => `Die Maschine ${name} entfernen`,
    ownTitle: (name) => `${name}, eigene`,
    newName: (number) => `Maschine ${number}`,
    tracked: 'Raupen: eine Achse in der Mitte mit zwei langen Aufstandsflächen.',
  },
  holds: {
    flood: 'Flutprobe, Wassertiefe',
    floodSays: (waterKNm2) =>
      waterKNm2 > 0
        ? `Allein das Wasser sind ${loadText(waterKNm2)} auf der Decke, in diesem Bauzustand mitgezählt.`
        : '0 ist keine Flutprobe.',
    title: 'Haltepunkte',
    none: 'Kein Haltepunkt in diesem Bauzustand.',
    hold: (id) => `Haltepunkt ${id}`,
    says: 'Was zu sehen sein muss, ehe es weitergeht',
    by: 'Freizugeben durch',
    evidence: 'Beleg',
    on: 'Freigegeben am',
    open: 'offen',
    released: 'freigegeben',
    add: 'Haltepunkt hinzufügen',
    newSays: 'Was muss zu sehen sein?',
    remove: (id) => `Haltepunkt ${id} entfernen`,
    cautions: 'Vorsicht',
    caution: (number) => `Warnhinweis ${number}`,
    addCaution: 'Warnhinweis hinzufügen',
    newCaution: 'Worauf ist zu achten?',
    removeCaution: (number) => `Warnhinweis ${number} entfernen`,
  },
  points: {
    tooFew: (least) => `Mindestens ${many(least, 'Punkt', 'Punkte')}, je Zeile einer.`,
    twoNumbers: (line) => `Zeile ${line}: Gelesen werden zwei Zahlen, x und y, mit einem Semikolon dazwischen.`,
    inLine: (line, says) => `Zeile ${line}: ${says}`,
  },
};
