/** What wheels are worked out from: vehicles, their lines, and how layers take and spread pressure. No catalogue, no scene. */

/** A layer under wheels. */
export interface WheelLayer {
  /** Widening of a patch on every side per metre of the layer [-]. */
  readonly dispersal: number;
  /** Greatest permitted pressure on its top [kPa]; null where nobody says. */
  readonly bearingKPa: number | null;
}

/** A wheel, track or support where it stands: patch on the surface and its load. */
export interface WheelPatch {
  readonly x: number;
  readonly y: number;
  /** Heading, of length 1. */
  readonly dirX: number;
  readonly dirY: number;
  readonly alongM: number;
  readonly acrossM: number;
  /** With the dynamic factor, where one is asked for [kN]. */
  readonly loadKN: number;
}

export interface AxleInput {
  /** Behind the front axle [m]. */
  readonly atM: number;
  /** Laden [kN]. */
  readonly loadKN: number;
  readonly wheels: number;
  /** Between the middles of the wheels, or of the wheel groups, of both sides [m]. */
  readonly trackM: number;
  /** Contact patch along and across [m]. */
  readonly alongM: number;
  readonly acrossM: number;
}

/** One support of a vehicle that stands on supports. */
export interface PadInput {
  readonly loadKN: number;
  /** Along and across [m]. */
  readonly sizeM: readonly [number, number];
}

export interface VehicleInput {
  readonly id: string;
  readonly name: string;
  /** From the front. */
  readonly axles: readonly AxleInput[];
  readonly pad: PadInput | null;
  /** Radius of the tightest curve that the middle of its axles drives [m]. */
  readonly radiusM: number;
}

/** A vehicle on a line of the finished deck, or plant on a line in a stage. */
export interface WheelRun {
  readonly id: string;
  readonly vehicle: VehicleInput;
  /** x y per vertex, local [m]. */
  readonly route: Float64Array;
  /** Index of the stage; null for the finished deck. */
  readonly stage: number | null;
  /** Wheel loads are multiplied by it [-]. */
  readonly dynamicFactor: number;
}

/** How a vehicle stands on its line: on its wheels, or with one support set down. */
export interface WheelStand {
  /** Place of the front axle, or of the support, along the line [m]. */
  readonly frontM: number;
  readonly on: 'wheels' | 'support';
}
