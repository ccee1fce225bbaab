/** What can lie in a stockpile: loose materials that the report already gives heights for, then all others with a density. */

import type { CatalogueView } from '../../model/catalogue-view.ts';
import type { Snapshot } from '../../model/engine.ts';
import { heapMaterials } from './heap-board.ts';

export interface LooseChoice {
  readonly id: string;
  readonly name: string;
}

export interface LooseChoices {
  readonly known: readonly LooseChoice[];
  readonly others: readonly LooseChoice[];
}

type Of = Pick<Snapshot, 'report' | 'scene' | 'materialNames'>;

/** `catalogue` is null until it comes. */
export function looseChoices({ report, scene, materialNames }: Of, catalogue: CatalogueView | null): LooseChoices {
  const known = heapMaterials(report).map((id) => ({ id, name: materialNames.get(id) ?? id }));
  const taken = new Set(known.map(({ id }) => id));
  const own = scene.materials ?? [];
  const replaced = new Set(own.map(({ id }) => id));
  const others = [...own, ...(catalogue?.materials ?? []).map(({ material }) => material).filter(({ id }) => !replaced.has(id))];
  return { known, others: others.filter(({ id, density }) => density && !taken.has(id)).map(({ id, name }) => ({ id, name })) };
}
