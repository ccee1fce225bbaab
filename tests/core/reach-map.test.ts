/** The map of reach on a small deck: what has no value, and the band along open edges. */

import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/core/evaluate.ts';
import { reachMap } from '../../src/core/reach-map.ts';
import { CELL_EDGE, CELL_NO_DATA, CELL_ON_DECK, REACH_CLASSES } from '../../src/model/maps.ts';
import type { AccessInput } from '../../src/model/route-input.ts';
import { box, deck, loaded, place, stage, zone } from '../helpers/deck-builder.ts';

/** 10 m × 6 m in cells of 1 m, its left half a bed. */
const ON = evaluate(
  deck({
    deck: box(0, 0, 10, 6),
    zones: [zone('bed', box(0, 0, 5, 6), loaded(2))],
    stages: [stage('S1', []), stage('S2', [place(['substrate'])])],
  }),
);
const crane: AccessInput = { id: 'C', kind: 'crane', x: 0, y: 3, reachM: 100 };

describe('has no value', () => {
  it.each([
    ['in the finished garden', null, [crane]],
    ['where the file names no access', 1, []],
  ] as const)('%s', (_, at, access) => {
    const map = reachMap(ON, at, access);
    expect([map.dataCells, map.noDataCells, map.noDataM2, map.classM2]).toEqual([0, 60, 60, [0, 0, 0, 0]]);
    expect(map.flags.every((flags) => (flags & CELL_NO_DATA) !== 0)).toBe(true);
  });
});

it('tells the class of each cell and marks the cells within 2 m of an edge, in stages alone', () => {
  const map = reachMap(ON, 1, [crane]);
  expect([map.names, map.classM2]).toEqual([REACH_CLASSES, [0, 30, 0, 30]]);
  expect([map.values[0], map.values[9]].map((value) => REACH_CLASSES[value!])).toEqual(['lifted', 'idle']);
  // Centres from 2.5 on are clear of the edge: 6 × 2 cells.
  const flags = [...map.flags];
  expect(flags.filter((of) => of === CELL_ON_DECK)).toHaveLength(12);
  expect(flags.filter((of) => of === (CELL_ON_DECK | CELL_EDGE))).toHaveLength(48);
  expect([...reachMap(ON, null, [crane]).flags].some((of) => (of & CELL_EDGE) !== 0)).toBe(false);
});

it('refuses a stage that does not exist', () => {
  expect(() => reachMap(ON, 2, [crane])).toThrow(RangeError);
});
