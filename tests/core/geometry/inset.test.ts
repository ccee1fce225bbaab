/** Lines at a distance inside a region: lengths by hand, and the distance itself by another routine. */

import { describe, expect, it } from 'vitest';
import { nearestOnPiece } from '../../../src/core/geometry/distance.ts';
import { insetPieces } from '../../../src/core/geometry/inset.ts';
import { isInside, ringsOf } from '../../../src/core/geometry/ring.ts';
import type { Region } from '../../../src/model/deck-input.ts';
import { box, hole, holed, region } from '../../helpers/deck-builder.ts';

const lengthOf = (pieces: Float64Array) => {
  let sum = 0;
  for (let i = 0; i < pieces.length; i += 4) sum += Math.hypot(pieces[i + 2] - pieces[i], pieces[i + 3] - pieces[i + 1]);
  return sum;
};

/** Distance from a point to the nearest rim, side by side. */
function toRims(of: Region, x: number, y: number): number {
  let least = Infinity;
  for (const ring of ringsOf(of)) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      least = Math.min(least, nearestOnPiece([ring[i], ring[i + 1], ring[j], ring[j + 1]], x, y).distanceM);
    }
  }
  return least;
}

function expectEven(of: Region, distanceM: number): void {
  const pieces = insetPieces(of, distanceM);
  for (let i = 0; i < pieces.length; i += 4) {
    for (const share of [0, 0.37, 1]) {
      const x = pieces[i] + share * (pieces[i + 2] - pieces[i]);
      const y = pieces[i + 1] + share * (pieces[i + 3] - pieces[i + 1]);
      // A chord of 3.5° about 2 m leaves its circle by 2 (1 / cos 1.75° − 1) = 0.93 mm.
      expect(Math.abs(toRims(of, x, y) - distanceM)).toBeLessThan(0.001);
      expect(isInside(of, x, y)).toBe(true);
    }
  }
}

describe('2 m inside', () => {
  it('a rectangle leaves a rectangle', () => {
    // 10 m × 6 m: 6 m × 2 m inside, 16 m round
    const deck = box(0, 0, 10, 6);
    expect(lengthOf(insetPieces(deck, 2))).toBeCloseTo(16, 6);
    expectEven(deck, 2);
  });

  it('goes round an opening with quarter circles', () => {
    // 30 m × 20 m with an opening of 2 m × 4 m in the midst: 26 · 2 + 16 · 2 outside; 12 m of sides and a circle of 2 m round it
    const deck = holed(box(0, 0, 30, 20), hole(14, 8, 16, 12));
    // Chords round a circle are longer by at most 0.0306² / 3 of it.
    expect(lengthOf(insetPieces(deck, 2))).toBeCloseTo(84 + 12 + 4 * Math.PI, 2);
    expectEven(deck, 2);
  });

  it('an L has an arc at its inner corner', () => {
    const deck = region([0, 0], [12, 0], [12, 6], [6, 6], [6, 12], [0, 12]);
    // Sides: 8 below and 8 on the left, 2 at each end, 4 + 4 up to the arc, and a quarter of a circle of 2 m about (6, 6).
    expect(lengthOf(insetPieces(deck, 2))).toBeCloseTo(8 + 8 + 2 + 2 + 4 + 4 + Math.PI, 2);
    expectEven(deck, 2);
  });

  it('joins where an opening comes near the edge, and leaves nothing of a narrow deck', () => {
    const near = holed(box(0, 0, 20, 12), hole(8, 3, 11, 5));
    expectEven(near, 2);
    expect(insetPieces(box(0, 0, 20, 3.9), 2)).toHaveLength(0);
  });

  it('slanted and star-shaped outlines keep the distance too', () => {
    const star = region([0, 0], [9, 3], [18, 0], [15, 9], [18, 18], [9, 15], [0, 18], [3, 9]);
    expectEven(star, 2);
    expect(insetPieces(star, 2).length).toBeGreaterThan(0);
  });
});
