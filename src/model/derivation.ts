/** How a number of the report comes about: a tree of terms down to what was entered, measured on the drawing or looked up. */

import type { WheelStand } from './wheel-input.ts';

/** What of a bay's loads is held against what is permitted of it. */
export interface LoadAsk {
  readonly kind: 'utilisation' | 'load';
  readonly bay: string;
  readonly stage: string | null;
  /** Without: at a stage what lies there then; finished, the permanent load, or both together where only that is limited. */
  readonly of?: 'imposed' | 'total' | undefined;
}

/** Which number. Stages by id; null for the finished garden. */
export type DerivationAsk =
  | { readonly kind: 'mean'; readonly bay: string }
  | LoadAsk
  | { readonly kind: 'core log'; readonly cell: number; readonly stage: string | null; readonly state: 'dry' | 'saturated' }
  | { readonly kind: 'heap'; readonly bay: string; readonly stage: string; readonly material: string }
  | { readonly kind: 'column'; readonly column: string }
  | { readonly kind: 'mass'; readonly material: string }
  /** Of a zone, in the mean. */
  | { readonly kind: 'held' | 'zone load' | 'depth'; readonly zone: string }
  /** Of an outlet or overflow with all of them at work. */
  | { readonly kind: 'catchment' | 'design flow' | 'outlet use'; readonly outlet: string }
  /** Of an overflow with every outlet out of work. */
  | { readonly kind: 'overflow area' | 'overflow duty' | 'overflow use'; readonly outlet: string }
  | {
      readonly kind: 'wheel';
      readonly run: string;
      readonly zone: string;
      readonly layer: string;
      readonly stand: WheelStand;
      /** As told: a material may lie in a build-up more than once. */
      readonly kPa: number;
    };

/** What a term is; `of` of the term names the layer, zone, bay … it belongs to. */
export type TermName =
  | 'mean load'
  | 'weight'
  | 'weight of zone'
  | 'weight of object'
  | 'weight of objects'
  | 'bay area'
  | 'zone area'
  | 'window area'
  | 'share'
  | 'load of zone'
  | 'load of layer'
  | 'load of plants'
  | 'load standing'
  | 'depth'
  | 'imposed load'
  | 'flood'
  | 'flood depth'
  | 'thickness'
  | 'thickness and voids'
  | 'voids filled'
  | 'density dry'
  | 'density saturated'
  | 'mass per area'
  | 'water kept'
  | 'gravity'
  | 'utilisation'
  | 'patch'
  | 'mean of layers'
  | 'permitted'
  | 'room'
  | 'overload'
  | 'loose weight'
  | 'compaction'
  | 'height'
  | 'step'
  | 'column load'
  | 'mass'
  | 'volume'
  | 'area laid'
  | 'area with laps'
  | 'laps'
  | 'held'
  | 'held by layer'
  | 'capacity'
  | 'litres'
  | 'pressure'
  | 'pressure of wheels'
  | 'pressure of one wheel'
  | 'weight above'
  | 'wheel load'
  | 'axle load'
  | 'wheels of the axle'
  | 'dynamic factor'
  | 'loads together'
  | 'rectangle'
  | 'patch along'
  | 'patch across'
  | 'contact'
  | 'growth'
  | 'twice the growth'
  | 'catchment'
  | 'catchment in zone'
  | 'catchment without zone'
  | 'effective area'
  | 'effective part'
  | 'run-off coefficient'
  | 'design flow'
  | 'extreme rain'
  | 'taken by outlets'
  | 'overflow duty'
  | 'rain'
  | 'rain per area'
  | 'hectare'
  | 'outlet capacity'
  | 'outlet use'
  | 'growth in layer'
  | 'spread'
  | 'two';

/** Where a number that is not calculated comes from; `text` names the document. */
export interface TermSource {
  readonly from: 'scene' | 'drawing' | 'material' | 'load plan' | 'constant' | 'levels' | 'vehicle' | 'rule' | 'falls' | 'table';
  readonly text?: string;
}

export type TermOperation = 'sum' | 'difference' | 'product' | 'quotient' | 'whole steps';

export interface Term {
  readonly name: TermName;
  readonly of?: string;
  readonly value: number;
  readonly unit: string;
  /** Given, or calculated from terms in this order; `whole steps`: the first rounded down to whole steps of the second. */
  readonly how: { readonly source: TermSource } | { readonly does: TermOperation; readonly terms: readonly Term[] };
}
