/** Filling of depressions: closed forms, exits, and every way tried on random terrains. */

import { describe, expect, it } from 'vitest';
import { type Flood, flood } from '../../../src/core/water/flood.ts';
import { passes, stepsAround, UNIT_M, type WaterExit } from '../../../src/core/water/terrain.ts';
import { type Field, fieldOf, outletAt, randomField, rimOutlets } from './terrains.ts';

const filledM = (field: Field, flooded: Flood, column: number, row: number) =>
  field.terrain.baseM + flooded.filled[field.at(column, row)] * UNIT_M;

function allFilledM(field: Field, exits: readonly WaterExit[]): number[][] {
  const flooded = flood(field.terrain, exits);
  return Array.from({ length: field.rows }, (_, row) =>
    Array.from({ length: field.columns }, (_, column) => Math.round(filledM(field, flooded, column, row) * 1e5) / 1e5),
  );
}

describe('closed forms', () => {
  // Square rings of level 1, 2, 3 … towards the rim around one middle cell of level 0, rim at level 10 with outlets: every cell is filled
  // to 10. Ring r has 8r cells and needs 10 - r: Σ 8 r (10 - r) for r = 1 … 9 is 8 · (450 - 285) = 1320, the middle 10 more.
  it('volume of an inverted pyramid', () => {
    const field = fieldOf([21, 21], 1, (x, y) => Math.max(Math.abs(x - 10.5), Math.abs(y - 10.5)));
    const exits = rimOutlets(field);
    const filled = allFilledM(field, exits).flat();
    expect(filled.reduce((sum, level) => sum + level, 0) - field.levelsM.reduce((sum, level) => sum + level, 0)).toBeCloseTo(1330, 6);
  });

  it('a notch in the rim sets the level of all that lies lower', () => {
    const field = fieldOf([21, 21], 1, (x, y) => (x > 20 && y > 10 && y < 11 ? 6 : Math.max(Math.abs(x - 10.5), Math.abs(y - 10.5))));
    const notch = outletAt(field, 20, 10);
    const flooded = flood(field.terrain, [notch]);
    // The way to the notch leads over the rings 7, 8 and 9 beside it, so that 9 is the lowest level at which water gets out.
    expect(filledM(field, flooded, 10, 10)).toBeCloseTo(9, 9);
    const open = fieldOf([21, 21], 1, (x, y) =>
      x > 10 && y > 10 && y < 11 ? Math.min(6, x - 10.5) : Math.max(Math.abs(x - 10.5), Math.abs(y - 10.5)),
    );
    expect(filledM(open, flood(open.terrain, [outletAt(open, 20, 10)]), 10, 10)).toBeCloseTo(6, 9);
  });

  it('a fall to both sides is left as it is, half of it labelled for each', () => {
    const field = fieldOf([40, 20], 0.5, (x) => -0.02 * Math.abs(x - 10));
    const exits = Array.from({ length: 20 }, (_, row) => [outletAt(field, 0, row, 0), outletAt(field, 39, row, 1)]).flat();
    const flooded = flood(field.terrain, exits);
    expect(flooded.filled).toEqual(field.terrain.level);
    const counts = [0, 0];
    for (let i = 0; i < flooded.reached; i++) counts[flooded.label[flooded.order[i]]]++;
    expect(counts).toEqual([400, 400]);
  });
});

describe('exits', () => {
  const basin = fieldOf([9, 3], 1, (x) => Math.abs(x - 4.5) / 10);

  it('an overflow works only for water that stands at its level', () => {
    const low = { cell: basin.at(4, 1), levelM: 0.25, sink: 3 };
    const flooded = flood(basin.terrain, [low]);
    expect(filledM(basin, flooded, 4, 1)).toBeCloseTo(0.25, 9);
    expect(filledM(basin, flooded, 6, 1)).toBeCloseTo(0.25, 9);
    expect(filledM(basin, flooded, 8, 1)).toBeCloseTo(0.4, 9);
    expect(flooded.reached).toBe(27);
  });

  it('an overflow gets nothing while water runs off lower elsewhere', () => {
    const exits = [outletAt(basin, 0, 1, 0), { cell: basin.at(4, 1), levelM: 0.45, sink: 1 }];
    const flooded = flood(basin.terrain, exits);
    expect(new Set(Array.from(flooded.order.subarray(0, flooded.reached), (cell) => flooded.label[cell]))).toEqual(new Set([0]));
    expect(filledM(basin, flooded, 4, 1)).toBeCloseTo(0.4, 9);
  });

  it('an outlet on a slope takes what runs past it', () => {
    const slope = fieldOf([5, 1], 1, (x) => x / 100);
    const flooded = flood(slope.terrain, [outletAt(slope, 0, 0, 0), outletAt(slope, 2, 0, 1)]);
    expect(Array.from({ length: 5 }, (_, column) => flooded.label[slope.at(column, 0)])).toEqual([0, 0, 1, 1, 1]);
  });

  it('reaches nothing without an exit, and no deck that is cut off', () => {
    expect(flood(basin.terrain, []).reached).toBe(0);
    const cut = fieldOf(
      [9, 3],
      1,
      () => 0,
      (x) => x < 4 || x > 5,
    );
    expect(flood(cut.terrain, [outletAt(cut, 0, 0)]).reached).toBe(12);
  });

  it('does not pass between two walls that touch at a corner', () => {
    const corners = fieldOf(
      [2, 2],
      1,
      () => 0,
      (x, y) => x > 1 === y > 1,
    );
    const flooded = flood(corners.terrain, [outletAt(corners, 0, 0)]);
    expect(flooded.reached).toBe(1);
    expect(flooded.label[corners.at(1, 1)]).toBe(-1);
  });

  it('refuses exits that are not on the deck, and sinks that have no number', () => {
    const cut = fieldOf(
      [3, 1],
      1,
      () => 0,
      (x) => x < 2,
    );
    expect(() => flood(cut.terrain, [{ cell: cut.at(2, 0), levelM: 0, sink: 0 }])).toThrow(RangeError);
    expect(() => flood(cut.terrain, [{ cell: cut.at(0, 0), levelM: 0, sink: -1 }])).toThrow(RangeError);
  });
});

/** The lowest level at which a way leads to an exit, by trying every way in rounds until nothing changes. */
function minimax(field: Field, exits: readonly WaterExit[]): Map<number, number> {
  const { terrain } = field;
  const steps = stepsAround(terrain.width);
  const best = new Map<number, number>();
  for (const { cell, levelM } of exits)
    best.set(cell, Math.min(best.get(cell) ?? Infinity, Math.max(terrain.level[cell], Math.round((levelM - terrain.baseM) / UNIT_M))));
  for (let changed = true; changed; ) {
    changed = false;
    for (let cell = 0; cell < terrain.level.length; cell++) {
      if (terrain.open[cell] === 0) continue;
      for (let k = 0; k < 8; k++) {
        const beside = best.get(cell + steps[k]);
        if (beside === undefined || !passes(terrain.open, steps, cell, k)) continue;
        const over = Math.max(beside, terrain.level[cell]);
        if (over >= (best.get(cell) ?? Infinity)) continue;
        best.set(cell, over);
        changed = true;
      }
    }
  }
  return best;
}

describe('200 random terrains', () => {
  // The second time stretched to a range of hundreds of metres, where a bucket stands for a level that occurs.
  it.each([1, 10_000])('fill to the lowest level at which water gets out; levels × %s', (stretch) => {
    for (let seed = 1; seed <= 200; seed++) {
      const { field, exits } = randomField(seed, stretch);
      const flooded = flood(field.terrain, exits);
      const best = minimax(field, exits);
      expect(flooded.reached).toBe(best.size);
      for (const [cell, level] of best) {
        expect(flooded.filled[cell], `seed ${seed}, cell ${cell}`).toBe(level);
      }
    }
  });

  it('order, parents and labels belong together', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const { field, exits } = randomField(seed, 1);
      const { order, reached, parent, label, filled } = flood(field.terrain, exits);
      const place = new Map(Array.from(order.subarray(0, reached), (cell, i) => [cell, i]));
      expect(place.size).toBe(reached);
      for (const [cell, i] of place) {
        if (i > 0) expect(filled[cell]).toBeGreaterThanOrEqual(filled[order[i - 1]]);
        if (parent[cell] === cell) continue;
        expect(place.get(parent[cell])!).toBeLessThan(i);
        expect(label[parent[cell]]).toBe(label[cell]);
      }
    }
  });

  it('the same twice, and the same whichever way the buckets are made', () => {
    for (let seed = 1; seed <= 50; seed++) {
      const { field, exits } = randomField(seed, 1);
      // A far exit on a cell of its own makes the range great without changing the rest.
      const near = flood(field.terrain, exits);
      const far = flood(field.terrain, [...exits, ...exits.slice(0, 1).map((exit) => ({ ...exit, levelM: 5000 }))]);
      expect(far.filled).toEqual(near.filled);
      expect(far.order).toEqual(near.order);
      expect(far.parent).toEqual(near.parent);
    }
  });
});
