/** An evaluation built on the one before equals a fresh one, whatever was edited. */

import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/core/evaluate.ts';
import type { Evaluation } from '../../src/core/evaluation.ts';
import type { DeckInput, ZoneInput } from '../../src/model/deck-input.ts';
import {
  bay,
  block,
  box,
  boxRing,
  buildUp,
  deck,
  hole,
  holed,
  layer,
  loaded,
  place,
  region,
  stage,
  zone,
} from '../helpers/deck-builder.ts';

const SHAPE = holed(box(0, 0, 9, 7), hole(4, 3, 5.2, 4.4));

function garden(fillKNm3: number, soilM: number) {
  return buildUp(
    'garden',
    [
      layer('protection', 0.01, { dryFixedKNm2: 0.1, saturatedFixedKNm2: 0.2 }),
      layer('light fill', 0.2, {
        rangeM: { min: 0.05, max: 0.5 },
        dryPerMKNm3: fillKNm3,
        saturatedPerMKNm3: fillKNm3 + 1,
        heldPerMLm2: 30,
      }),
      layer('substrate', soilM, { dryPerMKNm3: 10, saturatedPerMKNm3: 15, heldPerMLm2: 400 }),
    ],
    0.2,
  );
}

const ZONES: readonly ZoneInput[] = [
  zone('A', region([0, 0], [3.3, 0], [4.1, 7], [0, 7]), garden(2, 0.3), {
    finish: { kind: 'plane', x: 0, y: 0, z: 0.7, slopeX: -0.02, slopeY: 0.01 },
  }),
  zone('B', region([3.3, 0], [9, 0], [9, 3.7], [3.7, 3.5]), garden(3, 0.4), { imposedKNm2: 4 }),
  zone('C', region([3.7, 3.5], [9, 3.7], [9, 7], [4.1, 7]), loaded(6), { imposedKNm2: 2 }),
  // Small ones on top of the others in two far corners: both build-ups count there.
  zone('D', box(0.3, 0.3, 0.9, 0.9), loaded(1)),
  zone('E', box(8.1, 6.2, 8.7, 6.8), loaded(1)),
];

const BASE: DeckInput = deck({
  originM: [500_000, 5_800_000],
  cellM: 0.4,
  deck: SHAPE,
  levels: { spots: Float64Array.of(0, 0, 0.1, 9, 0, 0, 9, 7, 0.1, 0, 7, 0.2), breaklines: [Float64Array.of(4.5, 0, -0.05, 4.5, 7, 0)] },
  bays: [
    bay('W', box(0, 0, 4.5, 7), { permanentKNm2: 9, stageKNm2: 8 }),
    bay('E', box(4.5, 0, 9, 3.5), { permanentKNm2: null, imposedKNm2: null, totalKNm2: 12 }),
    bay('N', box(4.5, 3.5, 9, 7)),
  ],
  zones: ZONES,
  objects: [block('T', boxRing(1, 1, 3, 3), 3)],
  stages: [
    stage('S1', [place(['protection'])], { floodKNm2: 0.981 }),
    stage('S2', [place(['light fill'])], { stockpiles: [{ id: 'H', heightM: 1, ring: boxRing(5, 5, 7, 6.5), kNm2: 7 }] }),
    stage('S3', [place(['substrate']), place([], [], [0])]),
  ],
});

const change = (z: number, over: Partial<ZoneInput>): DeckInput => ({
  ...BASE,
  zones: BASE.zones.map((of, i) => (i === z ? { ...of, ...over } : of)),
});

/** Everything that a report, map or picture reads. */
function outcome(on: Evaluation) {
  const { bays, zones, totals, placedKN, plan, makeUps, stacks, stageStacks, stageLoads, zoneShares, finishSurfaces, bayAt, worstStage } =
    on;
  const { loadKNm2, patchKNm2, totalPatchKNm2, stagePatchKNm2, worstUtilisation, field } = on;
  return {
    ...{ bays, zones, totals, placedKN, plan, makeUps, stacks, stageStacks, stageLoads, zoneShares, finishSurfaces, bayAt, worstStage },
    ...{ loadKNm2, patchKNm2, totalPatchKNm2, stagePatchKNm2, worstUtilisation },
    makeUpM: [...field.makeUpM.keys()].filter((cell) => field.zones.owner[cell] >= 0).map((cell) => field.makeUpM[cell]),
    entryMakeUpM: field.entryMakeUpM,
  };
}

const EDITS: readonly (readonly [string, DeckInput])[] = [
  ['nothing', BASE],
  ['a thinner substrate', change(0, { buildUp: garden(2, 0.2) })],
  ['another fill in a zone over two bays', change(1, { buildUp: garden(5, 0.4) })],
  ['a small zone’s load', change(2, { buildUp: loaded(8) })],
  ['another imposed load', change(1, { imposedKNm2: 5 })],
  ['another finish', change(0, { finish: { kind: 'plane', x: 0, y: 0, z: 0.8, slopeX: 0.01, slopeY: 0 } })],
  [
    'a finish by spots',
    change(2, { finish: { kind: 'net', net: { spots: Float64Array.of(4, 3, 0.5, 9, 3, 0.6, 6, 7, 0.55), breaklines: [] } } }),
  ],
  ['no finish', change(0, { finish: { kind: 'build-up' } })],
  [
    'two zones',
    {
      ...BASE,
      zones: BASE.zones.map((of, z) => (z === 0 ? { ...of, buildUp: garden(4, 0.3) } : z === 2 ? { ...of, buildUp: loaded(7) } : of)),
    },
  ],
  ['two small zones far apart', { ...BASE, zones: BASE.zones.map((of, z) => (z < 3 ? of : { ...of, buildUp: loaded(9) })) }],
  ['a limit', { ...BASE, bays: BASE.bays.map((of, b) => (b === 0 ? { ...of, stageKNm2: 5 } : of)) }],
  ['a limit in all for another bay', { ...BASE, bays: BASE.bays.map((of, b) => (b === 2 ? { ...of, totalKNm2: 15 } : of)) }],
  ['no limit in all', { ...BASE, bays: BASE.bays.map((of) => ({ ...of, totalKNm2: null, permanentKNm2: 9 })) }],
  ['the flood', { ...BASE, stages: BASE.stages!.map((of) => ({ ...of, floodKNm2: 0.5 })) }],
  [
    'what a stage places',
    { ...BASE, stages: [BASE.stages![0], { ...BASE.stages![1], place: [place(['light fill', 'substrate'])] }, BASE.stages![2]] },
  ],
  ['one stage more', { ...BASE, stages: [...BASE.stages!, stage('S4', [place(['vegetation'])])] }],
  ['derived stages', { ...BASE, stages: null }],
  ['another heap', { ...BASE, stages: BASE.stages!.map((of) => ({ ...of, stockpiles: [] })) }],
  ['a shape', change(2, { region: region([3.7, 3.5], [9, 3.7], [8, 7], [4.1, 7]) })],
  ['the cell', { ...BASE, cellM: 0.3 }],
];

describe('after an edit equals a fresh evaluation:', () => {
  it.each(EDITS)('%s', (_, edited) => {
    expect(outcome(evaluate(edited, evaluate(BASE)))).toEqual(outcome(evaluate(edited)));
  });

  it('edits one after the other, and back again', () => {
    let on = evaluate(BASE);
    for (const [, edited] of EDITS) on = evaluate(edited, on);
    expect(outcome(evaluate(BASE, on))).toEqual(outcome(evaluate(BASE)));
  });
});

describe('what is kept', () => {
  it('shapes prepared before are used again, others are not', () => {
    const before = evaluate(BASE);
    expect(evaluate(change(0, { buildUp: loaded(3) }), before).prepared).toBe(before.prepared);
    expect(evaluate(change(0, { region: box(0, 0, 3, 7) }), evaluate(BASE)).prepared).not.toBe(before.prepared);
  });

  it('zones that did not change keep their results', () => {
    const before = evaluate(BASE);
    const after = evaluate(change(0, { buildUp: garden(2, 0.2) }), before);
    expect(after.zones[1]).toBe(before.zones[1]);
    expect(after.zones[0]).not.toBe(before.zones[0]);
  });
});

it('adds up: zones and objects make the total, and bays carry it', () => {
  const on = evaluate(BASE);
  const zonesKN = on.zones.reduce((sum, of) => sum + of.saturatedKN, 0);
  // The block: 2 m · 2 m · 3 kN/m²
  expect(on.totals.objectsKN).toBeCloseTo(12, 9);
  expect(on.totals.saturatedKN).toBeCloseTo(zonesKN + 12, 9);
  const baysKN = on.bays.reduce((sum, of) => sum + of.meanKNm2 * of.areaM2, 0);
  expect(baysKN).toBeCloseTo(on.totals.saturatedKN, 6);
  const cellsKN = on.loadKNm2.reduce(
    (sum, load, cell) => (Number.isNaN(load) ? sum : sum + load * on.prepared.ground.deckShare[cell] * 0.16),
    0,
  );
  expect(cellsKN).toBeCloseTo(on.totals.saturatedKN, 6);
  // 9 · 7 less the opening 1.2 · 1.4
  expect(on.prepared.ground.areaM2).toBeCloseTo(63 - 1.68, 9);
});
