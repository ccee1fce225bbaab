/** Levels of planes and nets at points and at the centres of cells, by hand. */

import { describe, expect, it } from 'vitest';
import { netSurface } from '../../../src/core/levels/net.ts';
import { levelSurface, type PlaneSurface, sampleSurface, surfaceLevelM } from '../../../src/core/levels/surface.ts';

const GRID = { columns: 4, rows: 3, cellM: 0.5, x0M: 10, y0M: -1 };
const WHOLE = { column0: 0, column1: 4, row0: 0, row1: 3 };
const empty = () => new Float64Array(12).fill(Number.NaN);

/** Through (10, −1, 1), rising 2 % to the right, falling 1 % upwards. */
const PLANE: PlaneSurface = { kind: 'plane', x: 10, y: -1, z: 1, slopeX: 0.02, slopeY: -0.01 };

describe('a plane', () => {
  it('rises with its slopes', () => {
    // 1 + 0.02 · 3 − 0.01 · 2
    expect(surfaceLevelM(PLANE, 13, 1)).toBeCloseTo(1.04, 12);
    expect(surfaceLevelM(levelSurface(0.7), 99, -99)).toBe(0.7);
  });

  it('is sampled at the centres of cells', () => {
    // Cell 6 is column 2, row 1: centre 1.25 right and 0.75 up of the corner: 1 + 0.025 − 0.0075
    expect(sampleSurface(PLANE, GRID, WHOLE, empty())[6]).toBeCloseTo(1.0175, 12);
  });

  it('writes only the block asked for', () => {
    const out = sampleSurface(PLANE, GRID, { column0: 1, column1: 3, row0: 1, row1: 2 }, empty());
    expect([...out.keys()].filter((cell) => !Number.isNaN(out[cell]))).toEqual([5, 6]);
  });
});

describe('a net', () => {
  // z = x + 2y on a square of 4 m, whichever way it is cut in two
  const corners = [0, 0, 0, 4, 0, 4, 4, 4, 12, 0, 4, 8];
  const net = netSurface({ spots: Float64Array.from(corners), breaklines: [] }, 20);

  it('is linear between its spots', () => {
    expect(surfaceLevelM(net, 1, 3)).toBeCloseTo(7, 12);
    expect(surfaceLevelM(net, 3.5, 0.25)).toBeCloseTo(4, 12);
  });

  it('is sampled at every centre of cells, inside and beyond', () => {
    const grid = { columns: 6, rows: 6, cellM: 1, x0M: -1, y0M: -1 };
    const out = sampleSurface(net, grid, { column0: 0, column1: 6, row0: 0, row1: 6 }, new Float64Array(36).fill(Number.NaN));
    for (let cell = 0; cell < 36; cell++) {
      // Nearest point of the square, then x + 2y
      const x = Math.min(4, Math.max(0, -0.5 + (cell % 6)));
      const y = Math.min(4, Math.max(0, -0.5 + Math.floor(cell / 6)));
      expect(out[cell], `cell ${cell}`).toBeCloseTo(x + 2 * y, 9);
    }
  });

  it('leaves no centre on a common edge of triangles without a level', () => {
    // The diagonals of the square pass through the centres (0.5, 0.5) … and (0.5, 3.5) …
    const grid = { columns: 4, rows: 4, cellM: 1, x0M: 0, y0M: 0 };
    const out = sampleSurface(net, grid, { column0: 0, column1: 4, row0: 0, row1: 4 }, new Float64Array(16).fill(Number.NaN));
    expect([...out].some(Number.isNaN)).toBe(false);
    expect(out[5]).toBeCloseTo(1.5 + 3, 9);
  });
});
