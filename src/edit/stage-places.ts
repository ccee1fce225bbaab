/** What a stage lays and sets up, ticked zone by zone and role by role. */

import type { ScenePatch } from '../model/history.ts';
import { ROLES, type Role } from '../model/roles.ts';
import type { SceneFile, ScenePlace, SceneStage } from '../model/scene-file.ts';
import { changeStage } from './stages.ts';

/** A role in a zone. */
export interface PlaceCell {
  readonly zone: string;
  readonly role: Role;
}

/** Roles that a stage lists for a zone, entry by entry: entries are laid one after the other. */
type Layings = ReadonlyMap<string, readonly (readonly Role[])[]>;

/**
 * What a stage lists for each zone.
 * @param scene - scene
 * @param stage - stage of it
 */
export function layingsOf(scene: SceneFile, stage: SceneStage): Layings {
  const layings = new Map<string, (readonly Role[])[]>(scene.zones.map(({ id }) => [id, []]));
  for (const { zones, roles } of stage.place ?? []) {
    if (!roles || roles.length === 0) continue;
    for (const zone of zones ?? layings.keys()) layings.get(zone)?.push(roles);
  }
  return layings;
}

/**
 * Ticks roles in zones for a stage, or takes the ticks away. Zones that are not named keep what they have, in its order.
 * @param scene - scene
 * @param id - stage
 * @param cells - roles in zones
 * @param on - laid in this stage from now on
 */
export function tickRoles(scene: SceneFile, id: string, cells: readonly PlaceCell[], on: boolean): ScenePatch {
  const stage = scene.stages?.find((one) => one.id === id);
  if (stage === undefined) return {};
  const layings = new Map(layingsOf(scene, stage));
  for (const { zone, role } of cells) {
    const before = layings.get(zone);
    if (before) layings.set(zone, on ? withRole(before, role) : withoutRole(before, role));
  }
  return changeStage(scene, id, { place: [...placesOf(layings), ...objectPlace(objectsOf(stage))] });
}

const inOrder = (roles: readonly Role[]) => [...roles].sort((a, b) => ROLES.indexOf(a) - ROLES.indexOf(b));

function withRole(entries: readonly (readonly Role[])[], role: Role): readonly (readonly Role[])[] {
  if (entries.some((entry) => entry.includes(role))) return entries;
  // With the last one: whatever the stage lays before it lies below by then.
  return [...entries.slice(0, -1), inOrder([...(entries.at(-1) ?? []), role])];
}

function withoutRole(entries: readonly (readonly Role[])[], role: Role): readonly (readonly Role[])[] {
  return entries.map((entry) => entry.filter((one) => one !== role)).filter((entry) => entry.length > 0);
}

/** Zones with the same entries share them; where that is every zone, none is named. */
function placesOf(layings: Layings): ScenePlace[] {
  const groups = new Map<string, { readonly entries: readonly (readonly Role[])[]; readonly zones: string[] }>();
  for (const [zone, entries] of layings) {
    if (entries.length === 0) continue;
    const key = JSON.stringify(entries);
    const group = groups.get(key) ?? { entries, zones: [] };
    group.zones.push(zone);
    groups.set(key, group);
  }
  return [...groups.values()].flatMap(({ entries, zones }) => {
    return entries.map((roles) => (zones.length === layings.size ? { roles } : { zones, roles }));
  });
}

const objectsOf = (stage: SceneStage): string[] => [...new Set((stage.place ?? []).flatMap(({ objects = [] }) => objects))];
const objectPlace = (objects: readonly string[]): ScenePlace[] => (objects.length > 0 ? [{ objects }] : []);

/**
 * Sets up objects in a stage, and in no other; or in this one no more.
 * @param scene - scene
 * @param id - stage
 * @param objects - ids of objects
 * @param on - set up in this stage from now on
 */
export function tickObjects(scene: SceneFile, id: string, objects: readonly string[], on: boolean): ScenePatch {
  const stages = (scene.stages ?? []).map((stage): SceneStage => {
    if (!on && stage.id !== id) return stage;
    const rest = objectsOf(stage).filter((object) => !objects.includes(object));
    const wanted = on && stage.id === id ? [...rest, ...objects] : rest;
    if (wanted.length === objectsOf(stage).length && wanted.every((object) => objectsOf(stage).includes(object))) return stage;
    const laid = (stage.place ?? []).flatMap(({ objects: _, ...roles }) => (roles.roles ? [roles] : []));
    const place = [...laid, ...objectPlace(wanted)];
    const { place: _, ...bare } = stage;
    return place.length > 0 ? { ...bare, place } : bare;
  });
  return { stages };
}
