/** How far water rises when one exit is closed, against filling everything anew without that exit. */

import { describe, expect, it } from 'vitest';
import { flood } from '../../../src/core/water/flood.ts';
import { cellsUnder, riseGround, wayOut } from '../../../src/core/water/rise.ts';
import { fieldOf, outletAt, printed, randomField } from './terrains.ts';

describe('a closed exit on 200 random terrains', () => {
  it('lets water rise to where a flood without that exit stands', () => {
    let risen = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const { field, exits } = randomField(seed, 1);
      const ground = riseGround(field.terrain, exits);
      for (const closed of exits) {
        const without = flood(
          field.terrain,
          exits.filter((exit) => exit !== closed),
        );
        const found = wayOut(ground, closed.cell, closed.sink);
        if (without.parent[closed.cell] < 0) {
          expect(found).toBeNull();
          continue;
        }
        const own = field.terrain.level[closed.cell];
        expect(found?.units, `seed ${seed}`).toBe(without.filled[closed.cell]);
        const under = cellsUnder(ground, closed.cell, found!.units);
        if (found!.units > own) risen++;
        // All of them stand at that level in the flood as well, and are below it.
        for (const cell of under) {
          expect(without.filled[cell]).toBe(found!.units);
          expect(field.terrain.level[cell]).toBeLessThan(found!.units);
        }
        expect(under.includes(closed.cell)).toBe(found!.units > own);
      }
    }
    expect(risen).toBeGreaterThan(100);
  });
});

describe('ways out', () => {
  // Two dips with a saddle of 3 between them, walls of 9 around.
  const dips = printed([
    [9, 9, 9, 9, 9, 9, 9],
    [9, 0, 1, 3, 1, 0, 9],
    [9, 9, 9, 9, 9, 9, 9],
  ]);

  it('over a saddle to the other outlet', () => {
    const ground = riseGround(dips.terrain, [outletAt(dips, 1, 1, 0), outletAt(dips, 5, 1, 1)]);
    const found = wayOut(ground, dips.at(1, 1), 0)!;
    expect([found.units, found.exit.sink, found.over]).toEqual([300_000, 1, dips.at(3, 1)]);
    expect([...cellsUnder(ground, dips.at(1, 1), found.units)]).toEqual([dips.at(1, 1), dips.at(2, 1)]);
  });

  it('by an overflow below the saddle', () => {
    const overflow = { cell: dips.at(2, 1), levelM: 2.5, sink: 2 };
    const found = wayOut(riseGround(dips.terrain, [outletAt(dips, 1, 1, 0), outletAt(dips, 5, 1, 1), overflow]), dips.at(1, 1), 0)!;
    expect([found.units, found.exit.sink, found.over]).toEqual([250_000, 2, dips.at(2, 1)]);
  });

  it('nowhere, where walls stand all round', () => {
    expect(wayOut(riseGround(dips.terrain, [outletAt(dips, 1, 1, 0)]), dips.at(1, 1), 0)).toBeNull();
  });

  it('at once, where a second outlet stands in the same cell', () => {
    const ground = riseGround(dips.terrain, [outletAt(dips, 1, 1, 0), outletAt(dips, 1, 1, 1)]);
    const found = wayOut(ground, dips.at(1, 1), 0)!;
    expect([found.units, found.exit.sink]).toEqual([0, 1]);
    expect(cellsUnder(ground, dips.at(1, 1), found.units)).toHaveLength(0);
  });

  it('at once on a slope, where water runs past', () => {
    const slope = fieldOf([5, 1], 1, (x) => x / 100);
    const found = wayOut(riseGround(slope.terrain, [outletAt(slope, 0, 0, 0), outletAt(slope, 2, 0, 1)]), slope.at(2, 0), 1)!;
    expect([found.units, found.exit.sink]).toEqual([slope.terrain.level[slope.at(2, 0)], 0]);
  });
});
