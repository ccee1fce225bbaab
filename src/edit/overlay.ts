/** Areas laid over each other: what of them is common, left or together, with the coordinates they came with. */

import type { PointM } from '../model/scene-file.ts';
import { areaOf } from '../scene/ring.ts';
import { enclosed, type HalfEdge, planarOf, WELD_M } from './planar.ts';

/** Area with holes: rings either way round, open or closed, as in the file. */
export interface AreaM {
  readonly outline: readonly PointM[];
  readonly holes?: readonly (readonly PointM[])[];
}

/**
 * Lays areas over each other and keeps the places that are wanted. Vertices that were there keep their very numbers; new ones arise only where edges cross.
 * @param areas - simple areas with holes
 * @param wanted - whether a place is kept, told by which of the areas cover it; never wanted where none does
 * @param weldM - points nearer to each other become one, nearer to an edge lie on it [m]
 * @returns areas with simple rings, outlines counter-clockwise and holes clockwise, largest first
 */
export function overlay(areas: readonly AreaM[], wanted: (covered: readonly boolean[]) => boolean, weldM = WELD_M): readonly AreaM[] {
  const { points, edges } = planarOf(areas, [], weldM);
  const kept = edges.flatMap(({ a, b, left, right }): HalfEdge[] => {
    const [isLeft, isRight] = [wanted(left), wanted(right)];
    if (isLeft === isRight) return [];
    return [isLeft ? [a, b] : [b, a]];
  });
  return enclosed(points, kept);
}

/**
 * Size of an area.
 * @param area - area with holes
 * @returns its size, never negative [m²]
 */
export function areaM2({ outline, holes = [] }: AreaM): number {
  return holes.reduce((sum, hole) => sum - areaOf(hole), areaOf(outline));
}
