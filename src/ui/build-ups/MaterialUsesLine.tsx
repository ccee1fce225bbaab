/** Who uses a material, in one line. */

import { usesOf } from '../../edit/references.ts';
import type { Snapshot } from '../../model/engine.ts';
import { t } from '../text/text.ts';

/** Names of the build-ups, ids of the rest. */
export function usersOf(
  { scene }: Pick<Snapshot, 'scene'>,
  id: string,
): { readonly buildUps: readonly string[]; readonly others: readonly string[] } {
  const uses = usesOf(scene, 'material', id);
  const inBuildUps = scene.buildups.filter(({ layers }) => layers.some(({ material }) => material === id));
  const others = uses.filter(({ part }) => part !== 'layer' && part !== 'build-up').map((use) => use.id);
  return { buildUps: inBuildUps.map(({ name }) => name), others: [...new Set(others)] };
}

export function MaterialUsesLine({ snapshot, id }: { readonly snapshot: Snapshot; readonly id: string }) {
  const { buildUps, others } = usersOf(snapshot, id);
  return <p className="small">{t.materials.usedIn(buildUps, others)}</p>;
}
