/** Places where appliances are set up, worked by hand. */

import { describe, expect, it } from 'vitest';
import { deckSite } from '../../../src/core/edge-facts.ts';
import { evaluate } from '../../../src/core/evaluate.ts';
import { smallestAround } from '../../../src/core/geometry/rectangles.ts';
import { facing, obstaclesIn, steepestIn, stepIn, stripBeside } from '../../../src/core/rules/set-up.ts';
import { linesThrough } from '../../../src/core/set-up-wheels.ts';
import type { DeckInput } from '../../../src/model/deck-input.ts';
import { box, buildUp, deck, layer, ring, zone } from '../../helpers/deck-builder.ts';

// 20 m by 10 m, rising 3 % along x and 4 % along y: 5 % in the steepest direction.
const slope: DeckInput = deck({
  deck: box(0, 0, 20, 10),
  levels: { spots: Float64Array.of(0, 0, 0, 20, 0, 0.6, 20, 10, 1, 0, 10, 0.4), breaklines: [] },
  bays: [],
  zones: [
    zone('low', box(0, 0, 10, 10), buildUp('thin', [layer('surfacing', 0.1)])),
    zone('high', box(10, 0, 20, 10), buildUp('thick', [layer('surfacing', 0.25)])),
  ],
});
const siteOf = (input: DeckInput) => deckSite(evaluate(input));

describe('gradient in any direction', () => {
  it('3 % one way and 4 % the other: 5 %', () => {
    expect(steepestIn(siteOf(slope), box(1, 1, 9, 5))).toMatchObject({ percent: expect.closeTo(5, 9), zone: 0 });
  });

  it('as built: a level finish where the make-up layer can follow, the membrane where it can not', () => {
    // Finish 1.0 over the membrane 0.03 x + 0.04 y: the make-up takes 1 − 0.03 x − 0.04 y and would like less than 0.5 beyond 0.03 x + 0.04 y = 0.5.
    const makeUp = layer('light fill', 0.6, { rangeM: { min: 0.5, max: 2 } });
    const finish = { kind: 'plane', x: 0, y: 0, z: 1, slopeX: 0, slopeY: 0 } as const;
    const site = siteOf({ ...slope, zones: [zone('Z', box(0, 0, 20, 10), buildUp('b', [makeUp]), { finish })] });
    expect(steepestIn(site, box(1, 1, 9, 5))?.percent).toBeCloseTo(0, 9);
    expect(steepestIn(site, box(11, 5, 19, 9))?.percent).toBeCloseTo(5, 9);
    // Both: 0.03 · 12 + 0.04 · 4 = 0.52
    expect(steepestIn(site, box(1, 1, 12, 4))?.percent).toBeCloseTo(5, 9);
  });

  it('nothing where no zone lies, and a sliver of another zone does not count', () => {
    expect(steepestIn(siteOf({ ...slope, zones: [] }), box(1, 1, 9, 5))).toBeNull();
    const edge = siteOf({
      ...slope,
      levels: {
        spots: Float64Array.of(0, 0, 0, 10, 0, 0, 20, 0, 5, 20, 10, 5, 10, 10, 0, 0, 10, 0),
        breaklines: [Float64Array.of(10, 0, 0, 10, 10, 0)],
      },
    });
    expect(steepestIn(edge, box(1, 1, 10.001, 5))?.percent).toBeCloseTo(0, 9);
    expect(steepestIn(edge, box(1, 1, 10.5, 5))?.percent).toBeCloseTo(50, 9);
  });
});

describe('steps', () => {
  it('0.25 − 0.10 m where both build-ups meet; none within one of them', () => {
    expect(stepIn(siteOf(slope), box(5, 2, 15, 6))).toMatchObject({ heightM: expect.closeTo(0.15, 9), x: expect.closeTo(10, 6) });
    expect(stepIn(siteOf(slope), box(1, 2, 9, 6))).toBeNull();
    // Along the rim is not in it.
    expect(stepIn(siteOf(slope), box(1, 2, 10, 6))).toBeNull();
  });
});

describe('obstacles', () => {
  const area = box(0, 0, 12, 4);
  const block = (x: number, y: number) => ({ name: 'block', rings: [box(x, y, x + 1, y + 1).outer], lines: [] });
  const upstand = (...points: readonly (readonly [number, number])[]) => ({ name: 'upstand', rings: [], lines: [ring(...points)] });

  it('what laps onto it stands in it; what touches does not', () => {
    expect(obstaclesIn(area, [block(11.5, 2), block(12, 2), block(5, -1), upstand([0, 4], [12, 4])])).toEqual([block(11.5, 2)]);
    expect(obstaclesIn(area, [upstand([-1, 2], [3, 2])])).toHaveLength(1);
  });

  it('strips of 2 m: beside the long sides and beyond the short ones', () => {
    const around = smallestAround(area.outer);
    const sideOf = (x: number, y: number) =>
      (['high', 'low', 'front', 'back'] as const).filter((side) => obstaclesIn(stripBeside(around, side, 2), [block(x, y)]).length > 0);
    const [north, south] = [sideOf(5, 5), sideOf(5, -2)];
    expect([...north, ...south].sort()).toEqual(['high', 'low']);
    expect([...sideOf(13, 1), ...sideOf(-2, 1)].sort()).toEqual(['back', 'front']);
    expect(sideOf(5, 6)).toEqual([]);
  });
});

describe('the building', () => {
  const area = box(0, 0, 12, 4);
  const around = smallestAround(area.outer);

  it('along it 5 m away: the strip lies on the other side', () => {
    const north = facing(area, around, ring([-10, 9], [30, 9]));
    const south = facing(area, around, ring([-10, -5], [30, -5]));
    expect([north.lies, north.distanceM, south.lies, south.distanceM]).toEqual(['along', 5, 'along', 5]);
    expect(north.away).not.toBe(south.away);
    // The strip on the side away from a building in the north lies in the south.
    expect(Math.min(...stripBeside(around, north.away, 2).outer.filter((_, i) => i % 2 === 1))).toBeCloseTo(-2, 9);
  });

  it('across it 1 m away', () => {
    expect(facing(area, around, ring([13, -10], [13, 20]))).toMatchObject({ lies: 'across', distanceM: 1 });
  });
});

describe('lines through it', () => {
  it('12 by 4, 1 m from the sides and 0.5 from the ends: 9 lines 0.25 apart, 11 m long', () => {
    const area = box(0, 0, 12, 4);
    const lines = linesThrough(area, smallestAround(area.outer), { sidesM: 1, endsM: 0.5 }, 0.25);
    expect(lines).toHaveLength(9);
    const across = lines.map((line) => line[1]).sort((p, q) => p - q);
    for (const [i, y] of across.entries()) expect(y).toBeCloseTo(1 + 0.25 * i, 9);
    for (const line of lines) expect(Math.hypot(line[2] - line[0], line[3] - line[1])).toBeCloseTo(11, 9);
  });

  it('too narrow for the inset: the middle line', () => {
    const area = box(0, 0, 12, 2);
    expect(linesThrough(area, smallestAround(area.outer), { sidesM: 1.2, endsM: 0 }, 0.25)).toEqual([expect.any(Float64Array)]);
  });
});
