/** Where every number comes from, as text for a terminal: by grade, each source with the numbers that rest on it. */

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
 * @returns plain text, lines ended
 */
export function sourceLines(scene: SceneFile | null): string {
  const uses = sourceUses(scene);
  const lines = (Object.keys(GRADES) as SourceGrade[]).flatMap((grade) => {
    const own = uses.filter(({ source }) => source.grade === grade);
    if (own.length === 0) return [];
    const sources = grouped(own, ({ source }) => placeOf(source));
    return [
      `${GRADES[grade]} (${counted(own.length, 'number')} on ${counted(sources.length, 'source')})`,
      ...sources.flatMap(sourceOf),
      '',
    ];
  });
  return lines.map((line) => `${line}\n`).join('');
}

const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`;

function placeOf({ document, place, url }: Source): string {
  return [document, place, url].filter(Boolean).join(', ');
}

function sourceOf([place, uses]: [string, SourceUse[]]): string[] {
  return [`  ${place}`, ...grouped(uses, ({ kind, entry }) => `${kind} ${entry}`).map(entryOf)];
}

function entryOf([entry, uses]: [string, SourceUse[]]): string {
  const users = [...new Set(uses.flatMap(({ usedIn }) => usedIn))];
  return `    ${entry}: ${uses.map(({ number }) => number).join(', ')}${users.length > 0 ? `; used in ${users.join(', ')}` : ''}`;
}

/** In the order in which the keys first come. */
function grouped(uses: readonly SourceUse[], keyOf: (use: SourceUse) => string): [string, SourceUse[]][] {
  const groups = new Map<string, SourceUse[]>();
  for (const use of uses) groups.set(keyOf(use), [...(groups.get(keyOf(use)) ?? []), use]);
  return [...groups];
}
