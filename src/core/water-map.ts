/** Maps of water: what drains where, how much runs, where it stands with all outlets at work, and with one of them blocked. */

import { CELL_ON_DECK, type CellMap, NO_OUTLET_CLASSES, type WaterMapKind } from '../model/maps.ts';
import { type BlockedOutlet, NO_WAY_OUT, type WaterCourse } from '../model/water-result.ts';
import type { Evaluation } from './evaluation.ts';
import { mapOfCells } from './map-cells.ts';
import { stripFlowLsm } from './water/drain-flow.ts';

/** What a map of water is made from. */
export interface MappedWater {
  readonly course: WaterCourse;
  /** Design rain; null where none is given: flow is then told as length of the way. */
  readonly rainLpsHa: number | null;
  /** The outlet that is blocked; null for none. */
  readonly blocked: BlockedOutlet | null;
}

/**
 * One map of water, of the finished garden.
 * @param on - evaluation [-]
 * @param kind - catchments by outlet [-], flow per metre of width [l/s] or length of the way where there is no rain [m], or depth of standing water [mm]
 * @param water - course of the water, rain and blocked outlet [l/s]
 * @returns values per cell, NaN where none runs or stands [l/s], [m], [mm] or [-]
 * @source contract.md, section 2, Water
 */
export function waterMap(on: Evaluation, kind: WaterMapKind, water: MappedWater): CellMap {
  const { course, rainLpsHa, blocked } = water;
  const directionDeg = course.bearingDeg;
  const base = { kind, stage: null, limitOf: null } as const;
  switch (kind) {
    case 'catchment':
      return catchmentMap(on, course);
    case 'flow': {
      const valueAt = (cell: number) => (rainLpsHa === null ? course.pathM[cell] : stripFlowLsm(rainLpsHa, course.pathM[cell]));
      return mapOfCells(on, { ...base, unit: rainLpsHa === null ? 'm' : 'l/(s·m)', valueAt, directionDeg });
    }
    case 'ponding': {
      const depthM = (cell: number) => course.filledM[cell] - on.prepared.deckLevelsM[cell];
      const valueAt = (cell: number) => (depthM(cell) > 0 ? 1000 * depthM(cell) : Number.NaN);
      return mapOfCells(on, { ...base, unit: 'mm', valueAt, directionDeg });
    }
    case 'blocked': {
      const depthsMm = blockedMm(on, blocked);
      return mapOfCells(on, { ...base, unit: 'mm', valueAt: (cell) => depthsMm[cell], directionDeg: null });
    }
  }
}

function blockedMm(on: Evaluation, blocked: BlockedOutlet | null): Float32Array {
  const out = new Float32Array(on.prepared.ground.deckShare.length).fill(Number.NaN);
  blocked?.water?.cells.forEach((cell, i) => {
    const depthM = blocked.water?.depthM[i] ?? 0;
    if (depthM > 0) out[cell] = 1000 * depthM;
  });
  return out;
}

/** Colour goes by where most of a cell's water ends; areas split it, so that their sums are exact. */
function catchmentMap(on: Evaluation, course: WaterCourse): CellMap {
  const { deckShare } = on.prepared.ground;
  const { outlets } = course.site;
  const named = outlets.flatMap(({ kind }, o) => (kind === 'outlet' ? [o] : []));
  const classOfOutlet = Int16Array.from(outlets, (_, o) => (named.includes(o) ? named.indexOf(o) : named.length));
  const classOf = (sink: number) => {
    if (sink === NO_WAY_OUT) return named.length + 2;
    return sink < outlets.length ? classOfOutlet[sink] : named.length + 1;
  };
  const classM2 = new Array<number>(named.length + NO_OUTLET_CLASSES.length).fill(0);
  course.catchments.forEach(({ areaM2 }, sink) => {
    classM2[classOf(sink)] += areaM2;
  });
  classM2[classOf(NO_WAY_OUT)] += course.noWayOut.areaM2;
  const values = new Float32Array(deckShare.length).fill(Number.NaN);
  const flags = new Uint8Array(deckShare.length);
  let dataCells = 0;
  for (let cell = 0; cell < deckShare.length; cell++) {
    if (deckShare[cell] === 0) continue;
    flags[cell] = CELL_ON_DECK;
    values[cell] = classOf(course.sinkAt[cell]);
    dataCells++;
  }
  return {
    kind: 'catchment',
    stage: null,
    values,
    flags,
    directionDeg: course.bearingDeg,
    unit: '',
    classLimits: null,
    names: [...named.map((o) => outlets[o].id), ...NO_OUTLET_CLASSES],
    classM2,
    min: Number.NaN,
    mean: Number.NaN,
    max: Number.NaN,
    noDataM2: 0,
    noDataCells: 0,
    dataCells,
  };
}
