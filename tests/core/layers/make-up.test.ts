/** Make-up thickness on a wedge: deck level, finish rising 0.1 m per cell. */

import { describe, expect, it } from 'vitest';
import type { RegionCells } from '../../../src/core/geometry/region-cells.ts';
import { type MakeUp, makeUpOf } from '../../../src/core/layers/make-up.ts';
import type { LayerInput } from '../../../src/model/deck-input.ts';
import { box, buildUp, layer, zone } from '../../helpers/deck-builder.ts';

const SHEET = layer('protection', 0.1);
const fill = (min: number, max: number, nominal = min): LayerInput => layer('light fill', nominal, { rangeM: { min, max } });

/** Four cells; the last is half covered. */
const LAID: RegionCells = { cells: Int32Array.of(0, 1, 2, 3), shares: Float64Array.of(1, 1, 1, 0.5), areaM2: 3.5, outsideM2: 0 };
const DECK = Float64Array.of(0, 0, 0, 0);

const row = (cellM: number) => ({ columns: 4, rows: 1, cellM, x0M: 0, y0M: 0 });

function made(layers: readonly LayerInput[], finish: readonly number[] | null, cellM = 1): MakeUp {
  return makeUpOf(zone('Z', box(0, 0, 4, 1), buildUp('b', layers)), LAID, DECK, finish && Float64Array.from(finish), row(cellM));
}

function expectThickness(got: MakeUp, wanted: readonly number[]): void {
  expect(got.thicknessM).toHaveLength(wanted.length);
  wanted.forEach((t, i) => {
    expect(got.thicknessM[i], `cell ${i}`).toBeCloseTo(t, 12);
  });
}

describe('under a set finish', () => {
  // Wanted: finish − 0 − 0.1 = 0.05, 0.15, 0.25, 0.35
  const FINISH = [0.15, 0.25, 0.35, 0.45];

  it('takes what is left over', () => {
    const wedge = made([SHEET, fill(0.05, 0.4)], FINISH);
    expectThickness(wedge, [0.05, 0.15, 0.25, 0.35]);
    expect([wedge.shortM2, wedge.overM2, wedge.shortCell, wedge.overCell]).toEqual([0, 0, -1, -1]);
  });

  it('is held to its limits, and the held-back areas are told with their worst place', () => {
    const wedge = made([SHEET, fill(0.1, 0.2)], FINISH);
    expectThickness(wedge, [0.1, 0.15, 0.2, 0.2]);
    // Short: cell 0 by 50 mm, 1 m². Over: cell 2 by 50 mm, 1 m², and cell 3 by 150 mm, half a cell.
    expect(wedge.shortM2).toBeCloseTo(1, 12);
    expect(wedge.shortMostM).toBeCloseTo(0.05, 12);
    expect(wedge.shortCell).toBe(0);
    expect(wedge.overM2).toBeCloseTo(1.5, 12);
    expect(wedge.overMostM).toBeCloseTo(0.15, 12);
    expect(wedge.overCell).toBe(3);
  });

  it('counts areas by the size of the cell', () => {
    // 1.5 cells of 0.5 m: 1.5 · 0.25
    expect(made([SHEET, fill(0.1, 0.2)], FINISH, 0.5).overM2).toBeCloseTo(0.375, 12);
  });

  it('above a deck that is not level uses the difference', () => {
    // Level finish 0.5 over a deck of 0.05, 0.1, 0.15, 0.2: 0.5 − z − 0.1
    const wedge = makeUpOf(
      zone('Z', box(0, 0, 4, 1), buildUp('b', [SHEET, fill(0, 1)])),
      LAID,
      Float64Array.of(0.05, 0.1, 0.15, 0.2),
      new Float64Array(4).fill(0.5),
      row(1),
    );
    expectThickness(wedge, [0.35, 0.3, 0.25, 0.2]);
  });

  it('held back by a millimetre or less is neither short nor over', () => {
    // Wanted 0.0991, 0.0989, 0.2009, 0.2011 against 0.1 … 0.2: by 0.9 and 1.1 mm each
    const wedge = made([fill(0.1, 0.2)], [0.0991, 0.0989, 0.2009, 0.2011]);
    expect(wedge.shortM2).toBeCloseTo(1, 12);
    expect(wedge.shortCell).toBe(1);
    expect(wedge.overM2).toBeCloseTo(0.5, 12);
    expect(wedge.overCell).toBe(3);
  });

  it('a build-up of fixed thickness has a range of no width', () => {
    // 0.1 m of build-up; finish 0.05 is 50 mm short, 0.1 and 0.1005 fit, 0.3 is 200 mm over
    const fixed = made([SHEET], [0.05, 0.1, 0.1005, 0.3]);
    expectThickness(fixed, [0]);
    expect(fixed.shortM2).toBeCloseTo(1, 12);
    expect(fixed.shortMostM).toBeCloseTo(0.05, 12);
    expect(fixed.overM2).toBeCloseTo(0.5, 12);
    expect(fixed.overMostM).toBeCloseTo(0.2, 12);
  });
});

describe('where the finish follows from the build-up', () => {
  it('is at its nominal', () => {
    const nominal = made([SHEET, fill(0.1, 0.4, 0.25)], null);
    expectThickness(nominal, [0.25]);
    expect([nominal.shortM2, nominal.overM2]).toEqual([0, 0]);
  });

  it('is nothing without a make-up layer', () => {
    expectThickness(made([SHEET], null), [0]);
  });
});
