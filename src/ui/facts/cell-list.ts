/** The map as a table: which cells it lists, highest value first. */

import { CELL_NO_DATA, CELL_ON_DECK, CELL_OVER, CELL_UNCONFIRMED, type CellMap } from '../../model/maps.ts';

export interface ListedCell {
  readonly cell: number;
  readonly value: number;
  readonly over: boolean;
  readonly unconfirmed: boolean;
}

export interface CellList {
  readonly cells: readonly ListedCell[];
  /** How many cells there were to choose from. */
  readonly of: number;
}

/** Cells with a value, in bay `bay` (an index of `bayAt`) or, for null, everywhere; the `atMost` highest. */
export function listCells(map: CellMap, bayAt: Int16Array, bay: number | null, atMost: number): CellList {
  const eligible: number[] = [];
  for (let cell = 0; cell < map.values.length; cell++) {
    const flags = map.flags[cell] ?? 0;
    if ((flags & CELL_ON_DECK) === 0 || (flags & CELL_NO_DATA) !== 0) continue;
    if (Number.isNaN(map.values[cell]) || (bay !== null && bayAt[cell] !== bay)) continue;
    eligible.push(cell);
  }
  const value = (cell: number) => map.values[cell] as number;
  // Sorting plain numbers first keeps the whole of a large deck out of the slower sort with a comparison.
  const sorted = Float32Array.from(eligible, value).sort();
  const least = sorted[Math.max(0, sorted.length - atMost)] ?? 0;
  const cells = eligible
    .filter((cell) => value(cell) >= least)
    .sort((a, b) => value(b) - value(a) || a - b)
    .slice(0, atMost);
  return { cells: cells.map((cell) => listed(map, cell)), of: eligible.length };
}

function listed(map: CellMap, cell: number): ListedCell {
  const flags = map.flags[cell] ?? 0;
  return {
    cell,
    value: map.values[cell] as number,
    over: (flags & CELL_OVER) !== 0,
    unconfirmed: (flags & CELL_UNCONFIRMED) !== 0,
  };
}
