/** What the checks find. The core gives facts; `src/project` puts them into words. */

/** Stable names of the rules (contract.md, section 4). */
export type Rule =
  | 'load.basis'
  | 'load.permanent'
  | 'load.imposed'
  | 'load.total'
  | 'load.stage'
  | 'stress.layer'
  | 'traffic.bay'
  | 'traffic.width'
  | 'traffic.bend'
  | 'traffic.gradient'
  | 'traffic.setup'
  | 'depth.short'
  | 'depth.over'
  | 'depth.vegetation'
  | 'depth.lift'
  | 'depth.base'
  | 'level.outside'
  | 'level.fall'
  | 'edge.upstand'
  | 'edge.strip'
  | 'zone.overlap'
  | 'zone.gap'
  | 'zone.outside'
  | 'bay.gap'
  | 'bay.overlap'
  | 'order.protection'
  | 'order.slip'
  | 'order.drainage'
  | 'order.filter'
  | 'order.separation'
  | 'order.orientation'
  | 'order.infill'
  | 'order.root'
  | 'water.outlet'
  | 'water.overflow'
  | 'water.pond'
  | 'water.flow'
  | 'float.uplift'
  | 'stage.order'
  | 'stage.plant'
  | 'stage.reach'
  | 'stage.left'
  | 'wall.bearing'
  | 'wall.sliding';

/** stop: must not be built so · check: someone must look · note: to know. */
export type Severity = 'stop' | 'check' | 'note';

export interface Where {
  readonly zone?: string;
  readonly bay?: string;
  readonly stage?: string;
  readonly object?: string;
  /** File coordinates [m]. */
  readonly at?: readonly [number, number];
}

export interface FindingFact {
  readonly rule: Rule;
  readonly severity: Severity;
  readonly where: Where;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  /** Further facts the wording needs, units in the keys. */
  readonly facts: Readonly<Record<string, string | number>>;
}

export interface Finding {
  readonly rule: Rule;
  readonly severity: Severity;
  readonly where: Where;
  readonly says: string;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  readonly source: string;
}
