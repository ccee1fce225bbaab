/** Checks materials and build-ups: weights, thicknesses, make-up layer, infill. */

import type { SceneBuildUp, SceneFile, SceneLayer, SceneThickness } from '../model/scene-file.ts';
import type { IssueList } from './issue-list.ts';
import type { KnownIds, KnownMaterial } from './known-ids.ts';
import { type Path, pathText } from './path.ts';
import { asIs, type IssueWords, phrase, worded } from './words/phrase.ts';

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
    issues.error('MATERIAL_NO_WEIGHT', path, () =>
      worded(phrase('materialNoWeight', { id }), phrase('densityOrAreal'), phrase('addOneOfTwo')),
    );
  }
  if (density !== undefined && areal !== undefined) {
    issues.error('MATERIAL_TWO_WEIGHTS', path, () =>
      worded(phrase('materialTwoWeights', { id }), phrase('oneWeight'), phrase('keepOneWeight')),
    );
  }
  for (const [key, weight] of Object.entries({ density, areal })) {
    if (weight === undefined || weight.saturated >= weight.dry) continue;
    issues.warning('SATURATED_BELOW_DRY', [...path, key, 'saturated'], () =>
      worded(
        phrase('saturatedBelowDry', { a: weight.saturated, b: weight.dry, id }),
        phrase('saturatedHeavier'),
        phrase('swappedSaturated'),
      ),
    );
  }
  for (const [key, value] of Object.entries(density ?? {})) {
    if (value >= USUAL_DENSITY.least && value <= USUAL_DENSITY.greatest) continue;
    issues.warning('DENSITY_UNUSUAL', [...path, 'density', key], () =>
      worded(
        phrase('densityFor', { value, id }),
        phrase('usualDensity', { a: USUAL_DENSITY.least, b: USUAL_DENSITY.greatest }),
        value < USUAL_DENSITY.least
          ? phrase('wasUnitMeant', { unit: 't/m³', n: Number((value * 1000).toPrecision(6)) })
          : phrase('checkKgM3'),
      ),
    );
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
    issues.warning('BUILDUP_EMPTY', [...path, 'layers'], () =>
      worded(phrase('noLayers', { id: buildup.id }), phrase('aLayer'), phrase('addLayers')),
    );
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
  issues.error('BUILDUP_TWO_RANGES', [...path, 'thicknessMm'], () =>
    worded(phrase('secondRange', { id: buildup.id, first }), phrase('oneMakeUp'), phrase('singleThickness')),
  );
}

function checkLayer(layerCase: LayerCase): void {
  const { layer, material, path, issues } = layerCase;
  checkThickness(layer.thicknessMm, [...path, 'thicknessMm'], issues);
  if (layer.thicknessMm === 0 && layer.infill !== true) {
    issues.error('OUT_OF_RANGE', [...path, 'thicknessMm'], () => worded(asIs(0), phrase('someThickness'), phrase('giveThickness')));
  }
  if (material === null) return;
  if (material.areal !== undefined) checkAreal(layerCase, material);
  else if (layer.infill !== true && layer.thicknessMm === undefined && material.thicknessMm === undefined) {
    issues.error('LAYER_NO_THICKNESS', path, () =>
      worded(phrase('noThickness', { id: layer.material }), phrase('thicknessForWeight'), phrase('addThickness')),
    );
  }
}

function checkThickness(thickness: SceneThickness | undefined, path: Path, issues: IssueList): void {
  if (thickness === undefined) return;
  const greatest = typeof thickness === 'number' ? thickness : thickness.max;
  if (greatest > USUAL_THICKNESS_MM) {
    issues.warning('THICKNESS_UNUSUAL', path, () =>
      worded(phrase('thickMm', { a: greatest, b: greatest / 1000 }), phrase('layerAtMost', { n: USUAL_THICKNESS_MM }), phrase('checkMm')),
    );
  }
  if (typeof thickness === 'number' || (thickness.min <= thickness.nominal && thickness.nominal <= thickness.max)) return;
  issues.error('THICKNESS_ORDER', path, () =>
    worded(asIs(`min ${thickness.min}, nominal ${thickness.nominal}, max ${thickness.max}`), phrase('orderOfRange'), phrase('orderThree')),
  );
}

/** A sheet's weight is per m² and would not follow another thickness. */
function checkAreal({ layer, path, issues }: LayerCase, material: KnownMaterial): void {
  const given = layer.thicknessMm;
  if (typeof given === 'object') {
    issues.error('LAYER_RANGE_AREAL', [...path, 'thicknessMm'], () =>
      worded(phrase('rangeFor', { id: layer.material }), phrase('rangeWithDensity'), phrase('granularMakeUp')),
    );
  } else if (given !== undefined && material.thicknessMm !== undefined && given !== material.thicknessMm) {
    const thickMm = material.thicknessMm;
    issues.error('LAYER_THICKNESS_AREAL', [...path, 'thicknessMm'], () =>
      worded(
        phrase('thicknessFor', { a: given, id: layer.material, b: thickMm }),
        phrase('thicknessOfSheet', { n: thickMm }),
        phrase('dropThickness'),
      ),
    );
  } else if (given === undefined && material.thicknessMm === undefined) {
    issues.warning('LAYER_COUNTED_FLAT', path, () =>
      worded(phrase('noThickness', { id: layer.material }), phrase('thicknessOfElement'), phrase('countedFlat')),
    );
  }
}

function checkInfill({ layer, material, path, issues }: LayerCase, below: SceneLayer | undefined, known: KnownIds): void {
  const place = [...path, 'infill'];
  if (material?.areal !== undefined) {
    issues.error('INFILL_NOT_GRANULAR', place, () =>
      worded(phrase('sheetAsInfill', { id: layer.material }), phrase('granularInfill'), phrase('granularOrNoInfill')),
    );
  }
  if (below === undefined) {
    issues.error('INFILL_FIRST', place, () => worded(phrase('infillFirst'), phrase('elementBelow'), phrase('elementBelowOrNoInfill')));
    return;
  }
  const element = known.materials.get(below.material);
  if (element === undefined || (below.infill !== true && (element.voidLm2 ?? 0) > 0)) return;
  issues.error('INFILL_NO_VOIDS', place, () => infillWords(layer, below));
}

function infillWords(layer: SceneLayer, below: SceneLayer): IssueWords {
  return worded(
    phrase('infillNoVoids', { id: layer.material, below: below.material }),
    phrase('voidsBelow'),
    phrase('thicknessOrVoids', { id: below.material }),
  );
}
