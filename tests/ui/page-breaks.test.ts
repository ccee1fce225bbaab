/** Pages of print sheets: tables are parted between rows with their head, anything else stays whole. */

import { describe, expect, it } from 'vitest';
import { pageBreaks } from '../../src/ui/facts/page-breaks.ts';
import { rowsOfPart, type TableBlock } from '../../src/ui/sheets/paged-sheet.ts';

/** Heights in a unit of which a page has 100. */
const ROOM = 100;
const table = (key: string, head: number, rows: readonly number[]) => ({
  key,
  height: head + rows.reduce((sum, row) => sum + row, 0),
  table: { head, rows },
});

describe('page breaks', () => {
  it('keeps on one page what fits', () => {
    const found = pageBreaks([{ key: 'a', height: 40 }, table('t', 20, [10, 10, 10])], ROOM);
    expect(found).toEqual([[{ key: 'a' }, { key: 't', from: 0, to: 3 }]]);
  });

  it('parts a table between rows and counts its head on each page', () => {
    // 50 are left: head 20 and three rows of 10; then head 20 and eight rows; one row more
    const found = pageBreaks([{ key: 'a', height: 50 }, table('t', 20, new Array(12).fill(10))], ROOM);
    expect(found).toEqual([
      [{ key: 'a' }, { key: 't', from: 0, to: 3 }],
      [{ key: 't', from: 3, to: 11 }],
      [{ key: 't', from: 11, to: 12 }],
    ]);
  });

  it('leaves room for the words that a part begins with again', () => {
    // 100: head 20 and eight rows of 10; then head 20, 15 for the words, and six rows
    const { key, height, table: rows } = table('t', 20, new Array(14).fill(10));
    const found = pageBreaks([{ key, height, table: { ...rows, repeated: 15 } }], ROOM);
    expect(found).toEqual([[{ key: 't', from: 0, to: 8 }], [{ key: 't', from: 8, to: 14 }]]);
    const more = table('t', 20, new Array(15).fill(10));
    expect(pageBreaks([{ ...more, table: { ...more.table, repeated: 15 } }], ROOM).map(([part]) => part?.to)).toEqual([8, 14, 15]);
  });

  it('takes a head with fewer than two rows to the next page', () => {
    // 35 are left: head 20 and one row of 10
    const found = pageBreaks([{ key: 'a', height: 65 }, table('t', 20, [10, 10, 10])], ROOM);
    expect(found).toEqual([[{ key: 'a' }], [{ key: 't', from: 0, to: 3 }]]);
  });

  it('gives what is higher than a page one of its own, and loses no row that is', () => {
    expect(
      pageBreaks(
        [
          { key: 'a', height: 10 },
          { key: 'b', height: 150 },
          { key: 'c', height: 10 },
        ],
        ROOM,
      ),
    ).toEqual([[{ key: 'a' }], [{ key: 'b' }], [{ key: 'c' }]]);
    expect(pageBreaks([table('t', 20, [150, 10])], ROOM)).toEqual([[{ key: 't', from: 0, to: 1 }], [{ key: 't', from: 1, to: 2 }]]);
  });
});

describe('rows of one page', () => {
  const rows = [
    ['lorry', 'stage 1', 'A', '1'],
    ['', '', 'B', '2'],
    ['', '', 'C', '3'],
    ['digger', 'stage 2', 'A', '4'],
    ['', 'stage 3', 'B', ''],
  ].map((cells, i) => ({ key: `${i}`, cells }));
  const columns = [true, true, true, false].map((text, i) => ({ head: `${i}`, part: 1, text }));
  const table: TableBlock = { key: 't', title: '', columns, rows };
  const cells = (from: number, to: number) => rowsOfPart(table, from, to).map((row) => row.cells.join(' '));

  it('begin with the words that stand for them on the page before', () => {
    expect(cells(2, 4)).toEqual(['lorry stage 1 C 3', 'digger stage 2 A 4']);
    expect(cells(4, 5)).toEqual(['digger stage 3 B ']);
  });

  it('are as they were where nothing is parted', () => {
    expect(rowsOfPart(table)).toEqual(rows);
    expect(cells(3, 5)).toEqual(['digger stage 2 A 4', ' stage 3 B ']);
    expect(rowsOfPart({ ...table, rows: [] })).toEqual([]);
  });
});
