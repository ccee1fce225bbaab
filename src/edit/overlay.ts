/** Areas laid over each other: what of them is common, left or together, with the coordinates they came with. */

import type { PointM } from '../model/scene-file.ts';

/** Area with holes: rings either way round, open or closed, as in the file. */
export interface AreaM {
  readonly outline: readonly PointM[];
  readonly holes?: readonly (readonly PointM[])[];
}

/**
 * Lays areas over each other and keeps the places that are wanted. Vertices that were there keep their very numbers; new ones arise only where edges cross.
 * @param areas - simple areas with holes
 * @param wanted - whether a place is kept, told by which of the areas cover it
 * @returns areas with simple rings, outlines counter-clockwise and holes clockwise, largest first
 */
export declare function overlay(areas: readonly AreaM[], wanted: (covered: readonly boolean[]) => boolean): readonly AreaM[];

/**
 * Size of an area.
 * @param area - area with holes
 * @returns its size, never negative [m²]
 */
export declare function areaM2(area: AreaM): number;
