/** Falls of membrane and paving: areas and places by hand. */

import { describe, expect, it } from 'vitest';
import { deckSite, surfaceFacts } from '../../../src/core/edge-facts.ts';
import { evaluate } from '../../../src/core/evaluate.ts';
import { cellFalls, fallOf } from '../../../src/core/rules/falls.ts';
import type { DeckInput, LevelNet, Region, ZoneInput } from '../../../src/model/deck-input.ts';
import { bay, box, buildUp, deck, hole, holed, layer, zone } from '../../helpers/deck-builder.ts';
import { EDGE_LIMITS, rims } from './rims.ts';

const PAVED = buildUp('paved', [
  layer('light fill', 0.2, { rangeM: { min: 0.05, max: 2 } }),
  layer('bedding', 0.04),
  layer('surfacing', 0.06),
]);

/** A deck of 12 m × 4 m whose membrane rises from x = 0 by so many percent. */
function rising(percent: number, over: Partial<DeckInput> = {}): DeckInput {
  const rise = (12 * percent) / 100;
  return whole({ spots: Float64Array.of(0, 0, 0, 12, 0, rise, 12, 4, rise, 0, 4, 0), breaklines: [] }, over);
}

function whole(levels: LevelNet | null, over: Partial<DeckInput> = {}): DeckInput {
  const all: Region = box(0, 0, 12, 4);
  return deck({ deck: all, levels, bays: [bay('B', all)], ...over });
}

const falls = (input: DeckInput) => surfaceFacts(evaluate(input), rims([]), EDGE_LIMITS).filter((fact) => fact.rule === 'level.fall');

describe('level.fall of the membrane', () => {
  it.each<[string, number, string | undefined]>([
    ['level', 0, 'check'],
    ['1 : 80', 1.25, 'check'],
    ['just under the least', 1.499, 'check'],
    ['the least, under the recommended', 1.5, 'note'],
    ['2 %', 2, undefined],
    ['1 : 40', 2.5, undefined],
  ])('%s', (_, percent, severity) => {
    const found = falls(rising(percent));
    expect(found.map((fact) => fact.severity)).toEqual(severity ? [severity] : []);
    if (severity) {
      expect(found[0]).toMatchObject({ value: expect.closeTo(percent, 9), unit: '%', where: { at: expect.any(Array) } });
      // 12 · 4, one place
      expect(found[0].facts).toMatchObject({
        surface: 'membrane',
        areaM2: expect.closeTo(48, 9),
        places: 1,
        largestM2: expect.closeTo(48, 9),
      });
    }
  });

  it('takes openings off, whatever the cells', () => {
    for (const cellM of [0.23, 1, 2]) {
      // 48 − 2 · 1.5
      const [fact] = falls(rising(1, { deck: holed(box(0, 0, 12, 4), hole(3, 1, 5, 2.5)), cellM }));
      expect(fact.facts.areaM2, `${cellM} m`).toBeCloseTo(45, 9);
    }
  });

  it('tells the largest of two places that do not touch', () => {
    // 1 % over the first 5 m, 3 % between, 0.5 % over the last 2 m; origin (100, 200)
    const across = (x: number, z: number) => [x, 0, z, x, 4, z];
    const levels = { spots: Float64Array.of(...across(0, 0), ...across(5, 0.05), ...across(10, 0.2), ...across(12, 0.21)), breaklines: [] };
    const [fact] = falls(whole(levels, { originM: [100, 200] }));
    expect(fact).toMatchObject({ value: expect.closeTo(0.5, 9), limit: 1.5 });
    // 5 · 4 and 2 · 4
    expect(fact.facts).toMatchObject({
      areaM2: expect.closeTo(28, 9),
      places: 2,
      largestM2: expect.closeTo(20, 9),
      mostPercent: expect.closeTo(1, 9),
    });
    expect(fact.where.at![0]).toBeGreaterThan(100);
    expect(fact.where.at![0]).toBeLessThan(105);
  });

  it('a valley of two steep planes is no area', () => {
    // 0.08 over 6 m on both sides of a level valley line: 2 % of 6 m is 0.12
    const levels = {
      spots: Float64Array.of(0, 0, 0.12, 12, 0, 0.12, 12, 4, 0.12, 0, 4, 0.12),
      breaklines: [Float64Array.of(6, 0, 0, 6, 4, 0)],
    };
    expect(falls(whole(levels))).toEqual([]);
  });

  it('says nothing where the file gives no levels', () => {
    expect(falls(whole(null))).toEqual([]);
  });
});

describe('level.fall of paving', () => {
  const HERE = box(0, 0, 12, 4);
  const plane = (slopeX: number): ZoneInput['finish'] => ({ kind: 'plane', x: 0, y: 0, z: 1, slopeX, slopeY: 0 });
  const paved = (of: Partial<ZoneInput>, build = PAVED) => falls(rising(2.5, { zones: [zone('Z', HERE, build, of)] }));

  it('under the least is a note with its zone', () => {
    expect(paved({ finish: plane(0.01) })).toEqual([
      {
        rule: 'level.fall',
        severity: 'note',
        where: { zone: 'Z', at: [expect.any(Number), expect.any(Number)] },
        value: expect.closeTo(1, 9),
        limit: 1.5,
        unit: '%',
        facts: {
          surface: 'paving',
          areaM2: expect.closeTo(48, 9),
          largestM2: expect.closeTo(48, 9),
          places: 1,
          mostPercent: expect.closeTo(1, 9),
          source: 'falls (assumed)',
        },
      },
    ]);
  });

  it('1.5 % is enough', () => {
    expect(paved({ finish: plane(-0.015) })).toEqual([]);
  });

  it('a finish that follows the membrane is told there, if at all', () => {
    expect(paved({})).toEqual([]);
  });

  it('gravel and planting may lie level', () => {
    const gravel = buildUp('gravel', [layer('light fill', 0.2, { rangeM: { min: 0.05, max: 2 } }), layer('surfacing', 0.06)]);
    expect(paved({ finish: plane(0) }, gravel)).toEqual([]);
  });

  it('a finish by spots: the flat part of it', () => {
    // Level over the first 4 m, 2 % after: 4 · 4
    const net = { spots: Float64Array.of(0, 0, 1, 4, 0, 1, 12, 0, 1.16, 0, 4, 1, 4, 4, 1, 12, 4, 1.16), breaklines: [] };
    expect(paved({ finish: { kind: 'net', net } })).toMatchObject([{ value: 0, facts: { areaM2: expect.closeTo(16, 9) } }]);
  });
});

describe('fall per cell', () => {
  it.each([
    // Rises towards +x: water runs to −x, bearing 270
    ['towards −x', 0.02, 0, 2, 270],
    ['towards +y', 0, -0.015, 1.5, 0],
    // 3 %, 4 % and 5 % make a right triangle; water runs to −x, −y: 180 + atan(3/4)
    ['aslant', 0.03, 0.04, 5, 180 + (Math.atan2(3, 4) * 180) / Math.PI],
  ])('%s', (_, ...[slopeX, slopeY, percent, bearingDeg]) => {
    expect(fallOf(slopeX, slopeY)).toEqual({ percent: expect.closeTo(percent, 12), bearingDeg: expect.closeTo(bearingDeg, 9) });
  });

  it('a triangle (0, 0, 10.00), (10, 0, 10.20), (0, 8, 9.84): rises 0.02 along x, falls 0.02 along y', () => {
    // √(0.02² + 0.02²) = 2.82843 %, towards −x and +y: bearing 315; cell 2 · 12 + 3 has its centre at (3.5, 2.5), inside
    const levels = { spots: Float64Array.of(0, 0, 10, 10, 0, 10.2, 0, 8, 9.84), breaklines: [] };
    const { percent, bearingDeg } = cellFalls(deckSite(evaluate(whole(levels))));
    expect(percent[2 * 12 + 3]).toBeCloseTo(2.82843, 5);
    expect(bearingDeg[2 * 12 + 3]).toBeCloseTo(315, 9);
    // (9.5, 3.5) lies beyond the line from (10, 0) to (0, 8)
    expect(percent[3 * 12 + 9]).toBeNaN();
  });

  it('two planes: 2 % to the east, 1 % to the west of the valley; nothing off the deck', () => {
    const levels = {
      spots: Float64Array.of(0, 0, 0.12, 12, 0, 0.06, 12, 4, 0.06, 0, 4, 0.12),
      breaklines: [Float64Array.of(6, 0, 0, 6, 4, 0)],
    };
    const on = evaluate(whole(levels, { deck: holed(box(0, 0, 12, 4), hole(0, 0, 1, 1)), cellM: 1 }));
    const { percent, bearingDeg } = cellFalls(deckSite(on));
    expect(percent[0]).toBeNaN();
    expect(percent[12 + 2]).toBeCloseTo(2, 9);
    expect(bearingDeg[12 + 2]).toBeCloseTo(90, 9);
    expect(percent[12 + 9]).toBeCloseTo(1, 9);
    expect(bearingDeg[12 + 9]).toBeCloseTo(270, 9);
    // Every cell of the deck but the one of the opening
    expect(percent.filter((value) => !Number.isNaN(value)).length).toBe(47);
  });

  it('is 0 without a direction where level, and unknown without levels', () => {
    const level = cellFalls(deckSite(evaluate(rising(0))));
    expect([level.percent[5], level.bearingDeg[5]]).toEqual([0, Number.NaN]);
    expect(cellFalls(deckSite(evaluate(whole(null)))).percent[5]).toBeNaN();
  });
});
