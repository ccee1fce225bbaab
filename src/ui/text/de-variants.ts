/** Variants side by side and lightening zones: the sentences in German. */

import type { LightenAim, LightenBay, LightenHindrance, LightenPassing, LightenUnmet } from '../../model/lighten.ts';
import type { LightenCase } from '../../model/lighten-cases.ts';
import { loadText, mmText, numberText, percentText, quantityOf, signedText } from '../format.ts';
import { list, many } from './en-words.ts';
import type { Texts } from './text.ts';

export const variants: Texts['variants'] = {
  says: 'Den jetzigen Stand als Variante aufheben, ändern und beide nebeneinanderhalten. Beurteilt wird die Szene selbst; Varianten liegen in ihrer Datei.',
  name: 'Name der Variante',
  proposed: (id) => `Variante ${id}`,
  before: (name) => `Vor ${name}`,
  withoutName: (name) => `Ohne Namen heißt sie „${name}“.`,
  keep: 'Jetzigen Stand aufheben',
  none: 'Noch keine Variante aufgehoben.',
  list: 'Varianten',
  shown: 'jetziger Stand',
  compare: 'Vergleichen',
  takeOver: 'Übernehmen',
  remove: 'Entfernen',
  compareName: (name) => `${name} mit dem jetzigen Stand vergleichen`,
  takeOverName: (name) => `${name} übernehmen; der jetzige Stand bleibt aufgehoben`,
  removeName: (name) => `${name} entfernen`,
  map: 'Unterschied im Modell zeigen',
  comparing: 'Wird verglichen…',
  figures: 'Nebeneinander',
  quantity: 'Größe',
  now: 'Jetziger Stand',
  difference: 'Unterschied',
  saturated: 'Last, wassergesättigt',
  dry: 'Last, trocken',
  kN: (value) => quantityOf(value, 0, 'kN'),
  kNDifference: (value) => `${signedText(value, 0)} kN`,
  worst: 'Höchste Ausnutzung',
  worstOf: (worst) => {
    if (worst === null) return 'keine Grenze angegeben';
    return worst.stage === null
      ? `${percentText(worst.utilisation)} in Feld ${worst.bay}`
      : `${percentText(worst.utilisation)} in Feld ${worst.bay}, Bauzustand ${worst.stage.id} (${worst.stage.name})`;
  },
  over: 'Felder über ihrer Grenze',
  notConfirmed: 'Felder nicht bestätigt',
  stops: 'Befunde: Stopp',
  checks: 'Befunde: Prüfen',
  held: 'Gehaltenes Wasser, Mittel',
  lm2: (value) => quantityOf(value, 1, 'l/m²'),
  price: 'Preis der Materialien',
  noPrice: 'nicht alle mit Preis',
  count: (value) => numberText(value, 0),
  signed: (value, decimals) => signedText(value, decimals),
  bays: 'Felder mit anderem Ergebnis',
  bay: 'Feld',
  garden: 'Fertige Anlage',
  stage: 'Ungünstigster Bauzustand',
  zones: 'Zonen mit anderem Ergebnis',
  zone: 'Zone',
  depth: 'Mittlere Aufbauhöhe',
  load: 'Höchste Last',
  takeOff: 'Materialien',
  material: 'Material',
  volume: 'Eingebaut',
  mass: 'Masse, wassergesättigt',
  m3: (value) => quantityOf(value, 1, 'm³'),
  tonnes: (massKg) => quantityOf(massKg / 1000, 1, 't'),
  changes: 'Was geändert wurde',
  same: 'Es gibt keinen Unterschied.',
  change: (from, to) => `${from} auf ${to}`,
  nothing: 'keine',
  file: {
    pick: 'Mit einer Datei vergleichen…',
    two: 'Zwei Dateien',
    offer: (first, second) => `${first} wird geöffnet und ${second} daneben gehalten.`,
    go: 'Diese beiden vergleichen',
    title: (file) => `${file} gegen den jetzigen Stand`,
    same: (file) => `${file} sagt dasselbe wie der jetzige Stand.`,
    differs:
      'Mehr als Aufbauten, Zonen und Bauzustände ist anders, deshalb wird sie nicht als Variante aufgehoben. Jede Änderung einmal, der Lastenplan zuerst:',
    refused: (file) => `${file} wurde nicht verglichen`,
    unreadable: (file) => `${file} ließ sich nicht von der Platte lesen.`,
    working: 'Vergleich läuft…',
  },
};

const AIMS: Readonly<Record<LightenAim, string>> = { cost: 'Am billigsten', weight: 'Am leichtesten', change: 'Am wenigsten ausgetauscht' };
const KEPT_AS: Readonly<Record<LightenAim, string>> = {
  cost: 'am billigsten',
  weight: 'am leichtesten',
  change: 'am wenigsten ausgetauscht',
};
const CASES: Readonly<Record<LightenBay['kind'], string>> = {
  permanent: 'fertige Anlage',
  total: 'fertige Anlage mit Nutzlast',
  stage: 'Bauzustand',
};
const HINDRANCES: Readonly<Record<LightenHindrance, string>> = {
  'substrate depth': 'die Mindestdicke des Substrats',
  'tree soil': 'der Wurzelraum der Bäume',
  room: 'die Fertighöhen, die keinen Platz für leichtere Schüttungen lassen',
  'base course': 'die Mindestdicke der Tragschicht unter Fahrzeugen',
  'locked zones': 'Zonen, die bleiben sollen, wie sie sind',
};
const PASSINGS: Readonly<Record<LightenPassing, string>> = {
  locked: 'sie bleibt, wie sie ist',
  'not within its levels': 'ihr Aufbau passt noch nicht zu ihren Fertighöhen',
  'no layer to change': 'keine ihrer Lagen lässt sich ändern',
};
const UNSOLVED: Readonly<Record<'no common answer' | 'time' | 'no prices', string>> = {
  'no common answer': 'Jede Grenze lässt sich einhalten, aber nicht alle zugleich',
  time: 'In der Zeit fand sich keine Lösung',
  'no prices': 'Die Materialien haben keine Preise',
};

const UNMET: Readonly<Record<LightenUnmet['why'], string>> = {
  'no common answer': 'für sich ließe sie sich einhalten, aber nicht zugleich mit den anderen',
  time: 'in der Zeit fand sich keine Lösung',
};

const caseOf = (kind: LightenBay['kind'], stage: string | null) => (stage === null ? CASES[kind] : `${CASES[kind]} ${stage}`);
const casesOf = (cases: readonly LightenCase[]) =>
  list(
    cases.map(({ kind, stage }) => caseOf(kind, stage)),
    'und',
  );

export const lighten: Texts['lighten'] = {
  open: 'Leichtere Aufbauten suchen…',
  says: 'Sucht leichtere Schüttungen und andere Dicken für Zonen, die für ihre Felder zu schwer sind. Fertighöhen, Mindestdicken, die Folge der Lagen und jede Grenze bleiben eingehalten.',
  aim: 'Gesucht',
  aims: AIMS,
  zones: 'Zonen',
  zonesOver: 'Die an Stellen über der Grenze reichen',
  zonesChosen: 'Diese',
  locked: 'Bleibt, wie sie ist',
  least: 'Dünnste Lage, die hinzukommt',
  find: 'Suchen',
  cancel: 'Suche abbrechen',
  working: (progress) =>
    progress === 'started'
      ? 'Wird gesucht… Modell und Zahlen laufen weiter.'
      : `Wird gesucht… ${AIMS[progress.aim]}, Durchgang ${progress.round}: ${many(progress.baysLeft, 'Feld ist', 'Felder sind')} noch über einer Grenze. Modell und Zahlen laufen weiter.`,
  nothing: 'Diese Szene hat noch keine Zone, also nichts, was leichter werden könnte.',
  within: 'Kein Feld ist über seiner Grenze.',
  stale: 'Die Szene wurde seither geändert. Bitte neu suchen.',
  answer: (aim, savedKN) => `${AIMS[aim]}: ${numberText(savedKN, 0)} kN weniger`,
  stopped: 'Diese Lösung hält jede Grenze ein; dass es keine bessere gibt, ist nicht bewiesen.',
  unmet: ({ bay, cases, beforeKNm2, afterKNm2, permittedKNm2, why }) =>
    `Noch über der Grenze: Feld ${bay}, ${casesOf(cases)}, ${loadText(afterKNm2)} von ${loadText(permittedKNm2)}, vorher ${loadText(beforeKNm2)}: ${UNMET[why]}.`,
  exchanged: (m3) => `${numberText(m3, 1)} m³ ausgetauscht`,
  price: (before, after, currency) =>
    `Materialien: ${numberText(before, 0)} auf ${numberText(after, 0)} ${currency} (${signedText(after - before, 0)})`,
  noPrice: 'Nicht alle Materialien haben einen Preis, deshalb steht hier nichts zu den Kosten.',
  takeOver: 'Übernehmen',
  keep: 'Als Variante aufheben',
  keptAs: (aim) => `Leichter gemacht, ${KEPT_AS[aim]}`,
  kept: 'Als Variante aufgehoben.',
  zone: (zone, buildUp, savedKN) => `Zone ${zone}, Aufbau ${buildUp}: ${numberText(savedKN, 1)} kN weniger`,
  laidIn: (stage) => `Neues wird in Bauzustand ${stage} eingebaut, der dafür ergänzt wird.`,
  layer: 'Lage',
  before: 'Vorher',
  after: 'Nachher',
  spread: (one) => {
    if (one === null) return 'keine';
    return one.max - one.min < 0.5 ? mmText(one.mean) : `${mmText(one.min)} bis ${mmText(one.max)}`;
  },
  loads: 'Lasten und ihre Grenzen',
  place: 'Feld und Fall',
  loadCase: (bay, kind, stage) => `${bay}, ${caseOf(kind, stage)}`,
  permitted: 'Zulässig',
  binding: 'diese Grenze bestimmt die Lösung',
  newFindings: (count) => `${many(count, 'Befund kommt', 'Befunde kommen')} dazu`,
  obstacle: ({ bay, cases, lightestKNm2, permittedKNm2, othersKNm2 }) =>
    `Feld ${bay}, ${casesOf(cases)}: So leicht wie möglich sind es noch ${loadText(lightestKNm2)} von ${loadText(permittedKNm2)}; ${loadText(othersKNm2)} davon ist, was sonst dort steht.`,
  inTheWay: (hindrances) => `Im Weg: ${hindrances.map((one) => HINDRANCES[one]).join('; ')}.`,
  obstacles: 'Was im Weg steht',
  showPlace: 'Zeigen',
  unsolved: (aim, why) => `${AIMS[aim]}: ${UNSOLVED[why]}.`,
  passedOver: (zone, why) => `Zone ${zone} wurde übergangen: ${PASSINGS[why]}.`,
  leftOut: (zone, material, mm, says) => `Zone ${zone}: ${material} wurde ab ${mmText(mm)} ausgelassen. ${says}`,
  leftThick: (zone, mm, says) => `Zone ${zone}: Substrat um ${mmText(mm)} oder mehr dünner wurde ausgelassen. ${says}`,
  engineer: 'Vergleicht eingegebene Lasten mit eingegebenen Grenzwerten. Der Tragwerksplaner entscheidet.',
};
