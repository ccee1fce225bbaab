/** The limits that bays set, place by place: what stands in a window, and which part of it each zone brings. */

import type { Evaluation } from '../core/evaluation.ts';
import { stageLimitKNm2 } from '../core/judge.ts';
import type { LightenLoad } from '../model/lighten.ts';
import type { Ground } from './ground.ts';

/** At exactly its limit a bay is not over it; the core rounds at twice this [-]. */
const ROUNDING = 5e-10;

/** One limit of one bay. */
export interface BayLimit extends LightenLoad {
  readonly b: number;
  /** Index of the stage; null for the finished garden. */
  readonly s: number | null;
}

/** All limits of all bays. */
export function limitsOf(on: Evaluation): BayLimit[] {
  return on.input.bays.flatMap((bay, b): BayLimit[] => {
    const found: BayLimit[] = [];
    const add = (kind: BayLimit['kind'], permittedKNm2: number | null, s: number | null) => {
      if (permittedKNm2 !== null) found.push({ bay: bay.id, b, kind, s, stage: s === null ? null : on.plan.stages[s].id, permittedKNm2 });
    };
    add('permanent', bay.permanentKNm2, null);
    add('total', bay.totalKNm2, null);
    // Derived stages only add: the last one is the finished garden, whatever a change does to their number.
    if (on.input.stages === null) add('stage', stageLimitKNm2(bay), on.plan.stages.length > 0 ? on.plan.stages.length - 1 : null);
    else for (const s of on.plan.stages.keys()) add('stage', stageLimitKNm2(bay), s);
    return found;
  });
}

/** The same limit in an evaluation whose derived stages may be others. */
function patchesFor(on: Evaluation, { kind, s }: BayLimit): Float64Array | null {
  if (kind === 'permanent') return on.patchKNm2;
  if (kind === 'total') return on.totalPatchKNm2;
  if (s === null) return on.patchKNm2;
  return on.stagePatchKNm2[on.input.stages === null ? on.plan.stages.length - 1 : s];
}

/** Patch centred on a cell [kN/m²]. */
export function loadAt(on: Evaluation, limit: BayLimit, cell: number): number {
  return patchesFor(on, limit)?.[cell] ?? Number.NaN;
}

/** Greatest patch of a bay [kN/m²]; cell -1 where nothing is to judge. */
export function greatestOf(on: Evaluation, limit: BayLimit): { cell: number; kNm2: number } {
  let best = { cell: -1, kNm2: 0 };
  const patches = patchesFor(on, limit);
  if (!patches) return best;
  for (const cell of on.prepared.bays.judged[limit.b]) {
    if (best.cell < 0 || patches[cell] > best.kNm2) best = { cell, kNm2: patches[cell] };
  }
  return best;
}

export function isOver(kNm2: number, permittedKNm2: number): boolean {
  return kNm2 > permittedKNm2 * (1 + ROUNDING);
}

/** Cells of a bay that are over a limit. */
export function cellsOver(on: Evaluation, limit: BayLimit): number[] {
  const patches = patchesFor(on, limit);
  return patches ? [...on.prepared.bays.judged[limit.b]].filter((cell) => isOver(patches[cell], limit.permittedKNm2)) : [];
}

/** What a zone covers of a window, over its deck: share, and share times room. */
export interface WindowPart {
  readonly share: number;
  readonly roomM: number;
}

/** Where the cells of a zone stand in its lists. */
export type Positions = ReadonlyMap<number, number>;

export function positionsOf(on: Evaluation, { z }: Ground): Positions {
  return new Map([...on.prepared.zones[z].cells].map((cell, i) => [cell, i]));
}

/** Part of a window, centred on a cell, that a zone brings. */
export function windowPart(on: Evaluation, ground: Ground, positions: Positions, cell: number): WindowPart {
  const { reach, deckSums } = on.prepared;
  const { columns, rows } = on.prepared.ground.grid;
  const { shares } = on.prepared.zones[ground.z];
  const span = spanOf(on);
  const weight = (shift: number) => (Math.abs(shift) > Math.max(0, reach.whole) ? reach.fraction : 1);
  const [row0, column0] = [Math.floor(cell / columns), cell % columns];
  let share = 0;
  let roomM = 0;
  for (let row = Math.max(0, row0 - span); row <= Math.min(rows - 1, row0 + span); row++) {
    for (let column = Math.max(0, column0 - span); column <= Math.min(columns - 1, column0 + span); column++) {
      const i = positions.get(row * columns + column);
      if (i === undefined) continue;
      const part = weight(row - row0) * weight(column - column0) * shares[i];
      share += part;
      roomM += part * ground.roomM[i];
    }
  }
  return { share: share / deckSums[cell], roomM: roomM / deckSums[cell] };
}

/** Gives, for a cell, the zones of which its window holds something. */
export function zonesSeen(on: Evaluation): (cell: number) => readonly number[] {
  const { columns, rows } = on.prepared.ground.grid;
  const standing = new Map<number, number[]>();
  on.prepared.zones.forEach(({ cells, shares }, z) => {
    cells.forEach((cell, i) => {
      if (shares[i] > 0) standing.set(cell, [...(standing.get(cell) ?? []), z]);
    });
  });
  const span = spanOf(on);
  const known = new Map<number, readonly number[]>();
  return (cell) => {
    const found = known.get(cell);
    if (found) return found;
    const [row0, column0] = [Math.floor(cell / columns), cell % columns];
    const zones = new Set<number>();
    for (let row = Math.max(0, row0 - span); row <= Math.min(rows - 1, row0 + span); row++) {
      for (let column = Math.max(0, column0 - span); column <= Math.min(columns - 1, column0 + span); column++) {
        for (const z of standing.get(row * columns + column) ?? []) zones.add(z);
      }
    }
    const list = [...zones];
    known.set(cell, list);
    return list;
  };
}

/** Cells that a window reaches beyond its own, whole or in part. */
function spanOf({ prepared: { reach } }: Evaluation): number {
  return Math.max(0, reach.whole) + (reach.fraction > 0 ? 1 : 0);
}
