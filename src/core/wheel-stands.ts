/** How a vehicle stands along its line: its wheels, the bays and zones under them. Nothing of it depends on layers. */

import type { WheelRun, WheelStand } from '../model/wheel-input.ts';
import type { Evaluation } from './evaluation.ts';
import { axlePath, frontPlaces, type StandingWheel, supportAt, wheelsAt } from './loads/wheel-path.ts';
import { groundAt } from './wheel-ground.ts';
import { baysTouched, lookAround, standingKPa, standingPieces } from './wheel-touch.ts';

/** Longest step, also where cells are larger [m]. */
const STEP_M = 0.25;

/** One place of a vehicle on its line. */
export interface Stand {
  readonly wheels: readonly StandingWheel[];
  readonly stand: WheelStand;
  /** Wheels at all places before it. */
  readonly before: number;
  /** Per wheel: zone under its middle; -1 on bare deck, -2 where it is off the deck or the line. */
  readonly under: readonly number[];
  /** Per wheel: bays it stands on, if only with a part of its patch. */
  readonly touched: readonly (readonly number[])[];
  /** Per wheel: pressure of what stands there [kPa]. */
  readonly standsKPa: readonly number[];
}

/** What stands in a bay. */
export interface BayStanding {
  /** Whether a wheel on the line stands on it. */
  entered: boolean;
  /** Greatest load of the wheels that stand in it at once, static [kN]. */
  standingKN: number;
}

export interface WheelStands {
  readonly stands: readonly Stand[];
  readonly bays: ReadonlyMap<number, BayStanding>;
}

/**
 * All places of a vehicle on its line, in steps of at most one cell; then its support, where it has one, set down anywhere on it.
 * @param on - evaluation, for zones and bays [-]
 * @param run - vehicle, line and stage [m]
 * @returns places in order [m] and what stands in bays [kN]
 * @source contract.md, section 2, Wheels
 */
export function wheelStands(on: Evaluation, run: WheelRun): WheelStands {
  const { vehicle } = run;
  const around = lookAround(
    on,
    vehicle,
    on.input.zones.map(({ buildUp }) => buildUp.layers.map(() => NO_SPREAD)),
    NO_ZONES,
  );
  const pieces = standingPieces(on, run.stage);
  const path = axlePath(run.route, vehicle.radiusM);
  const stepM = Math.min(on.input.cellM, STEP_M);
  const lastM = Math.max(...vehicle.axles.map((axle) => axle.atM));
  const stands: Stand[] = [];
  let before = 0;
  const add = (wheels: readonly StandingWheel[], stand: WheelStand) => {
    stands.push({
      wheels,
      stand,
      before,
      under: wheels.map(({ onLine, x, y }) => (onLine ? (groundAt(on, x, y)?.zone ?? -2) : -2)),
      touched: wheels.map((wheel) => baysTouched(around, wheel)),
      standsKPa: wheels.map((wheel) => (wheel.onLine ? standingKPa(pieces, wheel) : 0)),
    });
    before += wheels.length;
  };
  for (const frontM of frontPlaces(path, lastM, stepM)) add(wheelsAt(path, vehicle, frontM, run.dynamicFactor), { frontM, on: 'wheels' });
  const { pad } = vehicle;
  if (pad) for (const frontM of frontPlaces(path, 0, stepM)) add([supportAt(path, pad, frontM)], { frontM, on: 'support' });
  return { stands, bays: baysOf(stands, run.dynamicFactor) };
}

/** Bays do not ask how layers spread, nor for zones. */
const NO_SPREAD = { dispersal: 0, bearingKPa: null };
const NO_ZONES: ReadonlySet<number> = new Set();

/** Static, whatever the dynamic factor; of the whole vehicle, though only bays that the line itself enters are told. Supports are no traffic. */
function baysOf(stands: readonly Stand[], dynamicFactor: number): Map<number, BayStanding> {
  const bays = new Map<number, BayStanding>();
  const standing = (bay: number) => {
    const known = bays.get(bay) ?? { entered: false, standingKN: 0 };
    bays.set(bay, known);
    return known;
  };
  for (const { wheels, touched, stand } of stands) {
    const sums = new Map<number, number>();
    wheels.forEach(({ loadKN, onLine }, i) => {
      for (const bay of touched[i]) {
        if (onLine) standing(bay).entered = true;
        sums.set(bay, (sums.get(bay) ?? 0) + loadKN / dynamicFactor);
      }
    });
    if (stand.on === 'support') continue;
    for (const [bay, kN] of sums) standing(bay).standingKN = Math.max(standing(bay).standingKN, kN);
  }
  return bays;
}
