/** Maps per cell: values, flags and spreads of each kind, by hand. */

import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/core/evaluate.ts';
import { cellMap, DECK_MAP_KINDS, type DeckMapKind } from '../../src/core/maps.ts';
import { CELL_NO_DATA, CELL_ON_DECK, CELL_OVER, CELL_SHORT, CELL_UNCONFIRMED } from '../../src/model/maps.ts';
import { bay, block, box, boxRing, buildUp, deck, layer, place, region, stage, zone } from '../helpers/deck-builder.ts';

const GARDEN = buildUp('g', [
  layer('light fill', 0.2, { rangeM: { min: 0.1, max: 0.4 }, saturatedPerMKNm3: 10 }),
  layer('substrate', 0.3, { saturatedFixedKNm2: 5 }),
]);
const PAVING = buildUp('p', [layer('surfacing', 0.1, { saturatedFixedKNm2: 2 })]);

/**
 * 4 m × 1 m in cells of 1 m, so that a window is one cell. Garden on x 0 … 1.5 with its finish at 0.45: make-up 0.15 m,
 * load 5 + 1.5 = 6.5, depth 450 mm. Paving on 1.5 … 3: 2 kN/m², 100 mm. Bare from 3 on. Bay A to x = 2, bay B to 3, none beyond.
 */
const ON = evaluate(
  deck({
    deck: box(0, 0, 4, 1),
    bays: [bay('A', box(0, 0, 2, 1), { permanentKNm2: 5 }), bay('B', box(2, 0, 3, 1), { confirmed: false, stageKNm2: 4 })],
    zones: [
      zone('G', box(0, 0, 1.5, 1), GARDEN, { finish: { kind: 'plane', x: 0, y: 0, z: 0.45, slopeX: 0, slopeY: 0 } }),
      zone('P', box(1.5, 0, 3, 1), PAVING),
    ],
    stages: [
      stage('S1', [place(['light fill'])], { stockpiles: [{ id: 'H', heightM: 1, ring: boxRing(2, 0, 3, 1), kNm2: 6 }] }),
      stage('S2', [place(['substrate', 'surfacing'])]),
    ],
  }),
);

function expectMap(kind: DeckMapKind, at: number | null, wanted: readonly number[]) {
  const map = cellMap(ON, kind, at);
  wanted.forEach((value, cell) => {
    if (Number.isNaN(value)) expect(map.values[cell], `cell ${cell}`).toBeNaN();
    else expect(map.values[cell], `cell ${cell}`).toBeCloseTo(value, 5);
  });
  return map;
}

describe('the finished garden', () => {
  it('load: mixed cell by area, bare deck 0', () => {
    // Cell 1: half of 6.5, half of 2
    const map = expectMap('load', null, [6.5, 4.25, 2, 0]);
    expect([map.unit, map.classLimits]).toEqual(['kN/m²', null]);
    expect([map.min, map.mean, map.max]).toEqual([0, expect.closeTo(12.75 / 4, 9), 6.5]);
    expect([...map.flags]).toEqual([1, 1, 1, 1].map(() => CELL_ON_DECK));
  });

  it('utilisation: over, within, not confirmed, no bay', () => {
    const map = expectMap('utilisation', null, [1.3, 0.85, 0.2, Number.NaN]);
    expect(map.classLimits).toEqual([0.5, 0.8, 1, 1.2]);
    expect([...map.flags]).toEqual([CELL_ON_DECK | CELL_OVER, CELL_ON_DECK, CELL_ON_DECK | CELL_UNCONFIRMED, CELL_ON_DECK | CELL_NO_DATA]);
    expect([map.dataCells, map.noDataCells, map.noDataM2]).toEqual([3, 1, 1]);
    expect(map.mean).toBeCloseTo(2.35 / 3, 9);
  });

  it('utilisation is in the unit it names: shares without unit', () => {
    expect([cellMap(ON, 'utilisation', null).unit, cellMap(ON, 'worst-stage', null).unit]).toEqual(['-', '-']);
  });

  it('worst stage', () => {
    // A 5: stage 1 brings 1.5, 0.75; stage 2 all. B 4: stage 1 the heap of 6, stage 2 only 2.
    const map = expectMap('worst-stage', null, [1.3, 0.85, 1.5, Number.NaN]);
    expect(map.flags[2]).toBe(CELL_ON_DECK | CELL_OVER | CELL_UNCONFIRMED);
  });

  it('depth: mean of the zones of a cell, none on bare deck', () => {
    const map = expectMap('depth', null, [450, 275, 100, Number.NaN]);
    expect(map.flags[3]).toBe(CELL_ON_DECK | CELL_NO_DATA);
    expect(map.unit).toBe('mm');
  });

  it('make-up: only where a zone has such a layer', () => {
    const map = expectMap('make-up', null, [150, 150, Number.NaN, Number.NaN]);
    expect([map.min, map.mean, map.max]).toEqual([expect.closeTo(150, 9), expect.closeTo(150, 9), expect.closeTo(150, 9)]);
    expect(map.noDataCells).toBe(2);
  });

  it('finished level: bare deck ends at the membrane', () => {
    expect(expectMap('finished', null, [0.45, 0.275, 0.1, 0]).unit).toBe('m');
  });
});

describe('substrate, edges and falls', () => {
  it('substrate: mean over those zones of a cell that have any, nothing for paving', () => {
    const map = expectMap('substrate', null, [300, 300, Number.NaN, Number.NaN]);
    expect([map.unit, map.dataCells, map.noDataCells]).toEqual(['mm', 2, 2]);
    // Not laid before stage 2
    expectMap('substrate', 0, [0, 0, Number.NaN, Number.NaN]);
  });

  it('substrate that is the make-up layer itself has the thickness it takes', () => {
    const soil = buildUp('s', [layer('filter', 0.01), layer('substrate', 0.2, { rangeM: { min: 0.1, max: 0.6 } })]);
    const at = { kind: 'plane', x: 0, y: 0, z: 0.41, slopeX: 0, slopeY: 0 } as const;
    const on = evaluate(deck({ deck: box(0, 0, 1, 1), zones: [zone('S', box(0, 0, 1, 1), soil, { finish: at })] }));
    // 410 less 10 of filter
    expect(cellMap(on, 'substrate', null).values[0]).toBeCloseTo(400, 4);
  });

  it('upstand: membrane top less finish, only in the cells along the edge', () => {
    // Along y = 0 from x = 0 to 1, beside the garden finished at 0.45: 0.60 - 0.45
    const edge = {
      id: 'E',
      kind: 'upstand',
      drainedChannel: false,
      line: Float64Array.of(0, 0, 1, 0),
      membraneTopM: 0.6,
      requiredMm: 150,
    } as const;
    const map = cellMap(ON, 'upstand', null, [edge]);
    expect(map.values[0]).toBeCloseTo(150, 4);
    expect([map.unit, map.dataCells]).toEqual(['mm', 1]);
    expect(cellMap(ON, 'upstand', 0, [edge]).values[0]).toBeCloseTo(150, 4);
    expect(cellMap(ON, 'upstand', null).dataCells).toBe(0);
  });

  it('upstand: marks the cells that lack what their edge requires, and no other', () => {
    // 0.60 - 0.45 = 150 mm: enough for 150, too little for 151
    const edge = { id: 'E', kind: 'upstand', drainedChannel: false, line: Float64Array.of(0, 0, 1, 0), membraneTopM: 0.6 } as const;
    const shortOf = (requiredMm: number) =>
      [...cellMap(ON, 'upstand', null, [{ ...edge, requiredMm }]).flags].map((flags) => (flags & CELL_SHORT) !== 0);
    expect(shortOf(150)).not.toContain(true);
    expect(shortOf(151).indexOf(true)).toBe(0);
    expect(shortOf(151).filter(Boolean)).toHaveLength(1);
  });

  it('fall of the membrane in percent, nothing where the file gives no levels', () => {
    // 6 cm down over 4 m towards +x
    const levels = { spots: Float64Array.of(0, 0, 0.06, 4, 0, 0, 4, 1, 0, 0, 1, 0.06), breaklines: [] };
    const map = cellMap(evaluate(deck({ deck: box(0, 0, 4, 1), levels })), 'fall', null);
    for (const value of map.values) expect(value).toBeCloseTo(1.5, 5);
    expect(map.unit).toBe('%');
    expect(cellMap(ON, 'fall', null).dataCells).toBe(0);
  });
});

describe('a stage', () => {
  it('shows what is placed by then', () => {
    expectMap('load', 0, [1.5, 0.75, 6, 0]);
    expectMap('utilisation', 0, [0.3, 0.15, 1.5, Number.NaN]);
    // By area of the zones in the cell: half of 150, half of nothing
    expectMap('depth', 0, [150, 75, 0, Number.NaN]);
    expectMap('finished', 0, [0.15, 0.075, 0, 0]);
    expectMap('make-up', 0, [150, 150, Number.NaN, Number.NaN]);
    expectMap('load', 1, [6.5, 4.25, 2, 0]);
    // B is held against its 4 for building
    expectMap('utilisation', 1, [1.3, 0.85, 0.5, Number.NaN]);
  });

  it('that does not exist is refused', () => {
    expect(() => cellMap(ON, 'load', 2)).toThrow(RangeError);
    expect(() => cellMap(ON, 'load', -1)).toThrow(RangeError);
  });
});

describe('cells cut by the edge of the deck', () => {
  // Triangle y < x/2 on 2 m × 1 m: 1/4 of the first cell, 3/4 of the second.
  const on = evaluate(deck({ deck: region([0, 0], [2, 0], [2, 1]), objects: [block('P', boxRing(1, 0, 2, 1), 4)] }));

  it('count in the mean by their area', () => {
    const map = cellMap(on, 'load', null);
    expect([...map.values]).toEqual([0, 4]);
    expect(map.mean).toBeCloseTo(3, 9);
  });

  it('count as without data by their area', () => {
    const map = cellMap(on, 'depth', null);
    expect(map.noDataM2).toBeCloseTo(1, 9);
    expect([map.dataCells, map.noDataCells]).toEqual([0, 2]);
    expect([map.min, map.mean, map.max]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
  });
});

it('exactly at the limit is not over it', () => {
  const on = evaluate(deck({ deck: box(0, 0, 1, 1), bays: [bay('B', box(0, 0, 1, 1))], objects: [block('P', boxRing(0, 0, 1, 1), 10)] }));
  expect([...cellMap(on, 'utilisation', null).flags]).toEqual([CELL_ON_DECK]);
});

it('a limit in all counts permanent and imposed, the greater of the two utilisations shows', () => {
  const of = (limits: object) =>
    cellMap(
      evaluate(
        deck({
          deck: box(0, 0, 1, 1),
          bays: [bay('B', box(0, 0, 1, 1), limits)],
          zones: [zone('P', box(0, 0, 1, 1), PAVING, { imposedKNm2: 4 })],
        }),
      ),
      'utilisation',
      null,
    ).values[0];
  // Permanent 2, imposed 4: in all 6 of 12; with a permanent limit of 2.5: 0.8
  expect(of({ permanentKNm2: null, totalKNm2: 12 })).toBeCloseTo(0.5, 6);
  expect(of({ permanentKNm2: 2.5, totalKNm2: 12 })).toBeCloseTo(0.8, 6);
});

it('a cell outside the deck has no flags and no value', () => {
  const on = evaluate(deck({ deck: region([0, 0], [2, 0], [2, 2]) }));
  for (const kind of DECK_MAP_KINDS) {
    const map = cellMap(on, kind, null);
    // Cell 2 lies wholly above the diagonal.
    expect([map.flags[2], map.values[2]], kind).toEqual([0, Number.NaN]);
  }
});
