/** Exact area shares on the grid, each by hand or against a neighbour that must fill the rest. */

import { describe, expect, it } from 'vitest';
import { type Coverage, coverageAreaM2, createRasteriser } from '../../../src/core/geometry/coverage.ts';
import { boxRing, gridOf, hole, ring } from '../../helpers/deck-builder.ts';

function dense(coverage: Coverage, size: number): number[] {
  const shares = new Array<number>(size).fill(0);
  for (let r = 0; r < coverage.runs.length; r += 2) shares.fill(1, coverage.runs[r], coverage.runs[r + 1]);
  coverage.cells.forEach((cell, i) => {
    shares[cell] = coverage.shares[i];
  });
  return shares;
}

function sharesOf(columns: number, rows: number, ...rings: Float64Array[]): number[] {
  return dense(createRasteriser(gridOf(columns, rows)).cover(rings), columns * rows);
}

function expectShares(got: readonly number[], wanted: readonly number[]): void {
  expect(got).toHaveLength(wanted.length);
  got.forEach((share, i) => {
    expect(share, `cell ${i}`).toBeCloseTo(wanted[i], 12);
  });
}

describe('shares', () => {
  it('of a triangle along diagonals of cells: full, half or nothing', () => {
    // Hypotenuse x + y = 3 halves the cells (2, 0), (1, 1) and (0, 2).
    const coverage = createRasteriser(gridOf(3, 3)).cover([ring([0, 0], [3, 0], [0, 3])]);
    expectShares(dense(coverage, 9), [1, 1, 0.5, 1, 0.5, 0, 0.5, 0, 0]);
    expect([...coverage.runs]).toEqual([0, 2, 3, 4]);
    // 3 · 3/2
    expect(coverageAreaM2(coverage, 1)).toBeCloseTo(4.5, 12);
  });

  it('of a box within one cell: 0.5 · 0.25', () => {
    expectShares(sharesOf(2, 1, boxRing(1.25, 0.5, 1.75, 0.75)), [0, 0.125]);
  });

  it('of a box over four cells', () => {
    // 0.5 … 1.75 × 0.25 … 1.5: widths 0.5 and 0.75, heights 0.75 and 0.5
    expectShares(sharesOf(2, 2, boxRing(0.5, 0.25, 1.75, 1.5)), [0.375, 0.5625, 0.25, 0.375]);
  });

  it('of a flat triangle through several cells of a row', () => {
    // y < x/4 over x 0 … 4, y 0 … 1: cell k holds the trapezoid (k/4 + (k + 1)/4)/2 = (2k + 1)/8
    expectShares(sharesOf(4, 1, ring([0, 0], [4, 0], [4, 1])), [1 / 8, 3 / 8, 5 / 8, 7 / 8]);
  });

  it('leave holes out', () => {
    // 4 × 4 with a hole 0.5 … 2 × 1 … 3: half of column 0 and all of column 1 in rows 1 and 2
    const rows = [1, 1, 1, 1, 0.5, 0, 1, 1, 0.5, 0, 1, 1, 1, 1, 1, 1];
    expectShares(sharesOf(4, 4, boxRing(0, 0, 4, 4), hole(0.5, 1, 2, 3)), rows);
  });
});

describe('edges that make trouble', () => {
  it('on lines of the grid give no sliver next door', () => {
    const coverage = createRasteriser(gridOf(4, 4)).cover([boxRing(1, 1, 3, 2)]);
    expect([...coverage.runs]).toEqual([5, 7]);
    expect(coverage.cells).toHaveLength(0);
  });

  it('shared by two neighbours fill every cell to 1, with a T-junction on one side', () => {
    const rasteriser = createRasteriser(gridOf(4, 4));
    const left = rasteriser.cover([ring([0, 0], [1.3, 0], [2.6, 4], [0, 4])]);
    // The same edge with an extra vertex half way.
    const right = rasteriser.cover([ring([1.3, 0], [4, 0], [4, 4], [2.6, 4], [1.95, 2])]);
    const sum = dense(left, 16).map((share, i) => share + dense(right, 16)[i]);
    expectShares(sum, new Array<number>(16).fill(1));
    // Trapezoid (1.3 + 2.6)/2 · 4
    expect(coverageAreaM2(left, 1)).toBeCloseTo(7.8, 12);
  });

  it('beyond the grid are cut at its border', () => {
    expectShares(sharesOf(3, 2, boxRing(-5, -5, 1.5, 9)), [1, 0.5, 0, 1, 0.5, 0]);
    expectShares(sharesOf(3, 2, boxRing(1.5, -5, 9, 0.5)), [0, 0.25, 0.5, 0, 0, 0]);
    expectShares(sharesOf(3, 2, boxRing(-9, -9, 9, 9)), [1, 1, 1, 1, 1, 1]);
    expectShares(sharesOf(3, 2, boxRing(5, 0, 9, 2)), [0, 0, 0, 0, 0, 0]);
  });

  it('that cross the border slanting keep the exact share', () => {
    // Triangle (−1, 0) (1, 0) (1, 2): y < x + 1; within the cell 0 … 1 × 0 … 1 everything, above y > 1 the part y < x + 1: a half
    expectShares(sharesOf(1, 2, ring([-1, 0], [1, 0], [1, 2])), [1, 0.5]);
  });

  it('repeated and spiked change nothing', () => {
    // A point given twice, and a spike out to (2, 0.5) and back along the same way.
    const spiked = ring([0, 0], [1, 0], [1, 0], [1, 0.5], [2, 0.5], [1, 0.5], [1, 1], [0, 1]);
    expectShares(sharesOf(2, 1, spiked), [1, 0]);
  });
});

it('gives the same answer when used again', () => {
  const rasteriser = createRasteriser(gridOf(3, 3));
  const shape = ring([0.2, 0.1], [2.7, 0.4], [1.4, 2.9]);
  const first = rasteriser.cover([shape]);
  rasteriser.cover([boxRing(0, 0, 3, 3)]);
  expect(rasteriser.cover([shape])).toEqual(first);
});

it('counts cells by their size: 3 cells of 0.25 m are 0.1875 m²', () => {
  const coverage = createRasteriser(gridOf(4, 1, 0.25)).cover([boxRing(0, 0, 0.75, 0.25)]);
  expect(coverageAreaM2(coverage, 0.25)).toBeCloseTo(0.1875, 12);
});
