/** Build-ups with names, thicknesses, weights and sources looked up, for the app's lists and editors. */

import { stackCoefficients } from '../core/layers/coefficients.ts';
import type { BuildUpInput } from '../model/deck-input.ts';
import type { BuildUpLoad, BuildUpView } from '../model/engine.ts';
import type { Language } from '../model/language.ts';
import { mmFromMetres } from '../model/units.ts';
import type { Calculated } from './evaluate-project.ts';
import { resolveBuildUp } from './resolve-layers.ts';
import { namesOf } from './words/names.ts';

export function buildUpViews({ scene, resolved, evaluation }: Calculated, language: Language): BuildUpView[] {
  const names = namesOf(scene, language);
  return scene.buildups.map((buildUp): BuildUpView => {
    const input = resolveBuildUp(buildUp, resolved.materialOf);
    const zones = scene.zones.flatMap((zone, z) => (zone.buildup === buildUp.id ? [z] : []));
    return {
      id: buildUp.id,
      name: buildUp.name,
      zones: zones.map((z) => scene.zones[z].id),
      areaM2: zones.reduce((sum, z) => sum + evaluation.zones[z].areaM2, 0),
      bays: scene.deck.bays.flatMap(({ id }, b) => (zones.some((z) => evaluation.zoneShares[z].areaM2[b] > 0) ? [id] : [])),
      sum: loadOf(input),
      layers: input.layers.map((layer, i) => {
        const { orientation, infill } = buildUp.layers[i];
        const material = resolved.materialOf(layer.materialId);
        const { thicknessM, rangeM } = layer;
        return {
          materialId: material.id,
          name: names.name(material.name),
          role: material.role,
          thicknessMm: mmFromMetres(thicknessM),
          rangeMm: rangeM ? { min: mmFromMetres(rangeM.min), max: mmFromMetres(rangeM.max) } : null,
          adjustable: material.density !== undefined,
          density: material.density ?? null,
          areal: material.areal ?? null,
          orientation: orientation ?? null,
          infill: infill ?? false,
          load: loadOf({ ...input, layers: [layer], vegetationKNm2: 0 }),
          source: names.source(material.sourceText),
        };
      }),
    };
  });
}

/** The make-up layer at its nominal thickness. */
function loadOf(buildUp: BuildUpInput): BuildUpLoad {
  const nominalM = buildUp.layers.find(({ rangeM }) => rangeM !== null)?.thicknessM ?? 0;
  const { dry, saturated, held, depth } = stackCoefficients(buildUp, () => true, true);
  const at = ({ fixed, perM }: typeof dry) => fixed + perM * nominalM;
  return { depthMm: mmFromMetres(at(depth)), dryKNm2: at(dry), saturatedKNm2: at(saturated), heldLm2: at(held) };
}
