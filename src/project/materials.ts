/** Materials and vehicles of catalogue and scene together; a scene's own entry replaces the catalogue's. */

import { materialById, vehicleById } from '../catalogue/catalogue.ts';
import type { SceneFile, SceneMaterial } from '../model/scene-file.ts';
import { sourceLine } from '../model/source.ts';
import { weightKN } from '../model/units.ts';
import type { KnownIds } from '../scene/known-ids.ts';

export interface ResolvedMaterial extends Omit<SceneMaterial, 'source'> {
  /** Where its weight comes from, for people. */
  readonly sourceText: string;
  readonly fromScene: boolean;
}

export type MaterialOf = (id: string) => ResolvedMaterial;

/** What a scene may refer to, for the reader of scene files. */
export const KNOWN_IDS: KnownIds = { materials: materialById, vehicles: new Set(vehicleById.keys()) };

/** Look-up of materials for one scene; ids were checked when the file was read. */
export function materialLookup(scene: SceneFile): MaterialOf {
  const own = new Map((scene.materials ?? []).map((material) => [material.id, material]));
  const looked = new Map<string, ResolvedMaterial>();
  const look = (id: string): ResolvedMaterial => {
    const fromScene = own.get(id);
    if (fromScene) return { ...fromScene, sourceText: fromScene.source ?? 'scene file, no source given', fromScene: true };
    const material = materialById.get(id);
    if (!material) throw new RangeError(`materialLookup: no material "${id}" in catalogue or scene`);
    const source = material.sources.density ?? material.sources.areal;
    return { ...material, sourceText: source ? sourceLine(source) : 'no source', fromScene: false };
  };
  return (id) => {
    const material = looked.get(id) ?? look(id);
    looked.set(id, material);
    return material;
  };
}

/** Saturated weight of a material lying loose [kN/m³]; contract, section 2, Stages. */
export function looseKNm3({ density, compactionFactor }: ResolvedMaterial): number {
  return weightKN(density?.saturated ?? 0) / (compactionFactor ?? 1);
}
