/** Ways of vehicles and plant, and where the deck is reached from, as the core takes them: local metres. */

import type { Region, Ring } from './deck-input.ts';
import type { FireTable } from './fire-access.ts';
import type { VehicleInput } from './wheel-input.ts';

/** A lane for fire appliances. */
export interface LaneInput {
  readonly id: string;
  /** Middle of the lane, x y per vertex. */
  readonly line: Float64Array;
  /** Width drawn; null where the scene gives none. */
  readonly widthM: number | null;
  readonly vehicleWidthM: number;
  readonly table: FireTable;
  /** Walls, upstands and the like that may bound it, x y per vertex. */
  readonly bounds?: readonly Float64Array[];
  /** What may stand in it. */
  readonly obstacles?: readonly ObstacleInput[];
}

/** A place where an appliance is set up or worked from. */
export interface SetUpInput {
  readonly id: string;
  readonly kind: 'set-up' | 'movement';
  readonly area: Region;
  readonly vehicle: VehicleInput;
  /** Foot of the building it serves, x y per vertex; null where the scene gives none. */
  readonly building: Float64Array | null;
  /** Null where no rule is to be used. */
  readonly table: FireTable | null;
}

/** Something that stands in the way: objects by their ground, upstands by their lines. */
export interface ObstacleInput {
  readonly name: string;
  readonly rings: readonly Ring[];
  readonly lines: readonly Float64Array[];
}

/** A machine on its way in a stage. */
export interface PlantInput {
  /** Index of the stage. */
  readonly stage: number;
  readonly vehicle: string;
  readonly line: Float64Array;
  readonly widthM: number;
}

export interface AccessInput {
  readonly id: string;
  readonly kind: 'ramp' | 'crane' | 'blower' | 'gate';
  readonly x: number;
  readonly y: number;
  readonly reachM: number | null;
}
