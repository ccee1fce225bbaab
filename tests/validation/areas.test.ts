/**
 * Areas and centroids of polygons.
 *
 * [read] Rosetta Code, "Shoelace formula for polygonal area", https://rosettacode.org/wiki/Shoelace_formula_for_polygonal_area:
 *        polygon (3,4) (5,11) (12,8) (9,5) (5,6) and its printed area 30. The centroid is worked out by hand below.
 * [by hand] L-shape as two rectangles, and a frame with a hole.
 */

import { describe, expect, it } from 'vitest';
import { coverageAreaM2, createRasteriser } from '../../src/core/geometry/coverage.ts';
import { centroidM, directedRing, regionAreaM2, signedAreaM2 } from '../../src/core/geometry/ring.ts';
import { read, sceneOf, zone } from '../helpers/scene-builder.ts';

const PENTAGON = Float64Array.of(3, 4, 5, 11, 12, 8, 9, 5, 5, 6);
const L_SHAPE = Float64Array.of(0, 0, 6, 0, 6, 2, 2, 2, 2, 5, 0, 5);

describe('printed polygon of the shoelace formula', () => {
  it('has area 30, clockwise as printed', () => {
    expect(signedAreaM2(PENTAGON)).toBe(-30); // printed 30; negative because the points run clockwise
    expect(signedAreaM2(directedRing(PENTAGON, true))).toBe(30);
  });

  it('has its centroid where the sums say', () => {
    // by hand: cross products x_i·y_j − x_j·y_i: 13, −92, −12, 29, 2; sum −60.
    // x: 8·13 − 17·92 − 21·12 + 14·29 + 8·2 = −1290, / (3 · −60) = 43/6; y: 15·13 − 19·92 − 13·12 + 11·29 + 10·2 = −1370, / −180 = 137/18.
    const [x, y] = centroidM(PENTAGON);
    expect(x).toBeCloseTo(43 / 6, 12);
    expect(y).toBeCloseTo(137 / 18, 12);
  });

  it.each([0.05, 0.3, 0.25, 0.7, 2])('keeps its area on cells of %f m', (cellM) => {
    const grid = { columns: Math.ceil(15 / cellM), rows: Math.ceil(15 / cellM), cellM, x0M: 0, y0M: 0 };
    const coverage = createRasteriser(grid).cover([directedRing(PENTAGON, true)]);
    expect(coverageAreaM2(coverage, cellM)).toBeCloseTo(30, 9); // printed 30
  });

  it('keeps its area from the scene file to the report', () => {
    const outline = [0, 2, 4, 6, 8].map((i): [number, number] => [PENTAGON[i], PENTAGON[i + 1]]);
    const { report } = read(sceneOf({ deck: { outline } }));
    expect(report.deck.areaM2).toBeCloseTo(30, 9); // printed 30
    expect(report.zones[0].areaM2).toBeCloseTo(30, 9);
    expect(report.bays[0].areaM2).toBeCloseTo(30, 9);
  });
});

describe('shapes by hand', () => {
  it('L-shape of two rectangles', () => {
    expect(signedAreaM2(L_SHAPE)).toBe(18); // by hand: 6·2 + 2·3
    const [x, y] = centroidM(L_SHAPE);
    expect(x).toBeCloseTo(7 / 3, 12); // by hand: (12·3 + 6·1) / 18
    expect(y).toBeCloseTo(11 / 6, 12); // by hand: (12·1 + 6·3.5) / 18
  });

  it('frame: outer ring less its holes', () => {
    const outer = Float64Array.of(0, 0, 10, 0, 10, 8, 0, 8);
    const holes = [Float64Array.of(1, 1, 1, 3, 4, 3, 4, 1), Float64Array.of(5, 5, 8, 7, 8, 5)];
    expect(regionAreaM2({ outer, holes })).toBe(71); // by hand: 80 − 3·2 − 3·2/2
  });

  it('openings come off the deck, the zone and the bay', () => {
    const outline: [number, number][] = [
      [0, 0],
      [10, 0],
      [10, 8],
      [0, 8],
    ];
    const triangle: [number, number][] = [
      [5.1, 5.05],
      [8.1, 5.05],
      [8.1, 7.05],
    ];
    const { report } = read(sceneOf({ deck: { outline, openings: [triangle] }, zones: [zone('Z1', outline, 'soil-100')] }));
    expect(report.deck.areaM2).toBeCloseTo(77, 9); // by hand: 80 − 3·2/2
    expect(report.deck.zonedM2).toBeCloseTo(77, 9);
    expect(report.bays[0].areaM2).toBeCloseTo(77, 9);
  });
});
