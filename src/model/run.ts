/** Vehicles on their lines, as the app shows them: what can be chosen, and everything under the wheels at one place. Plain data. */

import type { WheelPatch, WheelStand } from './wheel-input.ts';

/** What a vehicle is drawn as: generic bodies, no make. */
export const BODY_FORMS = ['lorry', 'loader', 'dumper', 'tracked', 'hand truck', 'car', 'plain'] as const;
export type BodyForm = (typeof BODY_FORMS)[number];

export interface VehicleBody {
  readonly form: BodyForm;
  readonly widthM: number;
  /** From the front; wheels side by side around half the track. */
  readonly axles: readonly {
    readonly atM: number;
    readonly wheels: number;
    readonly trackM: number;
    readonly alongM: number;
    readonly acrossM: number;
  }[];
}

/** A vehicle on its line. */
export interface RunView {
  readonly id: string;
  readonly vehicle: string;
  /** Index of the stage; null for the finished garden. */
  readonly stage: number | null;
  readonly dynamicFactor: number;
  /** Places of the front axle: from 0 to here, every axle then has travelled the whole line [m]. */
  readonly travelM: number;
  /** Places of a support along the line; null where the vehicle has none [m]. */
  readonly supportM: number | null;
  /** Path of the axles, x y per point, local [m]. */
  readonly path: Float64Array;
  readonly body: VehicleBody;
  /** Where the most is used of what a layer bears; where none says what it bears, where the membrane is pressed most. Null off the deck. */
  readonly worst: WheelStand | null;
}

/** How the greatest pressure comes about. */
export type Governs = 'one wheel' | 'sum of wheels' | 'enclosing rectangle';

/** Top of one layer, or the membrane, under a wheel. */
export interface PoseTop {
  /** Index in the build-up; -1 is the membrane. */
  readonly layer: number;
  readonly materialId: string;
  readonly name: string;
  /** Below the surface [m]. */
  readonly depthM: number;
  /** Growth of the patch on every side [m]. */
  readonly spreadM: number;
  readonly levelM: number;
  /** Outline of the grown patch, x y per corner, local [m]. */
  readonly ring: Float64Array;
  /** Greatest pressure of wheels somewhere in the patch [kPa]. */
  readonly wheelsKPa: number;
  readonly governs: Governs;
  /** Saturated weight of what lies above, and of what stands there [kPa]. */
  readonly aboveKPa: number;
  /** Wheels and weight together [kPa]. */
  readonly kPa: number;
  /** Null where nobody says, and on the membrane. */
  readonly permittedKPa: number | null;
  /** Elastic half-space, wheels alone [kPa]. */
  readonly elasticKPa: number;
}

export interface PoseWheel extends WheelPatch {
  /** From the front, counted from 0. */
  readonly axle: number;
  /** Left of the middle of its axle [m]. */
  readonly leftM: number;
  /** On the drawn line, not before its start or beyond its end: only there it is looked at. */
  readonly onLine: boolean;
  /** Bays that it stands on, if only with a part of its patch. */
  readonly bays: readonly string[];
  /** Top of what lies under it; null off the deck [m]. */
  readonly surfaceM: number | null;
  /** The ground under its middle first, then zones beside that its grown patch laps onto; none off the deck and its reach. */
  readonly grounds: readonly PoseGround[];
}

/** Layers that a wheel presses: under its middle, or of a zone beside it. */
export interface PoseGround {
  /** Null on bare deck. */
  readonly zone: string | null;
  readonly beside: boolean;
  /** From the top down, the membrane last; beside only those that the grown patch laps onto. */
  readonly tops: readonly PoseTop[];
}

/** A vehicle at one place of its line. */
export interface RunPose extends WheelStand {
  readonly run: string;
  readonly stage: number | null;
  readonly wheels: readonly PoseWheel[];
  /** Middle and heading of every axle; none where a support is looked at. */
  readonly axles: readonly { readonly x: number; readonly y: number; readonly dirX: number; readonly dirY: number }[];
}
