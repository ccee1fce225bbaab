/** The 1 m × 1 m window, by hand and against a direct sum of overlaps. */

import { describe, expect, it } from 'vitest';
import { greatestPatch, windowReach, windowSums } from '../../../src/core/loads/patch.ts';
import { gridOf } from '../../helpers/deck-builder.ts';

describe('reach', () => {
  it.each([
    // 0.5 m from the centre, less half a cell, in cells
    [0.05, 9, 0.5],
    [0.1, 4, 0.5],
    [0.2, 2, 0],
    [0.25, 1, 0.5],
    [0.4, 0, 0.75],
    [0.5, 0, 0.5],
    [1, -1, 0],
    [2, -1, 0],
  ])('in cells of %f m is %i whole cells and %f of the next', (cellM, whole, fraction) => {
    const reach = windowReach(cellM);
    expect(reach.whole).toBe(whole);
    expect(reach.fraction).toBeCloseTo(fraction, 9);
  });
});

/** Overlap of the window with every cell, in units of whole cells, added one by one. */
function directSum(values: ArrayLike<number>, columns: number, cellM: number, cell: number): number {
  const along = (centre: number, other: number) => {
    const distance = Math.abs(other - centre) * cellM;
    return Math.max(0, Math.min(cellM, 0.5 + cellM / 2 - distance)) / cellM;
  };
  let sum = 0;
  for (let other = 0; other < values.length; other++) {
    const wx = along(cell % columns, other % columns);
    const wy = along(Math.floor(cell / columns), Math.floor(other / columns));
    sum += wx * wy * values[other];
  }
  return sum;
}

/** Values without a pattern, from a fixed recurrence. */
function jumbled(count: number): Float64Array {
  let state = 12345;
  return Float64Array.from({ length: count }, () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 2147483648;
  });
}

describe('sums', () => {
  it('in cells of 0.5 m weigh 1, sides 1/2, corners 1/4', () => {
    const values = Float64Array.of(1, 2, 3, 4, 5, 6, 7, 8, 9);
    const block = { column0: 0, column1: 3, row0: 0, row1: 3 };
    const out = windowSums(values, gridOf(3, 3, 0.5), windowReach(0.5), block, new Float64Array(9));
    // Middle: 5 + (2 + 4 + 6 + 8)/2 + (1 + 3 + 7 + 9)/4 = 5 + 10 + 5
    expect(out[4]).toBeCloseTo(20, 12);
    // Corner 0, nothing beyond the grid: 1 + (2 + 4)/2 + 5/4
    expect(out[0]).toBeCloseTo(5.25, 12);
  });

  it.each([0.1, 0.2, 0.25, 0.3, 0.4, 0.5, 0.75])('in cells of %f m equal the direct sum in every cell, edges included', (cellM) => {
    const grid = gridOf(13, 11, cellM);
    const values = jumbled(143);
    const block = { column0: 0, column1: 13, row0: 0, row1: 11 };
    const out = windowSums(values, grid, windowReach(cellM), block, new Float64Array(143));
    for (let cell = 0; cell < 143; cell++) expect(out[cell], `cell ${cell}`).toBeCloseTo(directSum(values, 13, cellM, cell), 9);
  });

  it.each([1, 2])('in cells of %i m are the cell itself', (cellM) => {
    const values = jumbled(6);
    const block = { column0: 0, column1: 3, row0: 0, row1: 2 };
    expect(windowSums(values, gridOf(3, 2, cellM), windowReach(cellM), block, new Float64Array(6))).toEqual(values);
  });

  it('of a block equal those of the whole to the bit', () => {
    const grid = gridOf(13, 11, 0.25);
    const values = jumbled(143);
    const whole = windowSums(values, grid, windowReach(0.25), { column0: 0, column1: 13, row0: 0, row1: 11 }, new Float64Array(143));
    const block = { column0: 1, column1: 12, row0: 4, row1: 9 };
    const part = windowSums(values, grid, windowReach(0.25), block, new Float64Array(143).fill(-1));
    for (let cell = 0; cell < 143; cell++) {
      const row = Math.floor(cell / 13);
      const inside = row >= 4 && row < 9 && cell % 13 >= 1 && cell % 13 < 12;
      expect(part[cell], `cell ${cell}`).toBe(inside ? whole[cell] : -1);
    }
  });

  it('work on a grid narrower than the window', () => {
    const values = jumbled(6);
    const block = { column0: 0, column1: 2, row0: 0, row1: 3 };
    const out = windowSums(values, gridOf(2, 3, 0.1), windowReach(0.1), block, new Float64Array(6));
    const all = values.reduce((sum, value) => sum + value, 0);
    for (const sum of out) expect(sum).toBeCloseTo(all, 9);
  });
});

describe('the greatest patch', () => {
  it('is that of the cells asked for, with its place', () => {
    expect(greatestPatch(Float64Array.of(3, 9, 5, Number.NaN), Int32Array.of(0, 2, 3))).toEqual({ kNm2: 5, cell: 2 });
  });

  it('of no cells is nothing', () => {
    expect(greatestPatch(Float64Array.of(3), new Int32Array(0))).toEqual({ kNm2: 0, cell: -1 });
  });
});
