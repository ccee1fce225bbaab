/** Maps per cell, core logs and stage lists: what a person reads off one evaluated scene. */

import type { Role } from './roles.ts';

export const MAP_KINDS = [
  'load',
  'utilisation',
  'worst-stage',
  'difference',
  'depth',
  'substrate',
  'make-up',
  'finished',
  'upstand',
  'fall',
  'reach',
  'wheel-membrane',
  'wheel-bearing',
  'held',
  'catchment',
  'flow',
  'ponding',
  'blocked',
] as const;
export type MapKind = (typeof MAP_KINDS)[number];

/** Maps of where water runs and stands: of the finished garden, whatever stage is shown. */
export const WATER_MAP_KINDS = ['catchment', 'flow', 'ponding', 'blocked'] as const satisfies readonly MapKind[];
export type WaterMapKind = (typeof WATER_MAP_KINDS)[number];

/** Whether a map is one of running or standing water. */
export function isWaterMap(kind: MapKind): kind is WaterMapKind {
  return (WATER_MAP_KINDS as readonly MapKind[]).includes(kind);
}

/** Classes of the map of catchments after the outlets: what drains to none of them. */
export const NO_OUTLET_CLASSES = ['overflow only', 'over an edge', 'no way out'] as const;
export type NoOutletClass = (typeof NO_OUTLET_CLASSES)[number];

/** Bits of `CellMap.flags`. */
export const CELL_ON_DECK = 1;
export const CELL_UNCONFIRMED = 2;
export const CELL_OVER = 4;
export const CELL_NO_DATA = 8;
/** Within the band along open edges; only maps that tell of people at work set it. */
export const CELL_EDGE = 16;
/** Below the height that is required there; only the map of upstands sets it. */
export const CELL_SHORT = 32;

/** Classes of the map of reach, the worst last but for ground that nothing is brought to. */
export const REACH_CLASSES = ['driven', 'lifted', 'unreached', 'idle'] as const;
export type ReachClass = (typeof REACH_CLASSES)[number];

export interface GridShape {
  readonly columns: number;
  readonly rows: number;
  readonly cellM: number;
  /** Lower left corner, local [m]. */
  readonly x0M: number;
  readonly y0M: number;
}

export interface CellMap {
  readonly kind: MapKind;
  /** Index of the stage shown; null for the finished garden. */
  readonly stage: number | null;
  /** Row by row from the lower left, columns × rows; NaN where there is no value. */
  readonly values: Float32Array;
  readonly flags: Uint8Array;
  /**
   * Bearing clockwise from +y, NaN where there is none [°]: of the steepest descent for falls, of the way material is laid
   * for reach; null for other maps.
   */
  readonly directionDeg: Float32Array | null;
  readonly unit: string;
  /** Upper limits of the classes, the last class is open; null for a continuous scale from min to max. */
  readonly classLimits: readonly number[] | null;
  /** Ids of classes that values are indices of; null where values are quantities. */
  readonly names: readonly string[] | null;
  /** Area of each named class, exact by shares of cells [m²]; null with `names`. */
  readonly classM2: readonly number[] | null;
  readonly min: number;
  /** By area. */
  readonly mean: number;
  readonly max: number;
  readonly noDataM2: number;
  readonly noDataCells: number;
  readonly dataCells: number;
}

export interface CoreLogLayer {
  readonly zone: string;
  /** Share of the cell's deck area [-]. */
  readonly share: number;
  readonly materialId: string;
  readonly name: string;
  readonly role: Role;
  readonly loose: boolean;
  readonly bottomM: number;
  readonly topM: number;
  readonly thicknessMm: number;
  /** What an infill puts into the voids of the element below, besides its thickness [l/m²]. */
  readonly intoVoidsLm2: number;
  /** Contribution per unit of deck, share included. */
  readonly dryKNm2: number;
  readonly saturatedKNm2: number;
  /** Stage that places it; null where none does. */
  readonly stage: string | null;
  readonly makeUp: boolean;
  /** False where the stage shown has not placed it yet (then it is not in the sums). */
  readonly placed: boolean;
}

export interface CoreLogOther {
  readonly kind: 'vegetation' | 'tree' | 'line' | 'block' | 'retaining' | 'stockpile' | 'flood test';
  readonly id: string;
  readonly zone: string | null;
  readonly dryKNm2: number;
  readonly saturatedKNm2: number;
}

/** Everything that stands on one cell, line by line; the lines add up to the sums. */
export interface CoreLog {
  readonly cell: number;
  readonly stage: string | null;
  /** Centre, file coordinates [m]. */
  readonly at: readonly [number, number];
  readonly deckAreaM2: number;
  readonly membraneM: number;
  readonly finishedM: number;
  /** Bottom to top per zone; zones by falling share. */
  readonly layers: readonly CoreLogLayer[];
  readonly others: readonly CoreLogOther[];
  readonly dryKNm2: number;
  readonly saturatedKNm2: number;
  readonly patchKNm2: number | null;
  readonly bay: string | null;
  readonly bayConfirmed: boolean;
  readonly permittedKNm2: number | null;
  readonly permittedBasis: string;
  readonly utilisation: number | null;
}

export interface StockpileView {
  readonly id: string;
  /** Its name. */
  readonly material: string;
  readonly heightM: number;
  readonly areaM2: number;
  /** Lying loose, saturated; all of it, also what lies beside the deck. */
  readonly weightKN: number;
}

export interface StageView {
  readonly id: string;
  readonly name: string;
  readonly derived: boolean;
  readonly lays: readonly {
    readonly materialId: string;
    readonly name: string;
    readonly role: Role;
    readonly zones: readonly string[];
    readonly areaM2: number;
    readonly volumeM3: number;
  }[];
  readonly objects: readonly string[];
  readonly stockpiles: readonly StockpileView[];
  readonly floodTestMm: number;
  readonly holdPoints: readonly {
    readonly id: string;
    readonly says: string;
    readonly releasedBy: string;
    readonly evidence: string;
    readonly on: string;
  }[];
  readonly cautions: readonly string[];
}
