/**
 * Clipping a polygon by a rectangle.
 *
 * [read] Rosetta Code, "Sutherland-Hodgman polygon clipping", https://rosettacode.org/wiki/Sutherland-Hodgman_polygon_clipping:
 *        subject, window and the clipped points, printed to two or three decimals. Areas are worked out by hand below.
 * The published units are drawing units; they are metres here.
 */

import { describe, expect, it } from 'vitest';
import { sharedInCell } from '../../src/core/geometry/cell-overlap.ts';
import { layDeck, layRegion } from '../../src/core/geometry/region-cells.ts';
import { centroidM, regionAreaM2, signedAreaM2 } from '../../src/core/geometry/ring.ts';
import type { Region } from '../../src/model/deck-input.ts';

// printed
const SUBJECT = Float64Array.of(50, 150, 200, 50, 350, 150, 350, 300, 250, 300, 200, 250, 150, 350, 100, 250, 100, 200);
const WINDOW = Float64Array.of(100, 100, 300, 100, 300, 300, 100, 300);
// printed 116.67 and 116.667: 150 − 50 · 100/150 = 350/3
const CLIPPED = Float64Array.from(
  [
    [100, 350 / 3],
    [125, 100],
    [275, 100],
    [300, 350 / 3],
    [300, 300],
    [250, 300],
    [200, 250],
    [175, 300],
    [125, 300],
    [100, 250],
  ].flat(),
);

// by hand: window 200 · 200, less two corner triangles of 25 · 50/3 / 2, less the notch (250,300) (200,250) (175,300) of 75 · 50 / 2,
// less the corner (100,250) (125,300) (100,300) of 25 · 50 / 2: 40000 − 416.6667 − 1875 − 625.
const CLIPPED_M2 = 40000 - 2 * ((25 * (50 / 3)) / 2) - (75 * 50) / 2 - (25 * 50) / 2;

const subject: Region = { outer: SUBJECT, holes: [] };
const window: Region = { outer: WINDOW, holes: [] };

describe('printed clipping example', () => {
  it('has the areas worked out by hand', () => {
    expect(CLIPPED_M2).toBeCloseTo(37083 + 1 / 3, 9);
    expect(signedAreaM2(CLIPPED)).toBeCloseTo(CLIPPED_M2, 8);
    // by hand: cross products −27500, 12500, 52500, 30000, 2500, 32500, 2500, −5000, 5000; sum 105000.
    expect(signedAreaM2(SUBJECT)).toBe(52500);
  });

  it('is found in one single cell', () => {
    const grid = { columns: 1, rows: 1, cellM: 200, x0M: 100, y0M: 100 };
    expect(sharedInCell(grid, 0, [subject]) * 40000).toBeCloseTo(CLIPPED_M2, 7);
    expect(sharedInCell(grid, 0, [subject, window]) * 40000).toBeCloseTo(CLIPPED_M2, 7);
    expect(sharedInCell(grid, 0, [window, { outer: CLIPPED, holes: [] }, subject]) * 40000).toBeCloseTo(CLIPPED_M2, 7);
  });

  it.each([200, 50, 7, 3.3, 1])('is found on a deck of that window in cells of %f m', (cellM) => {
    const cells = Math.ceil(200 / cellM - 1e-9);
    const deck = layDeck({ columns: cells, rows: cells, cellM, x0M: 100, y0M: 100 }, window);
    const laid = layRegion(deck, subject);
    expect(laid.areaM2).toBeCloseTo(CLIPPED_M2, 6);
    expect(laid.outsideM2).toBeCloseTo(52500 - CLIPPED_M2, 6);
    const sum = laid.shares.reduce((total, share) => total + share, 0) * cellM ** 2;
    expect(sum).toBeCloseTo(CLIPPED_M2, 6);
  });

  it('has its centroid where the shares put it', () => {
    const deck = layDeck({ columns: 200, rows: 200, cellM: 1, x0M: 100, y0M: 100 }, window);
    const laid = layRegion(deck, subject);
    let [x, y, area] = [0, 0, 0];
    laid.cells.forEach((cell, i) => {
      area += laid.shares[i];
      x += laid.shares[i] * (100.5 + (cell % 200));
      y += laid.shares[i] * (100.5 + Math.floor(cell / 200));
    });
    // Computed apart from this project (check values, 12.2): (201.123596, 195.443196). Fewer than 800 boundary cells, each at most
    // half a metre off with at most its whole square metre: less than 800 · 0.5 / 37083 = 0.011.
    expect(Math.abs(x / area - 201.123596)).toBeLessThan(0.011);
    expect(Math.abs(y / area - 195.443196)).toBeLessThan(0.011);
    const [cx, cy] = centroidM(CLIPPED);
    expect(cx).toBeCloseTo(201.123596, 6);
    expect(cy).toBeCloseTo(195.443196, 6);
    expect(regionAreaM2({ outer: CLIPPED, holes: [] })).toBeCloseTo(area, 6);
  });
});
