/** Zones and bays fitted to the deck and to each other: cut at the edge, gaps filled, the rest made an area, one cut out of another. */

import type { ScenePatch } from '../model/history.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import { areaIn, welded, withPieces } from './area-parts.ts';
import { SLIVER_M2 } from './axis-bays.ts';
import { type Gap, gapsOf, isInArea, pointInside } from './gaps.ts';
import { type Given, withNew, withNewHole } from './new-part.ts';
import { offsetArea } from './offset.ts';
import { type AreaM, areaM2, overlay } from './overlay.ts';
import { withEntries } from './part-lists.ts';
import { patched, patchOf } from './point-lists.ts';
import { isRefused, type Refused } from './refusal.ts';
import { withVerticesInserted } from './shared-vertices.ts';
import { splitArea } from './split.ts';

export interface FittedParts {
  readonly patch: ScenePatch;
  /** Changed and new areas; where one came apart, the largest piece keeps the id and comes first. None where nothing had to change. */
  readonly selected: readonly Selected[];
}

/** Shares of an area that are rounding, not geometry [-]. */
const ROUNDING = 1e-9;

/**
 * Cuts an area at the edge of the deck. Openings are not cut out.
 * @param scene - the scene
 * @param selected - zone, bay, block, set-up area or stockpile
 * @returns what changes, or why it cannot be
 */
export function cutAtEdge(scene: SceneFile, selected: Selected): FittedParts | Refused {
  const area = areaIn(scene, selected);
  if (area === null) return { refused: 'no such part' };
  if (selected.part === 'outline' || selected.part === 'opening') return { refused: 'wrong kind' };
  const inside = overlay([area, { outline: scene.deck.outline }], ([own, onDeck]) => own && onDeck);
  return replacedBy(scene, selected, { area, pieces: inside });
}

interface Exchange {
  readonly area: AreaM;
  readonly pieces: readonly AreaM[];
}

const sumM2 = (areas: readonly AreaM[]) => areas.reduce((sum, area) => sum + areaM2(area), 0);

/** Nothing changes where what is left is as large as what was there. */
function replacedBy(scene: SceneFile, selected: Selected, { area, pieces }: Exchange): FittedParts | Refused {
  if (pieces.length === 1 && Math.abs(sumM2(pieces) - areaM2(area)) <= ROUNDING * areaM2(area)) return { patch: {}, selected: [] };
  const result = withPieces(scene, selected, pieces);
  return isRefused(result) ? result : { patch: patchOf(scene, result.scene), selected: result.selected };
}

/**
 * Fills the gap at a place by enlarging a neighbour. A bay that grows loses its basis, since its limits were given for another area.
 * @param scene - the scene
 * @param at - a point inside the gap
 * @param neighbour - zone or bay that grows
 * @returns what changes, or why it cannot be
 */
export function gapFilled(scene: SceneFile, at: PointM, neighbour: Selected): FittedParts | Refused {
  const { part, id } = neighbour;
  if (part !== 'zone' && part !== 'bay') return { refused: 'wrong kind' };
  const area = areaIn(scene, neighbour);
  if (area === null) return { refused: 'no such part' };
  const gap = gapsOf(scene, part).find((one) => isInArea(one, at));
  if (gap === undefined) return { refused: 'no gap' };
  const pieces = overlay([area, gap], (covered) => covered.includes(true));
  if (pieces.length > 1) return { refused: 'not touching' };
  const grown =
    part === 'zone'
      ? scene
      : withEntries(scene, part, (entries) => entries.map((one) => (one.id === id ? withoutBasis(one.entry) : one.entry)));
  const result = withPieces(grown, neighbour, pieces);
  return isRefused(result) ? result : { patch: patchOf(scene, result.scene), selected: result.selected };
}

function withoutBasis(entry: object): object {
  const { basis: _, ...rest } = entry as { readonly basis?: unknown };
  return rest;
}

/**
 * Makes all that no zone (or bay) covers into new ones, one for each piece larger than `leastM2`. A bay cannot have holes: such pieces are cut in two through them.
 * @param scene - the scene
 * @param part - zones or bays
 * @param given - what else is known of the new ones, such as the build-up
 * @param leastM2 - smaller pieces are left [m²]
 * @returns what changes, or why it cannot be
 */
export function remainderFilled(scene: SceneFile, part: 'zone' | 'bay', given: Given = {}, leastM2 = SLIVER_M2): FittedParts | Refused {
  const gaps = gapsOf(scene, part).filter((gap: Gap) => gap.areaM2 >= leastM2);
  if (gaps.length === 0) return { refused: 'no gap' };
  return withNewAreas(scene, { part, given }, part === 'bay' ? gaps.flatMap(withoutHoles) : gaps);
}

/** Cut upright through the first hole, until none is left. */
function withoutHoles(area: AreaM): readonly AreaM[] {
  const [hole] = area.holes ?? [];
  if (hole === undefined) return [area];
  const [x] = pointInside({ outline: hole });
  const ys = area.outline.map(([, y]) => y);
  const pieces = splitArea(area, [
    [x, Math.min(...ys) - 1],
    [x, Math.max(...ys) + 1],
  ]);
  return pieces.flatMap(withoutHoles);
}

interface NewAreas {
  readonly part: 'zone' | 'bay';
  readonly given: Given;
}

/** New parts, whose vertices are put into the edges they lie on. */
function withNewAreas(scene: SceneFile, { part, given }: NewAreas, areas: readonly AreaM[]): FittedParts | Refused {
  let next = scene;
  const selected: Selected[] = [];
  for (const { outline, holes = [] } of welded(scene, areas)) {
    if (part === 'bay' && holes.length > 0) return { refused: 'bay with hole' };
    const made = withNew(next, part, outline, given);
    if (!('selected' in made)) throw new RangeError(`withNewAreas: a ${part} needs nothing else, found ${made.needs.join(', ')}`);
    next = patched(next, made.patch);
    for (const hole of holes) next = patched(next, withNewHole(next, made.selected.id, hole));
    next = patched(next, withVerticesInserted(next, [outline, ...holes].flat()));
    selected.push(made.selected);
  }
  return { patch: patchOf(scene, next), selected };
}

/**
 * Takes the area of others out of one.
 * @param scene - the scene
 * @param from - zone or bay that gets smaller
 * @param others - any areas: zones, bays, blocks, openings …
 * @returns what changes, or why it cannot be
 */
export function subtracted(scene: SceneFile, from: Selected, others: readonly Selected[]): FittedParts | Refused {
  if (from.part !== 'zone' && from.part !== 'bay') return { refused: 'wrong kind' };
  const area = areaIn(scene, from);
  const taken = others.filter(({ part, id }) => part !== from.part || id !== from.id).map((one) => areaIn(scene, one));
  if (area === null || taken.includes(null)) return { refused: 'no such part' };
  if (taken.length === 0) return { refused: 'too few parts' };
  const pieces = overlay([area, ...(taken as readonly AreaM[])], ([own, ...gone]) => own && !gone.includes(true));
  const result = replacedBy(scene, from, { area, pieces });
  return !isRefused(result) && result.selected.length === 0 ? { refused: 'apart' } : result;
}

/**
 * A parallel outline of an area: the area itself grown or shrunk, a new area, or the strip between as a new area.
 * @param scene - the scene
 * @param selected - an area; for `strip` and `new` also the outline of the deck
 * @param distanceM - outwards; below 0 inwards [m]
 * @param make - `same`: the area changes · `new`: a new zone (bay for a bay) with the parallel outline · `strip`: the part between becomes a new zone
 *   (bay for a bay) and, inwards, is taken out of the area
 * @returns what changes, or why it cannot be
 */
export function offsetPart(scene: SceneFile, selected: Selected, distanceM: number, make: 'same' | 'new' | 'strip'): FittedParts | Refused {
  const area = areaIn(scene, selected);
  if (area === null) return { refused: 'no such part' };
  if (distanceM === 0 || !Number.isFinite(distanceM)) return { refused: 'length not above 0' };
  const parallel = offsetArea(area, distanceM);
  if (parallel.length === 0) return { refused: 'nothing left' };
  if (make === 'same')
    return selected.part === 'outline' || selected.part === 'opening'
      ? { refused: 'wrong kind' }
      : replacedBy(scene, selected, { area, pieces: parallel });
  const kind = madeLike(scene, selected);
  if (make === 'new') return withNewAreas(scene, kind, parallel);
  const strip = overlay([area, ...parallel], ([own, ...inside]) => own !== inside.includes(true));
  if (distanceM > 0 || selected.part === 'outline') return withNewAreas(scene, kind, strip);
  const smaller = withPieces(scene, selected, parallel);
  if (isRefused(smaller)) return smaller;
  const result = withNewAreas(smaller.scene, kind, strip);
  return isRefused(result)
    ? result
    : { patch: patchOf(scene, patched(smaller.scene, result.patch)), selected: [...smaller.selected, ...result.selected] };
}

/** A strip of a zone is built up like it, until told otherwise. */
function madeLike(scene: SceneFile, { part, id }: Selected): NewAreas {
  if (part === 'bay') return { part, given: {} };
  const zone = part === 'zone' ? scene.zones.find((one) => one.id === id) : undefined;
  return { part: 'zone', given: zone === undefined ? {} : { buildup: zone.buildup } };
}
