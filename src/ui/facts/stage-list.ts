/** What the list of stages tells of each: findings counted, and what would go if the stages were derived anew. */

import type { Finding } from '../../model/finding.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import type { StagesGone } from '../text/en-stages.ts';

export interface FindingCount {
  readonly stop: number;
  readonly check: number;
  readonly note: number;
}

/** Findings that name a stage. */
export const findingsIn = (findings: readonly Finding[], stage: string): Finding[] => findings.filter(({ where }) => where.stage === stage);

export function countFindings(findings: readonly Finding[]): FindingCount {
  const count = { stop: 0, check: 0, note: 0 };
  for (const { severity } of findings) count[severity]++;
  return count;
}

export function stagesGone({ stages = [] }: Pick<SceneFile, 'stages'>): StagesGone {
  const sum = (of: (stage: (typeof stages)[number]) => number) => stages.reduce((total, stage) => total + of(stage), 0);
  return {
    stages: stages.length,
    stockpiles: sum(({ stockpiles = [] }) => stockpiles.length),
    plant: sum(({ plant = [] }) => plant.length),
    floodTests: sum(({ floodTestMm = 0 }) => (floodTestMm > 0 ? 1 : 0)),
    holdPoints: sum(({ holdPoints = [] }) => holdPoints.length),
    cautions: sum(({ cautions = [] }) => cautions.length),
  };
}
