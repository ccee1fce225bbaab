/** A load plan that contradicts itself or is out of date, and loads entered twice, in German words. */

import { dayIn } from '../../model/date-text.ts';
import type { FindingFact } from '../../model/finding.ts';
import type { LOAD_PLAN_EN } from './en-load-plan.ts';
import { type Like, namesIn, numberDe } from './rule-words.ts';

const kNm2 = (value: number | string) => `${numberDe(Number(value))} kN/m²`;
const edition = (revision: string | number, date: string | number) =>
  [revision === '' ? '' : `Index ${revision}`, date === '' ? '' : `vom ${dayIn(String(date), 'de')}`]
    .filter((part) => part !== '')
    .join(' ');

function known({ bays, inHistory }: FindingFact['facts']): string {
  const ids = bays === '' ? [] : namesIn(bays);
  if (ids.length === 0) return 'in der Vorgeschichte der Datei';
  const more = ids.length > 3 ? ` und ${ids.length - 3} weiteren` : '';
  const told = `in ${ids.length === 1 ? 'Feld' : 'den Feldern'} ${ids.slice(0, 3).join(', ')}${more}`;
  return inHistory ? `${told} und in der Vorgeschichte der Datei` : told;
}

const PART: Readonly<Record<string, string>> = { permanent: 'ständige Last', imposed: 'Nutzlast' };

export const LOAD_PLAN_DE: Like<typeof LOAD_PLAN_EN> = {
  included: (f) =>
    `Feld ${f.where.bay}: Die Grundlage seiner zulässigen Last sagt „${f.facts.words}“, doch ${kNm2(f.value)} stehen als zulässige ständige Last${Number(f.facts.imposedKNm2) < 0 ? '' : ` und ${kNm2(f.facts.imposedKNm2)} Nutzlast daneben`}. Dieselbe Last könnte zweimal zugelassen sein. Den Tragwerksplaner fragen; ist es die Gesamtlast, sie als Gesamtlast eintragen.`,
  'total below': (f) =>
    `Feld ${f.where.bay}: Die zulässige Gesamtlast von ${kNm2(f.limit)} ist kleiner als allein die zulässige ${PART[String(f.facts.part)]} von ${kNm2(f.value)}. Eine der beiden ist falsch; die Gesamtlast wird eingehalten. Mit dem Lastenplan vergleichen.`,
  'total other': (f) =>
    `Feld ${f.where.bay}: Zulässig sind ${kNm2(f.facts.permanentKNm2)} ständige Last und ${kNm2(f.facts.imposedKNm2)} Nutzlast, zusammen ${kNm2(f.value)}, und eine Gesamtlast von ${kNm2(f.limit)}. Alle drei werden eingehalten, die strengste zählt. Nennt der Lastenplan nur eine davon, die anderen weglassen.`,
  twice: (f) =>
    `Zone ${f.where.zone} und ${f.facts.name} (${f.where.object}): Die Zone soll ${kNm2(f.limit)} Nutzlast tragen, und auf ${numberDe(Number(f.facts.areaM2), 1)} m² davon bringt ${f.facts.name} weitere ${kNm2(f.value)}, als ständige Last. Ist beides dieselbe Last, zählt sie doppelt: Die Nutzlast der Zone behalten und das Objekt löschen.`,
  earlier: (f) =>
    `Feld ${f.where.bay}: Seine zulässige Last stammt aus ${f.facts.document}, ${edition(f.facts.revision, f.facts.date)}; bekannt ist ${known(f.facts)} ${edition(f.facts.laterRevision, f.facts.laterDate)}. Hier eintragen, was der neueste Lastenplan zulässt, oder den Tragwerksplaner fragen, welcher gilt.`,
};
