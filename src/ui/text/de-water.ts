/** Water in German: outlets, what one blocked outlet does, storage, run-off, ponds, drainage, uplift. */

import type { BlockedVerdict, WetStatus } from '../facts/water-list.ts';
import { areaText, levelText, loadNumber, mmText, numberText, percentText, quantityOf } from '../format.ts';
import { many } from './en-words.ts';
import type { Texts } from './text.ts';

const lpsOrDash = (valueLps: number | null) => (valueLps === null ? '–' : numberText(valueLps, 2));
/** Up, so that 20.2 mm never reads as 20. */
const deep = (depthMm: number) => mmText(Math.ceil(depthMm - 1e-6));
const m3 = (volumeM3: number) => quantityOf(volumeM3, 1, 'm³');
const litres = (volumeL: number) => (volumeL < 1000 ? quantityOf(volumeL, 0, 'l') : quantityOf(volumeL / 1000, 1, 'm³'));

const VERDICTS: Readonly<Record<BlockedVerdict, string>> = {
  unbounded:
    'Dieses Wasser kommt nirgends hinaus: kein anderer Ablauf, kein Notüberlauf, kein Rand mit bekannter Höhe. Wie tief es wird, lässt sich nicht sagen. Bitte Notüberläufe und Ränder einzeichnen.',
  'over by water': 'Mit diesem Wasser überschreitet ein Feld seine zulässige Last.',
  'over anyway': 'Ein Feld unter diesem Wasser überschreitet seine zulässige Last, mit dem Wasser und ohne.',
  'no limit': 'Für ein Feld unter diesem Wasser ist keine zulässige Last angegeben; nichts sagt, ob es das Wasser trägt.',
  'not confirmed': 'Die zulässige Last eines Feldes unter diesem Wasser ist nicht bestätigt.',
  within: 'Auch mit diesem Wasser bleibt jedes Feld in seiner zulässigen Last.',
  dry: 'Es bleibt kein Wasser stehen: Es läuft gleich zu einem anderen Ablauf weiter.',
};

const STATUS: Readonly<Record<WetStatus, string>> = {
  'over by water': 'mit dem Wasser überschritten',
  'over anyway': 'überschritten, mit und ohne Wasser',
  'no limit': 'keine zulässige Last angegeben',
  'not confirmed': 'nicht bestätigt',
  within: 'unter dem Grenzwert',
};

export const water: Texts['water'] = {
  decides:
    'Eingegebene Gefälle, Abläufe und Regen miteinander verglichen; keine Entwässerungsplanung. Es entscheiden Entwässerungsplaner und örtliche Vorschriften.',
  rain: (designLpsHa, extremeLpsHa, source) =>
    `Bemessungsregen ${quantityOf(designLpsHa, 0, 'l/(s·ha)')}, Starkregen ${quantityOf(extremeLpsHa, 0, 'l/(s·ha)')}. Quelle: ${source}.`,
  noRain:
    'Die Datei gibt keinen Regen an. Darum stehen hier kein Abfluss in l/s, keine Leistung der Notüberläufe und kein Abfluss in der Dränschicht. Bitte „rain“ mit Quelle ergänzen; der örtliche Wetterdienst hat die Werte. Flächen, Höhen und stehendes Wasser brauchen keinen Regen.',
  nothing:
    'Die Datei zeichnet keine Abläufe und gibt keinen Regen an; darum steht hier nur, was die Aufbauten speichern. Bitte Abläufe und Notüberläufe einzeichnen, wie sie sind.',
  undrained: (areaM2) => `Von ${areaText(areaM2)} der Decke führt kein Weg zu einem Ablauf: siehe Befunde.`,
  maps: 'Im Modell zeigen',
  outlets: 'Abläufe',
  outletsSay: 'Flächen und Abflüsse, wenn alle frei sind. Mit „verstopfen“ einen schließen und sehen, wie hoch sein Wasser steigt.',
  outletsCaption: 'Abläufe, der am meisten genutzte zuerst: Fläche, Abfluss beim Bemessungsregen von Leistung in l/s',
  outlet: 'Ablauf',
  area: 'Fläche, m²',
  flow: 'Abfluss von Leistung, l/s',
  duty: 'Bedarf von Leistung, l/s',
  ofCapacity: (flowLps, capacityLps) => `${lpsOrDash(flowLps)} von ${lpsOrDash(capacityLps)}`,
  noCapacity: 'keine Leistung angegeben',
  used: (share) => (share === null ? '–' : percentText(share)),
  judged: (share) => `${percentText(share)}, über dem Grenzwert`,
  pick: (id) => `Zu ${id} gehen`,
  block: 'Verstopfen',
  blockPick: (id) => `Ablauf ${id} verstopfen`,
  openShort: 'Öffnen',
  open: (id) => `${id} wieder öffnen`,
  noOutlets: 'Es ist kein Ablauf gezeichnet.',
  more: (count) => `${numberText(count, 0)} weitere zeigen`,
  overflows: 'Notüberläufe',
  overflowsSay: 'Alle Abläufe ausgefallen, beim Starkregen, abzüglich dessen, was die Abläufe beim Bemessungsregen aufnehmen.',
  overflowsCaption: 'Notüberläufe, der am meisten genutzte zuerst: Höhe, Wassertiefe bis zum Anspringen, Bedarf von Leistung in l/s',
  overflow: 'Notüberlauf',
  levelAt: (levelM, depthMm) => {
    if (levelM === null) return 'keine Höhe angegeben';
    return depthMm === null ? `läuft ab ${levelText(levelM)}` : `läuft ab ${levelText(levelM)}, das Wasser ist dann ${deep(depthMm)} tief`;
  },
  noOverflows: 'Es ist kein Notüberlauf gezeichnet. Sind die Abläufe verstopft, kommt das Wasser dann nur über die Ränder von der Decke.',
  chosen: (id) => `Ablauf ${id} verstopft`,
  chosenSays: 'Regen ohne Ende; alle anderen Abläufe sind frei und nehmen alles auf.',
  through: 'Durch die Lagen hindurch gezeichnet, die es verdecken.',
  slabAlone: 'Nur die Decke',
  layersToo: 'Auch die Lagen',
  verdict: (verdict) => VERDICTS[verdict],
  verdictDecides: 'Ob der Fall zu führen ist, entscheidet der Tragwerksplaner.',
  rises: 'Steigt bis',
  deepest: 'Tiefste Stelle',
  deep,
  spread: 'Steht auf',
  litres: 'Wasser in den Poren und darüber',
  litresText: litres,
  leaves: 'Läuft ab bei',
  leavesNowhere: 'nirgends',
  hold: 'Gezeigte Tiefe',
  holdText: (depthMm, levelM) => `${deep(depthMm)} an der tiefsten Stelle, ${levelText(levelM)}`,
  holdShown: (depthMm, levelM) => `Gezeigt: ${deep(depthMm)} an der tiefsten Stelle, ${levelText(levelM)}`,
  wetCaption: 'Felder unter dem Wasser, das ungünstigste zuerst: Wasser über das Feld in kN/m², Ausnutzung ohne und mit Wasser',
  bay: 'Feld',
  waterLoad: 'Wasser, kN/m²',
  waterLoadText: (loadKNm2) => loadNumber(loadKNm2),
  useWith: 'Ausnutzung',
  usedWith: (before, after) => {
    if (after === null) return '–';
    return before === null ? percentText(after) : `${percentText(before)} / ${percentText(after)}`;
  },
  wetStatus: (status) => STATUS[status],
  bayPick: (id) => `Zu Feld ${id} gehen`,
  ponds: 'Wasser, das stehen bleibt',
  pondsSay: 'Alle Abläufe frei; wo die Abdichtung kein Gefälle zu einem Ablauf hat.',
  noPonds: 'Keines: Überall findet das Wasser ein Gefälle zu einem Ablauf.',
  pondPick: (number) => `Zu Pfütze ${number} gehen`,
  pond: (depthMm, areaM2, volumeL, zone) =>
    zone === null
      ? `${deep(depthMm)} tief auf ${areaText(areaM2)}, ${litres(volumeL)}, außerhalb der Zonen`
      : `${deep(depthMm)} tief auf ${areaText(areaM2)}, ${litres(volumeL)}, in Zone ${zone}`,
  pondDeep: 'tiefer als zugelassen',
  held: 'Gespeichertes Wasser',
  heldSays: 'Was Lagen und Dränelemente ganz gefüllt halten und was davon bei einer Füllung frei ist.',
  filling: 'Vor dem Regen gefüllt',
  fillingShort: (percent) => (percent === null ? 'nicht angegeben' : quantityOf(percent, 0, '%')),
  freeUnknown: 'ohne Füllung nicht bekannt',
  heldAll: 'Hält ganz gefüllt',
  freeAll: 'Frei',
  heldCaption: 'Zonen: Wasser, ganz gefüllt gehalten und bei der gewählten Füllung frei, in l/m² und m³',
  zone: 'Zone',
  zonePick: (id) => `Zu Zone ${id} gehen`,
  heldLm2: 'Hält, l/m²',
  freeLm2: 'Frei, l/m²',
  freeM3: 'Frei, m³',
  lm2: (value) => numberText(value, 1),
  m3Text: (value) => numberText(value, 2),
  m3,
  runoff: 'Abfluss',
  table: (name) => `Spitzenabflussbeiwerte: ${name}. Jahresbeiwerte sind anderer Art und gelten nur für das Jahr.`,
  meanPeak: 'Mittel der Decke, Spitze',
  meanAnnual: 'Mittel der Decke, Jahr',
  coefficient: (c) => (c === null ? '–' : numberText(c, 2)),
  design: 'Abfluss der Decke beim Bemessungsregen',
  lps: (valueLps) => quantityOf(valueLps, 2, 'l/s'),
  yearly: 'Jahresabfluss',
  noYearly: 'kein Jahresniederschlag angegeben',
  runoffCaption: 'Zonen: Abflussbeiwerte für Spitze und Jahr, mit Zeile und Quelle',
  peak: 'C Spitze',
  annual: 'C Jahr',
  yearRow: (row) => `Jahr: ${row}`,
  rowOf: (row, source) => `${row}: ${source}`,
  drains: 'Abfluss in der Dränschicht',
  drainsSay: 'Am Ende des längsten Weges jeder Zone, beim Bemessungsregen.',
  drainsCaption:
    'Zonen, die am meisten genutzte zuerst: Abfluss gegen das, was die Dränschicht ableitet, in Litern je Sekunde und Meter Breite',
  drainFlow: 'Abfluss, l/(s·m)',
  drainTakes: 'Leitet ab',
  lsm: (value) => numberText(value, 3),
  head: (headMm, secondMm, thicknessMm) =>
    secondMm === null
      ? `Wasser ${deep(headMm)} von ${mmText(thicknessMm)} hoch`
      : `Wasser ${deep(headMm)} von ${mmText(thicknessMm)} hoch, nach der zweiten Formel ${deep(secondMm)}`,
  drainOver: 'es kommt mehr, als sie ableitet',
  noDrains: 'Es ist kein Regen angegeben, oder keine Dränschicht sagt, was sie ableitet.',
  uplift: 'Auftrieb leichter Lagen',
  upliftSays: (up, down) =>
    `Wasser bis zum Anspringen der Notüberläufe. Leichtschüttung zählt als dichter Block, es sei denn, ihr Material sagt, dass Wasser zwischen die Körner dringt. Auftrieb × ${numberText(up, 2)} gegen Trockengewicht × ${numberText(down, 2)}; unter 1 schwimmt sie auf.`,
  upliftCaption: 'Leichte Lagen, die dem Aufschwimmen nächste zuerst: Verhältnis, Auftrieb und Trockengewicht in kN/m², fehlende Auflast',
  ratio: 'Verhältnis',
  liftHold: 'Auftrieb / Trocken\u00ADgewicht',
  ballastText: (loadKNm2) => `schwimmt auf: Es fehlen ${quantityOf(Math.ceil(100 * loadKNm2 - 1e-6) / 100, 2, 'kN/m²')}`,
  ratioText: (ratio) => numberText(Math.floor(100 * ratio + 1e-6) / 100, 2),
  liftHoldText: (liftKNm2, holdKNm2) => `${loadNumber(liftKNm2)} / ${loadNumber(holdKNm2)}`,
  under: (layer, waterMm) => `${layer}, Wasser ${deep(waterMm)}`,
  model: (displaces) =>
    displaces === 1
      ? 'als dichter Block gerechnet'
      : `nach Körnern gerechnet, die ${numberText(100 * displaces, 0)} % des Volumens einnehmen`,
  garden: 'fertige Anlage',
  stage: (number, name) => `Bauzustand ${number}, ${name}`,
  noUplift: 'Keine leichte Lage liegt unter Wasser.',
  dry: (count, areaM2) => `trocken: ${many(count, 'Zelle', 'Zellen')}, ${areaText(areaM2)}`,
  arrows: 'Pfeile: wohin das Wasser läuft',
  choose: 'Verstopfter Ablauf',
  marks: {
    outlet: ({ id, kind, invertM }) => (kind === 'overflow' && invertM !== undefined ? `${id} läuft ab ${levelText(invertM)}` : id),
    blocked: (id) => `${id} verstopft`,
    leaves: (into) => (into === null ? 'läuft hier ab' : `läuft hier nach ${into}`),
  },
};
