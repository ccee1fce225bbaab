/** Exact area that several simple polygons have in common. */

import type { Region } from '../../model/deck-input.ts';
import { sharedInSquare } from './cell-overlap.ts';
import { boundsOf } from './ring.ts';

/**
 * Area common to all the regions.
 * @param regions - one or more regions, local [m]
 * @returns area; 0 where they have none in common [m²]
 * @source none: geometry
 */
export function commonAreaM2(regions: readonly Region[]): number {
  const boxes = regions.map(({ outer }) => boundsOf(outer));
  const minX = Math.max(...boxes.map((box) => box.minX));
  const minY = Math.max(...boxes.map((box) => box.minY));
  const widthM = Math.min(...boxes.map((box) => box.maxX)) - minX;
  const heightM = Math.min(...boxes.map((box) => box.maxY)) - minY;
  if (!(widthM > 0 && heightM > 0)) return 0;
  const sideM = Math.max(widthM, heightM);
  return sharedInSquare(minX + widthM / 2, minY + heightM / 2, sideM, regions) * sideM * sideM;
}
