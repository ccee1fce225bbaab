/** The surface of standing water on basins whose areas and lines are known. */

import { describe, expect, it } from 'vitest';
import { cutWater, type WaterSurface, waterBed, waterSurface } from '../../src/mesh/water-surface.ts';
import type { Prism } from '../../src/model/picture.ts';

/** Pyramids standing on their tip, 2 m × 2 m and 1 m deep, side by side along x; the first two share an edge of `ridgeM`. */
function pyramids(count: number, ridgeM: number): Prism {
  const plan: number[] = [];
  const top: number[] = [];
  for (let i = 0; i <= count; i++) {
    for (const y of [-1, 1]) {
      plan.push(2 * i - 1, y);
      top.push(i === 0 || i === count ? 1 : ridgeM);
    }
  }
  const triangles: number[] = [];
  for (let i = 0; i < count; i++) {
    const tip = plan.length / 2;
    plan.push(2 * i, 0);
    top.push(0);
    const ring = [2 * i, 2 * i + 2, 2 * i + 3, 2 * i + 1];
    ring.forEach((v, k) => {
      triangles.push(v, ring[(k + 1) % 4], tip);
    });
  }
  const rim = [...Array.from({ length: count }, (_, i) => [2 * i, 2 * i + 2, 2 * i + 3, 2 * i + 1]).flat(), 1, 0, 2 * count, 2 * count + 1];
  const heights = Float64Array.from([...top.map((z) => z - 0.3), ...top]);
  return {
    owner: '',
    plan: Float64Array.from(plan),
    triangles: Uint32Array.from(triangles),
    rim: Uint32Array.from(rim),
    heights,
    parts: [0],
  };
}

/** Cells of 0.5 m over x from −1; those with their middle up to `toM` are wet. */
function wetUpTo(toM: number) {
  const grid = { columns: 12, rows: 4, cellM: 0.5, x0M: -1, y0M: -1 };
  const cells = Array.from({ length: 48 }, (_, cell) => cell).filter((cell) => -1 + ((cell % 12) + 0.5) * 0.5 < toM);
  return { grid, cells: Int32Array.from(cells) };
}

function areaM2({ corners }: WaterSurface): number {
  let sum = 0;
  for (let v = 0; v < corners.length; v += 9) {
    const [ax, ay, , bx, by, , cx, cy] = corners.subarray(v, v + 9);
    sum += ((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2;
  }
  return sum;
}

function lengthM(pieces: Float64Array): number {
  let sum = 0;
  for (let v = 0; v < pieces.length; v += 6) sum += Math.hypot(pieces[v + 3] - pieces[v], pieces[v + 4] - pieces[v + 1]);
  return sum;
}

describe('water in a pyramid', () => {
  const bed = waterBed(pyramids(1, 1), wetUpTo(1), 1);

  it.each([0.25, 0.5, 0.8])('at %f m is a square of twice that, its shore the square’s sides', (levelM) => {
    const water = waterSurface(bed, levelM);
    // (2h)², 4 · 2h; facing up, so positive
    expect(areaM2(water)).toBeCloseTo(4 * levelM ** 2, 12);
    expect(lengthM(water.shore)).toBeCloseTo(8 * levelM, 12);
    expect([...water.corners].filter((_, i) => i % 3 === 2).every((z) => z === levelM)).toBe(true);
    // The membrane under every corner is where the pyramid has it: max(|x|, |y|).
    water.membraneM.forEach((z, v) => {
      expect(z).toBeCloseTo(Math.max(Math.abs(water.corners[3 * v]), Math.abs(water.corners[3 * v + 1])), 12);
    });
  });

  it('above the rim stands against the edge of the deck', () => {
    const deep = waterSurface(waterBed(pyramids(1, 1), wetUpTo(1), 1.2), 1.2);
    expect(areaM2(deep)).toBeCloseTo(4, 12);
    expect(lengthM(deep.shore)).toBeCloseTo(8, 12);
  });

  it('at the tip is nothing', () => {
    expect(waterSurface(bed, 0).corners).toHaveLength(0);
  });

  it('cut through the tip shows a triangle', () => {
    // Line 2h, area 2h · h / 2
    const { faces, line } = cutWater(waterSurface(bed, 0.6), { lookX: 1, lookY: 0, offsetM: 0 });
    expect(lengthM(line)).toBeCloseTo(1.2, 12);
    let area = 0;
    for (let v = 0; v < faces.length; v += 9) {
      const [, ay, az, , by, bz, , cy, cz] = faces.subarray(v, v + 9);
      area += Math.abs((by - ay) * (cz - az) - (cy - ay) * (bz - az)) / 2;
    }
    expect(area).toBeCloseTo(0.36, 12);
  });
});

describe('basins side by side', () => {
  it('a saddle a little lower than it was read lets nothing into the next basin', () => {
    // Ridge at 0.5; water of 0.505 is told for the first of three basins only. Its part: |x| ≤ 0.505 but on the far side of the ridge.
    const bed = waterBed(pyramids(3, 0.5), wetUpTo(1), 0.505);
    const xs = [...waterSurface(bed, 0.505).corners].filter((_, i) => i % 3 === 0);
    expect(Math.max(...xs)).toBeLessThanOrEqual(1 + 1e-12);
  });

  it('basins that hang together are one', () => {
    // Both pyramids cut off at 0.5 by the ridge they share: at 1 m, 2 · 4 m².
    expect(areaM2(waterSurface(waterBed(pyramids(2, 0.5), wetUpTo(3), 1.1), 1.1))).toBeCloseTo(8, 12);
  });
});
