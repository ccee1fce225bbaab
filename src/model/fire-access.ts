/** What a published rule asks of a lane for fire appliances. Core and project read it; the tables stand in the catalogue. */

import type { Limit } from './rule-input.ts';
import type { Source } from './source.ts';

/** Rules a scene can choose among; `none` checks no lane. */
export const FIRE_TABLE_IDS = ['de-mrflfw', 'en-adb', 'us-ifc', 'none'] as const;

export type FireTableId = (typeof FIRE_TABLE_IDS)[number];

/** Width of a bend by its outer radius. */
export interface BendTable {
  /** Bends with a smaller outer radius are not permitted [m]. */
  readonly leastOuterM: number;
  /** Tightest first; a row holds up to its radius, that one included, and the last has none. */
  readonly rows: readonly { readonly upToM: number; readonly widthM: number }[];
  readonly source: Source;
}

/** Null where the rule gives no such value, or none that we know of. */
export interface FireTable {
  readonly id: Exclude<FireTableId, 'none'>;
  readonly country: string;
  readonly name: string;
  /** Least width of a straight lane [m]. */
  readonly straightM: Limit;
  /** Least width where walls or the like bound both sides for longer than `overM` [m]. */
  readonly bounded: (Limit & { readonly overM: number }) | null;
  readonly bends: BendTable | null;
  /** Length over which a lane passes from straight to bend [m]. */
  readonly transitionM: Limit | null;
  /** Greatest gradient along the lane, and of a place where an appliance is set up [%]. */
  readonly gradientPercent: Limit | null;
  readonly setUpPercent: Limit | null;
  /** Greatest step or kerb in the lane [mm]. */
  readonly stepMm: Limit | null;
}
