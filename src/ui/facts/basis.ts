/** Who says what a bay carries: the basis of a permitted load, or what it lacks. */

import type { SceneBasis } from '../../model/scene-file.ts';

export const BASIS_PARTS = ['document', 'revision', 'date'] as const;
export type BasisPart = (typeof BASIS_PARTS)[number];

/** What is missing for a permitted load to be confirmed. */
export function missingBasis(basis: SceneBasis | undefined): BasisPart[] {
  return BASIS_PARTS.filter((part) => (basis?.[part] ?? '').trim() === '');
}

/** Different complete bases, in order of first appearance. */
export function distinctBases(bases: readonly (SceneBasis | undefined)[]): SceneBasis[] {
  const seen = new Map<string, SceneBasis>();
  for (const basis of bases) {
    if (basis === undefined || missingBasis(basis).length > 0) continue;
    const key = BASIS_PARTS.map((part) => basis[part]).join('\n');
    if (!seen.has(key)) seen.set(key, basis);
  }
  return [...seen.values()];
}
