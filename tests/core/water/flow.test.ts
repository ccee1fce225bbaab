/** Shares of planes, ridges and valleys against their geometry; sums against the number of cells. */

import { describe, expect, it } from 'vitest';
import { flood } from '../../../src/core/water/flood.ts';
import { accumulate, bearingDeg, flowOf } from '../../../src/core/water/flow.ts';
import { longestPaths } from '../../../src/core/water/path.ts';
import type { WaterExit } from '../../../src/core/water/terrain.ts';
import { type Field, fieldOf, outletAt, randomField } from './terrains.ts';

/** Share of all cells that ends in each sink, in percent. */
function sharesPercent(field: Field, exits: readonly WaterExit[]): number[] {
  const flooded = flood(field.terrain, exits);
  const sums = accumulate(flowOf(field.terrain, flooded), flooded, Float64Array.from(field.terrain.open));
  const shares: number[] = [];
  for (const { cell, sink } of exits) shares[sink] = (shares[sink] ?? 0) + sums[cell];
  const cells = field.terrain.open.reduce((sum, open) => sum + open, 0);
  expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) / cells - 1)).toBeLessThan(1e-12);
  return shares.map((share) => (100 * share) / cells);
}

const N = 200;
const CELL_M = 0.25;
const SIDE_M = N * CELL_M;

/** Sink 0 along the lower side, 1 the right side, 2 the upper side (corners too), 3 the left side, 4 the lower right corner. */
function gutters(field: Field): WaterExit[] {
  const exits: WaterExit[] = [];
  for (let i = 0; i < N; i++) exits.push(outletAt(field, i, 0, i === N - 1 ? 4 : 0), outletAt(field, i, N - 1, 2));
  for (let i = 1; i < N - 1; i++) exits.push(outletAt(field, 0, i, 3), outletAt(field, N - 1, i, 1));
  return exits;
}

/**
 * A square that falls to its lower side, turned by the angle a towards the right side: the right gutter gets the water that meets it
 * before the lower one, a triangle of tan a / 2 of the square within the gutters, and what falls into its own cells.
 */
const sidePercent = (a: number) => (50 * Math.tan(a) * (N - 2) ** 2 + 100 * (N - 2)) / N ** 2;

describe('a tilted plane with gutters on all sides', () => {
  it.each([0, 1, 5, 10, 20, 22.5, 30, 40, 45])('at %s° shares as its geometry says', (degrees) => {
    const a = (degrees * Math.PI) / 180;
    for (const percent of [0.5, 2]) {
      const field = fieldOf([N, N], CELL_M, (x, y) => (percent / 100) * (y * Math.cos(a) - x * Math.sin(a)));
      const [, right, , , corner] = sharesPercent(field, gutters(field));
      // What reaches the corner cell itself belongs to both sides.
      expect(Math.abs(right + corner / 2 - sidePercent(a))).toBeLessThan(0.3);
    }
  });

  // The same plane falling to each of the four sides and turned either way.
  it.each([30, 120, 210, 300, 60, 150, 240, 330])('towards %s°', (degrees) => {
    const a = (degrees * Math.PI) / 180;
    const field = fieldOf([N, N], CELL_M, (x, y) => 0.02 * -(x * Math.sin(a) + y * Math.cos(a)));
    const shares = sharesPercent(field, gutters(field));
    const least = sidePercent(Math.PI / 6);
    const found = shares.slice(0, 4).sort((p, q) => p - q);
    expect(Math.abs(found[2] - least)).toBeLessThan(0.3);
  });
});

describe('ridges', () => {
  // Roof of two planes, its ridge at any place across the deck, on the grid or off it.
  it.each([10, 10.05, 10.125, 10.2, 17.3])('along the grid at %s m shares at the ridge', (ridgeM) => {
    for (const [left, right] of [
      [0.02, 0.02],
      [0.01, 0.03],
    ]) {
      const field = fieldOf([160, 40], CELL_M, (x) => (x < ridgeM ? -left * (ridgeM - x) : -right * (x - ridgeM)));
      const exits: WaterExit[] = [];
      for (let row = 0; row < 40; row++) exits.push(outletAt(field, 0, row, 0), outletAt(field, 159, row, 1));
      expect(Math.abs(sharesPercent(field, exits)[0] - (100 * ridgeM) / 40)).toBeLessThan(0.3);
    }
  });

  // Ridge through the middle of a square, turned; water runs straight off it to both sides: half and half.
  it.each([0, 7, 18, 30, 45, 63])('turned by %s° shares evenly', (degrees) => {
    const a = (degrees * Math.PI) / 180;
    for (const shift of [0, 0.06, 0.11]) {
      const field = fieldOf([N, N], CELL_M, (x, y) => {
        return -0.02 * Math.abs((x - SIDE_M / 2 - shift) * Math.cos(a) + (y - SIDE_M / 2) * Math.sin(a));
      });
      const beyond = (c: number, r: number) =>
        (c + 0.5 - N / 2) * CELL_M * Math.cos(a) + (r + 0.5 - N / 2) * CELL_M * Math.sin(a) > shift * Math.cos(a);
      const exits = gutters(field).map((exit) => {
        const column = (exit.cell % field.terrain.width) - 1;
        const row = Math.floor(exit.cell / field.terrain.width) - 1;
        return { ...exit, sink: beyond(column, row) ? 1 : 0 };
      });
      // The ridge moved by `shift` along x moves its area by shift · side; the line crosses the whole square.
      const expected = 50 + (100 * shift) / SIDE_M;
      expect(Math.abs(sharesPercent(field, exits)[0] - expected)).toBeLessThan(0.3);
    }
  });

  it('a pyramid sends a quarter to each side', () => {
    for (const middle of [SIDE_M / 2, SIDE_M / 2 + 0.125]) {
      const field = fieldOf([N, N], CELL_M, (x, y) => -0.02 * Math.max(Math.abs(x - middle), Math.abs(y - middle)));
      const shares = sharesPercent(field, gutters(field));
      for (const share of shares.slice(0, 4))
        expect(Math.abs(share - 25)).toBeLessThan(0.3 + (200 * Math.abs(middle - SIDE_M / 2)) / SIDE_M);
    }
  });
});

describe('valleys', () => {
  // Two planes meet in a line through the middle of the square that falls along itself, 2 % across and 0.5 % along it. The other
  // gutters get what falls into their own cells, 198 and 200 of 40,000 = 0.495 and 0.5 %. Turned by 33° the left plane runs
  // (2 cos 33° + 0.5 sin 33°, 2 sin 33° - 0.5 cos 33°) = (1.950, 0.670) and meets the upper side before the valley, which begins
  // there at 25 - 25 tan 33° = 8.765 m: a triangle of 8.765 · 8.765 · 0.3436 / 2 = 13.20 m² of 2,500 = 0.528 %.
  it.each([
    [0, 0.5],
    [12, 0.5],
    [33, 1.028],
  ])('turned by %s°: all water runs along the valley', (degrees, upperPercent) => {
    const a = (degrees * Math.PI) / 180;
    const field = fieldOf([N, N], CELL_M, (x, y) => {
      const across = (x - SIDE_M / 2) * Math.cos(a) + (y - SIDE_M / 2) * Math.sin(a);
      const along = (y - SIDE_M / 2) * Math.cos(a) - (x - SIDE_M / 2) * Math.sin(a);
      return 0.02 * Math.abs(across) + 0.005 * along;
    });
    const [lower, right, upper, left, corner] = sharesPercent(field, gutters(field));
    expect(Math.abs(right - 0.495)).toBeLessThan(0.05);
    expect(Math.abs(left - 0.495)).toBeLessThan(0.05);
    expect(Math.abs(upper - upperPercent)).toBeLessThan(0.05);
    expect(Math.abs(lower + corner - (100 - 0.99 - upperPercent))).toBeLessThan(0.1);
  });
});

describe('directions', () => {
  it.each([0, 17, 45, 80, 133, 200, 271, 359])('a plane that falls towards %s° runs there', (degrees) => {
    const a = (degrees * Math.PI) / 180;
    const field = fieldOf([40, 40], 0.5, (x, y) => -0.02 * (x * Math.sin(a) + y * Math.cos(a)));
    const exits = Array.from({ length: 40 }, (_, i) => [
      outletAt(field, i, 0),
      outletAt(field, i, 39),
      outletAt(field, 0, i),
      outletAt(field, 39, i),
    ]);
    const flow = flowOf(field.terrain, flood(field.terrain, exits.flat()));
    for (const [column, row] of [
      [5, 5],
      [20, 20],
      [33, 11],
    ]) {
      const off = Math.abs(bearingDeg(flow, field.at(column, row)) - degrees);
      expect(Math.min(off, 360 - off)).toBeLessThan(0.2);
    }
  });
});

describe('a plane against a wall', () => {
  // Falls towards the upper right; walls all round but for one outlet in the corner: all of it arrives there, along the walls.
  it('loses nothing', () => {
    const field = fieldOf([60, 40], CELL_M, (x, y) => -0.01 * x - 0.02 * y);
    expect(sharesPercent(field, [outletAt(field, 59, 39)])[0]).toBeCloseTo(100, 10);
  });
});

describe('sums', () => {
  it('at the exits of 200 random terrains are all that was reached', () => {
    let divides = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const { field, exits } = randomField(seed, 1);
      const flooded = flood(field.terrain, exits);
      const flow = flowOf(field.terrain, flooded);
      divides += flow.otherSides.size;
      const sums = accumulate(flow, flooded, Float64Array.from(field.terrain.open));
      // Water runs past an overflow that it does not stand at.
      const arrived = exits.reduce((sum, { cell }) => sum + (flooded.parent[cell] === cell ? sums[cell] : 0), 0);
      expect(Math.abs(arrived - flooded.reached)).toBeLessThanOrEqual(1e-12 * flooded.reached);
    }
    expect(divides).toBeGreaterThan(100);
  });
});

describe('longest path', () => {
  // Walls above and beside, gutter below: the way to a cell is its distance from the upper wall along the fall.
  it.each([0, 20])('is the distance from the upper wall on a plane turned by %s°', (degrees) => {
    const a = (degrees * Math.PI) / 180;
    const field = fieldOf([N, 80], CELL_M, (x, y) => 0.02 * (y * Math.cos(a) - x * Math.sin(a)));
    const exits = Array.from({ length: N }, (_, i) => outletAt(field, i, 0));
    const flooded = flood(field.terrain, exits);
    const path = longestPaths(
      field.terrain,
      flowOf(field.terrain, flooded),
      flooded,
      new Float64Array(field.terrain.open.length).fill(0.3),
    );
    for (const row of [79, 60, 30, 1]) {
      const downM = (80 - row) * CELL_M;
      expect(Math.abs(path[field.at(120, row)] - (0.3 * downM) / Math.cos(a))).toBeLessThan(0.3 * 0.01 * downM + 1e-9);
    }
  });

  // A valley 20 m long that takes planes 5 m wide from both sides: at its low end the way is the valley's, with what came before it.
  it('is that of the valley where slopes run together', () => {
    const field = fieldOf([41, 80], CELL_M, (x, y) => 0.02 * Math.abs(x - 5.125) + 0.005 * y);
    const flooded = flood(field.terrain, [outletAt(field, 20, 0)]);
    const path = longestPaths(field.terrain, flowOf(field.terrain, flooded), flooded, new Float64Array(field.terrain.open.length).fill(1));
    // At least along the valley, at most the whole slope's way as well.
    expect(path[field.at(20, 0)]).toBeGreaterThanOrEqual(20);
    expect(path[field.at(20, 0)]).toBeLessThan(20 + 5.2);
  });
});
