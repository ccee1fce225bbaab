/** Which stage of a scene places what, known before anything is calculated anew; and stages derived from the build-ups, written out. */

import { deriveStages, type PlanInput, planStages, type StagePlan } from '../core/stages/plan.ts';
import type { Role } from '../model/roles.ts';
import type { SceneFile, ScenePlace, SceneStage } from '../model/scene-file.ts';
import { placeIndices } from '../scene/place-indices.ts';

/** Roles of the layers of a build-up, bottom to top, as they were looked up. */
export interface LayerRoles {
  readonly id: string;
  readonly layers: readonly { readonly role: string }[];
}

/**
 * Plans the stages of a scene, derived ones where it names none.
 * @param scene - scene
 * @param roles - roles of the layers of its build-ups
 */
export function stagePlanOf(scene: SceneFile, roles: readonly LayerRoles[]): StagePlan {
  return planStages(planInput(scene, roles));
}

/** Words for derived stages: by the name that the derivation gives them. */
export type NameStage = (derivedName: string) => string;

/**
 * The stages that follow from the build-ups alone, as a scene would name them.
 * @param scene - scene; what stages it has does not count
 * @param roles - roles of the layers of its build-ups
 * @param nameOf - name of a derived stage as it is to be written
 */
export function derivedStages(scene: SceneFile, roles: readonly LayerRoles[], nameOf: NameStage): SceneStage[] {
  return deriveStages({ ...planInput(scene, roles), stages: null }).map(({ id, name, place }) => ({
    id,
    name: nameOf(name),
    place: place.map(({ zones, roles: laid, objects }): ScenePlace => {
      const ids = (zones ?? []).map((z) => scene.zones[z].id);
      return {
        // Named one by one, even if they are all: a zone added later has layers of its own.
        ...(laid.length > 0 ? { zones: ids, roles: laid } : {}),
        ...(objects.length > 0 ? { objects: objects.map((o) => (scene.objects ?? [])[o].id) } : {}),
      };
    }),
  }));
}

function planInput(scene: SceneFile, roles: readonly LayerRoles[]): PlanInput {
  const rolesOf = new Map(roles.map(({ id, layers }) => [id, layers as readonly { readonly role: Role }[]]));
  const buildUps = new Map(
    scene.buildups.map(({ id, vegetation }) => [id, { layers: rolesOf.get(id) ?? [], vegetationKNm2: vegetation?.kNm2 ?? 0 }]),
  );
  const zoneIndex = new Map(scene.zones.map(({ id }, z) => [id, z]));
  const objectIndex = new Map((scene.objects ?? []).map(({ id }, o) => [id, o]));
  const noLayers = { layers: [], vegetationKNm2: 0 };
  return {
    zones: scene.zones.map(({ buildup }) => ({ buildUp: buildUps.get(buildup) ?? noLayers })),
    objects: scene.objects ?? [],
    stages: scene.stages?.length
      ? scene.stages.map(({ id, name, place = [] }) => ({
          id,
          name,
          place: place.map((one) => placeIndices(one, zoneIndex, objectIndex)),
        }))
      : null,
  };
}
