/**
 * The greatest that wheels bring along a line: on every layer's top and the membrane, per zone and bay, on the layers that
 * lie there then. Point loads stay apart from the area loads of the deck: nothing here is added to a cell.
 */

import type { WheelLayer, WheelRun, WheelStand } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { cellAt } from './geometry/grid.ts';
import { elasticPeakKPa } from './loads/newmark.ts';
import { axlePath, frontPlaces, type StandingWheel, supportAt, wheelsAt } from './loads/wheel-path.ts';
import { type Governs, governingPressure, type LayerTop } from './loads/wheel-stress.ts';
import { at, baysAt, groundAt, topsInStage } from './wheel-ground.ts';

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
  /** Saturated weight of what lies above [kPa]. */
  readonly aboveKPa: number;
  /** Wheels and weight together [kPa]. */
  readonly kPa: number;
  readonly permittedKPa: number | null;
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
  readonly stand: WheelStand;
}

interface BayMark {
  mark: Mark | null;
  standingKN: number;
}

interface Walk {
  readonly on: Evaluation;
  readonly run: WheelRun;
  readonly layers: readonly (readonly WheelLayer[])[];
  readonly topsOf: (zone: number) => readonly LayerTop[];
  /** Per zone, per top. */
  readonly marks: Map<number, (Mark | null)[]>;
  readonly bays: Map<number, BayMark>;
  membrane: Mark | null;
}

/**
 * Walks a vehicle along its line, in steps of at most one cell, and keeps the greatest. The line is travelled by every axle;
 * wheels before its start or beyond its end press along with the others, but what lies under them is not looked at.
 * A vehicle with supports is also taken to set one down anywhere on the line.
 * @param on - evaluation, for the layers and bays [-]
 * @param run - vehicle, line and stage [m]
 * @param layers - per zone how its layers spread and bear [kPa]
 * @returns greatest pressures [kPa] and loads standing in bays [kN]
 * @source contract.md, section 2, Wheels
 */
export function wheelEnvelope(on: Evaluation, run: WheelRun, layers: readonly (readonly WheelLayer[])[]): RunPeaks {
  const topsOf = topsInStage(on, layers, run.stage);
  const walk: Walk = { on, run, layers, topsOf, marks: new Map(), bays: new Map(), membrane: null };
  const { vehicle } = run;
  const path = axlePath(run.route, vehicle.radiusM);
  const { cellM } = on.input;
  const standings: StandingWheel[][] = [];
  const lastM = Math.max(...vehicle.axles.map((axle) => axle.atM));
  for (const frontM of frontPlaces(path, lastM, cellM)) {
    const wheels = wheelsAt(path, vehicle, frontM, run.dynamicFactor);
    standings.push(wheels);
    lookAt(walk, wheels, { frontM, on: 'wheels' });
  }
  // Only bays that the line itself enters; there the whole vehicle counts.
  for (const wheels of standings) countStanding(walk, wheels);
  const { pad } = vehicle;
  if (pad) {
    for (const frontM of frontPlaces(path, 0, cellM)) lookAt(walk, [supportAt(path, pad, frontM)], { frontM, on: 'support' });
  }
  return peaksOf(walk);
}

function lookAt(walk: Walk, wheels: readonly StandingWheel[], stand: WheelStand): void {
  wheels.forEach((wheel, index) => {
    if (!wheel.onLine) return;
    const ground = groundAt(walk.on, wheel.x, wheel.y);
    if (!ground) return;
    const tops = walk.topsOf(ground.zone);
    const marks = marksOf(walk, ground.zone, tops.length);
    // Under a sheet nothing has spread further than on it.
    let spreadM = Number.NaN;
    let kPa = Number.NaN;
    tops.forEach((top, t) => {
      const hereM = at(top.spread, ground.makeUpM);
      if (hereM !== spreadM) kPa = governingPressure(wheels, index, hereM).kPa;
      spreadM = hereM;
      const aboveKPa = at(top.above, ground.makeUpM);
      const kept = marks[t];
      const onMembrane = top.layer < 0;
      if (!onMembrane && kept && kPa + aboveKPa <= kept.kPa + kept.aboveKPa) return;
      const mark: Mark = { kPa, aboveKPa, top, spreadM, depthM: at(top.depth, ground.makeUpM), index, wheels, stand };
      if (onMembrane) markMembrane(walk, mark, baysAt(walk.on, wheel.x, wheel.y));
      else marks[t] = mark;
    });
  });
}

function markMembrane(walk: Walk, mark: Mark, bays: readonly number[]): void {
  if (!walk.membrane || mark.kPa > walk.membrane.kPa) walk.membrane = mark;
  for (const bay of bays) {
    const entry = walk.bays.get(bay) ?? { mark: null, standingKN: 0 };
    walk.bays.set(bay, entry);
    if (!entry.mark || mark.kPa > entry.mark.kPa) entry.mark = mark;
  }
}

/** Static, whatever the dynamic factor. */
function countStanding({ on, run, bays }: Walk, wheels: readonly StandingWheel[]): void {
  const sums = new Map<number, number>();
  for (const { x, y, loadKN } of wheels) {
    if (cellAt(on.prepared.ground.grid, x, y) < 0) continue;
    for (const bay of baysAt(on, x, y)) sums.set(bay, (sums.get(bay) ?? 0) + loadKN / run.dynamicFactor);
  }
  for (const [bay, kN] of sums) {
    const entry = bays.get(bay);
    if (entry && kN > entry.standingKN) entry.standingKN = kN;
  }
}

function marksOf({ marks }: Walk, zone: number, count: number): (Mark | null)[] {
  const known = marks.get(zone);
  if (known) return known;
  const fresh = new Array<Mark | null>(count).fill(null);
  marks.set(zone, fresh);
  return fresh;
}

function peakOf({ wheels, index, spreadM, depthM, stand }: Mark): WheelPeak {
  const { kPa, governs } = governingPressure(wheels, index, spreadM);
  const { x, y } = wheels[index];
  return { wheelsKPa: kPa, governs, elasticKPa: elasticPeakKPa(wheels, index, depthM), x, y, stand };
}

function peaksOf({ on, layers, marks, bays, membrane }: Walk): RunPeaks {
  const zones = [...marks.keys()].filter((zone) => zone >= 0).sort((a, b) => a - b);
  return {
    membrane: membrane ? peakOf(membrane) : null,
    bays: [...bays.entries()]
      .sort(([a], [b]) => a - b)
      .flatMap(([bay, { mark, standingKN }]) => {
        const { areaM2 } = on.bays[bay];
        return mark ? [{ bay, membrane: peakOf(mark), standingKN, kNm2: standingKN / areaM2 }] : [];
      }),
    layers: zones.flatMap((zone) =>
      (marks.get(zone) ?? []).flatMap((mark) => {
        if (!mark || mark.top.layer < 0) return [];
        const peak = peakOf(mark);
        const { layer } = mark.top;
        const { aboveKPa } = mark;
        return [{ ...peak, zone, layer, aboveKPa, kPa: peak.wheelsKPa + aboveKPa, permittedKPa: layers[zone][layer].bearingKPa }];
      }),
    ),
  };
}
