/** Lanes between walls, by hand. A lane along y = 0 unless said otherwise. */

import { describe, expect, it } from 'vitest';
import { boundedStretch } from '../../../src/core/rules/lane-bounds.ts';
import { ring } from '../../helpers/deck-builder.ts';

const line = ring([0, 0], [40, 0]);
const wall = (x0: number, x1: number, y: number) => ring([x0, y], [x1, y]);

describe('stretches bounded on both sides', () => {
  it('walls 1.7 and 1.6 m beside it from 10 to 22: 12 m with 3.3 m between', () => {
    const found = boundedStretch(line, [wall(10, 22, 1.7), wall(5, 30, -1.6)], 3.5);
    expect(found).toEqual({ lengthM: 12, clearM: expect.closeTo(3.3, 12), x: 16, y: 0 });
  });

  it('a wall on one side, or 3.5 m between: none', () => {
    expect(boundedStretch(line, [wall(0, 40, 1.6)], 3.5)).toBeNull();
    expect(boundedStretch(line, [wall(0, 40, 1.75), wall(0, 40, -1.75)], 3.5)).toBeNull();
    expect(boundedStretch(line, [], 3.5)).toBeNull();
  });

  it('walls one after the other make one stretch, with a gap two', () => {
    const south = wall(0, 40, -1.6);
    expect(boundedStretch(line, [wall(0, 8, 1.6), wall(8, 13, 1.7), south], 3.5)?.lengthM).toBeCloseTo(13, 9);
    expect(boundedStretch(line, [wall(0, 8, 1.6), wall(8.5, 13, 1.7), south], 3.5)?.lengthM).toBeCloseTo(8, 9);
  });

  // Wall from (0, 1) to (40, 3): with −1.5 on the other side 3.5 are left where 1 + x/20 = 2, at x = 20.
  it('a wall that runs away bounds as far as less than 3.5 m are left', () => {
    const found = boundedStretch(line, [ring([0, 1], [40, 3]), wall(0, 40, -1.5)], 3.5);
    expect(found?.lengthM).toBeCloseTo(20, 4);
    expect(found?.clearM).toBeCloseTo(2.5, 12);
  });

  it('goes on round a corner: 15 and 10 m of lane between walls 3.2 m apart', () => {
    const bent = ring([0, 0], [15, 0], [15, 10]);
    const outer = ring([0, -1.6], [16.6, -1.6], [16.6, 10]);
    const inner = ring([0, 1.6], [13.4, 1.6], [13.4, 10]);
    // The inner walls meet 1.6 m beside the corner, so that across the last 1.6 m of both legs there is none: still one stretch.
    expect(boundedStretch(bent, [outer, inner], 3.5)?.lengthM).toBeCloseTo(25, 9);
    // A gap of 8 m at the corner is more than 2 · 3.5 m: 9 and 6 m, parted.
    const open = [ring([0, 1.6], [9, 1.6]), ring([13.4, 4], [13.4, 10])];
    expect(boundedStretch(bent, [outer, ...open], 3.5)?.lengthM).toBeCloseTo(9, 9);
  });

  it('a block astride the line bounds both sides itself', () => {
    const block = ring([10, -0.5], [12, -0.5], [12, 0.5], [10, 0.5], [10, -0.5]);
    expect(boundedStretch(line, [block], 3.5)).toMatchObject({ lengthM: 2, clearM: 1 });
  });
});
