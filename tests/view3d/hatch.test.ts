/** Hatches: distances by hand, tiles without a seam, ink where the pattern says so. */

import { describe, expect, it } from 'vitest';
import { PATTERNS } from '../../src/model/palette.ts';
import { FIELD_REACH, FIELD_SIZE, hatchField } from '../../src/view3d/hatch-field.ts';
import { distanceTo, hatchMarks, TILE_CELLS } from '../../src/view3d/hatch-marks.ts';

/** Distance that a field holds at a place of the tile [cells]. */
function held(field: Uint8Array, x: number, y: number): number {
  const texel = (cells: number) => Math.floor((cells / TILE_CELLS) * FIELD_SIZE);
  return (field[texel(y) * FIELD_SIZE + texel(x)] / 255) * FIELD_REACH;
}

describe('distance to a mark', () => {
  it('is measured square to a stroke, and round its ends', () => {
    const stroke = { kind: 'stroke', x1: 0, y1: 0, x2: 4, y2: 0 } as const;
    expect(distanceTo(stroke, 2, 3)).toBe(3);
    // 3-4-5 triangle beyond the end.
    expect(distanceTo(stroke, 7, 4)).toBe(5);
  });

  it('is nothing on a ring and inside a dot', () => {
    expect(distanceTo({ kind: 'ring', x: 0, y: 0, radius: 5 }, 3, 4)).toBe(0);
    expect(distanceTo({ kind: 'ring', x: 0, y: 0, radius: 5 }, 0, 0)).toBe(5);
    expect(distanceTo({ kind: 'dot', x: 0, y: 0, radius: 1 }, 0.5, 0)).toBe(0);
    expect(distanceTo({ kind: 'dot', x: 0, y: 0, radius: 1 }, 0, 3)).toBe(2);
  });
});

describe('fields', () => {
  it('are empty only for the plain pattern', () => {
    for (const pattern of PATTERNS) {
      // Within 0.02 cells of a mark; texels lie 1/32 cell apart, so that one of two beside a stroke is.
      const ink = hatchField(pattern).filter((value) => (value / 255) * FIELD_REACH < 0.02).length / FIELD_SIZE ** 2;
      if (pattern === 'plain') expect(ink).toBe(0);
      else expect(ink, pattern).toBeGreaterThan(0.002);
      expect(ink, pattern).toBeLessThan(0.25);
    }
  });

  it('repeat without a seam', () => {
    // Distances change by no more than the way gone: one texel is 8/256 = 1/32 cell, in bytes 255 / 0.25 / 32 = 31.9.
    for (const pattern of PATTERNS) {
      const field = hatchField(pattern);
      for (let i = 0; i < FIELD_SIZE; i++) {
        const [left, right] = [field[i * FIELD_SIZE], field[i * FIELD_SIZE + FIELD_SIZE - 1]];
        const [low, high] = [field[i], field[(FIELD_SIZE - 1) * FIELD_SIZE + i]];
        expect(Math.abs(left - right), `${pattern}, row ${i}`).toBeLessThanOrEqual(33);
        expect(Math.abs(low - high), `${pattern}, column ${i}`).toBeLessThanOrEqual(33);
      }
    }
  });

  it('lay bricks in running bond: joints of one course in the middle of the next', () => {
    const field = hatchField('running bond');
    // Bed joint at y = 2; perpends at x = 3 in the lower course and at x = 3.5 in the upper.
    expect(held(field, 3.3, 2)).toBeLessThan(0.03);
    expect(held(field, 3, 2.25)).toBeLessThan(0.03);
    expect(held(field, 3.5, 2.25)).toBeGreaterThan(0.2);
    expect(held(field, 3.5, 2.75)).toBeLessThan(0.03);
    expect(held(field, 3, 2.75)).toBeGreaterThan(0.2);
  });

  it('are the same at every start', () => {
    expect(hatchMarks('coarse grains')).toEqual(hatchMarks('coarse grains'));
  });
});
