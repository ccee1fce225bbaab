/** Whether light layers float: uplift of standing water against the weight that holds them down, per square metre. */

import { GRAVITY_MS2 } from '../../model/units.ts';

/** Weight of water [kN/m³]. */
export const WATER_KNM3 = GRAVITY_MS2;

/** One layer as it lies, bottom to top. */
export interface FloatLayer {
  readonly thicknessM: number;
  /** Dry, per square metre. */
  readonly weightKNm2: number;
  /** Lifts where water stands in it: counted as uplift, not as lighter ballast. */
  readonly light: boolean;
  /** Share of its volume that pushes water aside: 1 for sealed blocks, less for grains with open voids [-]. */
  readonly displaces: number;
}

export interface UpliftFactors {
  /** On uplift [-]. */
  readonly up: number;
  /** On weight that holds [-]. */
  readonly down: number;
}

export interface Uplift {
  /** Lowest layer of those that would lift together. */
  readonly layer: number;
  /** Without factors. */
  readonly upliftKNm2: number;
  readonly holdingKNm2: number;
  /** down · holding / (up · uplift); Infinity where nothing lifts [-]. */
  readonly ratio: number;
  /** Further dry weight above water for a ratio of 1; 0 where it holds. */
  readonly ballastKNm2: number;
}

/**
 * Uplift of the light layers of a build-up that stands in water. What lies beneath a light layer does not hold it; every light
 * layer that water reaches is looked at with all that lies above it, and the worst is given.
 * @param layers - layers bottom to top [m]
 * @param waterM - water above the bottom of the lowest layer [m]
 * @param factors - partial factors [-]
 * @returns worst uplift; null where water reaches no light layer [kN/m²]
 * @source EN 1997-1, 2.4.7.4 (UPL); check-values.md, section 9
 */
export function worstUplift(layers: readonly FloatLayer[], waterM: number, factors: UpliftFactors): Uplift | null {
  let worst: Uplift | null = null;
  let upliftKNm2 = 0;
  let holdingKNm2 = 0;
  let topM = layers.reduce((sum, { thicknessM }) => sum + thicknessM, 0);
  for (let i = layers.length - 1; i >= 0; i--) {
    const { thicknessM, weightKNm2, light, displaces } = layers[i];
    const wetM = Math.min(thicknessM, Math.max(0, waterM - (topM - thicknessM)));
    topM -= thicknessM;
    const displacedKNm2 = WATER_KNM3 * displaces * wetM;
    if (light) {
      upliftKNm2 += displacedKNm2;
      holdingKNm2 += weightKNm2;
    } else holdingKNm2 += weightKNm2 - displacedKNm2;
    if (!light || wetM === 0) continue;
    const found = balance(i, upliftKNm2, holdingKNm2, factors);
    if (!worst || found.ratio < worst.ratio) worst = found;
  }
  return worst;
}

/**
 * Uplift against what holds.
 * @param layer - index of the lowest layer that lifts [-]
 * @param upliftKNm2 - uplift [kN/m²]
 * @param holdingKNm2 - weight that holds [kN/m²]
 * @param factors - partial factors [-]
 * @returns ratio and ballast that is missing [kN/m²]
 * @source EN 1997-1, 2.4.7.4 (UPL)
 */
export function balance(layer: number, upliftKNm2: number, holdingKNm2: number, { up, down }: UpliftFactors): Uplift {
  const ratio = upliftKNm2 > 0 ? (down * holdingKNm2) / (up * upliftKNm2) : Infinity;
  return { layer, upliftKNm2, holdingKNm2, ratio, ballastKNm2: Math.max(0, (up * upliftKNm2) / down - holdingKNm2) };
}
