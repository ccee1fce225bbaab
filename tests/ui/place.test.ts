/** Cells and coordinates, and a point that surely lies in a zone. */

import { describe, expect, it } from 'vitest';
import { boxOf, boxSizeM, cellAt, cellCentre, cellPlace, innerPoint, toLocal } from '../../src/ui/facts/place.ts';

const GRID = { columns: 10, rows: 4, cellM: 0.25, x0M: -1, y0M: 2 };

describe('cells', () => {
  it('have their centre half a cell from the corner', () => {
    // by hand: cell 23 is column 3, row 2 from zero: x = -1 + 3.5 · 0.25 = -0.125, y = 2 + 2.5 · 0.25 = 2.625
    expect(cellCentre(GRID, 23)).toEqual([-0.125, 2.625]);
    expect(cellPlace(GRID, 23)).toEqual({ column: 4, row: 3 });
    expect(cellAt(GRID, [-0.125, 2.625])).toBe(23);
  });

  it('are none outside the grid', () => {
    expect(cellAt(GRID, [-1.01, 2.1])).toBeNull();
    expect(cellAt(GRID, [1.5, 2.1])).toBeNull();
    expect(cellAt(GRID, [0, 3])).toBeNull();
  });

  it('stand in local coordinates, reports in those of the file', () => {
    expect(toLocal([391_034.5, 5_812_008.25], [391_000, 5_812_000])).toEqual([34.5, 8.25]);
  });
});

describe('innerPoint', () => {
  it('is the middle of a rectangle', () => {
    expect(
      innerPoint([
        [0, 0],
        [4, 0],
        [4, 2],
        [0, 2],
      ]),
    ).toEqual([2, 1]);
  });

  it('lies in an L, whose middle is outside', () => {
    const [x, y] = innerPoint([
      [0, 0],
      [10, 0],
      [10, 2],
      [2, 2],
      [2, 10],
      [0, 10],
    ])!;
    expect((x < 2 && y < 10) || (y < 2 && x < 10)).toBe(true);
  });

  it('lies beside a hole in the middle', () => {
    const hole = [
      [4, 4],
      [6, 4],
      [6, 6],
      [4, 6],
    ] as const;
    const [x, y] = innerPoint(
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
      [hole],
    )!;
    expect(x < 4 || x > 6 || y < 4 || y > 6).toBe(true);
  });
});

describe('boxOf', () => {
  it('takes all points', () => {
    const box = boxOf([
      [3, 1],
      [-2, 5],
      [0, 0],
    ]);
    expect(box).toEqual({ min: [-2, 0], max: [3, 5] });
    expect(boxSizeM(box)).toBe(5);
  });
});
