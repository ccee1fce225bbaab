/** Which block of a sheet goes onto which page: tables are parted between rows, anything else stays whole. */

/** Heights as measured, all in one unit. */
export interface MeasuredBlock {
  readonly key: string;
  readonly height: number;
  /** A table: height of what is repeated on each page, and of each row. */
  readonly table?: {
    readonly head: number;
    readonly rows: readonly number[];
    /** What the first row of a continued part may need beyond its own height, for words repeated in it. */
    readonly repeated?: number;
  };
}

/** A block, or the rows `from` … `to` (exclusive) of a table. */
export interface PagePart {
  readonly key: string;
  readonly from?: number;
  readonly to?: number;
}

/** A head alone at the foot of a page helps nobody: at least this many rows go with it, where the table has them. */
const LEAST_ROWS = 2;

/** Parts of every page; a block higher than a page has one of its own. */
export function pageBreaks(blocks: readonly MeasuredBlock[], room: number): PagePart[][] {
  const pages: PagePart[][] = [[]];
  let left = room;
  const turn = () => {
    if (pages.at(-1)?.length === 0) return;
    pages.push([]);
    left = room;
  };
  const put = (part: PagePart, height: number) => {
    pages.at(-1)?.push(part);
    left -= height;
  };
  for (const { key, height, table } of blocks) {
    if (height <= left || table === undefined) {
      if (height > left) turn();
      put({ key, ...(table === undefined ? {} : { from: 0, to: table.rows.length }) }, height);
      continue;
    }
    let from = 0;
    while (from < table.rows.length) {
      const { count, height: taken } = rowsThatFit(table, from, left);
      const least = Math.min(LEAST_ROWS, table.rows.length - from);
      if (count < least && pages.at(-1)?.length !== 0) {
        turn();
        continue;
      }
      const to = from + Math.max(1, count);
      put({ key, from, to }, taken);
      from = to;
      if (from < table.rows.length) turn();
    }
  }
  return pages;
}

function rowsThatFit({ head, rows, repeated = 0 }: NonNullable<MeasuredBlock['table']>, from: number, room: number) {
  let height = head + (from > 0 ? repeated : 0);
  let count = 0;
  for (const row of rows.slice(from)) {
    if (height + row > room) break;
    height += row;
    count++;
  }
  return { count, height };
}
