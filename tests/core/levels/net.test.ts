/** Nets of spots and breaklines, and how they go on outside: by the level of the nearest point on their boundary. */

import { describe, expect, it } from 'vitest';
import { netSurface, SPOT_MERGE_M } from '../../../src/core/levels/net.ts';
import { type NetSurface, surfaceLevelM } from '../../../src/core/levels/surface.ts';

type Point = readonly [number, number, number];

function net(spots: readonly Point[], ...breaklines: readonly (readonly Point[])[]) {
  return netSurface({ spots: Float64Array.from(spots.flat()), breaklines: breaklines.map((line) => Float64Array.from(line.flat())) }, 50);
}

function expectLevels(surface: ReturnType<typeof net>, levels: readonly Point[]): void {
  for (const [x, y, z] of levels) expect(surfaceLevelM(surface, x, y), `at ${x}, ${y}`).toBeCloseTo(z, 9);
}

describe('breaklines', () => {
  const saddle: readonly Point[] = [
    [0, 0, 0],
    [2, 0, 1],
    [2, 2, 0],
    [0, 2, 1],
  ];

  it('decide which way a square is cut: along the low diagonal or along the high one', () => {
    const low = net(saddle, [
      [0, 0, 0],
      [2, 2, 0],
    ]);
    const high = net(saddle, [
      [2, 0, 1],
      [0, 2, 1],
    ]);
    // Centre on the low diagonal 0, on the high one 1. At (1.5, 0.5): half way from the low diagonal to (2, 0), or on the high one.
    expectLevels(low, [
      [1, 1, 0],
      [1.5, 0.5, 0.5],
    ]);
    expectLevels(high, [
      [1, 1, 1],
      [0.5, 0.5, 0.5],
    ]);
  });

  it('make a valley between level borders', () => {
    const valley = net(
      [
        [0, 0, 1],
        [4, 0, 1],
        [0, 6, 1],
        [4, 6, 1],
      ],
      [
        [2, 0, 0],
        [2, 6, 0],
      ],
    );
    // 1 m over 2 m on both sides
    expectLevels(valley, [
      [1, 3, 0.5],
      [2, 5, 0],
      [3.5, 1, 0.75],
    ]);
  });

  it('may pass through spots: a spot on a breakline bends it', () => {
    const bent = net(
      [
        [0, 0, 1],
        [4, 0, 1],
        [0, 4, 1],
        [4, 4, 1],
        [2, 2, 0.5],
      ],
      [
        [2, 0, 0],
        [2, 4, 0],
      ],
    );
    // Half way from (2, 0, 0) to the spot (2, 2, 0.5)
    expectLevels(bent, [[2, 1, 0.25]]);
  });

  it('that cross meet in one point', () => {
    const crossed = net(
      [],
      [
        [0, 2, 0],
        [4, 2, 4],
      ],
      [
        [2, 0, 2],
        [2, 4, 2],
      ],
    );
    expectLevels(crossed, [
      [2, 2, 2],
      [1, 2, 1],
      [2, 3, 2],
    ]);
  });
});

describe('beyond the net', () => {
  // z = x + 2y on 4 m × 4 m
  const slope = net([
    [0, 0, 0],
    [4, 0, 4],
    [4, 4, 12],
    [0, 4, 8],
  ]);

  it('a strip off an edge keeps the level of the foot on that edge', () => {
    // (7, 1) → (4, 1): 4 + 2 = 6; (2, −3) → (2, 0): 2; (−5, 3) → (0, 3): 6; (1, 40) → (1, 4): 9
    expectLevels(slope, [
      [7, 1, 6],
      [2, -3, 2],
      [-5, 3, 6],
      [1, 40, 9],
    ]);
  });

  it('a fan round a corner keeps the level of that corner', () => {
    // (5, 6) and (30, 5) → (4, 4): 12; (6, −2) → (4, 0): 4; (−1, −9) → (0, 0): 0
    expectLevels(slope, [
      [5, 6, 12],
      [30, 5, 12],
      [6, -2, 4],
      [-1, -9, 0],
    ]);
  });

  it('works off slanting edges too', () => {
    // Triangle (0, 0, 0) (4, 0, 0) (0, 4, 4): the edge from (4, 0) to (0, 4) rises from 0 to 4. (4, 4) → foot (2, 2), level 2.
    const triangle = net([
      [0, 0, 0],
      [4, 0, 0],
      [0, 4, 4],
    ]);
    expectLevels(triangle, [
      [4, 4, 2],
      // Foot of (5, 3): along (1, 1) back by 2 → (3, 1), level 1
      [5, 3, 1],
      // Beyond the corner (4, 0)
      [9, 1, 0],
    ]);
  });
});

describe('nets without area', () => {
  it('of one point are level', () => {
    expectLevels(net([[3, 3, 0.4]]), [[-20, 8, 0.4]]);
  });

  it('on one line follow the line and its ends', () => {
    // Up to 2 at x = 2, down to 0 at x = 4
    const line = net([
      [4, 0, 0],
      [0, 0, 0],
      [2, 0, 2],
    ]);
    expect((line as NetSurface).netTriangles).toBe(0);
    expectLevels(line, [
      [1, 5, 1],
      [3, -7, 1],
      [2, 0, 2],
      [-3, 4, 0],
      [9, -1, 0],
    ]);
  });

  it('on a slanting line keep the level of the nearest point', () => {
    // (0, 0, 0) to (3, 4, 5): from half way, (1.5, 2, 2.5), five metres to the side, (−4, 3)
    expectLevels(
      net([
        [0, 0, 0],
        [3, 4, 5],
      ]),
      [[1.5 - 4, 2 + 3, 2.5]],
    );
  });

  it('without any point are refused', () => {
    expect(() => net([])).toThrow(RangeError);
  });
});

it('takes spots within a millimetre for one', () => {
  const merged = net([
    [0, 0, 0],
    [4, 0, 0],
    [0, 4, 0],
    [SPOT_MERGE_M / 2, 0, 9],
  ]) as NetSurface;
  expect(merged.netTriangles).toBe(1);
  expect([...merged.boundary]).toHaveLength(6);
});
