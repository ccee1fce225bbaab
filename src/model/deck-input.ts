/**
 * What the core calculates with: numbers only, in metres and kilonewtons, in local coordinates (file coordinates minus
 * `originM`), materials already resolved. `src/project` makes it from a scene; nothing in here knows the catalogue.
 */

import type { Role } from './roles.ts';

/** Ring of a polygon: x0 y0 x1 y1 …, open (first point not repeated), counter-clockwise, local metres. */
export type Ring = Float64Array;

/** Outer ring and holes (holes clockwise), local metres. */
export interface Region {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}

/** Spots and breaklines of a net of levels, local metres, z as in the file. */
export interface LevelNet {
  /** x y z per spot. */
  readonly spots: Float64Array;
  /** x y z per vertex, one array per breakline. */
  readonly breaklines: readonly Float64Array[];
}

/**
 * One layer of a build-up. Weights and water are affine in its own thickness t [m]:
 * `weight = fixed + perM · t`.
 */
export interface LayerInput {
  readonly materialId: string;
  readonly name: string;
  readonly role: Role;
  /** Lies loose (gravel, substrate), not in slabs or sheets; only drawn by. */
  readonly loose?: boolean;
  /** Thickness where it is not the make-up layer, and nominal where it is [m]. */
  readonly thicknessM: number;
  /** Range of the make-up layer; null for a fixed thickness. */
  readonly rangeM: { readonly min: number; readonly max: number } | null;
  readonly dryFixedKNm2: number;
  readonly dryPerMKNm3: number;
  readonly saturatedFixedKNm2: number;
  readonly saturatedPerMKNm3: number;
  readonly heldFixedLm2: number;
  readonly heldPerMLm2: number;
  /** Volume besides its own thickness: what an infill puts into the voids below [m³/m²]. */
  readonly voidVolumeM: number;
}

export interface BuildUpInput {
  readonly id: string;
  /** Bottom to top. */
  readonly layers: readonly LayerInput[];
  readonly vegetationKNm2: number;
}

export type FinishInput =
  | { readonly kind: 'build-up' }
  | { readonly kind: 'plane'; readonly x: number; readonly y: number; readonly z: number; readonly slopeX: number; readonly slopeY: number }
  | { readonly kind: 'net'; readonly net: LevelNet };

export interface ZoneInput {
  readonly id: string;
  readonly region: Region;
  readonly buildUp: BuildUpInput;
  readonly imposedKNm2: number;
  readonly finish: FinishInput;
}

export interface BayInput {
  readonly id: string;
  readonly region: Region;
  readonly permanentKNm2: number | null;
  readonly imposedKNm2: number | null;
  readonly totalKNm2: number | null;
  readonly stageKNm2: number | null;
  readonly confirmed: boolean;
}

/** Middle of a column, local metres. */
export interface ColumnInput {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

/** An object's load as pieces of even pressure; pieces may overlap and then add. */
export interface ObjectInput {
  readonly id: string;
  readonly kind: 'tree' | 'line' | 'block' | 'retaining';
  readonly pieces: readonly { readonly ring: Ring; readonly kNm2: number }[];
}

export interface StockpileInput {
  readonly id: string;
  /** Drawn height [m]; the load stands in `kNm2`. */
  readonly heightM: number;
  readonly ring: Ring;
  readonly kNm2: number;
}

export interface PlaceInput {
  /** Indices of zones; null for all. */
  readonly zones: readonly number[] | null;
  readonly roles: readonly Role[];
  /** Indices of objects. */
  readonly objects: readonly number[];
}

export interface StageInput {
  readonly id: string;
  readonly name: string;
  readonly place: readonly PlaceInput[];
  readonly stockpiles: readonly StockpileInput[];
  readonly floodKNm2: number;
}

export interface DeckInput {
  /** Added to local coordinates to give the file's. */
  readonly originM: readonly [number, number];
  readonly cellM: number;
  readonly deck: Region;
  /** Null: 0.000 everywhere. */
  readonly levels: LevelNet | null;
  readonly bays: readonly BayInput[];
  readonly zones: readonly ZoneInput[];
  readonly objects: readonly ObjectInput[];
  /** Columns under the deck, for their shares of the load. */
  readonly columns?: readonly ColumnInput[];
  /** Null: derived from the build-ups, one stage per role in stacking order. */
  readonly stages: readonly StageInput[] | null;
}
