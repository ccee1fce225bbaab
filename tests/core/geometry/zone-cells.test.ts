/** Owners of cells: one zone, several, or none. */

import { expect, it } from 'vitest';
import type { RegionCells } from '../../../src/core/geometry/region-cells.ts';
import { ownCells } from '../../../src/core/geometry/zone-cells.ts';

function laid(...pairs: readonly (readonly [cell: number, share: number])[]): RegionCells {
  return { cells: Int32Array.from(pairs, (p) => p[0]), shares: Float64Array.from(pairs, (p) => p[1]), areaM2: 0, outsideM2: 0 };
}

it('gives full cells to their zone and lists the others', () => {
  // Cell 0: zone 0. Cell 1: 0.3 of zone 0, 0.7 of zone 1. Cell 2: zone 1. Cell 3: half of zone 1 only. Cell 4: nothing.
  const own = ownCells([laid([0, 1], [1, 0.3]), laid([2, 1], [1, 0.7], [3, 0.5])], 5, 1);
  expect([...own.owner]).toEqual([0, -2, 1, -2, -1]);
  expect([own.position[0], own.position[2]]).toEqual([0, 0]);
  expect([...own.mixed]).toEqual([1, 3]);
  expect([...own.start]).toEqual([0, 2, 3]);
  expect([...own.entryZone]).toEqual([0, 1, 1]);
  expect([...own.entryPosition]).toEqual([1, 1, 2]);
  expect([...own.entryShare]).toEqual([0.3, 0.7, 0.5]);
});

it.each([
  ['the full zone first', [laid([0, 1]), laid([0, 0.4])]],
  ['the full zone last', [laid([0, 0.4]), laid([0, 1])]],
  ['both full', [laid([0, 1]), laid([0, 1])]],
])('keeps every zone of a cell with overlap: %s', (_, zones) => {
  const own = ownCells(zones, 1, 1);
  expect([...own.owner]).toEqual([-2]);
  expect([...own.entryShare]).toEqual(zones.map((zone) => zone.shares[0]));
});

it('keeps three zones in one cell', () => {
  const own = ownCells([laid([2, 0.2]), laid([2, 1]), laid([2, 0.3])], 3, 1);
  expect([...own.mixed]).toEqual([2]);
  expect([...own.entryZone]).toEqual([0, 1, 2]);
});

it('lists stretches of one owner row by row, broken at the end of a row', () => {
  // 3 columns × 2 rows: cells 1 … 4 are zone 0, cell 5 is zone 1
  const own = ownCells([laid([1, 1], [2, 1], [3, 1], [4, 1]), laid([5, 1], [0, 0.5])], 3, 2);
  expect([...own.runs]).toEqual([1, 3, 0, 3, 5, 0, 5, 6, 1]);
  expect([...own.rowRuns]).toEqual([0, 1, 3]);
});
