/** All ways worth trying to build a zone up lighter: other fills, split fills, thinner substrate, subsoil under the organic depth. */

import { stackCoefficients } from '../core/layers/coefficients.ts';
import { findBuildUpFacts } from '../core/rules/build-up-rules.ts';
import type { BuildUpInput } from '../model/deck-input.ts';
import type { LightenMeans } from '../model/lighten.ts';
import type { Role } from '../model/roles.ts';
import type { SceneLayer } from '../model/scene-file.ts';
import type { ResolvedMaterial } from '../project/materials.ts';
import { resolveBuildUp } from '../project/resolve-layers.ts';
import { layerFacts } from '../project/resolve-rules.ts';
import { type Candidates, priceOf, saturatedKNm3, worthTrying } from './candidates.ts';
import { type Caps, capKey } from './caps.ts';
import type { Ground, Site } from './ground.ts';
import { type Recipe, type RecipeLayer, STEP_MM, type Step } from './recipe.ts';
import { planWith, stageChange } from './stage-change.ts';

export interface Trying {
  readonly candidates: Candidates;
  readonly means: readonly LightenMeans[];
  readonly leastLayerMm: number;
  /** Only what has a price may change. */
  readonly byPrice: boolean;
  /** What broke a rule in a zone, and how much of it may be tried. */
  readonly caps: Caps;
}

/** Roles whose layer may take what the levels leave. */
const REST_ROLES: readonly Role[] = ['light fill', 'drainage fill', 'substrate', 'base course'];

/** Index of the layer that gives way; -1 where none may. */
export function restOf({ buildUp }: Ground, { materialOf }: Site): number {
  const range = buildUp.layers.findIndex(({ thicknessMm }) => typeof thicknessMm === 'object');
  const may = (layer: SceneLayer) => {
    const { role, density, thicknessMm } = materialOf(layer.material);
    return (
      REST_ROLES.includes(role) && density !== undefined && thicknessMm === undefined && !layer.infill && layer.thicknessMm !== undefined
    );
  };
  if (range >= 0) return may(buildUp.layers[range]) ? range : -1;
  for (const role of REST_ROLES) {
    const at = buildUp.layers.findIndex((layer) => may(layer) && materialOf(layer.material).role === role);
    if (at >= 0) return at;
  }
  return -1;
}

/** The build-up as it is first, then every way to change it that keeps the rules on the order of layers. */
export function recipesOf(ground: Ground, site: Site, trying: Trying): Recipe[] {
  const rest = restOf(ground, site);
  if (rest < 0) return [];
  const kept = asItIs(ground, site, rest);
  const fills = [kept, ...fillChanges(kept, ground, trying)];
  const both = [...fills, ...fills.flatMap((recipe) => secondFills(recipe, kept, ground, trying))];
  const recipes = both.flatMap((recipe) => withSubstrateSteps(recipe, ground, site, trying));
  return [kept, ...recipes.flatMap((recipe) => asSound(recipe, { ground, site, rest }))];
}

function asItIs({ buildUp }: Ground, { materialOf }: Site, rest: number): Recipe {
  const resolved = resolveBuildUp(buildUp, materialOf).layers;
  const layers = buildUp.layers.map((layer, i): RecipeLayer => {
    return { layer, material: materialOf(layer.material), startMm: roundMm(resolved[i].thicknessM * 1000), untouched: i !== rest };
  });
  const range = resolved[rest].rangeM;
  const fixedMm = layers[rest].startMm;
  const restMm = range ? { min: range.min * 1000, max: range.max * 1000 } : { min: Math.min(fixedMm, 50), max: Infinity };
  return { layers, rest, restMm, steps: [], changes: [], keeps: true, laid: null };
}

const roundMm = (value: number) => Math.round(value * 1e6) / 1e6;

/** Other materials in the rest layer's place, and two materials sharing it. */
function fillChanges(kept: Recipe, ground: Ground, trying: Trying): Recipe[] {
  const now = kept.layers[kept.rest];
  const { role, mineral } = now.material;
  if (trying.byPrice && priceOf(now.material) === null) return [];
  const light = insteadOf(now.material, trying.candidates.lightFills, ground, trying);
  const soils = role === 'substrate' && mineral ? insteadOf(now.material, trying.candidates.subsoils, ground, trying) : [];
  const found: Recipe[] = [];
  if (trying.means.includes('fill') && role !== 'base course')
    for (const fill of [...light, ...soils]) found.push(replaced(kept, fill, trying));
  if (!trying.means.includes('split')) return found;
  const most = Math.floor((ground.greatestRoomM * 1000) / STEP_MM);
  const uppers = [now.material, ...soils];
  for (const upper of uppers) {
    for (const lower of light) {
      found.push(split(kept, { upper, lower, restIs: 'upper', most }, trying));
      found.push(split(kept, { upper, lower, restIs: 'lower', most }, trying));
    }
  }
  if (role === 'substrate' || role === 'base course') return found;
  for (const upper of light) {
    for (const lower of light) {
      if (upper === lower) continue;
      found.push(split(kept, { upper, lower, restIs: 'upper', most }, trying));
    }
  }
  return found;
}

/** Materials of a list that may come in the place of another. */
function insteadOf(now: ResolvedMaterial, list: readonly ResolvedMaterial[], ground: Ground, { caps, byPrice }: Trying) {
  const others = list.filter(({ id }) => id !== now.id);
  // What may only be so thick keeps nothing else out, however light and cheap it is.
  const isCapped = ({ id }: ResolvedMaterial) => caps.has(capKey(ground, id));
  const [capped, free] = [others.filter(isCapped), others.filter((one) => !isCapped(one))];
  return [...worthTrying(free, byPrice), ...worthTrying(capped, byPrice)];
}

/**
 * Another light fill besides the layer that gives way, thicker or thinner or of another material, one at a time. Beside a layer that
 * is split it keeps its thickness. Fills that drain stay: nothing here judges how thick they must be.
 */
function secondFills(recipe: Recipe, kept: Recipe, ground: Ground, trying: Trying): Recipe[] {
  if (!trying.means.includes('fill')) return [];
  return kept.layers.flatMap((own, i): Recipe[] => {
    const { material, layer, startMm } = own;
    const isFill = material.role === 'light fill' && material.density !== undefined && material.thicknessMm === undefined && !layer.infill;
    if (!isFill || i === kept.rest || (trying.byPrice && priceOf(material) === null)) return [];
    const at = recipe.layers.indexOf(own);
    const thinner = Math.max(0, Math.floor((startMm - trying.leastLayerMm) / STEP_MM));
    const step: Step = { from: -thinner, to: Math.floor((ground.greatestRoomM * 1000) / STEP_MM), moves: [{ layer: at, mm: STEP_MM }] };
    const isSplit = recipe.steps.length > 0;
    const made = [...(isSplit ? [] : [material]), ...insteadOf(material, trying.candidates.lightFills, ground, trying)];
    return made.map((fill) => {
      const layers = recipe.layers.with(at, fill === material ? { ...own, untouched: false } : newLayer(fill, startMm));
      const changes = [...new Set([...recipe.changes, fill.id])];
      const steps = isSplit ? recipe.steps : [step];
      return separated(separated({ ...recipe, layers, steps, changes, keeps: false }, trying), trying);
    });
  });
}

function newLayer(material: ResolvedMaterial, startMm = 0): RecipeLayer {
  return { layer: { material: material.id }, material, startMm, untouched: false };
}

function replaced(kept: Recipe, fill: ResolvedMaterial, trying: Trying): Recipe {
  const layers = kept.layers.map((layer, i) => (i === kept.rest ? newLayer(fill) : layer));
  return separated({ ...kept, layers, changes: [fill.id], keeps: false }, trying);
}

interface Split {
  readonly upper: ResolvedMaterial;
  readonly lower: ResolvedMaterial;
  readonly restIs: 'upper' | 'lower';
  readonly most: number;
}

/** The lower material carries the upper one; one of the two takes what the levels leave, the other is as thick everywhere. */
function split(kept: Recipe, { upper, lower, restIs, most }: Split, trying: Trying): Recipe {
  const now = kept.layers[kept.rest].material;
  const brings = [upper, lower].filter((material) => material !== now).map(({ id }) => id);
  const pair = [lower, upper].map((material) => newLayer(material));
  const layers = [...kept.layers.slice(0, kept.rest), ...pair, ...kept.layers.slice(kept.rest + 1)];
  const [rest, fixed] = restIs === 'upper' ? [kept.rest + 1, kept.rest] : [kept.rest, kept.rest + 1];
  const own = (index: number) => (layers[index].material === now ? kept.restMm.min : trying.leastLayerMm);
  const step: Step = { from: Math.ceil(own(fixed) / STEP_MM), to: most, moves: [{ layer: fixed, mm: STEP_MM }] };
  const recipe: Recipe = {
    layers,
    rest,
    restMm: { min: own(rest), max: kept.restMm.max },
    steps: [step],
    changes: brings,
    keeps: false,
    laid: null,
  };
  return separated(recipe, trying);
}

/** A sheet on every light fill that has something coarser or finer than a sheet above it. */
function separated(recipe: Recipe, { candidates }: Trying): Recipe {
  const sheets: readonly Role[] = ['light fill', 'separation', 'filter'];
  const at = recipe.layers.findIndex(({ material, untouched }, i) => {
    const above = recipe.layers[i + 1];
    return !untouched && material.role === 'light fill' && above !== undefined && !sheets.includes(above.material.role);
  });
  if (at < 0) return recipe;
  const { separation } = candidates;
  const sheet: RecipeLayer = { ...newLayer(separation, separation.thicknessMm ?? 0), untouched: true };
  const layers = [...recipe.layers.slice(0, at + 1), sheet, ...recipe.layers.slice(at + 1)];
  const moved = (index: number) => (index > at ? index + 1 : index);
  const steps = recipe.steps.map((step) => ({ ...step, moves: step.moves.map(({ layer, mm }) => ({ layer: moved(layer), mm })) }));
  return { ...recipe, layers, rest: moved(recipe.rest), steps };
}

/** Substrates that may give way, each by its own step; the rows on depths hold them. */
function withSubstrateSteps(recipe: Recipe, ground: Ground, site: Site, trying: Trying): Recipe[] {
  const { means, leastLayerMm, byPrice } = trying;
  const form = ground.facts.vegetationForm;
  const open = (i: number) => {
    const { material, untouched, layer } = recipe.layers[i];
    return (
      i !== recipe.rest &&
      untouched &&
      material.role === 'substrate' &&
      material.density !== undefined &&
      !layer.infill &&
      !(byPrice && !priceOf(material))
    );
  };
  const soils = [...recipe.layers.keys()].filter(open);
  const thinner = means.includes('substrate') && form !== null && site.limits.substrateMm.has(form) ? soils : [];
  const steps = thinner.flatMap((i): Step[] => {
    const to = Math.floor((recipe.layers[i].startMm - leastLayerMm) / STEP_MM);
    return to > 0 ? [{ from: 0, to, moves: [{ layer: i, mm: -STEP_MM }] }] : [];
  });
  const touched = (changed: Recipe): Recipe => {
    const moved = new Set(changed.steps.flatMap(({ moves }) => moves.map(({ layer }) => layer)));
    return { ...changed, layers: changed.layers.map((layer, i) => (moved.has(i) ? { ...layer, untouched: false } : layer)), keeps: false };
  };
  const plain =
    steps.length > 0 ? [touched({ ...recipe, steps: [...recipe.steps, ...steps], changes: [...recipe.changes, 'substrate'] })] : [];
  const result = recipe.keeps ? plain : plain.length > 0 ? plain : [recipe];
  return [...result, ...withSubsoil(recipe, steps, soils, { ground, site, trying }).map(touched)];
}

interface Context {
  readonly ground: Ground;
  readonly site: Site;
  readonly trying: Trying;
}

/** Subsoil in place of organic substrate that lies deeper than such may. */
function withSubsoil(recipe: Recipe, steps: readonly Step[], soils: readonly number[], { ground, site, trying }: Context): Recipe[] {
  const isOrganic = (i: number) => recipe.layers[i].material.role === 'substrate' && !recipe.layers[i].material.mineral;
  if (!trying.means.includes('subsoil') || isOrganic(recipe.rest)) return [];
  const lowest = soils.find(isOrganic);
  if (lowest === undefined) return [];
  const deepMm = recipe.layers.reduce((sum, { startMm }, i) => (isOrganic(i) ? sum + startMm : sum), 0);
  const replaceable = Math.min(deepMm - site.limits.subsoilBelowMm.value, recipe.layers[lowest].startMm - trying.leastLayerMm);
  const to = Math.floor(replaceable / STEP_MM + 1e-9);
  const from = Math.ceil(trying.leastLayerMm / STEP_MM);
  if (to < from) return [];
  return insteadOf(recipe.layers[lowest].material, trying.candidates.subsoils, ground, trying).map((subsoil) => {
    const layers = [...recipe.layers.slice(0, lowest), newLayer(subsoil), ...recipe.layers.slice(lowest)];
    const shift = (index: number) => (index >= lowest ? index + 1 : index);
    const moved = [...recipe.steps, ...steps].map((step) => ({
      ...step,
      moves: step.moves.map(({ layer, mm }) => ({ layer: shift(layer), mm })),
    }));
    const swap: Step = {
      from,
      to,
      moves: [
        { layer: lowest, mm: STEP_MM },
        { layer: lowest + 1, mm: -STEP_MM },
      ],
    };
    return { ...recipe, layers, rest: shift(recipe.rest), steps: [...moved, swap], changes: [...recipe.changes, subsoil.id] };
  });
}

/** A recipe as the core takes it, its rest layer as make-up layer, every step at its start. */
export function recipeInput(recipe: Recipe, { buildUp }: Ground, { materialOf }: Site): BuildUpInput {
  const layers = recipe.layers.map(({ layer, startMm }, i): SceneLayer => {
    return { ...layer, thicknessMm: i === recipe.rest ? { min: 0, max: 1e6, nominal: 0 } : startMm };
  });
  return resolveBuildUp({ ...buildUp, layers }, materialOf);
}

interface Place {
  readonly ground: Ground;
  readonly site: Site;
  /** Index of the layer that gives way, in the build-up as it is. */
  readonly rest: number;
}

/** With what the stages need; none where rules on the order of layers or stages would be broken that were not. */
function asSound(recipe: Recipe, { ground, site, rest }: Place): Recipe[] {
  const { materialOf, limits, scene } = site;
  const breaches = (buildUp: BuildUpInput, layers: readonly SceneLayer[]) => {
    const facts = layerFacts(layers, buildUp.layers, { min: 0, mean: 0, max: 0 }, materialOf);
    const found = findBuildUpFacts([{ ...ground.facts, layers: facts }], [], { limits, rootResistant: scene.deck.rootResistant ?? null });
    return found.filter(({ rule }) => rule.startsWith('order.')).map(({ rule }) => rule);
  };
  const next = recipeInput(recipe, ground, site);
  const before = breaches(site.on.input.zones[ground.z].buildUp, ground.buildUp.layers);
  const after = breaches(
    next,
    recipe.layers.map(({ layer }) => layer),
  );
  if (after.some((rule) => !before.includes(rule))) return [];
  if (site.on.input.stages === null) return [recipe];
  const laid = stageChange(recipe, next, { ground, site, rest });
  return laid === undefined ? [] : [{ ...recipe, laid }];
}

/** Saturated load of a recipe: affine in the room of a cell and in the number of steps. */
export interface RecipeLoad {
  readonly fixedKNm2: number;
  readonly perRoomKNm3: number;
  readonly perStepKNm2: readonly number[];
}

/** Loads of a recipe: in the finished garden first, then at the end of each stage of the scene (none where stages are derived). */
export function recipeLoads(recipe: Recipe, ground: Ground, site: Site): RecipeLoad[] {
  const buildUp = recipeInput(recipe, ground, site);
  const load = (placed: (layer: number) => boolean, vegetation: boolean): RecipeLoad => {
    const { saturated } = stackCoefficients(buildUp, placed, vegetation);
    const othersM = buildUp.layers.reduce((sum, { thicknessM }, i) => (i === recipe.rest ? sum : sum + thicknessM), 0);
    const perM = saturated.perM;
    const perStepKNm2 = recipe.steps.map(({ moves }) =>
      moves.reduce(
        (sum, { layer, mm }) => sum + (mm / 1000) * ((placed(layer) ? saturatedKNm3(recipe.layers[layer].material) : 0) - perM),
        0,
      ),
    );
    return { fixedKNm2: saturated.fixed - perM * othersM, perRoomKNm3: perM, perStepKNm2 };
  };
  const finished = load(() => true, true);
  if (site.on.input.stages === null) return [finished];
  const plan = planWith(buildUp, recipe.laid, ground, site);
  const [layerStages, vegetation] = [plan.layerStages[ground.z], plan.vegetationStages[ground.z]];
  return [
    finished,
    ...plan.stages.map((_, s) => load((layer) => layerStages[layer] >= 0 && layerStages[layer] <= s, vegetation >= 0 && vegetation <= s)),
  ];
}
