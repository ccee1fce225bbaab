/** An outlet that takes nothing any more, all others working: how far the water rises, where it runs over, and what it weighs. */

import type { BlockedOutlet } from '../model/water-result.ts';
import type { Evaluation } from './evaluation.ts';
import { waterOnCells } from './standing-water.ts';
import { cellsUnder, wayOut } from './water/rise.ts';
import { gridCell, terrainCell } from './water/terrain.ts';
import type { RoutedWater } from './water-course.ts';

/**
 * Closes one outlet. Its water rises until a way leads to another outlet, an overflow or over an edge; only that part of the deck is
 * looked at. What the other outlets can take is not asked here. A saddle is read at the middles of cells, so that the level is right to
 * within the fall over half a cell.
 * @param on - evaluated deck [m]
 * @param course - water of the same deck [m]
 * @param outlet - index of an outlet, not of an overflow, that is not left out [-]
 * @returns level [m], where it runs over, and the water that stands [kN/m²]
 * @throws RangeError if there is no such outlet on the deck
 * @source contract.md, section 2, Water
 */
export function blockedOutlet(on: Evaluation, course: RoutedWater, outlet: number): BlockedOutlet {
  return blockedBy(on, course, risenWater(on, course, outlet));
}

/** How far the water of a closed outlet rises: a matter of levels alone. */
export interface RisenWater extends Pick<BlockedOutlet, 'outlet' | 'levelM' | 'into' | 'overCell'> {
  /** Cells under water, rising. */
  readonly under: Int32Array;
}

/**
 * How far the water of a closed outlet rises.
 * @param on - evaluated deck [m]
 * @param course - water of the same deck [m]
 * @param outlet - index of an outlet, not of an overflow, that is not left out [-]
 * @returns level [m], where it runs over, and the cells under it [-]
 * @throws RangeError if there is no such outlet on the deck
 * @source contract.md, section 2, Water
 */
export function risenWater(on: Evaluation, course: RoutedWater, outlet: number): RisenWater {
  const cell = course.outletCells[outlet] ?? -1;
  if (cell < 0 || course.site.outlets[outlet].kind !== 'outlet') {
    throw new RangeError(`blockedOutlet: outlet must be one of the outlets on the deck, got ${outlet}`);
  }
  const { terrain } = course.rises;
  const from = terrainCell(terrain, cell);
  const found = wayOut(course.rises, from, outlet);
  if (!found) return { outlet, levelM: null, into: -1, overCell: -1, under: new Int32Array() };
  const overCell = gridCell(terrain, found.over);
  // To the bit the level that was given or drawn, not its hundredth of a millimetre.
  const levelM = found.byExit ? found.exit.levelM : on.prepared.deckLevelsM[overCell];
  const under = cellsUnder(course.rises, from, found.units).map((at) => gridCell(terrain, at));
  return { outlet, levelM, into: found.exit.sink, overCell, under };
}

/**
 * What the water weighs that a closed outlet lets rise.
 * @param on - evaluated deck [m]
 * @param course - water of the same deck, for the pores of its layers [m]
 * @param risen - how far it rises [m]
 * @returns the same with the water that stands [kN/m²]
 * @source contract.md, section 2, Water
 */
export function blockedBy(on: Evaluation, course: RoutedWater, { under, ...risen }: RisenWater): BlockedOutlet {
  return { ...risen, water: risen.levelM === null ? null : waterOnCells(on, course.columns, under, risen.levelM) };
}
