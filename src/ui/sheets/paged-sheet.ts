/** What a print sheet is made of, before it is laid out on pages. */

import type { ReactNode } from 'react';

export interface PaperSize {
  readonly name: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

export const A4: PaperSize = { name: 'A4 portrait', widthMm: 210, heightMm: 297 };
export const A3: PaperSize = { name: 'A3 landscape', widthMm: 420, heightMm: 297 };
/** Round the content [mm]. */
export const MARGIN_MM = 10;
/** Head and foot of every page [mm]. */
export const HEAD_MM = 15;
export const FOOT_MM = 10;

export const roomMm = ({ widthMm, heightMm }: PaperSize) => ({
  widthMm: widthMm - 2 * MARGIN_MM,
  heightMm: heightMm - 2 * MARGIN_MM - HEAD_MM - FOOT_MM,
});

export interface TableColumn {
  readonly head: string;
  /** Share of the width. */
  readonly part: number;
  readonly text?: boolean;
}

export interface TableBlock {
  readonly key: string;
  readonly title: string;
  readonly says?: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly { readonly key: string; readonly cells: readonly ReactNode[]; readonly mark?: string | undefined }[];
  /** Width of the whole table, of the page [-]. */
  readonly width?: number;
}

export interface PlainBlock {
  readonly key: string;
  readonly node: ReactNode;
}

export type SheetBlock = TableBlock | PlainBlock;

export const isTable = (block: SheetBlock): block is TableBlock => 'rows' in block;

/** Rows of one page. Words that stand for several rows are repeated in the first of them there. */
export function rowsOfPart({ columns, rows }: TableBlock, from = 0, to = rows.length): TableBlock['rows'] {
  const [first, ...others] = rows.slice(from, to);
  if (first === undefined || first.cells[0] !== '') return rows.slice(from, to);
  const head = rows.slice(0, from).findLast(({ cells }) => cells[0] !== '');
  const cells = first.cells.map((cell, i) => ((i === 0 || columns[i]?.text) && cell === '' ? head?.cells[i] : cell));
  return [{ ...first, cells }, ...others];
}

/** Heads in the order given, with the share of the width of each; a share in brackets is a column of words. */
export function columnsOf(heads: readonly string[], parts: readonly (number | readonly [number])[]): TableColumn[] {
  return heads.map((head, i) => {
    const part = parts[i] ?? 1;
    return typeof part === 'number' ? { head, part } : { head, part: part[0], text: true };
  });
}
