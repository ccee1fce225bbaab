/** Mean fall of the membrane under a zone, on planes and a roof; by hand. */

import { describe, expect, it } from 'vitest';
import { meanSlope } from '../../../src/core/water/pitch.ts';

const grid = { x0M: 0, y0M: 0, cellM: 0.5, columns: 4, rows: 3 };
const all = Int32Array.from({ length: 12 }, (_, i) => i);
const laid = (cells: Int32Array, shares = Float64Array.from(cells, () => 1)) => ({ cells, shares, areaM2: 0, outsideM2: 0 });
const levels = (z: (x: number, y: number) => number) => Float64Array.from(all, (i) => z(0.5 * (i % 4), 0.5 * Math.floor(i / 4)));

describe('meanSlope', () => {
  it('a plane of 3 and 4 %: 5 %', () => {
    expect(
      meanSlope(
        grid,
        levels((x, y) => 0.03 * x - 0.04 * y),
        laid(all),
      ),
    ).toBeCloseTo(0.05, 12);
  });

  it('weighs cells by their share', () => {
    // Falls 2 % west of column 2, level east of it: cells 0 and 3 of the first row, a quarter and three quarters.
    const z = levels((x) => 0.02 * Math.max(0, 1 - x));
    expect(meanSlope(grid, z, laid(Int32Array.of(0, 3), Float64Array.of(0.25, 0.75)))).toBeCloseTo(0.005, 12);
  });

  it('nothing without cells, and on a grid of one cell', () => {
    expect(
      meanSlope(
        grid,
        levels(() => 0),
        laid(new Int32Array(0)),
      ),
    ).toBe(0);
    expect(meanSlope({ ...grid, columns: 1, rows: 1 }, Float64Array.of(1), laid(Int32Array.of(0)))).toBe(0);
  });
});
