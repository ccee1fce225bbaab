/** The map as a table: which cells it lists, first those one has to look at. */

import {
  CELL_EDGE,
  CELL_NO_DATA,
  CELL_ON_DECK,
  CELL_OVER,
  CELL_SHORT,
  CELL_UNCONFIRMED,
  type CellMap,
  type MapKind,
} from '../../model/maps.ts';

/** Maps whose low values are the ones to look at. */
const LOW_FIRST: ReadonlySet<MapKind> = new Set<MapKind>(['substrate', 'upstand', 'fall']);

/** Whether a map's table begins with the lowest values. */
export function isLowFirst(kind: MapKind): boolean {
  return LOW_FIRST.has(kind);
}

export interface ListedCell {
  readonly cell: number;
  readonly value: number;
  readonly over: boolean;
  readonly unconfirmed: boolean;
  /** Below what is required there. */
  readonly short: boolean;
  /** In the band along open edges. */
  readonly atEdge: boolean;
  /** Bearing of the fall [°]; null for other maps and where level. */
  readonly directionDeg: number | null;
}

export interface CellList {
  readonly cells: readonly ListedCell[];
  /** How many cells there were to choose from. */
  readonly of: number;
}

/** Cells with a value, in bay `bay` (an index of `bayAt`) or, for null, everywhere; the `atMost` highest, or lowest where low is the matter. */
export function listCells(map: CellMap, bayAt: Int16Array, bay: number | null, atMost: number): CellList {
  const eligible: number[] = [];
  for (let cell = 0; cell < map.values.length; cell++) {
    const flags = map.flags[cell] ?? 0;
    if ((flags & CELL_ON_DECK) === 0 || (flags & CELL_NO_DATA) !== 0) continue;
    if (Number.isNaN(map.values[cell]) || (bay !== null && bayAt[cell] !== bay)) continue;
    eligible.push(cell);
  }
  const sign = isLowFirst(map.kind) ? -1 : 1;
  const rank = (cell: number) => (map.names === null ? sign * (map.values[cell] as number) : classRank(map, map.values[cell] as number));
  // Sorting plain numbers first keeps the whole of a large deck out of the slower sort with a comparison.
  const sorted = Float32Array.from(eligible, rank).sort();
  const least = sorted[Math.max(0, sorted.length - atMost)] ?? 0;
  const cells = eligible
    .filter((cell) => rank(cell) >= least)
    .sort((a, b) => rank(b) - rank(a) || a - b)
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
    short: (flags & CELL_SHORT) !== 0,
    atEdge: (flags & CELL_EDGE) !== 0,
    directionDeg: directionOf(map, cell),
  };
}

function directionOf({ directionDeg }: CellMap, cell: number): number | null {
  const bearing = directionDeg?.[cell];
  return bearing === undefined || Number.isNaN(bearing) ? null : bearing;
}

/** Of reach what is not reached comes first and ground that nothing is brought to last; other classes in their order. */
function classRank({ kind, names }: Pick<CellMap, 'kind' | 'names'>, index: number): number {
  if (kind !== 'reach') return -index;
  return names?.[index] === 'idle' ? -1 : index;
}
