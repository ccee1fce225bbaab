/**
 * The greatest that wheels bring along a line: on every layer's top and the membrane, per zone and bay, on the layers that
 * lie there then. Point loads stay apart from the area loads of the deck: nothing here is added to a cell.
 */

import type { Governs } from '../model/run.ts';
import type { WheelLayer, WheelRun, WheelStand } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { elasticPeakKPa } from './loads/newmark.ts';
import { axlePath, frontPlaces, type StandingWheel, supportAt, wheelsAt } from './loads/wheel-path.ts';
import { governingPressure, type LayerTop } from './loads/wheel-stress.ts';
import { at, type Ground, groundAt, topsInStage } from './wheel-ground.ts';
import { type Around, baysTouched, groundsBeside, lookAround, standingKPa, standingPieces, touches } from './wheel-touch.ts';

/** Greatest pressure of wheels on one surface, and where. */
export interface WheelPeak {
  /** Wheels alone [kPa]. */
  readonly wheelsKPa: number;
  readonly governs: Governs;
  /** At the same place in an elastic half-space: the greatest under the middles of wheels and halfway between two [kPa]. */
  readonly elasticKPa: number;
  /** Place of the wheel, local [m]. */
  readonly x: number;
  readonly y: number;
  /** How it stands then. */
  readonly stand: WheelStand;
}

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

interface Mark {
  readonly kPa: number;
  readonly aboveKPa: number;
  readonly top: LayerTop;
  readonly spreadM: number;
  readonly depthM: number;
  readonly index: number;
  readonly wheels: readonly StandingWheel[];
  /** Those of them that press on this ground. */
  readonly pressing: readonly StandingWheel[];
  readonly stand: WheelStand;
}

interface BayMark {
  mark: Mark | null;
  /** Whether a wheel on the line stands on it. */
  entered: boolean;
  standingKN: number;
}

/** Slabs and concrete spread 1:1 and more [-]. */
const SLAB_DISPERSAL = 1;
/** Longest step, also where cells are larger [m]. */
const STEP_M = 0.25;

interface Walk {
  readonly on: Evaluation;
  readonly run: WheelRun;
  readonly layers: readonly (readonly WheelLayer[])[];
  readonly topsOf: (zone: number) => readonly LayerTop[];
  /** Per zone, per top. */
  readonly marks: Map<number, (Mark | null)[]>;
  readonly bays: Map<number, BayMark>;
  readonly standing: ReturnType<typeof standingPieces>;
  readonly around: Around;
  membrane: Mark | null;
}

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
export function wheelEnvelope(on: Evaluation, run: WheelRun, layers: readonly (readonly WheelLayer[])[]): RunPeaks {
  const topsOf = topsInStage(on, layers, run.stage);
  const walk: Walk = {
    on,
    run,
    layers,
    topsOf,
    marks: new Map(),
    bays: new Map(),
    standing: standingPieces(on, run.stage),
    around: lookAround(on, run.vehicle, layers),
    membrane: null,
  };
  const { vehicle } = run;
  const path = axlePath(run.route, vehicle.radiusM);
  const stepM = Math.min(on.input.cellM, STEP_M);
  const lastM = Math.max(...vehicle.axles.map((axle) => axle.atM));
  for (const frontM of frontPlaces(path, lastM, stepM)) {
    const wheels = wheelsAt(path, vehicle, frontM, run.dynamicFactor);
    const touched = wheels.map((wheel) => baysTouched(walk.around, wheel));
    lookAt(walk, wheels, touched, { frontM, on: 'wheels' });
    countStanding(walk, wheels, touched);
  }
  const { pad } = vehicle;
  if (pad) {
    for (const frontM of frontPlaces(path, 0, stepM)) {
      const support = supportAt(path, pad, frontM);
      lookAt(walk, [support], [baysTouched(walk.around, support)], { frontM, on: 'support' });
    }
  }
  return peaksOf(walk);
}

function lookAt(walk: Walk, wheels: readonly StandingWheel[], touched: readonly (readonly number[])[], stand: WheelStand): void {
  const { on } = walk;
  wheels.forEach((wheel, index) => {
    if (!wheel.onLine) return;
    const place: Place = { wheels, index, stand, standsKPa: standingKPa(walk.standing, wheel) };
    const under = groundAt(on, wheel.x, wheel.y);
    for (const bay of touched[index]) bayMark(walk, bay).entered = true;
    if (under) press(walk, place, under, touched[index]);
    for (const { bays, ...ground } of groundsBeside(walk.around, wheel, under ? under.zone : -2)) {
      press(walk, place, ground, bays, (other, spreadM) => touches(on.input.zones[ground.zone].region, other, spreadM));
    }
  });
}

/** A wheel among those that stand with it. */
interface Place {
  readonly wheels: readonly StandingWheel[];
  readonly index: number;
  readonly stand: WheelStand;
  /** What stands where it does [kPa]. */
  readonly standsKPa: number;
}

/** Keeps what a wheel brings on one ground where it is the greatest; on ground beside it, only wheels whose patch `laps` onto that press. */
function press(
  walk: Walk,
  { wheels, index, stand, standsKPa }: Place,
  { zone, makeUpM }: Ground,
  bays: readonly number[],
  laps?: (wheel: StandingWheel, spreadM: number) => boolean,
): void {
  const tops = walk.topsOf(zone);
  const marks = marksOf(walk, zone, tops.length);
  // Under a sheet nothing has spread further than on it.
  let spreadM = Number.NaN;
  let kPa = 0;
  let pressing: readonly StandingWheel[] = wheels;
  tops.forEach((top, t) => {
    const hereM = at(top.spread, makeUpM);
    if (hereM !== spreadM) {
      if (laps) pressing = laps(wheels[index], hereM) ? wheels.filter((wheel) => laps(wheel, hereM)) : [];
      kPa = pressing.length > 0 ? governingPressure(pressing, pressing.indexOf(wheels[index]), hereM).kPa : 0;
    }
    spreadM = hereM;
    if (pressing.length === 0) return;
    const aboveKPa = at(top.above, makeUpM) + standsKPa;
    const kept = marks[t];
    const onMembrane = top.layer < 0;
    if (!onMembrane && kept && kPa + aboveKPa <= kept.kPa + kept.aboveKPa) return;
    const mark: Mark = { kPa, aboveKPa, top, spreadM, depthM: at(top.depth, makeUpM), index, wheels, pressing, stand };
    if (onMembrane) markMembrane(walk, mark, bays);
    else marks[t] = mark;
  });
}

function markMembrane(walk: Walk, mark: Mark, bays: readonly number[]): void {
  if (!walk.membrane || mark.kPa > walk.membrane.kPa) walk.membrane = mark;
  for (const bay of bays) {
    const entry = bayMark(walk, bay);
    if (!entry.mark || mark.kPa > entry.mark.kPa) entry.mark = mark;
  }
}

function bayMark({ bays }: Walk, bay: number): BayMark {
  const known = bays.get(bay);
  if (known) return known;
  const fresh: BayMark = { mark: null, entered: false, standingKN: 0 };
  bays.set(bay, fresh);
  return fresh;
}

/** Static, whatever the dynamic factor; of the whole vehicle, though only bays that the line itself enters are told. */
function countStanding(walk: Walk, wheels: readonly StandingWheel[], touched: readonly (readonly number[])[]): void {
  const sums = new Map<number, number>();
  wheels.forEach(({ loadKN }, i) => {
    for (const bay of touched[i]) sums.set(bay, (sums.get(bay) ?? 0) + loadKN / walk.run.dynamicFactor);
  });
  for (const [bay, kN] of sums) {
    const entry = bayMark(walk, bay);
    if (kN > entry.standingKN) entry.standingKN = kN;
  }
}

function marksOf({ marks }: Walk, zone: number, count: number): (Mark | null)[] {
  const known = marks.get(zone);
  if (known) return known;
  const fresh = new Array<Mark | null>(count).fill(null);
  marks.set(zone, fresh);
  return fresh;
}

function peakOf({ wheels, index, pressing, spreadM, depthM, stand }: Mark): WheelPeak {
  const { kPa, governs } = governingPressure(pressing, pressing.indexOf(wheels[index]), spreadM);
  const { x, y } = wheels[index];
  return { wheelsKPa: kPa, governs, elasticKPa: elasticPeakKPa(wheels, index, depthM), x, y, stand };
}

function peaksOf({ on, layers, topsOf, marks, bays, membrane }: Walk): RunPeaks {
  const underSlab = (zone: number, below: number) =>
    topsOf(zone).some(({ layer }) => layer > below && layers[zone][layer].dispersal >= SLAB_DISPERSAL);
  const zones = [...marks.keys()].filter((zone) => zone >= 0).sort((a, b) => a - b);
  return {
    membrane: membrane ? peakOf(membrane) : null,
    bays: [...bays.entries()]
      .sort(([a], [b]) => a - b)
      .flatMap(([bay, { mark, entered, standingKN }]) => {
        const { areaM2 } = on.bays[bay];
        return mark && entered ? [{ bay, membrane: peakOf(mark), standingKN, kNm2: standingKN / areaM2 }] : [];
      }),
    layers: zones.flatMap((zone) =>
      (marks.get(zone) ?? []).flatMap((mark) => {
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
