/**
 * Exact shares of cells against a polygon clipping library that shares no code with ours: clipper2-ts, on a grid of integers.
 * Units of 0.1 µm: corners lie on it exactly, crossings are rounded to it. A rounded corner moves an area by at most about
 * its distance times the cell's side, so a share by 1e-7 m · 0.5 m per corner over the cell's area: below 1e-5 throughout.
 */

import { Clipper, FillRule, type Paths64 } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { sharedInCell } from '../../src/core/geometry/cell-overlap.ts';
import { createRasteriser } from '../../src/core/geometry/coverage.ts';
import { layDeck, layRegion } from '../../src/core/geometry/region-cells.ts';
import { directedRing, regionAreaM2, ringsOf } from '../../src/core/geometry/ring.ts';
import type { Region, Ring } from '../../src/model/deck-input.ts';
import type { GridShape } from '../../src/model/maps.ts';
import { randomFrom } from '../helpers/scene-builder.ts';

const UNITS_PER_M = 1e7;
const SHARE_TOLERANCE = 1e-5;

interface Star {
  readonly x: number;
  readonly y: number;
  readonly inner: number;
  readonly outer: number;
  readonly corners: number;
  /** Corners are rounded to this [m]. */
  readonly step: number;
}

/** Ring around a middle, corners at rising angles and any distance, so that it never crosses itself; corners that rounding turns back are left out. */
function starRing(random: () => number, star: Star): Ring {
  const corners: number[] = [];
  let before = -1;
  for (let i = 0; i < star.corners; i++) {
    const angle = (2 * Math.PI * (i + 0.05 + random() * 0.9)) / star.corners;
    const radius = star.inner + (star.outer - star.inner) * random();
    const x = Math.round((star.x + radius * Math.cos(angle)) / star.step) * star.step;
    const y = Math.round((star.y + radius * Math.sin(angle)) / star.step) * star.step;
    const turned = (Math.atan2(y - star.y, x - star.x) + 2 * Math.PI) % (2 * Math.PI);
    const rounded = [Math.round(x * UNITS_PER_M) / UNITS_PER_M, Math.round(y * UNITS_PER_M) / UNITS_PER_M];
    if (turned < before + 1e-6 || Math.abs(turned - angle) > 1) continue;
    corners.push(...rounded);
    before = turned;
  }
  return directedRing(Float64Array.from(corners), true);
}

function starRegion(random: () => number, middle: [number, number], size: number, hole: boolean): Region {
  const [x, y] = middle;
  // Steps of a quarter metre put many corners and edges on lines of the grid.
  const step = random() < 0.3 ? 0.25 : 0.001;
  const corners = 5 + Math.floor(random() * 40);
  const outer = starRing(random, { x, y, inner: 0.45 * size, outer: size, corners, step });
  if (!hole) return { outer, holes: [] };
  const ring = starRing(random, { x, y, inner: 0.1 * size, outer: 0.25 * size, corners: 7, step: 0.001 });
  return { outer, holes: [directedRing(ring, false)] };
}

const paths = (region: Region): Paths64 =>
  ringsOf(region).map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, i) => ({
      x: Math.round(ring[2 * i] * UNITS_PER_M),
      y: Math.round(ring[2 * i + 1] * UNITS_PER_M),
    })),
  );

function cellPath(grid: GridShape, cell: number): Paths64 {
  const column = cell % grid.columns;
  const row = Math.floor(cell / grid.columns);
  const [x0, y0] = [grid.x0M + column * grid.cellM, grid.y0M + row * grid.cellM];
  const [x1, y1] = [x0 + grid.cellM, y0 + grid.cellM];
  return paths({ outer: Float64Array.of(x0, y0, x1, y0, x1, y1, x0, y1), holes: [] });
}

/** Area common to all of them, by the library [m²]. */
function libraryM2(all: readonly Paths64[]): number {
  const common = all.reduce((left, right) => Clipper.intersect(left, right, FillRule.NonZero));
  return Clipper.areaPaths(common) / UNITS_PER_M ** 2;
}

function sharesOf(grid: GridShape, region: Region): Float64Array {
  const shares = new Float64Array(grid.columns * grid.rows);
  const { runs, cells, shares: partial } = createRasteriser(grid).cover(ringsOf(region));
  for (let i = 0; i < runs.length; i += 2) shares.fill(1, runs[i], runs[i + 1]);
  cells.forEach((cell, i) => {
    shares[cell] = partial[i];
  });
  return shares;
}

const SEED = 20260205;
const GRID: GridShape = { columns: 28, rows: 28, cellM: 0.25, x0M: -3.5, y0M: -3.5 };

describe(`one polygon in every cell (seed ${SEED})`, () => {
  it.each([
    ['simple', false],
    ['with a hole', true],
  ])('%s', (_, hole) => {
    const random = randomFrom(SEED + (hole ? 1 : 0));
    let partial = 0;
    let worst = 0;
    for (let n = 0; n < 12; n++) {
      const region = starRegion(random, [random() - 0.5, random() - 0.5], 2.9, hole);
      const shares = sharesOf(GRID, region);
      const polygon = paths(region);
      for (let cell = 0; cell < shares.length; cell++) {
        const expected = libraryM2([polygon, cellPath(GRID, cell)]) / GRID.cellM ** 2;
        if (expected > 0 && expected < 1) partial++;
        worst = Math.max(worst, Math.abs(shares[cell] - expected), Math.abs(sharedInCell(GRID, cell, [region]) - expected));
      }
      const sum = shares.reduce((total, share) => total + share, 0) * GRID.cellM ** 2;
      expect(Math.abs(sum / regionAreaM2(region) - 1)).toBeLessThan(1e-12);
      expect(Math.abs(regionAreaM2(region) - Clipper.areaPaths(polygon) / UNITS_PER_M ** 2)).toBeLessThan(1e-9);
    }
    expect(partial).toBeGreaterThan(500);
    expect(worst).toBeLessThan(SHARE_TOLERANCE);
  });
});

describe(`zone, bay and deck in one cell (seed ${SEED})`, () => {
  const grid: GridShape = { columns: 10, rows: 10, cellM: 0.5, x0M: -2.5, y0M: -2.5 };

  it.each([2, 3])('%d regions', (count) => {
    const random = randomFrom(SEED + count);
    let crossed = 0;
    let worst = 0;
    let product = 0;
    for (let n = 0; n < 15; n++) {
      const middle = (): [number, number] => [1.6 * (random() - 0.5), 1.6 * (random() - 0.5)];
      const regions = Array.from({ length: count }, (_, i) => starRegion(random, middle(), 1.7, i === 1));
      const singles = regions.map((region) => sharesOf(grid, region));
      const polygons = regions.map(paths);
      for (let cell = 0; cell < grid.columns * grid.rows; cell++) {
        const shared = sharedInCell(grid, cell, regions);
        const expected = libraryM2([...polygons, cellPath(grid, cell)]) / grid.cellM ** 2;
        worst = Math.max(worst, Math.abs(shared - expected));
        if (singles.filter((shares) => shares[cell] > 0.01 && shares[cell] < 0.99).length === count) {
          crossed++;
          product = Math.max(product, Math.abs(singles.reduce((all, shares) => all * shares[cell], 1) - expected));
        }
      }
    }
    expect(crossed).toBeGreaterThan(50);
    // The product of the single shares would be wrong by more than a tenth of a cell: this is what the exact way is for.
    expect(product).toBeGreaterThan(0.1);
    expect(worst).toBeLessThan(SHARE_TOLERANCE);
  });
});

describe(`zones on a deck with openings (seed ${SEED})`, () => {
  it('area on and beyond the deck', () => {
    const random = randomFrom(SEED + 7);
    for (let n = 0; n < 15; n++) {
      const ground = starRegion(random, [0, 0], 3, true);
      const deck = layDeck(GRID, ground);
      const region = starRegion(random, [3 * (random() - 0.5), 3 * (random() - 0.5)], 2.2, n % 2 === 0);
      const laid = layRegion(deck, region);
      const expected = libraryM2([paths(region), paths(ground)]);
      expect(Math.abs(laid.areaM2 - expected)).toBeLessThan(1e-5);
      expect(Math.abs(laid.outsideM2 - (regionAreaM2(region) - expected))).toBeLessThan(1e-5);
      laid.cells.forEach((cell, i) => {
        if (n > 2) return;
        const share = libraryM2([paths(region), paths(ground), cellPath(GRID, cell)]) / GRID.cellM ** 2;
        expect(Math.abs(laid.shares[i] - share)).toBeLessThan(SHARE_TOLERANCE);
      });
    }
  });
});
