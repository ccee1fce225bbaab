/** Retaining edges as solids: closed, of the volume of an L by hand, standing where the check has them stand. */

import { describe, expect, it } from 'vitest';
import type { RetainingShape } from '../../src/mesh/retaining.ts';
import { retainingSolid } from '../../src/mesh/retaining.ts';
import { sectionProfile } from '../../src/mesh/section.ts';
import { expectClosed, facesOf, layerVolumeM3, planAreaM2, volumeM3 } from './solid-checks.ts';

/** Stem 0.1 m × 1 m, base slab 0.8 m × 0.1 m. */
const L = { side: 'left', retainedM: 1, baseM: 0.8, stemM: 0.1, slabM: 0.1 } as const;
const straight: RetainingShape = { ...L, line: [0, 1, 3, 1] };
const bent: RetainingShape = { ...L, line: [0, 0, 4, 0, 4, 3] };
const ring: RetainingShape = { ...L, line: [0, 0, 4, 0, 4, 3, 0, 3, 0, 0] };
const soil = () => 1.5;
const deck = () => 0.2;

const made = (shape: RetainingShape) => retainingSolid(shape, soil, deck)!;
const extent = (points: readonly number[], axis: number) => {
  const along = points.filter((_, i) => i % 3 === axis);
  return [Math.min(...along), Math.max(...along)];
};

describe('the solid', () => {
  it('a straight wall: area of the L by its length', () => {
    const { solid } = made(straight);
    expectClosed(facesOf(solid));
    // by hand: (0.1 · 1 + 0.7 · 0.1) · 3 = 0.51 m³
    expect(volumeM3(facesOf(solid))).toBeCloseTo(0.51, 12);
    // Level with the soil, one metre down from there; base slab on the left, from the free face on.
    expect(extent(solid.points, 2)).toEqual([0.5, 1.5]);
    expect(extent(solid.points, 1)).toEqual([1, expect.closeTo(1.8, 12)]);
  });

  it('with the soil on the right the base slab lies there', () => {
    const { solid } = made({ ...straight, side: 'right' });
    expectClosed(facesOf(solid));
    expect(volumeM3(facesOf(solid))).toBeCloseTo(0.51, 12);
    expect(extent(solid.points, 1)).toEqual([expect.closeTo(0.2, 12), 1]);
  });

  it('bends are mitred, soil in the corner or round it', () => {
    // by hand, strip of width s along 4 m and 3 m: 7 s ∓ s². Stem 0.69 m² · 1 m, slab beside it (4.96 − 0.69) m² · 0.1 m
    const inside = facesOf(made(bent).solid);
    expectClosed(inside);
    expect(volumeM3(inside)).toBeCloseTo(0.69 + 0.427, 12);
    // outside: stem 0.71 m², slab beside it 6.24 − 0.71 = 5.53 m²
    const outside = facesOf(made({ ...bent, side: 'right' }).solid);
    expectClosed(outside);
    expect(volumeM3(outside)).toBeCloseTo(0.71 + 0.553, 12);
  });

  it('round a bed it has no ends', () => {
    const { solid } = made(ring);
    expectClosed(facesOf(solid));
    // by hand: 12 − 3.8 · 2.8 = 1.36 m² of stem, 12 − 2.4 · 1.4 = 8.64 m² of base slab
    expect(volumeM3(facesOf(solid))).toBeCloseTo(1.36 + (8.64 - 1.36) * 0.1, 12);
  });

  it('follows the soil behind it, and stands on the membrane where that is too shallow', () => {
    // Soil rises 0.1 per metre along x: mean underside at x = 1.5 is 0.5 + 0.15.
    const rising = retainingSolid(straight, (x) => 1.5 + 0.1 * x, deck)!;
    expectClosed(facesOf(rising.solid));
    expect(extent(rising.solid.points, 2)).toEqual([0.5, expect.closeTo(1.8, 12)]);
    const shallow = retainingSolid(straight, () => 0.9, deck)!;
    expect(extent(shallow.solid.points, 2)).toEqual([0.2, 1.2]);
  });

  it('looks at the soil in the middle of the heel', () => {
    const asked: number[] = [];
    retainingSolid(straight, (_, y) => asked.push(y), deck);
    // by hand: (0.1 + 0.8) / 2 behind the free face
    for (const y of asked) expect(y).toBeCloseTo(1.45, 12);
    expect(asked.length).toBeGreaterThan(3);
  });

  it('a line without length is none', () => {
    expect(retainingSolid({ ...L, line: [1, 1, 1, 1] }, soil, deck)).toBeNull();
  });
});

describe('for cuts', () => {
  it('stem and base slab together are the solid', () => {
    for (const shape of [straight, bent, { ...bent, side: 'right' } as const, ring]) {
      const { solid, prisms } = made(shape);
      for (const prism of prisms) expect(planAreaM2(prism)).toBeGreaterThan(0);
      expect(prisms.reduce((sum, prism) => sum + layerVolumeM3(prism, 0), 0)).toBeCloseTo(volumeM3(facesOf(solid)), 9);
    }
  });

  it('a cut across shows the L', () => {
    const { prisms } = made(straight);
    // Across at x = 1.2, along +y: from the free face at y = 1.
    const runs = prisms.map((prism) => sectionProfile(prism, { x: 1.2, y: 0, dirX: 0, dirY: 1 })[0]!);
    const ends = runs.map(({ alongM, heightsM: [low, high] }) => [alongM[0]!, alongM.at(-1)!, low![0]!, high![0]!]);
    const wanted = [
      [1, 1.1, 0.5, 1.5],
      [1.1, 1.8, 0.5, 0.6],
    ];
    ends.flat().forEach((value, i) => {
      expect(value).toBeCloseTo(wanted.flat()[i]!, 12);
    });
  });
});
