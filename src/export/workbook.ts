/** Tables as an xlsx workbook: one sheet each, numbers as numbers, texts as texts. */

import writeExcelFile, { type Cell, type Sheet } from 'write-excel-file/universal';
import type { ExportTable } from '../project/export-tables.ts';

/** Widths in characters. */
const WIDTH = { text: 24, number: 14 };

/**
 * Workbook of some tables; those without rows have their headings all the same.
 * @param tables - tables in the order of the sheets
 * @returns bytes of the file
 */
export async function workbookBytes(tables: readonly ExportTable[]): Promise<Uint8Array<ArrayBuffer>> {
  const blob = await writeExcelFile(tables.map(sheetOf)).toBlob();
  return new Uint8Array(await blob.arrayBuffer());
}

function sheetOf(table: ExportTable): Sheet<Blob> {
  return {
    sheet: table.title,
    stickyRowsCount: 1,
    columns: table.columns.map(({ decimals }) => ({ width: decimals === null ? WIDTH.text : WIDTH.number })),
    data: [
      table.columns.map(({ head }): Cell => ({ value: head, type: String, fontWeight: 'bold', wrap: true })),
      ...table.rows.map((row) => row.map((value, c): Cell => cellOf(value, table.columns[c].decimals ?? 0))),
      [],
      [{ value: table.note, type: String }],
    ],
  };
}

/** The whole number stands in the cell; its format only shows the decimals. */
function cellOf(value: string | number | null, decimals: number): Cell {
  if (value === null || value === '') return null;
  if (typeof value === 'string') return { value, type: String };
  return { value, type: Number, format: decimals > 0 ? `0.${'0'.repeat(decimals)}` : '0' };
}
