/** Levels pasted from tables. */

import { describe, expect, it } from 'vitest';
import { readLevelRows } from '../../src/ui/facts/level-rows.ts';

const ONE = { ok: true, spots: [[1.5, 2.25, 0.145]] };

describe('rows of levels', () => {
  it.each([
    ['tabs and decimal comma', '1,5\t2,25\t0,145'],
    ['semicolons', '1,5;2,25;0,145'],
    ['blanks', '1.5  2.25  0.145'],
    ['commas between points', '1.5,2.25,0.145'],
    ['commas and blanks', '1.5, 2.25, 0.145'],
    ['a head and empty rows', 'x y z\n\n1.5 2.25 0.145\n'],
    ['a number of the point before them', '17\t1,5\t2,25\t0,145'],
  ])('%s', (_, text) => {
    expect(readLevelRows(text)).toEqual(ONE);
  });

  it('three decimals are decimals here, in national coordinates too', () => {
    expect(readLevelRows('3500012.345 5812345.678 52.125')).toEqual({ ok: true, spots: [[3_500_012.345, 5_812_345.678, 52.125]] });
    expect(readLevelRows('9.000;6.000;0.165')).toEqual({ ok: true, spots: [[9, 6, 0.165]] });
  });

  it('a row that is none is named, and nothing is taken', () => {
    expect(readLevelRows('1 2 3\n4 5\n')).toEqual({ ok: false, line: 2, text: '4 5' });
    expect(readLevelRows('1 2 x')).toEqual({ ok: false, line: 1, text: '1 2 x' });
    expect(readLevelRows('')).toEqual({ ok: true, spots: [] });
  });
});
