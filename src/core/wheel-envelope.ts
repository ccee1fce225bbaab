/**
 * The greatest that wheels bring along a line: on every layer's top and the membrane, per zone and bay, on the layers that
 * lie there then. Point loads stay apart from the area loads of the deck: nothing here is added to a cell.
 */

import type { WheelLayer, WheelRun } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { topsInStage } from './wheel-ground.ts';
import { greaterMark, type Mark, peakOf, pressOn, type WheelPeak, type ZonePress } from './wheel-press.ts';
import { type WheelStands, wheelStands } from './wheel-stands.ts';

export interface LayerPeak extends WheelPeak {
  readonly zone: number;
  readonly layer: number;
  /** Saturated weight of what lies above, and of what stands there [kPa]. */
  readonly aboveKPa: number;
  /** Wheels and weight together [kPa]. */
  readonly kPa: number;
  readonly permittedKPa: number | null;
  /** Whether slabs or concrete lie above, which are far stiffer than what an elastic half-space presumes. */
  readonly underSlab: boolean;
}

export interface BayTraffic {
  readonly bay: number;
  /** Greatest pressure of a wheel in it on the membrane. */
  readonly membrane: WheelPeak;
  /** Greatest load of the wheels that stand in it at once, static [kN]. */
  readonly standingKN: number;
  /** That load over the bay's area [kN/m²]. */
  readonly kNm2: number;
}

export interface RunPeaks {
  /** Null where no wheel stands on the deck. */
  readonly membrane: WheelPeak | null;
  readonly bays: readonly BayTraffic[];
  /** By zone, top layer first. */
  readonly layers: readonly LayerPeak[];
}

/** Slabs and concrete spread 1:1 and more [-]. */
const SLAB_DISPERSAL = 1;

type Layers = readonly (readonly WheelLayer[])[];

/**
 * Walks a vehicle along its line, in steps of at most one cell, and keeps the greatest. The line is travelled by every axle;
 * wheels before its start or beyond its end press along with the others, but what lies under them is not looked at.
 * A zone beside the wheel counts where the patch, grown by that zone's own layers, laps onto it; a bay is entered, and carries
 * the whole wheel, where the patch on the surface laps onto it. Of ground without a zone only what lies under a wheel's middle counts.
 * A vehicle with supports is also taken to set one down anywhere on the line.
 * @param on - evaluation, for the layers and bays [-]
 * @param run - vehicle, line and stage [m]
 * @param layers - per zone how its layers spread and bear [kPa]
 * @returns greatest pressures [kPa] and loads standing in bays [kN]
 * @source contract.md, section 2, Wheels
 */
export function wheelEnvelope(on: Evaluation, run: WheelRun, layers: Layers): RunPeaks {
  const stands = wheelStands(on, run);
  return peaksOf(on, { run, layers }, stands, pressOn(on, { run, layers }, stands, null));
}

/**
 * The greatest of all zones.
 * @param on - evaluation, for the layers and bays [-]
 * @param run - run and, per zone, how its layers spread and bear [kPa]
 * @param stands - how the run stands, for what stands in bays [kN]
 * @param presses - the greatest per zone, -1 for bare deck [kPa]
 * @returns greatest pressures [kPa] and loads standing in bays [kN]
 * @source contract.md, section 2, Wheels
 */
export function peaksOf(
  on: Evaluation,
  { run, layers }: { readonly run: WheelRun; readonly layers: Layers },
  stands: WheelStands,
  presses: ReadonlyMap<number, ZonePress>,
): RunPeaks {
  const topsOf = topsInStage(on, layers, run.stage);
  const underSlab = (zone: number, below: number) =>
    topsOf(zone).some(({ layer }) => layer > below && layers[zone][layer].dispersal >= SLAB_DISPERSAL);
  let membrane: Mark | null = null;
  const inBay = new Map<number, Mark>();
  for (const held of presses.values()) {
    if (held.membrane) membrane = greaterMark(membrane, held.membrane);
    for (const [bay, mark] of held.bays) inBay.set(bay, greaterMark(inBay.get(bay), mark));
  }
  const zones = [...presses.keys()].filter((zone) => zone >= 0).sort((a, b) => a - b);
  return {
    membrane: membrane ? peakOf(membrane) : null,
    bays: [...inBay.entries()]
      .sort(([a], [b]) => a - b)
      .flatMap(([bay, mark]) => {
        const standing = stands.bays.get(bay);
        if (!standing?.entered) return [];
        const { standingKN } = standing;
        return [{ bay, membrane: peakOf(mark), standingKN, kNm2: standingKN / on.bays[bay].areaM2 }];
      }),
    layers: zones.flatMap((zone) =>
      (presses.get(zone)?.marks ?? []).flatMap((mark) => {
        if (!mark || mark.top.layer < 0) return [];
        const peak = peakOf(mark);
        const { layer } = mark.top;
        const { aboveKPa } = mark;
        const kPa = peak.wheelsKPa + aboveKPa;
        return [{ ...peak, zone, layer, aboveKPa, kPa, permittedKPa: layers[zone][layer].bearingKPa, underSlab: underSlab(zone, layer) }];
      }),
    ),
  };
}
