/** The grid: corner at whole multiples of the cell in file coordinates, cells row by row from the lower left. */

import { describe, expect, it } from 'vitest';
import { blockOfCells, cellAt, cellCentreM, gridOver } from '../../../src/core/geometry/grid.ts';
import { boxRing } from '../../helpers/deck-builder.ts';

describe('corner', () => {
  it('is floor(min/c)·c of the file coordinates, given back in local ones', () => {
    // File x from 10.3: floor(10.3/0.25) = 41, 41 · 0.25 = 10.25, local 0.25. File y from 19.6: floor(78.4) = 78, 19.5, local −0.5.
    const grid = gridOver(boxRing(0.3, -0.4, 1.6, 0.9), 0.25, [10, 20]);
    expect(grid.x0M).toBeCloseTo(0.25, 12);
    expect(grid.y0M).toBeCloseTo(-0.5, 12);
    // (1.6 − 0.25)/0.25 = 5.4 → 6 columns; (0.9 + 0.5)/0.25 = 5.6 → 6 rows
    expect([grid.columns, grid.rows]).toEqual([6, 6]);
  });

  it('goes down, not towards zero, below zero', () => {
    // floor(−0.3/0.25) = −2 → −0.5; floor(−1.01/0.25) = −5 → −1.25
    const grid = gridOver(boxRing(-0.3, -1.01, 1, 1), 0.25, [0, 0]);
    expect([grid.x0M, grid.y0M]).toEqual([-0.5, -1.25]);
  });

  it('does not move with the local origin', () => {
    const near = gridOver(boxRing(0.3, 0.2, 5.3, 4.2), 0.4, [0, 0]);
    const far = gridOver(boxRing(0.3 - 1, 0.2 - 3, 5.3 - 1, 4.2 - 3), 0.4, [1, 3]);
    expect(far.x0M + 1).toBeCloseTo(near.x0M, 12);
    expect(far.y0M + 3).toBeCloseTo(near.y0M, 12);
    expect([far.columns, far.rows]).toEqual([near.columns, near.rows]);
  });

  it.each([
    // width, cell, columns: none more for an edge that lies on a line of the grid but for rounding
    [2, 0.5, 4],
    [0.3, 0.1, 3],
    [0.7, 0.1, 7],
    [2.1, 0.5, 5],
  ])('%f m in cells of %f m are %i columns', (width, cellM, columns) => {
    expect(gridOver(boxRing(0, 0, width, 1), cellM, [0, 0]).columns).toBe(columns);
  });

  it('refuses a cell of no size and a grid beyond memory', () => {
    expect(() => gridOver(boxRing(0, 0, 1, 1), 0, [0, 0])).toThrow(RangeError);
    expect(() => gridOver(boxRing(0, 0, 1, 1), Number.NaN, [0, 0])).toThrow(/cellM/);
    // 5000 × 5000 = 25 million
    expect(() => gridOver(boxRing(0, 0, 5000, 5000), 1, [0, 0])).toThrow(/16 million/);
  });
});

describe('cells', () => {
  const grid = { columns: 6, rows: 4, cellM: 0.5, x0M: 10, y0M: -1 };

  it('are counted row by row from the lower left', () => {
    // Cell 8 is row 1, column 2: x = 10 + 2.5 · 0.5, y = −1 + 1.5 · 0.5
    expect(cellCentreM(grid, 8)).toEqual([11.25, -0.25]);
    expect(cellAt(grid, 11.25, -0.25)).toBe(8);
  });

  it('own their lower and left edges; there is none beyond the grid', () => {
    expect(cellAt(grid, 10, -1)).toBe(0);
    expect(cellAt(grid, 10.5, -1)).toBe(1);
    expect(cellAt(grid, 13, -1)).toBe(-1);
    expect(cellAt(grid, 9.99, -1)).toBe(-1);
    expect(cellAt(grid, 10, 1)).toBe(-1);
  });

  it('are enclosed by a block with exclusive ends', () => {
    // 8 = (2, 1), 15 = (3, 2), 5 = (5, 0)
    expect(blockOfCells([Int32Array.of(8, 15), Int32Array.of(5)], 6)).toEqual({ column0: 2, column1: 6, row0: 0, row1: 3 });
    const none = blockOfCells([], 6);
    expect(none.row0).toBeGreaterThanOrEqual(none.row1);
  });
});
