/** Ways of vehicles and plant, and where the deck is reached from, as the core takes them: local metres. */

import type { FireTable } from './fire-access.ts';

/** A lane for fire appliances. */
export interface LaneInput {
  readonly id: string;
  /** Middle of the lane, x y per vertex. */
  readonly line: Float64Array;
  /** Width drawn; null where the scene gives none. */
  readonly widthM: number | null;
  readonly vehicleWidthM: number;
  readonly table: FireTable;
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
