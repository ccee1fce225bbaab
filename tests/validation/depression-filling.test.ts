/**
 * Depressions filled to the lowest way out, against two published grids with their answers.
 *
 * Sources: richdem (public terrain library), tests/depressions/testdem1.dem and .all.out; landlab (public terrain library),
 * tests/components/depression_finder/conftest.py, dans_grid3. The printed answers are typed in; the volume is added by hand.
 */

import { describe, expect, it } from 'vitest';
import { flood } from '../../src/core/water/flood.ts';
import { UNIT_M, type WaterExit } from '../../src/core/water/terrain.ts';
import { type Field, printed, rimOutlets } from '../core/water/terrains.ts';

function allFilledM(field: Field, exits: readonly WaterExit[]): number[][] {
  const { filled } = flood(field.terrain, exits);
  const filledM = (column: number, row: number) => field.terrain.baseM + filled[field.at(column, row)] * UNIT_M;
  return Array.from({ length: field.rows }, (_, row) =>
    Array.from({ length: field.columns }, (_, column) => Math.round(filledM(column, row) * 1e5) / 1e5),
  );
}

describe('published grids', () => {
  it('fills the closed dips of the first and leaves the open ones', () => {
    const field = printed([
      [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
      [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
      [0, 2, 2, 2, 2, 0, 0, 0, 0, 0],
      [0, 2, 0, 0, 2, 2, 2, 2, 0, 0],
      [0, 2, 2, 2, 2, 0, 0, 2, 0, 0],
      [0, 0, 2, 0, 2, 0, 0, 2, 0, 0],
      [0, 0, 2, 2, 2, 0, 0, 2, 0, 0],
      [0, 0, 0, 0, 2, 2, 2, 2, 0, 0],
      [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
      [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
    ]);
    expect(allFilledM(field, rimOutlets(field))).toEqual([
      [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
      [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
      [0, 2, 2, 2, 2, 0, 0, 0, 0, 0],
      [0, 2, 2, 2, 2, 2, 2, 2, 0, 0],
      [0, 2, 2, 2, 2, 2, 2, 2, 0, 0],
      [0, 0, 2, 2, 2, 2, 2, 2, 0, 0],
      [0, 0, 2, 2, 2, 2, 2, 2, 0, 0],
      [0, 0, 0, 0, 2, 2, 2, 2, 0, 0],
      [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
      [0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
    ]);
  });

  it('fills the six cells of the second to 1.8', () => {
    const rows = [
      [0, 0, 0, 0, 0, 0, 0],
      [0, 2, 2, 2, 2, 2, 0],
      [0, 2, 1.6, 1.5, 1.6, 2, 0],
      [0, 2, 1.7, 1.6, 1.7, 2, 0],
      [0, 2, 1.8, 2, 2, 2, 0],
      [0, 1, 0.6, 1, 1, 1, 0],
      [0, 0, -0.5, 0, 0, 0, 0],
    ];
    const field = printed(rows);
    const filled = allFilledM(field, rimOutlets(field));
    expect(filled).toEqual(
      rows.map((levels, row) => levels.map((level, column) => (row > 1 && row < 4 && column > 1 && column < 5 ? 1.8 : level))),
    );
    // .2 + .3 + .2 + .1 + .2 + .1
    expect(filled.flat().reduce((sum, level) => sum + level, 0) - rows.flat().reduce((sum, level) => sum + level, 0)).toBeCloseTo(1.1, 9);
  });
});
