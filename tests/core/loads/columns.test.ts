/** Shares of columns by hand, on 4 m × 2 m. */

import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/core/evaluate.ts';
import { regionAreaM2 } from '../../../src/core/geometry/ring.ts';
import { columnShares, nearestRegions } from '../../../src/core/loads/columns.ts';
import type { ColumnInput, DeckInput } from '../../../src/model/deck-input.ts';
import { block, box, boxRing, buildUp, deck, hole, holed, layer, loaded, zone } from '../../helpers/deck-builder.ts';
import { randomFrom } from '../../helpers/scene-builder.ts';

const BOX = { minX: 0, minY: 0, maxX: 4, maxY: 2 };
const column = (x: number, y: number): ColumnInput => ({ id: `${x} ${y}`, x, y });
const close = (value: number) => expect.closeTo(value, 12);

function sharesOf(columns: readonly ColumnInput[], over: Partial<DeckInput>) {
  const on = evaluate(deck({ columns, ...over }));
  const zones = on.prepared.zones.map((laid, z) => ({ laid, stack: on.stacks[z], makeUpM: on.makeUps[z].thicknessM }));
  return { on, shares: columnShares(on.prepared.columns!, zones, on.input.cellM) };
}

describe('nearest parts of a box', () => {
  const areas = (...points: (readonly [number, number])[]) =>
    nearestRegions(
      points.map(([x, y]) => ({ x, y })),
      BOX,
    ).map((part) => (part.outer.length === 0 ? 0 : regionAreaM2(part)));

  it('of one point are all of it', () => {
    expect(areas([1, 1])).toEqual([8]);
  });

  it('of two points meet half way: x = 1.5', () => {
    expect(areas([0, 1], [3, 1])).toEqual([3, 5]);
  });

  it('of a diagonal pair meet on the perpendicular through the middle', () => {
    // (1, 0) and (3, 2): middle (2, 1), border from (3, 0) to (1, 2): 2 · 2 = 4 m² each
    expect(areas([1, 0], [3, 2])).toEqual([close(4), close(4)]);
  });

  it('of four points: a quarter each where they stand in the middle of the quarters', () => {
    expect(areas([1, 0.5], [3, 0.5], [3, 1.5], [1, 1.5])).toEqual([close(2), close(2), close(2), close(2)]);
  });

  it('of points in one place belong to the first, and a far point has none', () => {
    expect(areas([1, 1], [1, 1], [3, 1], [90, 1])).toEqual([4, 0, 4, 0]);
  });

  it('are nearest indeed: every one of 400 places lies in the part of its nearest point', () => {
    const random = randomFrom(7);
    const points = Array.from({ length: 9 }, () => ({ x: 4 * random(), y: 2 * random() }));
    const parts = nearestRegions(points, BOX);
    // Shares by counting places, against the areas; 400 places tell an area of 8 m² to about 0.02 m² each
    expect(parts.reduce((sum, part) => sum + regionAreaM2(part), 0)).toBeCloseTo(8, 9);
    for (let i = 0; i < 400; i++) {
      const [x, y] = [4 * random(), 2 * random()];
      const distances = points.map((p) => Math.hypot(p.x - x, p.y - y));
      const nearest = distances.indexOf(Math.min(...distances));
      expect(insideConvex(parts[nearest].outer, x, y), `${x} ${y}`).toBe(true);
    }
  });
});

/** Left of every side. */
function insideConvex(ring: Float64Array, x: number, y: number): boolean {
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    if ((ring[i] - ring[j]) * (y - ring[j + 1]) - (ring[i + 1] - ring[j + 1]) * (x - ring[j]) < -1e-12) return false;
  }
  return true;
}

describe('load on the shares', () => {
  // 4 kN/m² left of x = 2, 8 kN/m² right of it
  const STEP = [zone('L', box(0, 0, 2, 2), loaded(4)), zone('R', box(2, 0, 4, 2), loaded(8))];

  it('by area where the border cuts cells: x = 1.6 in cells of 1 m', () => {
    const { shares } = sharesOf([column(0, 1), column(3.2, 1)], { zones: STEP });
    // 3.2 m² · 4 = 12.8; 0.8 m² · 4 + 4 m² · 8 = 35.2
    expect(shares).toEqual([
      { shareM2: close(3.2), permanentKN: close(12.8) },
      { shareM2: close(4.8), permanentKN: close(35.2) },
    ]);
  });

  it('by area where the border runs at a slant', () => {
    // Border x = 3 − y. First share: L but for a triangle of 0.5 m² in its upper corner, and as much of R: 3.5 · 4 + 0.5 · 8 = 18
    const { shares } = sharesOf([column(1, 0), column(3, 2)], { zones: STEP });
    expect(shares).toEqual([
      { shareM2: close(4), permanentKN: close(18) },
      { shareM2: close(4), permanentKN: close(30) },
    ]);
  });

  it('counts objects where they stand', () => {
    // Border x = 2; the block 1.5 … 2.2 × 0 … 1 at 10: 5 kN left, 2 kN right
    const { shares } = sharesOf([column(1, 1), column(3, 1)], { objects: [block('P', boxRing(1.5, 0, 2.2, 1), 10)] });
    expect(shares.map((share) => share.permanentKN)).toEqual([close(5), close(2)]);
  });

  it('counts make-up layers by their thickness in each cell', () => {
    // Membrane rising from 0 to 0.4 over 4 m, finish at 1.0: fill of 10 kN/m³ 1 − 0.1 x, mean 0.9 on the left half, 0.7 on the right
    const fill = layer('light fill', 0.5, { rangeM: { min: 0, max: 2 }, saturatedPerMKNm3: 10 });
    const finish = { kind: 'plane', x: 0, y: 0, z: 1, slopeX: 0, slopeY: 0 } as const;
    const levels = { spots: Float64Array.of(0, 0, 0, 4, 0, 0.4, 4, 2, 0.4, 0, 2, 0), breaklines: [] };
    const { shares } = sharesOf([column(1, 1), column(3, 1)], {
      levels,
      zones: [zone('Z', box(0, 0, 4, 2), buildUp('b', [fill]), { finish })],
    });
    expect(shares.map((share) => share.permanentKN)).toEqual([close(36), close(28)]);
  });

  it('leaves openings out', () => {
    // Opening 0.5 m² on the left
    const shape = holed(box(0, 0, 4, 2), hole(0.5, 0.5, 1.5, 1));
    const { shares } = sharesOf([column(1, 1), column(3, 1)], { deck: shape, zones: STEP });
    expect(shares).toEqual([
      { shareM2: close(3.5), permanentKN: close(14) },
      { shareM2: close(4), permanentKN: close(32) },
    ]);
  });

  it('makes the whole: shares of random columns add up to the deck’s load', () => {
    const random = randomFrom(11);
    const columns = Array.from({ length: 13 }, (_, i) => ({ id: String(i), x: 4 * random(), y: 2 * random() }));
    const objects = [block('P', boxRing(1.03, 0.4, 3.17, 1.9), 7)];
    const { on, shares } = sharesOf(columns, { cellM: 0.3, zones: STEP, objects });
    // 8 m² · 6 + 2.14 · 1.5 · 7 = 70.47
    expect(shares.reduce((sum, share) => sum + share.permanentKN, 0)).toBeCloseTo(70.47, 9);
    expect(on.totals.saturatedKN).toBeCloseTo(70.47, 9);
    expect(shares.reduce((sum, share) => sum + share.shareM2, 0)).toBeCloseTo(8, 9);
  });
});
