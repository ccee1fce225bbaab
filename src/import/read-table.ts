/** Reads a list of points: CSV or columns apart by blanks. */

import type { TablePreview } from '../model/drawing.ts';
import { choiceOf, type Gathering } from './gathering.ts';
import type { LengthUnit } from './length-unit.ts';
import { type DecimalMark, readNumber } from './number-form.ts';
import { partOf, type Steps } from './steps.ts';
import {
  type ColumnRole,
  cellsOf,
  guessSeparator,
  headingOf,
  looksNumeric,
  MarkCount,
  rolesOfContent,
  rolesOfHeading,
  SEPARATORS,
  type Separator,
} from './table-form.ts';

export interface TableHead {
  readonly unit: LengthUnit | null;
  readonly levelUnit: LengthUnit | null;
  readonly degrees: boolean | null;
  readonly hasLevels: boolean;
  readonly preview: TablePreview;
}

/** Rows looked at to find the form. */
const SAMPLE_ROWS = 200;
/** Longest row read [characters]. */
const LONGEST_ROW = 10_000;
const STEP = 2000;
const UNIT_WORDS: Readonly<Record<string, LengthUnit>> = {
  m: 'm',
  cm: 'cm',
  mm: 'mm',
  ft: 'ft',
  feet: 'ft',
  "'": 'ft',
  in: 'in',
  inch: 'in',
  '"': 'in',
};

/** Rows with their number in the file, from 1. */
function* rowsOf(text: string): Generator<{ readonly row: number; readonly line: string; readonly share: number }> {
  const end = text.includes('\n') ? '\n' : '\r';
  for (let at = 0, row = 1; at < text.length; row++) {
    const found = text.indexOf(end, at);
    const stop = found === -1 ? text.length : found;
    const line = text.slice(at, Math.min(stop, at + LONGEST_ROW)).replace(/\r$/, '');
    at = stop + 1;
    if (/^\s*(?:$|#|\/\/|sep=.$)/.test(line)) continue;
    yield { row, line, share: at / text.length };
  }
}

/** Reads all of it into the gathering, in the file's units. */
export function* readTable(text: string, gather: Gathering): Steps<TableHead> {
  const sample: string[] = [];
  for (const { line } of rowsOf(text)) if (sample.push(line) >= SAMPLE_ROWS) break;
  const separator = askSeparator(text, sample, gather);
  const mark = askMark(yield* partOf(countMarks(text, separator), 0, 0.4), gather);
  const table = new TableReading(sample, { separator, mark }, gather);
  let count = 0;
  for (const { row, line, share } of rowsOf(text)) {
    table.read(cellsOf(line, separator), row);
    count += 1;
    if (count % STEP === 0) yield 0.4 + 0.6 * share;
  }
  gather.mend('TABLE_READ', { separator, mark });
  return table.finish();
}

function askSeparator(text: string, sample: readonly string[], gather: Gathering): Separator {
  const said = /^\uFEFF?sep=(.)\s*$/m.exec(text.slice(0, 20))?.[1];
  const ofSaid = said === '\t' ? 'tab' : (SEPARATORS.find((separator) => separator === said) ?? null);
  const guess = ofSaid === null ? guessSeparator(sample) : { separator: ofSaid, certain: true };
  return gather.ask({
    id: 'separator',
    code: 'SEPARATOR',
    values: { sample: (sample[1] ?? sample[0] ?? '').slice(0, 60) },
    choices: SEPARATORS.map((separator) => choiceOf(separator, 'SEPARATOR', { separator })),
    guess: guess.separator,
    certain: guess.certain,
  }) as Separator;
}

/** All numbers of the file count: the one that settles the mark may stand far down. */
function* countMarks(text: string, separator: Separator): Steps<MarkCount> {
  const marks = new MarkCount();
  let count = 0;
  for (const { line, share } of rowsOf(text)) {
    for (const cell of cellsOf(line, separator)) if (looksNumeric(cell)) marks.add(cell);
    count += 1;
    if (count % STEP === 0) yield share;
  }
  return marks;
}

function askMark(marks: MarkCount, gather: Gathering): DecimalMark {
  const { mark, certain, sample } = marks.guess();
  if (certain) return mark;
  const [whole, rest] = sample.split(/[.,]/);
  const other = mark === '.' ? ',' : '.';
  const digits = `${whole}${rest ?? ''}`;
  const [large, small] = [Number(digits).toString(), sample.replace(',', '.')];
  const written = sample.includes('.') ? '.' : ',';
  return gather.ask({
    id: 'decimal',
    code: 'DECIMAL',
    values: { sample, large, small },
    choices: [
      choiceOf(mark, 'DECIMAL', { mark, number: written === mark ? small : large }),
      choiceOf(other, 'DECIMAL', { mark: other, number: written === other ? small : large }),
    ],
    guess: mark,
  }) as DecimalMark;
}

interface TableForm {
  readonly separator: Separator;
  readonly mark: DecimalMark;
}

class TableReading {
  readonly #gather: Gathering;
  readonly #mark: DecimalMark;
  readonly #heading: readonly string[] | null;
  readonly #headingText: string;
  readonly #roles: readonly ColumnRole[];
  readonly #preview: TablePreview;
  readonly #dates: 'leave' | 'number';
  readonly #layers = new Set<string>();
  #headings = 0;
  #read = 0;
  #withLevel = 0;
  #unusual = { count: 0, sample: '' };
  #bad = { count: 0, first: 0, cell: '' };
  #ragged = { count: 0, first: 0, cells: 0 };

  constructor(sample: readonly string[], { separator, mark }: TableForm, gather: Gathering) {
    this.#gather = gather;
    this.#mark = mark;
    const rows = sample.map((line) => cellsOf(line, separator));
    const first = rows.findIndex((row) => row.filter(looksNumeric).length >= 2);
    const heading = first > 0 ? rows[first - 1] : null;
    const ofHeading = heading === null ? [] : rolesOfHeading(heading);
    const named = ofHeading.includes('x') && ofHeading.includes('y');
    this.#heading = heading;
    this.#headingText = heading?.join('\n') ?? '';
    const body = rows.slice(Math.max(0, first)).filter((row) => row.some(looksNumeric));
    const guess = named ? ofHeading : body.length > 0 ? rolesOfContent(body) : [];
    this.#roles = this.#askColumns(guess, body[0] ?? [], named);
    this.#preview = {
      columns: heading ?? guess.map((_, i) => `${i + 1}`),
      rows: body.slice(0, 5).map((row) => row.map((cell) => cell.slice(0, 60))),
    };
    this.#dates = this.#askDates(rows);
  }

  #askColumns(guess: readonly ColumnRole[], first: readonly string[], certain: boolean): readonly ColumnRole[] {
    const swapped = guess.map((role) => (role === 'x' ? 'y' : role === 'y' ? 'x' : role));
    const columns = (roles: readonly ColumnRole[]) =>
      roles
        .flatMap((role, i) => (role === '-' ? [] : [`${role} = ${(this.#heading?.[i] ?? first[i] ?? `${i + 1}`).slice(0, 30)}`]))
        .join(', ');
    const choices = [guess, swapped].map((roles) => choiceOf(roles.join(), 'COLUMNS', { columns: columns(roles) }));
    const form = /^(?:id|x|y|z|layer|-)(?:,(?:id|x|y|z|layer|-)){1,60}$/;
    const once = (answer: string, role: string) => answer.split(',').filter((one) => one === role).length === 1;
    const taken = this.#gather.ask({
      id: 'columns',
      code: 'COLUMNS',
      values: { sample: first.join(' | ').slice(0, 100) },
      choices,
      guess: guess.join(),
      certain,
      free: (answer) => form.test(answer) && once(answer, 'x') && once(answer, 'y'),
    });
    return taken.split(',') as ColumnRole[];
  }

  /** Spreadsheets turn 22.5 into 22 May. */
  #askDates(rows: readonly (readonly string[])[]): 'leave' | 'number' {
    const columns = this.#roles.flatMap((role, i) => (role === 'x' || role === 'y' || role === 'z' ? [i] : []));
    for (const [i, row] of rows.entries()) {
      const cell = columns.map((column) => row[column] ?? '').find((one) => numberOfDate(one) !== null);
      if (cell === undefined) continue;
      const number = numberOfDate(cell) ?? 0;
      return this.#gather.ask({
        id: 'dates',
        code: 'DATES',
        values: { row: i + 1, sample: cell.slice(0, 30), number },
        choices: [choiceOf('leave', 'DATES_LEAVE', {}), choiceOf('number', 'DATES_NUMBER', { number })],
        guess: 'leave',
      }) as 'leave' | 'number';
    }
    return 'leave';
  }

  read(cells: readonly string[], row: number): void {
    if (this.#heading !== null && cells.length === this.#heading.length && cells.join('\n') === this.#headingText) {
      this.#headings += 1;
      return;
    }
    if (!cells.some(looksNumeric)) {
      // A title or note above, between or below.
      this.#gather.ignored(this.#layerOf(cells), 'row without numbers');
      return;
    }
    const values = new Map<ColumnRole, number | null>();
    for (const [i, role] of this.#roles.entries()) {
      if (role === 'x' || role === 'y' || role === 'z') values.set(role, this.#number(cells[i] ?? ''));
    }
    const [x, y, z] = [values.get('x') ?? null, values.get('y') ?? null, values.get('z') ?? null];
    if (x === null || y === null) {
      this.#leaveOut(cells, row);
      return;
    }
    const layer = this.#layerOf(cells);
    const name = this.#gather.text(cells[this.#roles.indexOf('id')] ?? '');
    this.#gather.add({ kind: 'point', layer, x, y, z, ...(name === '' ? {} : { name }) });
    this.#gather.used(layer, 'row');
    this.#read += 1;
    if (z !== null) this.#withLevel += 1;
  }

  #layerOf(cells: readonly string[]): string {
    const column = this.#roles.indexOf('layer');
    const layer = column === -1 ? 'points' : this.#gather.layerName(cells[column] ?? 'points');
    // Past some hundred kinds it is no layer but a running text.
    if (this.#layers.size < 200) this.#layers.add(layer);
    return this.#layers.has(layer) ? layer : 'points';
  }

  #number(cell: string): number | null {
    const read = readNumber(cell, this.#mark);
    if (read === null) return this.#dates === 'number' ? numberOfDate(cell) : null;
    if (read.unusual) {
      this.#unusual.count += 1;
      if (this.#unusual.sample === '') this.#unusual.sample = cell.trim();
    }
    return Math.abs(read.value) <= 1e12 ? read.value : null;
  }

  #leaveOut(cells: readonly string[], row: number): void {
    this.#gather.ignored(this.#layerOf(cells), 'row without x and y');
    if (cells.length < this.#roles.filter((role) => role !== '-').length || cells.length > this.#roles.length) {
      if (this.#ragged.count === 0) this.#ragged = { count: 0, first: row, cells: cells.length };
      this.#ragged.count += 1;
      return;
    }
    const cell = this.#roles
      .map((role, i) => (role === 'x' || role === 'y' ? (cells[i] ?? '') : '0'))
      .find((one) => this.#number(one) === null);
    if (this.#bad.count === 0) this.#bad = { count: 0, first: row, cell: this.#gather.text(cell ?? '').slice(0, 40) };
    this.#bad.count += 1;
  }

  finish(): TableHead {
    const gather = this.#gather;
    if (this.#headings > 1) gather.mend('HEADER_REPEATED', { count: this.#headings - 1 });
    if (this.#unusual.count > 0) gather.mend('NUMBER_MARKS', this.#unusual);
    this.#tellLeftOut();
    const hasLevels = this.#roles.includes('z');
    const missing = this.#read - this.#withLevel;
    if (hasLevels && missing > 0 && this.#withLevel > 0) {
      gather.warning('LEVELS_MISSING', { count: missing, of: this.#read });
    }
    return { ...this.#units(), hasLevels, preview: this.#preview };
  }

  #tellLeftOut(): void {
    if (this.#ragged.count > 0) {
      const { count, first, cells } = this.#ragged;
      this.#gather.warning('ROWS_RAGGED', { count, cells, columns: this.#roles.length }, { line: first });
    }
    if (this.#bad.count === 0) return;
    const { count, first, cell } = this.#bad;
    this.#gather.warning('NUMBER_BAD:row', { count, found: cell }, { line: first });
  }

  #units(): Pick<TableHead, 'unit' | 'levelUnit' | 'degrees'> {
    const unitOf = (role: ColumnRole) => {
      const cell = this.#heading?.[this.#roles.indexOf(role)];
      const { name, unit } = cell === undefined ? { name: '', unit: null } : headingOf(cell);
      return {
        name,
        unit: unit !== null && Object.hasOwn(UNIT_WORDS, unit) ? UNIT_WORDS[unit] : null,
        degrees: unit === '°' || /^l(?:at|on|ä|ae)|^breite/.test(name),
      };
    };
    const [x, z] = [unitOf('x'), unitOf('z')];
    return { unit: x.unit, levelUnit: z.unit, degrees: x.degrees ? true : x.unit !== null ? false : null };
  }
}

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const OTHER_MONTHS: Readonly<Record<string, number>> = { mär: 3, mrz: 3, mai: 5, okt: 10, dez: 12 };

/** The number that a spreadsheet took for a date: `22. Mai`, `22-May`, `22.05.2026` are 22.5. Null where it is no date. */
function numberOfDate(cell: string): number | null {
  const found = /^(\d{1,2})(?:[.\-/ ]{1,2}(\p{L}{3})\p{L}{0,7}\.?(?:[.\-/ ]{1,2}\d{2,4})?|[./-](\d{1,2})(?:[./-]\d{4}|\.))$/u.exec(
    cell.trim(),
  );
  if (found === null) return null;
  const letters = found[2]?.toLowerCase();
  const month = letters === undefined ? Number(found[3]) : (OTHER_MONTHS[letters] ?? MONTHS.indexOf(letters) + 1);
  return month >= 1 && month <= 12 ? Number(`${Number(found[1])}.${month}`) : null;
}
