/** Wheels and supports of an appliance anywhere in a place where it is set up: walked along lines no more than one cell apart. */

import type { Region } from '../model/deck-input.ts';
import type { VehicleInput, WheelLayer, WheelRun } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { type FramedRectangle, smallestAround } from './geometry/rectangles.ts';
import { spansInside } from './rules/edges.ts';
import { type BayTraffic, type RunPeaks, wheelEnvelope } from './wheel-envelope.ts';

/** Lines shorter than this have no direction [m]. */
const NO_LENGTH_M = 1e-3;
/** Longest step, also where cells are larger [m]. */
const STEP_M = 0.25;

/** A place and what stands in it. */
export interface StandingRun {
  readonly id: string;
  readonly area: Region;
  readonly vehicle: VehicleInput;
  readonly dynamicFactor: number;
}

/** What wheels and supports bring, each by itself; the supports are null where the vehicle has none. */
export interface StandingPeaks {
  readonly wheels: RunPeaks;
  readonly support: RunPeaks | null;
}

/** How far what stands keeps from the long sides and from the ends of an area. */
interface Insets {
  readonly sidesM: number;
  readonly endsM: number;
}

/**
 * Greatest pressures of a vehicle that may stand anywhere in an area, headed along it, and of one of its supports set down anywhere in it.
 * @param on - evaluation, for the layers and bays [-]
 * @param run - area and vehicle [m]
 * @param layers - per zone how its layers spread and bear [kPa]
 * @param walked - walks one of the lines, each with an id of its own [kPa]
 * @returns greatest pressures [kPa] and loads standing in bays [kN]
 * @source contract.md, section 2, Wheels
 */
export function standingPeaks(
  on: Evaluation,
  run: StandingRun,
  layers: readonly (readonly WheelLayer[])[],
  walked: (line: WheelRun) => RunPeaks = (line) => wheelEnvelope(on, line, layers),
): StandingPeaks {
  const { id, area, vehicle, dynamicFactor } = run;
  const around = smallestAround(area.outer);
  const walk = (what: string, one: VehicleInput, insets: Insets, factor: number) => {
    const lines = linesThrough(area, around, insets, Math.min(on.input.cellM, STEP_M));
    return merged(lines.map((route, n) => walked({ id: `${id} ${what} ${n}`, vehicle: one, stage: null, dynamicFactor: factor, route })));
  };
  // Wheels and supports stand within the area with their whole contact.
  const sidesM = Math.max(
    ...vehicle.axles.map(({ trackM, acrossM, wheels }) => (trackM + acrossM * Math.max(1, Math.floor(wheels / 2))) / 2),
  );
  const endsM = Math.max(...vehicle.axles.map(({ alongM }) => alongM)) / 2;
  const wheels = walk('wheels', { ...vehicle, pad: null }, { sidesM, endsM }, dynamicFactor);
  const { pad } = vehicle;
  if (!pad) return { wheels, support: null };
  const [alongM, acrossM] = pad.sizeM;
  // A support is walked as a wheel by itself; it stands still, so no dynamic factor.
  const axle = { atM: 0, loadKN: pad.loadKN, wheels: 1, trackM: 0, alongM, acrossM };
  const support = { ...vehicle, axles: [axle], pad: null, radiusM: 0 };
  return { wheels, support: walk('support', support, { sidesM: acrossM / 2, endsM: alongM / 2 }, 1) };
}

/**
 * Lines along an area, no more than a step apart.
 * @param area - area [m]
 * @param around - smallest rectangle around it [m]
 * @param insets - distance from its sides and ends; the middle line alone where the sides come too near [m]
 * @param stepM - longest distance between lines [m]
 * @returns lines, x y per vertex, as far as they lie in the area [m]
 * @source contract.md, section 2, Wheels (positions no more than one cell apart)
 */
export function linesThrough(area: Region, around: FramedRectangle, insets: Insets, stepM: number): Float64Array[] {
  const { dirX, dirY, fromS, toS, fromT, toT } = around;
  const middleT = (fromT + toT) / 2;
  const low = Math.min(fromT + insets.sidesM, middleT);
  const rangeM = 2 * (middleT - low);
  const steps = Math.ceil(rangeM / stepM - 1e-9);
  const places = steps > 0 ? Array.from({ length: steps + 1 }, (_, k) => low + (k * rangeM) / steps) : [middleT];
  const lengthM = toS - fromS;
  const endShare = insets.endsM / lengthM;
  return places.flatMap((t) => {
    const piece = [fromS * dirX - t * dirY, fromS * dirY + t * dirX, toS * dirX - t * dirY, toS * dirY + t * dirX];
    const at = (share: number) => [piece[0] + share * (piece[2] - piece[0]), piece[1] + share * (piece[3] - piece[1])];
    return spansInside(piece, [area])
      .map(([from, to]) => [from + endShare, to - endShare])
      .filter(([from, to]) => (to - from) * lengthM > NO_LENGTH_M)
      .map(([from, to]) => Float64Array.of(...at(from), ...at(to)));
  });
}

/** The greatest of several walks, surface by surface. */
function merged(all: readonly RunPeaks[]): RunPeaks {
  const bays = new Map<number, BayTraffic>();
  const layers = new Map<string, RunPeaks['layers'][number]>();
  let membrane: RunPeaks['membrane'] = null;
  for (const peaks of all) {
    if (peaks.membrane && !(membrane && membrane.wheelsKPa >= peaks.membrane.wheelsKPa)) membrane = peaks.membrane;
    for (const one of peaks.layers) {
      const key = `${one.zone} ${one.layer}`;
      const kept = layers.get(key);
      if (!kept || one.kPa > kept.kPa) layers.set(key, one);
    }
    for (const one of peaks.bays) {
      const kept = bays.get(one.bay);
      const top = kept && kept.membrane.wheelsKPa >= one.membrane.wheelsKPa ? kept.membrane : one.membrane;
      const most = kept && kept.standingKN >= one.standingKN ? kept : one;
      bays.set(one.bay, { bay: one.bay, membrane: top, standingKN: most.standingKN, kNm2: most.kNm2 });
    }
  }
  return {
    membrane,
    bays: [...bays.values()].sort((a, b) => a.bay - b.bay),
    layers: [...layers.values()].sort((a, b) => a.zone - b.zone || b.layer - a.layer),
  };
}
