/**
 * Where water runs and stands on a deck: `waterCourse(on, site)`, `blockedOutlet(on, course, outlet)` and
 * `standingWater(on, course, levelM)` of the core. Arrays are per cell of the grid, row by row from the lower left.
 */

import type { OutletFault, WaterSite } from './water-input.ts';

/** Part of the deck that drains to one place. */
export interface Catchment {
  readonly areaM2: number;
  /** Σ C · area, peak coefficients [m²]. */
  readonly effectiveM2: number;
}

/** Water that stays where the deck has no fall to an outlet, with every outlet working. */
export interface Pond {
  /** Deepest cell. */
  readonly cell: number;
  readonly levelM: number;
  /** Greatest depth above the membrane [m]. */
  readonly depthM: number;
  readonly areaM2: number;
  /** In the free pores of what lies there, and above it [l]. */
  readonly litres: number;
  /** On the bare membrane [l]. */
  readonly bareLitres: number;
  /** Sink that it runs over to. */
  readonly sink: number;
}

/** Values of `WaterCourse.sinkAt` that are no sink. */
export const OFF_DECK = -1;
/** Deck whose water finds neither outlet, overflow nor spill. */
export const NO_WAY_OUT = -2;

export interface WaterCourse {
  readonly site: WaterSite;
  /** Per outlet: what is wrong with it; null for nothing. */
  readonly faults: readonly (OutletFault | null)[];
  /** Per outlet: its cell, -1 where it is left out. */
  readonly outletCells: Int32Array;
  /** Indices of spills that touch no edge of the deck and are left out. */
  readonly ignoredSpills: readonly number[];
  /** Per sink: the outlets in their order, then the spills in theirs. What several outlets in one cell get is shared evenly. */
  readonly catchments: readonly Catchment[];
  /** Deck that no sink drains. */
  readonly noWayOut: Catchment;
  /** Sink that most of each cell's water ends in (one per cell; the areas of `catchments` split it and differ a little). */
  readonly sinkAt: Int16Array;
  /** Level up to which water stays; the deck's own level where none does, NaN off the deck [m]. */
  readonly filledM: Float64Array;
  /** Where water runs to, clockwise from +y; NaN off the deck, at sinks, in ponds and where level [°]. */
  readonly bearingDeg: Float32Array;
  /** Σ C · area of everything upstream, the cell included [m²]. */
  readonly upstreamM2: Float64Array;
  /** Σ C · length of the longest way that water has run when it leaves the cell; times the rain it is the flow per metre of width [m]. */
  readonly pathM: Float64Array;
  /** By falling depth; deck without a way out has none. */
  readonly ponds: readonly Pond[];
}

/** Water in one bay besides the saturated garden. */
export interface WetBay {
  readonly bay: number;
  /** Water over the bay's area [kN/m²]. */
  readonly waterMeanKNm2: number;
  /** Saturated and ponded, over the bay's area [kN/m²]. */
  readonly meanKNm2: number;
  /** Saturated and ponded, greatest mean over 1 m × 1 m [kN/m²]. */
  readonly patchKNm2: number;
  readonly patchCell: number;
  /** Patch over the permitted permanent load; null where none is given. */
  readonly permanentUtilisation: number | null;
  /** Greatest patch with the imposed loads over the permitted total; null where none is given. */
  readonly totalUtilisation: number | null;
}

/** Standing water: a list of cells, and what it brings to the bays it touches. */
export interface StandingWater {
  /** Cells with water, rising. */
  readonly cells: Int32Array;
  /** Per listed cell: depth above the membrane at its centre [m]. */
  readonly depthM: Float32Array;
  /** Per listed cell: weight of the water per square metre of deck [kN/m²]. */
  readonly waterKNm2: Float32Array;
  /** Greatest depth [m]. */
  readonly mostM: number;
  readonly areaM2: number;
  /** In the free pores and above the layers [l]. */
  readonly litres: number;
  /** Bays with any change, in order. */
  readonly bays: readonly WetBay[];
}

/** One outlet closed, all others working, rain without end. */
export interface BlockedOutlet {
  readonly outlet: number;
  /** Level the water rises to; null where nothing lets it out. */
  readonly levelM: number | null;
  /** Sink that takes the water then: another outlet beyond a saddle, an overflow, a spill; -1 where nothing lets it out. */
  readonly into: number;
  /** Cell where it runs over: saddle, overflow or edge; -1 for none. */
  readonly overCell: number;
  /** Null where nothing lets the water out: then no depth can be told. */
  readonly water: StandingWater | null;
}
