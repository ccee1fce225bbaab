/** Water in German words: outlets, overflows, ponds, drainage and uplift; what is found, why it matters, what to do, who decides. */

import { slotLengthMm } from '../../core/water/runoff.ts';
import type { FindingFact } from '../../model/finding.ts';
import type { FLOW_EN, OUTLET_EN, OVERFLOW_EN, POND_EN, UPLIFT_EN, WATER_EN } from './en-water.ts';
import { byWhy, type Like, namesIn, numberDe } from './rule-words.ts';

const DECIDES = 'Es entscheiden Entwässerungsplaner und örtliche Vorschriften.';
const lps = (value: number | string) => `${numberDe(Number(value), 2)} l/s`;
const lsm = (value: number | string) => `${numberDe(Number(value), 3)} l/(s·m)`;
const kNm2 = (value: number | string) => `${numberDe(Number(value))} kN/m²`;
const areaM2 = (value: number | string) => `${numberDe(Number(value), 1)} m²`;
/** Up, so that 20.2 of 20 mm never reads as 20. */
const mm = (value: number | string) => `${numberDe(Math.ceil(Number(value) - 1e-6), 0)} mm`;
const percent = ({ value, limit }: FindingFact) => `${numberDe((100 * value) / limit, 1)} %`;
const litres = (value: number | string) =>
  Number(value) < 1000 ? `${numberDe(Number(value), 0)} l` : `${numberDe(Number(value) / 1000, 1)} m³`;
const about = (value: number | string) => numberDe(Number(value), 2);
/** Head over a slot that is named as an example [mm]. */
const SLOT_HEAD_MM = 40;

const OUTLET: Like<typeof OUTLET_EN> = {
  'off deck': ({ where }) =>
    `Ablauf ${where.object} ist neben der Decke gezeichnet, daher wird ihm kein Wasser zugerechnet. Dort zeichnen, wo er steht.`,
  'no capacity': ({ where, value, facts }) => {
    const drains = facts.rain
      ? `${lps(value)} beim Bemessungsregen (${areaM2(facts.areaM2)}, mittlerer Beiwert ${about(facts.c)})`
      : `${areaM2(facts.areaM2)} der Decke`;
    return `Ablauf ${where.object} entwässert ${drains}, und die Datei sagt nicht, was er leistet. Seine Leistung im eingebauten Zustand eingeben, mit Sieb und Druckhöhe. ${DECIDES}`;
  },
  capacity: (f) =>
    `Ablauf ${f.where.object} erhält beim Bemessungsregen ${lps(f.value)} von ${areaM2(f.facts.areaM2)} (mittlerer Beiwert ${about(f.facts.c)}); er leistet ${lps(f.limit)} (${percent(f)}). ${f.severity === 'stop' ? 'Wasser staut sich in der Dränung. Einen Ablauf ergänzen oder einen größeren wählen.' : 'Es bleibt wenig Reserve: Laub und etwas mehr Regen zehren sie auf.'} ${DECIDES}`,
  'no way out': ({ value, facts }) =>
    facts.any
      ? `${areaM2(value)} der Decke entwässern zu keinem Ablauf: Von dort findet das Wasser keinen Weg. Einen Ablauf ergänzen oder Gefälle, das zu einem führt. ${DECIDES}`
      : `Es ist kein Ablauf gezeichnet: Das Wasser von ${areaM2(value)} der Decke findet keinen Weg. Abläufe und Notüberläufe zeichnen, wie sie sind. ${DECIDES}`,
  'no row': ({ where, facts }) =>
    `Zone ${where.zone}: Keine Zeile der Tabelle der Abflussbeiwerte passt („${facts.table}“), daher zählt der ganze Regen (C = 1,0). Dem Aufbau einen eigenen "runoff" mit Quelle geben, damit weniger zählt.`,
  'over edge': ({ value, facts }) =>
    `${areaM2(value)} der Decke entwässern bei jedem Regen über ${facts.kind === 'threshold' ? 'Schwelle' : 'Aufkantung'} ${facts.edge}: Das Ende ihrer Abdichtung ist nicht höher angegeben als die Decke dort${facts.kind === 'threshold' ? ', und das Wasser läuft ins Gebäude' : ''}. Abläufe und Notüberläufe sind ohne dieses Wasser gerechnet. Ihre Höhe prüfen; sie gilt im Höhenbezug der Decke. ${DECIDES}`,
  'passed by': ({ where, value, facts }) =>
    `Ablauf ${where.object} erhält das Wasser von ${areaM2(facts.areaM2)}, während das von ${areaM2(value)} (Fläche mal Beiwert) innerhalb einer Zelle, ${numberDe(Number(facts.cellM))} m, an ihm vorbeiläuft: Ob der Ablauf es aufnimmt, ist nicht bekannt, und sein Zufluss kann viel größer sein, der des nächsten kleiner. Den Ablauf in die Tiefenlinie der Höhen zeichnen oder kleinere Zellen wählen. ${DECIDES}`,
  'no levels': () =>
    `Die Datei gibt keine Höhen der Abdichtung an, daher gilt die Decke als eben auf 0,000: Welches Wasser zu welchem Ablauf läuft, wie tief es steht und was es wiegt, ist nicht bekannt. Die Höhen eingeben. ${DECIDES}`,
};

const OVERFLOW: Like<typeof OVERFLOW_EN> = {
  'off deck': ({ where }) =>
    `Notüberlauf ${where.object} ist neben der Decke gezeichnet und zählt daher nicht. Am Rand der Decke zeichnen.`,
  'no invert': ({ where }) =>
    `Notüberlauf ${where.object} hat keine Höhe, ab der er anspringt, und zählt daher nicht. "invertM" eingeben, im Höhenbezug der Decke.`,
  'below deck': ({ where, facts }) =>
    `Notüberlauf ${where.object} springt bei ${about(facts.invertM)} m an, unterhalb der Abdichtung dort: Er läuft bei jedem Regen, wie ein Ablauf. Seine Höhe prüfen; sie gilt im Höhenbezug der Decke.`,
  'no capacity': ({ where, value, facts }) =>
    `Notüberlauf ${where.object} muss ${facts.rain ? `${lps(value)} von ${areaM2(facts.areaM2)} abführen` : `${areaM2(facts.areaM2)} entlasten`}, und die Datei sagt nicht, was er leistet. Seine Leistung bei der Druckhöhe eingeben, die die Aufkantungen zulassen. ${DECIDES}`,
  capacity: (f) => {
    const slotM = slotLengthMm(Math.max(0, f.value - f.limit), SLOT_HEAD_MM) / 1000;
    const found = `Notüberlauf ${f.where.object} muss bei Starkregen ${lps(f.value)} von ${areaM2(f.facts.areaM2)} abführen, abzüglich dessen, was die Abläufe beim Bemessungsregen leisten; er leistet ${lps(f.limit)} (${percent(f)}).`;
    if (f.severity !== 'stop') return `${found} Es bleibt wenig Reserve. ${DECIDES}`;
    return `${found} Wasser steigt über seine Höhe und belastet die Decke. Vergrößern oder einen weiteren ergänzen: für den Rest einen Schlitz von etwa ${numberDe(Math.ceil(100 * slotM) / 100)} m bei ${SLOT_HEAD_MM} mm Wasser (Überfallformel aus dem Gedächtnis). ${DECIDES}`;
  },
  'over finish': ({ where, value, facts }) =>
    `Bevor Notüberlauf ${facts.overflow} anspringt, steht Wasser bis zu ${mm(value)} tief auf der Oberfläche${where.zone ? ` von Zone ${where.zone}` : ''}, insgesamt auf ${areaM2(facts.areaM2)}. Den Notüberlauf tiefer setzen oder es dort schriftlich hinnehmen: Menschen rutschen aus, Boden schwimmt ab. ${DECIDES}`,
  none: ({ where }) =>
    `Kein Notüberlauf entlastet Ablauf ${where.object}: Sind die Abläufe verstopft, findet sein Wasser keinen anderen Weg von der Decke. An diesem Tiefpunkt einen Notüberlauf mit freiem Auslauf ergänzen. ${DECIDES}`,
  'over edge': ({ where, value, facts }) =>
    facts.kind === 'threshold'
      ? `Sind die Abläufe verstopft, steigt das Wasser von Ablauf ${where.object} um ${mm(value)} und läuft über Schwelle ${facts.edge} ins Gebäude, bevor ein Notüberlauf anspringt. Dort einen Notüberlauf ergänzen, tiefer als die Schwelle. ${DECIDES}`
      : `Sind die Abläufe verstopft, steigt das Wasser von Ablauf ${where.object} um ${mm(value)} und läuft über Aufkantung ${facts.edge}, bevor ein Notüberlauf anspringt: Hinter der Abdichtung richtet es Schaden an. Dort einen Notüberlauf ergänzen, tiefer als die Aufkantung. ${DECIDES}`,
};

const POND: Like<typeof POND_EN> = {
  pond: ({ where, value, limit, facts }) =>
    `Wasser bleibt bis zu ${mm(value)} tief stehen${where.zone ? ` in Zone ${where.zone}` : ''}, auf ${areaM2(facts.areaM2)} (${litres(facts.litres)} in den Poren und darüber): Die Decke hat dort kein Gefälle zu einem Ablauf, ${mm(limit)} bleiben ohne Hinweis. Sein Gewicht, im Mittel ${kNm2(facts.waterKNm2)}, ist in keiner Feldlast enthalten. Wurzeln ersticken, eine Tragschicht friert. Gefälle herstellen lassen oder einen Ablauf an den tiefsten Punkt setzen. ${DECIDES}`,
  'pond load': ({ where, value, facts }) =>
    `Wasser bleibt bis zu ${mm(facts.depthMm)} tief stehen, auf ${areaM2(facts.areaM2)}, obwohl alle Abläufe arbeiten: Die Decke hat dort kein Gefälle zu einem Ablauf. Feld ${where.bay} nutzt damit ${numberDe(value, 1)} % des Zulässigen, mit wassergesättigtem Aufbau und im Mittel ${kNm2(facts.waterKNm2)} Wasser${Number(facts.count) > 1 ? `; überschritten sind ${facts.bays}` : ''}. Gefälle herstellen lassen, einen Ablauf an den tiefsten Punkt setzen oder leichter bauen. Es entscheidet der Tragwerksplaner.`,
  raised: ({ where, value, limit, facts }) =>
    `Ablauf ${facts.outlet} nimmt Wasser erst ab ${numberDe(Number(facts.levelM), 3)} m auf, oberhalb der Abdichtung: Bis zu ${mm(value)} bleiben stehen${where.zone ? ` in Zone ${where.zone}` : ''}, auf ${areaM2(facts.areaM2)} (${litres(facts.litres)} in den Poren und darüber), ${mm(limit)} bleiben ohne Hinweis. Sein Gewicht, im Mittel ${kNm2(facts.waterKNm2)}, ist in keiner Feldlast enthalten. Den Ablauf tiefer setzen; soll das Wasser stehen bleiben, seine Tiefe als "pondMm" unter "limits" angeben und sein Gewicht dem Tragwerksplaner nennen. ${DECIDES}`,
  unbounded: ({ facts }) =>
    `Ist Ablauf ${facts.outlet} verstopft, steigt das Wasser ohne Ende: Kein anderer Ablauf, kein Notüberlauf und kein Rand bekannter Höhe lässt es hinaus, daher lässt sich seine Last nicht angeben. Einen Notüberlauf ergänzen und die Ränder zeichnen. Der Tragwerksplaner muss wissen, wie hoch Wasser stehen kann.`,
  blocked: ({ where, value, facts }) =>
    `Ist Ablauf ${facts.outlet} verstopft, steht Wasser bis zu ${mm(facts.depthMm)} tief, bevor es abläuft${facts.into === '' ? '' : ` (über ${facts.into})`}. Feld ${where.bay} nutzt dann ${numberDe(value, 1)} % des Zulässigen, mit wassergesättigtem Aufbau und im Mittel ${kNm2(facts.waterKNm2)} Wasser${Number(facts.count) > 1 ? `; überschritten sind ${facts.bays}` : ''}. Einen Notüberlauf tiefer setzen oder leichter bauen. Ob der Fall zählt, entscheidet der Tragwerksplaner.`,
};

const FLOW: Like<typeof FLOW_EN> = {
  element: (f) =>
    `Zone ${f.where.zone}: Beim Bemessungsregen fließen am Ende des längsten Wegs ${lsm(f.value)} in „${f.facts.layer}“; möglich sind ${lsm(f.limit)} (${percent(f)}), wie für sein Gefälle angegeben. Wasser staut sich in das, was darüber liegt. Ein Element nehmen, das mehr abführt, oder den Weg durch einen weiteren Ablauf verkürzen. ${DECIDES}`,
  fill: ({ where, value, limit, facts }) =>
    `Zone ${where.zone}: Beim Bemessungsregen steht Wasser ${mm(value)} hoch in „${facts.layer}“ (nach der zweiten Formel ${mm(facts.secondMm)}), die Lage ist ${numberDe(limit, 0)} mm dick: Es kommen ${lsm(facts.flowLsm)}, voll laufend sind ${lsm(facts.capacityLsm)} möglich. Wasser staut sich in das, was darüber liegt. Dicker oder gröber schütten, ein Element nehmen oder den Weg durch einen weiteren Ablauf verkürzen. ${DECIDES}`,
};

function upliftWords({ where, value, facts }: FindingFact): string {
  const when = where.stage ? `, Bauzustand ${where.stage}, solange noch nicht alles darauf liegt` : '';
  const water = `${mm(facts.waterMm)} über der Abdichtung (${facts.given ? 'angegebener Wasserstand' : 'bis ein Notüberlauf anspringt'})`;
  const mend = where.stage
    ? 'Was beschwert, am selben Tag einbauen, die Abläufe frei halten und bei Regen pumpen.'
    : 'Den Notüberlauf tiefer setzen, mehr Gewicht aufbringen oder eine Schüttung nehmen, in die Wasser eindringt (mit Nachweis).';
  const counted = facts.sealed ? 'als geschlossener Block gerechnet' : 'nach seinen Körnern gerechnet';
  return `Zone ${where.zone}${when}: „${facts.layer}“ (${counted}) schwimmt auf, wenn Wasser so hoch steht: ${water}. ${kNm2(facts.upliftKNm2)} heben, ${kNm2(facts.holdingKNm2)} halten im trockenen Zustand, mit den Beiwerten ${numberDe(Math.floor(100 * value + 1e-6) / 100)} statt 1; es fehlen ${kNm2(facts.ballastKNm2)}. ${mend} Es entscheiden Tragwerksplaner und geotechnische Norm.`;
}

const MOST_NAMED = 4;

function namedZones(text: string | number): string {
  const zones = namesIn(text);
  if (zones.length > MOST_NAMED) return `${zones.length} Zonen`;
  return zones.length === 1 ? `Zone ${zones[0]}` : `Zonen ${zones.join(', ')}`;
}

const UPLIFT: Like<typeof UPLIFT_EN> = {
  floats: upliftWords,
  unknown: ({ facts }) =>
    `Ob die leichten Lagen aufschwimmen können (${namedZones(facts.zones)}), ist nicht bekannt: Weder ein Notüberlauf noch ein Rand sagt, wie hoch Wasser dort stehen kann. Die Notüberläufe mit ihren Höhen zeichnen oder den Wasserstand unter "flotation" angeben. ${DECIDES}`,
};

export const WATER_DE: Like<typeof WATER_EN> = {
  'water.outlet': byWhy(OUTLET),
  'water.overflow': byWhy(OVERFLOW),
  'water.pond': byWhy(POND),
  'water.flow': byWhy(FLOW),
  'float.uplift': byWhy(UPLIFT),
};
