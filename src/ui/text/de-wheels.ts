/** The sheet of vehicles in German: where they stand, what they press, which bays they enter. */

import type { Governs } from '../../model/run.ts';
import { loadNumber, mmText, numberText, percentText, quantityOf } from '../format.ts';
import type { Texts } from './text.ts';

const kPaText = (valueKPa: number) => quantityOf(valueKPa, 1, 'kPa');

const GOVERNS: Readonly<Record<Governs, string>> = {
  'one wheel': 'ein Rad allein',
  'sum of wheels': 'Summe sich überlagernder Räder',
  'enclosing rectangle': 'Rechteck um zusammenhängende Räder',
};

const SIDES = { left: 'links', middle: 'Mitte', right: 'rechts' } as const;

export const wheels: Texts['wheels'] = {
  says: 'Fahrzeuge der fertigen Anlage und Maschinen der Bauzustände, jedes auf seiner Linie. Eines wählen, um es dort stehen zu sehen und was es auf jede Lage drückt.',
  list: 'Fahrzeug',
  choose: 'Fahrzeug',
  none: 'Keines: alle Fahrzeuge',
  option: (id, vehicle) => `${id}: ${vehicle}`,
  caption: 'Fahrzeuge und Maschinen: größte Ausnutzung einer Lage, größter Druck auf die Abdichtung, über die ganze Linie',
  besides: (count) =>
    `Die Tabelle gilt am Ende jedes Bauzustands, mit Lastausbreitung nach der Tiefe. ${count === 1 ? '1 Befund nennt' : `${count} Befunde nennen`}, wo mehr herauskommt: zu Beginn eines Bauzustands oder nach der zweiten Rechnung, einem elastischen Halbraum. Siehe Befunde.`,
  used: 'Ausnutzung der Lagen',
  membrane: 'Abdichtung, kPa',
  garden: 'Fertige Anlage',
  stage: (number, name) => `Bauzustand ${number}, ${name}`,
  usedShare: (share) => (share === null ? 'nicht angegeben' : percentText(share)),
  overShare: (share) => `${percentText(share)}, überschritten`,
  pressure: (valueKPa) => (valueKPa === null ? '–' : numberText(valueKPa, 1)),
  pick: (id, vehicle) => `${vehicle} auf ${id} zeigen`,
  factor: (factor) => `Radlasten mal ${numberText(factor, 2)}`,
  place: 'Vorderachse ab Anfang der Linie',
  supportPlace: 'Abstützung ab Anfang der Linie',
  placeText: (frontM, travelM) => `${numberText(frontM, 2)} von ${quantityOf(travelM, 2, 'm')}`,
  standTitle: 'Wie es steht',
  stands: { wheels: 'auf den Rädern', support: 'eine Abstützung abgesetzt' },
  supportNote: 'Eine Abstützung darf überall auf der Linie abgesetzt werden; das Fahrzeug selbst wird dann nicht gezeichnet.',
  worst: 'Ungünstigste Stelle',
  noWorst: 'Kein Rad kommt auf die Decke.',
  drive: 'Fahren',
  halt: 'Anhalten',
  otherStage: 'Das Modell zeigt einen anderen Bauzustand; darum ist das Fahrzeug nicht gezeichnet.',
  showStage: 'Seinen Bauzustand zeigen',
  wheel: 'Rad',
  mostUsed: (name) => `Am meisten ausgenutzt: ${name}`,
  wheelName: ({ axle, side, place, of }) =>
    of === 1 ? `Achse ${axle}, ${SIDES[side]}` : `Achse ${axle}, ${SIDES[side]}, ${place}. von ${of} von außen`,
  support: 'Abstützung',
  noWheel: 'Hier steht kein Rad auf der Linie und auf der Decke.',
  onZone: (zone) => (zone === null ? 'Auf der bloßen Decke' : `Auf Zone ${zone}`),
  besideZone: (zone) => `Daneben: Die Lastfläche reicht auf Zone ${zone ?? ''}`,
  layerCaption: (where) => `${where}: Druck auf jede Lage von oben nach unten, gegen das, was sie trägt, in kPa`,
  layer: 'Lage',
  here: 'Hier',
  route: 'Ganze Linie',
  bears: 'Trägt',
  kPa: 'Drücke in kPa: Räder und wassergesättigtes Gewicht darüber; auf der Abdichtung nur Räder.',
  membraneName: 'Abdichtung',
  depth: (mm) => (mm < 0.05 ? 'an der Oberfläche' : `${mmText(Math.round(mm))} tief`),
  noBearing: 'nicht angegeben',
  showFoot: (name) => `Lastflächen auf ${name} zeichnen`,
  footTitle: (name) => `Gezeichnet auf: ${name}`,
  patch: 'Lastfläche',
  patchSize: (alongMm, acrossMm, growthMm) =>
    `${mmText(alongMm)} × ${mmText(acrossMm)}, nach allen Seiten um ${mmText(growthMm)} vergrößert`,
  wheelsAlone: 'Räder',
  governs: (valueKPa, governs) => `${kPaText(valueKPa)}, ${GOVERNS[governs]}`,
  above: 'Gewicht darüber',
  aboveText: kPaText,
  elastic: 'Elastischer Boden',
  elasticText: (valueKPa, sumKPa, permittedKPa) =>
    permittedKPa !== null && sumKPa > permittedKPa
      ? `${kPaText(valueKPa)} aus Rädern, ${kPaText(sumKPa)} mit dem Gewicht: nach dieser zweiten Rechnung mehr, als die Lage trägt`
      : `${kPaText(valueKPa)} aus Rädern: zweite Rechnung; unter dünner Deckung ist sie die höhere`,
  notUnder: 'Die gewählte Lage liegt hier nicht; es wird keine Lastfläche gezeichnet.',
  bays: 'Befahrene Felder',
  bayCaption: 'Befahrene Felder: Last der Räder, die zugleich im Feld stehen, auf seine Fläche verteilt, gegen die zulässige Nutzlast',
  bay: 'Feld',
  standing: 'Stehend',
  standingText: (loadKN) => quantityOf(loadKN, 1, 'kN'),
  ofImposed: 'Auf die Fläche',
  imposed: (loadKNm2, permittedKNm2) =>
    permittedKNm2 === null
      ? `${loadNumber(loadKNm2)}, keine Nutzlast angegeben`
      : `${loadNumber(loadKNm2)} von ${quantityOf(permittedKNm2, 2, 'kN/m²')}`,
  permitted: 'Fahrzeug',
  permittedText: (permitted) => {
    if (permitted === null) return 'nicht angegeben';
    return permitted ? 'zugelassen' : 'nicht zugelassen';
  },
  noBays: 'Es befährt kein Feld.',
  note: 'Räder sind Punktlasten: Sie stecken in keiner Flächenlast und in keiner Lastkarte. Ob die Decke sie trägt, entscheidet der Tragwerksplaner.',
};
