/** Weight of the plants themselves by form of vegetation; suggestions for a build-up's `vegetation`. */

import type { Source } from '../model/source.ts';

export interface VegetationForm {
  /** Key as written in `vegetation.form`. */
  readonly form: string;
  /** Surface load as the guideline gives it [kg/m²]. */
  readonly arealKgM2: number;
  /** The same as weight, with 9.81 m/s² [kN/m²]. */
  readonly kNm2: number;
}

/** Means over the surface: a tree's own weight, wind and anchoring are not in them. */
export const VEGETATION_SOURCE: Source = {
  document: 'FLL green-roof guideline, surface loads of vegetation, 10 kg/m² = 0.0981 kN/m²',
  grade: 'from memory',
};

export const VEGETATION_FORMS: readonly VegetationForm[] = [
  { form: 'lawn', arealKgM2: 5, kNm2: 0.04905 },
  { form: 'extensive grass', arealKgM2: 5, kNm2: 0.04905 },
  { form: 'low shrubs', arealKgM2: 10, kNm2: 0.0981 },
  { form: 'perennials', arealKgM2: 20, kNm2: 0.1962 },
  { form: 'shrubs to 1.5 m', arealKgM2: 20, kNm2: 0.1962 },
  { form: 'shrubs to 3 m', arealKgM2: 30, kNm2: 0.2943 },
  { form: 'large shrubs to 6 m', arealKgM2: 40, kNm2: 0.3924 },
  { form: 'small trees to 10 m', arealKgM2: 60, kNm2: 0.5886 },
  { form: 'trees to 15 m', arealKgM2: 150, kNm2: 1.4715 },
];
