/** Holds the loads of the finished garden and of every stage against what each bay is permitted. */

import type { BayInput, DeckInput } from '../model/deck-input.ts';
import type { BayResult, Patch } from './evaluation.ts';
import { blockOfCells, type CellBlock } from './geometry/grid.ts';
import type { StackCoefficients } from './layers/coefficients.ts';
import { type ZoneBayShare, zonesInBayKN } from './loads/bays.ts';
import { addSparse, coefficientArrays, type LayerField, type ZoneCoefficients, zoneLoads } from './loads/field.ts';
import { greatestPatch, windowSums } from './loads/patch.ts';
import type { PreparedDeck } from './prepare.ts';
import type { StagePlan } from './stages/plan.ts';

export interface Judged {
  readonly bays: readonly BayResult[];
  readonly patchKNm2: Float64Array;
  readonly worstUtilisation: Float64Array;
  readonly worstStage: Int16Array;
  readonly bayAt: Int16Array;
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
  readonly before: Judged | undefined;
}

/** Zones that touch a bay with less than this do not bring their imposed load to it [m²]. */
const SLIVER_M2 = 1e-6;

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
  const size = prepared.deckSums.length;
  const whole = on.changed === null || !before;
  const judged = {
    patchKNm2: before?.patchKNm2 ?? new Float64Array(size).fill(Number.NaN),
    worstUtilisation: before?.worstUtilisation ?? new Float64Array(size).fill(Number.NaN),
    worstStage: before?.worstStage ?? new Int16Array(size).fill(-1),
    bayAt: whole ? bayPerCell(input, prepared) : before.bayAt,
  };
  const touched = whole ? [...input.bays.keys()] : baysNear(on, on.changed as ReadonlySet<number>);
  const block = whole ? wholeGrid(prepared) : blockAround(on, touched, on.changed as ReadonlySet<number>);
  if (block.row0 >= block.row1) return { ...judged, bays: before?.bays ?? [] };
  const finals = judgeFinal(on, block, touched, judged.patchKNm2);
  const totals = judgeTotals(on, block, touched);
  const stages = on.plan.stages.map((_, s) => judgeStage(on, s, block, touched, judged));
  const bays = input.bays.map((bay, b) => {
    const slot = touched.indexOf(b);
    if (slot < 0) return (before as Judged).bays[b];
    return bayResult(on, bay, b, { ...finals[slot], total: totals?.[slot] ?? null, stages: stages.map((perBay) => perBay[slot]) });
  });
  return { ...judged, bays };
}

interface Measured {
  readonly patch: Patch;
  readonly peakKNm2: number;
  readonly total: Patch | null;
  readonly stages: readonly Patch[];
}

function judgeFinal(
  on: JudgeInput,
  block: CellBlock,
  touched: readonly number[],
  patchKNm2: Float64Array,
): { patch: Patch; peakKNm2: number }[] {
  const { prepared } = on;
  const { loads, sums } = prepared.scratch;
  const { grid, centreOnDeck, deckShare } = prepared.ground;
  fillLoads(on, coefficientArrays(on.stacks.map((stack) => stack.saturated)), block, null);
  windowSums(loads, grid, prepared.reach, block, sums);
  for (let row = block.row0; row < block.row1; row++) {
    for (let cell = row * grid.columns + block.column0; cell < row * grid.columns + block.column1; cell++) {
      if (centreOnDeck[cell] === 1) patchKNm2[cell] = sums[cell] / prepared.deckSums[cell];
    }
  }
  return touched.map((b) => {
    const cells = prepared.bays.judged[b];
    let peakKNm2 = 0;
    for (let i = 0; i < cells.length; i++) peakKNm2 = Math.max(peakKNm2, loads[cells[i]] / deckShare[cells[i]]);
    return { patch: greatestPatch(sums, prepared.deckSums, cells), peakKNm2 };
  });
}

/** Permanent + imposed, where a bay gives a total limit. */
function judgeTotals(on: JudgeInput, block: CellBlock, touched: readonly number[]): Patch[] | null {
  const { input, prepared } = on;
  if (!touched.some((b) => input.bays[b].totalKNm2 !== null)) return null;
  const { loads, sums } = prepared.scratch;
  const withImposed = on.stacks.map((stack, z) => ({
    fixed: stack.saturated.fixed + input.zones[z].imposedKNm2,
    perM: stack.saturated.perM,
  }));
  fillLoads(on, coefficientArrays(withImposed), block, null);
  windowSums(loads, prepared.ground.grid, prepared.reach, block, sums);
  return touched.map((b) => greatestPatch(sums, prepared.deckSums, prepared.bays.judged[b]));
}

function judgeStage(
  on: JudgeInput,
  stage: number,
  block: CellBlock,
  touched: readonly number[],
  cells: { readonly worstUtilisation: Float64Array; readonly worstStage: Int16Array; readonly bayAt: Int16Array },
): Patch[] {
  const { input, prepared } = on;
  const { loads, sums } = prepared.scratch;
  const { grid } = prepared.ground;
  fillLoads(on, on.stageLoads[stage], block, stage);
  windowSums(loads, grid, prepared.reach, block, sums);
  const inverse = Float64Array.from(input.bays, (bay) => 1 / (stageLimitKNm2(bay) ?? Number.NaN));
  for (let row = block.row0; row < block.row1; row++) {
    const from = row * grid.columns;
    raiseWorst(stage, from + block.column0, from + block.column1, sums, prepared.deckSums, inverse, cells);
  }
  return touched.map((b) => greatestPatch(sums, prepared.deckSums, prepared.bays.judged[b]));
}

function raiseWorst(
  stage: number,
  from: number,
  to: number,
  sums: Float64Array,
  deckSums: Float64Array,
  inverse: Float64Array,
  cells: { readonly worstUtilisation: Float64Array; readonly worstStage: Int16Array; readonly bayAt: Int16Array },
): void {
  const { worstUtilisation, worstStage, bayAt } = cells;
  for (let cell = from; cell < to; cell++) {
    const bay = bayAt[cell];
    if (bay < 0) continue;
    const utilisation = (sums[cell] / deckSums[cell]) * inverse[bay];
    if (stage === 0 || utilisation > worstUtilisation[cell]) {
      worstUtilisation[cell] = utilisation;
      worstStage[cell] = stage;
    }
  }
}

/**
 * Loads of the finished garden (stage null) or of a stage with its stockpiles and flood test, into the scratch field.
 * @param on - deck and loads [kN/m²]
 * @param zones - coefficients per zone [kN/m²]
 * @param block - cells to write; the window's reach around it is written too [-]
 * @param stage - index of the stage, null for the finished garden [-]
 * @returns the scratch field, per square metre of the whole cell [kN/m²]
 * @source contract.md, section 2, Stages
 */
export function fillLoads(
  on: Pick<JudgeInput, 'input' | 'prepared' | 'plan' | 'field'>,
  zones: ZoneCoefficients,
  block: CellBlock,
  stage: number | null,
): Float64Array {
  const { prepared, plan } = on;
  const { grid, deckShare } = prepared.ground;
  const { loads } = prepared.scratch;
  const wide = widened(block, prepared);
  zoneLoads(on.field, zones, wide, loads);
  prepared.objects.forEach((object, o) => {
    const placedIn = plan.objectStages[o];
    if (stage === null || (placedIn >= 0 && placedIn <= stage)) addSparse(object.sparse, grid, wide, loads);
  });
  if (stage === null) return loads;
  for (const pile of prepared.stockpiles[stage] ?? []) addSparse(pile.sparse, grid, wide, loads);
  const flood = on.input.stages?.[stage].floodKNm2 ?? 0;
  if (flood > 0) {
    for (let row = wide.row0; row < wide.row1; row++) {
      for (let cell = row * grid.columns + wide.column0; cell < row * grid.columns + wide.column1; cell++)
        loads[cell] += flood * deckShare[cell];
    }
  }
  return loads;
}

function bayResult(on: JudgeInput, bay: BayInput, b: number, measured: Measured): BayResult {
  const { prepared, plan } = on;
  const { areaM2 } = prepared.bays.laid[b];
  const loads = on.stacks.map((stack) => stack.saturated);
  const weightKN = zonesInBayKN(on.zoneShares, loads, b) + prepared.objects.reduce((sum, object) => sum + object.bayKN[b], 0);
  let imposedKNm2 = 0;
  on.input.zones.forEach((zone, z) => {
    if (on.zoneShares[z].areaM2[b] > SLIVER_M2) imposedKNm2 = Math.max(imposedKNm2, zone.imposedKNm2);
  });
  const limit = stageLimitKNm2(bay);
  const stages = measured.stages.map((patch) => ({ patch, utilisation: limit === null ? null : patch.kNm2 / limit }));
  let worstStage = plan.stages.length > 0 ? 0 : -1;
  stages.forEach(({ patch }, s) => {
    if (patch.kNm2 > stages[worstStage].patch.kNm2) worstStage = s;
  });
  return {
    areaM2,
    meanKNm2: areaM2 > 0 ? weightKN / areaM2 : 0,
    peakKNm2: measured.peakKNm2,
    patch: measured.patch,
    permanentUtilisation: bay.permanentKNm2 === null ? null : measured.patch.kNm2 / bay.permanentKNm2,
    imposedKNm2,
    imposedUtilisation: bay.imposedKNm2 === null ? null : imposedKNm2 / bay.imposedKNm2,
    total: bay.totalKNm2 === null || !measured.total ? null : { patch: measured.total, utilisation: measured.total.kNm2 / bay.totalKNm2 },
    stages,
    worstStage,
  };
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
  const { columns, rows } = prepared.ground.grid;
  const by = prepared.reach.whole + 1;
  return {
    column0: Math.max(0, block.column0 - by),
    column1: Math.min(columns, block.column1 + by),
    row0: Math.max(0, block.row0 - by),
    row1: Math.min(rows, block.row1 + by),
  };
}

/** Bays with a judged cell whose window can reach a changed zone. */
function baysNear(on: JudgeInput, changed: ReadonlySet<number>): number[] {
  const { prepared } = on;
  const { columns } = prepared.ground.grid;
  const zones = [...changed].map((z) => widened(blockOfCells([prepared.zones[z].cells], columns), prepared));
  return [...on.input.bays.keys()].filter((b) => {
    const box = blockOfCells([prepared.bays.judged[b], prepared.bays.laid[b].cells], columns);
    return zones.some((zone) => zone.column0 < box.column1 && box.column0 < zone.column1 && zone.row0 < box.row1 && box.row0 < zone.row1);
  });
}

/** Everything that must be summed anew: judged cells of the bays touched, and all cells whose window reaches a changed zone. */
function blockAround(on: JudgeInput, touched: readonly number[], changed: ReadonlySet<number>): CellBlock {
  const { prepared } = on;
  const { columns } = prepared.ground.grid;
  const bays = blockOfCells(
    touched.map((b) => prepared.bays.judged[b]),
    columns,
  );
  const own = blockOfCells(
    [...changed].map((z) => prepared.zones[z].cells),
    columns,
  );
  const zones = own.row0 < own.row1 ? widened(own, prepared) : own;
  return {
    column0: Math.min(bays.column0, zones.column0),
    column1: Math.max(bays.column1, zones.column1),
    row0: Math.min(bays.row0, zones.row0),
    row1: Math.max(bays.row1, zones.row1),
  };
}
