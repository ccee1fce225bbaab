/** Layers of a build-up with their materials looked up: weights and water per square metre and per metre of thickness. */

import type { BuildUpInput, LayerInput } from '../model/deck-input.ts';
import type { SceneBuildUp, SceneLayer } from '../model/scene-file.ts';
import { metresFromMm, WATER_KNM2_PER_LM2, weightKN } from '../model/units.ts';
import type { MaterialOf, ResolvedMaterial } from './materials.ts';

/** A build-up as the core takes it. Contract, section 2: Infill, Area load, Held. */
export function resolveBuildUp(buildUp: SceneBuildUp, materialOf: MaterialOf): BuildUpInput {
  return {
    id: buildUp.id,
    layers: buildUp.layers.map((layer, i) => {
      const below = i > 0 ? materialOf(buildUp.layers[i - 1].material) : null;
      return resolveLayer(layer, materialOf(layer.material), layer.infill ? metresFromMm(below?.voidLm2 ?? 0) : 0);
    }),
    vegetationKNm2: buildUp.vegetation?.kNm2 ?? 0,
  };
}

/** Thickness of a layer: its own, else its material's; an infill without one is flush with its element. */
export function layerThickness(layer: SceneLayer, material: ResolvedMaterial): Pick<LayerInput, 'thicknessM' | 'rangeM'> {
  const given = layer.thicknessMm ?? (layer.infill ? 0 : (material.thicknessMm ?? 0));
  if (typeof given === 'number') return { thicknessM: metresFromMm(given), rangeM: null };
  return { thicknessM: metresFromMm(given.nominal), rangeM: { min: metresFromMm(given.min), max: metresFromMm(given.max) } };
}

/** `voidVolumeM`: litres per m² of voids to fill are millimetres, so a thousandth of them is m³/m². */
function resolveLayer(layer: SceneLayer, material: ResolvedMaterial, voidVolumeM: number): LayerInput {
  const { density, areal } = material;
  const retainedLm2 = layer.orientation === 'retention' ? (material.retentionLm2 ?? 0) : 0;
  const heldPerMLm2 = ((material.waterCapacityPercent ?? 0) / 100) * 1000;
  const dryPerMKNm3 = weightKN(density?.dry ?? 0);
  const saturatedPerMKNm3 = weightKN(density?.saturated ?? 0);
  return {
    materialId: material.id,
    name: material.name,
    role: material.role,
    loose: density !== undefined && material.thicknessMm === undefined,
    ...layerThickness(layer, material),
    dryFixedKNm2: weightKN(areal?.dry ?? 0) + dryPerMKNm3 * voidVolumeM,
    dryPerMKNm3,
    saturatedFixedKNm2: weightKN(areal?.saturated ?? 0) + saturatedPerMKNm3 * voidVolumeM + retainedLm2 * WATER_KNM2_PER_LM2,
    saturatedPerMKNm3,
    heldFixedLm2: retainedLm2 + heldPerMLm2 * voidVolumeM,
    heldPerMLm2,
    voidVolumeM,
  };
}
