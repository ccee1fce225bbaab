/** Build-ups of a scene: change one, add one, lay them in zones. Each gives a patch of the scene; ids and taking out are in `references.ts`. */

import type { ScenePatch } from '../model/history.ts';
import type { SceneBuildUp, SceneFile } from '../model/scene-file.ts';
import { freeId } from '../scene/free-id.ts';
import type { Layers } from './build-ups-layers.ts';

/** Keys of a build-up with new values; null takes an optional one out. */
export type BuildUpChange = { readonly [Key in Exclude<keyof SceneBuildUp, 'id'>]?: SceneBuildUp[Key] | null };

/**
 * Other values for parts of a build-up.
 * @param scene - the scene
 * @param id - the build-up
 * @param change - what becomes of it
 */
export function changeBuildUp(scene: SceneFile, id: string, change: BuildUpChange): ScenePatch {
  const without = (one: SceneBuildUp) =>
    Object.fromEntries(Object.entries({ ...one, ...change }).filter(([, value]) => value !== null)) as unknown as SceneBuildUp;
  return { buildups: scene.buildups.map((one) => (one.id === id ? without(one) : one)) };
}

/**
 * Other layers of a build-up, made from those it has.
 * @param scene - the scene
 * @param id - the build-up
 * @param make - gives the new layers
 */
export function changeLayers(scene: SceneFile, id: string, make: (layers: Layers) => Layers): ScenePatch {
  const layers = scene.buildups.find((one) => one.id === id)?.layers;
  return layers ? changeBuildUp(scene, id, { layers: make(layers) }) : {};
}

/** A build-up that has no id yet. */
export type NewBuildUp = Omit<SceneBuildUp, 'id'>;

/** An id for a new build-up: what is wished for, if it is free. */
export function buildUpId(scene: SceneFile, wish: string): string {
  return freeId(wish, 'B', new Set(scene.buildups.map(({ id }) => id)));
}

/**
 * One build-up more, laid in zones.
 * @param scene - the scene
 * @param buildUp - with an id that is free
 * @param zones - zones that get it; none is right too
 */
export function addBuildUp(scene: SceneFile, buildUp: SceneBuildUp, zones: readonly string[]): ScenePatch {
  return { buildups: [...scene.buildups, buildUp], ...(zones.length > 0 ? assignBuildUp(scene, buildUp.id, zones) : {}) };
}

/**
 * Lays a build-up in zones.
 * @param scene - the scene
 * @param id - the build-up
 * @param zones - zones that get it instead of theirs
 */
export function assignBuildUp(scene: SceneFile, id: string, zones: readonly string[]): ScenePatch {
  return { zones: scene.zones.map((zone) => (zones.includes(zone.id) && zone.buildup !== id ? { ...zone, buildup: id } : zone)) };
}

/** Zones that a build-up lies in, by their ids. */
export function zonesWith(scene: SceneFile, id: string): readonly string[] {
  return scene.zones.filter(({ buildup }) => buildup === id).map((zone) => zone.id);
}
