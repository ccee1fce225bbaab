/** A map of what differs between two scenes: the second less the first, cell by cell of the second's grid. */

import { CELL_NO_DATA, CELL_ON_DECK, type CellMap, type GridShape } from '../model/maps.ts';

/** A map with the grid it lies on and the origin of that grid in the file's coordinates [m]. */
export interface LaidMap {
  readonly map: CellMap;
  readonly grid: GridShape;
  readonly originM: readonly [number, number];
}

export interface DifferenceMap {
  /** After less before; NaN where either has no value. */
  readonly values: Float32Array;
  readonly flags: Uint8Array;
  readonly unit: string;
  /** The grids differ: values before were taken at the cell in which the middle of each cell lies. */
  readonly resampled: boolean;
  /** Greatest difference either way. */
  readonly most: number;
  readonly dataCells: number;
}

/**
 * Difference of two maps of one kind.
 * @param before - map of the first scene
 * @param after - map of the second scene, on whose grid the difference lies
 * @returns the difference
 * @throws RangeError where the maps tell of different things, or of classes, which have no difference
 */
export function differenceMap(before: LaidMap, after: LaidMap): DifferenceMap {
  if (before.map.kind !== after.map.kind || after.map.names !== null) {
    throw new RangeError(`differenceMap: two maps of one quantity are needed, found ${before.map.kind} and ${after.map.kind}`);
  }
  const { grid, originM, map } = after;
  const [shiftX, shiftY] = [originM[0] - before.originM[0], originM[1] - before.originM[1]];
  const values = new Float32Array(map.values.length).fill(Number.NaN);
  const flags = new Uint8Array(map.values.length);
  let most = 0;
  let dataCells = 0;
  for (let cell = 0; cell < values.length; cell++) {
    flags[cell] = map.flags[cell] & CELL_ON_DECK;
    const x = grid.x0M + ((cell % grid.columns) + 0.5) * grid.cellM + shiftX;
    const y = grid.y0M + (Math.floor(cell / grid.columns) + 0.5) * grid.cellM + shiftY;
    const value = map.values[cell] - valueAt(before, x, y);
    values[cell] = value;
    if (Number.isNaN(value)) {
      flags[cell] |= CELL_NO_DATA;
      continue;
    }
    dataCells++;
    most = Math.max(most, Math.abs(value));
  }
  return { values, flags, unit: map.unit, resampled: !sameGrid(before, after), most, dataCells };
}

function valueAt({ map, grid }: LaidMap, x: number, y: number): number {
  const column = Math.floor((x - grid.x0M) / grid.cellM);
  const row = Math.floor((y - grid.y0M) / grid.cellM);
  if (column < 0 || row < 0 || column >= grid.columns || row >= grid.rows) return Number.NaN;
  return map.values[row * grid.columns + column];
}

/** Cells of one lie exactly on cells of the other, whether or not one grid is larger. */
function sameGrid(a: LaidMap, b: LaidMap): boolean {
  const steps = [0, 1].map((axis) => {
    const corner = ({ originM, grid }: LaidMap) => originM[axis] + (axis === 0 ? grid.x0M : grid.y0M);
    return (corner(a) - corner(b)) / a.grid.cellM;
  });
  return a.grid.cellM === b.grid.cellM && steps.every((step) => Math.abs(step - Math.round(step)) < 1e-6);
}
