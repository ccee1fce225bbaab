/** The site in German: how places are reached, open edges, lanes, set-up areas, retaining walls. */

import type { NoOutletClass, ReachClass } from '../../model/maps.ts';
import type { SceneAccessPoint } from '../../model/scene-file.ts';
import type { DifferenceClass } from '../../model/variants.ts';
import { areaText, loadNumber, loadText, numberText, quantityOf } from '../format.ts';
import { list, many } from './en-words.ts';
import type { Texts } from './text.ts';

const REACH: Readonly<Record<ReachClass, string>> = {
  driven: 'Maschinen fahren hin',
  lifted: 'Nur mit Kran oder Schlauch',
  unreached: 'Nicht erreichbar',
  idle: 'In diesem Bauzustand nichts zu bringen',
};

const REACH_SHORT: Readonly<Record<ReachClass, string>> = {
  driven: 'befahrbar',
  lifted: 'Kran oder Schlauch',
  unreached: 'nicht erreichbar',
  idle: 'nichts zu bringen',
};

const NO_OUTLET: Readonly<Record<NoOutletClass, string>> = {
  'overflow only': 'Nur zu einem Notüberlauf',
  'over an edge': 'Nur über einen Rand',
  'no way out': 'Kein Weg hinaus',
};

/** Classes of the map of differences. */
const DIFFERENCE: Readonly<Record<DifferenceClass, () => string>> = {
  'lighter 5': () => `Leichter um über ${loadText(5)}`,
  'lighter 2': () => `Leichter um ${loadNumber(2)} bis ${loadText(5)}`,
  'lighter 0.5': () => `Leichter um ${loadNumber(0.5)} bis ${loadText(2)}`,
  lighter: () => `Leichter um bis zu ${loadText(0.5)}`,
  same: () => 'Kein Unterschied',
  heavier: () => `Schwerer um bis zu ${loadText(0.5)}`,
  'heavier 0.5': () => `Schwerer um ${loadNumber(0.5)} bis ${loadText(2)}`,
  'heavier 2': () => `Schwerer um ${loadNumber(2)} bis ${loadText(5)}`,
  'heavier 5': () => `Schwerer um über ${loadText(5)}`,
};

const isDifference = (id: string): id is DifferenceClass => id in DIFFERENCE;
const isNoOutlet = (id: string): id is NoOutletClass => id in NO_OUTLET;
const isReach = (id: string): id is ReachClass => id in REACH;

const classes: Texts['classes'] = {
  name: (kind, id) => {
    if (kind === 'catchment') return isNoOutlet(id) ? NO_OUTLET[id] : `Zu Ablauf ${id}`;
    if (kind === 'difference' && isDifference(id)) return DIFFERENCE[id]();
    return kind === 'reach' && isReach(id) ? REACH[id] : id;
  },
  short: (kind, id) => {
    if (kind === 'catchment') return isNoOutlet(id) ? NO_OUTLET[id] : `zu ${id}`;
    if (kind === 'difference' && isDifference(id)) return DIFFERENCE[id]();
    return kind === 'reach' && isReach(id) ? REACH_SHORT[id] : id;
  },
  onModel: (kind, id) => {
    // Its classes lie in many small fields.
    if (kind === 'difference') return null;
    if (kind !== 'catchment') return kind === 'reach' && isReach(id) ? REACH_SHORT[id] : id;
    return isNoOutlet(id) ? NO_OUTLET[id] : null;
  },
  area: (name, areaM2) => `${name}: ${areaText(areaM2)}`,
  caption: (quantity, stage) => `${quantity}. ${stage}.`,
  shown: (shown, all) => `${numberText(shown, 0)} von ${many(all, 'Zelle', 'Zellen')} gezeigt`,
  everywhere: 'Ganze Decke',
  head: 'Klasse',
};

const ACCESS: Readonly<Record<SceneAccessPoint['kind'], string>> = { ramp: 'Rampe', crane: 'Kran', blower: 'Schlauch', gate: 'Tor' };

const site: Texts['site'] = {
  post: ({ id, kind }) => `${id} ${ACCESS[kind]}`,
  plan: 'Baustelle',
  planTitle: 'Baustellenplan: Wege der Maschinen, Zugänge, Erreichbarkeit und offene Kanten, solange ein Bauzustand gezeigt wird',
  band: 'näher als 2 m an einer offenen Kante',
  short: 'niedriger als verlangt',
  shortCells: (count) => `niedriger als verlangt: ${many(count, 'Zelle', 'Zellen')}`,
  arrows: 'Pfeile: Einbaurichtung, von fern nach nah',
  towards: (bearingDeg) => `Einbau in Richtung ${numberText(bearingDeg, 0)}°`,
  none: 'Nichts zu zeigen: Diese Szene nennt keine Feuerwehrzufahrt, keinen Zugang und keine Aufstellfläche.',
  block: 'Baustelle',
  plant: (names) => `Unterwegs: ${list(names, 'und')}`,
  noPlant: 'In diesem Bauzustand fährt keine Maschine.',
  access: 'Zugänge',
  accessPoint: ({ id, kind, reachM }) => {
    if (kind !== 'crane' && kind !== 'blower') return `${id}: ${ACCESS[kind]}`;
    return reachM === undefined
      ? `${id}: ${ACCESS[kind]}, Reichweite nicht angegeben, erreicht also nichts`
      : `${id}: ${ACCESS[kind]}, reicht ${numberText(reachM, 1)} m weit`;
  },
  accessPick: (id) => `Zu Zugang ${id} gehen`,
  reachTitle: 'Erreichbarkeit je Bauzustand',
  reachSays: 'Zu Beginn des Bauzustands: über befahrbaren Grund, mit Kran oder Schlauch. Wie breit ein Weg ist, zählt dabei nicht.',
  reachCaption: 'Bauzustände mit dem, was zu bringen ist: Fläche und was nicht erreichbar ist, in m²',
  reachStage: 'Bauzustand',
  reachArea: 'Zu bringen, m²',
  reachMissing: 'Nicht erreichbar',
  reachAll: 'nichts',
  reachPick: (number, name) => `Karte der Erreichbarkeit in Bauzustand ${number}, ${name} zeigen`,
  reached: (areaM2, unreachedM2) =>
    unreachedM2 > 0
      ? `Von ${areaText(areaM2)}, auf die etwas zu bringen ist, sind ${areaText(unreachedM2)} nicht erreichbar.`
      : `Alle ${areaText(areaM2)}, auf die etwas zu bringen ist, sind erreichbar.`,
  edgesTitle: 'Offene Kanten',
  edges:
    'Näher als 2 m an einer offenen Kante werden Menschen gesichert oder durch eine Absperrung ferngehalten. Jeder Rand der Decke und jede Öffnung gilt als offen: Die Datei sagt nicht, wo ein Geländer oder eine hohe Wand steht.',
  reachGarden:
    'Erreichbarkeit gehört zu einem Bauzustand: bitte einen in der Leiste wählen. In der fertigen Anlage wird nichts mehr gebracht.',
  reachNoAccess: 'Die Datei nennt kein Tor, keine Rampe, keinen Kran und keinen Schlauch; darum wird die Erreichbarkeit nicht geprüft.',
  reachDerived: 'Diese Bauzustände sind aus den Aufbauten abgeleitet; darum wird die Erreichbarkeit nicht geprüft.',
};

const two = (valueM: number) => quantityOf(valueM, 2, 'm');

const lanes: Texts['lanes'] = {
  title: 'Feuerwehrzufahrten',
  says: 'Wie gezeichnet, gegen die genannte Regel. Es entscheidet die Brandschutzbehörde.',
  pick: (id) => `Zu Zufahrt ${id} gehen`,
  width: 'Gezeichnete Breite',
  notDrawn: 'nicht gezeichnet',
  required: 'Verlangte Breite',
  short: (missingM) => `${two(missingM)} zu schmal`,
  radius: 'Kleinster Außenradius',
  straight: 'gerade',
  steepest: 'Steilste Stelle',
  step: 'Höchste Stufe',
  noStep: 'keine',
  unknown: 'keine Zone darunter',
  rule: 'Regel',
  ruleOf: (name, country) => `${name}, ${country}`,
  source: (source) => `Breite: ${source}`,
  metres: two,
  percent: (percent) => quantityOf(percent, 1, '%'),
};

const AREA_KIND = { 'set-up': 'Aufstellfläche', movement: 'Bewegungsfläche' } as const;

const areas: Texts['areas'] = {
  title: 'Aufstell- und Bewegungsflächen',
  says: 'Auf der fertigen Anlage. Es entscheidet die Brandschutzbehörde.',
  pick: (id) => `Zu Fläche ${id} gehen`,
  kind: AREA_KIND,
  label: (id, kind) => `${id} ${AREA_KIND[kind]}`,
  size: 'Gezeichnete Größe',
  room: 'Darin frei von Hindernissen',
  required: 'Verlangte Größe',
  by: (widthM, lengthM) => `${numberText(widthM, 2)} × ${two(lengthM)}`,
  noRoom: (lengthM) => `kein Platz von ${two(lengthM)} Länge`,
  onDeck: 'Auf der Decke',
  partOf: (onDeckM2, areaM2) => `${areaText(onDeckM2)} von ${areaText(areaM2)}`,
  building: 'Zum Gebäude',
  standing: 'Steht darin',
  wheels: 'Abdichtung unter Rädern',
  support: 'Abdichtung unter einer Abstützung',
  pressure: (kPa) => quantityOf(kPa, 0, 'kPa'),
  bays: 'Steht in Feldern',
  forbidden: (bay) => `${bay}: Fahrzeug nicht zugelassen`,
  overBay: (bay, kNm2, permittedKNm2) => `${bay}: ${loadNumber(kNm2)} von ${quantityOf(permittedKNm2, 2, 'kN/m²')}`,
};

const walls: Texts['walls'] = {
  title: (count) => many(count, 'Stützwand', 'Stützwände'),
  says: 'Entwässerter Boden, charakteristische Werte je Meter. Kein Nachweis: Die Wand weist der Tragwerksplaner nach.',
  pick: (id) => `Zu Stützwand ${id} gehen`,
  fine: 'kein Befund',
  found: { stop: 'Stopp', check: 'zu prüfen', note: 'Hinweis' },
  thrust: (thrustKNm, surchargeKNm2) =>
    `Erddruck ${quantityOf(thrustKNm, 2, 'kN/m')}, mit ${quantityOf(surchargeKNm2, 2, 'kN/m²')} Nutzlast dahinter`,
  stands: (material, permittedKPa) =>
    material === null || permittedKPa === null
      ? 'Steht auf einer Lage unbekannter Tragfähigkeit'
      : `Steht auf ${material}, das ${quantityOf(permittedKPa, 0, 'kPa')} trägt`,
  caption: (id) => `Stützwand ${id}: nur mit der Nutzlast dahinter, und mit der Nutzlast auch auf dem Sporn`,
  bare: 'Last dahinter',
  loaded: 'Auch auf Sporn',
  vertical: 'Gewicht, kN/m',
  eccentricity: (middleThirdM) => `Ausmitte, m (Kern bis ${numberText(middleThirdM, 3)})`,
  most: 'Größter Druck, kPa',
  least: 'Kleinster Druck, kPa',
  contact: 'Gedrückte Sohle, m',
  even: 'Gleichmäßig auf reduzierter Sohle, kPa',
  sliding: 'Gleiten, haltend ÷ schiebend',
  overturning: 'Kippen, haltend ÷ kippend',
  falls: 'kippt um',
  ratio: (ratio) => numberText(Math.floor(100 * ratio + 1e-6) / 100, 2),
  metres: (valueM) => numberText(valueM, 3),
  pressure: (valueKPa) => numberText(valueKPa, 1),
};

export const siteTexts = { classes, site, areas, lanes, walls } as const;
