/** The column under a cell, line by line; 4 m × 1 m in cells of 1 m. */

import { describe, expect, it } from 'vitest';
import { coreLog } from '../../src/core/core-log.ts';
import { evaluate } from '../../src/core/evaluate.ts';
import type { CoreLog } from '../../src/model/maps.ts';
import { bay, block, box, boxRing, buildUp, deck, layer, place, region, stage, zone } from '../helpers/deck-builder.ts';

const GARDEN = buildUp(
  'garden',
  [
    layer('protection', 0.01, { dryFixedKNm2: 0.1, saturatedFixedKNm2: 0.3 }),
    layer('light fill', 0.2, { rangeM: { min: 0, max: 1 }, dryPerMKNm3: 2, saturatedPerMKNm3: 3 }),
    layer('substrate', 0.3, { dryPerMKNm3: 10, saturatedPerMKNm3: 15 }),
  ],
  0.2,
);
const PAVING = buildUp('paving', [
  layer('protection', 0.01, { dryFixedKNm2: 0.1, saturatedFixedKNm2: 0.3 }),
  layer('surfacing', 0.1, { dryFixedKNm2: 2, saturatedFixedKNm2: 2.4 }),
]);

/**
 * Garden on x 0 … 1.6, finished at 1.0 over a deck at 0.2: fill 0.8 − 0.31 = 0.49 m. Paving on 1.6 … 3, bare beyond.
 * A tree of 4 kN/m² on x 0 … 0.5, a wall of 6 on x 0 … 0.25.
 */
const ON = evaluate(
  deck({
    originM: [10, 20],
    deck: box(0, 0, 4, 1),
    levels: { spots: Float64Array.of(0, 0, 0.2), breaklines: [] },
    bays: [
      bay('A', box(0, 0, 2, 1), { stageKNm2: 16, permanentKNm2: 20 }),
      bay('T', box(2, 0, 3, 1), { permanentKNm2: null, totalKNm2: 8, confirmed: false }),
    ],
    zones: [
      zone('P', box(1.6, 0, 3, 1), PAVING),
      zone('G', box(0, 0, 1.6, 1), GARDEN, { finish: { kind: 'plane', x: 0, y: 0, z: 1, slopeX: 0, slopeY: 0 } }),
    ],
    objects: [{ id: 'T1', kind: 'tree', pieces: [{ ring: boxRing(0, 0, 0.5, 1), kNm2: 4 }] }, block('W', boxRing(0, 0, 0.25, 1), 6)],
    stages: [
      stage('S1', [place(['protection'])], { floodKNm2: 0.981 }),
      stage('S2', [place(['light fill', 'surfacing']), place([], [], [0])], {
        stockpiles: [{ id: 'H', heightM: 1, ring: boxRing(0, 0, 1, 0.5), kNm2: 5 }],
      }),
      stage('S3', [place(['substrate'])]),
    ],
  }),
);

function log(cell: number, at: number | null): CoreLog {
  const made = coreLog(ON, cell, at);
  if (!made) throw new Error(`no deck in cell ${cell}`);
  return made;
}

function expectSums(made: CoreLog): void {
  const lines = [...made.layers.filter((line) => line.placed), ...made.others];
  expect(lines.reduce((sum, line) => sum + line.dryKNm2, 0)).toBeCloseTo(made.dryKNm2, 12);
  expect(lines.reduce((sum, line) => sum + line.saturatedKNm2, 0)).toBeCloseTo(made.saturatedKNm2, 12);
}

describe('the finished garden', () => {
  it('layers from the membrane up, with levels and weights', () => {
    const made = log(0, null);
    expect(made.layers.map((l) => [l.bottomM, l.topM, l.thicknessMm, l.dryKNm2, l.saturatedKNm2].map((v) => Number(v.toFixed(9))))).toEqual(
      [
        [0.2, 0.21, 10, 0.1, 0.3],
        // 0.49 · 2 and 0.49 · 3
        [0.21, 0.7, 490, 0.98, 1.47],
        [0.7, 1, 300, 3, 4.5],
      ],
    );
    expect(made.layers.map((l) => [l.makeUp, l.stage, l.placed, l.zone])).toEqual([
      [false, 'S1', true, 'G'],
      [true, 'S2', true, 'G'],
      [false, 'S3', true, 'G'],
    ]);
    expect([made.membraneM, made.finishedM]).toEqual([0.2, expect.closeTo(1, 12)]);
    expect(made.at).toEqual([10.5, 20.5]);
  });

  it('everything else: vegetation, tree, wall, by their area in the cell', () => {
    const made = log(0, null);
    expect(made.others.map((o) => [o.kind, o.id, o.zone, o.saturatedKNm2])).toEqual([
      ['vegetation', 'garden', 'G', 0.2],
      ['tree', 'T1', null, 2],
      ['block', 'W', null, 1.5],
    ]);
    // 0.3 + 1.47 + 4.5 + 0.2 + 2 + 1.5; dry 0.1 + 0.98 + 3 + 3.7
    expect(made.saturatedKNm2).toBeCloseTo(9.97, 12);
    expect(made.dryKNm2).toBeCloseTo(7.78, 12);
    expectSums(made);
  });

  it('is judged by the patch against the permanent limit', () => {
    const made = log(0, null);
    expect(made.patchKNm2).toBeCloseTo(9.97, 12);
    expect([made.bay, made.bayConfirmed, made.permittedKNm2, made.permittedBasis]).toEqual(['A', true, 20, 'permanent']);
    expect(made.utilisation).toBeCloseTo(0.4985, 12);
  });

  it('two zones in one cell: by share, the larger first', () => {
    const made = log(1, null);
    expect(made.layers.map((l) => [l.zone, l.role])).toEqual([
      ['G', 'protection'],
      ['G', 'light fill'],
      ['G', 'substrate'],
      ['P', 'protection'],
      ['P', 'surfacing'],
    ]);
    expect(made.layers.map((l) => Number(l.share.toFixed(9)))).toEqual([0.6, 0.6, 0.6, 0.4, 0.4]);
    // 0.6 · (0.3 + 1.47 + 4.5 + 0.2) + 0.4 · (0.3 + 2.4)
    expect(made.saturatedKNm2).toBeCloseTo(3.882 + 1.08, 12);
    expect(made.finishedM).toBeCloseTo(1, 12);
    expectSums(made);
  });

  it('bare deck ends at the membrane and carries nothing', () => {
    expect(log(3, null)).toMatchObject({
      layers: [],
      others: [],
      saturatedKNm2: 0,
      finishedM: 0.2,
      bay: null,
      permittedKNm2: null,
      utilisation: null,
    });
  });

  it('without a bay has no limit; with one in all it is compared with that', () => {
    // Paving 0.3 + 2.4 and nothing imposed, of 8 in all
    const made = log(2, null);
    expect([made.bay, made.bayConfirmed]).toEqual(['T', false]);
    expect([made.permittedKNm2, made.permittedBasis]).toEqual([8, 'total']);
    expect(made.utilisation).toBeCloseTo(2.7 / 8, 12);
  });
});

it('with only a limit in all, the imposed load counts in what is judged, not in the column', () => {
  const on = evaluate(
    deck({
      bays: [bay('T', box(0, 0, 4, 2), { permanentKNm2: null, totalKNm2: 8 })],
      zones: [zone('P', box(0, 0, 4, 2), PAVING, { imposedKNm2: 4 })],
    }),
  );
  // 0.3 + 2.4 permanent, 4 imposed, 8 permitted
  expect(coreLog(on, 0, null)).toMatchObject({
    saturatedKNm2: expect.closeTo(2.7, 12),
    patchKNm2: expect.closeTo(6.7, 12),
    permittedKNm2: 8,
    permittedBasis: 'total',
    utilisation: expect.closeTo(6.7 / 8, 12),
  });
});

describe('a stage', () => {
  it('counts what is placed, and shows what is not yet', () => {
    const made = log(0, 0);
    expect(made.stage).toBe('S1');
    expect(made.layers.map((l) => l.placed)).toEqual([true, false, false]);
    expect(made.others.map((o) => [o.kind, o.id, o.saturatedKNm2])).toEqual([['flood test', 'S1', 0.981]]);
    expect(made.saturatedKNm2).toBeCloseTo(1.281, 12);
    expect(made.finishedM).toBeCloseTo(0.21, 12);
    expect([made.permittedKNm2, made.permittedBasis]).toEqual([16, 'stage']);
    expect(made.utilisation).toBeCloseTo(1.281 / 16, 12);
    expectSums(made);
  });

  it('counts its own heaps and the objects placed so far', () => {
    const made = log(0, 1);
    // The heap covers half the cell.
    expect(made.others.map((o) => [o.kind, o.id, o.saturatedKNm2])).toEqual([
      ['tree', 'T1', 2],
      ['stockpile', 'H', 2.5],
    ]);
    // 0.3 + 1.47 + 2 + 2.5
    expect(made.saturatedKNm2).toBeCloseTo(6.27, 12);
    expect(made.patchKNm2).toBeCloseTo(6.27, 12);
    expectSums(made);
  });

  it('leaves the heap behind and brings the vegetation with the top layer', () => {
    const made = log(0, 2);
    // The wall is never placed.
    expect(made.others.map((o) => o.kind)).toEqual(['vegetation', 'tree']);
    expect(made.saturatedKNm2).toBeCloseTo(8.47, 12);
    expectSums(made);
  });

  it('of a bay with a limit in all is held against that', () => {
    expect(log(2, 2)).toMatchObject({ permittedKNm2: 8, permittedBasis: 'total', utilisation: expect.closeTo(2.7 / 8, 12) });
  });
});

it('in a cell cut by the edge of the deck counts per unit of deck', () => {
  // y < x/2 on 2 m × 1 m; the second cell has 3/4 deck
  const shape = region([0, 0], [2, 0], [2, 1]);
  const on = evaluate(
    deck({
      deck: shape,
      bays: [bay('B', shape)],
      zones: [zone('P', box(0, 0, 2, 1), PAVING)],
      objects: [block('W', boxRing(1.5, 0, 2, 0.5), 6)],
    }),
  );
  const made = coreLog(on, 1, null)!;
  expect(made.deckAreaM2).toBeCloseTo(0.75, 12);
  expect(made.layers[0].share).toBeCloseTo(1, 12);
  // 0.25 m² · 6 kN/m² over 0.75 m² of deck
  expect(made.others[0].saturatedKNm2).toBeCloseTo(2, 12);
  expect(made.saturatedKNm2).toBeCloseTo(4.7, 12);
  // The centre of the first cell is not on the deck: no patch, no bay
  expect(coreLog(on, 0, null)).toMatchObject({ patchKNm2: null, bay: null });
});

it('is null outside the deck and outside the grid', () => {
  const on = evaluate(deck({ deck: region([0, 0], [2, 0], [2, 2]) }));
  expect(coreLog(on, 2, null)).toBeNull();
  expect(coreLog(on, 99, null)).toBeNull();
  expect(coreLog(on, -1, null)).toBeNull();
});
