/** What a scene says that no check looks at yet: whoever reads "within the permitted loads" must know it. */

import type { SceneFile } from '../model/scene-file.ts';

const MOST_NAMED = 4;

/**
 * Parts of the file that are read but not calculated.
 * @param scene - checked scene
 * @returns one short text per part, in the file's order; empty where all is checked
 */
export function notChecked(scene: SceneFile): string[] {
  // Many ids would drown the sentence: their number tells enough.
  const list = (name: string, ids: readonly string[]) => {
    if (ids.length === 0) return [];
    return [ids.length > MOST_NAMED ? `${name} (${ids.length})` : `${name} ${ids.join(', ')}`];
  };
  return [
    ...list('flow to outlets, as no rain is given:', scene.rain ? [] : (scene.deck.outlets ?? []).map((outlet) => outlet.id)),
    // The order of derived stages is nobody's plan, so reach is not judged by it.
    ...list(
      'reach from access points, as no stages are given:',
      scene.stages?.length ? [] : (scene.accessPoints ?? []).map((point) => point.id),
    ),
  ];
}
