/** What zones bring to bays: areas, make-up volumes, weights. */

import { expect, it } from 'vitest';
import { layBays, splitAmongBays } from '../../../src/core/geometry/bay-split.ts';
import { gridOver } from '../../../src/core/geometry/grid.ts';
import { layDeck, layRegion } from '../../../src/core/geometry/region-cells.ts';
import { zoneBayShare, zonesInBayKN } from '../../../src/core/loads/bays.ts';
import { box, region } from '../../helpers/deck-builder.ts';

const SHAPE = box(0, 0, 4, 1);
const DECK = layDeck(gridOver(SHAPE.outer, 1, [0, 0]), SHAPE);
const BAYS = layBays(DECK, [box(0, 0, 1.5, 1), box(1.5, 0, 4, 1)]);

it('shares area and make-up volume, cell by cell', () => {
  // The zone covers x 0 … 3; thicknesses 0.1, 0.2, 0.3 in its three cells.
  const shape = box(0, 0, 3, 1);
  const laid = layRegion(DECK, shape);
  const share = zoneBayShare(laid, splitAmongBays(DECK, BAYS, shape, laid), BAYS, Float64Array.of(0.1, 0.2, 0.3), 1);
  expect([...share.areaM2]).toEqual([expect.closeTo(1.5, 12), expect.closeTo(1.5, 12)]);
  // 0.1 + half of 0.2; the other half and 0.3
  expect([...share.makeUpM3]).toEqual([expect.closeTo(0.2, 12), expect.closeTo(0.4, 12)]);
  // 2 · 1.5 + 10 · 0.2 and 2 · 1.5 + 10 · 0.4
  const loads = [{ fixed: 2, perM: 10 }];
  expect(zonesInBayKN([share], loads, 0)).toBeCloseTo(5, 12);
  expect(zonesInBayKN([share], loads, 1)).toBeCloseTo(7, 12);
});

it('takes one thickness for all cells, and cells of half metres', () => {
  const half = layDeck(gridOver(SHAPE.outer, 0.5, [0, 0]), SHAPE);
  const bays = layBays(half, BAYS.regions);
  const shape = region([0, 0], [4, 0], [4, 1]);
  const laid = layRegion(half, shape);
  const share = zoneBayShare(laid, splitAmongBays(half, bays, shape, laid), bays, Float64Array.of(0.2), 0.5);
  // y < x/4: left of 1.5 the triangle 1.5 · 0.375 / 2 = 0.28125, in all 2
  expect(share.areaM2[0]).toBeCloseTo(0.28125, 12);
  expect(share.areaM2[1]).toBeCloseTo(1.71875, 12);
  expect(share.makeUpM3[1]).toBeCloseTo(0.34375, 12);
});

it('adds several zones', () => {
  const shares = [
    { areaM2: Float64Array.of(2), makeUpM3: Float64Array.of(0.5) },
    { areaM2: Float64Array.of(3), makeUpM3: Float64Array.of(0) },
  ];
  const loads = [
    { fixed: 1, perM: 4 },
    { fixed: 6, perM: 9 },
  ];
  // 1 · 2 + 4 · 0.5 + 6 · 3
  expect(zonesInBayKN(shares, loads, 0)).toBe(22);
});
