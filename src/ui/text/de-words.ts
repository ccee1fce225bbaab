/** Words and small phrases that the German sentences are made of. */

import { dayIn } from '../../model/date-text.ts';
import type { Rule } from '../../model/finding.ts';
import type { CoreLogOther, MapKind } from '../../model/maps.ts';
import type { PartKind } from '../../model/picture.ts';
import { ROLES_DE } from '../../model/roles.ts';
import type { SceneBasis } from '../../model/scene-file.ts';
import type { BasisPart } from '../facts/basis.ts';
import type { BayCase, BayStatus } from '../facts/bay-verdict.ts';
import type { MapGroup } from '../facts/map-groups.ts';
import type { Judgement } from '../facts/utilisation.ts';
import { loadText, numberText } from '../format.ts';
import { type HEAP_LIMITS as heapLimits, list } from './en-words.ts';

/** Of two things "beide". */
export const allOf = (count: number, more: string): string => (count === 2 ? `Beide ${more}` : `Alle ${numberText(count, 0)} ${more}`);

export const basisShort = ({ document, revision }: SceneBasis): string => `${document}, Index ${revision}`;

export const basisText = (basis: SceneBasis): string =>
  [basisShort(basis), dayIn(basis.date ?? '', 'de'), basis.by].filter((part) => part !== undefined && part !== '').join(', ');

const MISSING: Readonly<Record<BasisPart, string>> = { document: 'Dokument', revision: 'Index', date: 'Datum' };

export const missingText = (missing: readonly BasisPart[]): string =>
  `nicht bestätigt: ${list(
    missing.map((part) => MISSING[part]),
    'und',
  )} ${missing.length === 1 ? 'fehlt' : 'fehlen'}`;

export const HEAP_LIMITS: typeof heapLimits = {
  loadOnly: 'Nur aus der Last gerechnet: Böschung, Abstand zum Rand, Wind und Reichweite des Geräts können weniger zulassen.',
  unusual: 'Über 2 m: Haufwerke auf Decken werden üblicherweise niedriger gehalten (übliche Praxis, keine Regel).',
};

export const MAP_GROUP_NAMES: Readonly<Record<MapGroup, string>> = {
  loads: 'Lasten',
  depths: 'Dicken und Höhen',
  wheels: 'Räder und Bauzustände',
  water: 'Wasser',
};

export const MAP_NAMES: Readonly<Record<MapKind, string>> = {
  load: 'Last',
  utilisation: 'Ausnutzung',
  'worst-stage': 'Ungünstigster Bauzustand',
  difference: 'Unterschied',
  depth: 'Aufbauhöhe',
  substrate: 'Substrat',
  'make-up': 'Ausgleich',
  finished: 'Fertighöhe',
  upstand: 'Anschlusshöhe',
  fall: 'Gefälle',
  reach: 'Erreichbarkeit',
  'wheel-membrane': 'Auf Abdichtung',
  'wheel-bearing': 'Auf Lagen',
  held: 'Wasserspeicher',
  catchment: 'Einzugsgebiete',
  flow: 'Abfluss',
  ponding: 'Stehendes Wasser',
  blocked: 'Ablauf verstopft',
};

export const MAP_QUANTITIES: Readonly<Record<MapKind, string>> = {
  load: 'Last je Zelle',
  utilisation: 'Ausnutzung: Last zu zulässiger Last',
  'worst-stage': 'Ausnutzung im ungünstigsten Bauzustand',
  difference: 'Last der Variante abzüglich der Last der Szene',
  depth: 'Aufbauhöhe',
  substrate: 'Dicke des Substrats',
  'make-up': 'Dicke der Ausgleichslage',
  finished: 'Fertighöhe',
  upstand: 'Abdichtung über Fertighöhe an den Rändern',
  fall: 'Gefälle der Abdichtung',
  reach: 'Wie das Material hinkommt',
  'wheel-membrane': 'Druck der Räder auf die Abdichtung',
  'wheel-bearing': 'Ausnutzung der Lagen unter Rädern',
  held: 'Im Aufbau gespeichertes Wasser',
  catchment: 'Welcher Ablauf das Wasser aufnimmt',
  flow: 'Abfluss in der Dränschicht',
  ponding: 'Wasser, das stehen bleibt, alle Abläufe frei',
  blocked: 'Wasser, das bei einem verstopften Ablauf steht',
};

export const MAP_BASES: Readonly<Record<MapKind, string>> = {
  load: 'Wassergesättigt; Aufbauten, Bewuchs und Einbauten, je Deckenfläche in der Zelle',
  utilisation: 'Wassergesättigt; Mittel über 1,0 m × 1,0 m um die Zelle, gegen die zulässige Last ihres Feldes',
  'worst-stage': 'Wassergesättigt, mit Haufwerken und Flutproben; höchster Wert aller Bauzustände',
  difference: 'Wassergesättigt, fertige Anlage; Stufen bei 0,05, 0,5, 2 und 5 kN/m²',
  depth: 'Alle Lagen zusammen, in der Mitte der Zelle',
  substrate: 'Alle Substratlagen zusammen, in Zonen mit Substrat',
  'make-up': 'Berechnet aus Deckenhöhe, Fertighöhe und den übrigen Lagen',
  finished: 'Oberkante des Aufbaus im Höhensystem der Datei',
  upstand: 'Oberkante der Abdichtung an Aufkantungen und Schwellen, abzüglich der Fertighöhe daneben; kleinster Wert je Zelle',
  fall: 'Aus den Dreiecken zwischen den angegebenen Höhen, in der Mitte der Zelle',
  reach: 'Zu Beginn des Bauzustands; Bahnen und Pflanzen werden getragen',
  'wheel-membrane':
    'Nur Räder, größter Wert aller Stellungen; Mittel je Zelle, genaue Spitzen im Blatt Räder. Punktlasten sind in keiner Lastkarte enthalten',
  'wheel-bearing':
    'Räder und Gewicht darüber, bezogen auf das, was die Lage trägt; größter Wert aller Lagen und Stellungen, Mittel je Zelle, genaue Spitzen im Blatt Räder',
  held: 'Wasserkapazität der Lagen und was die Dränelemente halten, ganz gefüllt; Mittel über die Zonen der Zelle',
  catchment:
    'Nach dem Gefälle der Abdichtung. Flächen sind genaue Anteile; eine Zelle hat die Farbe des Ablaufs, der das meiste ihres Wassers aufnimmt, daher weichen gezählte Zellen etwas ab',
  flow: 'Je Meter Breite beim Bemessungsregen, auf dem längsten Weg; ohne Regenangabe: Länge dieses Weges mal Beiwert',
  ponding: 'Tiefe über der Abdichtung, wo kein Gefälle zu einem Ablauf besteht',
  blocked: 'Tiefe über der Abdichtung bei Regen ohne Ende; alle anderen Abläufe sind frei und nehmen alles auf',
};

export const CASE_NAMES: Readonly<Record<BayCase['kind'], string>> = {
  permanent: 'Ständige Last',
  imposed: 'Nutzlast',
  total: 'Ständige Last und Nutzlast',
  stage: 'Bauzustand',
};

export const JUDGEMENTS: Readonly<Record<Judgement, string>> = {
  over: 'über dem Grenzwert',
  'at limit': 'am Grenzwert',
  within: 'unter dem Grenzwert',
};

export const STATUS: Readonly<Record<BayStatus, string>> = {
  over: 'über dem Grenzwert',
  'not confirmed': 'nicht bestätigt',
  'no limit': 'keine zulässige Last angegeben',
  'at limit': 'am Grenzwert',
  within: 'unter dem Grenzwert',
};

export const PARTS: Readonly<Record<PartKind, string>> = {
  ...ROLES_DE,
  'loose surfacing': 'Loser Belag',
  slab: 'Decke',
  column: 'Stützen',
  outlet: 'Abläufe',
  edge: 'Aufkantungen und Schwellen',
  'tree trunk': 'Baumstämme',
  'tree crown': 'Baumkronen',
  'line load': 'Mauern und Linien',
  retaining: 'Stützwände',
  block: 'Blöcke',
  stockpile: 'Haufwerke',
  'flood water': 'Wasser der Flutprobe',
};

export const OTHERS: Readonly<Record<CoreLogOther['kind'], (id: string) => string>> = {
  vegetation: () => 'Bewuchs',
  tree: (id) => `Baum ${id}`,
  line: (id) => `Linienlast ${id}`,
  block: (id) => `Block ${id}`,
  retaining: (id) => `Stützwand ${id}`,
  stockpile: (id) => `Haufwerk ${id}`,
  'flood test': () => 'Flutprobe',
};

/** By how much a load differs from its limit. */
export function margin(loadKNm2: number, permittedKNm2: number, judgement: Judgement): string {
  const gap = Math.abs(loadKNm2 - permittedKNm2);
  const amount = gap < 0.005 ? `weniger als ${loadText(0.01)}` : loadText(gap);
  if (judgement === 'at limit') return 'am Grenzwert';
  return judgement === 'over' ? `um ${amount} überschritten` : `${amount} frei`;
}

/** What a permitted load is permitted for. */
export const LIMITS: Readonly<Record<string, string>> = {
  permanent: 'ständige Last',
  stage: 'Last im Bauzustand',
  total: 'ständige Last und Nutzlast zusammen',
};

/** Keys of numbers in words, for the list of sources. */
export const NUMBER_NAMES: Readonly<Record<string, string>> = {
  density: 'Rohdichte',
  areal: 'Masse je m²',
  thicknessMm: 'Dicke',
  voidLm2: 'Hohlräume',
  retentionLm2: 'gehaltenes Wasser',
  waterCapacityPercent: 'Wasserkapazität',
  compactionFactor: 'Verdichtung',
  lapPercent: 'Überlappung',
  bearingKPa: 'Tragfähigkeit',
  dispersal: 'Lastausbreitung unter Rädern',
  flowLsm: 'Wasserableitung',
  delivery: 'Größe einer Lieferung',
  kNm2: 'Gewicht des Bewuchses',
  widthM: 'Breite',
  axles: 'Achsen',
  grossKN: 'Gesamtgewicht',
  loadKN: 'Achslasten',
  atM: 'Lage der Achsen',
  trackM: 'Spurweite',
  contactM: 'Aufstandsflächen der Räder',
  turningRadiusM: 'Wenderadius',
  pads: 'Abstützungen',
  slidingRatio: 'Verhältnis gegen Gleiten',
  overturningRatio: 'Verhältnis gegen Kippen',
  wallDensity: 'Rohdichte der Stützwände',
  recommendedFallPercent: 'empfohlenes Gefälle der Beläge',
  dynamicFactor: 'Schwingbeiwert der Räder',
  substrateMm: 'Mindestdicke des Substrats',
  treeSoilM3: 'Wurzelraum eines Baums, Volumen',
  treeSoilMm: 'Wurzelraum eines Baums, Tiefe',
  subsoilBelowMm: 'Tiefe, ab der mineralischer Unterboden nötig ist',
  baseCourseMm: 'Tragschicht unter Fahrzeugen',
  liftMm: 'Dicke einer Einbaulage',
  upstandMm: 'Anschlusshöhe an Aufkantungen',
  sillMm: 'Anschlusshöhe an Schwellen',
  stripM: 'Streifen ohne Pflanzen',
  fallPercent: 'Gefälle der Beläge',
  straightM: 'Breite einer geraden Zufahrt',
  bounded: 'Breite zwischen Wänden',
  bends: 'Breite in Kurven',
  transitionM: 'Übergänge vor und nach Kurven',
  gradientPercent: 'Längsneigung einer Zufahrt',
  setUpPercent: 'Neigung einer Aufstellfläche',
  stepMm: 'Stufen in einer Zufahrt',
  setUpStepMm: 'Stufen in einer Aufstellfläche',
  'setUp.widthM': 'Breite einer Aufstellfläche',
  'setUp.lengthM': 'Länge einer Aufstellfläche',
  'setUp.stripAlongM': 'freier Streifen neben einer Aufstellfläche längs eines Gebäudes',
  'setUp.stripAcrossM': 'freie Streifen neben einer Aufstellfläche quer zu einem Gebäude',
  'setUp.wallLeastM': 'kleinster Abstand einer Aufstellfläche zum Gebäude',
  'setUp.wallMostM': 'größter Abstand einer Aufstellfläche zum Gebäude',
  'setUp.wallAcrossM': 'Abstand einer Aufstellfläche quer zu einem Gebäude',
  'movement.widthM': 'Breite einer Bewegungsfläche',
  'movement.lengthM': 'Länge einer Bewegungsfläche',
  'movement.runOutM': 'Übergänge vor und nach einer Bewegungsfläche',
  pondMm: 'Tiefe von Pfützen',
  porePercent: 'Poren, die stehendes Wasser füllt',
  permeabilityMs: 'Wasserdurchlässigkeit',
  uplift: 'Art des Auftriebs',
  upFactor: 'Beiwert auf den Auftrieb',
  downFactor: 'Beiwert auf das haltende Gewicht',
  treeSoilM2: 'Wurzelraum eines Baums, Fläche',
  all: 'alle Werte',
};

/** What each rule looks at. */
export const RULES: Readonly<Record<Rule, string>> = {
  'load.basis': 'Grundlage der zulässigen Last',
  'load.permanent': 'Ständige Last',
  'load.imposed': 'Nutzlast',
  'load.total': 'Ständige Last und Nutzlast',
  'load.stage': 'Last im Bauzustand',
  'stress.layer': 'Druck auf Lagen',
  'traffic.bay': 'Fahrzeuge in Feldern',
  'traffic.width': 'Breite für Fahrzeuge',
  'traffic.bend': 'Kurven für Fahrzeuge',
  'traffic.gradient': 'Neigung für Fahrzeuge',
  'traffic.setup': 'Platz für Aufstellflächen',
  'depth.short': 'Zu dick für die Fertighöhe',
  'depth.over': 'Nicht bis zur Fertighöhe gefüllt',
  'depth.vegetation': 'Dicke für den Bewuchs',
  'depth.lift': 'Dicke der Einbaulagen',
  'depth.base': 'Tragschicht unter Fahrzeugen',
  'level.outside': 'Außerhalb der aufgemessenen Höhen',
  'level.fall': 'Gefälle der Beläge',
  'edge.upstand': 'Anschlusshöhen',
  'edge.strip': 'Streifen ohne Pflanzen',
  'zone.overlap': 'Zonen überschneiden sich',
  'zone.gap': 'Lücken zwischen Zonen',
  'zone.outside': 'Außerhalb der Decke',
  'bay.gap': 'Decke ohne Feld',
  'bay.overlap': 'Felder überschneiden sich',
  'order.protection': 'Schutz der Abdichtung',
  'order.slip': 'Gleitlage',
  'order.drainage': 'Dränung',
  'order.filter': 'Filtervlies',
  'order.separation': 'Trennlage',
  'order.orientation': 'Welche Seite des Elements oben liegt',
  'order.infill': 'Füllung des Elements',
  'order.root': 'Durchwurzelungsschutz',
  'water.outlet': 'Abläufe',
  'water.overflow': 'Notüberläufe',
  'water.pond': 'Stehendes Wasser',
  'water.flow': 'Abfluss in der Dränschicht',
  'float.uplift': 'Auftrieb',
  'stage.order': 'Reihenfolge der Bauzustände',
  'stage.plant': 'Maschinen im Bauzustand',
  'stage.reach': 'Erreichbarkeit',
  'stage.left': 'In keinem Bauzustand eingebaut',
  'wall.bearing': 'Boden unter Stützwänden',
  'wall.sliding': 'Gleiten von Stützwänden',
};
