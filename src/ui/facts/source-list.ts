/** Sources one by one, each with every number that rests on it, those the open scene uses first. */

import type { Source, SourceGrade, SourceUse } from '../../model/source.ts';

export interface ListedSource {
  readonly source: Source;
  readonly uses: readonly SourceUse[];
  /** Some number of it is used by the open scene. */
  readonly inScene: boolean;
}

export interface GradeGroup {
  readonly grade: SourceGrade;
  readonly sources: readonly ListedSource[];
}

/** From what was read to what was assumed. */
const GRADES: readonly SourceGrade[] = ['read', 'secondary', 'common practice', 'from memory', 'assumed', 'entered', 'none'];

const keyOf = ({ document, place, url, grade }: Source) => [grade, document, place, url].join('\n');

/** By grade; within a grade those of the scene first, then by name. */
export function listSources(uses: readonly SourceUse[], onlyInScene: boolean): GradeGroup[] {
  const bySource = new Map<string, SourceUse[]>();
  for (const use of uses) {
    if (onlyInScene && use.usedIn.length === 0) continue;
    const known = bySource.get(keyOf(use.source));
    if (known) known.push(use);
    else bySource.set(keyOf(use.source), [use]);
  }
  const sources = [...bySource.values()].flatMap((of): ListedSource[] => {
    const source = of[0]?.source;
    return source ? [{ source, uses: of, inScene: of.some(({ usedIn }) => usedIn.length > 0) }] : [];
  });
  sources.sort((a, b) => Number(b.inScene) - Number(a.inScene) || a.source.document.localeCompare(b.source.document, 'en'));
  const groups = GRADES.map((grade) => ({ grade, sources: sources.filter(({ source }) => source.grade === grade) }));
  return groups.filter((group) => group.sources.length > 0);
}

export interface UsedEntry {
  readonly name: string;
  readonly kind: SourceUse['kind'];
  readonly numbers: readonly string[];
  readonly usedIn: readonly string[];
}

/** Materials, vehicles and rules that rest on a source, each with the keys of its numbers. */
export function usedEntries(uses: readonly SourceUse[]): UsedEntry[] {
  const entries = new Map<string, { name: string; kind: SourceUse['kind']; numbers: string[]; usedIn: string[] }>();
  for (const { kind, entry, name, number, usedIn } of uses) {
    const known = entries.get(`${kind} ${entry}`) ?? { name, kind, numbers: [], usedIn: [] };
    known.numbers.push(number);
    known.usedIn.push(...usedIn.filter((user) => !known.usedIn.includes(user)));
    entries.set(`${kind} ${entry}`, known);
  }
  return [...entries.values()];
}
