/** Which stage places which layer, vegetation and object; what is placed out of order and what is never placed. */

import type { PlaceInput, StageInput } from '../../model/deck-input.ts';
import { ROLES, type Role } from '../../model/roles.ts';

/** What a plan is made from: of a deck, what stages say and what zones are built up of. */
export interface PlanInput {
  readonly zones: readonly { readonly buildUp: PlannedBuildUp }[];
  readonly objects: readonly unknown[];
  /** Null: derived from the build-ups, one stage per role in stacking order. */
  readonly stages: readonly PlannedStage[] | null;
}

export type PlannedStage = Pick<StageInput, 'id' | 'name' | 'place'>;

/** Roles from the bottom up, and whether plants stand on top. */
export interface PlannedBuildUp {
  readonly layers: readonly { readonly role: Role }[];
  readonly vegetationKNm2: number;
}

export interface StagePlan {
  readonly stages: readonly { readonly id: string; readonly name: string; readonly derived: boolean }[];
  /** Per zone, per layer: stage that places it, -1 never. */
  readonly layerStages: readonly Int16Array[];
  /** Per zone: stage that brings the vegetation load, -1 never. */
  readonly vegetationStages: Int16Array;
  /** Per object. */
  readonly objectStages: Int16Array;
  /** Layers placed while the layer below was missing. */
  readonly outOfOrder: readonly { readonly zone: number; readonly layer: number; readonly stage: number }[];
  /** Vegetation that comes while layers are missing. */
  readonly bareVegetation: readonly { readonly zone: number; readonly stage: number }[];
}

/**
 * Plans the stages of a deck, or derives them.
 * @param input - zones, objects and stages [-]
 * @returns the plan [-]
 * @source contract.md, section 2, Stages
 */
export function planStages(input: PlanInput): StagePlan {
  const stages = input.stages ?? deriveStages(input);
  const layerStages = input.zones.map((zone) => new Int16Array(zone.buildUp.layers.length).fill(-1));
  const vegetationStages = new Int16Array(input.zones.length).fill(-1);
  const objectStages = new Int16Array(input.objects.length).fill(-1);
  const outOfOrder: { zone: number; layer: number; stage: number }[] = [];
  const bareVegetation: { zone: number; stage: number }[] = [];
  stages.forEach((stage, s) => {
    for (const place of stage.place) {
      for (const object of place.objects) if (objectStages[object] < 0) objectStages[object] = s;
      for (const zone of place.zones ?? input.zones.keys()) {
        const { buildUp } = input.zones[zone];
        for (const layer of placeLayers(buildUp, layerStages[zone], place.roles, s)) outOfOrder.push({ zone, layer, stage: s });
        if (place.roles.includes('vegetation') && buildUp.vegetationKNm2 > 0 && vegetationStages[zone] < 0) {
          vegetationStages[zone] = s;
          if (layerStages[zone].includes(-1)) bareVegetation.push({ zone, stage: s });
        }
      }
    }
  });
  // A build-up whose stages never name the vegetation gets it with its top layer: its weight must not be lost.
  input.zones.forEach((zone, z) => {
    if (vegetationStages[z] < 0 && zone.buildUp.vegetationKNm2 > 0) vegetationStages[z] = layerStages[z].at(-1) ?? -1;
  });
  const derived = input.stages === null;
  return {
    stages: stages.map(({ id, name }) => ({ id, name, derived })),
    layerStages,
    vegetationStages,
    objectStages,
    outOfOrder,
    bareVegetation,
  };
}

/**
 * Places the next layers from the bottom up whose role is listed: the run that begins at the lowest missing layer and,
 * for a role that this run did not reach, the lowest missing layer of that role, which then lacks its support.
 * Returns the layers placed without support.
 */
function placeLayers(buildUp: PlannedBuildUp, stageOf: Int16Array, roles: readonly Role[], stage: number): number[] {
  const unsupported: number[] = [];
  const reached = new Set<Role>();
  const run = (from: number): void => {
    for (let i = from; i < stageOf.length; i++) {
      if (stageOf[i] >= 0) continue;
      const { role } = buildUp.layers[i];
      if (!roles.includes(role)) return;
      stageOf[i] = stage;
      reached.add(role);
    }
  };
  const lowest = stageOf.indexOf(-1);
  if (lowest < 0) return unsupported;
  run(lowest);
  for (const role of roles) {
    if (reached.has(role)) continue;
    const jump = buildUp.layers.findIndex((layer, i) => stageOf[i] < 0 && layer.role === role);
    if (jump < 0) continue;
    unsupported.push(jump);
    run(jump);
  }
  return unsupported;
}

/**
 * Stages of a deck that names none: one per role in stacking order; a role comes again where a build-up has it twice. Objects come last.
 * @param input - zones and objects [-]
 * @returns stages in order [-]
 * @source contract.md, section 2, Stages
 */
export function deriveStages(input: PlanInput): PlannedStage[] {
  const next = input.zones.map(() => 0);
  const stages: PlannedStage[] = [];
  const counts = new Map<Role, number>();
  const add = (role: Role, zones: readonly number[]): void => {
    const count = (counts.get(role) ?? 0) + 1;
    counts.set(role, count);
    const name = `${role[0].toUpperCase()}${role.slice(1)}${count > 1 ? ` (${count})` : ''}`;
    stages.push({ id: `${role.replaceAll(' ', '-')}${count > 1 ? `-${count}` : ''}`, name, place: [place(zones, role)] });
  };
  const waiting = (zone: PlanInput['zones'][number], z: number) => next[z] < zone.buildUp.layers.length;
  while (input.zones.some(waiting)) {
    for (const role of ROLES) {
      const zones = [...input.zones.keys()].filter((z) => input.zones[z].buildUp.layers[next[z]]?.role === role);
      if (zones.length === 0) continue;
      for (const z of zones) while (input.zones[z].buildUp.layers[next[z]]?.role === role) next[z]++;
      add(role, zones);
    }
  }
  const planted = [...input.zones.keys()].filter((z) => input.zones[z].buildUp.vegetationKNm2 > 0);
  if (planted.length > 0 && !counts.has('vegetation')) add('vegetation', planted);
  if (input.objects.length > 0) {
    const objects = [...input.objects.keys()];
    stages.push({ id: 'objects', name: 'Trees, walls and blocks', place: [{ zones: [], roles: [], objects }] });
  }
  return stages;
}

function place(zones: readonly number[], role: Role): PlaceInput {
  return { zones, roles: [role], objects: [] };
}
