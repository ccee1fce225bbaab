/** Maps as legend, plan and table: classes, runs of equal cells, and the highest cells. */

import { describe, expect, it } from 'vitest';
import { CELL_NO_DATA, CELL_ON_DECK, CELL_OVER, CELL_UNCONFIRMED, type CellMap } from '../../src/model/maps.ts';
import { listCells } from '../../src/ui/facts/cell-list.ts';
import { classOfCell, mapClasses } from '../../src/ui/facts/map-classes.ts';
import { planRuns } from '../../src/ui/facts/plan-runs.ts';
import { utilisationClass } from '../../src/ui/facts/utilisation.ts';

const GRID = { columns: 4, rows: 2, cellM: 1, x0M: 0, y0M: 0 };
const DECK = CELL_ON_DECK;

function map(values: readonly number[], flags: readonly number[], classLimits: readonly number[] | null): CellMap {
  const known = values.filter((value) => !Number.isNaN(value));
  return {
    kind: classLimits === null ? 'load' : 'utilisation',
    stage: null,
    directionDeg: null,
    values: Float32Array.from(values),
    flags: Uint8Array.from(flags),
    unit: classLimits === null ? 'kN/m²' : '%',
    classLimits,
    min: Math.min(...known),
    mean: 0,
    max: Math.max(...known),
    noDataM2: 0,
    noDataCells: 0,
    names: null,
    classM2: null,
    dataCells: known.length,
  };
}

const LIMITS = [0.5, 0.8, 1, 1.2];
const UTILISATION = map(
  [0.5, 0.51, 1, 1.01, 1.3, Number.NaN, 0.2, 0.2],
  [DECK, DECK, DECK, DECK | CELL_OVER, DECK | CELL_OVER, DECK | CELL_NO_DATA, DECK | CELL_UNCONFIRMED, 0],
  LIMITS,
);

describe('classes', () => {
  it('hold their upper limit: 100 % is at the limit, not over', () => {
    expect([0, 1, 2, 3, 4].map((cell) => classOfCell(UTILISATION, cell))).toEqual([0, 1, 2, 3, 4]);
    expect([0.5, 0.500001, 0.8, 1, 1.0001, 1.2, 1.21].map(utilisationClass)).toEqual([0, 1, 1, 2, 3, 3, 4]);
  });

  it('are none off the deck, and not a colour of the scale without a value or a confirmed limit', () => {
    expect([5, 6, 7].map((cell) => classOfCell(UTILISATION, cell))).toEqual(['no data', 'unconfirmed', null]);
  });

  it('of utilisation are hatched above the limit, and the last is open', () => {
    expect(mapClasses(UTILISATION).map(({ from, to, hatched }) => [from, to, hatched])).toEqual([
      [0, 0.5, false],
      [0.5, 0.8, false],
      [0.8, 1, false],
      [1, 1.2, true],
      [1.2, null, true],
    ]);
  });

  it('of a quantity are seven equal steps from least to greatest', () => {
    const classes = mapClasses(map([2, 16], [DECK, DECK], null));
    expect(classes).toHaveLength(7);
    // by hand: 14 kN/m² in seven steps of 2
    expect(classes.map(({ from, to }) => [from, to])).toEqual([2, 4, 6, 8, 10, 12, 14].map((from) => [from, from + 2]));
    expect(new Set(classes.map(({ colour }) => colour)).size).toBe(7);
  });

  it('are one where all cells are alike, and none where there is no value', () => {
    expect(mapClasses(map([3, 3], [DECK, DECK], null))).toMatchObject([{ from: 3, to: 3 }]);
    expect(mapClasses(map([], [], null))).toEqual([]);
    // 100 mm of water weigh the same everywhere, whatever rounding makes of the last digit.
    const noisy = { ...map([0.981, 0.981], [DECK, DECK], null), min: 0.981, max: 0.981 + 1e-9 };
    expect(mapClasses(noisy)).toHaveLength(1);
  });
});

describe('planRuns', () => {
  it('joins equal neighbours of a row, not across rows, and leaves out what is off the deck', () => {
    const on = map([1, 1, 8, 8, 8, 8, 8, 1], [DECK, DECK, DECK, DECK, DECK, 0, DECK, DECK], null);
    expect(planRuns(on, GRID)).toEqual([
      { row: 0, firstColumn: 0, columns: 2, of: 0 },
      { row: 0, firstColumn: 2, columns: 2, of: 6 },
      { row: 1, firstColumn: 0, columns: 1, of: 6 },
      { row: 1, firstColumn: 2, columns: 1, of: 6 },
      { row: 1, firstColumn: 3, columns: 1, of: 0 },
    ]);
  });
});

describe('listCells', () => {
  const BAYS = Int16Array.from([0, 0, 0, 1, 1, 1, 1, -1]);

  it('lists the highest first and says how many there are', () => {
    const list = listCells(UTILISATION, BAYS, null, 3);
    expect(list.of).toBe(6);
    expect(list.cells.map(({ cell }) => cell)).toEqual([4, 3, 2]);
    expect(list.cells.map(({ over }) => over)).toEqual([true, true, false]);
  });

  it('lists the cells of one bay, with what is not confirmed marked', () => {
    const list = listCells(UTILISATION, BAYS, 1, 200);
    expect(list.cells.map(({ cell, unconfirmed }) => [cell, unconfirmed])).toEqual([
      [4, false],
      [3, false],
      [6, true],
    ]);
    expect(list.of).toBe(3);
  });

  it('keeps to its number where many cells are equal', () => {
    const level = map([2, 2, 2, 2, 2, 2, 2, 2], Array<number>(8).fill(DECK), null);
    expect(listCells(level, BAYS, null, 5).cells.map(({ cell }) => cell)).toEqual([0, 1, 2, 3, 4]);
  });
});

describe('maps whose low values matter', () => {
  it('list the lowest first, with the bearing of the fall', () => {
    const falls: CellMap = {
      ...map([2, 0.5, 1, 3], [DECK, DECK, DECK, DECK], null),
      kind: 'fall',
      directionDeg: Float32Array.of(90, 180, Number.NaN, 0),
    };
    const { cells } = listCells(falls, new Int16Array(4), null, 3);
    expect(cells.map((cell) => cell.value)).toEqual([0.5, 1, 2]);
    expect(cells.map((cell) => cell.directionDeg)).toEqual([180, null, 90]);
  });
});
