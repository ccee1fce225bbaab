/** Shapes that break area calculations elsewhere: shared and horizontal edges, T-junctions, slivers, spikes, polygons beyond the grid. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sharedInCell } from '../../src/core/geometry/cell-overlap.ts';
import { coverageAreaM2, createRasteriser } from '../../src/core/geometry/coverage.ts';
import { layDeck, layRegion } from '../../src/core/geometry/region-cells.ts';
import { directedRing } from '../../src/core/geometry/ring.ts';
import type { Region, Ring } from '../../src/model/deck-input.ts';
import type { GridShape } from '../../src/model/maps.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { buildUp, findingsOf, randomFrom, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const SEED = 2718;
const grid: GridShape = { columns: 40, rows: 32, cellM: 0.25, x0M: 0, y0M: 0 }; // 10 m × 8 m

const ringOf = (points: readonly PointM[]): Ring => Float64Array.from(points.flat());
const regionOf = (points: readonly PointM[]): Region => ({ outer: ringOf(points), holes: [] });

/** Every cell's share, runs and mixed cells in one array. */
function shares(rings: readonly Ring[], on = grid): Float64Array {
  const out = new Float64Array(on.columns * on.rows);
  const coverage = createRasteriser(on).cover(rings);
  for (let i = 0; i < coverage.runs.length; i += 2) out.fill(1, coverage.runs[i], coverage.runs[i + 1]);
  coverage.cells.forEach((cell, i) => {
    out[cell] = coverage.shares[i];
  });
  return out;
}

const areaOf = (rings: readonly Ring[]) => coverageAreaM2(createRasteriser(grid).cover(rings), grid.cellM);

describe(`shared edges (seed ${SEED})`, () => {
  it('wiggly neighbours fill every cell to 1 within 1e-12', () => {
    const random = randomFrom(SEED);
    const millimetres = (value: number) => Math.round(1000 * value) / 1000;
    for (let n = 0; n < 20; n++) {
      // Six bands of zones; neighbours share every corner of their wiggly line, in whole millimetres.
      const lines = [1.7, 3.4, 5.1, 6.8, 8.5].map((x) =>
        Array.from({ length: 30 }, (_, i): PointM => [millimetres(x + 1.2 * (random() - 0.5)), i === 29 ? 8 : millimetres((8 * i) / 29)]),
      );
      const upright: PointM[][] = [
        [
          [0, 0],
          [0, 8],
        ],
        ...lines,
        [
          [10, 0],
          [10, 8],
        ],
      ];
      const rings = upright.slice(1).map((right, i) => directedRing(ringOf([...upright[i], ...[...right].reverse()]), true));
      const sum = new Float64Array(grid.columns * grid.rows);
      for (const ring of rings) {
        shares([ring]).forEach((share, cell) => {
          sum[cell] += share;
        });
      }
      for (const total of sum) expect(Math.abs(total - 1)).toBeLessThan(1e-12);
    }
  });
});

describe('horizontal edges', () => {
  it('runs parallel to the rows carry their fraction', () => {
    // Zone from y = 0.37 to y = 2.05: row 1 is covered to (0.50 − 0.37) / 0.25 = 0.52, rows 2 to 7 fully, row 8 to 0.05 / 0.25 = 0.2.
    const found = shares([ringOf(rect(1, 0.37, 9, 2.05))]);
    for (let column = 4; column < 36; column++) {
      expect(found[40 + column]).toBeCloseTo(0.52, 12);
      for (let row = 2; row < 8; row++) expect(found[40 * row + column]).toBe(1);
      expect(found[40 * 8 + column]).toBeCloseTo(0.2, 12);
    }
    expect(found.reduce((sum, share) => sum + share, 0) / 16).toBeCloseTo(8 * 1.68, 10); // by hand: 8 m · 1.68 m
  });

  it('edges on the lines of the grid touch no neighbour', () => {
    const found = shares([ringOf(rect(1, 0.5, 9, 2))]);
    expect([...new Set(found)].sort()).toEqual([0, 1]);
    expect(found.reduce((sum, share) => sum + share, 0)).toBe(32 * 6);
  });

  it('a step in a horizontal edge', () => {
    const steps: PointM[] = [
      [0, 0],
      [10, 0],
      [10, 1.1],
      [5, 1.1],
      [5, 1.2],
      [0, 1.2],
    ];
    expect(areaOf([ringOf(steps)])).toBeCloseTo(11.5, 11); // by hand: 10 · 1.1 + 5 · 0.1
  });
});

describe('a corner on the neighbour’s straight edge, rounded to the millimetre', () => {
  const outline = rect(0, 0, 10, 8);
  const lower = zone(
    'Lower',
    [
      [0, 0],
      [10, 0],
      [10, 4],
      [0, 3],
    ],
    'soil-100',
  );
  const upper = (y: number) =>
    zone(
      'Upper',
      [
        [0, 3],
        [3.333, y],
        [10, 4],
        [10, 8],
        [0, 8],
      ],
      'soil-100',
    );
  const run = (y: number) => read(sceneOf({ deck: { outline }, zones: [lower, upper(y)] }));

  // by hand: triangle (0, 3) (3.333, y) (10, 4): |10 · (y − 3) − 1 · 3.333| / 2
  it('too high by 0.7 mm: a gap of 35 cm², told as a note', () => {
    const project = run(3.334);
    expect(project.report.deck.unzonedM2).toBeCloseTo(0.0035, 9);
    expect(project.report.deck.overlapM2).toBeCloseTo(0, 9);
    const [gap] = findingsOf(project, 'zone.gap');
    expect(gap.severity).toBe('note');
    expect(gap.value).toBeCloseTo(0.0035, 9);
    expect(project.report.deck.saturatedKN).toBeCloseTo((80 - 0.0035) * 1.4715, 9);
  });

  it('too low by 0.3 mm: an overlap of 15 cm², told as a note and counted twice', () => {
    const project = run(3.333);
    expect(project.report.deck.unzonedM2).toBeCloseTo(0, 9);
    expect(project.report.deck.overlapM2).toBeCloseTo(0.0015, 9);
    const [overlap] = findingsOf(project, 'zone.overlap');
    expect(overlap.severity).toBe('note');
    expect(overlap.value).toBeCloseTo(0.0015, 9);
    expect(project.report.deck.saturatedKN).toBeCloseTo((80 + 0.0015) * 1.4715, 9);
  });

  it('an overlap that no drawing error explains is more than a note', () => {
    const project = run(2.5);
    const [overlap] = findingsOf(project, 'zone.overlap');
    expect(overlap.severity).toBe('check');
    expect(overlap.value).toBeCloseTo(4.1665, 9); // by hand: |10 · −0.5 − 3.333| / 2
  });
});

describe('polygons beyond the grid', () => {
  const deck = layDeck(grid, regionOf(rect(0, 0, 10, 8)));

  it.each<[string, PointM[], number, number]>([
    ['over the left edge', rect(-3, 1, 2, 4), 6, 9],
    ['over the right edge', rect(9, 1, 12, 4), 3, 6],
    ['over the lower edge', rect(1, -5, 3, 1), 2, 10],
    ['over the upper edge', rect(1, 7, 3, 9), 2, 2],
    ['over all edges', rect(-5, -5, 15, 13), 80, 280],
    ['wholly outside, left', rect(-5, 1, -1, 3), 0, 8],
    ['wholly outside, right', rect(11, 1, 12, 3), 0, 2],
    ['wholly outside, above', rect(1, 8, 3, 11), 0, 6],
    // by hand: of the square of 98 m² over the corner (0, 0), the triangle x + y ≤ 7 stays: 24.5
    [
      'a diamond around the corner',
      [
        [-7, 0],
        [0, -7],
        [7, 0],
        [0, 7],
      ],
      24.5,
      73.5,
    ],
  ])('%s', (_, points, onDeck, outside) => {
    const laid = layRegion(deck, regionOf(points));
    expect(laid.areaM2).toBeCloseTo(onDeck, 9);
    expect(laid.outsideM2).toBeCloseTo(outside, 9);
    // A negative column must not reach into the row before.
    for (const share of laid.shares) expect(share).toBeLessThanOrEqual(1 + 1e-12);
    expect(laid.shares.reduce((sum, share) => sum + share, 0) / 16).toBeCloseTo(onDeck, 9);
  });

  it(`any triangle, turned any way: on the deck + outside = its area (seed ${SEED})`, () => {
    const coordinate = fc.double({ min: -6, max: 16, noNaN: true });
    const point = fc.tuple(coordinate, coordinate);
    fc.assert(
      fc.property(point, point, point, (a, b, c) => {
        const area = ((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) / 2;
        const laid = layRegion(deck, regionOf(area > 0 ? [a, b, c] : [a, c, b]));
        expect(Math.abs(laid.areaM2 + laid.outsideM2 - Math.abs(area))).toBeLessThan(1e-9);
        // The part on the deck, by clipping the triangle at the deck's four edges: a single cell the size of a square is exact too.
        const square: GridShape = { columns: 1, rows: 1, cellM: 10, x0M: 0, y0M: 0 };
        const both = sharedInCell(square, 0, [regionOf(area > 0 ? [a, b, c] : [a, c, b]), deck.region]) * 100;
        expect(Math.abs(laid.areaM2 - both)).toBeLessThan(1e-9);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});

describe('slivers, spikes and doubled points', () => {
  it('a sliver of 1 µm × 4 m keeps its area', () => {
    for (const x of [2.1, 2.25, 2.3749995]) {
      expect(areaOf([ringOf(rect(x, 1, x + 1e-6, 5))]) / 4e-6).toBeCloseTo(1, 6);
      expect(areaOf([ringOf(rect(1, x, 5, x + 1e-6))]) / 4e-6).toBeCloseTo(1, 6);
    }
  });

  it('a slanting sliver keeps its area', () => {
    // by hand: parallelogram of 1 µm width in x over a height of 4 m
    const sliver: PointM[] = [
      [1, 1],
      [1.000001, 1],
      [4.300001, 5],
      [4.3, 5],
    ];
    expect(areaOf([ringOf(sliver)]) / 4e-6).toBeCloseTo(1, 5);
  });

  it('doubled points and edges of no length change nothing', () => {
    const plain: PointM[] = [
      [1.1, 1.2],
      [7.3, 0.9],
      [6.6, 5.7],
      [2.2, 6.1],
    ];
    const doubled = plain.flatMap((point): PointM[] => [point, point, point]);
    expect(shares([ringOf(doubled)])).toEqual(shares([ringOf(plain)]));
  });

  it('a spike out and back encloses nothing', () => {
    const spiked: PointM[] = [
      [1, 1],
      [7, 1],
      [7, 3],
      [9.37, 4.41],
      [7, 3],
      [7, 5],
      [1, 5],
    ];
    expect(areaOf([ringOf(spiked)])).toBeCloseTo(24, 12); // by hand: 6 · 4
    const found = shares([ringOf(spiked)]);
    const plain = shares([ringOf(rect(1, 1, 7, 5))]);
    found.forEach((share, cell) => {
      expect(Math.abs(share - plain[cell])).toBeLessThan(1e-12);
    });
  });

  it('a doubled point in a file is read and means nothing', () => {
    const outline: PointM[] = [
      [0, 0],
      [4, 0],
      [4, 0],
      [4, 3],
      [0, 3],
      [0, 0],
    ];
    const { report } = read(sceneOf({ deck: { outline } }));
    expect(report.deck.areaM2).toBe(12);
    expect(report.deck.saturatedKN).toBeCloseTo(12 * 1.4715, 12);
  });

  it('openings come off, hole by hole', () => {
    const opening = ringOf([
      [2, 2],
      [2, 3.3],
      [4.1, 3.3],
      [4.1, 2],
    ]); // clockwise
    expect(areaOf([ringOf(rect(0, 0, 10, 8)), opening])).toBeCloseTo(80 - 2.1 * 1.3, 10);
  });
});

describe('two boundaries in one cell', () => {
  it('zone edge and deck edge cross: the common part, not the product', () => {
    // One cell of 1 m: the deck keeps the triangle x + y ≤ 1, the zone the triangle x + y ≥ 1 (nothing in common) or x ≥ y (half of it).
    const cell: GridShape = { columns: 1, rows: 1, cellM: 1, x0M: 0, y0M: 0 };
    const ground = layDeck(
      cell,
      regionOf([
        [0, 0],
        [1, 0],
        [0, 1],
      ]),
    );
    const beyond = layRegion(
      ground,
      regionOf([
        [1, 0],
        [1, 1],
        [0, 1],
      ]),
    );
    expect(beyond.areaM2).toBeCloseTo(0, 12);
    expect(beyond.outsideM2).toBeCloseTo(0.5, 12);
    const half = layRegion(
      ground,
      regionOf([
        [0, 0],
        [1, 0],
        [1, 1],
      ]),
    );
    expect(half.areaM2).toBeCloseTo(0.25, 12); // by hand: triangle (0,0) (1,0) (½,½)
    const third = layRegion(
      ground,
      regionOf([
        [0, 0],
        [1, 0],
        [1, 0.5],
      ]),
    );
    expect(third.areaM2).toBeCloseTo(1 / 6, 12); // by hand: triangle (0,0) (1,0) (⅔,⅓) of height ⅓; the product would be 1/8
  });

  it('loads per unit of deck: a half cell of deck under a full layer weighs the layer', () => {
    const outline: PointM[] = [
      [0, 0],
      [4.1, 0],
      [4.1, 2.9],
      [0, 2.9],
    ];
    const { report } = read(sceneOf({ deck: { outline }, buildups: [buildUp('soil-100', [{ material: 'soil', thicknessMm: 100 }])] }));
    expect(report.bays[0].permanent.peakKNm2).toBeCloseTo(1.4715, 12);
    expect(report.bays[0].permanent.patchKNm2).toBeCloseTo(1.4715, 12);
    expect(report.bays[0].permanent.meanKNm2).toBeCloseTo(1.4715, 12);
    expect(report.deck.saturatedKN).toBeCloseTo(4.1 * 2.9 * 1.4715, 10);
  });
});
