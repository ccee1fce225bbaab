/** Solids and ink lines of a prism. */

import { describe, expect, it } from 'vitest';
import { netSurface } from '../../src/core/levels/net.ts';
import { levelSurface } from '../../src/core/levels/surface.ts';
import { planNet } from '../../src/mesh/plan-net.ts';
import { zonePrism } from '../../src/mesh/prism.ts';
import { createSolidWriter } from '../../src/mesh/solid-writer.ts';
import type { Region } from '../../src/model/deck-input.ts';
import { box, hole, layer, region, ring, solidsOf, trianglesOf, worstNormalDeg } from './solid-checks.ts';

const LAYERS = [layer('protection', 0.004), layer('substrate', 0.25)];

function flat(zone: Region) {
  const { net } = planNet(zone, zone, { deck: levelSurface(0), finish: null });
  return solidsOf(zonePrism(net!, LAYERS));
}

describe('solids', () => {
  it('a box of two layers has 12 triangles and 24 vertices each: two caps of 4, four walls of 4', () => {
    const { solids } = flat(region(box(0, 0, 4, 3)));
    expect(trianglesOf(solids, 0)).toHaveLength(12);
    expect(trianglesOf(solids, 1)).toHaveLength(12);
    expect(solids.parts).toHaveLength(48);
    expect([...solids.parts].filter((part) => part === 1)).toHaveLength(24);
  });

  it('upper vertices are those of the upper surface, on caps and walls alike', () => {
    const { solids } = flat(region(box(0, 0, 4, 3)));
    solids.upper.forEach((upper, v) => {
      const [low, high] = solids.parts[v] === 0 ? [0, 0.004] : [0.004, 0.254];
      expect(solids.positions[3 * v + 2]).toBe(Math.fround(upper === 1 ? high! : low!));
    });
  });

  it('normals are those of the faces, also on falls', () => {
    const deck = netSurface(
      {
        spots: Float64Array.from([0, 0, 0.4, 10, 0, 0.3, 10, 8, 0.9, 0, 8, 0.2]),
        breaklines: [Float64Array.from([0, 4, 0, 10, 4, 0.1])],
      },
      50,
    );
    const zone = region(ring([1, 1], [9, 2], [8, 7], [5, 4], [2, 6]), hole(6, 3, 7, 4));
    const { net } = planNet(zone, zone, { deck, finish: null });
    // A step of 1/127 on a unit vector is 0.45°, half of it on each of three axes.
    expect(worstNormalDeg(solidsOf(zonePrism(net!, LAYERS)).solids)).toBeLessThan(0.5);
  });
});

describe('ink lines', () => {
  const lengths = (zone: Region, part: number) => {
    const { edges } = flat(zone);
    let level = 0;
    let upright = 0;
    for (let v = 0; v < edges.parts.length; v += 2) {
      if (edges.parts[v] !== part) continue;
      const d = [0, 1, 2].map((axis) => edges.positions[3 * v + 3 + axis]! - edges.positions[3 * v + axis]!);
      if (d[2] !== 0) upright++;
      level += Math.hypot(d[0]!, d[1]!);
    }
    return { level, upright };
  };

  it('a box has its outline twice and four uprights', () => {
    // by hand: 2 × 14 m
    expect(lengths(region(box(0, 0, 4, 3)), 1)).toEqual({ level: 28, upright: 4 });
  });

  it('a hole is outlined too', () => {
    // by hand: 2 × (14 + 4) m
    expect(lengths(region(box(0, 0, 4, 3), hole(1, 1, 2, 2)), 0)).toEqual({ level: 36, upright: 8 });
  });

  it.each([
    // 24 sides turn by 15° each, 12 sides by 30°
    [24, 0],
    [12, 12],
  ])('a round outline of %i sides has %i uprights', (sides, uprights) => {
    const round = ring(
      ...Array.from({ length: sides }, (_, i): [number, number] => {
        return [5 * Math.cos((2 * Math.PI * i) / sides), 5 * Math.sin((2 * Math.PI * i) / sides)];
      }),
    );
    expect(lengths(region(round), 0).upright).toBe(uprights);
  });

  it('a vertex in the middle of a straight side has no upright', () => {
    expect(lengths(region(ring([0, 0], [2, 0], [4, 0], [4, 3], [0, 3])), 0).upright).toBe(4);
  });
});

describe('writer', () => {
  it('grows beyond its first size without losing anything', () => {
    const writer = createSolidWriter();
    writer.begin(3);
    writer.normal(0, -2, 0);
    for (let i = 0; i < 10_000; i++) expect(writer.vertex(i, 2 * i, 3 * i, i % 2)).toBe(i);
    for (let i = 0; i < 10_000; i++) writer.triangle(i, 0, 1);
    const { solids } = writer.finish();
    expect([...solids.positions.slice(29_997)]).toEqual([9999, 19_998, 29_997]);
    expect([...solids.normals.slice(39_996)]).toEqual([0, -127, 0, 0]);
    expect([solids.parts.length, solids.parts[9999], solids.upper[9999], solids.triangles[29_997]]).toEqual([10_000, 3, 1, 9999]);
  });

  it('copies a stretch of other meshes as if it were written again, with parts counted on', () => {
    const put = (writer: ReturnType<typeof createSolidWriter>, part: number, xM: number) => {
      writer.begin(part);
      writer.normal(1, 0, 0);
      const [a, b, c] = [0, 1, 2].map((y) => writer.vertex(xM, y, 0, 1));
      writer.triangle(a, b, c);
      writer.lineEnd(xM, 0, 0, 0);
      writer.lineEnd(xM, 1, 0, 0);
    };
    const first = createSolidWriter();
    put(first, 0, 5);
    const from = first.written();
    put(first, 1, 7);
    const stretch = { from, to: first.written(), firstPart: 1 };
    const [copied, written] = [createSolidWriter(), createSolidWriter()];
    put(copied, 0, 9);
    put(copied, 1, 8);
    copied.copy(first.finish(), stretch, 2);
    [9, 8, 7].forEach((xM, part) => {
      put(written, part, xM);
    });
    expect(copied.finish()).toEqual(written.finish());
    expect(() => copied.copy(first.finish(), stretch, 65_536)).toThrow(RangeError);
  });

  it('refuses a part that its index type cannot hold', () => {
    expect(() => createSolidWriter().begin(65_536)).toThrow(RangeError);
  });
});
