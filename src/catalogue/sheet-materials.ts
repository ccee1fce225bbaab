/** Sheets: root barrier, protection, slip, separation and filter. Areal weights in kg/m², one material per block. */

import type { CatalogueMaterial } from '../model/catalogue.ts';
import type { Source } from '../model/source.ts';
import { assumed, FLEECE_THICKNESS, fromMemory, NO_SPREAD, NOMINAL_SIZE, SHEET_LAP } from './sources.ts';

/** Saturated = dry + 6 × dry: a needle-punched fleece of 500 g/m² then goes from 0.5 to 3.5 kg/m². */
const PROTECTION_WEIGHT: Source = assumed('mass by its name; water uptake 6 kg per kg of fleece');

/** Saturated = dry + 5 × dry: a filter fleece of 200 g/m² then goes from 0.2 to 1.2 kg/m². */
const FILTER_WEIGHT: Source = assumed('mass by its name; water uptake 5 kg per kg of fleece');

const POLYETHYLENE_WEIGHT: Source = fromMemory('polyethylene, 920 to 940 kg/m³, times the thickness');

export const ROOT_BARRIER_MATERIALS: readonly CatalogueMaterial[] = [
  {
    id: 'root-barrier',
    name: 'Root barrier sheet, polyethylene 1.0 mm',
    role: 'root barrier',
    areal: { dry: 0.94, saturated: 0.94 },
    thicknessMm: 1,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: POLYETHYLENE_WEIGHT, thicknessMm: NOMINAL_SIZE, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
];

export const PROTECTION_MATERIALS: readonly CatalogueMaterial[] = [
  {
    id: 'fleece-300',
    name: 'Protection fleece 300 g/m²',
    role: 'protection',
    areal: { dry: 0.3, saturated: 2.1 },
    thicknessMm: 2.5,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: PROTECTION_WEIGHT, thicknessMm: FLEECE_THICKNESS, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
  {
    id: 'fleece-500',
    name: 'Protection fleece 500 g/m²',
    role: 'protection',
    areal: { dry: 0.5, saturated: 3.5 },
    thicknessMm: 4,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: PROTECTION_WEIGHT, thicknessMm: FLEECE_THICKNESS, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
  {
    id: 'fleece-800',
    name: 'Protection fleece 800 g/m²',
    role: 'protection',
    areal: { dry: 0.8, saturated: 5.6 },
    thicknessMm: 6,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: PROTECTION_WEIGHT, thicknessMm: FLEECE_THICKNESS, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
  {
    id: 'fleece-1000',
    name: 'Protection fleece 1000 g/m²',
    role: 'protection',
    areal: { dry: 1, saturated: 7 },
    thicknessMm: 8,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: PROTECTION_WEIGHT, thicknessMm: FLEECE_THICKNESS, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
  {
    id: 'rubber-mat-8',
    name: 'Protection mat of rubber granulate 8 mm',
    role: 'protection',
    areal: { dry: 6, saturated: 7.6 },
    thicknessMm: 8,
    lapPercent: 5,
    dispersal: 0,
    sources: {
      areal: assumed('bonded rubber granulate 750 kg/m³ with 20 % of pores that fill with water'),
      thicknessMm: NOMINAL_SIZE,
      lapPercent: assumed('mats laid butt to butt, cutting only'),
      dispersal: NO_SPREAD,
    },
  },
];

export const SLIP_MATERIALS: readonly CatalogueMaterial[] = [
  {
    id: 'pe-slip-1',
    name: 'Slip sheet, polyethylene 0.2 mm, one sheet',
    role: 'slip',
    areal: { dry: 0.184, saturated: 0.184 },
    thicknessMm: 0.2,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: POLYETHYLENE_WEIGHT, thicknessMm: NOMINAL_SIZE, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
  {
    // Areas of this entry are pairs of sheets.
    id: 'pe-slip-2',
    name: 'Slip sheets, polyethylene 0.2 mm, two sheets',
    role: 'slip',
    areal: { dry: 0.368, saturated: 0.368 },
    thicknessMm: 0.4,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: POLYETHYLENE_WEIGHT, thicknessMm: NOMINAL_SIZE, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
];

export const SEPARATION_MATERIALS: readonly CatalogueMaterial[] = [
  {
    id: 'separation-150',
    name: 'Separation fleece 150 g/m²',
    role: 'separation',
    areal: { dry: 0.15, saturated: 0.9 },
    thicknessMm: 1.2,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: FILTER_WEIGHT, thicknessMm: FLEECE_THICKNESS, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
  {
    id: 'separation-200',
    name: 'Separation fleece 200 g/m²',
    role: 'separation',
    areal: { dry: 0.2, saturated: 1.2 },
    thicknessMm: 1.5,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: FILTER_WEIGHT, thicknessMm: FLEECE_THICKNESS, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
];

export const FILTER_MATERIALS: readonly CatalogueMaterial[] = [
  {
    id: 'filter-100',
    name: 'Filter fleece 100 g/m²',
    role: 'filter',
    areal: { dry: 0.1, saturated: 0.6 },
    thicknessMm: 0.9,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: FILTER_WEIGHT, thicknessMm: FLEECE_THICKNESS, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
  {
    id: 'filter-150',
    name: 'Filter fleece 150 g/m²',
    role: 'filter',
    areal: { dry: 0.15, saturated: 0.9 },
    thicknessMm: 1.2,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: FILTER_WEIGHT, thicknessMm: FLEECE_THICKNESS, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
  {
    id: 'filter-200',
    name: 'Filter fleece 200 g/m²',
    role: 'filter',
    areal: { dry: 0.2, saturated: 1.2 },
    thicknessMm: 1.5,
    lapPercent: 10,
    dispersal: 0,
    sources: { areal: FILTER_WEIGHT, thicknessMm: FLEECE_THICKNESS, lapPercent: SHEET_LAP, dispersal: NO_SPREAD },
  },
];
