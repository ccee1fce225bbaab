/** Plan nets against a clipping library: the part of a zone that lies on the deck, shared and rounded edges included. */

import { Clipper, FillRule, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { netSurface } from '../../src/core/levels/net.ts';
import { levelSurface } from '../../src/core/levels/surface.ts';
import { planNet } from '../../src/mesh/plan-net.ts';
import { zonePrism } from '../../src/mesh/prism.ts';
import { splitNet } from '../../src/mesh/split-net.ts';
import type { Ring } from '../../src/model/deck-input.ts';
import { box, expectClosed, layer, planAreaM2, region, ring, solidsOf, trianglesOf } from './solid-checks.ts';

const DECK_LEVELS = netSurface(
  {
    spots: Float64Array.from([-40, -40, 0.3, 40, -40, 0.2, 40, 40, 0.3, -40, 40, 0.1, 5, 7, 0.02]),
    breaklines: [Float64Array.from([-30, 3, 0, 30, -2, 0])],
  },
  100,
);

/** Ring of points at even angles, in whole millimetres. */
function star(reach: readonly number[]): Ring {
  return ring(
    ...reach.map((r, i): [number, number] => {
      const angle = (2 * Math.PI * i) / reach.length;
      return [Math.round(1000 * r * Math.cos(angle)) / 1000, Math.round(1000 * r * Math.sin(angle)) / 1000];
    }),
  );
}

const pathOf = (one: Ring): PathD => Array.from({ length: one.length / 2 }, (_, i) => ({ x: one[2 * i]!, y: one[2 * i + 1]! }));

// A factor of 1 shares a vertex, two neighbours of 1 an edge; 0.999 and 1.0001 come near without touching.
const arm = fc.record({ r: fc.double({ min: 2, max: 20, noNaN: true }), factor: fc.constantFrom(1, 1, 1, 0.7, 1.4, 0.999, 1.0001) });

it('zone and deck with common, near and crossing edges: the area of clipper2-ts 2.0.1 (seed 11)', () => {
  fc.assert(
    fc.property(fc.array(arm, { minLength: 3, maxLength: 40 }), (arms) => {
      const zone = star(arms.map(({ r }) => r));
      const deck = star(arms.map(({ r, factor }) => r * factor));
      const answer = planNet(region(zone), region(deck), { deck: DECK_LEVELS, finish: levelSurface(0.5) });
      const wanted = Clipper.areaPathsD(Clipper.intersectD([pathOf(zone)], [pathOf(deck)], FillRule.NonZero, 7));
      expect(answer.net).not.toBeNull();
      // The library rounds to 0.1 µm: on outlines of up to 1.5 km that is 1.5e-4 m².
      expect(Math.abs(planAreaM2(answer.net!) - wanted)).toBeLessThan(1.5e-4);
      expectClosed(trianglesOf(solidsOf(zonePrism(answer.net!, [layer('substrate', 0.3)])).solids, 0));
    }),
    { seed: 11, numRuns: 300 },
  );
});

it('splitting keeps the area, and no triangle crosses a limit (seed 5)', () => {
  const limits = fc.array(fc.double({ min: 0.1, max: 0.5, noNaN: true }), { minLength: 1, maxLength: 2 });
  fc.assert(
    fc.property(limits, (limitsM) => {
      const zone = region(box(-20, -20, 20, 20));
      const { net } = planNet(zone, zone, { deck: DECK_LEVELS, finish: levelSurface(0.5) });
      const fine = splitNet(net!, limitsM);
      expect(planAreaM2(fine)).toBeCloseTo(1600, 8);
      const places = Array.from(fine.deckM, (_, v) => `${fine.plan[2 * v]!.toFixed(7)} ${fine.plan[2 * v + 1]!.toFixed(7)}`);
      expect(new Set(places).size).toBe(places.length);
      const room = fine.finishM.map((z, v) => z - fine.deckM[v]!);
      for (const limitM of limitsM) {
        for (let t = 0; t < fine.triangles.length; t += 3) {
          const over = [0, 1, 2].map((k) => room[fine.triangles[t + k]!]! - limitM);
          expect(Math.min(...over) < -2e-9 && Math.max(...over) > 2e-9).toBe(false);
        }
      }
    }),
    { seed: 5, numRuns: 50 },
  );
});

it('a limit through a vertex of two triangles: one point more, two triangles each', () => {
  // The Delaunay diagonal of this diamond is the short one, y = 0. Room 0.1 x reaches 0.2 along x = 2.
  const zone = region(ring([0, 0], [2, -3], [4, 0], [2, 3]));
  const deck = { kind: 'plane', x: 0, y: 0, z: 0, slopeX: -0.1, slopeY: 0 } as const;
  const { net } = planNet(zone, zone, { deck, finish: levelSurface(0) });
  const fine = splitNet(net!, [0.2]);
  // by hand: five points, four triangles of 2 × 3 / 2 = 3 m²
  expect(fine.deckM).toHaveLength(5);
  const areas = [0, 3, 6, 9].map((t) => planAreaM2({ plan: fine.plan, triangles: fine.triangles.subarray(t, t + 3) }));
  expect(areas).toEqual([3, 3, 3, 3].map((area) => expect.closeTo(area, 12)));
  expect(fine.triangles).toHaveLength(12);
});
