/** How much water stands in and above a build-up when it is ponded to a given height: linear between the tops of its layers. */

import type { BuildUpInput } from '../../model/deck-input.ts';
import { makeUpLayer } from '../layers/coefficients.ts';

export interface PoreColumn {
  /** Per layer, bottom to top; of the make-up layer the nominal one, which is not used [m]. */
  readonly thicknessM: readonly number[];
  /** Index of the make-up layer, -1 for none. */
  readonly makeUp: number;
  /** Per layer: share of its thickness that only ponded water fills [-]. */
  readonly freePores: readonly number[];
}

/**
 * Layers and pores of a build-up.
 * @param buildUp - layers, bottom to top [m]
 * @param freePores - per layer the share that only ponded water fills [-]
 * @returns column [m]
 * @throws RangeError if there are not as many shares as layers, or one is not 0 … 1
 * @source none: arithmetic
 */
export function poreColumn(buildUp: BuildUpInput, freePores: readonly number[]): PoreColumn {
  const { layers } = buildUp;
  if (freePores.length !== layers.length) {
    throw new RangeError(`poreColumn: one share per layer of ${buildUp.id} is wanted, got ${freePores.length} for ${layers.length}`);
  }
  for (const share of freePores) {
    if (!(share >= 0 && share <= 1)) throw new RangeError(`poreColumn: a share must be 0 … 1, got ${share} in ${buildUp.id}`);
  }
  return { thicknessM: layers.map((layer) => layer.thicknessM), makeUp: makeUpLayer(buildUp), freePores };
}

/**
 * Water in a build-up that is ponded: the free pores of what lies in it, and all of the height above the layers.
 * @param column - layers and pores [m]
 * @param makeUpM - thickness of the make-up layer there [m]
 * @param depthM - depth of the water above the membrane [m]
 * @returns depth that the same water would have with nothing in it [m]
 * @source none: arithmetic
 */
export function waterInPoresM(column: PoreColumn, makeUpM: number, depthM: number): number {
  let left = depthM;
  let waterM = 0;
  for (let i = 0; i < column.freePores.length && left > 0; i++) {
    const thicknessM = i === column.makeUp ? makeUpM : column.thicknessM[i];
    waterM += column.freePores[i] * Math.min(left, thicknessM);
    left -= thicknessM;
  }
  return waterM + Math.max(0, left);
}
