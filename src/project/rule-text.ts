/** What the words of a rule are made of. */

import type { FindingFact } from '../model/finding.ts';
import type { SceneFile } from '../model/scene-file.ts';

export type Words = (fact: FindingFact, scene: SceneFile) => string;

/** Words of one rule: what is found and what to do, and where its limit comes from. */
export interface RuleText {
  readonly says: Words;
  readonly source: Words;
}

export const PRACTICE = 'common practice';

/** A number with a fixed count of decimals. */
export const number = (value: number, digits = 2): string => value.toFixed(digits);
