/** How a table of points is written: separator, decimal mark, heading. */

import { type DecimalMark, markOf } from './number-form.ts';

export const SEPARATORS = [';', 'tab', '|', ',', 'blank'] as const;
export type Separator = (typeof SEPARATORS)[number];

/** Cells of a row; quotation marks may hold separators. */
export function cellsOf(line: string, separator: Separator): string[] {
  if (separator === 'blank') return line.trim().split(/[ \t\u00A0]+/);
  const mark = separator === 'tab' ? '\t' : separator;
  if (!line.includes('"')) return line.split(mark).map((cell) => cell.trim());
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const letter = line[i];
    if (letter === '"' && quoted && line[i + 1] === '"') {
      cell += '"';
      i += 1;
    } else if (letter === '"') quoted = !quoted;
    else if (letter === mark && !quoted) {
      cells.push(cell.trim());
      cell = '';
    } else cell += letter;
  }
  cells.push(cell.trim());
  return cells;
}

export function looksNumeric(cell: string): boolean {
  return (
    cell.length <= 40 && /^[+\-\u2212\u2013]?[\d.,'’\s\u00A0\u2009\u202F]*\d[\d.,'’\s\u00A0\u2009\u202F]*(?:[eE][+-]?\d+)?$/.test(cell)
  );
}

export interface SeparatorGuess {
  readonly separator: Separator;
  readonly certain: boolean;
}

/**
 * Guesses what stands between the columns: the mark that gives most rows the same number of cells, with most numbers in them.
 * @param lines - rows of the beginning
 */
export function guessSeparator(lines: readonly string[]): SeparatorGuess {
  const scores = SEPARATORS.map((separator) => ({ separator, score: scoreOf(lines, separator) })).sort((a, b) => b.score - a.score);
  return { separator: scores[0].separator, certain: scores[0].score > 0.5 && scores[1].score < 0.97 * scores[0].score };
}

function scoreOf(lines: readonly string[], separator: Separator): number {
  const rows = lines.map((line) => cellsOf(line, separator));
  const counts = new Map<number, number>();
  for (const { length } of rows) counts.set(length, (counts.get(length) ?? 0) + 1);
  const [columns, same] = [...counts].reduce((best, next) => (next[1] > best[1] ? next : best), [0, 0]);
  if (columns < 2) return 0;
  const regular = rows.filter(({ length }) => length === columns);
  const numeric = regular.flat().filter(looksNumeric).length / (regular.length * columns);
  return (same / rows.length) * (0.2 + numeric) * (columns > 12 ? 0.5 : 1);
}

export interface MarkGuess {
  readonly mark: DecimalMark;
  readonly certain: boolean;
  /** A number that could be read in two ways. */
  readonly sample: string;
}

/** Finds the decimal mark from all numbers together: one that can only be read one way settles it. */
export class MarkCount {
  readonly #found = { '.': 0, ',': 0 };
  readonly #twofold = { '.': 0, ',': 0 };
  #sample = '';

  add(cell: string): void {
    const mark = markOf(cell);
    if (mark === 'twofold') {
      this.#twofold[cell.includes('.') ? '.' : ','] += 1;
      if (this.#sample === '') this.#sample = cell.trim();
    } else if (mark !== null) this.#found[mark] += 1;
  }

  guess(): MarkGuess {
    const [found, twofold, sample] = [this.#found, this.#twofold, this.#sample];
    if (found['.'] + found[','] > 0) {
      return { mark: found['.'] >= found[','] ? '.' : ',', certain: found['.'] === 0 || found[','] === 0, sample };
    }
    if (sample === '') return { mark: '.', certain: true, sample };
    return { mark: twofold[','] > twofold['.'] ? ',' : '.', certain: false, sample };
  }
}

export type ColumnRole = 'id' | 'x' | 'y' | 'z' | 'layer' | '-';

const HEADINGS: readonly (readonly [ColumnRole, RegExp])[] = [
  [
    'x',
    /^(?:x|e|r|east(?:ing)?|ost(?:wert)?|rechts(?:wert)?|rw|lon(?:g|gitude)?|länge|laenge|x[-_ ]?(?:koordinate|coord(?:inate)?|wert))$/,
  ],
  ['y', /^(?:y|n|north(?:ing)?|nord(?:wert)?|hoch(?:wert)?|hw|lat(?:itude)?|breite|y[-_ ]?(?:koordinate|coord(?:inate)?|wert))$/],
  [
    'z',
    /^(?:z|h|hoehe|höhe|level|elev(?:ation)?|height|alt(?:itude)?|kote|niveau|ok|rl|z[-_ ]?(?:koordinate|coord(?:inate)?|wert)|.*(?:höhe|hoehe|level).*)$/,
  ],
  ['layer', /^(?:layer|code|art|typ|type|ebene|folie)$/],
  ['id', /^(?:id|nr|no|nummer|number|name|point|punkt|pkt|pt|pnt|point ?(?:id|no|nr)|punkt ?(?:id|nr|nummer)?|pkt ?nr|station)$/],
];

/** Heading without its unit, and the unit. */
export function headingOf(cell: string): { readonly name: string; readonly unit: string | null } {
  const found = /^(.*?)\s*(?:[[(]\s*([\p{L}"'°]+)\s*[\])]|\b(?:in|_)\s*(mm|cm|m|ft))?\.?$/u.exec(cell.trim().toLowerCase());
  return { name: (found?.[1] ?? cell).replace(/[._]+$/, '').trim(), unit: found?.[2] ?? found?.[3] ?? null };
}

/** Roles by heading; each at most once. */
export function rolesOfHeading(cells: readonly string[]): ColumnRole[] {
  const taken = new Set<ColumnRole>();
  return cells.map((cell) => {
    const { name } = headingOf(cell);
    const role = HEADINGS.find(([one, pattern]) => !taken.has(one) && pattern.test(name))?.[0] ?? '-';
    if (role !== '-') taken.add(role);
    return role;
  });
}

/** Roles by content, where there is no heading: numbers in the order x, y, z, after a running number or name. */
export function rolesOfContent(rows: readonly (readonly string[])[]): ColumnRole[] {
  const width = Math.max(...rows.map(({ length }) => length));
  const numeric = Array.from({ length: width }, (_, c) => rows.filter((row) => looksNumeric(row[c] ?? '')).length > 0.7 * rows.length);
  const roles = new Array<ColumnRole>(width).fill('-');
  const numbers = numeric.flatMap((is, c) => (is ? [c] : []));
  const whole = rows.every((row) => /^\d+$/.test(row[0] ?? ''));
  const distinct = new Set(rows.map((row) => row[0])).size === rows.length;
  const leads = numeric[0] ? (numbers.length > 3 && distinct) || (numbers.length === 3 && whole && distinct && rows.length > 2) : true;
  if (leads && width > 2) roles[0] = 'id';
  for (const [i, column] of numbers
    .filter((c) => roles[c] === '-')
    .slice(0, 3)
    .entries())
    roles[column] = (['x', 'y', 'z'] as const)[i];
  return roles;
}
