/**
 * The ground that water runs on: levels as whole hundredths of a millimetre, with a closed cell around the grid so that
 * no kernel has to look where the grid ends. Whole numbers make the order of filling exact and the same on every machine.
 */

import type { GridShape } from '../../model/maps.ts';

/** Levels are whole multiples of it [m]. */
export const UNIT_M = 1e-5;

/** Level of closed cells: above all others, low enough to subtract. */
export const CLOSED = 2 ** 30;

export interface WaterTerrain {
  readonly cellM: number;
  /** Columns of the grid. */
  readonly columns: number;
  readonly rows: number;
  /** Cells of a row with the closed ones at both ends. */
  readonly width: number;
  /** 1 where water can be, 0 elsewhere. */
  readonly open: Uint8Array;
  /** Level above `baseM` in units; `CLOSED` where not open. */
  readonly level: Int32Array;
  /** Level of the unit 0 [m]. */
  readonly baseM: number;
}

/** A place where water leaves the deck once it stands at `levelM`. A level at or below the cell's own drains the cell itself. */
export interface WaterExit {
  /** Cell of the terrain (`terrainCell`). */
  readonly cell: number;
  readonly levelM: number;
  /** Which sink it belongs to, from 0. */
  readonly sink: number;
}

/**
 * Lays the terrain.
 * @param grid - grid [m]
 * @param deckShare - share of each cell that is deck; water can be wherever there is any [-]
 * @param levelsM - level at each cell's centre [m]
 * @returns terrain [m]
 * @throws RangeError where a level is missing, or levels lie more than 10 km apart
 * @source none: arithmetic
 */
export function layTerrain(grid: GridShape, deckShare: Float64Array, levelsM: Float64Array): WaterTerrain {
  const { columns, rows, cellM } = grid;
  const width = columns + 2;
  const open = new Uint8Array(width * (rows + 2));
  const level = new Int32Array(open.length).fill(CLOSED);
  let baseM = Infinity;
  let highM = -Infinity;
  for (let cell = 0; cell < deckShare.length; cell++) {
    if (deckShare[cell] === 0) continue;
    if (!Number.isFinite(levelsM[cell])) throw new RangeError(`layTerrain: levels must be numbers, got ${levelsM[cell]} at cell ${cell}`);
    if (levelsM[cell] < baseM) baseM = levelsM[cell];
    if (levelsM[cell] > highM) highM = levelsM[cell];
  }
  if (highM - baseM > 1e4) throw new RangeError(`layTerrain: levels must lie within 10 km, got ${baseM} to ${highM} m`);
  for (let row = 0; row < rows; row++) {
    const from = row * columns;
    const to = (row + 1) * width + 1;
    for (let column = 0; column < columns; column++) {
      if (deckShare[from + column] === 0) continue;
      open[to + column] = 1;
      level[to + column] = Math.round((levelsM[from + column] - baseM) / UNIT_M);
    }
  }
  return { cellM, columns, rows, width, open, level, baseM: baseM === Infinity ? 0 : baseM };
}

/**
 * A cell of the grid in the terrain.
 * @param terrain - terrain [-]
 * @param cell - cell of the grid [-]
 * @returns cell of the terrain [-]
 * @source none: arithmetic
 */
export function terrainCell(terrain: WaterTerrain, cell: number): number {
  const column = cell % terrain.columns;
  return ((cell - column) / terrain.columns + 1) * terrain.width + column + 1;
}

/**
 * A cell of the terrain in the grid.
 * @param terrain - terrain [-]
 * @param cell - cell of the terrain, not one of those around the grid [-]
 * @returns cell of the grid [-]
 * @source none: arithmetic
 */
export function gridCell(terrain: WaterTerrain, cell: number): number {
  const column = cell % terrain.width;
  return ((cell - column) / terrain.width - 1) * terrain.columns + column - 1;
}

/**
 * Values of the grid on the terrain, 0 around it.
 * @param terrain - terrain [-]
 * @param values - per cell of the grid, any unit [m²]
 * @returns per cell of the terrain [m²]
 * @source none: arithmetic
 */
export function ontoTerrain({ columns, rows, width, open }: WaterTerrain, values: Float64Array): Float64Array {
  const out = new Float64Array(open.length);
  for (let row = 0; row < rows; row++) out.set(values.subarray(row * columns, (row + 1) * columns), (row + 1) * width + 1);
  return out;
}

/**
 * A level in units of the terrain.
 * @param terrain - terrain [m]
 * @param levelM - level [m]
 * @returns nearest whole unit, held between far below and just under the closed cells [-]
 * @source none: arithmetic
 */
export function unitsOf(terrain: WaterTerrain, levelM: number): number {
  return Math.max(-CLOSED, Math.min(CLOSED - 1, Math.round((levelM - terrain.baseM) / UNIT_M)));
}

/**
 * Steps to the eight neighbours: right, up, left, down, then the diagonals between them, anticlockwise.
 * @param width - cells of a row of the terrain [-]
 * @returns eight differences of cell numbers [-]
 * @source none: geometry
 */
export function stepsAround(width: number): Int32Array {
  return Int32Array.of(1, width, -1, -width, width + 1, width - 1, -width - 1, -width + 1);
}

/**
 * Whether water passes from a cell to a neighbour: not diagonally where both cells beside that step are closed.
 * @param open - open cells [-]
 * @param steps - steps to the neighbours [-]
 * @param cell - cell [-]
 * @param k - which neighbour, 0 … 7 [-]
 * @returns true if it passes [-]
 * @source none: geometry
 */
export function passes(open: Uint8Array, steps: Int32Array, cell: number, k: number): boolean {
  if (open[cell + steps[k]] === 0) return false;
  return k < 4 || (open[cell + steps[k - 4]] | open[cell + steps[(k - 3) & 3]]) !== 0;
}
