/** What is planned, and permitted, at a place: by hand on 4 m × 2 m. */

import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/core/evaluate.ts';
import { limitsAt, plannedAt } from '../../src/core/probes.ts';
import type { DeckInput } from '../../src/model/deck-input.ts';
import { bay, box, buildUp, deck, hole, holed, layer, loaded, zone } from '../helpers/deck-builder.ts';

const soil = layer('substrate', 0.3, { materialId: 'soil', saturatedPerMKNm3: 16 });
const base = layer('base course', 0.4, { materialId: 'base', saturatedPerMKNm3: 20 });
const sheet = layer('filter', 0.001, { materialId: 'sheet', saturatedFixedKNm2: 0.1 });
const fill = layer('light fill', 0.2, { materialId: 'fill', saturatedPerMKNm3: 3, rangeM: { min: 0, max: 2 } });

const run = (over: Partial<DeckInput>) => evaluate(deck(over));
const stacked = (...layers: Parameters<typeof buildUp>[1]) => run({ zones: [zone('Z', box(0, 0, 4, 2), buildUp('b', layers))] });

describe('planned depth', () => {
  it('of one layer is its own', () => {
    expect(plannedAt(stacked(base, sheet, soil), 1.3, 0.7, 'base')).toEqual({ zone: 0, layer: base, countedAs: base, plannedM: 0.4 });
  });

  it('of a material laid twice is the upper layer’s', () => {
    const upper = { ...soil, thicknessM: 0.1 };
    expect(plannedAt(stacked(soil, sheet, upper), 1, 1, 'soil')?.plannedM).toBe(0.1);
  });

  it('of the whole build-up is the sum, a difference counted as the topmost substrate', () => {
    const planned = plannedAt(stacked(base, soil, sheet), 1, 1, null)!;
    expect(planned.plannedM).toBeCloseTo(0.701, 12);
    expect([planned.layer, planned.countedAs]).toEqual([null, soil]);
  });

  it('without a substrate is counted as the thickest layer that weighs by thickness', () => {
    expect(plannedAt(stacked(fill, base, sheet), 1, 1, null)?.countedAs).toBe(base);
    expect(plannedAt(stacked(sheet), 1, 1, null)?.countedAs).toBeNull();
  });

  it('of a make-up layer is the one of the cell: membrane rising 0.1 m per m, finish at 1.0', () => {
    const levels = { spots: Float64Array.of(0, 0, 0, 4, 0, 0.4, 4, 2, 0.4, 0, 2, 0), breaklines: [] };
    const finish = { kind: 'plane', x: 0, y: 0, z: 1, slopeX: 0, slopeY: 0 } as const;
    const on = run({ levels, zones: [zone('Z', box(0, 0, 4, 2), buildUp('b', [fill, soil]), { finish })] });
    // Cell 2 … 3, centre 2.5: 1 − 0.25 − 0.3 = 0.45; all of it 0.75
    expect(plannedAt(on, 2.1, 1.9, 'fill')?.plannedM).toBeCloseTo(0.45, 12);
    expect(plannedAt(on, 2.1, 1.9, null)?.plannedM).toBeCloseTo(0.75, 12);
  });

  it('is unknown beside all zones, beyond the deck, over an opening, and of a layer that is not there', () => {
    const shape = holed(box(0, 0, 4, 2), hole(1, 0.5, 2, 1));
    const on = run({ deck: shape, zones: [zone('Z', box(0, 0, 3, 2), buildUp('b', [soil]))] });
    expect(plannedAt(on, 3.5, 1, null)).toBeNull();
    expect(plannedAt(on, 9, 1, null)).toBeNull();
    expect(plannedAt(on, 1.5, 0.7, null)).toBeNull();
    expect(plannedAt(on, 0.5, 0.7, 'base')).toBeNull();
    expect(plannedAt(on, 0.5, 0.7, null)?.plannedM).toBe(0.3);
  });
});

describe('limits at a place', () => {
  const zones = [zone('L', box(0, 0, 2, 2), loaded(4), { imposedKNm2: 2 }), zone('R', box(2, 0, 4, 2), loaded(8))];

  it('are those of its bay, with the load on the square metre around', () => {
    const bays = [bay('A', box(0, 0, 2, 2)), bay('B', box(2, 0, 4, 2), { permanentKNm2: null, totalKNm2: 9 })];
    expect(limitsAt(run({ bays, zones }), 0.5, 0.5)).toEqual([
      { rule: 'load.permanent', bay: 0, patchKNm2: expect.closeTo(4, 12), limitKNm2: 10 },
    ]);
    expect(limitsAt(run({ bays, zones }), 3.5, 0.5)).toEqual([
      { rule: 'load.total', bay: 1, patchKNm2: expect.closeTo(8, 12), limitKNm2: 9 },
    ]);
  });

  it('are those of every bay that has it, and of both kinds', () => {
    const bays = [bay('A', box(0, 0, 3, 2), { totalKNm2: 12 }), bay('B', box(0, 0, 1, 2), { permanentKNm2: 7 })];
    expect(limitsAt(run({ bays, zones }), 0.5, 0.5).map(({ rule, bay: b, patchKNm2 }) => [rule, b, patchKNm2])).toEqual([
      ['load.permanent', 0, expect.closeTo(4, 12)],
      ['load.total', 0, expect.closeTo(6, 12)],
      ['load.permanent', 1, expect.closeTo(4, 12)],
    ]);
  });

  it('are none beyond the deck', () => {
    expect(limitsAt(run({ zones }), 4.5, 0.5)).toEqual([]);
    expect(limitsAt(run({ zones }), -0.5, 0.5)).toEqual([]);
  });
});
