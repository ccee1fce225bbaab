/** Edges, strips and falls in German words: what is found, why it matters, what to do. */

import type { FindingFact } from '../../model/finding.ts';
import type { EDGES_EN } from './en-edges.ts';
import { type Like, numberDe } from './rule-words.ts';

const mm = (value: number) => `${numberDe(value, 0)} mm`;
/** Rounded to the unsafe side, so that 49.6 of 50 mm never reads as 50. */
const lessMm = (value: number) => mm(Math.floor(value + 1e-6));
const moreMm = (value: number) => mm(Math.ceil(value - 1e-6));
const areaM2 = (value: number) => `${numberDe(value)} m²`;

function upstandWords({ where, value, limit, facts }: FindingFact): string {
  const name = facts.kind === 'threshold' ? `Schwelle ${facts.edge}` : `Aufkantung ${facts.edge}`;
  const height =
    value < 0
      ? `Die Fertighöhe von Zone ${where.zone} liegt ${moreMm(-value)} über dem Ende der Abdichtung`
      : `Die Abdichtung endet ${lessMm(value)} über der Fertighöhe von Zone ${where.zone}`;
  return `${name}: ${height}, nötig sind mindestens ${mm(limit)}, es fehlen ${moreMm(Number(facts.missingMm))}. ${upstandAdvice(facts)}`;
}

function upstandAdvice(facts: FindingFact['facts']): string {
  const why = 'Spritzwasser, stehendes Wasser und Schnee laufen dahinter.';
  if (facts.kind === 'upstand') return `${why} Die Fertighöhe dort senken oder die Abdichtung höher führen lassen.`;
  if (facts.drained)
    return `${why} Die Fertighöhe senken oder die Schwelle höher legen; 0 bis 20 mm nur als Sonderkonstruktion, die Planer, Dachabdichter und Bauherr schriftlich vereinbaren.`;
  return `${why} Eine entwässerte Rinne vor die Tür setzen, die Fertighöhe senken oder die Schwelle höher legen.`;
}

const KIND: Readonly<Record<string, string>> = {
  upstand: 'die Aufkantung',
  threshold: 'die Schwelle',
  outlet: 'den Ablauf',
  overflow: 'den Notüberlauf',
};

function stripWords({ where, value, limit, facts }: FindingFact): string {
  const what = `${KIND[String(facts.kind)]} ${facts.edge}`;
  const near =
    value === 0
      ? `Die Bepflanzung reicht bis an ${what}`
      : `Die Bepflanzung kommt bis auf ${numberDe(Math.floor(100 * value + 1e-6) / 100)} m an ${what} heran`;
  const isOutlet = facts.kind === 'outlet' || facts.kind === 'overflow';
  const why = isOutlet
    ? 'Wurzeln und Laub verstopfen ihn, und niemand findet ihn.'
    : 'Wurzeln und nasser Boden arbeiten an der Fuge, und Regen spritzt Boden hoch.';
  return `Zone ${where.zone}: ${near}; gewünscht sind ${numberDe(limit)} m ohne Pflanzen. ${why} Einen Streifen aus Kies oder Belag ${isOutlet ? 'darum herum' : 'daran entlang'} anlegen.`;
}

function fallWords({ where, value, limit, severity, facts }: FindingFact): string {
  const most = Number(facts.mostPercent);
  const falls = most - value < 0.005 ? `${numberDe(value)} %` : `${numberDe(value)} bis ${numberDe(most)} %`;
  const zone = facts.surface === 'paving' ? ` (Zone ${where.zone})` : '';
  const places = Number(facts.places) > 1 ? ` an ${facts.places} Stellen, die größte ${areaM2(Number(facts.largestM2))}${zone},` : zone;
  const area = `${areaM2(Number(facts.areaM2))}${places}`;
  if (facts.surface === 'paving') {
    return `Der Belag hat auf ${area} nur ${falls} Gefälle, weniger als ${numberDe(limit)} %: Oberflächenwasser läuft nur durch die Fugen ab. Fugen und Tragschicht wasserdurchlässig halten oder dem Belag Gefälle geben.`;
  }
  if (severity === 'note') {
    return `Die Abdichtung hat auf ${area} nur ${falls} Gefälle: weniger als die empfohlenen ${numberDe(limit)} %. Wo die Decke durchhängt, bleiben Pfützen; Elemente füllen und die Abläufe frei halten.`;
  }
  return `Die Abdichtung hat auf ${area} nur ${falls} Gefälle, weniger als ${numberDe(limit)} %. Dort steht Wasser, und das Durchhängen der Decke nimmt das restliche Gefälle. Vor dem Aufbau Gefälle herstellen lassen, oder einen Ablauf und eine Dränung vorsehen, die stehendes Wasser verträgt.`;
}

export const EDGES_DE: Like<typeof EDGES_EN> = {
  'edge.upstand': upstandWords,
  'edge.strip': stripWords,
  'level.fall': fallWords,
};
