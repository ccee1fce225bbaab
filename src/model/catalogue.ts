/** Shape of the catalogue's tables. */

import type { Role } from './roles.ts';
import type { SceneMaterial } from './scene-file.ts';
import type { Source } from './source.ts';

/** A catalogue material says where each of its numbers comes from; a scene's own material has one free text instead. */
export interface CatalogueMaterial extends Omit<SceneMaterial, 'source'> {
  readonly role: Role;
  readonly sources: Readonly<Partial<Record<MaterialNumber, Source>>>;
}

export type MaterialNumber =
  | 'density'
  | 'areal'
  | 'thicknessMm'
  | 'voidLm2'
  | 'retentionLm2'
  | 'waterCapacityPercent'
  | 'compactionFactor'
  | 'lapPercent'
  | 'bearingKPa'
  | 'dispersal'
  | 'flowLsm'
  | 'porePercent'
  | 'permeabilityMs'
  | 'uplift'
  | 'delivery';
