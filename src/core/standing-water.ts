/** Water that stands on a deck up to a level: what it weighs, cell by cell and in the bays, on top of the saturated garden. */

import type { StandingWater, WetBay } from '../model/water-result.ts';
import type { Evaluation } from './evaluation.ts';
import { blockOfCells, type CellBlock } from './geometry/grid.ts';
import { windowSums } from './loads/patch.ts';
import type { PoreColumn } from './water/pores.ts';
import type { RoutedWater } from './water-course.ts';
import { waterOnCellM } from './water-on-cell.ts';

/** Weight of water [kN/m³]; contract.md, section 1: 1 kg per litre, 9.81 m/s². */
const WATER_KNM3 = 9.81;

/**
 * Water at one level over the whole deck, wherever the membrane lies lower.
 * @param on - evaluated deck [m]
 * @param course - water of the same deck, for the pores of its layers [m]
 * @param levelM - level of the water [m]
 * @returns depths [m], weight [kN/m²] and bays
 * @source contract.md, section 2, Flotation: water standing to the lowest overflow invert or a given level
 */
export function standingWater(on: Evaluation, course: RoutedWater, levelM: number): StandingWater {
  const { deckShare } = on.prepared.ground;
  const cells: number[] = [];
  for (let cell = 0; cell < deckShare.length; cell++) {
    if (deckShare[cell] > 0 && on.prepared.deckLevelsM[cell] < levelM) cells.push(cell);
  }
  return waterOnCells(on, course.columns, Int32Array.from(cells), levelM);
}

/**
 * Water at one level on some cells. Within a cell it is as deep as at the middle, and its weight in a cell that several bays share is
 * shared by area.
 * @param on - evaluated deck [m]
 * @param columns - layers and pores per zone [m]
 * @param cells - cells of the grid, rising [-]
 * @param levelM - level of the water [m]
 * @returns depths [m], weight [kN/m²] and bays
 * @source none: arithmetic; patch and utilisation as in contract.md, section 2, Bay result
 */
export function waterOnCells(on: Evaluation, columns: readonly PoreColumn[], cells: Int32Array, levelM: number): StandingWater {
  const { deckLevelsM, ground } = on.prepared;
  const depthM = new Float32Array(cells.length);
  const waterM = new Float64Array(cells.length);
  let [mostM, areaM2, litres] = [0, 0, 0];
  for (let i = 0; i < cells.length; i++) {
    // Levels are filled in hundredths of a millimetre: the rounding must not show as water below nothing.
    const depth = Math.max(0, levelM - deckLevelsM[cells[i]]);
    const cellM2 = ground.deckShare[cells[i]] * on.input.cellM ** 2;
    depthM[i] = depth;
    waterM[i] = waterOnCellM(on, columns, cells[i], depth);
    mostM = Math.max(mostM, depth);
    areaM2 += cellM2;
    litres += 1000 * waterM[i] * cellM2;
  }
  const bays = wetBays(on, cells, waterM);
  return { cells, depthM, waterKNm2: Float32Array.from(waterM, (metres) => metres * WATER_KNM3), mostM, areaM2, litres, bays };
}

function wetBays(on: Evaluation, cells: Int32Array, waterM: Float64Array): WetBay[] {
  if (cells.length === 0) return [];
  const { prepared } = on;
  const block = widened(blockOfCells([cells], prepared.ground.grid.columns), on);
  const sums = windowLoads(on, cells, waterM, block);
  const inBayKN = bayWeightsKN(on, cells, waterM);
  return on.input.bays.flatMap((_, bay) => {
    const box = prepared.bays.blocks[bay];
    const meets = box.column0 < block.column1 && block.column0 < box.column1 && box.row0 < block.row1 && block.row0 < box.row1;
    const wet = meets ? wetBay(on, bay, block, sums) : null;
    if (!wet) return [];
    const { areaM2, meanKNm2 } = on.bays[bay];
    const waterMeanKNm2 = areaM2 > 0 ? inBayKN[bay] / areaM2 : 0;
    return [{ bay, waterMeanKNm2, meanKNm2: meanKNm2 + waterMeanKNm2, ...wet }];
  });
}

/** Water over each window, per unit of deck in it, in the block; the rest of the field is not touched [kN/m²]. */
function windowLoads({ prepared }: Evaluation, cells: Int32Array, waterM: Float64Array, block: CellBlock): Float64Array {
  const { ground, reach, deckSums, scratch } = prepared;
  const { grid, deckShare } = ground;
  const { loads, sums } = scratch;
  const around = grownBlock(block, reach.whole + 1, grid);
  for (let row = around.row0; row < around.row1; row++) {
    loads.fill(0, row * grid.columns + around.column0, row * grid.columns + around.column1);
  }
  for (let i = 0; i < cells.length; i++) loads[cells[i]] = waterM[i] * WATER_KNM3 * deckShare[cells[i]];
  windowSums(loads, grid, reach, block, sums);
  for (let row = block.row0; row < block.row1; row++) {
    for (let cell = row * grid.columns + block.column0; cell < row * grid.columns + block.column1; cell++) sums[cell] /= deckSums[cell];
  }
  return sums;
}

function widened(block: CellBlock, { prepared }: Evaluation): CellBlock {
  return grownBlock(block, prepared.reach.whole + 1, prepared.ground.grid);
}

function grownBlock(block: CellBlock, by: number, { columns, rows }: { readonly columns: number; readonly rows: number }): CellBlock {
  return {
    column0: Math.max(0, block.column0 - by),
    column1: Math.min(columns, block.column1 + by),
    row0: Math.max(0, block.row0 - by),
    row1: Math.min(rows, block.row1 + by),
  };
}

function bayWeightsKN({ prepared, input }: Evaluation, cells: Int32Array, waterM: Float64Array): Float64Array {
  const { sole, shared } = prepared.bays;
  const cellM2 = input.cellM ** 2;
  const weightsKN = new Float64Array(input.bays.length);
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i];
    const kNm2 = waterM[i] * WATER_KNM3;
    if (sole[cell] >= 0) weightsKN[sole[cell]] += kNm2 * prepared.ground.deckShare[cell] * cellM2;
    else if (sole[cell] === -2) for (const { bay, share } of shared.get(cell)!) weightsKN[bay] += kNm2 * share * cellM2;
  }
  return weightsKN;
}

/** Null where no window of the bay has any of the water. */
function wetBay(on: Evaluation, bay: number, block: CellBlock, waterKNm2: Float64Array) {
  const { columns } = on.prepared.ground.grid;
  const { permanentKNm2, totalKNm2 } = on.input.bays[bay];
  let [patchKNm2, patchCell, totalPatchKNm2, wet] = [-1, -1, -1, false];
  for (const cell of on.prepared.bays.judged[bay]) {
    const column = cell % columns;
    const row = (cell - column) / columns;
    const inBlock = row >= block.row0 && row < block.row1 && column >= block.column0 && column < block.column1;
    const water = inBlock ? waterKNm2[cell] : 0;
    if (water > 0) wet = true;
    if (on.patchKNm2[cell] + water > patchKNm2) {
      patchKNm2 = on.patchKNm2[cell] + water;
      patchCell = cell;
    }
    if (on.totalPatchKNm2) totalPatchKNm2 = Math.max(totalPatchKNm2, on.totalPatchKNm2[cell] + water);
  }
  if (!wet) return null;
  return {
    patchKNm2,
    patchCell,
    permanentUtilisation: permanentKNm2 === null ? null : patchKNm2 / permanentKNm2,
    totalUtilisation: totalKNm2 === null ? null : totalPatchKNm2 / totalKNm2,
  };
}
