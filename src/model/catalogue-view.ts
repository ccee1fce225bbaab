/** What build-ups are made of and what drives over them, as editors choose from it: plain data, named in the language spoken. */

import type { MaterialNumber } from './catalogue.ts';
import type { SceneMaterial } from './scene-file.ts';

export interface CatalogueView {
  /** In the order of the roles. */
  readonly materials: readonly MaterialView[];
  readonly vegetation: readonly VegetationView[];
  readonly vehicles: readonly VehicleView[];
}

export interface VehicleView {
  readonly id: string;
  readonly name: string;
}

export interface MaterialView {
  /** As a scene would hold it; without a source, since each number has its own. */
  readonly material: SceneMaterial;
  readonly sources: readonly { readonly number: MaterialNumber; readonly text: string }[];
}

export interface VegetationView {
  /** Key as written in `vegetation.form`. */
  readonly form: string;
  readonly name: string;
  /** Usual weight; null where the table gives none. */
  readonly kNm2: number | null;
  /** Least substrate that the rules start from; null where they know none. */
  readonly leastMm: number | null;
}
