/** Where every number comes from, as text for a terminal: by grade, each source with the numbers that rest on it. */

import type { Language } from '../model/language.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { Source, SourceGrade, SourceUse } from '../model/source.ts';
import { sourceUses } from '../project/source-uses.ts';

/** What each grade means, the best first. */
const GRADES: Readonly<Record<SourceGrade, string>> = {
  read: 'Read: seen at the address given',
  secondary: 'Secondary: seen in a text or program that repeats the source',
  'common practice': 'Common practice: usual in the trade, no published source',
  'from memory': 'From memory: not confirmed',
  assumed: 'Assumed: our own starting value, to be replaced by a data sheet',
  entered: 'Entered: written into the scene file by its author',
  none: 'None: pure arithmetic or geometry',
};

/**
 * The list.
 * @param scene - scene whose uses are named; null for the catalogue and the rules alone
 * @param language - of our words
 * @returns plain text, lines ended
 */
export function sourceLines(scene: SceneFile | null, language: Language = 'en'): string {
  const uses = sourceUses(scene, language);
  const words = WORDS[language];
  const lines = (Object.keys(GRADES) as SourceGrade[]).flatMap((grade) => {
    const own = uses.filter(({ source }) => source.grade === grade);
    if (own.length === 0) return [];
    const sources = grouped(own, ({ source }) => placeOf(source));
    return [`${words.grades[grade]} (${words.counted(own.length, sources.length)})`, ...sources.flatMap((one) => sourceOf(one, words)), ''];
  });
  return lines.map((line) => `${line}\n`).join('');
}

interface Words {
  readonly grades: Readonly<Record<SourceGrade, string>>;
  readonly counted: (numbers: number, sources: number) => string;
  readonly usedIn: string;
  readonly kinds: Readonly<Record<SourceUse['kind'], string>>;
}

const plural = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`;

const WORDS: Readonly<Record<Language, Words>> = {
  en: {
    grades: GRADES,
    counted: (numbers, sources) => `${plural(numbers, 'number')} on ${plural(sources, 'source')}`,
    usedIn: 'used in',
    kinds: { material: 'material', vehicle: 'vehicle', vegetation: 'vegetation', rule: 'rule' },
  },
  de: {
    grades: {
      read: 'Gelesen: an der angegebenen Adresse gesehen',
      secondary: 'Aus zweiter Hand: in einem Text oder Programm gesehen, das die Quelle wiedergibt',
      'common practice': 'Übliche Praxis: im Fach gebräuchlich, keine veröffentlichte Quelle',
      'from memory': 'Aus dem Gedächtnis: nicht bestätigt',
      assumed: 'Angenommen: unser eigener Startwert, durch ein Datenblatt zu ersetzen',
      entered: 'Eingegeben: vom Verfasser in die Szenendatei geschrieben',
      none: 'Keine: reine Arithmetik oder Geometrie',
    },
    counted: (numbers, sources) => `${numbers} ${numbers === 1 ? 'Zahl' : 'Zahlen'} aus ${sources} ${sources === 1 ? 'Quelle' : 'Quellen'}`,
    usedIn: 'verwendet in',
    kinds: { material: 'Material', vehicle: 'Fahrzeug', vegetation: 'Vegetation', rule: 'Regel' },
  },
};

function placeOf({ document, place, url }: Source): string {
  return [document, place, url].filter(Boolean).join(', ');
}

function sourceOf([place, uses]: [string, SourceUse[]], words: Words): string[] {
  return [
    `  ${place}`,
    ...grouped(uses, ({ kind, entry, name }) => `${words.kinds[kind]} ${kind === 'rule' || kind === 'vegetation' ? name : entry}`).map(
      (one) => entryOf(one, words),
    ),
  ];
}

function entryOf([entry, uses]: [string, SourceUse[]], words: Words): string {
  const users = [...new Set(uses.flatMap(({ usedIn }) => usedIn))];
  return `    ${entry}: ${uses.map(({ number }) => number).join(', ')}${users.length > 0 ? `; ${words.usedIn} ${users.join(', ')}` : ''}`;
}

/** In the order in which the keys first come. */
function grouped(uses: readonly SourceUse[], keyOf: (use: SourceUse) => string): [string, SourceUse[]][] {
  const groups = new Map<string, SourceUse[]>();
  for (const use of uses) groups.set(keyOf(use), [...(groups.get(keyOf(use)) ?? []), use]);
  return [...groups];
}
