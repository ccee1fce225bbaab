/** What may be laid instead: fills and subsoils of scene and catalogue, and the sheet that parts a light fill from what lies on it. */

import { MATERIALS } from '../catalogue/materials.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { weightKN } from '../model/units.ts';
import { materialLookup, type ResolvedMaterial } from '../project/materials.ts';

export interface Candidates {
  readonly lightFills: readonly ResolvedMaterial[];
  /** Mineral, so that they may lie deep. */
  readonly subsoils: readonly ResolvedMaterial[];
  readonly separation: ResolvedMaterial;
}

/** Candidates of a scene, or those of them that are asked for. */
export function candidatesOf(scene: SceneFile, only: readonly string[] | undefined): Candidates {
  const materialOf = materialLookup(scene);
  const ids = [...new Set([...(scene.materials ?? []), ...MATERIALS].map(({ id }) => id))];
  const tried = (only ?? ids).filter((id) => ids.includes(id)).map(materialOf);
  const loose = tried.filter(({ density, thicknessMm }) => density !== undefined && thicknessMm === undefined);
  const separations = ids.map(materialOf).filter(({ role }) => role === 'separation');
  const used = separations.find(({ id }) => scene.buildups.some(({ layers }) => layers.some(({ material }) => material === id)));
  const separation = used ?? separations[0];
  if (!separation) throw new RangeError('candidatesOf: the catalogue has no separation sheet');
  return {
    lightFills: loose.filter(({ role }) => role === 'light fill'),
    subsoils: loose.filter(({ role, mineral }) => role === 'substrate' && mineral === true),
    separation,
  };
}

/** Saturated weight as placed [kN/m³]. */
export function saturatedKNm3({ density }: ResolvedMaterial): number {
  return weightKN(density?.saturated ?? 0);
}

/** Price as the take-off counts it: of a square metre laid, and of each metre of thickness on it; null where there is none. */
export function priceOf({
  price,
  density,
  areal,
  lapPercent,
  compactionFactor,
  role,
}: ResolvedMaterial): { perM2: number; perM3: number } | null {
  if (!price) return null;
  const { amount } = price;
  const withLaps = 1 + (lapPercent ?? 0) / 100;
  if (density) {
    const perM3 = { m3: amount * (compactionFactor ?? 1), m2: 0, t: (amount * density.saturated) / 1000 };
    return { perM2: price.per === 'm2' ? amount : 0, perM3: perM3[price.per] };
  }
  const kgM2 = (role === 'vegetation' ? areal?.saturated : areal?.dry) ?? 0;
  const perM2 = { m3: 0, m2: amount * withLaps, t: (amount * withLaps * kgM2) / 1000 };
  return { perM2: perM2[price.per], perM3: price.per === 'm3' ? amount * withLaps : 0 };
}

/** Those that no other beats in weight and, where prices count, in price. */
export function worthTrying(materials: readonly ResolvedMaterial[], byPrice: boolean): ResolvedMaterial[] {
  const known = byPrice ? materials.filter((material) => priceOf(material) !== null) : materials;
  const measures = known.map((material) => {
    const price = byPrice ? priceOf(material) : null;
    return [saturatedKNm3(material), price?.perM3 ?? 0, price?.perM2 ?? 0];
  });
  const beats = (a: number, b: number) =>
    measures[a].every((value, i) => value <= measures[b][i]) && (a < b || measures[a].some((value, i) => value < measures[b][i]));
  return known.filter((_, one) => !known.some((_, other) => other !== one && beats(other, one)));
}
