/** Shapes whose answer geometry gives: convex and star-shaped rings, swapped corners, scaled and shifted holes. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseScene } from '../../src/scene/parse-scene.ts';
import { areaOf } from '../../src/scene/ring.ts';
import { KNOWN, minimalScene, square } from './scenes.ts';

const SEED = 815;
type Ring = [number, number][];

function codesOf(outline: Ring, openings: Ring[] = []): string[] {
  const scene = minimalScene();
  scene.deck = { outline, openings, bays: [] };
  return parseScene(JSON.stringify(scene), KNOWN).issues.map(({ code }) => code);
}

/** Corners at rising angles seen from a centre: such a ring cannot cross itself. */
const star = fc
  .record({
    radii: fc.array(fc.double({ min: 5, max: 50, noNaN: true }), { minLength: 5, maxLength: 60 }),
    turn: fc.double({ min: 0, max: 6, noNaN: true }),
    centre: fc.constantFrom([0, 0], [392_000, 5_812_000], [-3.7, 1e5]),
  })
  .map(({ radii, turn, centre: [east = 0, north = 0] }) => ({
    centre: [east, north] as const,
    ring: radii.map((radius, i): [number, number] => {
      const angle = turn + (2 * Math.PI * i) / radii.length;
      return [east + radius * Math.cos(angle), north + radius * Math.sin(angle)];
    }),
  }));

function scaled(ring: Ring, [east, north]: readonly [number, number], factor: number): Ring {
  return ring.map(([x, y]) => [east + factor * (x - east), north + factor * (y - north)]);
}

describe(`random rings (seed ${SEED})`, () => {
  it('star-shaped rings open, either way round', () => {
    fc.assert(
      fc.property(star, ({ ring }) => {
        expect(codesOf(ring)).toEqual([]);
        expect(codesOf(ring.slice().reverse())).toEqual([]);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('two corners of a circle’s polygon swapped always make it cross itself', () => {
    // Corners on a circle: edges to a corner out of turn are chords that part the others (five corners or more).
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 80 }), fc.nat(), fc.nat(), (n, a, b) => {
        const [i, j] = [a % n, b % n];
        fc.pre(i !== j);
        const ring = Array.from({ length: n }, (_, k): [number, number] => [
          30 * Math.cos((2 * Math.PI * k) / n),
          30 * Math.sin((2 * Math.PI * k) / n),
        ]);
        [ring[i], ring[j]] = [ring[j]!, ring[i]!];
        expect(new Set(codesOf(ring))).toEqual(new Set(['POLYGON_CROSSES_ITSELF']));
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('a star-shaped hole scaled down about the centre lies inside, scaled up outside', () => {
    fc.assert(
      fc.property(star, fc.double({ min: 0.1, max: 0.95, noNaN: true }), ({ ring, centre }, factor) => {
        const inner = scaled(ring, centre, factor);
        expect(codesOf(ring, [inner])).toEqual([]);
        expect(codesOf(inner, [ring])).toEqual(['HOLE_OUTSIDE']);
        expect(codesOf(scaled(ring, centre, 1.5), [ring, inner])).toEqual(['HOLE_OVERLAPS']);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('a hole shifted by half of its width crosses', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 8, noNaN: true }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), (side, share) => {
        // Lower left corner inside (0 … 10), upper right outside.
        const corner = 10 - side * share;
        expect(codesOf(square(0, 0, 10), [square(corner, 1, side)])).toEqual(['HOLE_CROSSES']);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});

describe('areas', () => {
  it('by hand: 3-4-5 triangle 6 m², L-shape 3 m², at any origin and either way round', () => {
    for (const [e, n] of [
      [0, 0],
      [392_000, 5_812_000],
    ] as const) {
      const at = (ring: Ring): Ring => ring.map(([x, y]) => [x + e, y + n]);
      // 3 · 4 / 2
      expect(
        areaOf(
          at([
            [0, 0],
            [3, 0],
            [0, 4],
          ]),
        ),
      ).toBe(6);
      // 2 · 2 − 1 · 1
      expect(
        areaOf(
          at([
            [0, 0],
            [0, 2],
            [1, 2],
            [1, 1],
            [2, 1],
            [2, 0],
          ]),
        ),
      ).toBe(3);
    }
  });
});
