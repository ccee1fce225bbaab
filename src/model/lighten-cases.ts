/** Limits that come out the same in several cases, told once: a load that stands through stages 11 and 12 is one thing, not two. */

import type { LightenLoad } from './lighten.ts';

export type LightenCase = Pick<LightenLoad, 'kind' | 'stage'>;

/** A load with all the cases it stands for. */
export type WithCases<T extends LightenLoad> = Omit<T, 'kind' | 'stage'> & { readonly cases: readonly LightenCase[] };

/** Sums of the same loads in another order differ by less. */
const DECIMALS = 6;

/** Those that agree in all but the case as one, where the first of them stood. */
export function byCases<T extends LightenLoad>(loads: readonly T[]): readonly WithCases<T>[] {
  const groups = new Map<string, WithCases<T>>();
  for (const { kind, stage, ...same } of loads) {
    const key = JSON.stringify(same, (_, value) => (typeof value === 'number' ? value.toFixed(DECIMALS) : value));
    const cases = [...(groups.get(key)?.cases ?? []), { kind, stage }];
    groups.set(key, { ...(groups.get(key) ?? same), cases } as WithCases<T>);
  }
  return [...groups.values()];
}
