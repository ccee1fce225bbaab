/** What each stage lays, heaps and asks for, as lists a foreman can read. */

import { signedAreaM2 } from '../core/geometry/ring.ts';
import type { LaidLayer } from '../core/takeoff/take-off.ts';
import type { StageView, StockpileView } from '../model/maps.ts';
import { derivedStageName } from '../model/roles.ts';
import type { SceneStockpile } from '../model/scene-file.ts';
import type { Project } from './evaluate-project.ts';
import { laidOf } from './take-off.ts';
import { type Names, namesOf } from './words/names.ts';

type Laid = StageView['lays'][number];

/** Stages in order, given or derived. */
export function stageViews(project: Project): StageView[] {
  const { evaluation, scene } = project;
  const names = namesOf(scene, project.language);
  const laid = laidOf(evaluation);
  return evaluation.plan.stages.map((stage, s) => {
    const given = stage.derived ? undefined : scene.stages?.[s];
    return {
      id: stage.id,
      name: stage.derived ? derivedStageName(stage.name, project.language) : stage.name,
      derived: stage.derived,
      lays: laidIn(
        project,
        laid.filter((one) => one.stage === s),
        names,
      ),
      objects: evaluation.input.objects.filter((_, o) => evaluation.plan.objectStages[o] === s).map((object) => object.id),
      stockpiles: (given?.stockpiles ?? []).map((pile, i) => stockpileView(project, { s, i, pile }, names)),
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

/** The heap as it was calculated with. */
function stockpileView(
  { evaluation, resolved }: Project,
  { s, i, pile }: { readonly s: number; readonly i: number; readonly pile: SceneStockpile },
  names: Names,
): StockpileView {
  const laid = evaluation.input.stages?.[s]?.stockpiles[i];
  const areaM2 = laid ? Math.abs(signedAreaM2(laid.ring)) : 0;
  const material = names.name(resolved.materialOf(pile.material).name);
  return { id: pile.id, material, heightM: pile.heightM, areaM2, weightKN: areaM2 * (laid?.kNm2 ?? 0) };
}

/** Materials laid in a stage, summed over zones, in the order of the build-ups. */
function laidIn({ evaluation }: Project, layers: readonly LaidLayer[], names: Names): Laid[] {
  const laid = new Map<string, { -readonly [K in keyof Laid]: Laid[K] } & { zones: string[] }>();
  for (const one of layers) {
    const zone = evaluation.input.zones[one.zone];
    const { materialId, name, role } = zone.buildUp.layers[one.layer];
    const entry = laid.get(materialId) ?? { materialId, name: names.name(name), role, zones: [], areaM2: 0, volumeM3: 0 };
    // A build-up may have a material twice.
    if (!entry.zones.includes(zone.id)) entry.zones.push(zone.id);
    entry.areaM2 += one.areaM2;
    entry.volumeM3 += one.placedM3;
    laid.set(materialId, entry);
  }
  return [...laid.values()];
}
