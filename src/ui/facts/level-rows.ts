/** Levels as they are copied from a table: one point per row, x, y and z. */

import { readNumber } from '../../model/parse-number.ts';
import type { Point3M } from '../../model/scene-file.ts';

export type LevelRows =
  | { readonly ok: true; readonly spots: readonly Point3M[] }
  | { readonly ok: false; readonly line: number; readonly text: string };

/** Far more than anyone pastes. */
const LONGEST = 40;

/** Columns are set apart by tabs or semicolons; else by blanks; else by commas, where decimals have points. */
function cellsOf(row: string): readonly string[] {
  const mark = [/\t/, /;/].find((one) => one.test(row));
  if (mark !== undefined) return row.split(mark).map((cell) => cell.trim());
  const blanks = row.trim().split(/\s+/);
  return blanks.length >= 3 ? blanks.map((cell) => cell.replace(/,$/, '')) : row.split(',').map((cell) => cell.trim());
}

const number = (cell: string): number | null => {
  const read = readNumber(cell);
  // Of coordinates and levels a single mark is the decimal mark.
  if (!read.ok && read.why === 'ambiguous') return Number(cell.trim().replace(',', '.').replace('−', '-'));
  return read.ok ? read.value : null;
};

/**
 * Rows x y z; a number or name of the point before them is passed over, a row of heads on top too.
 * @param text - as pasted
 */
export function readLevelRows(text: string): LevelRows {
  const spots: Point3M[] = [];
  for (const [i, row] of text.split(/\r?\n/).entries()) {
    if (row.trim() === '') continue;
    const cells = cellsOf(row).filter((cell) => cell !== '');
    const [x, y, z] = (cells.length > 3 ? cells.slice(1, 4) : cells).map(number);
    if (cells.length >= 3 && typeof x === 'number' && typeof y === 'number' && typeof z === 'number') spots.push([x, y, z]);
    else if (spots.length > 0 || /\d/.test(row)) return { ok: false, line: i + 1, text: row.trim().slice(0, LONGEST) };
  }
  return { ok: true, spots };
}
