/** Weighted stamps on the grid: what wheels press, cell by cell. */

import { describe, expect, it } from 'vitest';
import { createRasteriser } from '../../../src/core/geometry/coverage.ts';
import { axlePath, frontPlaces, wheelsAt } from '../../../src/core/loads/wheel-path.ts';
import { patchKPa, patchRing } from '../../../src/core/loads/wheel-stress.ts';
import type { WheelPatch } from '../../../src/model/wheel-input.ts';
import { boxRing, gridOf } from '../../helpers/deck-builder.ts';

it('one box: its value times the share of each cell', () => {
  const out = new Float64Array(9);
  // 1.5 m × 1 m from (0.5, 1): half of cell 3, all of cell 4
  expect(createRasteriser(gridOf(3, 3)).raise([boxRing(0.5, 1, 2, 2)], [10], out)).toBeCloseTo(15, 12);
  expect([...out]).toEqual([0, 0, 0, 5, 10, 0, 0, 0, 0]);
});

it('boxes that overlap add; the field keeps the greater', () => {
  const out = Float64Array.of(0, 0, 8, 0);
  createRasteriser(gridOf(4, 1)).raise([boxRing(0, 0, 3, 1), boxRing(1, 0, 4, 1)], [3, 4], out);
  expect([...out]).toEqual([3, 7, 8, 4]);
});

it('leaves nothing behind: the same again gives the same', () => {
  const rasteriser = createRasteriser(gridOf(40, 40, 0.1));
  const ring = Float64Array.of(0.33, 0.41, 3.1, 0.9, 2.2, 3.7);
  const [first, second] = [new Float64Array(1600), new Float64Array(1600)];
  rasteriser.raise([ring], [7], first);
  rasteriser.raise([ring], [7], second);
  expect(second).toEqual(first);
  expect(rasteriser.cover([boxRing(0, 0, 0.1, 0.1)]).cells).toHaveLength(0);
});

const LORRY = {
  id: 'lorry',
  name: 'Lorry',
  axles: [
    { atM: 0, loadKN: 60, wheels: 2, trackM: 2, alongM: 0.2, acrossM: 0.3 },
    { atM: 4, loadKN: 100, wheels: 4, trackM: 1.9, alongM: 0.2, acrossM: 0.25 },
    { atM: 5.3, loadKN: 100, wheels: 4, trackM: 1.9, alongM: 0.2, acrossM: 0.25 },
  ],
  pad: null,
  radiusM: 9,
};

describe('wheels of 260 kN on a bent line', () => {
  const path = axlePath([10, 10, 30, 12, 38, 30], LORRY.radiusM);
  const stamp = (cellM: number, wheels: readonly WheelPatch[], spreadM: number, out: Float64Array) =>
    createRasteriser(gridOf(45 / cellM, 45 / cellM, cellM)).raise(
      wheels.map((one) => patchRing(one, spreadM)),
      wheels.map((one) => patchKPa(one, spreadM)),
      out,
    ) *
    cellM ** 2;

  it.each([0.25, 0.1])('keep their force at every depth, cells of %d m', (cellM) => {
    for (const frontM of [6, 19.3, 27, 33.7]) {
      for (const spreadM of [0, 0.05, 0.3, 0.9]) {
        const force = stamp(cellM, wheelsAt(path, LORRY, frontM, 1), spreadM, new Float64Array((45 / cellM) ** 2));
        expect(Math.abs(force / 260 - 1)).toBeLessThan(1e-12);
      }
    }
  });

  it('a line and its mirror image press the same on the mirrored cell', () => {
    const straight = axlePath([5, 22.5, 40, 22.5], 9);
    const out = new Float64Array(180 * 180);
    for (const frontM of frontPlaces(straight, 5.3, 0.25)) stamp(0.25, wheelsAt(straight, LORRY, frontM, 1), 0.4, out);
    for (let row = 0; row < 90; row++) {
      for (let column = 0; column < 180; column++) {
        expect(Math.abs(out[row * 180 + column] - out[(179 - row) * 180 + column])).toBeLessThan(1e-9);
      }
    }
  });

  it('shorter steps miss less and less, and never tell too much', () => {
    const envelope = (steps: number) => {
      const out = new Float64Array(180 * 180);
      const wholeM = path.lengthM + 5.3;
      for (let i = 0; i <= steps; i++) stamp(0.25, wheelsAt(path, LORRY, (i * wholeM) / steps, 1), 0.05, out);
      return out;
    };
    // Every finer walk has the places of the coarser ones too.
    const finest = envelope(3200);
    const missed = [100, 200, 400].map((steps) => {
      const walk = envelope(steps);
      expect(walk.every((value, i) => value <= finest[i] + 1e-9)).toBe(true);
      return finest.reduce((sum, value, i) => sum + value - walk[i], 0);
    });
    expect(missed[1]).toBeLessThan(0.6 * missed[0]);
    expect(missed[2]).toBeLessThan(0.6 * missed[1]);
  });

  it('finer cells come nearer to the pressure of the patches: never above, and rising', () => {
    const wheels = wheelsAt(path, LORRY, 8, 1);
    // Rear wheels 0.125 m apart in pairs, pairs 1.9 m apart, axles 1.3 m apart: with 0.3 m of growth the pairs and both axles do not share a point
    const peakKPa = (2 * 25) / (0.8 * 0.85);
    const peaks = [0.5, 0.25, 0.1, 0.05].map((cellM) => {
      const out = new Float64Array((45 / cellM) ** 2);
      stamp(cellM, wheels, 0.3, out);
      return out.reduce((most, value) => Math.max(most, value), 0);
    });
    for (const peak of peaks) expect(peak).toBeLessThanOrEqual(peakKPa + 1e-9);
    expect(peaks[0]).toBeLessThan(peakKPa);
    expect(peaks[3]).toBeCloseTo(peakKPa, 6);
  });
});
