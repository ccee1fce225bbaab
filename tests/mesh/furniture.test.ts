/** Small solids: closed, outward, of the size that was asked for. */

import { describe, expect, it } from 'vitest';
import { netSurface } from '../../src/core/levels/net.ts';
import { levelSurface } from '../../src/core/levels/surface.ts';
import { drapedLine } from '../../src/mesh/draped-lines.ts';
import { circleLoop, tube, wall, writeFlatSolid } from '../../src/mesh/flat-solid.ts';
import { groundOver } from '../../src/mesh/ground.ts';
import { blockSolid, heapSolid } from '../../src/mesh/heap-solids.ts';
import { planNet } from '../../src/mesh/plan-net.ts';
import { zonePrism } from '../../src/mesh/prism.ts';
import { createSolidWriter } from '../../src/mesh/solid-writer.ts';
import { treeSolids } from '../../src/mesh/tree-solids.ts';
import { box, expectClosed, facesOf, layer, region, ring, trianglesOf, volumeM3, worstNormalDeg } from './solid-checks.ts';

const at = (...values: number[]) => Float64Array.from(values);

describe('tubes', () => {
  it('a column', () => {
    const corners = (z: number) => [0, 0, z, 0.4, 0, z, 0.4, 0.3, z, 0, 0.3, z];
    const solid = tube([corners(-2.6), corners(0)], false);
    expectClosed(facesOf(solid));
    // by hand: 0.4 × 0.3 × 2.6 = 0.312 m³
    expect(volumeM3(facesOf(solid))).toBeCloseTo(0.312, 12);
  });

  it('a ring with square sides', () => {
    const loop = (radiusM: number, z: number) => circleLoop({ x: 1, y: 2, radiusM, sides: 4 }, z);
    const solid = tube([loop(2, 0), loop(2, 1), loop(1, 1), loop(1, 0)], true);
    expectClosed(facesOf(solid));
    // by hand: a square with half diagonal r has 2 r² m²: (8 − 2) × 1 = 6 m³
    expect(volumeM3(facesOf(solid))).toBeCloseTo(6, 12);
  });
});

describe('walls', () => {
  it('a bend is mitred: width × height × length of the middle line', () => {
    const solid = wall(at(0, 0, 4, 0, 4, 3), 0.4, () => [0.1, 0.9]);
    expectClosed(facesOf(solid!));
    // by hand: 0.4 × 0.8 × 7 = 2.24 m³
    expect(volumeM3(facesOf(solid!))).toBeCloseTo(2.24, 12);
  });

  it('a closed line has no ends', () => {
    const solid = wall(at(0, 0, 4, 0, 4, 3, 0, 3, 0, 0), 0.2, () => [0, 1]);
    expectClosed(facesOf(solid!));
    // by hand: 4.2 × 3.2 − 3.8 × 2.8 = 2.8 m²
    expect(volumeM3(facesOf(solid!))).toBeCloseTo(2.8, 12);
    expect(solid!.points).toHaveLength(4 * 4 * 3);
  });

  it('top and foot follow the line', () => {
    // by hand: height 1 at x = 0 falling to 0.5 at x = 4 over a level top: mean 0.75 × 4 × 0.2 = 0.6 m³
    const solid = wall(at(0, 0, 4, 0), 0.2, (x) => [x / 8, 1]);
    expectClosed(facesOf(solid!));
    expect(volumeM3(facesOf(solid!))).toBeCloseTo(0.6, 12);
  });

  it('a hairpin keeps its corner within twice its half width', () => {
    const solid = wall(at(0, 0, 10, 0, 0, 0.01), 0.4, () => [0, 1]);
    expectClosed(facesOf(solid!));
    // by hand: 10 + 2 × 0.2 = 10.4 m
    expect(Math.max(...solid!.points.filter((_, i) => i % 3 === 0))).toBeLessThan(10.4 + 1e-9);
  });

  it('a line without length is none', () => {
    expect(wall(at(1, 1, 1, 1), 0.4, () => [0, 1])).toBeNull();
  });
});

describe('trees', () => {
  const tree = { x: 5, y: 6, z: 0.5, spreadM: 4, heightM: 8, seed: 3 };
  const { trunk, crown } = treeSolids(tree);
  const axis = (points: readonly number[], a: number) => points.filter((_, i) => i % 3 === a);

  it('every piece is closed and faces outwards', () => {
    for (const solid of [trunk, ...crown]) {
      expectClosed(facesOf(solid));
      expect(volumeM3(facesOf(solid))).toBeGreaterThan(0);
    }
  });

  it('stands on the ground, stays within spread and height, and nearly fills them', () => {
    expect(Math.min(...axis(trunk.points, 2))).toBe(0.5);
    const points = crown.flatMap((solid) => solid.points);
    const reach = points.flatMap((_, i) => (i % 3 === 0 ? [Math.hypot(points[i]! - 5, points[i + 1]! - 6)] : []));
    expect(Math.max(...reach)).toBeLessThanOrEqual(2);
    expect(Math.max(...reach)).toBeGreaterThan(0.85 * 2);
    expect(Math.max(...axis(points, 2))).toBeLessThanOrEqual(8.5);
    expect(Math.max(...axis(points, 2))).toBeGreaterThan(0.5 + 0.9 * 8);
    // The trunk ends inside the crown.
    expect(Math.max(...axis(trunk.points, 2))).toBeGreaterThan(Math.min(...axis(points, 2)));
  });

  it('the same tree twice is the same, another seed is another tree', () => {
    expect(treeSolids(tree)).toEqual({ trunk, crown });
    expect(treeSolids({ ...tree, seed: 4 }).crown).not.toEqual(crown);
  });

  it('a shrub has two lobes, a tree three', () => {
    expect([crown.length, treeSolids({ ...tree, heightM: 2 }).crown.length]).toEqual([3, 2]);
  });
});

describe('blocks and heaps', () => {
  const L = ring([0, 0], [10, 0], [10, 5], [6, 5], [6, 10], [0, 10]);

  it('a block has a level top over the highest corner', () => {
    // by hand: ground 0 … 0.2 over 4 m, top at 0.2 + 0.5; mean height 0.6 × 12 m² = 7.2 m³
    const solid = blockSolid(box(0, 0, 4, 3), 0.5, (x) => 0.05 * x);
    expectClosed(facesOf(solid!));
    expect(volumeM3(facesOf(solid!))).toBeCloseTo(7.2, 12);
  });

  it('a heap with room has sides at 1 to 1', () => {
    // by hand: 6 × 4 foot, 4 × 2 top, height 1: (24 + 8 + 4 × 5 × 3)/6 = 15.333 m³ (prismatoid rule, middle 5 × 3)
    const solid = heapSolid(box(0, 0, 6, 4), 1, () => 0.3);
    expectClosed(facesOf(solid!));
    expect(volumeM3(facesOf(solid!))).toBeCloseTo(92 / 6, 12);
    expect(Math.max(...solid!.points.filter((_, i) => i % 3 === 2))).toBe(1.3);
  });

  it('a heap without room for that is upright', () => {
    // by hand: 6 × 1.5 × 1 = 9 m³
    const solid = heapSolid(box(0, 0, 6, 1.5), 1, () => 0);
    expectClosed(facesOf(solid!));
    expect(volumeM3(facesOf(solid!))).toBeCloseTo(9, 12);
  });

  it('an angular heap slopes towards the inside of every side', () => {
    const solid = heapSolid(L, 1, () => 0);
    expectClosed(facesOf(solid!));
    // by hand, areas at height 0, ½, 1: 80, 61.25 (9 × 4 + 5 × 5 = 61), 44 (8 × 3 + 4 × 5 = 44): (80 + 4 × 61 + 44)/6 = 61.333 m³
    expect(volumeM3(facesOf(solid!))).toBeCloseTo(368 / 6, 12);
  });

  it('a heap follows the ground', () => {
    // by hand: upright, so 6 × 1.5 × 1 as on the level
    const solid = heapSolid(box(0, 0, 6, 1.5), 1, (x) => 0.02 * x);
    expect(volumeM3(facesOf(solid!))).toBeCloseTo(9, 12);
  });
});

describe('ground', () => {
  const deck = levelSurface(0.1);
  const zone = region(box(0, 0, 10, 10));
  const { net } = planNet(zone, zone, { deck, finish: null });
  const prism = zonePrism(net!, [layer('protection', 0.01), layer('drainage fill', 0.09), layer('substrate', 0.3)]);
  const ground = groundOver([{ region: zone, prism, stages: Int16Array.from([0, 2, -1]) }], deck);

  it.each([
    ['finished', null, 0.5],
    ['after the protection', 0, 0.11],
    ['a stage that adds nothing', 1, 0.11],
    ['after the fill', 2, 0.2],
    ['a layer that no stage places never counts', 9, 0.2],
  ])('%s', (_, stage, level) => {
    expect(ground(4, 7, stage)).toBeCloseTo(level, 12);
  });

  it('on the outline of a zone it is the zone, beside it the membrane', () => {
    expect(ground(10, 10, null)).toBeCloseTo(0.5, 12);
    expect(ground(10.1, 5, null)).toBeCloseTo(0.1, 12);
  });
});

describe('lines on a surface', () => {
  it('get a point on every crease', () => {
    const roof = netSurface({ spots: at(0, 0, 0, 8, 0, 0, 0, 4, 0, 8, 4, 0), breaklines: [at(0, 2, 0.04, 8, 2, 0.04)] }, 20);
    // by hand: the ridge at y = 2 carries 0.04
    expect([...drapedLine(at(3, 1, 3, 3), roof)]).toEqual([3, 1, 0.02, 3, 2, 0.04, 3, 3, 0.02].map((v) => expect.closeTo(v, 12)));
  });
});

describe('writing', () => {
  it('flat normals, and ink only where faces meet at an angle', () => {
    const writer = createSolidWriter();
    writer.begin(0);
    writeFlatSolid(
      writer,
      tube([circleLoop({ x: 0, y: 0, radiusM: 1, sides: 4 }, 0), circleLoop({ x: 0, y: 0, radiusM: 1, sides: 4 }, 2)], false),
      true,
    );
    const { solids, edges } = writer.finish();
    expectClosed(trianglesOf(solids, 0));
    expect(worstNormalDeg(solids)).toBeLessThan(0.5);
    // by hand: a box has 12 edges; the diagonals of its faces are no creases
    expect(edges.parts).toHaveLength(24);
  });
});
