/** Sentences of the material editor, and all of the build-up editor together. */

import type { MaterialDoubt } from '../../edit/materials.ts';
import type { MaterialNumber } from '../../model/catalogue.ts';
import type { RunoffSurface } from '../../model/runoff.ts';
import { numberText, quantityOf } from '../format.ts';
import { buildUps } from './en-build-ups.ts';
import { list } from './en-words.ts';

/** Numbers of a material that a data sheet gives. */
export type MaterialField =
  | 'dry'
  | 'saturated'
  | 'thicknessMm'
  | 'voidLm2'
  | 'retentionLm2'
  | 'waterCapacityPercent'
  | 'porePercent'
  | 'permeabilityMs'
  | 'flowLsm'
  | 'compactionFactor'
  | 'lapPercent'
  | 'bearingKPa'
  | 'dispersal'
  | 'priceAmount'
  | 'deliveryM3'
  | 'deliveryKg'
  | 'toleranceMm'
  | 'tolerancePercent';

interface FieldWords {
  readonly label: string;
  readonly hint: string;
}

const FIELDS: Readonly<Record<MaterialField, FieldWords>> = {
  dry: { label: 'Dry', hint: 'As placed and compacted.' },
  saturated: { label: 'Saturated', hint: 'Full of water; the permanent load counts it.' },
  thicknessMm: { label: 'Thickness', hint: 'Of sheets, elements and slabs; what is poured gets it in the build-up.' },
  voidLm2: { label: 'Voids', hint: 'What a fill takes up in the element.' },
  retentionLm2: { label: 'Held in its cups', hint: 'Laid to hold water.' },
  waterCapacityPercent: { label: 'Water capacity', hint: 'Water the material holds against gravity, of its volume.' },
  porePercent: { label: 'Further pores', hint: 'Only standing water fills them, of its volume.' },
  permeabilityMs: { label: 'Permeability', hint: 'Of a fill that drains.' },
  flowLsm: { label: 'Flow', hint: 'In its plane per metre of width, at the fall of the deck.' },
  compactionFactor: { label: 'Compaction factor', hint: 'Loose volume to placed volume: 1.2 to 1.35 is common.' },
  lapPercent: { label: 'Laps and cuts', hint: 'More to order than to lay.' },
  bearingKPa: { label: 'Bears', hint: 'Permitted pressure on its top.' },
  dispersal: { label: 'Dispersal', hint: 'How far a wheel spreads on every side per depth: 0.5 granular, 1.0 slabs, 0 sheets.' },
  priceAmount: { label: 'Price', hint: 'In the currency of the scene.' },
  deliveryM3: { label: 'Volume of a delivery', hint: 'Loose, as it comes.' },
  deliveryKg: { label: 'Mass of a delivery', hint: 'What the lorry may carry.' },
  toleranceMm: { label: 'Thickness may be off by', hint: 'More or less; empty takes that of the scene.' },
  tolerancePercent: { label: 'Density may be off by', hint: 'More or less; empty takes that of the scene.' },
};

const SURFACES: Readonly<Record<RunoffSurface, string>> = {
  sealed: 'paving with sealed joints',
  'open joints': 'paving with open joints',
  gravel: 'gravel',
  'grass paver': 'grass pavers',
  'bound gravel': 'bound gravel',
};

/** Numbers of the catalogue that have a source each. */
const NUMBERS: Readonly<Record<MaterialNumber, string>> = {
  density: 'Density',
  areal: 'Mass per area',
  thicknessMm: 'Thickness',
  voidLm2: 'Voids',
  retentionLm2: 'Held in its cups',
  waterCapacityPercent: 'Water capacity',
  compactionFactor: 'Compaction factor',
  lapPercent: 'Laps and cuts',
  bearingKPa: 'Bears',
  dispersal: 'Dispersal',
  flowLsm: 'Flow',
  porePercent: 'Further pores',
  permeabilityMs: 'Permeability',
  uplift: 'Under water',
  delivery: 'Delivery',
};

const digits = (value: number) => numberText(value, Number.isInteger(value) ? 0 : Math.abs(value) < 10 ? 2 : 1);

/** What is odd about a number. */
function doubtText({ why, found, meant }: MaterialDoubt, unit: string): string {
  const typed = `${digits(found)} ${unit}`;
  if (why === 'saturated below dry') return `Saturated (${typed}) is lighter than dry (${digits(meant ?? 0)} ${unit}). Swapped?`;
  if (why === 'unusual') return `${typed} is heavier than anything one lays on a deck. Is it right?`;
  return `${typed} is unusually little. Was ${digits(found)} ${why} meant, which is ${digits(meant ?? 0)} ${unit}?`;
}

const doubtMuch = ({ found, meant }: MaterialDoubt, unit: string) =>
  `${digits(found)} ${unit} is unusually much for a sheet. Were ${digits(found)} g/m² meant, which is ${digits(meant ?? 0)} ${unit}?`;

const materials = {
  list: 'Materials',
  own: 'Of this scene',
  ofCatalogue: 'Of the catalogue',
  find: 'Find by name or role',
  noOwn: 'This scene has no material of its own. Choose one of the catalogue and make your own copy of it.',
  isReplaced: 'replaced by the scene’s own',
  inPlace: 'Own copy in its place',
  inPlaceSays: 'Keeps the short name: every build-up that uses it takes the new values.',
  beside: 'Own copy beside it',
  besideSays: 'Gets a short name of its own: build-ups keep the catalogue’s until you change their layers.',
  copyName: (name: string) => `${name}, own values`,
  reset: 'Back to the catalogue’s values',
  remove: 'Remove from the scene',
  removeUsed: 'It stays as long as it is used.',
  usedIn: (buildUps: readonly string[], others: readonly string[]) =>
    buildUps.length + others.length === 0
      ? 'Used nowhere in this scene.'
      : [
          ...(buildUps.length > 0 ? [`Used in build-ups: ${list(buildUps, 'and')}.`] : []),
          ...(others.length > 0 ? [`Also named by: ${list(others, 'and')}.`] : []),
        ].join(' '),
  sources: 'Where the catalogue’s numbers come from',
  numbers: NUMBERS,
  name: 'Name',
  id: 'Short name',
  role: 'Role',
  source: 'Source',
  sourceHint: 'Data sheet with its date, or who says so. Without it the values are shown as without source.',
  noSource: 'without source',
  fields: FIELDS,
  weight: (kind: 'density' | 'areal') => (kind === 'density' ? 'Weight by volume' : 'Weight by area'),
  groups: { water: 'Water', bearing: 'Under load', order: 'To order', more: 'More' },
  per: 'Price per',
  perUnit: { m3: 'm³', m2: 'm²', t: 'tonne' },
  delivery: 'Delivered as',
  uplift: 'Under water',
  upliftOf: { none: 'not said', sealed: 'lifted as a sealed block', grains: 'lifted grain by grain' },
  surface: 'Surface for run-off',
  surfaceOf: { none: 'by its role', ...SURFACES },
  mineral: 'Mineral, without organic matter: may lie deep',
  doubt: (doubt: MaterialDoubt, unit: string) => (doubt.why === 'g/m²' ? doubtMuch(doubt, unit) : doubtText(doubt, unit)),
  takeMeant: (meant: number, unit: string) => `Take ${digits(meant)} ${unit}`,
  swap: 'Swap the two',
  keep: (found: number, unit: string) => `It is ${digits(found)} ${unit}`,
  forget: 'Leave it as it was',
  value: (value: number, decimals: number, unit: string) => quantityOf(value, decimals, unit),
} as const;

/** Registered in the table as a whole. */
export const buildUpTexts = { buildUps, materials } as const;
