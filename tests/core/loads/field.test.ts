/** Loads of zones on cells: owners, mixed cells, bare deck. */

import { describe, expect, it } from 'vitest';
import type { RegionCells } from '../../../src/core/geometry/region-cells.ts';
import { ownCells } from '../../../src/core/geometry/zone-cells.ts';
import { addSparse, coefficientArrays, type LayerField, writeMakeUp, zoneLoads } from '../../../src/core/loads/field.ts';
import { gridOf } from '../../helpers/deck-builder.ts';

function laid(...pairs: readonly (readonly [cell: number, share: number])[]): RegionCells {
  return { cells: Int32Array.from(pairs, (p) => p[0]), shares: Float64Array.from(pairs, (p) => p[1]), areaM2: 0, outsideM2: 0 };
}

/** 3 × 2 cells. Zone 0: cells 0, 1 and 0.25 of 2. Zone 1: 0.75 of cell 2, cell 5. Cells 3 and 4 bare. */
const ZONES = [laid([0, 1], [1, 1], [2, 0.25]), laid([5, 1], [2, 0.75])];
const WHOLE = { column0: 0, column1: 3, row0: 0, row1: 2 };

function field(): LayerField {
  const zones = ownCells(ZONES, 3, 2);
  const made = { grid: gridOf(3, 2), zones, makeUpM: new Float64Array(6), entryMakeUpM: new Float64Array(zones.entryZone.length) };
  writeMakeUp(made, 0, ZONES[0], Float64Array.of(0.1, 0.2, 0.4));
  writeMakeUp(made, 1, ZONES[1], Float64Array.of(0.5));
  return made;
}

/** Zone 0: 1 + 10 m; zone 1: 2 + 4 m. */
const LOADS = coefficientArrays([
  { fixed: 1, perM: 10 },
  { fixed: 2, perM: 4 },
]);

describe('loads of zones', () => {
  it('are fixed part and part per metre, in mixed cells weighted by the shares', () => {
    const out = zoneLoads(field(), LOADS, WHOLE, new Float64Array(6).fill(99));
    // 1 + 10 · 0.1; 1 + 10 · 0.2; 0.25 · (1 + 10 · 0.4) + 0.75 · (2 + 4 · 0.5); bare; bare; 2 + 4 · 0.5
    const wanted = [2, 3, 4.25, 0, 0, 4];
    wanted.forEach((load, cell) => {
      expect(out[cell], `cell ${cell}`).toBeCloseTo(load, 12);
    });
  });

  it('are written within the block only', () => {
    const out = zoneLoads(field(), LOADS, { column0: 1, column1: 2, row0: 0, row1: 1 }, new Float64Array(6).fill(99));
    expect([...out]).toEqual([99, 3, 99, 99, 99, 99]);
    const right = zoneLoads(field(), LOADS, { column0: 2, column1: 3, row0: 0, row1: 2 }, new Float64Array(6).fill(99));
    expect([...right]).toEqual([99, 99, expect.closeTo(4.25, 12), 99, 99, expect.closeTo(4, 12)]);
  });

  it('of zones without make-up are their fixed part', () => {
    const fixed = coefficientArrays([
      { fixed: 3, perM: 0 },
      { fixed: 5, perM: 0 },
    ]);
    // 0.25 · 3 + 0.75 · 5
    expect([...zoneLoads(field(), fixed, WHOLE, new Float64Array(6))]).toEqual([3, 3, 4.5, 0, 0, 5]);
  });
});

it('adds what stands on a few cells, within the block', () => {
  const load = { cells: Int32Array.of(1, 4, 5), kNm2: Float64Array.of(7, 8, 9) };
  expect([...addSparse(load, gridOf(3, 2), WHOLE, new Float64Array(6).fill(1))]).toEqual([1, 8, 1, 1, 9, 10]);
  const block = { column0: 1, column1: 2, row0: 0, row1: 2 };
  expect([...addSparse(load, gridOf(3, 2), block, new Float64Array(6))]).toEqual([0, 7, 0, 0, 8, 0]);
});
