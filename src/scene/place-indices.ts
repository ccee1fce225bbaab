/** What an entry of a stage places, by the places of zones and objects in their lists. */

import type { PlaceInput } from '../model/deck-input.ts';
import type { ScenePlace } from '../model/scene-file.ts';

/**
 * Reads one entry of `place`.
 * @param place - as it stands in the scene
 * @param zoneIndex - place of each zone by its id
 * @param objectIndex - place of each object by its id
 * @returns the same with indices; `zones` null for all zones
 */
export function placeIndices(
  place: ScenePlace,
  zoneIndex: ReadonlyMap<string, number>,
  objectIndex: ReadonlyMap<string, number>,
): PlaceInput {
  return {
    // An entry that only places objects names no zones, and means none.
    zones: place.zones ? place.zones.map((id) => zoneIndex.get(id) as number) : place.roles ? null : [],
    roles: place.roles ?? [],
    objects: (place.objects ?? []).map((id) => objectIndex.get(id) as number),
  };
}
