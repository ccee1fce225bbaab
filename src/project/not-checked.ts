/** What a scene says that its result does not look at, and why: whoever reads "within the permitted loads" must know it. */

import type { Language } from '../model/language.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { SHARED_WORDS } from './words/shared-words.ts';

const MOST_NAMED = 4;

/**
 * Parts of the file that are read but not calculated.
 * @param scene - checked scene
 * @param language - of the texts
 * @returns one short text per part, in the file's order; empty where all is checked
 */
export function notChecked(scene: SceneFile, language: Language = 'en'): string[] {
  const words = SHARED_WORDS[language];
  // Many ids would drown the sentence: their number tells enough.
  const list = (says: (ids: string) => string, ids: readonly string[]) => {
    if (ids.length === 0) return [];
    return [says(ids.length > MOST_NAMED ? `(${ids.length})` : ids.join(', '))];
  };
  return [
    ...list(words.flowUnchecked, scene.rain ? [] : (scene.deck.outlets ?? []).map((outlet) => outlet.id)),
    ...list(
      words.variantsUnchecked,
      (scene.variants ?? []).map((variant) => variant.id),
    ),
    // The order of derived stages is nobody's plan, so reach is not judged by it.
    ...list(words.reachUnchecked, scene.stages?.length ? [] : (scene.accessPoints ?? []).map((point) => point.id)),
  ];
}
