/** Height of the membrane above the finish along edges, by hand; the size of the cells changes nothing. */

import { describe, expect, it } from 'vitest';
import { deckSite, upstandFacts } from '../../../src/core/edge-facts.ts';
import { evaluate } from '../../../src/core/evaluate.ts';
import { cellUpstands, edgeUpstand } from '../../../src/core/rules/edges.ts';
import type { DeckInput, ZoneInput } from '../../../src/model/deck-input.ts';
import type { EdgeInput } from '../../../src/model/edge-input.ts';
import { box, buildUp, deck, hole, holed, layer, zone } from '../../helpers/deck-builder.ts';
import { EDGE_LIMITS, edge, rims } from './rims.ts';

const HERE = box(0, 0, 4, 2);
const level = (z: number): ZoneInput['finish'] => ({ kind: 'plane', x: 0, y: 0, z, slopeX: 0, slopeY: 0 });
/** 0.10 m fixed below 0.05 to 2 m of make-up, 0.20 m nominal. */
const MAKE_UP = buildUp('make-up', [layer('light fill', 0.2, { rangeM: { min: 0.05, max: 2 } }), layer('substrate', 0.1)]);
const FIXED = buildUp('fixed', [layer('substrate', 0.3)]);
/** The deck rises by 2 % along x: 0 … 0.08 m. */
const RISING = { spots: Float64Array.of(0, 0, 0, 4, 0, 0.08, 4, 2, 0.08, 0, 2, 0), breaklines: [] };

function least(over: Partial<DeckInput>, one: EdgeInput) {
  const on = evaluate(deck(over));
  return edgeUpstand(deckSite(on), one, EDGE_LIMITS).least;
}

describe('least upstand', () => {
  it.each<[string, ZoneInput, number]>([
    ['a level finish at 0.48: 0.63 − 0.48', zone('Z', HERE, MAKE_UP, { finish: level(0.48) }), 0.15],
    ['the build-up on a level deck: 0.63 − (0.20 + 0.10)', zone('Z', HERE, MAKE_UP), 0.33],
    ['a fixed build-up: 0.63 − 0.30', zone('Z', HERE, FIXED), 0.33],
    // It ends where its 0.15 m stand, however low the finish is wanted
    ['a finish below the least make-up: 0.63 − (0.05 + 0.10)', zone('Z', HERE, MAKE_UP, { finish: level(0.02) }), 0.48],
    // A fixed build-up does not follow a wanted level
    ['a fixed build-up under a wanted level: 0.63 − 0.30', zone('Z', HERE, FIXED, { finish: level(0.5) }), 0.33],
    [
      'a finish that rises 3 % along the edge to 0.48: 0.63 − 0.48',
      zone('Z', HERE, MAKE_UP, { finish: { ...level(0.36), slopeX: 0.03 } as ZoneInput['finish'] }),
      0.15,
    ],
  ])('%s', (_, one, heightM) => {
    expect(least({ zones: [one] }, edge('E', [0, 0, 4, 0]))?.heightM).toBeCloseTo(heightM, 12);
  });

  it('stands at the highest end of a finish that follows the deck, to the millimetre and for every size of cell', () => {
    for (const cellM of [0.05, 0.23, 0.25, 1, 2]) {
      // 0.63 − (0.08 + 0.30) at (4, 0)
      const found = least({ zones: [zone('Z', HERE, MAKE_UP)], levels: RISING, cellM }, edge('E', [0, 0, 4, 0]));
      expect(found, `cells of ${cellM} m`).toEqual({ heightM: expect.closeTo(0.25, 12), x: expect.closeTo(4, 9), y: 0, zone: 0 });
    }
  });

  it('stands where the make-up layer runs out in the middle of the edge', () => {
    // Finish wanted from 0.20 up to 0.52 (8 %), deck 2 % from 0: room 0.10 + 0.06 x for a make-up of 0.05 to 0.22 m. At x = 2 it is
    // used up; from there the finish only follows the deck: 0.04 + 0.10 + 0.22 = 0.36 at x = 2, 0.40 at x = 4.
    const short = buildUp('short', [layer('light fill', 0.2, { rangeM: { min: 0.05, max: 0.22 } }), layer('substrate', 0.1)]);
    const finish = { kind: 'plane', x: 0, y: 0, z: 0.2, slopeX: 0.08, slopeY: 0 } as const;
    expect(least({ zones: [zone('Z', HERE, short, { finish })], levels: RISING }, edge('E', [0, 0, 4, 0]))?.heightM).toBeCloseTo(
      0.63 - 0.4,
      12,
    );
    // On a deck that falls by 2 % from 0.08 the finish is highest inside: wanted 0.26 + 0.06 x, room 0.08 + 0.08 x, used up (0.22) at
    // x = 1.75; there the deck is 0.045: 0.045 + 0.10 + 0.22 = 0.365, and beyond it falls with the deck.
    const falling = { spots: Float64Array.of(0, 0, 0.08, 4, 0, 0, 4, 2, 0, 0, 2, 0.08), breaklines: [] };
    const steep = { kind: 'plane', x: 0, y: 0, z: 0.26, slopeX: 0.06, slopeY: 0 } as const;
    for (const cellM of [0.25, 2]) {
      const found = least({ zones: [zone('Z', HERE, short, { finish: steep })], levels: falling, cellM }, edge('E', [0, 0, 4, 0]));
      expect(found?.heightM).toBeCloseTo(0.63 - 0.365, 12);
      expect(found?.x).toBeCloseTo(1.75, 9);
    }
  });

  it('is taken in the zones beside the edge only, on both sides', () => {
    // The high zone lies 2 m off; along x = 2 the higher of the two neighbours counts
    const zones = [
      zone('A', box(0, 0, 2, 2), MAKE_UP, { finish: level(0.3) }),
      zone('B', box(2, 0, 4, 2), MAKE_UP, { finish: level(0.5) }),
    ];
    expect(least({ zones }, edge('E', [0, 0, 0, 2]))).toMatchObject({ heightM: expect.closeTo(0.33, 12), zone: 0 });
    expect(least({ zones }, edge('E', [2, 0, 2, 2]))).toMatchObject({ heightM: expect.closeTo(0.13, 12), zone: 1 });
    // The end of the line touches B in one point, which is no stretch
    expect(least({ zones }, edge('E', [0, 0, 2, 0]))).toMatchObject({ heightM: expect.closeTo(0.33, 12), zone: 0 });
  });

  it('goes round an opening', () => {
    const opening = hole(1, 0.5, 2, 1.5);
    const zones = [zone('Z', holed(HERE, opening), MAKE_UP, { finish: level(0.4) })];
    const round = edge('E', [1, 0.5, 2, 0.5, 2, 1.5, 1, 1.5, 1, 0.5]);
    expect(least({ deck: holed(HERE, opening), zones }, round)?.heightM).toBeCloseTo(0.23, 12);
    // Also where the zone is drawn over the opening
    expect(least({ deck: holed(HERE, opening), zones: [zone('Z', HERE, MAKE_UP, { finish: level(0.4) })] }, round)?.heightM).toBeCloseTo(
      0.23,
      12,
    );
  });

  it('takes a zone that stops 5 cm short of the line, but none 30 cm away', () => {
    const from = (x: number) => [zone('Z', box(x, 0, 4, 2), MAKE_UP, { finish: level(0.4) })];
    expect(least({ zones: from(0.05) }, edge('E', [0, 0, 0, 2]))?.heightM).toBeCloseTo(0.23, 12);
    expect(least({ zones: from(0.3) }, edge('E', [0, 0, 0, 2]))).toBeNull();
  });

  it('gives the middle of a level stretch as its place', () => {
    const zones = [zone('Z', HERE, MAKE_UP, { finish: level(0.4) })];
    expect(least({ zones }, edge('E', [1, 0, 3, 0]))).toMatchObject({ x: expect.closeTo(2, 12), y: 0 });
  });
});

describe('edge.upstand', () => {
  const found = (one: EdgeInput, finishM: number) => {
    const on = evaluate(deck({ zones: [zone('Z', HERE, MAKE_UP, { finish: level(finishM) })], originM: [100, 200] }));
    return upstandFacts(on, rims([one]), [edgeUpstand(deckSite(on), one, EDGE_LIMITS)]);
  };
  const upstand = edge('E', [1, 0, 3, 0], { membraneTopM: 0.63 });
  const sill = edge('S', [1, 0, 3, 0], { kind: 'threshold', drainedChannel: true, membraneTopM: 0.53 });

  it('an upstand of exactly 150 mm and a drained sill of exactly 50 mm are enough', () => {
    expect(found(upstand, 0.48)).toEqual([]);
    expect(found(sill, 0.48)).toEqual([]);
  });

  it('30 mm too little stop, with place, zone and what is missing', () => {
    expect(found(sill, 0.51)).toEqual([
      {
        rule: 'edge.upstand',
        severity: 'stop',
        where: { zone: 'Z', at: [expect.closeTo(102, 12), 200] },
        value: expect.closeTo(20, 9),
        limit: 50,
        unit: 'mm',
        facts: { edge: 'S', kind: 'threshold', drained: 1, missingMm: expect.closeTo(30, 9), source: 'heights (assumed)' },
      },
    ]);
  });

  it('a sill without a drained channel needs as much as an upstand', () => {
    expect(found({ ...sill, drainedChannel: false }, 0.48)).toMatchObject([{ value: expect.closeTo(50, 9), limit: 150 }]);
  });

  it('a finish above the membrane has a height below nothing', () => {
    expect(found(upstand, 0.7)).toMatchObject([{ value: expect.closeTo(-70, 9), facts: { missingMm: expect.closeTo(220, 9) } }]);
  });
});

describe('upstand per cell', () => {
  it('along an edge that follows a rising deck: the middle half of each cell, nowhere else', () => {
    // Cells of 1 m, two steps each: heights 0.63 − 0.30 − 0.02 x at x = 0.25 and 0.75: the least of cell 0 is 0.315, of cell 3 0.255
    const on = evaluate(deck({ zones: [zone('Z', HERE, MAKE_UP)], levels: RISING }));
    const { heightMm: heights, isShort } = cellUpstands(deckSite(on), [{ ...edge('E', [0, 0, 4, 0]), requiredMm: 280 }]);
    // 280 mm are asked for: 275 and 255 are too little.
    expect(Array.from(isShort.subarray(0, 5))).toEqual([0, 0, 1, 1, 0]);
    expect(Array.from(heights.subarray(0, 4))).toEqual([315, 295, 275, 255].map((mm) => expect.closeTo(mm, 9)));
    expect(heights.subarray(4).every((mm) => Number.isNaN(mm))).toBe(true);
  });

  it('where two edges meet in a cell, the lower one', () => {
    const on = evaluate(deck({ zones: [zone('Z', HERE, MAKE_UP)] }));
    const { heightMm: heights, isShort } = cellUpstands(deckSite(on), [
      { ...edge('E', [0, 0, 4, 0]), requiredMm: 400 },
      { ...edge('F', [0, 0, 0, 2], { membraneTopM: 0.4 }), requiredMm: 50 },
    ]);
    // Edge F keeps its 50 mm with 100; E lacks 70 of its 400: the cell they share lacks something.
    expect(isShort[0]).toBe(1);
    expect(heights[0]).toBeCloseTo(100, 9);
    expect(heights[1]).toBeCloseTo(330, 9);
  });
});
