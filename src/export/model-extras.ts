/** What the nodes of a model say besides their shape: places, materials, thicknesses, loads. Units stand in the keys. */

import type { SectionSource } from '../mesh/section-source.ts';
import type { SceneObject } from '../model/scene-file.ts';
import { mmFromMetres } from '../model/units.ts';
import type { Project } from '../project/evaluate-project.ts';
import { laidOf } from '../project/take-off.ts';

export interface ModelExtras {
  readonly model: Readonly<Record<string, unknown>>;
  /** Per zone. */
  readonly zones: readonly Readonly<Record<string, unknown>>[];
  /** Per zone and layer. */
  readonly layers: readonly (readonly Readonly<Record<string, unknown>>[])[];
  /** By `standingKey`. */
  readonly objects: ReadonlyMap<string, Readonly<Record<string, unknown>>>;
}

/** Ids are unique among their own kind only. */
export function standingKey(kind: string, id: string): string {
  return `${kind === 'edge' || kind === 'column' || kind === 'outlet' ? kind : 'object'} ${id}`;
}

/** Extras of a whole model. */
export function modelExtras(project: Project, { input, datumM, scene }: SectionSource): ModelExtras {
  return {
    model: {
      scene: scene.name,
      unit: 'm',
      originM: [...input.originM],
      datumM,
      axes: 'x = originM[0] + X, y = originM[1] - Z, level = datumM + Y',
      note: 'Compares entered loads with entered limits; not a structural check.',
    },
    zones: zoneExtras(project),
    layers: layerExtras(project),
    objects: objectExtras(project),
  };
}

function zoneExtras({ evaluation, scene }: Project): Record<string, unknown>[] {
  return evaluation.input.zones.map(({ id, imposedKNm2, buildUp }, z) => {
    const { areaM2, dryKN, saturatedKN } = evaluation.zones[z];
    const { use } = scene.zones[z];
    const vegetation = { vegetationKNm2: buildUp.vegetationKNm2 };
    return { zone: id, ...(use === undefined ? {} : { use }), buildUp: buildUp.id, areaM2, imposedKNm2, ...vegetation, dryKN, saturatedKN };
  });
}

/** Loads are means over the zone; a layer's part of the zone's load is these times its area. */
function layerExtras(project: Project): Record<string, unknown>[][] {
  const { evaluation } = project;
  const all = evaluation.input.zones.map((): Record<string, unknown>[] => []);
  for (const { zone, layer, stage, areaM2, placedM3 } of laidOf(evaluation)) {
    const { id, buildUp } = evaluation.input.zones[zone];
    const { materialId, name, role, rangeM, thicknessM, ...weight } = buildUp.layers[layer];
    const { makeUpM } = evaluation.zones[zone];
    const t = rangeM === null || makeUpM === null ? { min: thicknessM, mean: thicknessM, max: thicknessM } : makeUpM;
    all[zone][layer] = {
      zone: id,
      layer,
      materialId,
      material: name,
      role,
      thicknessMm: { min: mmFromMetres(t.min), mean: mmFromMetres(t.mean), max: mmFromMetres(t.max) },
      areaM2,
      placedM3,
      dryKNm2: weight.dryFixedKNm2 + weight.dryPerMKNm3 * t.mean,
      saturatedKNm2: weight.saturatedFixedKNm2 + weight.saturatedPerMKNm3 * t.mean,
      ...(stage < 0 ? {} : { stage: evaluation.plan.stages[stage].id }),
    };
  }
  return all;
}

function objectExtras({ scene }: Project): Map<string, Record<string, unknown>> {
  const known = new Map<string, Record<string, unknown>>();
  for (const { id, membraneTopM } of scene.deck.edges ?? []) known.set(standingKey('edge', id), { edge: id, membraneTopM });
  for (const { id, sizeM } of scene.deck.columns ?? []) known.set(standingKey('column', id), { column: id, sizeM: [...sizeM] });
  for (const { id, kind } of scene.deck.outlets ?? []) known.set(standingKey('outlet', id), { outlet: id, outletKind: kind });
  for (const object of scene.objects ?? []) known.set(standingKey(object.kind, object.id), weightOf(object));
  return known;
}

function weightOf(object: SceneObject): Record<string, unknown> {
  const common = { object: object.id, ...(object.name === undefined ? {} : { name: object.name }) };
  switch (object.kind) {
    case 'tree':
      return { ...common, massKg: object.massKg, spreadM: object.spreadM };
    case 'line':
      return { ...common, kNm: object.kNm, widthM: object.widthM };
    case 'block':
      return { ...common, kNm2: object.kNm2 };
    case 'retaining':
      return { ...common, retainedM: object.retainedM };
  }
}
