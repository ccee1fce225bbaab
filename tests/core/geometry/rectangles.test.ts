/** Smallest rectangle around, and widest inside, worked by hand. */

import { describe, expect, it } from 'vitest';
import { smallestAround, widestInsideM } from '../../../src/core/geometry/rectangles.ts';
import { ring } from '../../helpers/deck-builder.ts';

/** Turned by the angle of the triangle 3-4-5, so that coordinates stay round. */
const turned = (points: readonly (readonly [number, number])[]) =>
  ring(...points.map(([x, y]): [number, number] => [0.8 * x - 0.6 * y, 0.6 * x + 0.8 * y]));
const sides = (around: ReturnType<typeof smallestAround>) => [around.toS - around.fromS, around.toT - around.fromT];

const plain: readonly [number, number][] = [
  [0, 0],
  [12, 0],
  [12, 4],
  [0, 4],
];

describe('smallest around', () => {
  it.each([
    ['upright', ring(...plain)],
    ['turned', turned(plain)],
  ])('a rectangle of 12 by 4, %s: itself, the longer side first', (_, shape) => {
    const [lengthM, widthM] = sides(smallestAround(shape));
    expect(lengthM).toBeCloseTo(12, 9);
    expect(widthM).toBeCloseTo(4, 9);
  });

  it('a triangle with sides 3, 4, 5: 3 by 4, or 5 by 2.4, both 12 m²', () => {
    const [lengthM, widthM] = sides(smallestAround(ring([0, 0], [4, 0], [0, 3])));
    expect(lengthM * widthM).toBeCloseTo(12, 9);
  });

  it('an L of 6 by 6 with arms of 2: its hull is cut at 45°; upright 36, along the cut 10/√2 · 6√2 = 60 m²', () => {
    const [lengthM, widthM] = sides(smallestAround(ring([0, 0], [6, 0], [6, 2], [2, 2], [2, 6], [0, 6])));
    expect([lengthM, widthM]).toEqual([expect.closeTo(6, 9), expect.closeTo(6, 9)]);
  });
});

describe('widest inside', () => {
  it.each([
    [11, 4],
    [12, 4],
    [4, 12],
    [12.01, 0],
  ])('a rectangle of 12 by 4, turned, %d m long: %d m wide', (lengthM, widthM) => {
    expect(widestInsideM(turned(plain), lengthM)).toBeCloseTo(widthM, 6);
    expect(widestInsideM(ring(...plain), lengthM)).toBeCloseTo(widthM, 6);
  });

  // Arms 3 m wide: an arm holds 11 m by 3; the smallest rectangle around would claim 12 by 12.
  it('an L of 12 by 12 with arms of 3: 11 m long only 3 m wide', () => {
    expect(widestInsideM(ring([0, 0], [12, 0], [12, 3], [3, 3], [3, 12], [0, 12]), 11)).toBeCloseTo(3, 6);
  });

  // A corner of 2 by 2 is cut off at 45°: over 11 of 12 m from the far end the cut begins at x = 10, and at x = 11 it stands at y = 3.
  it('a rectangle of 12 by 4 with a corner cut: 11 m long 3 m wide', () => {
    expect(widestInsideM(ring([0, 0], [12, 0], [12, 2], [10, 4], [0, 4]), 11)).toBeCloseTo(3, 6);
  });

  // Roof over 12 m, 2 at the eaves and 5 at the ridge x = 6, slopes of 3 in 6. The best 4 m stand from x = 4 to 8: 2 + 4 · 0.5 = 4.
  it('between two slopes: neither end at a corner', () => {
    expect(widestInsideM(ring([0, 0], [12, 0], [12, 2], [6, 5], [0, 2]), 4)).toBeCloseTo(4, 6);
  });

  it('a notch in the middle parts it: 12 by 4 with a notch of 0.2 by 2 at x = 6 leaves 2 m over 11 m', () => {
    expect(widestInsideM(ring([0, 0], [5.9, 0], [5.9, 2], [6.1, 2], [6.1, 0], [12, 0], [12, 4], [0, 4]), 11)).toBeCloseTo(2, 6);
  });
});
