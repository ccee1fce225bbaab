/** CSV: marks, guards and numbers, read back by the rules of RFC 4180. */

import { describe, expect, it } from 'vitest';
import { csvText } from '../../src/project/export-csv.ts';
import type { ExportTable } from '../../src/project/export-tables.ts';

const TABLE: ExportTable = {
  id: 'edges',
  title: 'Edges',
  columns: [
    { head: 'edge', decimals: null },
    { head: 'least mm', decimals: 0 },
    { head: 'share m²', decimals: 3 },
  ],
  rows: [
    ['E1', -35, 1234.5],
    ['=HYPERLINK("x")', 120.4, -0.35],
    ['Wiese; "Süd", Rand', null, 1e-9],
  ],
  note: 'Deck. Not a structural check.',
};

/** Fields of RFC 4180: separated, quoted where need be, quotes doubled. */
function parsed(text: string, separator: string): string[][] {
  const rows: string[][] = [[]];
  let field = '';
  let inQuotes = false;
  const end = () => {
    rows[rows.length - 1].push(field);
    field = '';
  };
  for (let i = 0; i < text.length; i++) {
    const sign = text[i];
    if (inQuotes) {
      if (sign !== '"') field += sign;
      else if (text[i + 1] === '"') field += text[++i];
      else inQuotes = false;
    } else if (sign === '"') inQuotes = true;
    else if (sign === separator) end();
    else if (sign === '\r' && text[i + 1] === '\n') {
      end();
      rows.push([]);
      i++;
    } else field += sign;
  }
  rows.pop();
  return rows;
}
const german = csvText(TABLE, 'de');
const english = csvText(TABLE, 'en');

describe('the whole text', () => {
  it('begins with the byte order mark of UTF-8: EF BB BF', () => {
    expect([...new TextEncoder().encode(german).subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(english.startsWith('\uFEFFedge,')).toBe(true);
  });

  it('ends every line with CR LF', () => {
    expect(german.endsWith('\r\n')).toBe(true);
    expect(german.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  it('is, in German, with semicolons and decimal commas', () => {
    expect(german).toBe(
      '\uFEFFedge;least mm;share m²\r\nE1;-35;1234,5\r\n"\'=HYPERLINK(""x"")";120;-0,35\r\n"Wiese; ""Süd"", Rand";;0\r\n\r\nDeck. Not a structural check.\r\n',
    );
  });

  it('is, in English, with commas and points', () => {
    expect(english).toBe(
      '\uFEFFedge,least mm,share m²\r\nE1,-35,1234.5\r\n"\'=HYPERLINK(""x"")",120,-0.35\r\n"Wiese; ""Süd"", Rand",,0\r\n\r\nDeck. Not a structural check.\r\n',
    );
  });
});

describe('read back', () => {
  it.each([
    ['de', ';', ','],
    ['en', ',', '.'],
  ] as const)('in %s gives the numbers, rounded to the decimals of their column', (language, separator, mark) => {
    const rows = parsed(csvText(TABLE, language).slice(1), separator).slice(1, 4);
    const numbers = rows.map(([, ...cells]) => cells.map((cell) => (cell === '' ? null : Number(cell.replace(mark, '.')))));
    expect(numbers).toEqual([
      [-35, 1234.5],
      [120, -0.35],
      [null, 0],
    ]);
    expect(rows[2][0]).toBe('Wiese; "Süd", Rand');
  });
});

describe('guards', () => {
  const cell = (value: string | number) =>
    csvText({ ...TABLE, columns: [{ head: 'a', decimals: 2 }], rows: [[value]] }, 'en').split('\r\n')[1];

  it.each(['=1+1', '+49 30', '-gravel', '@sum', '\tx'])('the text %j gets a quote in front', (text) => {
    expect(cell(text)).toBe(`'${text}`);
  });

  it('a carriage return in front is guarded and quoted', () => {
    expect(cell('\rx')).toBe('"\'\rx"');
  });

  it.each([
    [-0.35, '-0.35'],
    [-12, '-12'],
    [-0.001, '0'],
    [1234567.891, '1234567.89'],
    [100, '100'],
    [0.5, '0.5'],
  ])('the number %f is left a number: %s', (value, text) => {
    expect(cell(value)).toBe(text);
  });

  it('a text that only holds such a sign inside is left alone', () => {
    expect(cell('A-1')).toBe('A-1');
  });
});
