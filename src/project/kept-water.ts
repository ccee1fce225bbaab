/** Parts of the water study that are taken over where neither levels nor the zones and bays they touch have changed. */

import { blockedBy, type RisenWater, risenWater } from '../core/blocked-outlet.ts';
import type { Evaluation } from '../core/evaluation.ts';
import { blockOfCells } from '../core/geometry/grid.ts';
import { firstAtLeast } from '../core/loads/field.ts';
import type { RoutedWater } from '../core/water-course.ts';
import type { BlockedOutlet } from '../model/water-result.ts';
import type { KeptParts } from './kept-parts.ts';

/** `blockedOutlet`, taken over from the report before where it still holds. */
export function keptBlocked(kept: KeptParts, on: Evaluation, course: RoutedWater, outlet: number): BlockedOutlet {
  const { prepared, input, makeUps } = on;
  const risen = kept.get(`risen ${outlet}`, [course.rises, outlet, prepared.deckLevelsM], () => risenWater(on, course, outlet));
  const wetted = [risen, prepared.zoneCells, prepared.bays];
  const { zones, bays } = kept.get(`wetted ${outlet}`, wetted, () => ({ zones: zonesUnder(on, risen), bays: baysAround(on, risen) }));
  const above = zones.flatMap((z) => [input.zones[z], makeUps[z], course.site.zones[z].freePores.join()]);
  // A bay's result is a new object as soon as any of its patches is.
  return kept.get(`blocked ${outlet}`, [...wetted, ...above, ...bays.map((b) => on.bays[b])], () => blockedBy(on, course, risen));
}

function zonesUnder(on: Evaluation, { under }: RisenWater): number[] {
  const { owner, mixed, start, entryZone } = on.prepared.zoneCells;
  const zones = new Set<number>();
  for (const cell of under) {
    if (owner[cell] >= 0) zones.add(owner[cell]);
    if (owner[cell] !== -2) continue;
    const i = firstAtLeast(mixed, cell);
    for (let e = start[i]; e < start[i + 1]; e++) zones.add(entryZone[e]);
  }
  return [...zones];
}

/** Bays that a window with any of the water in it can lie in. */
function baysAround(on: Evaluation, { under }: RisenWater): number[] {
  if (under.length === 0) return [];
  const { ground, reach, bays } = on.prepared;
  const by = reach.whole + 1;
  const block = blockOfCells([under], ground.grid.columns);
  return bays.blocks.flatMap((box, b) => {
    const meets =
      box.column0 < block.column1 + by && block.column0 - by < box.column1 && box.row0 < block.row1 + by && block.row0 - by < box.row1;
    return meets ? [b] : [];
  });
}
