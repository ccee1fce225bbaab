/** Retaining edges in German words: what is found, why it matters, what to do. */

import type { FindingFact } from '../../model/finding.ts';
import type { BEARING_EN, WALLS_EN } from './en-walls.ts';
import { byWhy, type Like, numberDe } from './rule-words.ts';

/** Rounded to the unsafe side, so that 1.497 never reads as 1.50. */
const less = (value: number) => numberDe(Math.floor(100 * value + 1e-6) / 100);
const more = (value: number) => numberDe(Math.ceil(100 * value - 1e-6) / 100);
const kPa = (value: number) => `${numberDe(Math.ceil(10 * value - 1e-6) / 10, 1)} kPa`;
const ENGINEER = 'Den Nachweis der Wand führt der Tragwerksplaner.';

function slidingWords({ where, value, limit, facts }: FindingFact): string {
  const asked = value < 1 ? `sie hält nicht, verlangt wird ${numberDe(limit)}` : `verlangt wird ${numberDe(limit)}`;
  if (facts.why === 'overturning') {
    return `Stützwand ${where.object}: Das haltende Moment ist das ${less(value)}-Fache des kippenden; ${asked}. Die Fußplatte breiter oder die Wand niedriger machen. ${ENGINEER}`;
  }
  return `Stützwand ${where.object}: Die Reibung unter dem Fuß ist das ${less(value)}-Fache des Erddrucks; ${asked}. Sie steht mit tan δ = ${numberDe(Number(facts.baseFriction))}; diesen Wert für die dort liegenden Bahnen messen lassen. Die Fußplatte breiter, die Wand niedriger oder die Hinterfüllung leichter machen, oder den Fuß gegen etwas Festes stützen: kein Anker durch die Abdichtung. ${ENGINEER}`;
}

/** By `facts.why`. */
const BEARING: Like<typeof BEARING_EN> = {
  unknown: ({ where, value, facts }) =>
    `Stützwand ${where.object}: Unter dem Fuß drücken bis zu ${kPa(value)}, ${facts.layers === 0 ? 'und zwischen ihm und der Abdichtung ist keine Lage gezeichnet' : 'und für das, worauf er steht, ist keine zulässige Pressung angegeben'}. Tragwerksplaner und Datenblätter sagen, ob das getragen wird.`,
  pressure: ({ where, value, limit, severity, facts }) =>
    `Stützwand ${where.object}: Unter dem Fuß drücken bis zu ${kPa(value)}, die Lage darunter (${facts.layer}) trägt ${numberDe(limit, 1)} kPa${severity === 'stop' ? '' : ' (nahe der Grenze)'}. Die Fußplatte breiter machen oder sie auf eine Lage stellen, die mehr trägt. ${ENGINEER}`,
  tension: ({ where, value, limit, facts }) =>
    `Stützwand ${where.object}: Die Resultierende liegt ${more(value)} m neben der Mitte des Fußes, mehr als ein Sechstel der Breite (${less(limit)} m): Die Fuge klafft, und der Fuß drückt nur auf ${less(Number(facts.contactM))} m von ${numberDe(Number(facts.baseM))} m. Die Fußplatte breiter machen. ${ENGINEER}`,
  soil: ({ where, value, limit, facts }) =>
    `Stützwand ${where.object}: ${where.zone ? `Der Aufbau von Zone ${where.zone} dahinter ist ${less(value)} m hoch` : 'Dahinter liegt kein Aufbau'}, während sie ${numberDe(limit)} m stützt. Der Boden auf ihrer Fußplatte wird mit der Zone gerechnet, daher fehlen in den Lasten der Decke bis zu ${more(Number(facts.missingKNm2))} kN/m². Den Boden so zeichnen, wie er liegen wird, oder die Wand umdrehen.`,
};

export const WALLS_DE: Like<typeof WALLS_EN> = {
  'wall.sliding': slidingWords,
  'wall.bearing': byWhy(BEARING),
};
