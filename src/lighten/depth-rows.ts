/** What a recipe's thicknesses must keep, as rows: room for the rest layer, least depths of substrate, soil of trees, base course. */

import type { LightenHindrance } from '../model/lighten.ts';
import type { Ground, Site } from './ground.ts';
import { type Recipe, startOthersMm, stepMm } from './recipe.ts';

/** `fixed + Σ steps · perStep ≥ 0`, in one unit throughout. */
export interface DepthRow {
  readonly fixed: number;
  readonly perStep: readonly number[];
  /** Given up together, to see what stands in the way. */
  readonly family: LightenHindrance | 'always';
}

/** Rounding of sums of millimetres [mm]. */
const ROUNDING_MM = 1e-6;

/** Rows of one recipe. What was too little before need not become more, but no less. */
export function depthRows(recipe: Recipe, ground: Ground, site: Site, present: Recipe): DepthRow[] {
  if (recipe.keeps) return [];
  const others = startOthersMm(recipe);
  const perOthers = recipe.steps.map(stepMm);
  const leastMm = ground.leastRoomM * 1000 - others;
  const mostMm = ground.greatestRoomM * 1000 - others;
  const room: DepthRow[] = [
    { fixed: leastMm + ROUNDING_MM, perStep: perOthers.map((mm) => -mm), family: 'always' },
    { fixed: leastMm - recipe.restMm.min + ROUNDING_MM, perStep: perOthers.map((mm) => -mm), family: 'room' },
  ];
  if (Number.isFinite(recipe.restMm.max)) {
    room.push({ fixed: recipe.restMm.max - mostMm + ROUNDING_MM, perStep: perOthers, family: 'room' });
  }
  return [
    ...room,
    ...substrateRows(recipe, ground, site, present),
    ...treeRows(recipe, ground, site),
    ...baseRows(recipe, ground, site, present),
  ];
}

type Counts = (index: number) => boolean;

/** Thickness of the layers that count, where the room is so high [mm]: what it is without steps, and what each step adds. */
export function thicknessOf(recipe: Recipe, counts: Counts, roomMm: number): { fixed: number; perStep: number[] } {
  const withRest = counts(recipe.rest);
  const own = recipe.layers.reduce((sum, { startMm }, i) => (i !== recipe.rest && counts(i) ? sum + startMm : sum), 0);
  const perStep = recipe.steps.map((step) => {
    const direct = step.moves.reduce((sum, { layer, mm }) => (layer !== recipe.rest && counts(layer) ? sum + mm : sum), 0);
    return withRest ? direct - stepMm(step) : direct;
  });
  return { fixed: withRest ? own + roomMm - startOthersMm(recipe) : own, perStep };
}

function isSubstrate(recipe: Recipe): Counts {
  return (i) => recipe.layers[i].material.role === 'substrate';
}

function isOrganic(recipe: Recipe): Counts {
  return (i) => recipe.layers[i].material.role === 'substrate' && !recipe.layers[i].material.mineral;
}

function substrateRows(recipe: Recipe, ground: Ground, site: Site, present: Recipe): DepthRow[] {
  const leastMm = ground.leastRoomM * 1000;
  const nowMm = thicknessOf(present, isSubstrate(present), leastMm).fixed;
  const nowOrganicMm = thicknessOf(present, isOrganic(present), leastMm).fixed;
  if (nowMm === 0) return [];
  const form = ground.facts.vegetationForm;
  const limit = form === null ? undefined : site.limits.substrateMm.get(form);
  // Without a known least depth, no one can say how much may go.
  const wantedMm = limit ? Math.min(limit.value, nowMm) : nowMm;
  // Subsoil counts as depth, but plants live of what lies on it: that stays as deep as is asked for above the subsoil.
  const wantedOrganicMm = Math.min(nowOrganicMm, limit ? Math.min(limit.value, site.limits.subsoilBelowMm.value) : nowOrganicMm);
  const row = (counts: Counts, wanted: number): DepthRow => {
    const { fixed, perStep } = thicknessOf(recipe, counts, leastMm);
    return { fixed: fixed - wanted + ROUNDING_MM, perStep, family: 'substrate depth' };
  };
  return [row(isSubstrate(recipe), wantedMm), row(isOrganic(recipe), wantedOrganicMm)];
}

function treeRows(recipe: Recipe, ground: Ground, { limits }: Site): DepthRow[] {
  const soil = isSubstrate(recipe);
  return ground.trees.flatMap((tree): DepthRow[] => {
    const depth = thicknessOf(recipe, soil, tree.roomM * 1000);
    const wantedMm = Math.min(limits.treeSoilMm.value, tree.soilM * 1000);
    // The mean room gives the volume, as thickness is linear in it.
    const mean = thicknessOf(recipe, soil, (ground.roomM3 / ground.areaM2) * 1000);
    const share = (mm: number) => (mm / 1000) * ground.areaM2;
    const wantedM3 = Math.min(limits.treeSoilM3.value, tree.shareM3) * tree.sharedBy;
    return [
      { fixed: depth.fixed - wantedMm + ROUNDING_MM, perStep: depth.perStep, family: 'tree soil' },
      { fixed: share(mean.fixed) - wantedM3 + 1e-9, perStep: mean.perStep.map(share), family: 'tree soil' },
    ];
  });
}

function baseRows(recipe: Recipe, ground: Ground, { limits }: Site, present: Recipe): DepthRow[] {
  const isBase =
    (of: Recipe): Counts =>
    (i) =>
      of.layers[i].material.role === 'base course';
  const leastMm = ground.leastRoomM * 1000;
  const nowMm = thicknessOf(present, isBase(present), leastMm).fixed;
  if (!ground.facts.trafficked || nowMm === 0) return [];
  const { fixed, perStep } = thicknessOf(recipe, isBase(recipe), leastMm);
  return [{ fixed: fixed - Math.min(limits.baseCourseMm.value, nowMm) + ROUNDING_MM, perStep, family: 'base course' }];
}
