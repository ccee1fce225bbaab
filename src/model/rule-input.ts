/** What the build-up rules look at: layers as facts, trees, and limits with their sources. No catalogue, no scene. */

import type { Role } from './roles.ts';
import type { Source } from './source.ts';

export interface LayerFacts {
  readonly name: string;
  readonly role: Role;
  readonly orientation: 'retention' | 'drained' | null;
  readonly infill: boolean;
  /** Voids of an element that an infill could take [l/m²]. */
  readonly voidLm2: number;
  /** Water an element holds if it is laid for retention [l/m²]. */
  readonly retentionLm2: number;
  /** Free of organic matter, so that it may lie deep. */
  readonly mineral: boolean;
  /** Least and greatest thickness over the zone, a make-up layer as it comes out; the same where it is fixed [m]. */
  readonly leastM: number;
  readonly greatestM: number;
}

export interface ZoneFacts {
  readonly id: string;
  /** Form of vegetation of its build-up; null where none is given. */
  readonly vegetationForm: string | null;
  /** A vehicle's route, with its width, crosses the zone, or a set-up area lies on it. */
  readonly trafficked: boolean;
  /** Bottom to top. */
  readonly layers: readonly LayerFacts[];
}

/** The soil a tree stands in. */
export interface TreeFacts {
  readonly id: string;
  /** File coordinates [m]. */
  readonly at: readonly [number, number];
  /** Zone it stands in; null for none. */
  readonly zone: string | null;
  /** Substrate at its place [m]. */
  readonly soilM: number;
  /** Substrate of its zone, divided by the trees that stand in it [m³]. */
  readonly shareM3: number;
  /** Trees that share the zone, this one included. */
  readonly sharedBy: number;
}

/** A rule value and where it comes from. */
export interface Limit {
  readonly value: number;
  readonly source: Source;
}

export interface RuleLimits {
  /** Least depth of substrate by form of vegetation [mm]. */
  readonly substrateMm: ReadonlyMap<string, Limit>;
  readonly treeSoilM3: Limit;
  readonly treeSoilMm: Limit;
  readonly subsoilBelowMm: Limit;
  readonly baseCourseMm: Limit;
  readonly liftMm: Limit;
  readonly upstandMm: Limit;
  readonly sillMm: Limit;
  readonly stripM: Limit;
  readonly fallPercent: Limit;
  /** Water that may stay where falls are missing [mm]. */
  readonly pondMm: Limit;
  readonly slidingRatio: Limit;
  readonly overturningRatio: Limit;
}

/** What holds for the whole deck. */
export interface RuleSite {
  readonly limits: RuleLimits;
  /** Null where the scene does not say. */
  readonly rootResistant: boolean | null;
}
