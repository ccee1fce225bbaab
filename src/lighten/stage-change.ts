/** New layers need a stage that lays them: the one that laid what they come in place of. */

import { planStages, type StagePlan } from '../core/stages/plan.ts';
import type { BuildUpInput } from '../model/deck-input.ts';
import type { Role } from '../model/roles.ts';
import type { SceneFile, ScenePlace } from '../model/scene-file.ts';
import type { Ground, Site } from './ground.ts';
import type { Recipe } from './recipe.ts';

/** Roles that a stage places in one zone before anything else it places. */
export interface StageChange {
  /** Index of the stage. */
  readonly stage: number;
  readonly roles: readonly Role[];
}

/** Stages of the scene with the build-up in the place of a zone's own. */
export function planWith(buildUp: BuildUpInput, change: StageChange | null, { z }: Ground, { on }: Site): StagePlan {
  const zones = on.input.zones.map((zone, i) => (i === z ? { ...zone, buildUp } : zone));
  const stages =
    on.input.stages?.map((stage, s) =>
      s === change?.stage ? { ...stage, place: [{ zones: [z], roles: change.roles, objects: [] }, ...stage.place] } : stage,
    ) ?? null;
  return planStages({ ...on.input, zones, stages });
}

/** Layers of a zone that no stage places, or too early. */
export function unplaced(plan: StagePlan, { z }: Ground): number {
  const left = plan.layerStages[z].reduce((sum, stage) => sum + (stage < 0 ? 1 : 0), 0);
  return left + plan.outOfOrder.filter(({ zone }) => zone === z).length;
}

/**
 * What the stages need so that they lay a recipe's layers as they lay those that are there.
 * @returns null where nothing is missing; undefined where no stage can be told to lay them
 */
export function stageChange(
  recipe: Recipe,
  next: BuildUpInput,
  { ground, site, rest }: { readonly ground: Ground; readonly site: Site; readonly rest: number },
): StageChange | null | undefined {
  const now = planWith(site.on.input.zones[ground.z].buildUp, null, ground, site);
  const missing = unplaced(now, ground);
  if (unplaced(planWith(next, null, ground, site), ground) <= missing) return null;
  const stage = now.layerStages[ground.z][rest];
  if (stage < 0) return undefined;
  const own = new Set(ground.buildUp.layers);
  const fresh = [...new Set(recipe.layers.filter(({ layer }) => !own.has(layer)).map(({ material }) => material.role))];
  // Where the stage lays what is below as well, all it lays here has to come in one go.
  const changes = [fresh, [...new Set([...rolesIn(site, ground, stage), ...fresh])]].map((roles) => ({ stage, roles }));
  return changes.find((change) => {
    const plan = planWith(next, change, ground, site);
    return unplaced(plan, ground) <= missing && keepsStages(recipe, ground, now, plan);
  });
}

/** Roles that a stage lays in a zone. */
function rolesIn({ on }: Site, { z }: Ground, stage: number): Role[] {
  const places = on.input.stages?.[stage].place ?? [];
  return places.flatMap(({ zones, roles }) => (zones === null || zones.includes(z) ? roles : []));
}

/** Whether every layer that stays is laid when it was. */
function keepsStages({ layers }: Recipe, { z, buildUp }: Ground, now: StagePlan, plan: StagePlan): boolean {
  return layers.every(({ layer }, i) => {
    const was = buildUp.layers.indexOf(layer);
    return was < 0 || now.layerStages[z][was] === plan.layerStages[z][i];
  });
}

/** Stages of a scene with the changes of its zones; zones that get the same in a stage share an entry. */
export function stagesWith(
  scene: SceneFile,
  changes: readonly { readonly zone: string; readonly change: StageChange }[],
): SceneFile['stages'] {
  return scene.stages?.map((stage, s) => {
    const entries = new Map<string, ScenePlace & { readonly zones: string[] }>();
    for (const { zone, change } of changes) {
      if (change.stage !== s) continue;
      const key = change.roles.join('\n');
      const entry = entries.get(key) ?? { zones: [], roles: change.roles };
      entry.zones.push(zone);
      entries.set(key, entry);
    }
    return entries.size === 0 ? stage : { ...stage, place: [...entries.values(), ...(stage.place ?? [])] };
  });
}
