/** Terms of derivations: making them, and the load and water of one layer as a term. */

import type { Term, TermName, TermOperation, TermSource } from '../model/derivation.ts';
import type { SceneLayer } from '../model/scene-file.ts';
import { GRAVITY_MS2, WATER_KNM2_PER_LM2 } from '../model/units.ts';
import type { Project } from './evaluate-project.ts';
import type { ResolvedMaterial } from './materials.ts';

export interface Named {
  readonly name: TermName;
  readonly of?: string | undefined;
  readonly unit: string;
}

const SCENE: TermSource = { from: 'scene' };
export const DRAWING: TermSource = { from: 'drawing' };
const CONSTANT: TermSource = { from: 'constant' };

/** A number that is not calculated. */
export function given({ of, ...named }: Named, value: number, source: TermSource = SCENE): Term {
  return { ...named, ...(of === undefined ? {} : { of }), value, how: { source } };
}

const VALUES: Readonly<Record<TermOperation, (values: readonly number[]) => number>> = {
  sum: (values) => values.reduce((total, value) => total + value, 0),
  difference: ([first, ...others]) => others.reduce((left, value) => left - value, first),
  product: (values) => values.reduce((total, value) => total * value, 1),
  quotient: ([first, ...others]) => others.reduce((left, value) => left / value, first),
  // A height of exactly a step must not lose that step to rounding.
  'whole steps': ([value, step]) => Math.floor(value / step + 1e-9) * step,
};

/** A number calculated from others; of one term alone a sum is that term. */
export function made({ of, ...named }: Named, does: TermOperation, terms: readonly Term[]): Term {
  const value = VALUES[does](terms.map((term) => term.value));
  return { ...named, ...(of === undefined ? {} : { of }), value, how: { does, terms } };
}

/** Weight of one kilogram [kN]. */
const gravity = (): Term => given({ name: 'gravity', unit: 'kN/kg' }, GRAVITY_MS2 / 1000, CONSTANT);

const litreWeight = (): Term => given({ name: 'gravity', unit: 'kN/l' }, WATER_KNM2_PER_LM2, CONSTANT);

export type LoadState = 'dry' | 'saturated';

/** One layer of one zone with its thickness there. */
export interface LaidHere {
  readonly project: Project;
  readonly zone: number;
  readonly layer: number;
  readonly thicknessM: number;
}

interface Looked {
  readonly entry: SceneLayer;
  readonly material: ResolvedMaterial;
  /** What an infill puts into the voids of the element below [m³/m²]. */
  readonly voidM: number;
  readonly source: TermSource;
}

function lookUp({ project, zone, layer }: LaidHere): Looked {
  const { scene, resolved, evaluation } = project;
  const id = scene.zones[zone].buildup;
  const entry = scene.buildups.find((one) => one.id === id)?.layers[layer];
  if (!entry) throw new RangeError(`derivation: zone ${zone} has no layer ${layer}`);
  const material = resolved.materialOf(entry.material);
  const { voidVolumeM } = evaluation.input.zones[zone].buildUp.layers[layer];
  return { entry, material, voidM: voidVolumeM, source: { from: 'material', text: material.sourceText } };
}

/** Thickness of a layer there. */
export function layerThickness(here: LaidHere): Term {
  const { rangeM } = here.project.evaluation.input.zones[here.zone].buildUp.layers[here.layer];
  const { material } = lookUp(here);
  return given({ name: 'thickness', of: material.name, unit: 'm' }, here.thicknessM, rangeM ? { from: 'levels' } : SCENE);
}

/** Thickness of a layer there, with what it fills of the voids below it. */
function thickness(here: LaidHere, { material, voidM }: Looked): Term {
  const own = layerThickness(here);
  if (voidM === 0) return own;
  const filled = given({ name: 'voids filled', of: material.name, unit: 'm' }, voidM, { from: 'material' });
  return made({ name: 'thickness and voids', of: material.name, unit: 'm' }, 'sum', [own, filled]);
}

/** What a layer weighs per square metre. */
export function layerLoad(here: LaidHere, state: LoadState): Term {
  const looked = lookUp(here);
  const { material, entry, source } = looked;
  const of = material.name;
  const named: Named = { name: 'load of layer', of, unit: 'kN/m²' };
  if (material.density) {
    const density = given({ name: `density ${state}`, of, unit: 'kg/m³' }, material.density[state], source);
    return made(named, 'product', [thickness(here, looked), density, gravity()]);
  }
  const own = made(named, 'product', [
    given({ name: 'mass per area', of, unit: 'kg/m²' }, material.areal?.[state] ?? 0, source),
    gravity(),
  ]);
  const kept = state === 'saturated' && entry.orientation === 'retention' ? (material.retentionLm2 ?? 0) : 0;
  if (kept === 0) return own;
  const water = made({ name: 'water kept', of, unit: 'kN/m²' }, 'product', [
    given({ name: 'water kept', of, unit: 'l/m²' }, kept, source),
    litreWeight(),
  ]);
  return made(named, 'sum', [own, water]);
}

/** Water that a layer holds per square metre; null for none. */
export function layerHeld(here: LaidHere): Term | null {
  const looked = lookUp(here);
  const { material, entry, source } = looked;
  const named: Named = { name: 'held by layer', of: material.name, unit: 'l/m²' };
  const kept = entry.orientation === 'retention' ? (material.retentionLm2 ?? 0) : 0;
  const terms: Term[] = kept === 0 ? [] : [given({ ...named, name: 'water kept' }, kept, source)];
  const percent = material.waterCapacityPercent ?? 0;
  if (percent > 0) {
    const capacity = given({ name: 'capacity', of: material.name, unit: '%' }, percent, source);
    const litres = given({ name: 'litres', unit: 'l/(m³·%)' }, 10, CONSTANT);
    terms.push(made(named, 'product', [thickness(here, looked), capacity, litres]));
  }
  return terms.length === 0 ? null : made(named, 'sum', terms);
}

/** Load of all layers of a zone that count there, and of its plants. */
export function zoneLoad(
  project: Project,
  zone: number,
  makeUpM: number,
  counts: { readonly layer: (layer: number) => boolean; readonly plants: boolean },
): Term {
  const input = project.evaluation.input.zones[zone];
  const terms = input.buildUp.layers.flatMap(({ rangeM, thicknessM }, layer) =>
    counts.layer(layer) ? [layerLoad({ project, zone, layer, thicknessM: rangeM ? makeUpM : thicknessM }, 'saturated')] : [],
  );
  if (counts.plants && input.buildUp.vegetationKNm2 > 0) terms.push(plants(project, zone));
  return made({ name: 'load of zone', of: input.id, unit: 'kN/m²' }, 'sum', terms);
}

export function plants({ evaluation }: Project, zone: number): Term {
  const { id, buildUp } = evaluation.input.zones[zone];
  return given({ name: 'load of plants', of: id, unit: 'kN/m²' }, buildUp.vegetationKNm2);
}

export const floodLoad = (floodKNm2: number): Term =>
  made({ name: 'flood', unit: 'kN/m²' }, 'product', [
    given({ name: 'flood depth', unit: 'mm' }, floodKNm2 / WATER_KNM2_PER_LM2),
    litreWeight(),
  ]);

export const looseWeight = ({ name, density, compactionFactor, sourceText }: ResolvedMaterial): Term => {
  const source: TermSource = { from: 'material', text: sourceText };
  const weight = made({ name: 'weight', of: name, unit: 'kN/m³' }, 'product', [
    given({ name: 'density saturated', of: name, unit: 'kg/m³' }, density?.saturated ?? 0, source),
    gravity(),
  ]);
  const factor = given({ name: 'compaction', of: name, unit: '-' }, compactionFactor ?? 1, source);
  return made({ name: 'loose weight', of: name, unit: 'kN/m³' }, 'quotient', [weight, factor]);
};
