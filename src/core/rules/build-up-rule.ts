/** What a build-up rule is: data and one small function that finds where a zone breaks it. */

import type { FindingFact, Rule, Severity } from '../../model/finding.ts';
import type { Role } from '../../model/roles.ts';
import type { LayerFacts, Limit, RuleSite, ZoneFacts } from '../../model/rule-input.ts';
import { sourceLine } from '../../model/source.ts';

export interface BuildUpRule {
  readonly name: Rule;
  readonly severity: Severity;
  /** Key of the words that say why it matters and what to do; one per rule of the list. */
  readonly why: string;
  readonly breaches: (zone: ZoneFacts, site: RuleSite) => readonly Breach[];
}

/** One place where a rule is broken. */
export interface Breach {
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  readonly facts: FindingFact['facts'];
}

/**
 * A breach that is there or not, at one layer.
 * @param layer - index of the layer from the bottom; -1 where one is missing altogether [-]
 * @param facts - names that the wording needs [-]
 * @returns the breach [-]
 * @source none: arithmetic
 */
export function breachAt(layer: number, facts: FindingFact['facts']): Breach {
  return { value: 1, limit: 0, unit: '-', facts: { ...facts, layerIndex: layer } };
}

/**
 * A value that a limit forbids.
 * @param valueMm - value found [mm]
 * @param limit - limit with its source [mm]
 * @param facts - names that the wording needs [-]
 * @returns the breach [mm]
 * @source none: arithmetic
 */
export function depthBreach(valueMm: number, limit: Limit, facts: FindingFact['facts']): Breach {
  return { value: valueMm, limit: limit.value, unit: 'mm', facts: { ...facts, source: sourceLine(limit.source) } };
}

/**
 * Whether a layer has one of the roles.
 * @param layer - the layer, or nothing [-]
 * @param roles - roles asked for [-]
 * @returns true if it has [-]
 * @source none: arithmetic
 */
export function hasRole(layer: LayerFacts | undefined, ...roles: readonly Role[]): boolean {
  return layer !== undefined && roles.includes(layer.role);
}
