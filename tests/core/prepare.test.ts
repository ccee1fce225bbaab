/** What a deck's shapes alone give. */

import { describe, expect, it } from 'vitest';
import { prepareDeck, reachM, sameShapes } from '../../src/core/prepare.ts';
import { bay, block, box, boxRing, deck, loaded, stage, zone } from '../helpers/deck-builder.ts';

const net = (...points: number[]) => ({ spots: Float64Array.from(points), breaklines: [] });

describe('levels', () => {
  it('are 0.000 where none are given, and nothing is outside', () => {
    const made = prepareDeck(deck());
    expect([...made.deckLevelsM]).toEqual(new Array(8).fill(0));
    expect(made.outsideLevelsM2).toBe(0);
  });

  it('outside the net are reported with their area', () => {
    // Spots round x 0 … 3 of a deck of 4 m × 2 m: 1 m · 2 m outside
    const made = prepareDeck(deck({ levels: net(0, 0, 1, 3, 0, 1, 3, 2, 1, 0, 2, 1) }));
    expect(made.outsideLevelsM2).toBeCloseTo(2, 9);
    expect(made.deckLevelsM[7]).toBeCloseTo(1, 9);
  });

  it('of a slanting net: the triangle under x/4 + y/2 = 1 has half of 4 m × 2 m', () => {
    expect(prepareDeck(deck({ levels: net(0, 0, 1, 4, 0, 1, 0, 2, 1) })).outsideLevelsM2).toBeCloseTo(4, 9);
  });

  it('of one spot, or of spots on one line, leave the whole deck outside', () => {
    expect(prepareDeck(deck({ levels: net(1, 1, 0.2) })).outsideLevelsM2).toBeCloseTo(8, 9);
    expect(prepareDeck(deck({ levels: net(0, 1, 0.2, 4, 1, 0.4) })).outsideLevelsM2).toBeCloseTo(8, 9);
  });

  it('round the whole deck leave nothing outside', () => {
    expect(prepareDeck(deck({ levels: net(0, 0, 0, 4, 0, 0, 4, 2, 0, 0, 2, 0) })).outsideLevelsM2).toBe(0);
  });
});

it('keeps the deck area under every window: half a metre less at the edges, a quarter at the corners', () => {
  // Cells of 0.5 m: the window is the cell and half of its neighbours, 4 cells' worth inside, 3 at an edge, 2.25 in a corner.
  const made = prepareDeck(deck({ cellM: 0.5 }));
  expect([made.deckSums[9], made.deckSums[1], made.deckSums[0]]).toEqual([4, 3, 2.25]);
});

it('reaches far enough to lie under everything drawn', () => {
  // Deck to (4, 2), spot at (−30, 5): from the spot to the far corner hypot(34, 3) = 34.1 m
  expect(reachM(deck({ levels: net(-30, 5, 0) }))).toBeGreaterThan(34.2);
});

describe('what counts as the same shapes', () => {
  const base = deck({
    zones: [zone('Z', box(0, 0, 4, 2), loaded(1))],
    objects: [block('P', boxRing(0, 0, 1, 1), 1)],
    stages: [stage('S', [])],
  });

  it('other build-ups, limits and floods are', () => {
    const zones = [{ ...base.zones[0], buildUp: loaded(2), imposedKNm2: 3 }];
    const bays = [{ ...base.bays[0], permanentKNm2: 5 }];
    const stages = [{ ...base.stages![0], floodKNm2: 1 }];
    expect(sameShapes(base, { ...base, zones, bays, stages })).toBe(true);
  });

  it.each([
    ['another cell', { cellM: 0.5 }],
    ['another origin', { originM: [1, 0] as const }],
    ['another deck', { deck: box(0, 0, 4, 2) }],
    ['other levels', { levels: net(0, 0, 0) }],
    ['another bay', { bays: [bay('B', box(0, 0, 4, 2))] }],
    ['another zone region', { zones: [zone('Z', box(0, 0, 4, 2), base.zones[0].buildUp)] }],
    ['one zone less', { zones: [] }],
    ['another object', { objects: [block('P', boxRing(0, 0, 1, 1), 1)] }],
    ['another heap', { stages: [stage('S', [])] }],
  ])('%s is not', (_, change) => {
    expect(sameShapes(base, { ...base, ...change })).toBe(false);
  });
});

describe('a deck prepared after another', () => {
  const halves = (x: number) => [
    zone('West', box(0, 0, x, 2), loaded(1)),
    zone('Middle', box(3, 0, 3.5, 2), loaded(1)),
    zone('East', box(x, 0, 3, 2), loaded(1)),
  ];
  const first = deck({ zones: halves(1), objects: [block('P', boxRing(0, 0, 1, 1), 1)], stages: [stage('S', [])] });
  const before = { input: first, prepared: prepareDeck(first) };
  const moved = halves(2);
  const next = { ...first, zones: [moved[0], first.zones[1], moved[2]] };

  /** All that is known of a deck; the rasteriser is made of functions, the scratch fields hold nothing. */
  const known = ({ scratch: _, ground: { rasteriser: __, ...ground }, ...rest }: ReturnType<typeof prepareDeck>) => ({ ...rest, ground });

  it('is what it is by itself', () => {
    expect(known(prepareDeck(next, before))).toEqual(known(prepareDeck(next)));
  });

  it('keeps what the edit leaves alone the very same, and lays the rest anew', () => {
    const { ground, bays, deckLevelsM, objects, zones } = prepareDeck(next, before);
    const old = before.prepared;
    expect([ground === old.ground, bays === old.bays, deckLevelsM === old.deckLevelsM]).toEqual([true, true, true]);
    expect([objects[0] === old.objects[0], ...zones.map((laid, z) => laid === old.zones[z])]).toEqual([true, false, true, false]);
  });

  it.each([
    ['another deck', { deck: box(0, 0, 5, 2) }],
    ['another cell', { cellM: 0.5 }],
    ['other levels', { levels: net(0, 0, 0, 4, 0, 1, 0, 2, 1) }],
    ['another bay', { bays: [bay('B', box(0, 0, 2, 2))] }],
  ])('with %s is what it is by itself', (_, change) => {
    expect(known(prepareDeck({ ...next, ...change }, before))).toEqual(known(prepareDeck({ ...next, ...change })));
  });
});
