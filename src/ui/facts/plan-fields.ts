/** Fields of the parts of a plan: where each value stands in the scene, its unit and the range in which it makes sense. */

import type { PlanLayer } from '../../store/plan-draw.ts';

export interface FieldBase {
  /** Key in the entry, keys within keys joined by points. */
  readonly path: string;
  /** May be left empty. */
  readonly optional?: boolean;
}

export interface NumberSpec extends FieldBase {
  readonly type: 'number';
  readonly unit: string;
  readonly decimals: number;
  readonly min: number;
  readonly max: number;
}

export type FieldSpec =
  | NumberSpec
  | (FieldBase & { readonly type: 'load' })
  | (FieldBase & { readonly type: 'text' })
  | (FieldBase & { readonly type: 'date' })
  | (FieldBase & { readonly type: 'flag' })
  /** Two sides. */
  | (FieldBase & { readonly type: 'size' })
  | (FieldBase & { readonly type: 'choice'; readonly among: readonly string[] })
  /** One, or several, of what the scene and the catalogue have. */
  | (FieldBase & { readonly type: 'reference' | 'references'; readonly to: 'build-up' | 'vehicle' | 'material' });

const metres = (path: string, min: number, max: number, optional = false): NumberSpec => ({
  type: 'number',
  path,
  unit: 'm',
  decimals: 3,
  min,
  max,
  optional,
});
const load = (path: string, optional = true): FieldSpec => ({ type: 'load', path, optional });
const text = (path: string): FieldSpec => ({ type: 'text', path, optional: true });
const number = (path: string, unit: string, decimals: number, [min, max]: readonly [number, number]): NumberSpec => ({
  type: 'number',
  path,
  unit,
  decimals,
  min,
  max,
});
const optional = (spec: NumberSpec): NumberSpec => ({ ...spec, optional: true });

/** As the scene file bounds its coordinates and levels [m]. */
const LEVEL_M = 10_000;
const TINY = 0.001;

export const BAY_LOADS = ['permanentKNm2', 'imposedKNm2', 'totalKNm2', 'stageKNm2'] as const;
export const BASIS_KEYS = ['document', 'revision', 'date', 'by'] as const;

const BASIS: readonly FieldSpec[] = BASIS_KEYS.map((key) => ({
  type: key === 'date' ? 'date' : 'text',
  path: `basis.${key}`,
  optional: true,
}));

const OBJECTS: Readonly<Record<string, readonly FieldSpec[]>> = {
  tree: [text('name'), number('massKg', 'kg', 0, [1, 200_000]), metres('spreadM', 0.1, 30)],
  line: [text('name'), number('kNm', 'kN/m', 2, [TINY, 1000]), metres('widthM', 0.01, 20)],
  block: [text('name'), load('kNm2', false), metres('heightM', 0.01, 50, true)],
  retaining: [
    text('name'),
    { type: 'choice', path: 'side', among: ['left', 'right'] },
    metres('retainedM', 0.05, 20),
    metres('baseM', 0.05, 20),
    metres('stemM', 0.02, 5),
    metres('slabM', 0.02, 5),
    number('backfill.density', 'kg/m³', 0, [50, 3000]),
    number('backfill.frictionDeg', '°', 1, [1, 60]),
    number('baseFriction', '-', 2, [0.01, 1.5]),
    load('surchargeKNm2'),
    optional(number('wallDensity', 'kg/m³', 0, [100, 8000])),
  ],
};

const VEHICLE: FieldSpec = { type: 'reference', path: 'vehicle', to: 'vehicle' };

const PARTS: Readonly<Partial<Record<PlanLayer, readonly FieldSpec[]>>> = {
  bay: [...BAY_LOADS.map((path) => load(path)), { type: 'references', path: 'vehicles', to: 'vehicle', optional: true }, ...BASIS],
  zone: [
    text('name'),
    { type: 'text', path: 'use', optional: true },
    { type: 'reference', path: 'buildup', to: 'build-up' },
    load('imposedKNm2'),
  ],
  edge: [
    { type: 'choice', path: 'kind', among: ['upstand', 'threshold'] },
    metres('membraneTopM', -LEVEL_M, LEVEL_M),
    { type: 'flag', path: 'drainedChannel', optional: true },
  ],
  outlet: [
    { type: 'choice', path: 'kind', among: ['outlet', 'overflow'] },
    optional(number('lps', 'l/s', 2, [TINY, 1000])),
    metres('invertM', -LEVEL_M, LEVEL_M, true),
  ],
  column: [{ type: 'size', path: 'sizeM' }],
  route: [VEHICLE, metres('widthM', 0.1, 50, true)],
  'set-up area': [text('name'), { type: 'choice', path: 'kind', among: ['set-up', 'movement'] }, VEHICLE],
  'access point': [{ type: 'choice', path: 'kind', among: ['ramp', 'crane', 'blower', 'gate'] }, metres('reachM', 0.1, 500, true)],
  levels: [metres('levelM', -LEVEL_M, LEVEL_M)],
  finish: [metres('levelM', -LEVEL_M, LEVEL_M)],
  stockpile: [{ type: 'reference', path: 'material', to: 'material' }, metres('heightM', 0.01, 20)],
  plant: [VEHICLE],
  outline: [optional(number('slabMm', 'mm', 0, [1, 5000])), { type: 'flag', path: 'rootResistant', optional: true }],
};

/** Fields of a part; of objects by their kind. */
export function fieldsOf(part: string, kind?: string): readonly FieldSpec[] {
  if (part === 'object') return OBJECTS[kind ?? ''] ?? [];
  // Points of a breakline have their levels in the table of points.
  return kind === 'breakline' ? [] : (PARTS[part as PlanLayer] ?? []);
}

/** Fields of the scene itself. */
export const SCENE_FIELDS: readonly FieldSpec[] = [
  text('name'),
  metres('grid.cellM', 0.05, 2, true),
  number('rain.designLpsHa', 'l/(s·ha)', 0, [1, 5000]),
  number('rain.extremeLpsHa', 'l/(s·ha)', 0, [1, 5000]),
];
