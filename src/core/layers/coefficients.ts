/**
 * What a build-up weighs, holds and measures, as affine functions of its make-up thickness m: `fixed + perM · m`.
 * Only that layer varies within a zone, so two numbers per zone and stage replace a loop over layers in every cell.
 */

import type { BuildUpInput } from '../../model/deck-input.ts';

export interface Affine {
  readonly fixed: number;
  /** Per metre of make-up layer. */
  readonly perM: number;
}

export interface StackCoefficients {
  /** kN/m². */
  readonly dry: Affine;
  /** kN/m². */
  readonly saturated: Affine;
  /** l/m². */
  readonly held: Affine;
  /** m. */
  readonly depth: Affine;
}

/**
 * Sums a build-up's layers, or those of them that are placed.
 * @param buildUp - layers bottom to top [m]
 * @param placed - whether a layer counts, by its index [-]
 * @param vegetation - whether the vegetation load counts [-]
 * @returns dry and saturated load [kN/m²], water held [l/m²] and depth [m], each as fixed part and part per metre of make-up layer [kN/m²]
 * @source contract.md, section 2, Area load, Infill and Held
 */
export function stackCoefficients(buildUp: BuildUpInput, placed: (layer: number) => boolean, vegetation: boolean): StackCoefficients {
  const sums = { dry: [0, 0], saturated: [0, 0], held: [0, 0], depth: [0, 0] };
  const add = (sum: number[], fixed: number, perM: number, thicknessM: number, makeUp: boolean) => {
    sum[0] += fixed + (makeUp ? 0 : perM * thicknessM);
    sum[1] += makeUp ? perM : 0;
  };
  buildUp.layers.forEach((layer, i) => {
    if (!placed(i)) return;
    const makeUp = layer.rangeM !== null;
    add(sums.dry, layer.dryFixedKNm2, layer.dryPerMKNm3, layer.thicknessM, makeUp);
    add(sums.saturated, layer.saturatedFixedKNm2, layer.saturatedPerMKNm3, layer.thicknessM, makeUp);
    add(sums.held, layer.heldFixedLm2, layer.heldPerMLm2, layer.thicknessM, makeUp);
    add(sums.depth, 0, 1, layer.thicknessM, makeUp);
  });
  if (vegetation) {
    sums.dry[0] += buildUp.vegetationKNm2;
    sums.saturated[0] += buildUp.vegetationKNm2;
  }
  const affine = ([fixed, perM]: number[]): Affine => ({ fixed, perM });
  return { dry: affine(sums.dry), saturated: affine(sums.saturated), held: affine(sums.held), depth: affine(sums.depth) };
}

/**
 * Index of the layer whose thickness makes up to the finished level.
 * @param buildUp - layers bottom to top [m]
 * @returns index of the layer, -1 where all thicknesses are fixed [-]
 * @source contract.md, section 2, Make-up layer
 */
export function makeUpLayer(buildUp: BuildUpInput): number {
  return buildUp.layers.findIndex((layer) => layer.rangeM !== null);
}

/**
 * Sum of the thicknesses that do not vary.
 * @param buildUp - layers bottom to top [m]
 * @returns thickness [m]
 * @source none: arithmetic
 */
export function fixedThicknessM(buildUp: BuildUpInput): number {
  let sum = 0;
  for (const layer of buildUp.layers) if (layer.rangeM === null) sum += layer.thicknessM;
  return sum;
}
