/** What the findings of water are made from. */

import type { Evaluation } from '../core/evaluation.ts';
import type { FindingFact, Rule, Severity, Where } from '../model/finding.ts';
import type { ReportOutlet, ReportWater } from '../model/report-water.ts';
import type { SceneFile } from '../model/scene-file.ts';
import type { KeptParts } from './kept-parts.ts';
import type { WaterStudy } from './water-study.ts';

export interface WaterFound {
  readonly scene: SceneFile;
  readonly on: Evaluation;
  readonly study: WaterStudy;
  readonly outlets: readonly ReportOutlet[];
  readonly water: ReportWater;
  readonly kept: KeptParts;
}

/** A finding with its value, limit and unit. */
export function fact(
  [rule, severity]: readonly [Rule, Severity],
  where: Where,
  [value, limit, unit]: readonly [number, number, string],
  facts: FindingFact['facts'],
): FindingFact {
  return { rule, severity, where, value, limit, unit, facts };
}

/** Where an outlet or overflow stands. */
export function outletPlace({ deck }: SceneFile, id: string): Where {
  const at = deck.outlets?.find((outlet) => outlet.id === id)?.at;
  return { object: id, ...(at ? { at } : {}) };
}

/** Rain and coefficients behind a flow. */
export function flowSource({ rain, table }: ReportWater): string {
  return `rain: ${rain?.source ?? 'none given'}; run-off: ${table}`;
}
