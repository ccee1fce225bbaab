/** Numbers of a material as a form asks for them: unit, range, where they stand in the scene file. */

import type { SceneMaterial } from '../../model/scene-file.ts';
import type { MaterialField } from '../text/en-materials.ts';

export interface FieldSpec {
  readonly field: MaterialField;
  readonly unit: string;
  readonly decimals: number;
  readonly min: number;
  readonly max: number;
  readonly get: (material: SceneMaterial) => number | undefined;
  /** The material with another value; null takes an optional one out. */
  readonly set: (material: SceneMaterial, value: number | null) => SceneMaterial;
}

type PlainKey = Extract<MaterialField, keyof SceneMaterial>;

/** Least of what has to be above 0. */
const ABOVE_0 = 1e-9;
const ANY = 1e6;

/** Keys whose value is null go. */
function without(material: SceneMaterial, change: { readonly [Key in keyof SceneMaterial]?: SceneMaterial[Key] | null }): SceneMaterial {
  return Object.fromEntries(Object.entries({ ...material, ...change }).filter(([, value]) => value !== null)) as unknown as SceneMaterial;
}

function plain(field: PlainKey, unit: string, decimals: number, [min, max]: readonly [number, number]): FieldSpec {
  return {
    field,
    unit,
    decimals,
    min,
    max,
    get: (material) => material[field] as number | undefined,
    set: (material, value) => without(material, { [field]: value }),
  };
}

/** Dry and saturated: by volume or by area, as the material has it. */
export const weightKey = ({ areal }: SceneMaterial): 'density' | 'areal' => (areal === undefined ? 'density' : 'areal');
export const weightUnit = (material: SceneMaterial): string => (weightKey(material) === 'density' ? 'kg/m³' : 'kg/m²');

export function weightFields(material: SceneMaterial): FieldSpec[] {
  const key = weightKey(material);
  return (['dry', 'saturated'] as const).map((field) => ({
    field,
    unit: weightUnit(material),
    decimals: key === 'density' ? 0 : 2,
    min: ABOVE_0,
    max: ANY,
    get: (of) => of[key]?.[field],
    set: (of, value) => (value === null ? of : { ...of, [key]: { dry: 0, saturated: 0, ...of[key], [field]: value } }),
  }));
}

export const SIZE_FIELDS: readonly FieldSpec[] = [plain('thicknessMm', 'mm', 1, [ABOVE_0, 5000])];

export const WATER_FIELDS: readonly FieldSpec[] = [
  plain('waterCapacityPercent', '%', 1, [0, 100]),
  plain('retentionLm2', 'l/m²', 1, [0, ANY]),
  plain('voidLm2', 'l/m²', 1, [0, ANY]),
  plain('porePercent', '%', 1, [0, 100]),
  plain('flowLsm', 'l/(s·m)', 2, [0, ANY]),
  plain('permeabilityMs', 'm/s', 4, [ABOVE_0, 10]),
];

export const BEARING_FIELDS: readonly FieldSpec[] = [plain('bearingKPa', 'kPa', 0, [ABOVE_0, ANY]), plain('dispersal', '', 2, [0, 10])];

/** Tolerance and delivery go altogether once they are empty. */
const tolerance = (field: 'toleranceMm' | 'tolerancePercent', key: 'thicknessMm' | 'densityPercent', unit: string): FieldSpec => ({
  field,
  unit,
  decimals: 1,
  min: 0,
  max: key === 'densityPercent' ? 100 : 1000,
  get: (material) => material.tolerance?.[key],
  set: (material, value) => {
    const { [key]: _, ...others } = material.tolerance ?? {};
    const next = value === null ? others : { ...others, [key]: value };
    return without(material, { tolerance: Object.keys(next).length === 0 ? null : next });
  },
});

export const TOLERANCE_FIELDS: readonly FieldSpec[] = [
  tolerance('toleranceMm', 'thicknessMm', 'mm'),
  tolerance('tolerancePercent', 'densityPercent', '%'),
];

const delivery = (field: 'deliveryM3' | 'deliveryKg', key: 'm3' | 'kg', unit: string): FieldSpec => ({
  field,
  unit,
  decimals: key === 'm3' ? 1 : 0,
  min: ABOVE_0,
  max: ANY,
  get: (material) => material.delivery?.[key],
  set: (material, value) => {
    const { [key]: _, ...others } = material.delivery ?? { unit: 'truck' };
    return { ...material, delivery: value === null ? others : { ...others, [key]: value } };
  },
});

export const ORDER_FIELDS: readonly FieldSpec[] = [
  plain('compactionFactor', '', 2, [1, 5]),
  plain('lapPercent', '%', 0, [0, 100]),
  delivery('deliveryM3', 'm3', 'm³'),
  delivery('deliveryKg', 'kg', 'kg'),
  {
    field: 'priceAmount',
    unit: '',
    decimals: 2,
    min: 0,
    max: ANY,
    get: ({ price }) => price?.amount,
    set: (material, amount) => without(material, { price: amount === null ? null : { per: 'm3', ...material.price, amount } }),
  },
];

export { without as withMaterial };
