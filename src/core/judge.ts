/** Holds the loads of the finished garden and of every stage against what each bay is permitted. */

import type { BayInput, DeckInput } from '../model/deck-input.ts';
import type { BayResult, JudgedFields, Patch } from './evaluation.ts';
import { blockOfCells, type CellBlock } from './geometry/grid.ts';
import type { StackCoefficients } from './layers/coefficients.ts';
import { type ZoneBayShare, zonesInBayKN } from './loads/bays.ts';
import { addSparse, coefficientArrays, type LayerField, type ZoneCoefficients, zoneLoads } from './loads/field.ts';
import { greatestPatch, windowSums } from './loads/patch.ts';
import type { StandingLoad } from './loads/standing.ts';
import type { PreparedDeck } from './prepare.ts';
import type { StagePlan } from './stages/plan.ts';

export interface Judged extends JudgedFields {
  readonly bays: readonly BayResult[];
}

export interface JudgeInput {
  readonly input: DeckInput;
  readonly prepared: PreparedDeck;
  readonly plan: StagePlan;
  readonly field: LayerField;
  readonly stacks: readonly StackCoefficients[];
  readonly stageStacks: readonly (readonly StackCoefficients[])[];
  readonly stageLoads: readonly ZoneCoefficients[];
  readonly zoneShares: readonly ZoneBayShare[];
  /** Zones that differ from `before`; null for all. */
  readonly changed: ReadonlySet<number> | null;
  readonly before: (Judged & { readonly prepared: Pick<PreparedDeck, 'zones'> }) | undefined;
}

/** Zones that touch a bay with less than this, by the rounding of a drawing, do not bring their imposed load to it; never more than a hundredth of the bay [m²]. */
export const SLIVER_M2 = 0.05;

/**
 * Limit of a bay while building.
 * @param bay - limits of the bay [kN/m²]
 * @returns permitted stage load, the permanent or total limit where no own one is given [kN/m²]
 * @source contract.md, section 2, Bay result
 */
export function stageLimitKNm2(bay: BayInput): number | null {
  return bay.stageKNm2 ?? bay.permanentKNm2 ?? bay.totalKNm2;
}

/**
 * Judges all bays, or those that changed zones can reach.
 * @param on - deck, loads and, for a small change, the result before, whose arrays are written anew [kN/m²]
 * @returns results per bay and per cell [kN/m²]
 * @source contract.md, section 2, Patch and Bay result
 */
export function judgeBays(on: JudgeInput): Judged {
  const { input, prepared, before } = on;
  const whole = on.changed === null || !before;
  const fields = whole ? emptyFields(on) : fieldsOf(before);
  const blocks = whole ? [wholeGrid(prepared)] : changedBlocks(on);
  const touched = new Set(blocks.flatMap((block) => baysIn(block, prepared)));
  for (const block of blocks) fillFields(on, fields, block);
  const bays = input.bays.map((bay, b) => (touched.has(b) || whole || !before ? bayResult(on, fields, bay, b) : before.bays[b]));
  return { ...fields, bays };
}

/** The fields alone: `before` is a whole evaluation, and nothing else of it may pass for the new one's. */
function fieldsOf(before: Judged): JudgedFields {
  const { loadKNm2, patchKNm2, totalPatchKNm2, stagePatchKNm2, worstUtilisation, worstStage, bayAt } = before;
  return { loadKNm2, patchKNm2, totalPatchKNm2, stagePatchKNm2, worstUtilisation, worstStage, bayAt };
}

function emptyFields(on: JudgeInput): JudgedFields {
  const { input, prepared, plan } = on;
  const size = prepared.deckSums.length;
  const empty = () => new Float64Array(size).fill(Number.NaN);
  return {
    loadKNm2: empty(),
    patchKNm2: empty(),
    totalPatchKNm2: input.bays.some((bay) => bay.totalKNm2 !== null) ? empty() : null,
    stagePatchKNm2: plan.stages.map(empty),
    worstUtilisation: empty(),
    worstStage: new Int16Array(size).fill(-1),
    bayAt: bayPerCell(input, prepared),
  };
}

/** Writes all fields within a block. */
function fillFields(on: JudgeInput, fields: JudgedFields, block: CellBlock): void {
  const { input, prepared } = on;
  const { columns } = prepared.ground.grid;
  const finished = coefficientArrays(on.stacks.map((stack) => stack.saturated));
  writePatches(on, finished, block, null, fields.patchKNm2);
  const loads = fillLoads(on, finished, block, null);
  for (let row = block.row0; row < block.row1; row++) {
    divideRow(loads, prepared.ground.deckShare, fields.loadKNm2, row * columns + block.column0, row * columns + block.column1);
  }
  if (fields.totalPatchKNm2) {
    const withImposed = on.stacks.map(({ saturated }, z) => ({
      fixed: saturated.fixed + input.zones[z].imposedKNm2,
      perM: saturated.perM,
    }));
    writePatches(on, coefficientArrays(withImposed), block, null, fields.totalPatchKNm2);
  }
  const inverse = Float64Array.from(input.bays, (bay) => 1 / (stageLimitKNm2(bay) ?? Number.NaN));
  fields.stagePatchKNm2.forEach((patches, stage) => {
    writePatches(on, on.stageLoads[stage], block, stage, patches);
    for (let row = block.row0; row < block.row1; row++) {
      raiseWorst(stage, row * columns + block.column0, row * columns + block.column1, patches, inverse, fields);
    }
  });
}

/** Window means, wherever a window has any deck: of the layers from the cells, of what stands on them by exact area. */
function writePatches(on: JudgeInput, zones: ZoneCoefficients, block: CellBlock, stage: number | null, out: Float64Array): void {
  const { prepared } = on;
  const { grid } = prepared.ground;
  const { sums } = prepared.scratch;
  windowSums(fillLayers(on, zones, block, stage), grid, prepared.reach, block, sums);
  for (let row = block.row0; row < block.row1; row++) {
    const from = row * grid.columns;
    divideRow(sums, prepared.deckSums, out, from + block.column0, from + block.column1);
  }
  for (const { windows } of standing(on, stage)) addSparse(windows, grid, block, out);
}

/** NaN where there is nothing to divide by. */
function divideRow(over: Float64Array, under: Float64Array, out: Float64Array, from: number, to: number): void {
  for (let cell = from; cell < to; cell++) out[cell] = under[cell] > 0 ? over[cell] / under[cell] : Number.NaN;
}

function raiseWorst(stage: number, from: number, to: number, patches: Float64Array, inverse: Float64Array, cells: JudgedFields): void {
  const { worstUtilisation, worstStage, bayAt } = cells;
  for (let cell = from; cell < to; cell++) {
    const bay = bayAt[cell];
    if (bay < 0) continue;
    const utilisation = patches[cell] * inverse[bay];
    if (stage === 0 || utilisation > worstUtilisation[cell]) {
      worstUtilisation[cell] = utilisation;
      worstStage[cell] = stage;
    }
  }
}

type LoadsOf = Pick<JudgeInput, 'input' | 'prepared' | 'plan' | 'field'>;

/** Objects placed by then and, in a stage, its stockpiles. */
function standing({ prepared, plan }: LoadsOf, stage: number | null): StandingLoad[] {
  const objects = prepared.objects.filter((_, o) => {
    const placedIn = plan.objectStages[o];
    return stage === null || (placedIn >= 0 && placedIn <= stage);
  });
  return stage === null ? objects : [...objects, ...(prepared.stockpiles[stage] ?? [])];
}

/** Layers and a flood test, within the block and the window's reach around it, into the scratch field. */
function fillLayers({ input, prepared, field }: LoadsOf, zones: ZoneCoefficients, block: CellBlock, stage: number | null): Float64Array {
  const { grid, deckShare } = prepared.ground;
  const { loads } = prepared.scratch;
  const wide = widened(block, prepared);
  zoneLoads(field, zones, wide, loads);
  const flood = stage === null ? 0 : (input.stages?.[stage].floodKNm2 ?? 0);
  if (flood === 0) return loads;
  for (let row = wide.row0; row < wide.row1; row++) {
    for (let cell = row * grid.columns + wide.column0; cell < row * grid.columns + wide.column1; cell++)
      loads[cell] += flood * deckShare[cell];
  }
  return loads;
}

/**
 * Loads of the finished garden (stage null) or of a stage with its stockpiles and flood test, into the scratch field.
 * @param on - deck and loads [kN/m²]
 * @param zones - coefficients per zone [kN/m²]
 * @param block - cells to write [-]
 * @param stage - index of the stage, null for the finished garden [-]
 * @returns the scratch field, per square metre of the whole cell [kN/m²]
 * @source contract.md, section 2, Stages
 */
export function fillLoads(on: LoadsOf, zones: ZoneCoefficients, block: CellBlock, stage: number | null): Float64Array {
  const loads = fillLayers(on, zones, block, stage);
  for (const { sparse } of standing(on, stage)) addSparse(sparse, on.prepared.ground.grid, block, loads);
  return loads;
}

function bayResult(on: JudgeInput, fields: JudgedFields, bay: BayInput, b: number): BayResult {
  const { prepared, plan } = on;
  const { areaM2 } = prepared.bays.laid[b];
  const loads = on.stacks.map((stack) => stack.saturated);
  const weightKN = zonesInBayKN(on.zoneShares, loads, b) + prepared.objects.reduce((sum, object) => sum + object.bayKN[b], 0);
  let imposedKNm2 = 0;
  on.input.zones.forEach((zone, z) => {
    if (on.zoneShares[z].areaM2[b] > Math.min(SLIVER_M2, areaM2 / 100)) imposedKNm2 = Math.max(imposedKNm2, zone.imposedKNm2);
  });
  const cells = prepared.bays.judged[b];
  const patch = greatestPatch(fields.patchKNm2, cells);
  const limit = stageLimitKNm2(bay);
  const stages = fields.stagePatchKNm2.map((patches) => {
    const worst = greatestPatch(patches, cells);
    return { patch: worst, utilisation: used(worst, limit) };
  });
  let worstStage = plan.stages.length > 0 && cells.length > 0 ? 0 : -1;
  stages.forEach((stage, s) => {
    if (worstStage >= 0 && stage.patch.kNm2 > stages[worstStage].patch.kNm2) worstStage = s;
  });
  return {
    areaM2,
    meanKNm2: areaM2 > 0 ? weightKN / areaM2 : 0,
    peakKNm2: greatestPatch(fields.loadKNm2, cells).kNm2,
    patch,
    permanentUtilisation: used(patch, bay.permanentKNm2),
    imposedKNm2,
    imposedUtilisation: bay.imposedKNm2 === null || cells.length === 0 ? null : imposedKNm2 / bay.imposedKNm2,
    total: totalResult(fields, bay, cells),
    stages,
    worstStage,
  };
}

/** Null where nothing is permitted or nothing is there to judge. */
function used(patch: Patch, limitKNm2: number | null): number | null {
  return limitKNm2 === null || patch.cell < 0 ? null : patch.kNm2 / limitKNm2;
}

function totalResult(fields: JudgedFields, bay: BayInput, cells: Int32Array): BayResult['total'] {
  if (bay.totalKNm2 === null || !fields.totalPatchKNm2 || cells.length === 0) return null;
  const patch = greatestPatch(fields.totalPatchKNm2, cells);
  return { patch, utilisation: patch.kNm2 / bay.totalKNm2 };
}

/** The weakest bay of those that judge a cell. */
function bayPerCell(input: DeckInput, prepared: PreparedDeck): Int16Array {
  const bayAt = new Int16Array(prepared.deckSums.length).fill(-1);
  const strength = (b: number) => Math.min(stageLimitKNm2(input.bays[b]) ?? Infinity, input.bays[b].permanentKNm2 ?? Infinity);
  prepared.bays.judged.forEach((cells, b) => {
    for (let i = 0; i < cells.length; i++) {
      const now = bayAt[cells[i]];
      if (now < 0 || strength(b) < strength(now)) bayAt[cells[i]] = b;
    }
  });
  return bayAt;
}

function wholeGrid(prepared: PreparedDeck): CellBlock {
  const { columns, rows } = prepared.ground.grid;
  return { column0: 0, column1: columns, row0: 0, row1: rows };
}

function widened(block: CellBlock, prepared: PreparedDeck): CellBlock {
  if (block.row0 >= block.row1) return block;
  const { columns, rows } = prepared.ground.grid;
  const by = prepared.reach.whole + 1;
  return {
    column0: Math.max(0, block.column0 - by),
    column1: Math.min(columns, block.column1 + by),
    row0: Math.max(0, block.row0 - by),
    row1: Math.min(rows, block.row1 + by),
  };
}

/** Per changed zone, all cells whose window it can reach, or could before; the whole grid at once where that is less work. */
function changedBlocks(on: JudgeInput): CellBlock[] {
  const { columns, rows } = on.prepared.ground.grid;
  const laid = [on.prepared, ...(on.before ? [on.before.prepared] : [])];
  const cellsOf = (z: number) => laid.map(({ zones }) => zones[z].cells);
  const blocks = [...(on.changed ?? [])]
    .map((z) => widened(blockOfCells(cellsOf(z), columns), on.prepared))
    .filter((block) => block.row0 < block.row1);
  const cells = blocks.reduce((sum, block) => sum + (block.column1 - block.column0) * (block.row1 - block.row0), 0);
  return cells < columns * rows ? blocks : [wholeGrid(on.prepared)];
}

/** Bays with a judged cell, or any part, in a block. */
function baysIn(block: CellBlock, prepared: PreparedDeck): number[] {
  const meets = (box: CellBlock) =>
    box.column0 < block.column1 && block.column0 < box.column1 && box.row0 < block.row1 && block.row0 < box.row1;
  return [...prepared.bays.blocks.keys()].filter((b) => meets(prepared.bays.blocks[b]));
}
