/** Substrates (kg/m³ as settled) and pre-grown vegetation (kg/m²). Saturated − dry is the water at the stated capacity. */

import type { CatalogueMaterial } from '../model/catalogue.ts';
import type { Source } from '../model/source.ts';
import { assumed, CUTTING, fromMemory, insideMoistBulk, LOOSE_SPREAD, NO_SPREAD, SOIL_BEARING, SUBSTRATE_COMPACTION, TIPPER } from './sources.ts';

const INTENSIVE_WATER: Source = fromMemory('FLL green-roof guideline, intensive substrates 45 to 65 % by volume');
const EXTENSIVE_WATER: Source = fromMemory('FLL green-roof guideline, extensive substrates in several layers 35 to 65 % by volume');

export const SUBSTRATE_MATERIALS: readonly CatalogueMaterial[] = [
  {
    id: 'substrate-lawn',
    name: 'Lawn substrate',
    role: 'substrate',
    density: { dry: 1150, saturated: 1600 },
    waterCapacityPercent: 45,
    compactionFactor: 1.2,
    bearingKPa: 60,
    dispersal: 0.5,
    delivery: { unit: 'truck', m3: 25, kg: 24000 },
    sources: {
      density: insideMoistBulk('topsoil mixes 1.0 to 1.8 t/m³'),
      waterCapacityPercent: INTENSIVE_WATER,
      compactionFactor: SUBSTRATE_COMPACTION,
      bearingKPa: SOIL_BEARING,
      dispersal: LOOSE_SPREAD,
      delivery: TIPPER,
    },
  },
  {
    id: 'substrate-intensive',
    name: 'Intensive substrate',
    role: 'substrate',
    density: { dry: 1000, saturated: 1450 },
    waterCapacityPercent: 45,
    compactionFactor: 1.2,
    bearingKPa: 50,
    dispersal: 0.5,
    delivery: { unit: 'truck', m3: 25, kg: 24000 },
    sources: {
      density: insideMoistBulk('topsoil mixes 1.0 to 1.8 t/m³'),
      waterCapacityPercent: INTENSIVE_WATER,
      compactionFactor: SUBSTRATE_COMPACTION,
      bearingKPa: SOIL_BEARING,
      dispersal: LOOSE_SPREAD,
      delivery: TIPPER,
    },
  },
  {
    id: 'substrate-extensive',
    name: 'Extensive substrate',
    role: 'substrate',
    density: { dry: 950, saturated: 1300 },
    waterCapacityPercent: 35,
    compactionFactor: 1.15,
    bearingKPa: 60,
    dispersal: 0.5,
    delivery: { unit: 'truck', m3: 25, kg: 24000 },
    sources: {
      density: insideMoistBulk('expanded-clay mixes 0.8 to 1.4 t/m³'),
      waterCapacityPercent: EXTENSIVE_WATER,
      compactionFactor: SUBSTRATE_COMPACTION,
      bearingKPa: SOIL_BEARING,
      dispersal: LOOSE_SPREAD,
      delivery: TIPPER,
    },
  },
  {
    id: 'substrate-subsoil',
    name: 'Mineral subsoil without organic matter',
    role: 'substrate',
    density: { dry: 1350, saturated: 1650 },
    waterCapacityPercent: 30,
    compactionFactor: 1.15,
    bearingKPa: 80,
    dispersal: 0.5,
    delivery: { unit: 'truck', m3: 25, kg: 24000 },
    sources: {
      density: insideMoistBulk('lava mixes 1.3 to 1.8 t/m³'),
      waterCapacityPercent: assumed('mineral mix, below the range of planting substrates'),
      compactionFactor: SUBSTRATE_COMPACTION,
      bearingKPa: SOIL_BEARING,
      dispersal: LOOSE_SPREAD,
      delivery: TIPPER,
    },
  },
  {
    id: 'substrate-tree',
    name: 'Tree substrate',
    role: 'substrate',
    density: { dry: 1300, saturated: 1700 },
    waterCapacityPercent: 40,
    compactionFactor: 1.2,
    bearingKPa: 80,
    dispersal: 0.5,
    delivery: { unit: 'truck', m3: 25, kg: 24000 },
    sources: {
      density: insideMoistBulk('lava mixes 1.3 to 1.8 t/m³'),
      waterCapacityPercent: assumed('coarse mix that holds shape, slightly below intensive substrates'),
      compactionFactor: SUBSTRATE_COMPACTION,
      bearingKPa: SOIL_BEARING,
      dispersal: LOOSE_SPREAD,
      delivery: TIPPER,
    },
  },
];

/** Weight of the mat with its soil; the plants that grow on it are the build-up's `vegetation`. */
export const VEGETATION_MATERIALS: readonly CatalogueMaterial[] = [
  {
    id: 'turf-roll',
    name: 'Turf, rolled',
    role: 'vegetation',
    areal: { dry: 15, saturated: 25 },
    thicknessMm: 20,
    waterCapacityPercent: 50,
    lapPercent: 5,
    bearingKPa: 60,
    dispersal: 0,
    sources: {
      areal: assumed('turf with 15 to 20 mm of soil; 10 l/m² of water when soaked'),
      thicknessMm: assumed('usual cut of rolled turf'),
      waterCapacityPercent: assumed('10 l/m² in 20 mm'),
      lapPercent: CUTTING,
      bearingKPa: SOIL_BEARING,
      dispersal: NO_SPREAD,
    },
  },
  {
    id: 'sedum-mat',
    name: 'Sedum mat',
    role: 'vegetation',
    areal: { dry: 12, saturated: 22 },
    thicknessMm: 25,
    waterCapacityPercent: 40,
    lapPercent: 5,
    bearingKPa: 20,
    dispersal: 0,
    sources: {
      areal: assumed('mat with carrier and 20 mm of substrate; 10 l/m² of water when soaked'),
      thicknessMm: assumed('mat with carrier and substrate'),
      waterCapacityPercent: assumed('10 l/m² in 25 mm'),
      lapPercent: CUTTING,
      bearingKPa: assumed('not for walking on'),
      dispersal: NO_SPREAD,
    },
  },
];
