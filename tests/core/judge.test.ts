/** Bays: mean, peak, patch, imposed, total, stages, each by hand on 4 m × 2 m in cells of 0.5 m. */

import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/core/evaluate.ts';
import { stageLimitKNm2 } from '../../src/core/judge.ts';
import type { BayInput, DeckInput } from '../../src/model/deck-input.ts';
import { bay, block, box, boxRing, buildUp, deck, hole, holed, layer, loaded, place, stage, zone } from '../helpers/deck-builder.ts';

const HALF = { cellM: 0.5 };
const run = (over: Partial<DeckInput>) => evaluate(deck({ ...HALF, ...over }));

/** 4 kN/m² left of x = 2, 8 kN/m² right of it. */
const STEP = [zone('L', box(0, 0, 2, 2), loaded(4)), zone('R', box(2, 0, 4, 2), loaded(8))];

describe('permanent load', () => {
  it('of one even build-up is the same as mean, peak and patch', () => {
    const [result] = run({ zones: [zone('Z', box(0, 0, 4, 2), loaded(6))] }).bays;
    expect([result.areaM2, result.meanKNm2, result.peakKNm2, result.patch.kNm2]).toEqual([8, 6, 6, 6].map((v) => expect.closeTo(v, 12)));
    expect(result.permanentUtilisation).toBeCloseTo(0.6, 12);
  });

  it('of a step: mean by area, peak and patch on the heavy side', () => {
    const [result] = run({ zones: STEP }).bays;
    expect(result.meanKNm2).toBeCloseTo(6, 12);
    expect(result.peakKNm2).toBeCloseTo(8, 12);
    expect(result.patch.kNm2).toBeCloseTo(8, 12);
    expect(result.patch.cell % 8).toBeGreaterThanOrEqual(5);
  });

  it('of a neighbouring bay counts in windows that reach over the border', () => {
    const bays = [bay('A', box(0, 0, 2, 2)), bay('B', box(2, 0, 4, 2))];
    const [a, b] = run({ zones: STEP, bays }).bays;
    // Centre x = 1.75: window 1.25 … 2.25, of it 0.25 m at 8: 0.75 · 4 + 0.25 · 8 = 5
    expect(a.patch.kNm2).toBeCloseTo(5, 12);
    expect([a.meanKNm2, a.peakKNm2]).toEqual([expect.closeTo(4, 12), expect.closeTo(4, 12)]);
    expect(b.patch.kNm2).toBeCloseTo(8, 12);
  });

  it('is per unit of deck at an edge that cuts cells and beside an opening', () => {
    // Deck 3.75 m wide with an opening 1 … 2.2 × 0.5 … 1.3: 6 kN/m² stay 6 everywhere
    const shape = holed(box(0, 0, 3.75, 2), hole(1, 0.5, 2.2, 1.3));
    const on = run({ deck: shape, bays: [bay('B', shape)], zones: [zone('Z', box(0, 0, 4, 2), loaded(6))] });
    expect(on.bays[0].areaM2).toBeCloseTo(7.5 - 0.96, 12);
    expect(on.bays[0].meanKNm2).toBeCloseTo(6, 12);
    expect(on.bays[0].peakKNm2).toBeCloseTo(6, 12);
    expect(on.bays[0].patch.kNm2).toBeCloseTo(6, 12);
    for (const [cell, patch] of on.patchKNm2.entries()) {
      if (on.prepared.ground.centreOnDeck[cell] === 1) expect(patch, `cell ${cell}`).toBeCloseTo(6, 12);
    }
  });

  it('of a strip half a metre wide: peak 12, patch half of it', () => {
    const on = run({ objects: [block('W', boxRing(1, 0, 1.5, 2), 12)] });
    expect(on.bays[0].peakKNm2).toBeCloseTo(12, 12);
    // Centre x = 1.25: window 0.75 … 1.75 holds the whole strip: 12 · 0.5
    expect(on.bays[0].patch.kNm2).toBeCloseTo(6, 12);
    // 12 · 1 m² over 8 m²
    expect(on.bays[0].meanKNm2).toBeCloseTo(1.5, 12);
  });

  it('judges patch and not peak by the limit', () => {
    const bays = [bay('B', box(0, 0, 4, 2), { permanentKNm2: 8 })];
    expect(run({ bays, objects: [block('W', boxRing(1, 0, 1.5, 2), 12)] }).bays[0].permanentUtilisation).toBeCloseTo(0.75, 12);
  });

  it('is not judged where the bay gives no such limit', () => {
    const bays = [bay('B', box(0, 0, 4, 2), { permanentKNm2: null, imposedKNm2: null })];
    const [result] = run({ bays, zones: STEP }).bays;
    expect([result.permanentUtilisation, result.imposedUtilisation, result.total]).toEqual([null, null, null]);
    expect(result.patch.kNm2).toBeCloseTo(8, 12);
  });
});

describe('bays and cells', () => {
  it('a cell in two bays is judged by the weaker one', () => {
    const bays = [bay('A', box(0, 0, 3, 2), { permanentKNm2: 12 }), bay('B', box(2, 0, 4, 2), { permanentKNm2: 9 })];
    const on = run({ bays, zones: STEP });
    // First row: x 0 … 2 bay A, 2 … 3 both: B, 3 … 4 B
    expect([...on.bayAt.subarray(0, 8)]).toEqual([0, 0, 0, 0, 1, 1, 1, 1]);
    // Both are judged with the part they share.
    expect(on.bays[0].patch.kNm2).toBeCloseTo(8, 12);
  });

  it('a cell in no bay is judged by none', () => {
    const on = run({ bays: [bay('A', box(0, 0, 3, 2))], zones: STEP });
    expect([...on.bayAt.subarray(0, 8)]).toEqual([0, 0, 0, 0, 0, 0, -1, -1]);
    expect(on.worstUtilisation[7]).toBeNaN();
  });

  it('a bay too small to hold a centre is judged by its cells', () => {
    const bays = [bay('A', box(0, 0, 3.9, 2)), bay('S', box(3.9, 0, 4, 2))];
    const small = run({ bays, zones: STEP }).bays[1];
    expect(small.areaM2).toBeCloseTo(0.2, 12);
    expect(small.meanKNm2).toBeCloseTo(8, 12);
    expect(small.patch.kNm2).toBeCloseTo(8, 12);
  });
});

describe('imposed load', () => {
  const with_ = (imposedKNm2: number, x0: number) =>
    run({
      bays: [bay('A', box(0, 0, 2, 2)), bay('B', box(2, 0, 4, 2))],
      zones: [zone('L', box(0, 0, x0, 2), loaded(4), { imposedKNm2: 2 }), zone('R', box(x0, 0, 4, 2), loaded(4), { imposedKNm2 })],
    }).bays;

  it('is the greatest of the zones that lie on the bay', () => {
    const [a, b] = with_(4, 1.5);
    expect([a.imposedKNm2, b.imposedKNm2]).toEqual([4, 4]);
    expect(b.imposedUtilisation).toBeCloseTo(0.8, 12);
    expect(with_(4, 2)[0].imposedKNm2).toBe(2);
  });

  it('does not come with a sliver below 0.05 m² and a hundredth of the bay', () => {
    // Bay of 2 m · 2 m, a hundredth is 0.04 m²: 1e-7 m · 2 m; 0.01 m · 2 m = 0.02 m²; 0.03 m · 2 m = 0.06 m²
    expect(with_(4, 2 - 1e-7)[0].imposedKNm2).toBe(2);
    expect(with_(4, 1.99)[0].imposedKNm2).toBe(2);
    expect(with_(4, 1.97)[0].imposedKNm2).toBe(4);
  });
});

describe('a limit in all', () => {
  it('is compared with permanent + imposed, patch by patch', () => {
    const zones = [zone('L', box(0, 0, 2, 2), loaded(4), { imposedKNm2: 5 }), zone('R', box(2, 0, 4, 2), loaded(6), { imposedKNm2: 2 })];
    const bays = [bay('B', box(0, 0, 4, 2), { permanentKNm2: null, imposedKNm2: null, totalKNm2: 12 })];
    const [result] = run({ bays, zones }).bays;
    // Left 4 + 5 = 9, right 6 + 2 = 8
    expect(result.total?.patch.kNm2).toBeCloseTo(9, 12);
    expect(result.total?.utilisation).toBeCloseTo(0.75, 12);
    expect(result.permanentUtilisation).toBeNull();
    expect(result.patch.kNm2).toBeCloseTo(6, 12);
  });

  it('is left out of bays without one', () => {
    const bays = [bay('A', box(0, 0, 2, 2)), bay('B', box(2, 0, 4, 2), { permanentKNm2: null, totalKNm2: 16 })];
    const [a, b] = run({ bays, zones: STEP }).bays;
    expect(a.total).toBeNull();
    expect(b.total?.utilisation).toBeCloseTo(0.5, 12);
  });
});

describe('stages', () => {
  it.each<[string, Partial<BayInput>, number | null]>([
    ['its own', { stageKNm2: 7, permanentKNm2: 10, totalKNm2: 15 }, 7],
    ['the permanent one', { permanentKNm2: 10, totalKNm2: 15 }, 10],
    ['the one in all', { permanentKNm2: null, totalKNm2: 15 }, 15],
    ['none', { permanentKNm2: null }, null],
  ])('are held against the limit for building: %s', (_, limits, limit) => {
    expect(stageLimitKNm2(bay('B', box(0, 0, 1, 1), limits))).toBe(limit);
  });

  const LAYERS = buildUp(
    'b',
    [layer('protection', 0.01, { saturatedFixedKNm2: 1 }), layer('substrate', 0.3, { saturatedFixedKNm2: 4, dryFixedKNm2: 3 })],
    0.5,
  );
  const heap = { id: 'H', heightM: 0.5, ring: boxRing(0, 0, 2, 2), kNm2: 5 };
  const STAGES = [
    stage('flood', [], { floodKNm2: 0.981 }),
    stage('sheets', [place(['protection'])], { stockpiles: [heap] }),
    stage('soil', [place(['substrate'])]),
    stage('tree', [place([], [], [0])]),
  ];
  const on = run({
    bays: [bay('A', box(0, 0, 2, 2), { stageKNm2: 8 }), bay('B', box(2, 0, 4, 2))],
    zones: [zone('Z', box(0, 0, 4, 2), LAYERS)],
    objects: [block('T', boxRing(3, 0, 4, 2), 2)],
    stages: STAGES,
  });

  it('count what is placed so far, saturated, with their own heaps and flood test', () => {
    // Flood 0.981; sheets 1 + heap 5; soil 1 + 4 + vegetation 0.5, the heap gone; nothing more in A
    expect(on.bays[0].stages.map((s) => s.patch.kNm2)).toEqual([0.981, 6, 5.5, 5.5].map((v) => expect.closeTo(v, 12)));
    expect(on.bays[0].stages.map((s) => s.utilisation)).toEqual([0.981 / 8, 0.75, 0.6875, 0.6875].map((v) => expect.closeTo(v, 12)));
    // B: at x = 2.25 the window 1.75 … 2.75 still holds 0.25 m of the heap: 1 + 0.25 · 5; at the end 5.5 + 2
    expect(on.bays[1].stages.map((s) => s.patch.kNm2)).toEqual([0.981, 2.25, 5.5, 7.5].map((v) => expect.closeTo(v, 12)));
  });

  it('name the worst', () => {
    expect([on.bays[0].worstStage, on.bays[1].worstStage]).toEqual([1, 3]);
  });

  it('keep the worst of every cell', () => {
    // Cell 0 in A: 6/8 in stage 1. Last cell of the row, x 3.5 … 4, in B: 7.5/10 in stage 3.
    expect(on.worstUtilisation[0]).toBeCloseTo(0.75, 12);
    expect(on.worstStage[0]).toBe(1);
    expect(on.worstUtilisation[7]).toBeCloseTo(0.75, 12);
    expect(on.worstStage[7]).toBe(3);
  });

  it('weigh what they place, without heaps and floods', () => {
    // Sheets 1 · 8; soil 4.5 · 8; tree 2 · 2
    expect(on.placedKN).toEqual([0, 8, 36, 4].map((v) => expect.closeTo(v, 9)));
    // Objects count dry and saturated: 8 · (3 + 0.5) + 4 and 8 · 5.5 + 4
    expect(on.totals).toEqual({ dryKN: expect.closeTo(32, 9), saturatedKN: expect.closeTo(48, 9), objectsKN: expect.closeTo(4, 9) });
  });

  it('count the flood on the deck only', () => {
    const shape = holed(box(0, 0, 4, 2), hole(1, 0.5, 2.2, 1.3));
    const flooded = run({ deck: shape, stages: [stage('flood', [], { floodKNm2: 0.981 })] });
    for (const cell of flooded.prepared.bays.judged[0]) expect(flooded.stagePatchKNm2[0][cell], `cell ${cell}`).toBeCloseTo(0.981, 12);
  });
});
