/** What each stage lays, heaps and asks for, as lists a foreman can read. */

import type { StageView } from '../model/maps.ts';
import type { Project } from './evaluate-project.ts';

type Laid = StageView['lays'][number];

/** Stages in order, given or derived. */
export function stageViews(project: Project): StageView[] {
  const { evaluation, scene } = project;
  return evaluation.plan.stages.map((stage, s) => {
    const given = stage.derived ? undefined : scene.stages?.[s];
    return {
      id: stage.id,
      name: stage.name,
      derived: stage.derived,
      lays: laidIn(project, s),
      objects: evaluation.input.objects.filter((_, o) => evaluation.plan.objectStages[o] === s).map((object) => object.id),
      stockpiles: (given?.stockpiles ?? []).map((pile) => ({
        id: pile.id,
        material: project.resolved.materialOf(pile.material).name,
        heightM: pile.heightM,
      })),
      floodTestMm: given?.floodTestMm ?? 0,
      holdPoints: (given?.holdPoints ?? []).map((hold) => ({
        id: hold.id,
        says: hold.says,
        releasedBy: hold.releasedBy ?? '',
        evidence: hold.evidence ?? '',
        on: hold.on ?? '',
      })),
      cautions: given?.cautions ?? [],
    };
  });
}

/** Materials laid in a stage, summed over zones, in the order of the build-ups. */
function laidIn(project: Project, stage: number): Laid[] {
  const { evaluation } = project;
  const laid = new Map<string, { -readonly [K in keyof Laid]: Laid[K] } & { zones: string[] }>();
  evaluation.input.zones.forEach((zone, z) => {
    zone.buildUp.layers.forEach((layer, i) => {
      if (evaluation.plan.layerStages[z][i] !== stage) return;
      const { areaM2, makeUpM3 } = evaluation.zones[z];
      const entry = laid.get(layer.materialId) ?? {
        materialId: layer.materialId,
        name: layer.name,
        role: layer.role,
        zones: [],
        areaM2: 0,
        volumeM3: 0,
      };
      // A build-up may have a material twice.
      if (!entry.zones.includes(zone.id)) entry.zones.push(zone.id);
      entry.areaM2 += areaM2;
      entry.volumeM3 += layer.voidVolumeM * areaM2 + (layer.rangeM ? makeUpM3 : layer.thicknessM * areaM2);
      laid.set(layer.materialId, entry);
    });
  });
  return [...laid.values()];
}
