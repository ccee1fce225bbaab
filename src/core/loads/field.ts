/** Load of the zones on every cell, from two coefficients per zone and the make-up thickness of each cell. */

import type { GridShape } from '../../model/maps.ts';
import type { CellBlock } from '../geometry/grid.ts';
import type { RegionCells } from '../geometry/region-cells.ts';
import type { ZoneCells } from '../geometry/zone-cells.ts';
import type { Affine } from '../layers/coefficients.ts';

/** What lies on the cells: owners, and the make-up thickness of each. */
export interface LayerField {
  readonly grid: GridShape;
  readonly zones: ZoneCells;
  /** Per cell with one owner: make-up thickness [m]. */
  readonly makeUpM: Float64Array;
  /** Per entry of the mixed cells: make-up thickness [m]. */
  readonly entryMakeUpM: Float64Array;
}

/**
 * Writes each zone's make-up thicknesses to its cells.
 * @param field - owners; its arrays of thicknesses are written [m]
 * @param zone - index of the zone [-]
 * @param laid - the zone's cells [-]
 * @param thicknessM - per cell of the zone, or one value for all [m]
 * @returns number of cells written [-]
 * @source none: arithmetic
 */
export function writeMakeUp(field: LayerField, zone: number, laid: RegionCells, thicknessM: Float64Array): number {
  const { owner } = field.zones;
  const single = thicknessM.length === 1;
  for (let i = 0; i < laid.cells.length; i++) {
    const cell = laid.cells[i];
    if (owner[cell] === zone) field.makeUpM[cell] = thicknessM[single ? 0 : i];
  }
  const { entryZone, entryPosition } = field.zones;
  for (let e = 0; e < entryZone.length; e++) {
    if (entryZone[e] === zone) field.entryMakeUpM[e] = thicknessM[single ? 0 : entryPosition[e]];
  }
  return laid.cells.length;
}

/** Coefficients of one quantity, one pair per zone. */
export interface ZoneCoefficients {
  readonly fixed: Float64Array;
  readonly perM: Float64Array;
}

/**
 * Coefficients as arrays.
 * @param zones - one affine function per zone [kN/m²]
 * @returns the same as two arrays [kN/m²]
 * @source none: arithmetic
 */
export function coefficientArrays(zones: readonly Affine[]): ZoneCoefficients {
  return { fixed: Float64Array.from(zones, (z) => z.fixed), perM: Float64Array.from(zones, (z) => z.perM) };
}

/**
 * Load of the zones on each cell of a block, per square metre of the whole cell.
 * @param field - owners and make-up thicknesses [m]
 * @param zones - coefficients per zone [kN/m²]
 * @param block - cells to write [-]
 * @param out - receives the loads, whole grid [kN/m²]
 * @returns the same array [kN/m²]
 * @source none: arithmetic; contract.md, section 2, Area load
 */
export function zoneLoads(field: LayerField, zones: ZoneCoefficients, block: CellBlock, out: Float64Array): Float64Array {
  const { columns } = field.grid;
  const { runs, rowRuns } = field.zones;
  for (let row = block.row0; row < block.row1; row++) {
    const first = row * columns + block.column0;
    const end = row * columns + block.column1;
    out.fill(0, first, end);
    for (let r = rowRuns[row]; r < rowRuns[row + 1]; r++) {
      const from = Math.max(first, runs[3 * r]);
      const to = Math.min(end, runs[3 * r + 1]);
      if (from >= to) continue;
      const zone = runs[3 * r + 2];
      if (zones.perM[zone] === 0) out.fill(zones.fixed[zone], from, to);
      else affineRun(field.makeUpM, zones.fixed[zone], zones.perM[zone], out, from, to);
    }
  }
  const { mixed, start, entryZone, entryShare } = field.zones;
  const last = block.row1 * columns;
  for (let i = firstAtLeast(mixed, block.row0 * columns); i < mixed.length && mixed[i] < last; i++) {
    const column = mixed[i] % columns;
    if (column < block.column0 || column >= block.column1) continue;
    let sum = 0;
    for (let e = start[i]; e < start[i + 1]; e++) {
      const zone = entryZone[e];
      sum += entryShare[e] * (zones.fixed[zone] + zones.perM[zone] * field.entryMakeUpM[e]);
    }
    out[mixed[i]] = sum;
  }
  return out;
}

/** The hot loop: arrays as parameters, as captured ones halve its speed. */
function affineRun(makeUpM: Float64Array, fixed: number, perM: number, out: Float64Array, from: number, to: number): void {
  for (let cell = from; cell < to; cell++) out[cell] = fixed + perM * makeUpM[cell];
}

/**
 * Where a value stands in a rising list, or would stand.
 * @param rising - list [-]
 * @param value - value looked for [-]
 * @returns index of the first entry that is not less; the list's length where all are [-]
 * @source none: arithmetic
 */
export function firstAtLeast(rising: Int32Array, value: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (rising[middle] < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Loads that stand on a few cells only (objects, stockpiles), per square metre of the whole cell. */
export interface SparseLoad {
  readonly cells: Int32Array;
  readonly kNm2: Float64Array;
}

/**
 * Adds a sparse load to a field, within a block.
 * @param load - cells and loads [kN/m²]
 * @param grid - grid [m]
 * @param block - cells to write [-]
 * @param out - field to add to [kN/m²]
 * @returns the same array [kN/m²]
 * @source none: arithmetic
 */
export function addSparse(load: SparseLoad, grid: GridShape, block: CellBlock, out: Float64Array): Float64Array {
  for (let i = 0; i < load.cells.length; i++) {
    const cell = load.cells[i];
    const row = Math.floor(cell / grid.columns);
    const column = cell - row * grid.columns;
    if (row < block.row0 || row >= block.row1 || column < block.column0 || column >= block.column1) continue;
    out[cell] += load.kNm2[i];
  }
  return out;
}
