/** Where a number comes from, and how far that can be trusted. */

/**
 * read: the number was seen at the address given · secondary: seen in a text or code that repeats the source ·
 * common practice: a fact of the trade without a published source · from memory: not confirmed ·
 * assumed: our own starting value · entered: written into the scene by its author · none: pure arithmetic or geometry.
 */
export type SourceGrade = 'read' | 'secondary' | 'common practice' | 'from memory' | 'assumed' | 'entered' | 'none';

export interface Source {
  /** Document with edition, or what the number rests on. */
  readonly document: string;
  /** Table, clause or page. */
  readonly place?: string;
  readonly grade: SourceGrade;
  /** Address at which it was seen. */
  readonly url?: string;
}

/** One number of the catalogue or of the rules, where it comes from, and what in the open scene rests on it. */
export interface SourceUse {
  readonly kind: 'material' | 'vehicle' | 'vegetation' | 'rule';
  /** Id of the material or vehicle, form of vegetation, or key of the rule value. */
  readonly entry: string;
  readonly name: string;
  /** Key of the number, e.g. `density`. */
  readonly number: string;
  readonly source: Source;
  /** Ids of build-ups, vehicles' routes or rules of the open scene; empty where it rests on nothing of this. */
  readonly usedIn: readonly string[];
}

/**
 * One line of text for a source, for reports and panels.
 * @param source - the source
 * @returns e.g. `EN 1991-1-1:2002, Table A.1 (secondary)`
 */
export function sourceLine(source: Source): string {
  return `${source.document}${source.place ? `, ${source.place}` : ''} (${source.grade})`;
}
