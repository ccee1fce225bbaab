/**
 * Elastic half-space: influence values under the corner of a rectangle (Newmark 1935, Fadum 1948; four digits as such tables print
 * them, worked out with the textbook form and checked by numerical integration, the printed table itself not at hand), a
 * published worked raft, Newmark's chart radii (as published, two decimals), point loads (a public library's unit test: 47.75).
 */

import { describe, expect, it } from 'vitest';
import { cornerInfluence, underPointKPa, underRectangleKPa, underWheelsKPa } from '../../src/core/loads/newmark.ts';

const N = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1.0, 1.2, 1.5, 2.0, 3.0, 5.0, 10];
const TABLE: readonly (readonly [m: number, row: readonly number[]])[] = [
  [0.1, [47, 92, 132, 168, 198, 222, 258, 279, 293, 304, 311, 315, 316, 316]],
  [0.2, [92, 179, 259, 328, 387, 435, 504, 547, 573, 595, 610, 618, 620, 620]],
  [0.3, [132, 259, 374, 474, 559, 629, 731, 794, 832, 864, 887, 898, 901, 902]],
  [0.4, [168, 328, 474, 602, 711, 801, 931, 1013, 1063, 1105, 1134, 1150, 1154, 1154]],
  [0.5, [198, 387, 559, 711, 840, 947, 1103, 1202, 1263, 1314, 1350, 1368, 1374, 1374]],
  [0.6, [222, 435, 629, 801, 947, 1069, 1247, 1360, 1431, 1490, 1533, 1555, 1561, 1562]],
  [0.8, [258, 504, 731, 931, 1103, 1247, 1461, 1598, 1684, 1758, 1812, 1841, 1849, 1850]],
  [1.0, [279, 547, 794, 1013, 1202, 1360, 1598, 1752, 1851, 1936, 1999, 2034, 2044, 2046]],
  [1.5, [304, 595, 864, 1105, 1314, 1490, 1758, 1936, 2053, 2157, 2236, 2282, 2296, 2299]],
  [2.0, [311, 610, 887, 1134, 1350, 1533, 1812, 1999, 2124, 2236, 2325, 2378, 2395, 2398]],
  [3.0, [315, 618, 898, 1150, 1368, 1555, 1841, 2034, 2163, 2282, 2378, 2439, 2461, 2465]],
];

it.each(TABLE)('influence values for m = %d, to the four digits', (m, row) => {
  expect(N.map((n) => Math.round(1e4 * cornerInfluence(m, n)))).toEqual(row);
});

it('influence values with more digits, and the limit of a quarter', () => {
  expect(cornerInfluence(1, 1)).toBeCloseTo(0.17522148, 8);
  expect(cornerInfluence(1, 2)).toBeCloseTo(0.19994107, 8);
  expect(cornerInfluence(2, 2)).toBeCloseTo(0.23246625, 8);
  expect(cornerInfluence(0.5, 0.5)).toBeCloseTo(0.084026895, 9);
  expect(cornerInfluence(0.5, 2)).toBeCloseTo(0.13495585, 8);
  expect(cornerInfluence(1e4, 1e4)).toBeCloseTo(0.25, 9);
});

it('the textbook form with its change of branch gives the same', () => {
  for (const m of [0.1, 0.7, 1.3, 2.9]) {
    for (const n of [0.2, 1.1, 4, 9]) {
      const s = m * m + n * n + 1;
      const q = m * m * n * n;
      const root = 2 * m * n * Math.sqrt(s);
      const turn = Math.atan(root / (s - q)) + (q > s ? Math.PI : 0);
      expect(cornerInfluence(m, n)).toBeCloseTo((((root / (s + q)) * (s + 1)) / s + turn) / (4 * Math.PI), 12);
    }
  }
});

it('published raft 6.10 m × 15.25 m, 300 kPa, depth 4.58 m: 192 kPa by the chart (I = 0.16), 193.3571 exactly', () => {
  const kPa = underRectangleKPa([6.1, 15.25], 300, [0, 0], 4.58);
  expect(kPa).toBeCloseTo(193.3571, 3);
  // The publication reads its chart to two digits: within 1 %.
  expect(Math.abs(kPa / 192 - 1)).toBeLessThan(0.01);
});

it('a point outside: 100 kPa on x 1 … 3, y 0 … 2, under the origin at 2 m: 100 · (I(1.5, 1) − I(0.5, 1)) = 7.346805', () => {
  expect(underRectangleKPa([2, 2], 100, [-2, -1], 2)).toBeCloseTo(7.346805, 6);
});

it.each([
  [0, 47.746483],
  [0.5, 27.331682],
  [1, 8.440466],
])('a point load of 100 kN at 1 m depth, %d m aside: %d kPa', (asideM, kPa) => {
  expect(underPointKPa(100, asideM, 1)).toBeCloseTo(kPa, 5);
});

it('a strip 2 m wide, 100 kPa, 1 m deep under its middle: 81.830989 kPa', () => {
  expect(underRectangleKPa([2, 2e4], 100, [0, 0], 1)).toBeCloseTo(81.830989, 6);
});

/** A disc as a fan of point loads on rings of equal width. */
function underDisc(radiusM: number, depthM: number): number {
  const rings = 400;
  let sum = 0;
  for (let i = 0; i < rings; i++) {
    const r = ((i + 0.5) / rings) * radiusM;
    sum += underPointKPa(2 * Math.PI * r * (radiusM / rings), r, depthM);
  }
  return sum;
}

describe('a disc under its middle: 1 − (1 + (R/z)²)^−1.5', () => {
  it.each([
    [0.25, 0.086925],
    [0.5, 0.284458],
    [1, 0.646447],
    [1.5, 0.829323],
    [2, 0.910557],
    [3, 0.968377],
  ])('R/z = %d: %d', (ratio, share) => {
    expect(underDisc(ratio, 1)).toBeCloseTo(share, 4);
  });

  it('radii of the influence chart for 0.1 … 0.9 as published', () => {
    const radii = [0.27, 0.4, 0.52, 0.64, 0.77, 0.92, 1.11, 1.39, 1.91];
    // Two decimals move the share by up to 0.005 times the steepest slope, about 0.8.
    radii.forEach((radius, i) => {
      expect(Math.abs(underDisc(radius, 1) - (i + 1) / 10)).toBeLessThan(0.005);
    });
  });

  it('a regular stack of squares makes the same disc', () => {
    // 40 squares across the diameter; the rim is ragged, so three digits
    const side = 0.05;
    let sum = 0;
    for (let i = -20; i < 20; i++) {
      for (let j = -20; j < 20; j++) {
        const [x, y] = [(i + 0.5) * side, (j + 0.5) * side];
        if (Math.hypot(x, y) < 1) sum += underRectangleKPa([side, side], 1, [-x, -y], 1);
      }
    }
    expect(Math.abs(sum - 0.646447)).toBeLessThan(0.005);
  });
});

describe('one wheel of 50 kN on 0.20 m × 0.40 m', () => {
  const wheel = { x: 3, y: 4, dirX: 0.6, dirY: 0.8, alongM: 0.2, acrossM: 0.4, loadKN: 50 };

  it.each([
    [0.3, 183.0409, 265.2582],
    [0.6, 59.4897, 66.3146],
    [0.9, 28.0367, 29.4731],
    [1.2, 16.1135, 16.5786],
  ])('%d m deep: peak %d kPa, as a point load %d kPa', (depthM, peakKPa, pointKPa) => {
    expect(underWheelsKPa([wheel], 3, 4, depthM)).toBeCloseTo(peakKPa, 4);
    expect(underPointKPa(50, 0, depthM)).toBeCloseTo(pointKPa, 4);
  });

  it('presses 625 kPa on the surface, and nothing beside it', () => {
    expect(underWheelsKPa([wheel], 3, 4, 0)).toBeCloseTo(625, 6);
    expect(underWheelsKPa([wheel], 4, 4, 0)).toBeCloseTo(0, 6);
  });

  it('keeps its force at a depth: the pressure over 24 m × 24 m adds up to 50 kN but for what goes farther', () => {
    // Beyond 12 m at 0.5 m depth a point load leaves 1 − … = (1 + 24²)^−1.5 ≈ 0.00007 of itself
    let force = 0;
    const step = 0.1;
    for (let x = -12; x < 12; x += step) {
      for (let y = -12; y < 12; y += step) force += underWheelsKPa([wheel], 3 + x + step / 2, 4 + y + step / 2, 0.5) * step * step;
    }
    expect(force).toBeCloseTo(50, 1);
  });
});
