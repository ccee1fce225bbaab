/** What may be said about all bays together. */

import type { SceneBasis } from '../../model/scene-file.ts';
import { distinctBases } from './basis.ts';
import { type BayCount, type BayVerdict, countBays } from './bay-verdict.ts';

export type Headline =
  | { readonly kind: 'no bays' }
  /** Every bay is confirmed, every load in it is compared, in the garden and in every stage, and none is over. */
  | { readonly kind: 'all within'; readonly bays: number; readonly bases: readonly SceneBasis[] }
  | { readonly kind: 'counts'; readonly count: BayCount };

export function headlineOf(verdicts: readonly BayVerdict[]): Headline {
  const count = countBays(verdicts);
  if (count.all === 0) return { kind: 'no bays' };
  if (count.within < count.all) return { kind: 'counts', count };
  return { kind: 'all within', bays: count.all, bases: distinctBases(verdicts.map(({ basis }) => basis)) };
}
