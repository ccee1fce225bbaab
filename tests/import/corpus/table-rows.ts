/** Bad lists of points. */

import { type BadInput, bytes8, utf16 } from './bad-input.ts';

const rows = (...lines: string[]) => `${lines.join('\n')}\n`;
const HEAD = 'Nr;x;y;z';
const FOUR = ['1;0;0;1.20', '2;40;0;1.25', '3;40;30;1.30', '4;0;30;1.15'];

export const TABLE_ROWS: readonly BadInput[] = [
  {
    row: 12,
    what: 'north before east',
    by: 'import',
    file: () => rows('5812000.50 392000.12 35.42', '5812000.50 392040.12 35.40', '5812030.50 392040.12 35.32'),
    expected: { asks: ['axes', 'yx'], says: ['first number looks like a northing'] },
  },
  {
    row: 14,
    what: 'points without a level',
    by: 'import',
    file: () => rows(HEAD, ...FOUR, '5;20;20;', '6;10;20;'),
    expected: { warning: 'LEVELS_MISSING', says: ['2 of 6 points without a level'] },
  },
  {
    row: 15,
    what: 'levels in centimetres',
    by: 'import',
    file: () => rows(HEAD, '1;0;0;3412', '2;40;0;3455', '3;40;30;3420'),
    expected: { asks: ['levelUnit', 'cm'], says: ['3412 to 3455', 'centimetres: 34.12 to 34.55 m'] },
  },
  {
    row: 15,
    what: 'all levels 0',
    by: 'import',
    file: () => rows(HEAD, '1;0;0;0', '2;40;0;0', '3;40;30;0'),
    expected: { asks: ['zeroLevels', 'none'], says: ['All 3 levels are 0'] },
  },
  {
    row: 15,
    what: 'two height systems',
    by: 'import',
    file: () => rows(HEAD, '1;0;0;0.20', '2;40;0;0.25', '3;40;30;35.30', '4;0;30;35.32', '5;20;30;35.28'),
    expected: { asks: ['levelGroups', 'high'], says: ['2 × 0.2 to 0.25', '3 × 35.28 to 35.32'] },
  },
  {
    row: 16,
    what: 'two levels at one place',
    by: 'import',
    file: () => rows(HEAD, ...FOUR, '5;0;0;1.35'),
    expected: { asks: ['doubleLevels', 'lower'], says: ['1 place has two levels that differ by up to 0.15 m'] },
  },
  {
    row: 23,
    what: 'cells that are no numbers',
    by: 'import',
    file: () => rows(HEAD, ...FOUR, '5;NaN;3;1.2'),
    expected: { warning: 'NUMBER_BAD', says: ['1 row', '"NaN"', 'line 6'] },
  },
  {
    row: 24,
    what: 'numbers that could be thousands',
    by: 'import',
    file: () => rows('id;x;y;z', 'a;1.234;2.345;1.250', 'b;21.234;2.345;1.260', 'c;21.234;12.345;1.270'),
    expected: { asks: ['decimal', '.'], says: ['"1.234": 1234, or 1.234?'] },
  },
  {
    row: 25,
    what: 'typographic minus, narrow blanks, apostrophes',
    by: 'import',
    file: () => rows('Nr;x;y;z', "1;1'000,5;0;\u22120,20", '2;1\u202F040,5;0;\u22120,25', '3;1040,5;30,5;\u22120,22'),
    // Three levels, two grouped coordinates.
    expected: { mend: 'NUMBER_MARKS', says: ['5 numbers were read', "1'000,5"] },
  },
  {
    row: 26,
    what: 'umlauts broken before',
    by: 'import',
    file: () => rows('Nr;x;y;z;Code', '1;0;0;1.20;TÃ¼r', '2;40;0;1.25;Tor', '3;40;30;1.30;Tor'),
    expected: { asks: ['encoding', 'repair'], says: ['TÃ¼r', 'Tür'] },
  },
  {
    row: 26,
    what: 'umlauts in Windows-1252',
    by: 'import',
    file: () => bytes8(rows('Nr;x;y;z;Code', '1;0;0;1.20;T\u00FCr', '2;40;0;1.25;Tor', '3;40;30;1.30;Tor')),
    expected: { asks: ['encoding', 'windows-1252'], says: ['windows-1252: 1;0;0;1.20;Tür'] },
  },
  {
    row: 27,
    what: 'UTF-16',
    by: 'import',
    file: () => utf16(rows(HEAD, ...FOUR)),
    expected: { mend: 'TEXT_DECODED', says: ['read as UTF-16LE'] },
  },
  {
    row: 27,
    what: 'mixed line ends',
    by: 'import',
    file: () => `${HEAD}\r\n${FOUR.slice(0, 2).join('\r\n')}\r\n${FOUR.slice(2).join('\n')}\n`,
    expected: { mend: 'LINE_ENDS', says: ['Line ends'] },
  },
  {
    row: 28,
    what: 'a date for a number',
    by: 'import',
    file: () => rows(HEAD, ...FOUR, '5;22. Mai;10;1.2'),
    expected: { asks: ['dates', 'leave'], says: ['Row 6 holds a date (22. Mai). 22.5 meant?'] },
  },
  {
    row: 28,
    what: 'the heading twice',
    by: 'import',
    file: () => rows(HEAD, ...FOUR, HEAD, '5;20;20;1.2'),
    expected: { mend: 'HEADER_REPEATED', says: ['again (1 time)'] },
  },
  {
    row: 28,
    what: 'ragged rows',
    by: 'import',
    file: () => rows(HEAD, ...FOUR, '5;20'),
    expected: { warning: 'ROWS_RAGGED', says: ['1 row', 'the first with 2', 'line 6'] },
  },
  {
    row: 28,
    what: 'columns without a heading',
    by: 'import',
    file: () => rows('0.5,0.5,1.25', '40.5,0.5,1.30', '40.5,30.5,1.35'),
    expected: { asks: ['columns', 'x,y,z'], says: ['0.5 | 0.5 | 1.25'] },
  },
  {
    row: 39,
    what: 'a name that is a formula',
    by: 'import',
    file: () => rows(HEAD, ...FOUR, '=HYPERLINK(1);20;20;1.2'),
    expected: { mend: 'TEXT_KEPT', says: ['=HYPERLINK(1)'] },
  },
];
