/** Names and places of what water reaches. */

import type { Evaluation } from '../core/evaluation.ts';
import { cellCentreM } from '../core/geometry/grid.ts';
import type { WaterCourse } from '../model/water-result.ts';

/** Centre of a cell in the file's coordinates [m]. */
export function placeOf(on: Evaluation, cell: number): [number, number] {
  const [x, y] = cellCentreM(on.prepared.ground.grid, cell);
  return [x + on.input.originM[0], y + on.input.originM[1]];
}

/** Zone that most of a cell belongs to; null for none. */
export function zoneAt(on: Evaluation, cell: number): string | null {
  const { owner, mixed, start, entryZone, entryShare } = on.prepared.zoneCells;
  if (owner[cell] >= 0) return on.input.zones[owner[cell]].id;
  const at = mixed.indexOf(cell);
  if (at < 0) return null;
  let most = start[at];
  for (let e = start[at]; e < start[at + 1]; e++) if (entryShare[e] > entryShare[most]) most = e;
  return on.input.zones[entryZone[most]].id;
}

/** Outlet, overflow or edge by its number; null for none. */
export function sinkName({ site }: WaterCourse, sink: number): string | null {
  if (sink < 0) return null;
  return sink < site.outlets.length ? site.outlets[sink].id : site.spills[sink - site.outlets.length].id;
}

/** The greater of two where either may be unknown. */
export function greater(a: number | null, b: number | null): number | null {
  return a === null || b === null ? (a ?? b) : Math.max(a, b);
}
