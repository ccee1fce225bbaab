/** Tables as CSV that a spreadsheet opens rightly by double click, in English and German. */

import type { ExportLanguage } from '../model/engine.ts';
import type { Cell, ExportTable } from './export-tables.ts';

/** Marks the text as UTF-8; without it umlauts and squares break in spreadsheets. */
const BYTE_ORDER_MARK = '\uFEFF';

/** A text that begins so would be taken for a formula. */
const LIKE_A_FORMULA = /^[=+\-@\t\r]/;

/**
 * CSV text: a row of headings, the rows, an empty row and the table's note.
 * @param table - table; numbers are rounded to their column's decimals
 * @param language - `de` has semicolons and decimal commas, `en` commas and points
 * @returns text with byte order mark, lines ended by CR LF
 */
export function csvText(table: ExportTable, language: ExportLanguage): string {
  const separator = language === 'de' ? ';' : ',';
  const line = (cells: readonly string[]) => `${cells.join(separator)}\r\n`;
  const text = (value: string) => quoted(guarded(value), separator);
  const cell = (value: Cell, column: number) => {
    if (typeof value !== 'number') return text(value ?? '');
    return quoted(numberText(value, table.columns[column].decimals ?? 0, language), separator);
  };
  const lines = [
    line(table.columns.map(({ head }) => text(head))),
    ...table.rows.map((row) => line(row.map(cell))),
    line([]),
    line([text(table.note)]),
  ];
  return `${BYTE_ORDER_MARK}${lines.join('')}`;
}

/** Texts only: a negative number is a number and must stay one. */
function guarded(text: string): string {
  return LIKE_A_FORMULA.test(text) ? `'${text}` : text;
}

function quoted(text: string, separator: string): string {
  return text.includes(separator) || /["\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Never with an exponent, a thousands mark or a negative zero. */
function numberText(value: number, decimals: number, language: ExportLanguage): string {
  const fixed = value.toFixed(decimals);
  const short = decimals > 0 ? fixed.replace(/\.?0+$/, '') : fixed;
  const text = short === '-0' ? '0' : short;
  return language === 'de' ? text.replace('.', ',') : text;
}
