/** Maps per cell of one evaluation, for the finished garden or at the end of a stage. */

import type { LayerInput } from '../model/deck-input.ts';
import type { RequiredEdge } from '../model/edge-input.ts';
import type { CellMap, MapKind, WaterMapKind } from '../model/maps.ts';
import { deckSite } from './edge-facts.ts';
import type { Evaluation } from './evaluation.ts';
import { fillLoads, stageLimitKNm2 } from './judge.ts';
import type { Affine } from './layers/coefficients.ts';
import { coefficientArrays, zoneLoads } from './loads/field.ts';
import { mapOfCells } from './map-cells.ts';
import { cellUpstands } from './rules/edges.ts';
import { cellFalls } from './rules/falls.ts';

/** Maps of the deck and what lies on it; reach, wheels, running water and differences have files of their own. */
export type DeckMapKind = Exclude<MapKind, 'difference' | 'reach' | 'wheel-membrane' | 'wheel-bearing' | WaterMapKind>;

const UNITS: Readonly<Record<DeckMapKind, string>> = {
  load: 'kN/m²',
  utilisation: '-',
  'worst-stage': '-',
  depth: 'mm',
  'make-up': 'mm',
  finished: 'm',
  substrate: 'mm',
  upstand: 'mm',
  fall: '%',
  held: 'l/m²',
};

export const DECK_MAP_KINDS = Object.keys(UNITS) as readonly DeckMapKind[];

/**
 * One map.
 * @param on - evaluation [kN/m²]
 * @param kind - quantity; utilisations are of the 1 m × 1 m patch centred on the cell, as bays are judged [-]
 * @param stage - index of the stage, null for the finished garden [-]
 * @param edges - edges of the deck, local, with what they require, for the heights along them [m]
 * @returns values per cell in the map's unit, NaN where there is none [kN/m²], [-], [mm], [m], [%] or [l/m²]
 * @throws RangeError for a stage that does not exist
 * @source contract.md, section 2
 */
export function cellMap(on: Evaluation, kind: DeckMapKind, stage: number | null, edges: readonly RequiredEdge[] = []): CellMap {
  if (stage !== null && !(stage >= 0 && stage < on.plan.stages.length)) throw new RangeError(`cellMap: no stage ${stage}`);
  if (kind === 'upstand') return upstandMap(on, stage, edges);
  const falls = kind === 'fall' ? cellFalls(deckSite(on)) : null;
  const valueAt = kind === 'fall' ? (cell: number) => falls?.percent[cell] ?? Number.NaN : valuesOf(on, kind, stage);
  const limitOf = kind === 'utilisation' || kind === 'worst-stage' ? 'bays' : null;
  const directionDeg = falls && Float32Array.from(falls.bearingDeg);
  return mapOfCells(on, { kind, stage, unit: UNITS[kind], valueAt, limitOf, directionDeg });
}

function upstandMap(on: Evaluation, stage: number | null, edges: readonly RequiredEdge[]): CellMap {
  const { heightMm, isShort } = cellUpstands(deckSite(on), edges);
  return mapOfCells(on, { kind: 'upstand', stage, unit: UNITS.upstand, valueAt: (cell) => heightMm[cell], limitOf: null, isShort });
}

function valuesOf(on: Evaluation, kind: Exclude<DeckMapKind, 'fall' | 'upstand'>, stage: number | null): (cell: number) => number {
  switch (kind) {
    case 'load':
      return loadOf(on, stage);
    case 'utilisation':
      return utilisationOf(on, stage);
    case 'worst-stage':
      return (cell) => on.worstUtilisation[cell];
    case 'depth': {
      const depth = layerMean(on, depthStack(on, stage));
      return (cell) => depth(cell) * 1000;
    }
    case 'held':
      return layerMean(
        on,
        (stage === null ? on.stacks : on.stageStacks[stage]).map(({ held }) => held),
      );
    case 'make-up':
      return makeUpOf(on, stage);
    case 'substrate':
      return substrateOf(on, stage);
    case 'finished': {
      const depth = layerMean(on, depthStack(on, stage));
      // Bare deck ends at the membrane.
      return (cell) => on.prepared.deckLevelsM[cell] + (Number.isNaN(depth(cell)) ? 0 : depth(cell));
    }
  }
}

function wholeGrid(on: Evaluation) {
  const { columns, rows } = on.prepared.ground.grid;
  return { column0: 0, column1: columns, row0: 0, row1: rows };
}

function loadOf(on: Evaluation, stage: number | null): (cell: number) => number {
  if (stage === null) return (cell) => on.loadKNm2[cell];
  const { deckShare } = on.prepared.ground;
  const loads = fillLoads(on, on.stageLoads[stage], wholeGrid(on), stage);
  return (cell) => loads[cell] / deckShare[cell];
}

/** Judged by the patch like the bay itself; NaN where no bay or no limit judges the cell. */
function utilisationOf(on: Evaluation, stage: number | null): (cell: number) => number {
  const { input, bayAt } = on;
  if (stage !== null) {
    const limits = Float64Array.from(input.bays, (bay) => stageLimitKNm2(bay) ?? Number.NaN);
    return (cell) => (bayAt[cell] < 0 ? Number.NaN : on.stagePatchKNm2[stage][cell] / limits[bayAt[cell]]);
  }
  return (cell) => {
    if (bayAt[cell] < 0) return Number.NaN;
    const { permanentKNm2, totalKNm2 } = input.bays[bayAt[cell]];
    const permanent = permanentKNm2 === null ? -1 : on.patchKNm2[cell] / permanentKNm2;
    const total = totalKNm2 === null || !on.totalPatchKNm2 ? -1 : on.totalPatchKNm2[cell] / totalKNm2;
    const greater = Math.max(permanent, total);
    return greater < 0 ? Number.NaN : greater;
  };
}

function depthStack(on: Evaluation, stage: number | null): readonly Affine[] {
  return (stage === null ? on.stacks : on.stageStacks[stage]).map((stack) => stack.depth);
}

/** Mean over the zones of a cell, by area; NaN where no zone lies. */
function layerMean(on: Evaluation, zones: readonly Affine[]): (cell: number) => number {
  const { owner, mixed, start, entryShare } = on.field.zones;
  const sum = zoneLoads(on.field, coefficientArrays(zones), wholeGrid(on), new Float64Array(owner.length));
  const share = new Float64Array(owner.length);
  for (let cell = 0; cell < owner.length; cell++) share[cell] = owner[cell] >= 0 ? 1 : 0;
  mixed.forEach((cell, i) => {
    for (let e = start[i]; e < start[i + 1]; e++) share[cell] += entryShare[e];
  });
  return (cell) => (share[cell] > 0 ? sum[cell] / share[cell] : Number.NaN);
}

/** Make-up thickness where a zone has such a layer and, in a stage, has it placed by then [mm]. */
function makeUpOf(on: Evaluation, stage: number | null): (cell: number) => number {
  return zoneMean(
    on,
    on.input.zones.map((_, z) => (placedLayers(on, z, stage).some(({ rangeM }) => rangeM !== null) ? { fixed: 0, perM: 1 } : null)),
  );
}

/** All substrate of a zone together, as far as it is placed, where it has any by the end [mm]. */
function substrateOf(on: Evaluation, stage: number | null): (cell: number) => number {
  const isSubstrate = ({ role }: LayerInput) => role === 'substrate';
  return zoneMean(
    on,
    on.input.zones.map(({ buildUp }, z) => {
      if (!buildUp.layers.some(isSubstrate)) return null;
      const placed = placedLayers(on, z, stage).filter(isSubstrate);
      const fixed = placed.reduce((sum, { rangeM, thicknessM }) => sum + (rangeM ? 0 : thicknessM), 0);
      return { fixed, perM: placed.some(({ rangeM }) => rangeM !== null) ? 1 : 0 };
    }),
  );
}

function placedLayers(on: Evaluation, z: number, stage: number | null): LayerInput[] {
  return on.input.zones[z].buildUp.layers.filter((_, i) => {
    const placedIn = on.plan.layerStages[z][i];
    return stage === null || (placedIn >= 0 && placedIn <= stage);
  });
}

/** Mean by area over those zones of a cell that have a value, in mm; `of` is a height per zone by its make-up [m]. */
function zoneMean(on: Evaluation, of: readonly (Affine | null)[]): (cell: number) => number {
  const { owner, mixed, start, entryZone, entryShare } = on.field.zones;
  const mm = ({ fixed, perM }: Affine, makeUpM: number) => 1000 * (fixed + perM * makeUpM);
  const values = new Float64Array(owner.length).fill(Number.NaN);
  for (let cell = 0; cell < owner.length; cell++) {
    const height = owner[cell] < 0 ? null : of[owner[cell]];
    if (height) values[cell] = mm(height, on.field.makeUpM[cell]);
  }
  mixed.forEach((cell, i) => {
    let sum = 0;
    let share = 0;
    for (let e = start[i]; e < start[i + 1]; e++) {
      const height = of[entryZone[e]];
      if (!height) continue;
      sum += entryShare[e] * mm(height, on.field.entryMakeUpM[e]);
      share += entryShare[e];
    }
    if (share > 0) values[cell] = sum / share;
  });
  return (cell) => values[cell];
}
