/** What a scene may refer to besides its own entries; handed in, since this layer does not see the catalogue. */

import type { SceneFile, SceneMaterial } from '../model/scene-file.ts';

export type KnownMaterial = Omit<SceneMaterial, 'source'>;

export interface KnownIds {
  readonly materials: ReadonlyMap<string, KnownMaterial>;
  readonly vehicles: ReadonlySet<string>;
}

/** Catalogue and scene together; a scene's own entry replaces the catalogue's. */
export function withScene(known: KnownIds, scene: SceneFile): KnownIds {
  const materials = new Map(known.materials);
  for (const material of scene.materials ?? []) materials.set(material.id, material);
  return { materials, vehicles: new Set([...known.vehicles, ...(scene.vehicles ?? []).map((vehicle) => vehicle.id)]) };
}
