/** A scene's own materials: add, replace, take out; what in them looks like a slip of the pen. */

import type { ScenePatch } from '../model/history.ts';
import type { Role } from '../model/roles.ts';
import type { SceneFile, SceneMaterial } from '../model/scene-file.ts';
import { GRAVITY_MS2 } from '../model/units.ts';
import { USUAL_DENSITY } from '../scene/check-build-ups.ts';
import { freeId } from '../scene/free-id.ts';

/**
 * Puts a material into the scene: instead of the one with its id, or as one more.
 * @param scene - the scene
 * @param material - the material
 */
export function putMaterial(scene: SceneFile, material: SceneMaterial): ScenePatch {
  const own = scene.materials ?? [];
  const known = own.some(({ id }) => id === material.id);
  return { materials: known ? own.map((one) => (one.id === material.id ? material : one)) : [...own, material] };
}

/**
 * Takes a material out of the scene; one of the catalogue with its id holds again.
 * @param scene - the scene
 * @param id - the material
 */
export function dropMaterial(scene: SceneFile, id: string): ScenePatch {
  const left = (scene.materials ?? []).filter((one) => one.id !== id);
  return { materials: left.length > 0 ? left : null };
}

export const WEIGHT_KEYS = ['density', 'areal'] as const;
type WeightKey = (typeof WEIGHT_KEYS)[number];

/** A number that asks to be looked at, before it is taken over. */
export interface MaterialDoubt {
  readonly why: 't/m³' | 'kN/m³' | 'unusual' | 'g/m²' | 'm' | 'cm' | 'saturated below dry';
  readonly found: number;
  /** What was probably meant; null where nothing can be said. */
  readonly meant: number | null;
  /** The material with what was probably meant; null where nothing can be said. */
  readonly mended: SceneMaterial | null;
}

/** Sheets come by the square metre, the heaviest of them at a few kilograms. */
const SHEETS: readonly Role[] = ['root barrier', 'protection', 'slip', 'separation', 'filter'];
const HEAVY_SHEET_KGM2 = 50;
/** Weights of soils and stones in kN/m³ lie between these, and no material but light fill weighs so few kg/m³. */
const AS_KNM3 = 30;
/** Elements and stones are thicker than this [mm]; what is less was given in centimetres or metres. */
const LEAST_UNIT_MM = 10;
const UNITS: readonly Role[] = ['drainage element', 'surfacing', 'edging'];

/**
 * Numbers of a material that are probably in another unit, or swapped. None of them is changed here.
 * @param material - as it was typed
 * @returns what to ask, one entry per slip
 */
export function materialDoubts(material: SceneMaterial): readonly MaterialDoubt[] {
  return [...WEIGHT_KEYS.flatMap((key) => [...unitDoubts(material, key), ...swapDoubts(material, key)]), ...thicknessDoubts(material)];
}

function unitDoubts(material: SceneMaterial, key: WeightKey): MaterialDoubt[] {
  const weight = material[key];
  if (weight === undefined) return [];
  const doubtful = [...new Set([weight.dry, weight.saturated])].flatMap((found) => {
    const unit = key === 'density' ? densityUnit(found, material.role) : arealUnit(found, material.role);
    return unit === null ? [] : [{ found, ...unit }];
  });
  return doubtful.map(({ found, why, times }): MaterialDoubt => {
    if (times === null) return { why, found, meant: null, mended: null };
    const meant = plain(found * times);
    const mend = (value: number) => (value === found ? meant : value);
    return { why, found, meant, mended: { ...material, [key]: { dry: mend(weight.dry), saturated: mend(weight.saturated) } } };
  });
}

type UnitDoubt = { readonly why: MaterialDoubt['why']; readonly times: number | null } | null;

function densityUnit(value: number, role: Role): UnitDoubt {
  if (value < USUAL_DENSITY.least) return { why: 't/m³', times: 1000 };
  if (value < AS_KNM3 && role !== 'light fill') return { why: 'kN/m³', times: 1000 / GRAVITY_MS2 };
  return value > USUAL_DENSITY.greatest ? { why: 'unusual', times: null } : null;
}

function arealUnit(value: number, role: Role): UnitDoubt {
  return SHEETS.includes(role) && value >= HEAVY_SHEET_KGM2 ? { why: 'g/m²', times: 1 / 1000 } : null;
}

function swapDoubts(material: SceneMaterial, key: WeightKey): MaterialDoubt[] {
  const weight = material[key];
  if (weight === undefined || weight.saturated >= weight.dry) return [];
  const mended = { ...material, [key]: { dry: weight.saturated, saturated: weight.dry } };
  return [{ why: 'saturated below dry', found: weight.saturated, meant: weight.dry, mended }];
}

function thicknessDoubts(material: SceneMaterial): MaterialDoubt[] {
  const { thicknessMm, role } = material;
  if (thicknessMm === undefined || thicknessMm >= LEAST_UNIT_MM || !UNITS.includes(role)) return [];
  const inMetres = thicknessMm < 1;
  const meant = plain(thicknessMm * (inMetres ? 1000 : 10));
  return [{ why: inMetres ? 'm' : 'cm', found: thicknessMm, meant, mended: { ...material, thicknessMm: meant } }];
}

/** Without the crumbs of a conversion. */
const plain = (value: number): number => Number(value.toPrecision(4));

/**
 * A material of the catalogue as the scene's own, to be changed there.
 * @param scene - the scene
 * @param material - entry of the catalogue
 * @param beside - name of a copy with an id of its own; null for a copy that takes the entry's place
 */
export function materialCopy(scene: SceneFile, material: SceneMaterial, beside: string | null): SceneMaterial {
  if (beside === null) return material;
  const taken = new Set([material.id, ...(scene.materials ?? []).map(({ id }) => id)]);
  return { ...material, id: freeId(material.id, 'M', taken), name: beside };
}
