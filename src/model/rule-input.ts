/** What the build-up rules look at: layers as facts, and limits with their sources. No catalogue, no scene. */

import type { Role } from './roles.ts';
import type { Source } from './source.ts';

export interface LayerFacts {
  readonly materialId: string;
  readonly name: string;
  readonly role: Role;
  readonly orientation: 'retention' | 'drained' | null;
  readonly infill: boolean;
  /** Voids of an element that an infill could take [l/m²]. */
  readonly voidLm2: number;
  /** Nominal [m]. */
  readonly thicknessM: number;
  readonly rangeM: { readonly min: number; readonly max: number } | null;
}

export interface ZoneFacts {
  readonly id: string;
  readonly use: string | null;
  /** Form of vegetation of its build-up; null where none is given. */
  readonly vegetationForm: string | null;
  /** A vehicle's route, with its width, crosses the zone. */
  readonly trafficked: boolean;
  /** Bottom to top. */
  readonly layers: readonly LayerFacts[];
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
}
