/** Wheels in German words: pressure on layers, vehicles in bays; what is found, why it matters, who decides. */

import type { FindingFact } from '../../model/finding.ts';
import type { BAY_EN, STRESS_EN, WHEELS_EN } from './en-wheels.ts';
import { byWhy, type Like, numberDe } from './rule-words.ts';

const kPa = (value: number | string) => `${numberDe(Number(value), 0)} kPa`;
const kNm2 = (value: number) => `${numberDe(value)} kN/m²`;
const percent = ({ value, limit }: FindingFact) => (limit > 0 ? ` (${numberDe((100 * value) / limit, 0)} %)` : '');
const when = ({ where }: FindingFact) => (where.stage ? `, Bauzustand ${where.stage}` : '');

/** By how the pressure comes about. */
const TOGETHER: Readonly<Record<string, string>> = {
  'one wheel': '',
  'sum of wheels': ', wo sich die Lastflächen mehrerer Räder überdecken',
  'enclosing rectangle': ', mehrere Räder als eine sie umschließende Lastfläche gerechnet',
};

/** By `facts.why`. */
const STRESS: Like<typeof STRESS_EN> = {
  spread: (fact) => {
    const { where, value, limit, severity, facts } = fact;
    const mend = where.stage
      ? 'Eine leichtere Maschine nehmen, Bohlen oder Platten auslegen oder mehr aufbringen, bevor dort gefahren wird'
      : 'Eine Lage nehmen, die mehr trägt, oder mehr Dicke darüber';
    const look = severity === 'stop' ? mend : 'Nahe der Grenze: Tragfähigkeit durch Datenblatt und Prüfung nachweisen';
    const found = `${pressing(fact)} drückt mit ${kPa(value)} auf „${facts.layer}“${TOGETHER[String(facts.governs)]}: ${parts(fact)}; getragen werden ${kPa(limit)}${percent(fact)}.`;
    return `${found} Ein elastischer Halbraum ergäbe ${kPa(facts.elasticKPa)} aus den Rädern. ${look}; es entscheidet der Tragwerksplaner.`;
  },
  elastic: (fact) =>
    `${pressing(fact)} drückt mit ${kPa(sumKPa(fact))} auf „${fact.facts.layer}“, wenn sich Räder wie eingegeben mit der Tiefe verteilen, und das wird getragen (${kPa(fact.limit)}). Nach der zweiten Rechnung, einem elastischen Halbraum, sind es ${kPa(fact.value)}${percent(fact)}: ${elasticParts(fact)}. Unter dünner Überdeckung ist die elastische Spitze höher; Lagen auf einer steifen Decke sind kein Halbraum, daher ist keine der beiden Rechnungen genau. Einen Nachweis der Tragfähigkeit verlangen oder mehr Dicke darüber einbauen; es entscheidet der Tragwerksplaner.`,
  begins: (fact) =>
    `${pressing(fact)} würde zu Beginn des Bauzustands, bevor das dort Einzubauende darüber liegt, mit ${kPa(fact.value)} auf „${fact.facts.layer}“ drücken${TOGETHER[String(fact.facts.governs)]}: ${parts(fact)}; getragen werden ${kPa(fact.limit)}${percent(fact)}. Nur auf bereits Eingebautem fahren und vor Kopf schütten, oder auf Bohlen oder Platten; es entscheidet der Tragwerksplaner.`,
};

const pressing = (fact: FindingFact) => `Zone ${fact.where.zone}${when(fact)}: ${fact.facts.vehicle} (${fact.facts.run})`;
const sumKPa = ({ facts }: FindingFact) => Number(facts.wheelsKPa) + Number(facts.aboveKPa);

const parts = (fact: FindingFact) => partsOf(fact, Number(fact.facts.wheelsKPa));
const elasticParts = (fact: FindingFact) => partsOf(fact, Number(fact.facts.elasticKPa));

function partsOf({ facts }: FindingFact, pressedKPa: number): string {
  const factor = Number(facts.factor) === 1 ? '' : `, Schwingbeiwert ${String(facts.factor).replace('.', ',')}`;
  return `${kPa(pressedKPa)} aus ${facts.by === 'support' ? 'einer Abstützung' : 'Rädern'}${factor} und ${kPa(facts.aboveKPa)} aus dem, was darüber liegt`;
}

/** By `facts.why`. */
const BAY: Like<typeof BAY_EN> = {
  'not permitted': (f) =>
    `Feld ${f.where.bay}${when(f)}: ${f.facts.vehicle} (${f.facts.run}) gehört nicht zu den Fahrzeugen, die der Lastenplan dort zulässt. Fernhalten oder vom Tragwerksplaner zulassen lassen.`,
  'not said': (f) =>
    `Feld ${f.where.bay}${when(f)}: Der Lastenplan sagt nicht, welche Fahrzeuge dorthin dürfen; ${f.facts.vehicle} (${f.facts.run}) fährt dort. Den Tragwerksplaner fragen, bei einem Feuerwehrfahrzeug auch die Brandschutzdienststelle.`,
  load: (f) =>
    `Feld ${f.where.bay}${when(f)}: ${numberDe(Number(f.facts.standingKN), 1)} kN von ${f.facts.vehicle} (${f.facts.run}) stehen gleichzeitig darauf, ${kNm2(f.value)} auf seine Fläche; zulässig sind ${kNm2(f.limit)}${percent(f)}. Ein leichteres Fahrzeug oder einen anderen Weg wählen; Räder und Abstützungen muss in jedem Fall der Tragwerksplaner prüfen.`,
};

export const WHEELS_DE: Like<typeof WHEELS_EN> = {
  'stress.layer': byWhy(STRESS),
  'traffic.bay': byWhy(BAY),
};
