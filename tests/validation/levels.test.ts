/**
 * Levels between spots: linear in the triangle. Worked by hand with barycentric weights (check values, 12.3, worked twice).
 */

import { describe, expect, it } from 'vitest';
import { netSurface } from '../../src/core/levels/net.ts';
import { surfaceLevelM } from '../../src/core/levels/surface.ts';
import { read, rect, sceneOf } from '../helpers/scene-builder.ts';

const SPOTS: [number, number, number][] = [
  [0, 0, 10],
  [10, 0, 10.2],
  [0, 8, 9.84],
];

describe('three spots', () => {
  const surface = netSurface({ spots: Float64Array.from(SPOTS.flat()), breaklines: [] }, 20);

  it('level inside the triangle', () => {
    // by hand: at (3, 2) the weights are 1 − 0.3 − 0.25 = 0.45, 3/10 = 0.30, 2/8 = 0.25: 4.500 + 3.060 + 2.460
    expect(surfaceLevelM(surface, 3, 2)).toBeCloseTo(10.02, 12);
  });

  it('gradient and steepest descent', () => {
    const z = (x: number, y: number) => surfaceLevelM(surface, x, y);
    const gx = z(4, 2) - z(3, 2);
    const gy = z(3, 3) - z(3, 2);
    expect(gx).toBeCloseTo(0.02, 12); // by hand: 0.20 / 10
    expect(gy).toBeCloseTo(-0.02, 12); // by hand: −0.16 / 8
    expect(Math.hypot(gx, gy)).toBeCloseTo(0.0282843, 7); // by hand: 0.02 · √2
    expect((Math.atan2(-gy, -gx) * 180) / Math.PI).toBeCloseTo(135, 9); // by hand: descent towards (−1, +1)
  });

  it.each([0.25, 0.5, 1])('from file to report in cells of %f m', (cellM) => {
    // 1 m² with its middle at (3, 2): the mean of a plane is its level in the middle. 0.10 m of soil on top.
    const { report } = read(sceneOf({ deck: { outline: rect(2.5, 1.5, 3.5, 2.5), levels: { spots: SPOTS } } }), cellM);
    expect(report.zones[0].finishedM.mean).toBeCloseTo(10.02 + 0.1, 9);
    expect(report.findings.filter((finding) => finding.rule === 'level.outside')).toEqual([]);
  });
});
