/** What wheels bring on one zone, or on bare deck: the greatest of each surface; zones do not ask what is beside them. */

import type { Governs } from '../model/run.ts';
import type { WheelLayer, WheelRun, WheelStand } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { elasticPeakKPa } from './loads/newmark.ts';
import type { StandingWheel } from './loads/wheel-path.ts';
import { governingPressure, type LayerTop } from './loads/wheel-stress.ts';
import { at, type Ground, groundAt, topsInStage } from './wheel-ground.ts';
import type { Stand, WheelStands } from './wheel-stands.ts';
import { groundsBeside, lookAround, touches } from './wheel-touch.ts';

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

/** A greatest pressure, with all that made it. */
export interface Mark {
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
  /** Rises along the walk: of equal pressures the first is told. */
  readonly order: number;
}

/** The greatest on one zone. */
export interface ZonePress {
  /** Per top of its layers; null where nothing presses. */
  readonly marks: (Mark | null)[];
  membrane: Mark | null;
  readonly bays: Map<number, Mark>;
}

interface Walk {
  readonly on: Evaluation;
  readonly topsOf: (zone: number) => readonly LayerTop[];
  readonly found: Map<number, ZonePress>;
}

/**
 * Keeps the greatest that wheels bring, zone by zone. A zone beside a wheel counts where the patch, grown by that zone's own layers,
 * laps onto it; of ground without a zone only what lies under a wheel's middle counts.
 * @param on - evaluation, for the layers and bays [-]
 * @param run - run and, per zone, how its layers spread and bear [kPa]
 * @param stands - how the run stands [m]
 * @param only - zones to look at, -1 for bare deck; null for all [-]
 * @returns the greatest per zone [kPa]; none where nothing presses
 * @source contract.md, section 2, Wheels
 */
export function pressOn(
  on: Evaluation,
  { run, layers }: { readonly run: WheelRun; readonly layers: readonly (readonly WheelLayer[])[] },
  { stands }: WheelStands,
  only: ReadonlySet<number> | null,
): Map<number, ZonePress> {
  const walk: Walk = { on, topsOf: topsInStage(on, layers, run.stage), found: new Map() };
  const around = lookAround(on, run.vehicle, layers, only);
  const ranks = on.input.zones.length + 1;
  for (const stand of stands) {
    stand.wheels.forEach((wheel, index) => {
      if (!wheel.onLine) return;
      const zone = stand.under[index];
      const first = (stand.before + index) * ranks;
      const ground = zone > -2 && (only === null || only.has(zone)) ? groundAt(on, wheel.x, wheel.y) : null;
      if (ground) press(walk, { ...stand, index, order: first, bays: stand.touched[index] }, ground);
      for (const { bays, ...beside } of groundsBeside(around, wheel, zone)) {
        const place = { ...stand, index, order: first + 1 + beside.zone, bays };
        press(walk, place, beside, (other, spreadM) => touches(on.input.zones[beside.zone].region, other, spreadM));
      }
    });
  }
  return walk.found;
}

/** A wheel among those that stand with it, and the bays it presses on. */
interface Place extends Pick<Stand, 'wheels' | 'stand' | 'standsKPa'> {
  readonly index: number;
  readonly order: number;
  readonly bays: readonly number[];
}

/** Keeps what a wheel brings on one ground where it is the greatest; on ground beside it, only wheels whose patch `laps` onto that press. */
function press(
  { topsOf, found }: Walk,
  { wheels, index, stand, standsKPa, order, bays }: Place,
  { zone, makeUpM }: Ground,
  laps?: (wheel: StandingWheel, spreadM: number) => boolean,
): void {
  const tops = topsOf(zone);
  const held = pressOf(found, zone, tops.length);
  // Under a sheet nothing has spread further than on it.
  let spreadM = Number.NaN;
  let kPa = 0;
  let pressing = wheels;
  tops.forEach((top, t) => {
    const hereM = at(top.spread, makeUpM);
    if (hereM !== spreadM) {
      if (laps) pressing = laps(wheels[index], hereM) ? wheels.filter((wheel) => laps(wheel, hereM)) : [];
      kPa = pressing.length > 0 ? governingPressure(pressing, pressing.indexOf(wheels[index]), hereM).kPa : 0;
    }
    spreadM = hereM;
    if (pressing.length === 0) return;
    const aboveKPa = at(top.above, makeUpM) + standsKPa[index];
    const kept = held.marks[t];
    const onMembrane = top.layer < 0;
    if (onMembrane ? isHeld(held, kPa, bays) : kept && kPa + aboveKPa <= kept.kPa + kept.aboveKPa) return;
    const mark: Mark = { kPa, aboveKPa, top, spreadM, depthM: at(top.depth, makeUpM), index, wheels, pressing, stand, order };
    if (onMembrane) markMembrane(held, mark, bays);
    else held.marks[t] = mark;
  });
}

/** Whether as much has been there already, in every one of the bays. */
function isHeld({ membrane, bays: known }: ZonePress, kPa: number, bays: readonly number[]): boolean {
  return membrane !== null && membrane.kPa >= kPa && bays.every((bay) => (known.get(bay)?.kPa ?? -1) >= kPa);
}

function markMembrane(held: ZonePress, mark: Mark, bays: readonly number[]): void {
  held.membrane = greaterMark(held.membrane, mark);
  for (const bay of bays) held.bays.set(bay, greaterMark(held.bays.get(bay), mark));
}

/**
 * The greater of two pressures, the earlier where they are equal.
 * @param one - a mark, if there is one [kPa]
 * @param other - another [kPa]
 * @returns one of them [kPa]
 * @source none: arithmetic
 */
export function greaterMark(one: Mark | null | undefined, other: Mark): Mark {
  if (!one || other.kPa > one.kPa) return other;
  return other.kPa === one.kPa && other.order < one.order ? other : one;
}

function pressOf(found: Map<number, ZonePress>, zone: number, tops: number): ZonePress {
  const known = found.get(zone);
  if (known) return known;
  const fresh: ZonePress = { marks: new Array<Mark | null>(tops).fill(null), membrane: null, bays: new Map() };
  found.set(zone, fresh);
  return fresh;
}

/** The elastic opinion is worked out for the greatest alone, and once. */
const peaks = new WeakMap<Mark, WheelPeak>();

/**
 * A mark as it is told.
 * @param mark - mark [kPa]
 * @returns pressure of the wheels alone, and the elastic opinion at the same place [kPa]
 * @source contract.md, section 2, Wheels
 */
export function peakOf(mark: Mark): WheelPeak {
  const known = peaks.get(mark);
  if (known) return known;
  const { wheels, index, pressing, spreadM, depthM, stand } = mark;
  const { kPa, governs } = governingPressure(pressing, pressing.indexOf(wheels[index]), spreadM);
  const { x, y } = wheels[index];
  const peak = { wheelsKPa: kPa, governs, elasticKPa: elasticPeakKPa(wheels, index, depthM), x, y, stand };
  peaks.set(mark, peak);
  return peak;
}
