/** Bends, transitions and gradients of lanes, worked by hand. */

import { describe, expect, it } from 'vitest';
import { fireTable } from '../../../src/catalogue/fire-access.ts';
import { deckSite } from '../../../src/core/edge-facts.ts';
import { evaluate } from '../../../src/core/evaluate.ts';
import { bendsOf, drawnTransitionM, laneProfile } from '../../../src/core/rules/route-geometry.ts';
import type { DeckInput } from '../../../src/model/deck-input.ts';
import { box, buildUp, deck, layer, ring, zone } from '../../helpers/deck-builder.ts';

const line = (...points: readonly (readonly [number, number])[]) => ring(...points);
const germany = fireTable('de-mrflfw', 156.96)!;

describe('bends', () => {
  it('right angle: tangent half of the shorter leg, 10 m; radius 10 / tan 45° = 10; outer 10 + 4/2', () => {
    const [bend, ...more] = bendsOf(line([0, 0], [20, 0], [20, 30]), 4);
    expect(more).toEqual([]);
    expect(bend.turnDeg).toBeCloseTo(90, 10);
    expect([bend.tangentM, bend.radiusM, bend.outerM]).toEqual([10, expect.closeTo(10, 10), expect.closeTo(12, 10)]);
    expect([bend.beforeM, bend.afterM]).toEqual([20, 30]);
  });

  it('half a right angle: 10 / tan 22.5° = 10 · (1 + √2), left or right alike', () => {
    for (const side of [1, -1]) {
      const [bend] = bendsOf(line([0, 0], [20, 0], [20 + Math.SQRT1_2 * 20, side * Math.SQRT1_2 * 20]), 3);
      expect(bend.radiusM).toBeCloseTo(10 * (1 + Math.SQRT2), 9);
      expect(bend.outerM).toBeCloseTo(10 * (1 + Math.SQRT2) + 1.5, 9);
    }
  });

  it('a vertex drawn twice, a millimetre apart, is one: no bend of no radius', () => {
    const [bend, ...more] = bendsOf(line([0, 0], [20, 0], [20.001, 0.001], [20, 30]), 4);
    expect(more).toEqual([]);
    expect(bend.outerM).toBeCloseTo(12, 9);
    expect(bendsOf(line([0, 0], [20, 0], [20, 30], [20, 30.001]), 4)).toHaveLength(1);
    expect(bendsOf(line([0, 0], [0.001, 0.001], [20, 0], [20, 30]), 4)).toHaveLength(1);
  });

  it('right back: radius 0; straight on: no bend', () => {
    expect(bendsOf(line([0, 0], [20, 0], [5, 0]), 3)[0].radiusM).toBe(0);
    expect(bendsOf(line([0, 0], [20, 0], [45, 0]), 3)).toEqual([]);
  });

  it('a regular polygon round a circle of 20 m gives back the circle', () => {
    // Sides touch the circle in their middles: half a side over the tangent of half the turn is the radius.
    const corner = 20 / Math.cos(Math.PI / 24);
    const points = Array.from({ length: 8 }, (_, i): [number, number] => [
      corner * Math.cos((i * Math.PI) / 12),
      corner * Math.sin((i * Math.PI) / 12),
    ]);
    const bends = bendsOf(line(...points), 3);
    expect(bends).toHaveLength(6);
    for (const bend of bends) expect(bend.radiusM).toBeCloseTo(20, 9);
  });
});

describe('transitions', () => {
  // Lane 5 m wide: may bend at an outer radius of 10.5, middle 8.0, tangent 8 · tan 45° = 8.
  it('legs of 18 and 40 m: 18 − 8 = 10 m drawn before the bend', () => {
    const [bend] = bendsOf(line([0, 0], [18, 0], [18, 40]), 5);
    expect(drawnTransitionM(germany.bends!, bend, 5)).toBeCloseTo(10, 9);
  });

  // Lane 4 m wide: outer radius over 15, middle 13, tangent 13. Legs of 30 and 40 m leave 17.
  it('a narrower lane needs a wider arc: 30 − 13 = 17 m', () => {
    const [bend] = bendsOf(line([0, 0], [30, 0], [30, 40]), 4);
    expect(drawnTransitionM(germany.bends!, bend, 4)).toBeCloseTo(17, 9);
  });

  it('a lane too narrow for any radius it could have has none', () => {
    const [bend] = bendsOf(line([0, 0], [20, 0], [20, 40]), 3);
    expect(drawnTransitionM(germany.bends!, bend, 3)).toBeNull();
    expect(drawnTransitionM(germany.bends!, bend, 2.9)).toBeNull();
  });
});

describe('gradient on the finished surface', () => {
  // 20 m long, rising from 0.00 to 1.20: 6 %.
  const slope: DeckInput = deck({
    deck: box(0, 0, 20, 10),
    levels: { spots: Float64Array.of(0, 0, 0, 20, 0, 1.2, 20, 10, 1.2, 0, 10, 0), breaklines: [] },
    bays: [],
    zones: [
      zone('low', box(0, 0, 10, 10), buildUp('thin', [layer('surfacing', 0.1)])),
      zone('high', box(10, 0, 20, 10), buildUp('thick', [layer('surfacing', 0.25)])),
    ],
  });
  const along = (input: DeckInput, ...points: readonly (readonly [number, number])[]) =>
    laneProfile(deckSite(evaluate(input)), line(...points));

  it('follows the membrane: 6 % up or down, none across', () => {
    expect(along(slope, [1, 5], [9, 5]).steepest).toMatchObject({ percent: expect.closeTo(6, 9), zone: 0 });
    expect(along(slope, [9, 5], [1, 5]).steepest?.percent).toBeCloseTo(6, 9);
    expect(along(slope, [5, 1], [5, 9]).steepest?.percent).toBeCloseTo(0, 9);
  });

  it('aslant by 3 in 5: 6 · 0.6 = 3.6 %', () => {
    expect(along(slope, [1, 1], [4, 5]).steepest?.percent).toBeCloseTo(3.6, 9);
  });

  it('steps by the difference of both build-ups, 150 mm, where zones meet; the gradient stays 6 %', () => {
    const { step, steepest } = along(slope, [5, 5], [15, 5]);
    expect(step).toMatchObject({ heightM: expect.closeTo(0.15, 9), x: expect.closeTo(10, 9), zone: 1 });
    expect(steepest?.percent).toBeCloseTo(6, 9);
    expect(along(slope, [1, 5], [9, 5]).step).toBeNull();
  });

  it('takes the wanted finish where the make-up layer can follow: a plane of 2 % over the deck of 6 %', () => {
    // Finish 1.0 + 0.02 · x over the membrane 0.06 · x: make-up 1.0 − 0.04 · x, 1.0 … 0.6 for x in 0 … 10, within 0.1 … 2.
    const makeUp = layer('light fill', 0.2, { rangeM: { min: 0.1, max: 2 } });
    const finish = { kind: 'plane', x: 0, y: 0, z: 1, slopeX: 0.02, slopeY: 0 } as const;
    const zones = [zone('Z', box(0, 0, 10, 10), buildUp('b', [makeUp]), { finish })];
    expect(along({ ...slope, zones }, [1, 5], [9, 5]).steepest?.percent).toBeCloseTo(2, 9);
  });

  it('says nothing where no zone lies', () => {
    expect(along({ ...slope, zones: [] }, [1, 5], [9, 5])).toEqual({ steepest: null, step: null });
  });
});
