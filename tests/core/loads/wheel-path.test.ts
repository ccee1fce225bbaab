import { describe, expect, it } from 'vitest';
import { axlePath, frontPlaces, pointOnPath, wheelsAt } from '../../../src/core/loads/wheel-path.ts';
import type { VehicleInput } from '../../../src/model/wheel-input.ts';

const CART: VehicleInput = {
  id: 'cart',
  name: 'Cart',
  axles: [
    { atM: 0, loadKN: 20, wheels: 2, trackM: 1, alongM: 0.2, acrossM: 0.3 },
    { atM: 3, loadKN: 60, wheels: 4, trackM: 2, alongM: 0.2, acrossM: 0.3 },
  ],
  pad: null,
  radiusM: 4,
};

describe('path of the axles', () => {
  it('a straight line is itself, and runs straight on at both ends', () => {
    const path = axlePath([1, 2, 11, 2], 5);
    expect(path.lengthM).toBeCloseTo(10, 12);
    expect(pointOnPath(path, 4)).toMatchObject({ x: 5, y: 2, dirX: 1, dirY: 0 });
    expect(pointOnPath(path, -3)).toMatchObject({ x: -2, y: 2 });
    expect(pointOnPath(path, 12)).toMatchObject({ x: 13, y: 2 });
  });

  it('a right angle with room: an arc of the given radius', () => {
    // 20 m and 20 m, radius 4: cut 4 on both sides, arc 2π
    const path = axlePath([0, 0, 20, 0, 20, 20], 4);
    expect(path.lengthM).toBeCloseTo(16 + 2 * Math.PI + 16, 12);
    const middle = pointOnPath(path, 16 + Math.PI);
    // Centre (16, 4), halfway round: 4/√2
    expect(middle.x).toBeCloseTo(16 + 4 / Math.SQRT2, 12);
    expect(middle.y).toBeCloseTo(4 - 4 / Math.SQRT2, 12);
    expect(middle.dirX).toBeCloseTo(1 / Math.SQRT2, 12);
    expect(pointOnPath(path, path.lengthM)).toMatchObject({ dirX: expect.closeTo(0, 12), dirY: expect.closeTo(1, 12) });
  });

  it('a bend to the right is the mirror image', () => {
    const left = axlePath([0, 0, 20, 0, 20, 20], 4);
    const right = axlePath([0, 0, 20, 0, 20, -20], 4);
    for (const s of [0, 15, 17, 20, 23, 30]) {
      const [a, b] = [pointOnPath(left, s), pointOnPath(right, s)];
      expect(b.x).toBeCloseTo(a.x, 12);
      expect(b.y).toBeCloseTo(-a.y, 12);
    }
  });

  it('without room: the largest arc that leaves half of an inner side', () => {
    // Inner side of 4 m: 2 m of it for either bend, so radius 2 instead of 10
    const path = axlePath([0, 0, 20, 0, 20, 4, 40, 4], 10);
    expect(path.lengthM).toBeCloseTo(18 + Math.PI + Math.PI + 18, 12);
    expect(pointOnPath(path, 18 + Math.PI)).toMatchObject({ x: expect.closeTo(20, 12), y: expect.closeTo(2, 12) });
  });

  it('is smooth: neighbouring places lie a step apart and turn by step / radius at most', () => {
    const path = axlePath([0, 0, 9, 1, 14, 8, 13, 20, 2, 22], 3);
    for (let s = 0; s < path.lengthM; s += 0.01) {
      const [a, b] = [pointOnPath(path, s), pointOnPath(path, s + 0.01)];
      expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeLessThan(0.01 + 1e-9);
      expect(Math.abs(a.dirX * b.dirY - a.dirY * b.dirX)).toBeLessThan(0.01 / 3 + 1e-9);
    }
  });

  it('turning on the spot or turning back keeps the corner', () => {
    expect(axlePath([0, 0, 5, 0, 5, 5], 0).lengthM).toBeCloseTo(10, 12);
    expect(axlePath([0, 0, 5, 0, 0, 0.1], 4).lengthM).toBeCloseTo(5 + Math.hypot(5, 0.1), 12);
  });

  it('a vertex drawn twice changes nothing; no length at all is refused', () => {
    expect(axlePath([0, 0, 5, 0, 5, 0, 5, 5], 2).lengthM).toBeCloseTo(axlePath([0, 0, 5, 0, 5, 5], 2).lengthM, 12);
    expect(() => axlePath([1, 1, 1, 1], 2)).toThrow(/axlePath/);
  });
});

it('front places: every axle travels the whole line, in steps no longer than asked', () => {
  const places = frontPlaces(axlePath([0, 0, 10, 0], 0), 3, 0.25);
  expect(places[0]).toBe(0);
  expect(places.at(-1)).toBeCloseTo(13, 12);
  // 13 / 0.25
  expect(places).toHaveLength(53);
  expect(frontPlaces(axlePath([0, 0, 1, 0], 0), 0, 0.3)).toHaveLength(5);
});

describe('wheels', () => {
  const path = axlePath([0, 0, 10, 0], 0);

  it('stand beside the path, twin wheels side by side around half the track', () => {
    const wheels = wheelsAt(path, CART, 5, 1);
    const places = wheels.map(({ x, y, loadKN }) => [x, Number(y.toFixed(9)), loadKN]);
    expect(places).toEqual([
      [5, 0.5, 10],
      [5, -0.5, 10],
      [2, 0.85, 15],
      [2, -0.85, 15],
      [2, 1.15, 15],
      [2, -1.15, 15],
    ]);
  });

  it('an odd wheel runs in the middle', () => {
    const axles = [{ atM: 0, loadKN: 9, wheels: 3, trackM: 2, alongM: 0.2, acrossM: 0.3 }];
    expect(wheelsAt(path, { ...CART, axles }, 5, 1).map(({ y }) => y)).toEqual([0, 1, -1]);
  });

  it('carry all of the load, times the factor', () => {
    const sum = (factor: number) => wheelsAt(path, CART, 5, factor).reduce((kN, one) => kN + one.loadKN, 0);
    expect(sum(1)).toBeCloseTo(80, 12);
    expect(sum(1.4)).toBeCloseTo(112, 12);
  });

  it('know whether their axle is on the drawn line', () => {
    expect(wheelsAt(path, CART, 1, 1).map((one) => one.onLine)).toEqual([true, true, false, false, false, false]);
    expect(wheelsAt(path, CART, 11, 1).map((one) => one.onLine)).toEqual([false, false, true, true, true, true]);
  });
});
