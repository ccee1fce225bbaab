/** Vehicles on their lines as lists: which uses most of what, the wheel to look at, its layers against what they bear. */

import type { ReportTraffic } from '../../model/report.ts';
import type { PoseGround, PoseTop, PoseWheel, RunPose, RunView } from '../../model/run.ts';
import type { WheelStand } from '../../model/wheel-input.ts';

export interface ListedRun {
  readonly id: string;
  readonly vehicle: string;
  /** Index; null for the finished garden. */
  readonly stage: number | null;
  /** Greatest share of what a layer bears; null where none says what it bears. */
  readonly used: number | null;
  readonly membraneKPa: number | null;
}

/** All vehicles in the order of the report: the finished garden, then stage by stage. */
export function listRuns(runs: readonly RunView[], traffic: readonly ReportTraffic[]): ListedRun[] {
  return runs.map(({ id, vehicle, stage }) => {
    const found = traffic.find((one) => one.id === id);
    return {
      id,
      vehicle,
      stage,
      used: greatest(found?.layers.map((layer) => layer.utilisation) ?? []),
      membraneKPa: found?.maxMembraneKPa ?? null,
    };
  });
}

function greatest(values: readonly (number | null)[]): number | null {
  return values.reduce((most, value) => (value !== null && (most === null || value > most) ? value : most), null);
}

/** Share of what a layer bears; null where nobody says. */
export function shareOf({ kPa, permittedKPa }: Pick<PoseTop, 'kPa' | 'permittedKPa'>): number | null {
  return permittedKPa === null ? null : kPa / permittedKPa;
}

const usedBy = ({ grounds }: PoseWheel) => greatest(grounds.flatMap(({ tops }) => tops.map(shareOf)));
const membraneOf = ({ grounds }: PoseWheel) => greatest(grounds.map(({ tops }) => tops.at(-1)?.wheelsKPa ?? null)) ?? -1;

/** Wheel that uses most of what a layer under it bears, or presses the membrane most; -1 where none is looked at. */
export function mostUsedWheel({ wheels }: Pick<RunPose, 'wheels'>): number {
  let best = -1;
  wheels.forEach((wheel, w) => {
    if (!wheel.onLine || wheel.grounds.length === 0) return;
    const kept = wheels[best];
    if (kept === undefined || isMore(wheel, kept)) best = w;
  });
  return best;
}

function isMore(a: PoseWheel, b: PoseWheel): boolean {
  const [ofA, ofB] = [usedBy(a) ?? -1, usedBy(b) ?? -1];
  // Alike wheels of one axle differ by rounding.
  if (Math.abs(ofA - ofB) > 1e-9 * Math.max(1, ofB)) return ofA > ofB;
  return membraneOf(a) > membraneOf(b) * (1 + 1e-9);
}

export type WheelSide = 'left' | 'middle' | 'right';

export interface WheelName {
  /** From the front, counted from 1. */
  readonly axle: number;
  readonly side: WheelSide;
  /** From the outside, counted from 1, and how many there are on that side. */
  readonly place: number;
  readonly of: number;
}

/** How a wheel is told from the others. */
export function wheelName({ wheels }: Pick<RunPose, 'wheels'>, index: number): WheelName {
  const own = wheels[index] as PoseWheel;
  const sideOf = ({ leftM }: PoseWheel): WheelSide => (Math.abs(leftM) < 1e-6 ? 'middle' : leftM > 0 ? 'left' : 'right');
  const beside = wheels.filter((wheel) => wheel.axle === own.axle && sideOf(wheel) === sideOf(own));
  const outer = beside.filter((wheel) => Math.abs(wheel.leftM) > Math.abs(own.leftM) + 1e-6).length;
  return { axle: own.axle + 1, side: sideOf(own), place: outer + 1, of: beside.length };
}

export interface LayerRow {
  readonly materialId: string;
  /** Of equal layers, counted from 0 from the top. */
  readonly nth: number;
  readonly top: PoseTop;
  readonly isMembrane: boolean;
  /** Wheels and weight above; on the membrane wheels alone [kPa]. */
  readonly kPa: number;
  readonly share: number | null;
  /** Greatest on the whole line: of a layer in this zone, of the membrane anywhere; null where the report has none. */
  readonly route: { readonly kPa: number; readonly share: number | null; readonly stand: WheelStand | null } | null;
}

/** Layers of one ground from the top down, the membrane last. */
export function layerRows({ zone, tops }: PoseGround, traffic: ReportTraffic | undefined): LayerRow[] {
  return tops.map((top, t): LayerRow => {
    const nth = tops.slice(0, t).filter(({ materialId }) => materialId === top.materialId).length;
    const isMembrane = top.layer < 0;
    const kPa = isMembrane ? top.wheelsKPa : top.kPa;
    const route = isMembrane ? membraneRoute(traffic) : layerRoute(traffic, zone, top.materialId, nth);
    return { materialId: top.materialId, nth, top, isMembrane, kPa, share: isMembrane ? null : shareOf(top), route };
  });
}

function membraneRoute(traffic: ReportTraffic | undefined): LayerRow['route'] {
  return traffic?.maxMembraneKPa == null ? null : { kPa: traffic.maxMembraneKPa, share: null, stand: null };
}

function layerRoute(traffic: ReportTraffic | undefined, zone: string | null, materialId: string, nth: number): LayerRow['route'] {
  const found = traffic?.layers.filter((layer) => layer.zone === zone && layer.layer === materialId)[nth];
  return found ? { kPa: found.maxKPa, share: found.utilisation, stand: found.stand } : null;
}

/** Place on a path of points, and how far it is to there; ends where the path ends [m]. */
export function placeOnPath(path: Float64Array, alongM: number): readonly [number, number] {
  let left = Math.max(0, alongM);
  for (let i = 2; i + 1 < path.length; i += 2) {
    const [ax, ay, bx, by] = path.subarray(i - 2, i + 2) as unknown as [number, number, number, number];
    const lengthM = Math.hypot(bx - ax, by - ay);
    if (left <= lengthM && lengthM > 0) return [ax + (left / lengthM) * (bx - ax), ay + (left / lengthM) * (by - ay)];
    left -= lengthM;
  }
  return [path.at(-2) ?? 0, path.at(-1) ?? 0];
}
