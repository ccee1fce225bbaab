/** Every rule: an input that breaks it and one that keeps it. 4 m × 2 m in cells of 1 m, so that a window is one cell. */

import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/core/evaluate.ts';
import { findFacts } from '../../src/core/findings.ts';
import type { BayInput, DeckInput, StageInput, ZoneInput } from '../../src/model/deck-input.ts';
import type { FindingFact, Rule } from '../../src/model/finding.ts';
import { bay, block, box, boxRing, buildUp, deck, layer, loaded, place, ring, stage, zone } from '../helpers/deck-builder.ts';

const HERE = box(0, 0, 4, 2);
const FULL = [zone('Z', HERE, loaded(5))];
const LEVEL = (z: number): ZoneInput['finish'] => ({ kind: 'plane', x: 0, y: 0, z, slopeX: 0, slopeY: 0 });

function find(over: Partial<DeckInput>, rule: Rule): FindingFact[] {
  return findFacts(evaluate(deck({ zones: FULL, ...over }))).filter((fact) => fact.rule === rule);
}

const onBay = (limits: Partial<BayInput>) => ({ bays: [bay('B', HERE, limits)] });

it('finds nothing on a deck that keeps every rule', () => {
  expect(findFacts(evaluate(deck({ zones: FULL })))).toEqual([]);
});

describe('load.permanent', () => {
  it('above the limit stops, with value, limit, place and mean', () => {
    // 8 kN/m² on the right half: cells 2, 3 and 6, 7; origin (100, 200); the bay's mean is (4 · 5 + 4 · 8)/8
    const zones = [zone('L', box(0, 0, 2, 2), loaded(5)), zone('R', box(2, 0, 4, 2), loaded(8))];
    const [fact] = find({ ...onBay({ permanentKNm2: 6 }), zones, originM: [100, 200] }, 'load.permanent');
    expect(fact).toEqual({
      rule: 'load.permanent',
      severity: 'stop',
      where: { bay: 'B', at: [102.5, 200.5] },
      value: expect.closeTo(8, 12),
      limit: 6,
      unit: 'kN/m²',
      facts: { meanKNm2: expect.closeTo(6.5, 12) },
    });
  });

  it.each([
    // load 5 against the limit: 101 %, 100 %, 90.9 %, 90 %, 50 %
    [4.95, 'stop'],
    [5, 'check'],
    [5.5, 'check'],
    [5 / 0.9, undefined],
    [10, undefined],
  ])('5 kN/m² against %f: %s', (permanentKNm2, severity) => {
    expect(find(onBay({ permanentKNm2 }), 'load.permanent')[0]?.severity).toBe(severity);
  });

  it('a rounding above exactly 100 % is no stop', () => {
    // 0.1 + 0.2 is 0.30000000000000004 against 0.3
    const zones = [zone('Z', HERE, loaded(0.1 + 0.2))];
    expect(find({ ...onBay({ permanentKNm2: 0.3 }), zones }, 'load.permanent')[0]?.severity).toBe('check');
  });
});

describe('load.imposed', () => {
  const used = (imposedKNm2: number) => find({ zones: [{ ...FULL[0], imposedKNm2 }] }, 'load.imposed');

  it('above the limit of 5 stops', () => {
    expect(used(5.1)).toEqual([expect.objectContaining({ severity: 'stop', where: { bay: 'B' }, value: 5.1, limit: 5 })]);
  });

  it('at 90 % or less is nothing', () => {
    expect(used(4.5)).toEqual([]);
  });

  it('above 90 % is a check, like every other load (contract, section 2, Bay result)', () => {
    // 4.8/5 = 96 %
    expect(used(4.8).map((fact) => fact.severity)).toEqual(['check']);
  });
});

describe('load.total', () => {
  const limits = (totalKNm2: number) => onBay({ permanentKNm2: null, imposedKNm2: null, totalKNm2 });
  const zones = [{ ...FULL[0], imposedKNm2: 4 }];

  it.each([
    // 5 + 4 = 9
    [8.9, 'stop'],
    [9, 'check'],
    [10, undefined],
  ])('5 permanent + 4 imposed against %f: %s', (totalKNm2, severity) => {
    const found = find({ ...limits(totalKNm2), zones }, 'load.total');
    expect(found[0]?.severity).toBe(severity);
    if (severity) expect(found[0]).toMatchObject({ value: expect.closeTo(9, 12), limit: totalKNm2, where: { bay: 'B', at: [0.5, 0.5] } });
  });
});

it('load.basis: a bay that is not confirmed is a check, a confirmed one nothing', () => {
  expect(find(onBay({ confirmed: false }), 'load.basis')).toEqual([expect.objectContaining({ severity: 'check', where: { bay: 'B' } })]);
  expect(find({}, 'load.basis')).toEqual([]);
});

describe('load.stage', () => {
  const heap = (kNm2: number) => [{ id: 'H', heightM: 1, ring: boxRing(1, 0, 2, 1), kNm2 }];
  const staged = (kNm2: number, limits: Partial<BayInput> = {}) =>
    find({ ...onBay(limits), stages: [stage('S1', [], { stockpiles: heap(kNm2) }), stage('S2', [place(['substrate'])])] }, 'load.stage');

  it('a heap above the limit stops, with stage and place', () => {
    expect(staged(11)).toEqual([
      expect.objectContaining({
        severity: 'stop',
        where: { bay: 'B', stage: 'S1', at: [1.5, 0.5] },
        value: 11,
        limit: 10,
        facts: { ownLimit: 0, heaped: 1 },
      }),
    ]);
  });

  it('says when the limit is one for building', () => {
    expect(staged(9, { stageKNm2: 8 })[0]).toMatchObject({ severity: 'stop', limit: 8, facts: { ownLimit: 1 } });
  });

  it('exactly 100 % is a check, 90 % nothing', () => {
    expect(staged(10).map((fact) => fact.severity)).toEqual(['check']);
    expect(staged(9)).toEqual([]);
  });

  it('tells every stage that is over', () => {
    expect(staged(11, { stageKNm2: 4.5 }).map((fact) => fact.where.stage)).toEqual(['S1', 'S2']);
  });

  it('is not judged without any limit', () => {
    expect(staged(99, { permanentKNm2: null })).toEqual([]);
  });
});

describe('depth.short and depth.over', () => {
  const fill = buildUp('f', [layer('light fill', 0.2, { rangeM: { min: 0.1, max: 0.3 } })]);
  const finished = (z: number, of = fill) => ({ zones: [zone('Z', HERE, of, { finish: LEVEL(z) })] });

  it('too low a finish stops: 40 mm short on all 8 m²', () => {
    expect(find(finished(0.06), 'depth.short')).toEqual([
      expect.objectContaining({
        severity: 'stop',
        where: { zone: 'Z', at: [0.5, 0.5] },
        value: expect.closeTo(8, 12),
        facts: { areaM2: expect.closeTo(8, 12), mostMm: expect.closeTo(40, 9) },
      }),
    ]);
    expect(find(finished(0.06), 'depth.over')).toEqual([]);
  });

  it('too high a finish is a check: 200 mm over', () => {
    expect(find(finished(0.5), 'depth.over')).toEqual([
      expect.objectContaining({
        severity: 'check',
        value: expect.closeTo(8, 12),
        facts: expect.objectContaining({ mostMm: expect.closeTo(200, 9) }),
      }),
    ]);
  });

  it('within the range is nothing, within a millimetre beyond it neither', () => {
    for (const z of [0.1, 0.2, 0.3, 0.0995, 0.3005]) {
      expect([...find(finished(z), 'depth.short'), ...find(finished(z), 'depth.over')], `${z}`).toEqual([]);
    }
  });

  it('a fixed build-up under a set level is held to it', () => {
    // 0.1 m thick
    expect(find(finished(0.15, loaded(5)), 'depth.over')).toHaveLength(1);
    expect(find(finished(0.05, loaded(5)), 'depth.short')).toHaveLength(1);
    expect(find(finished(0.1, loaded(5)), 'depth.short')).toEqual([]);
  });
});

it('level.outside: deck beyond the surveyed levels is a check with its area', () => {
  const net = (x1: number) => ({ spots: Float64Array.of(0, 0, 0, x1, 0, 0, x1, 2, 0, 0, 2, 0), breaklines: [] });
  expect(find({ levels: net(3) }, 'level.outside')).toEqual([
    expect.objectContaining({ severity: 'check', value: expect.closeTo(2, 9), facts: { deckM2: expect.closeTo(8, 12) } }),
  ]);
  expect(find({ levels: net(4) }, 'level.outside')).toEqual([]);
});

it('level.outside: a zone beyond its own net of finish levels is a check too', () => {
  // Finish spots round x 0 … 3 of a zone of 4 m × 2 m: 2 m²
  const spots = Float64Array.of(0, 0, 0.1, 3, 0, 0.1, 3, 2, 0.1, 0, 2, 0.1);
  const zones = [zone('Z', HERE, loaded(5), { finish: { kind: 'net', net: { spots, breaklines: [] } } })];
  expect(find({ zones }, 'level.outside')).toEqual([
    expect.objectContaining({ severity: 'check', value: expect.closeTo(2, 9), where: { zone: 'Z' } }),
  ]);
});

describe('coverage', () => {
  it('zone.gap: gaps with number, sum and largest', () => {
    // x 1 … 1.5 and 3 … 4 over 2 m: 1 m² and 2 m²
    const zones = [zone('A', box(0, 0, 1, 2), loaded(1)), zone('B', box(1.5, 0, 3, 2), loaded(1))];
    expect(find({ zones }, 'zone.gap')).toEqual([
      expect.objectContaining({
        severity: 'check',
        value: expect.closeTo(3, 12),
        facts: { count: 2, largestM2: expect.closeTo(2, 12) },
        where: { at: [3.5, 0.5] },
      }),
    ]);
    expect(find({}, 'zone.gap')).toEqual([]);
  });

  it('a gap below 0.05 m² is a sliver: a note', () => {
    const upTo = (x1: number) => [zone('A', box(0, 0, x1, 2), loaded(1)), zone('B', box(2, 0, 4, 2), loaded(1))];
    // 0.02 · 2 = 0.04; 0.03 · 2 = 0.06
    expect(find({ zones: upTo(1.98) }, 'zone.gap')[0].severity).toBe('note');
    expect(find({ zones: upTo(1.97) }, 'zone.gap')[0].severity).toBe('check');
  });

  it('zone.overlap: pair, area and place', () => {
    const zones = [zone('A', box(0, 0, 2.5, 2), loaded(1)), zone('B', box(2, 0, 4, 2), loaded(1))];
    expect(find({ zones }, 'zone.overlap')).toEqual([
      expect.objectContaining({
        severity: 'check',
        value: expect.closeTo(1, 12),
        where: { zone: 'A', at: [2.5, 0.5] },
        facts: { other: 'B' },
      }),
    ]);
    expect(find({}, 'zone.overlap')).toEqual([]);
  });

  it('zone.outside: a zone beyond the deck', () => {
    // 4 … 4.5 over 2 m
    const zones = [zone('Z', box(0, 0, 4.5, 2), loaded(5))];
    expect(find({ zones }, 'zone.outside')).toEqual([
      expect.objectContaining({ severity: 'check', value: expect.closeTo(1, 12), where: { zone: 'Z' } }),
    ]);
    expect(find({}, 'zone.outside')).toEqual([]);
  });

  it('zone.outside: an object and a heap beyond the deck, with what they weigh there', () => {
    const footprint = boxRing(3, 0, 5, 1);
    expect(find({ objects: [block('P', footprint, 3)] }, 'zone.outside')).toEqual([
      expect.objectContaining({
        severity: 'check',
        where: { object: 'P' },
        value: expect.closeTo(1, 12),
        facts: { weightKN: expect.closeTo(3, 12) },
      }),
    ]);
    const stages = [stage('S', [place(['substrate'])], { stockpiles: [{ id: 'H', heightM: 1, ring: footprint, kNm2: 4 }] })];
    expect(find({ stages }, 'zone.outside')).toEqual([
      expect.objectContaining({ where: { object: 'H', stage: 'S' }, facts: { weightKN: expect.closeTo(4, 12) } }),
    ]);
    expect(find({ objects: [block('P', boxRing(3, 0, 4, 1), 3)] }, 'zone.outside')).toEqual([]);
  });

  it('bay.gap and bay.overlap', () => {
    const bays = [bay('A', box(0, 0, 1.5, 2)), bay('B', box(1, 0, 3, 2))];
    expect(find({ bays }, 'bay.gap')).toEqual([
      expect.objectContaining({ severity: 'check', value: expect.closeTo(2, 12), where: { at: [3.5, 0.5] } }),
    ]);
    expect(find({ bays }, 'bay.overlap')).toEqual([
      expect.objectContaining({ value: expect.closeTo(1, 12), where: { bay: 'A', at: [1.5, 0.5] }, facts: { other: 'B' } }),
    ]);
    expect([...find({}, 'bay.gap'), ...find({}, 'bay.overlap')]).toEqual([]);
  });

  it('slanting common edges make neither gap nor overlap', () => {
    const zones = [
      zone('A', { outer: ring([0, 0], [1.3, 0], [2.7, 2], [0, 2]), holes: [] }, loaded(1)),
      zone('B', { outer: ring([1.3, 0], [4, 0], [4, 2], [2.7, 2]), holes: [] }, loaded(1)),
    ];
    expect(findFacts(evaluate(deck({ zones })))).toEqual([]);
  });
});

describe('stages', () => {
  const zones = [zone('Z', HERE, buildUp('b', [layer('protection', 0.01), layer('slip', 0.01), layer('substrate', 0.3)]))];
  const told = (stages: readonly StageInput[], rule: Rule) => find({ zones, stages }, rule);

  it('stage.order: a layer laid while the one below is missing', () => {
    expect(told([stage('S1', [place(['protection', 'substrate'])]), stage('S2', [place(['slip'])])], 'stage.order')).toEqual([
      expect.objectContaining({
        severity: 'stop',
        where: { zone: 'Z', stage: 'S1' },
        facts: expect.objectContaining({ layer: 'substrate', below: 'slip' }),
      }),
    ]);
  });

  it('is kept where the missing layer comes in the same stage', () => {
    expect(told([stage('S1', [place(['protection', 'substrate']), place(['slip'])])], 'stage.order')).toEqual([]);
    expect(told([stage('S1', [place(['protection', 'slip'])]), stage('S2', [place(['substrate'])])], 'stage.order')).toEqual([]);
  });

  it('stage.left: layers that no stage places, and objects', () => {
    const stages = [stage('S1', [place(['protection'])])];
    expect(told(stages, 'stage.left')).toEqual([
      expect.objectContaining({ severity: 'check', where: { zone: 'Z' }, value: 2, facts: { layers: 'slip\nsubstrate' } }),
    ]);
    const all = [stage('S1', [place(['protection', 'slip', 'substrate'])])];
    expect(told(all, 'stage.left')).toEqual([]);
    const objects = [block('P', boxRing(0, 0, 1, 1), 1)];
    expect(find({ zones, objects, stages: all }, 'stage.left')).toEqual([expect.objectContaining({ where: { object: 'P' } })]);
    expect(find({ zones, objects, stages: [...all, stage('S2', [place([], [], [0])])] }, 'stage.left')).toEqual([]);
    expect(find({ zones, objects }, 'stage.left')).toEqual([]);
  });
});
