/** A polygon cut by a line: pieces by hand, areas that add up, and another library's clipping. */

import { Clipper, FillRule } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygonAreaM2 } from '../../../src/core/geometry/convex-clip.ts';
import { splitRing } from '../../../src/core/geometry/split-ring.ts';
import { ringOf, selfContacts } from '../../../src/scene/ring.ts';

const upright = (offset: number) => ({ nx: 1, ny: 0, offset });
const areas = (pieces: readonly (readonly number[])[]) => pieces.map(polygonAreaM2).sort((a, b) => a - b);

describe('by hand', () => {
  it('a rectangle', () => {
    const { below, above } = splitRing([0, 0, 4, 0, 4, 3, 0, 3], upright(1));
    expect([areas(below), areas(above)]).toEqual([[3], [9]]);
  });

  it('a comb with two teeth falls into three pieces', () => {
    // Back 0 … 1 in x, 5 high; teeth 1 high at y 0 … 1 and 4 … 5, reaching x = 4. Cut at x = 2: back with stubs 5 + 2, tips 2 each.
    const comb = [0, 0, 4, 0, 4, 1, 1, 1, 1, 4, 4, 4, 4, 5, 0, 5];
    const { below, above } = splitRing(comb, upright(2));
    expect([areas(below), areas(above)]).toEqual([[7], [2, 2]]);
  });

  it('a line along an edge, and one through corners, cut nothing off', () => {
    const notched = [0, 0, 4, 0, 4, 2, 2, 2, 2, 4, 0, 4];
    expect(areas(splitRing(notched, upright(4)).above)).toEqual([]);
    expect(areas(splitRing(notched, upright(4)).below)).toEqual([12]);
    // Along the inner edge x = 2: 8 on the left, 4 on the right.
    expect([areas(splitRing(notched, upright(2)).below), areas(splitRing(notched, upright(2)).above)]).toEqual([[8], [4]]);
    const diamond = [0, -1, 1, 0, 0, 1, -1, 0];
    expect([areas(splitRing(diamond, upright(0)).below), areas(splitRing(diamond, upright(0)).above)]).toEqual([[1], [1]]);
  });

  it('a corner that only touches the line from one side', () => {
    // Two hills over y = 0 with a valley touching y = 0 at x = 2, all of it above; and a part below from x = 4 to 6.
    const ring = [0, 2, 1, 1, 2, 0, 3, 1, 4, 0, 5, -1, 6, 0, 6, 3, 0, 3];
    const { below, above } = splitRing(ring, { nx: 0, ny: 1, offset: 0 });
    expect(areas(below)).toEqual([1]);
    expect(areas(above)[0]).toBeCloseTo(polygonAreaM2(ring) - 1, 12);
  });
});

describe('any star-shaped polygon and line', () => {
  const star = fc.array(fc.tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.double({ min: 0.1, max: 1, noNaN: true })), {
    minLength: 3,
    maxLength: 14,
  });
  const cases = fc.tuple(star, fc.double({ min: 0, max: Math.PI, noNaN: true }), fc.double({ min: -6, max: 6, noNaN: true }));

  function ringOfStar(rays: readonly (readonly [number, number])[]): number[] {
    const total = rays.reduce((sum, [, step]) => sum + step, 0);
    let angle = 0;
    return rays.flatMap(([radius, step]) => {
      angle += (2 * Math.PI * step) / total;
      return [Math.round(radius * Math.cos(angle) * 1000) / 1000, Math.round(radius * Math.sin(angle) * 1000) / 1000];
    });
  }

  it('areas add up, pieces are simple, and each side is what clipper2 cuts out', () => {
    fc.assert(
      fc.property(cases, ([rays, direction, offset]) => {
        const ring = ringOfStar(rays);
        const points = (flat: readonly number[]) =>
          Array.from({ length: flat.length / 2 }, (_, i) => [flat[2 * i]!, flat[2 * i + 1]!] as const);
        fc.pre(polygonAreaM2(ring) > 1 && selfContacts(ringOf(points(ring)), 1).length === 0);
        const line = { nx: Math.cos(direction), ny: Math.sin(direction), offset };
        const { below, above } = splitRing(ring, line);
        const sum = (pieces: readonly (readonly number[])[]) => pieces.reduce((all, piece) => all + polygonAreaM2(piece), 0);
        expect(sum(below) + sum(above)).toBeCloseTo(polygonAreaM2(ring), 9);
        for (const piece of [...below, ...above]) {
          expect(polygonAreaM2(piece)).toBeGreaterThanOrEqual(0);
          const crossing = selfContacts(ringOf(points(piece)), 5).filter(({ contact }) => contact.kind === 'cross');
          expect(crossing).toEqual([]);
        }
        // Half plane as a large square on the lower side, in micrometres for a library of whole numbers.
        const [px, py] = [line.nx * offset, line.ny * offset];
        const corner = (along: number, across: number) => ({
          x: Math.round(1e6 * (px - line.ny * along - line.nx * across)),
          y: Math.round(1e6 * (py + line.nx * along - line.ny * across)),
        });
        const half = [corner(-50, 0), corner(50, 0), corner(50, 100), corner(-50, 100)];
        const path = points(ring).map(([x, y]) => ({ x: Math.round(1e6 * x), y: Math.round(1e6 * y) }));
        const cut = Clipper.intersect([path], [half], FillRule.NonZero);
        const area = cut.reduce((all, one) => all + Clipper.area(one), 0) / 1e12;
        expect(sum(below)).toBeCloseTo(area, 3);
      }),
      { seed: 11, numRuns: 500 },
    );
  });
});
