/** Zones and roles at one stage: what is ticked, what it lays, what lies there already, what comes later or never. */

import type { StagePlan } from '../core/stages/plan.ts';
import { ROLES, type Role } from '../model/roles.ts';
import type { SceneFile, SceneStage } from '../model/scene-file.ts';
import { layingsOf } from './stage-places.ts';
import { type LayerRoles, stagePlanOf } from './stage-plan.ts';

/** A role of a zone's build-up. */
export interface GridCell {
  readonly zone: string;
  readonly role: Role;
  /** The stage lists it. */
  readonly ticked: boolean;
  /** How many layers have the role (plants count as one where no layer is vegetation), and how many of them this stage lays. */
  readonly layers: number;
  readonly here: number;
  /** Index of the last earlier and of the next later stage that lays one; null for none. */
  readonly before: number | null;
  readonly later: number | null;
  /** How many no stage lays. */
  readonly never: number;
  /** What this stage lays it on without: roles missing below. */
  readonly missing: readonly Role[];
}

export interface GridRow {
  readonly zone: string;
  readonly buildUp: string;
  readonly cells: ReadonlyMap<Role, GridCell>;
}

export interface StageGrid {
  /** Roles that the scene's build-ups have, bottom to top. */
  readonly roles: readonly Role[];
  /** In the order of the zones. */
  readonly rows: readonly GridRow[];
  readonly objects: readonly GridObject[];
}

export interface GridObject {
  readonly id: string;
  readonly ticked: boolean;
  /** Index of the stage that sets it up; null for none. */
  readonly stage: number | null;
}

/**
 * The grid of one stage.
 * @param scene - scene with stages
 * @param roles - roles of the layers of its build-ups
 * @param at - index of the stage
 */
export function stageGrid(scene: SceneFile, roles: readonly LayerRoles[], at: number): StageGrid {
  const plan = stagePlanOf(scene, roles);
  const stage = scene.stages?.[at];
  const layings = stage && layingsOf(scene, stage);
  const layersOf = new Map(roles.map(({ id, layers }) => [id, layers]));
  const planted = new Set(scene.buildups.filter(({ vegetation }) => (vegetation?.kNm2 ?? 0) > 0).map(({ id }) => id));
  const rows = scene.zones.map((zone, z): GridRow => {
    const listed = new Set((layings?.get(zone.id) ?? []).flat());
    const layers = (layersOf.get(zone.buildup) ?? []).map(({ role }) => role as Role);
    const all = planted.has(zone.buildup) ? [...layers, 'vegetation' as const] : layers;
    const look = { plan, z, at, layers, zone: zone.id };
    const cells = [...new Set(all)].map((role): [Role, GridCell] => [role, { ...cellOf(look, role), ticked: listed.has(role) }]);
    return { zone: zone.id, buildUp: zone.buildup, cells: new Map(cells) };
  });
  const used = new Set(rows.flatMap(({ cells }) => [...cells.keys()]));
  return { roles: ROLES.filter((role) => used.has(role)), rows, objects: objectsAt(scene, plan, stage) };
}

interface Look {
  readonly plan: StagePlan;
  readonly z: number;
  readonly at: number;
  readonly layers: readonly Role[];
  readonly zone: string;
}

function cellOf({ plan, z, at, layers, zone }: Look, role: Role): Omit<GridCell, 'ticked'> {
  const stages = plan.layerStages[z];
  const own = layers.flatMap((one, i) => (one === role ? [i] : []));
  // Plants without a layer of their own.
  const laidIn = own.length > 0 ? own.map((i) => stages[i]) : [plan.vegetationStages[z]];
  const earlier = laidIn.filter((s) => s >= 0 && s < at);
  const later = laidIn.filter((s) => s > at);
  const isMissing = (i: number) => stages[i] < 0 || stages[i] > at;
  const lowest = plan.outOfOrder.find(({ zone: of, layer, stage }) => of === z && stage === at && layers[layer] === role)?.layer;
  const bare = role === 'vegetation' && plan.bareVegetation.some(({ zone: of, stage }) => of === z && stage === at);
  const top = lowest ?? (bare ? layers.length : 0);
  return {
    zone,
    role,
    layers: laidIn.length,
    here: laidIn.filter((s) => s === at).length,
    before: earlier.length > 0 ? Math.max(...earlier) : null,
    later: later.length > 0 ? Math.min(...later) : null,
    never: laidIn.filter((s) => s < 0).length,
    missing: [...new Set(layers.slice(0, top).filter((_, i) => isMissing(i)))],
  };
}

function objectsAt(scene: SceneFile, plan: StagePlan, stage: SceneStage | undefined): GridObject[] {
  const listed = new Set((stage?.place ?? []).flatMap(({ objects = [] }) => objects));
  return (scene.objects ?? []).map(({ id }, o) => ({
    id,
    ticked: listed.has(id),
    stage: plan.objectStages[o] < 0 ? null : plan.objectStages[o],
  }));
}
