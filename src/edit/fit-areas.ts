/** Zones and bays fitted to the deck and to each other: cut at the edge, gaps filled, the rest made an area, one cut out of another. */

import type { ScenePatch } from '../model/history.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import type { AreaM } from './overlay.ts';
import type { Refused } from './refusal.ts';

export interface FittedParts {
  readonly patch: ScenePatch;
  /** Changed and new areas; where one came apart, the largest piece keeps the id and comes first. */
  readonly selected: readonly Selected[];
}

/**
 * Cuts an area at the edge of the deck. Openings are not cut out.
 * @param scene - the scene
 * @param selected - zone, bay, block, set-up area or stockpile
 * @returns what changes, or why it cannot be
 */
export declare function cutAtEdge(scene: SceneFile, selected: Selected): FittedParts | Refused;

/** A part of the deck, without its openings, that no zone (or no bay) covers. */
export interface Gap extends AreaM {
  readonly areaM2: number;
  /** A point inside it, to zoom to and to name it by. */
  readonly at: PointM;
  /** Ids of zones (or bays) with a length of edge in common, longest first. */
  readonly neighbours: readonly string[];
}

/**
 * What of the deck no zone, or no bay, covers.
 * @param scene - the scene
 * @param part - zones or bays
 * @returns gaps, largest first
 */
export declare function gapsOf(scene: SceneFile, part: 'zone' | 'bay'): readonly Gap[];

/**
 * Fills the gap at a place by enlarging a neighbour. A bay that grows loses its basis, since its limits were given for another area.
 * @param scene - the scene
 * @param gap - a point inside the gap
 * @param neighbour - zone or bay that grows
 * @returns what changes, or why it cannot be
 */
export declare function gapFilled(scene: SceneFile, gap: PointM, neighbour: Selected): FittedParts | Refused;

/**
 * Makes all that no zone (or bay) covers into new ones, one for each piece larger than `leastM2`. A bay cannot have holes: such pieces are cut in two through them.
 * @param scene - the scene
 * @param part - zones or bays
 * @param leastM2 - smaller pieces are left [m²]
 * @returns what changes, or why it cannot be
 */
export declare function remainderFilled(scene: SceneFile, part: 'zone' | 'bay', leastM2?: number): FittedParts | Refused;

/**
 * Takes the area of others out of one.
 * @param scene - the scene
 * @param from - zone or bay that gets smaller
 * @param others - any areas: zones, bays, blocks, openings …
 * @returns what changes, or why it cannot be
 */
export declare function subtracted(scene: SceneFile, from: Selected, others: readonly Selected[]): FittedParts | Refused;

/**
 * A parallel outline of an area: the area itself grown or shrunk, a new area, or the strip between as a new area.
 * @param scene - the scene
 * @param selected - an area; for `strip` and `new` also the outline of the deck
 * @param distanceM - outwards; below 0 inwards [m]
 * @param make - `same`: the area changes · `new`: a new zone (bay for a bay) with the parallel outline · `strip`: the part between becomes a new zone and, inwards, is taken out of the area
 * @returns what changes, or why it cannot be
 */
export declare function offsetPart(
  scene: SceneFile,
  selected: Selected,
  distanceM: number,
  make: 'same' | 'new' | 'strip',
): FittedParts | Refused;
