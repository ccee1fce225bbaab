/** What the import page shows, sorted and counted: open questions, how a drawing lies in its file, what becomes of parts. */

import type { DrawingBox, Question } from '../../model/drawing.ts';
import { DRAWN_PARTS, type DrawnPart, type Taking, type Takings } from '../../model/drawn-parts.ts';
import type { DraftView, ReadView } from '../../model/importer.ts';
import type { Issue } from '../../model/issue.ts';
import type { PointM, SceneFile } from '../../model/scene-file.ts';
import { COLUMN_ROLES, type ColumnRole } from '../text/en-import.ts';
import { boxOf } from './place.ts';

/** Columns are asked above the table itself. */
const isInTable = ({ id }: Question) => id === 'columns';
const isOpen = ({ answered, certain }: Question) => !answered && !certain;

export interface SortedQuestions {
  /** Asked first; answered ones stay where they were asked. */
  readonly open: readonly Question[];
  readonly settled: readonly Question[];
  readonly columns: Question | null;
  readonly openCount: number;
}

export function sortQuestions(questions: readonly Question[]): SortedQuestions {
  const others = questions.filter((question) => !isInTable(question));
  return {
    open: others.filter(({ certain }) => !certain),
    settled: others.filter(({ certain }) => certain),
    columns: questions.find(isInTable) ?? null,
    openCount: questions.filter(isOpen).length,
  };
}

export const hasError = (issues: readonly Issue[]): boolean => issues.some(({ level }) => level === 'error');

/** Roles of the columns from an answer, one for each column of the table. */
export function columnRoles(answer: string, count: number): readonly ColumnRole[] {
  const said = answer.split(',');
  return Array.from({ length: Math.max(count, said.length) }, (_, i) => COLUMN_ROLES.find((role) => role === said[i]) ?? '-');
}

/** Every role stands once: the column that had it gets what this one had. */
export function withColumnRole(roles: readonly ColumnRole[], column: number, role: ColumnRole): string {
  const before = roles[column] ?? '-';
  return roles.map((old, i) => (i === column ? role : role !== '-' && old === role ? before : old)).join();
}

/** Whether an answer can be read: x and y are there. */
export const namesPlaces = (answer: string): boolean => {
  const roles = answer.split(',');
  return roles.includes('x') && roles.includes('y');
};

/** How the numbers of the file lie: from the plan back to the file. */
export type Lie = (point: PointM) => PointM;

const LIES: Readonly<Record<string, Lie>> = {
  yx: ([x, y]) => [y, x],
  'x-y': ([x, y]) => [x, -y],
  '-xy': ([x, y]) => [-x, y],
};

/** Null where the file's numbers lie as the plan does. */
export function lieOf({ questions }: Pick<ReadView, 'questions'>): Lie | null {
  return LIES[questions.find(({ id }) => id === 'axes')?.taken ?? 'xy'] ?? null;
}

/** Extent in the numbers of the file; null where they are metres already. */
export function fileSize({ questions, box }: Pick<ReadView, 'questions' | 'box'>): PointM | null {
  const unit = questions.find(({ id }) => id === 'unit');
  if (unit === undefined || box === null || unit.taken === 'm') return null;
  const { width, height } = unit.values;
  return typeof width === 'number' && typeof height === 'number' && unit.code === 'UNIT' ? [width, height] : null;
}

/** Gap between the drawing and a deck, the greater of both directions [m]; 0 where they meet. */
export function gapM({ minX, minY, maxX, maxY }: DrawingBox, deck: readonly PointM[]): number {
  const { min, max } = boxOf(deck);
  return Math.max(0, min[0] - maxX, minX - max[0], min[1] - maxY, minY - max[1]);
}

export const sizeOf = ({ minX, minY, maxX, maxY }: DrawingBox): PointM => [maxX - minX, maxY - minY];

/** Drawn things of these kinds are one whole; a second set over the first helps nobody. */
const WHOLE: ReadonlySet<DrawnPart> = new Set(['outline', 'openings', 'levels']);

/** What becomes of each kind of part, unless chosen otherwise: nothing that was entered is lost. */
export function takingsOf({ counts }: DraftView, chosen: Takings): Takings {
  return Object.fromEntries(
    DRAWN_PARTS.filter((part) => counts[part] !== undefined).map((part): [DrawnPart, Taking] => [
      part,
      chosen[part] ?? (WHOLE.has(part) ? 'replace' : 'add'),
    ]),
  );
}

/** Whether the scene has parts of this kind that could be replaced. */
export function hasPart({ deck, zones, objects }: SceneFile, part: DrawnPart): boolean {
  const lists = {
    outline: deck.outline,
    openings: deck.openings,
    levels: deck.levels?.spots,
    bays: deck.bays,
    zones,
    edges: deck.edges,
    columns: deck.columns,
    outlets: deck.outlets,
    trees: objects?.filter(({ kind }) => kind === 'tree'),
  };
  return (lists[part]?.length ?? 0) > 0;
}
