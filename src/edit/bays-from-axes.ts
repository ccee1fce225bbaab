/** Bays of a grid of axes, put into the scene. */

import type { AxisGrid } from '../model/drawing.ts';
import type { ScenePatch } from '../model/history.ts';
import type { SceneBay, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import { baysFromAxes, SLIVER_M2 } from './axis-bays.ts';
import { areaM2, overlay } from './overlay.ts';

export interface AxisBays {
  readonly patch: ScenePatch;
  /** The bays made. */
  readonly selected: readonly Selected[];
  /** Ids of bays that kept limits and basis: the same id and the same area as before. */
  readonly kept: readonly string[];
  /** Ids of former bays whose limits and basis are gone with them: to be told before it is done. */
  readonly lost: readonly string[];
  /** Pieces smaller than `SLIVER_M2`. */
  readonly slivers: readonly string[];
}

/** Two areas are the same where no more than this share of them differs [-]. */
const SAME_AREA = 1e-6;

/**
 * Replaces all bays of the scene by the fields of a grid, cut to the outline of the deck. A bay keeps its limits, vehicles and basis only where
 * a former bay has the same id and covers the same area; a limit never goes to another area.
 * @param scene - the scene
 * @param grid - axes
 * @returns what changes, and what is kept and lost
 * @throws RangeError as `baysFromAxes`
 */
export function withBaysFromAxes(scene: SceneFile, grid: AxisGrid): AxisBays {
  const former = new Map(scene.deck.bays.map((bay) => [bay.id, bay]));
  const kept = new Set<string>();
  const slivers: string[] = [];
  const bays = baysFromAxes(grid, scene.deck.outline).map(({ id, outline, areaM2: sizeM2 }): SceneBay => {
    if (sizeM2 < SLIVER_M2) slivers.push(id);
    const before = former.get(id);
    if (before === undefined || !isSameArea(before, { id, outline })) return { id, outline };
    kept.add(id);
    return { ...before, outline };
  });
  return {
    patch: { deck: { ...scene.deck, bays } },
    selected: bays.map(({ id }) => ({ part: 'bay', id })),
    kept: [...kept],
    lost: scene.deck.bays.filter((bay) => !kept.has(bay.id) && saysMore(bay)).map(({ id }) => id),
    slivers,
  };
}

function isSameArea(one: SceneBay, other: SceneBay): boolean {
  const apart = overlay([one, other], ([first, second]) => first !== second);
  return apart.reduce((sum, area) => sum + areaM2(area), 0) <= SAME_AREA * areaM2(other);
}

/** Whether a bay says anything besides where it is. */
const saysMore = (bay: SceneBay) => Object.keys(bay).some((key) => key !== 'id' && key !== 'outline');
