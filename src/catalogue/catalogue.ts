/** Look-up of catalogue entries, and the list of where every number of the catalogue comes from. */

import type { CatalogueMaterial } from '../model/catalogue.ts';
import type { FireTable } from '../model/fire-access.ts';
import type { Limit } from '../model/rule-input.ts';
import { RUNOFF_TABLE_IDS, type RunoffTableId } from '../model/runoff.ts';
import type { Source } from '../model/source.ts';
import { FIRE_TABLES, SET_UP_STEP } from './fire-access.ts';
import { MATERIALS } from './materials.ts';
import { DEFAULT_LIMITS, MUNICIPAL_SOIL, RECOMMENDED_FALL, UPLIFT_FACTORS, WALL_DENSITY } from './rule-limits.ts';
import { ANNUAL_TABLE, PEAK_TABLES, RUNOFF_TABLE_NAMES } from './runoff-tables.ts';
import { VEGETATION_FORMS, VEGETATION_SOURCE } from './vegetation.ts';
import { type CatalogueVehicle, VEHICLES } from './vehicles.ts';

export const materialById: ReadonlyMap<string, CatalogueMaterial> = new Map(MATERIALS.map((material) => [material.id, material]));

export const vehicleById: ReadonlyMap<string, CatalogueVehicle> = new Map(VEHICLES.map((vehicle) => [vehicle.id, vehicle]));

export interface CatalogueSource {
  readonly kind: 'material' | 'vehicle' | 'vegetation' | 'rule';
  /** Id of the material or vehicle, form of vegetation, or set of rule values. */
  readonly entry: string;
  /** Key of the number in the entry, e.g. `density`. */
  readonly number: string;
  readonly source: Source;
}

function sourcesOf(
  kind: 'material' | 'vehicle',
  entry: { readonly id: string; readonly sources: Readonly<Record<string, Source>> },
): CatalogueSource[] {
  return Object.entries(entry.sources).map(([number, source]) => ({ kind, entry: entry.id, number, source }));
}

const { substrateMm, ...ONE_VALUE_LIMITS } = DEFAULT_LIMITS;

function limitSources(entry: string, limits: Readonly<Record<string, Limit>>): CatalogueSource[] {
  return Object.entries(limits).map(([number, { source }]) => ({ kind: 'rule', entry, number, source }));
}

/** Entry of a rule for lanes of fire appliances in the list of sources. */
export const laneEntry = (table: FireTable): string => `lanes, ${table.name}`;

function laneSources(table: FireTable): CatalogueSource[] {
  const { straightM, bounded, bends, transitionM, gradientPercent, setUpPercent, stepMm } = table;
  const values = { straightM, bounded, bends, transitionM, gradientPercent, setUpPercent, stepMm };
  const standing = (kind: 'setUp' | 'movement') =>
    Object.entries(table[kind] ?? {}).map(([key, limit]): [string, Limit | null] => [`${kind}.${key}`, limit]);
  return [...Object.entries(values), ...standing('setUp'), ...standing('movement')].flatMap(([number, value]): CatalogueSource[] =>
    value ? [{ kind: 'rule', entry: laneEntry(table), number, source: value.source }] : [],
  );
}

/** Entry of a run-off table in the list of sources; peaks and years are different numbers. */
export const runoffEntry = (table: RunoffTableId | 'year'): string => {
  return table === 'year' ? 'run-off of a year' : `run-off, ${RUNOFF_TABLE_NAMES[table]}`;
};

function runoffSources(table: RunoffTableId | 'year'): CatalogueSource[] {
  const rows = table === 'year' ? ANNUAL_TABLE : PEAK_TABLES[table];
  return rows.map(({ name, source }) => ({ kind: 'rule', entry: runoffEntry(table), number: name, source }));
}

export const CATALOGUE_SOURCES: readonly CatalogueSource[] = [
  ...MATERIALS.flatMap((material) => sourcesOf('material', material)),
  ...VEHICLES.flatMap((vehicle) => sourcesOf('vehicle', vehicle)),
  ...VEGETATION_FORMS.map(({ form }): CatalogueSource => ({ kind: 'vegetation', entry: form, number: 'kNm2', source: VEGETATION_SOURCE })),
  ...[...substrateMm].flatMap(([form, limit]) => limitSources(form, { substrateMm: limit })),
  ...limitSources('all decks', {
    ...ONE_VALUE_LIMITS,
    recommendedFallPercent: RECOMMENDED_FALL,
    wallDensity: WALL_DENSITY,
    setUpStepMm: SET_UP_STEP,
    ...UPLIFT_FACTORS,
  }),
  ...limitSources('one city, no default', { ...MUNICIPAL_SOIL }),
  ...FIRE_TABLES.flatMap(laneSources),
  ...([...RUNOFF_TABLE_IDS, 'year'] as const).flatMap(runoffSources),
];
