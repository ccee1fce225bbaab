/** How much of every layer is laid where and when, and how many deliveries bring it. */

import type { ZoneInput } from '../../model/deck-input.ts';

/** One layer of one zone. */
export interface LaidLayer {
  readonly zone: number;
  /** Index in the zone's build-up, from the bottom. */
  readonly layer: number;
  /** Stage that places it, -1 never. */
  readonly stage: number;
  readonly areaM2: number;
  /** As placed and compacted; of an infill also what it puts into the voids below [m³]. */
  readonly placedM3: number;
}

/**
 * Quantities of all layers of all zones.
 * @param zones - zones with their build-ups [m]
 * @param laid - area of each zone and volume of its make-up layer [m³]
 * @param layerStages - stage that places each layer, per zone; -1 never [-]
 * @returns one entry per layer of each zone [m³]
 * @source contract.md, section 2, Infill and Make-up layer
 */
export function laidLayers(
  zones: readonly ZoneInput[],
  laid: readonly { readonly areaM2: number; readonly makeUpM3: number }[],
  layerStages: readonly Int16Array[],
): LaidLayer[] {
  return zones.flatMap(({ buildUp }, zone) => {
    const { areaM2, makeUpM3 } = laid[zone];
    return buildUp.layers.map(({ rangeM, thicknessM, voidVolumeM }, layer) => ({
      zone,
      layer,
      stage: layerStages[zone][layer],
      areaM2,
      placedM3: voidVolumeM * areaM2 + (rangeM ? makeUpM3 : thicknessM * areaM2),
    }));
  });
}

export interface Deliveries {
  readonly count: number;
  /** What fills a delivery first. */
  readonly by: 'volume' | 'weight';
}

/** A load filled by no more than this beyond a whole number is that number: rounding [-]. */
const ROUNDING = 1e-9;

/**
 * Number of deliveries.
 * @param orderM3 - volume to bring, null where it does not matter [m³]
 * @param massKg - mass to bring [kg]
 * @param one - what one delivery takes, each where known [m³]
 * @returns whole deliveries and what governs them; null where nothing says how much one takes [-]
 * @source none: arithmetic
 */
export function deliveriesOf(
  orderM3: number | null,
  massKg: number,
  one: { readonly m3?: number; readonly kg?: number } | undefined,
): Deliveries | null {
  const byVolume = one?.m3 === undefined || orderM3 === null ? null : orderM3 / one.m3;
  const byWeight = one?.kg === undefined ? null : massKg / one.kg;
  if (byVolume === null && byWeight === null) return null;
  const by = (byVolume ?? -1) >= (byWeight ?? -1) ? 'volume' : 'weight';
  return { count: Math.ceil(Math.max(0, (byVolume ?? 0) - ROUNDING, (byWeight ?? 0) - ROUNDING)), by };
}
