/** Checks materials and build-ups: weights, thicknesses, make-up layer, infill. */

import type { SceneBuildUp, SceneFile, SceneLayer, SceneThickness } from '../model/scene-file.ts';
import type { IssueList, IssueWords } from './issue-list.ts';
import type { KnownIds, KnownMaterial } from './known-ids.ts';
import { type Path, pathText } from './path.ts';

/** Densities outside this range suggest another unit [kg/m³]: air-light foam to beyond steel in bulk. */
export const USUAL_DENSITY = { least: 10, greatest: 4000 };
/** Thickest layer that raises no question [mm]. */
const USUAL_THICKNESS_MM = 3000;

/** Checks the scene's own materials. */
export function checkMaterials(scene: SceneFile, issues: IssueList): void {
  for (const [i, material] of (scene.materials ?? []).entries()) checkMaterial(material, ['materials', i], issues);
}

function checkMaterial(material: KnownMaterial, path: Path, issues: IssueList): void {
  const { id, density, areal } = material;
  if (density === undefined && areal === undefined) {
    issues.error('MATERIAL_NO_WEIGHT', path, () => ({
      got: `material "${id}" without a weight`,
      expected:
        '"density" { dry, saturated } [kg/m³] for granular materials and slabs, or "areal" { dry, saturated } [kg/m²] for sheets and elements',
      mend: 'Add one of the two.',
    }));
  }
  if (density !== undefined && areal !== undefined) {
    issues.error('MATERIAL_TWO_WEIGHTS', path, () => ({
      got: `material "${id}" with "density" and "areal"`,
      expected: 'one of the two, since its weight would count twice or not at all',
      mend: 'Keep "density" [kg/m³] for a granular material or slab, "areal" [kg/m²] for a sheet or element.',
    }));
  }
  for (const [key, weight] of Object.entries({ density, areal })) {
    if (weight === undefined || weight.saturated >= weight.dry) continue;
    issues.warning('SATURATED_BELOW_DRY', [...path, key, 'saturated'], () => ({
      got: `${weight.saturated} saturated below ${weight.dry} dry for "${id}"`,
      expected: 'saturated at least as heavy as dry',
      mend: 'Check whether the two were swapped; the permanent load counts saturated.',
    }));
  }
  for (const [key, value] of Object.entries(density ?? {})) {
    if (value >= USUAL_DENSITY.least && value <= USUAL_DENSITY.greatest) continue;
    issues.warning('DENSITY_UNUSUAL', [...path, 'density', key], () => ({
      got: `${value} kg/m³ for "${id}"`,
      expected: `usually ${USUAL_DENSITY.least} to ${USUAL_DENSITY.greatest} kg/m³`,
      mend:
        value < USUAL_DENSITY.least
          ? `Was t/m³ meant? Then write ${Number((value * 1000).toPrecision(6))}.`
          : 'Check the value; kg/m³ is asked for.',
    }));
  }
}

/** Checks each build-up against its materials. */
export function checkBuildUps(scene: SceneFile, known: KnownIds, issues: IssueList): void {
  for (const [i, buildup] of scene.buildups.entries()) checkBuildUp(buildup, ['buildups', i], known, issues);
}

interface LayerCase {
  readonly layer: SceneLayer;
  readonly path: Path;
  /** Null where the reference leads nowhere, which is reported elsewhere. */
  readonly material: KnownMaterial | null;
  readonly issues: IssueList;
}

function checkBuildUp(buildup: SceneBuildUp, path: Path, known: KnownIds, issues: IssueList): void {
  if (buildup.layers.length === 0) {
    issues.warning('BUILDUP_EMPTY', [...path, 'layers'], () => ({
      got: `no layers in build-up "${buildup.id}"`,
      expected: 'at least one layer, from bottom to top',
      mend: 'Add its layers; until then its zones count as bare deck.',
    }));
  }
  let firstRange: number | null = null;
  for (const [j, layer] of buildup.layers.entries()) {
    const layerPath = [...path, 'layers', j];
    const below = buildup.layers[j - 1];
    const layerCase = { layer, path: layerPath, material: known.materials.get(layer.material) ?? null, issues };
    checkLayer(layerCase);
    if (layer.infill === true) checkInfill(layerCase, below, known);
    if (typeof layer.thicknessMm !== 'object') continue;
    if (firstRange !== null) reportSecondRange(buildup, pathText([...path, 'layers', firstRange]), layerPath, issues);
    firstRange ??= j;
  }
}

function reportSecondRange(buildup: SceneBuildUp, first: string, path: Path, issues: IssueList): void {
  issues.error('BUILDUP_TWO_RANGES', [...path, 'thicknessMm'], () => ({
    got: `a second thickness range in build-up "${buildup.id}", the first at ${first}`,
    expected: 'at most one make-up layer, since only one can take up the difference in level',
    mend: 'Give this layer or the other one a single thickness.',
  }));
}

function checkLayer(layerCase: LayerCase): void {
  const { layer, material, path, issues } = layerCase;
  checkThickness(layer.thicknessMm, [...path, 'thicknessMm'], issues);
  if (layer.thicknessMm === 0 && layer.infill !== true) {
    issues.error('OUT_OF_RANGE', [...path, 'thicknessMm'], () => ({
      got: '0',
      expected: 'a thickness over 0 mm; only an infill may lie flush with its element',
      mend: 'Give the layer its thickness, or take it out of the build-up.',
    }));
  }
  if (material === null) return;
  if (material.areal !== undefined) checkAreal(layerCase, material);
  else if (layer.infill !== true && layer.thicknessMm === undefined && material.thicknessMm === undefined) {
    issues.error('LAYER_NO_THICKNESS', path, () => ({
      got: `no thickness for "${layer.material}", neither here nor on the material`,
      expected: '"thicknessMm" [mm], since its weight follows from density and thickness',
      mend: 'Add "thicknessMm" to the layer.',
    }));
  }
}

function checkThickness(thickness: SceneThickness | undefined, path: Path, issues: IssueList): void {
  if (thickness === undefined) return;
  const greatest = typeof thickness === 'number' ? thickness : thickness.max;
  if (greatest > USUAL_THICKNESS_MM) {
    issues.warning('THICKNESS_UNUSUAL', path, () => ({
      got: `${greatest} mm, that is ${greatest / 1000} m`,
      expected: `a layer of at most ${USUAL_THICKNESS_MM} mm`,
      mend: 'Check the value; millimetres are asked for.',
    }));
  }
  if (typeof thickness === 'number' || (thickness.min <= thickness.nominal && thickness.nominal <= thickness.max)) return;
  issues.error('THICKNESS_ORDER', path, () => ({
    got: `min ${thickness.min}, nominal ${thickness.nominal}, max ${thickness.max}`,
    expected: 'min ≤ nominal ≤ max [mm]',
    mend: 'Put the three in order.',
  }));
}

/** A sheet's weight is per m² and would not follow another thickness. */
function checkAreal({ layer, path, issues }: LayerCase, material: KnownMaterial): void {
  const given = layer.thicknessMm;
  if (typeof given === 'object') {
    issues.error('LAYER_RANGE_AREAL', [...path, 'thicknessMm'], () => ({
      got: `a thickness range for "${layer.material}"`,
      expected: 'a range only on a material with "density": the weight of a sheet or element is per m² and would not follow the thickness',
      mend: 'Make a granular layer the make-up layer.',
    }));
  } else if (given !== undefined && material.thicknessMm !== undefined && given !== material.thicknessMm) {
    issues.error('LAYER_THICKNESS_AREAL', [...path, 'thicknessMm'], () => ({
      got: `${given} mm for "${layer.material}", which is ${material.thicknessMm} mm thick`,
      expected: `${material.thicknessMm} mm or nothing: the weight of a sheet or element is per m² and would not follow the thickness`,
      mend: 'Delete "thicknessMm" here, or name a material of this thickness.',
    }));
  } else if (given === undefined && material.thicknessMm === undefined) {
    issues.warning('LAYER_COUNTED_FLAT', path, () => ({
      got: `no thickness for "${layer.material}", neither here nor on the material`,
      expected: '"thicknessMm" [mm] of the sheet or element',
      mend: 'It is counted as 0 mm thick; add its thickness if the finished level matters.',
    }));
  }
}

function checkInfill({ layer, material, path, issues }: LayerCase, below: SceneLayer | undefined, known: KnownIds): void {
  const place = [...path, 'infill'];
  if (material?.areal !== undefined) {
    issues.error('INFILL_NOT_GRANULAR', place, () => ({
      got: `"${layer.material}" as infill, a sheet or element`,
      expected: 'a granular material with "density", since only that can fill voids',
      mend: 'Name a granular material, or delete "infill".',
    }));
  }
  if (below === undefined) {
    issues.error('INFILL_FIRST', place, () => ({
      got: 'an infill as the first layer',
      expected: 'an element with voids directly below it',
      mend: 'Put the element below it, or delete "infill".',
    }));
    return;
  }
  const element = known.materials.get(below.material);
  if (element === undefined || (below.infill !== true && (element.voidLm2 ?? 0) > 0)) return;
  issues.error('INFILL_NO_VOIDS', place, () => infillWords(layer, below));
}

function infillWords(layer: SceneLayer, below: SceneLayer): IssueWords {
  return {
    got: `"${layer.material}" as infill on "${below.material}", which has no voids to fill`,
    expected: 'an element with "voidLm2" above 0 directly below it, since that gives the volume of the infill',
    mend: `Delete "infill" and give a thickness, or add "voidLm2" to "${below.material}".`,
  };
}
