/** What a published rule asks of a lane for fire appliances. Core and project read it; the tables stand in the catalogue. */

import type { Limit } from './rule-input.ts';
import type { Source } from './source.ts';

/** Rules a scene can choose among; `none` checks no lane. */
export const FIRE_TABLE_IDS = ['de-mrflfw', 'de-din14090', 'en-adb', 'us-ifc', 'none'] as const;

export type FireTableId = (typeof FIRE_TABLE_IDS)[number];

/** Width of a bend by its outer radius. */
export interface BendTable {
  /** Bends with a smaller outer radius are not permitted [m]. */
  readonly leastOuterM: number;
  /** Tightest first; a row holds up to its radius, that one included, and the last has none. */
  readonly rows: readonly { readonly upToM: number; readonly widthM: number }[];
  readonly source: Source;
}

/** Size of a place where an appliance stands, by the rectangle that must fit into it. */
export interface StandingRule {
  /** Least width and length [m]. */
  readonly widthM: Limit;
  readonly lengthM: Limit;
  /** Free of obstacles: beside the long side away from the building where it stands along it, beside both where it stands across [m]. */
  readonly stripAlongM: Limit | null;
  readonly stripAcrossM: Limit | null;
  /** Distance to the building: least and greatest along it, greatest across [m]. */
  readonly wallLeastM: Limit | null;
  readonly wallMostM: Limit | null;
  readonly wallAcrossM: Limit | null;
  /** Free of obstacles before and after, in the width of the place [m]. */
  readonly runOutM: Limit | null;
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
  /** Where a ladder or platform is set up, and where an appliance stands to be worked from. */
  readonly setUp: StandingRule | null;
  readonly movement: StandingRule | null;
  /** Greatest step or kerb in the lane [mm]. */
  readonly stepMm: Limit | null;
}
