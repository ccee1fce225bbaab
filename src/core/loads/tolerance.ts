/** What a build-up weighs when everything comes out thicker and heavier, or thinner and lighter, than planned. */

import type { LayerInput, ZoneInput } from '../../model/deck-input.ts';
import type { Affine } from '../layers/coefficients.ts';

/** How far a layer may be off, up and down alike. */
export interface LayerTolerance {
  readonly thicknessM: number;
  /** Of the density [-]. */
  readonly density: number;
}

/**
 * Saturated load of a zone with all tolerances used up one way. Weights per square metre (sheets, elements, plants) do
 * not vary. A make-up layer under a set finish takes what the levels leave, so no thickness tolerance is added to it;
 * that it would give way under thicker layers is not counted on.
 * @param zone - build-up and finish [m]
 * @param planned - saturated load as planned, of the make-up thickness [kN/m²]
 * @param toleranceOf - tolerance of a material by its id [m]
 * @param way - 1 thicker and heavier, -1 thinner and lighter [-]
 * @returns load of the make-up thickness as planned [kN/m²]
 * @source none: arithmetic
 */
export function tolerantLoad(
  zone: Pick<ZoneInput, 'buildUp' | 'finish'>,
  planned: Affine,
  toleranceOf: (materialId: string) => LayerTolerance,
  way: 1 | -1,
): Affine {
  let { fixed, perM } = planned;
  for (const layer of zone.buildUp.layers) {
    const tolerance = toleranceOf(layer.materialId);
    const heavier = layer.saturatedPerMKNm3 * (1 + way * tolerance.density);
    const keepsLevel = layer.rangeM !== null && zone.finish.kind !== 'build-up';
    const thickerM = keepsLevel ? 0 : Math.max(-layer.thicknessM, way * tolerance.thicknessM);
    fixed += heavier * thickerM + (heavier - layer.saturatedPerMKNm3) * constantM(layer);
    if (layer.rangeM) perM += heavier - layer.saturatedPerMKNm3;
  }
  return { fixed, perM };
}

/** Thickness of a layer that is in the fixed part of the load: what fills voids, and its own where it is no make-up layer. */
function constantM({ rangeM, thicknessM, voidVolumeM }: LayerInput): number {
  return voidVolumeM + (rangeM ? 0 : thicknessM);
}
