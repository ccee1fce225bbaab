/** Another scene file against the scene as it stands: a scheme for the same deck, or a list of what differs. */

import type { Language } from '../model/language.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { SCHEME_KEYS, type SceneScheme } from '../model/scheme.ts';
import type { FileComparison } from '../model/variants.ts';
import { sceneOfVariant } from './compare-variant.ts';
import { diffScenes } from './diff-scenes.ts';
import { changeLine, DIFF_TEXT } from './diff-text.ts';

/**
 * Compares two checked scenes.
 * @param before - scene as it stands
 * @param after - the other
 * @param language - of the words
 * @returns changes by group, and the other's scheme where nothing else differs
 */
export function compareFile(before: SceneFile, after: SceneFile, language: Language): FileComparison {
  const [one, other] = [withoutVariants(before), withoutVariants(after)];
  const changes = diffScenes(one, other);
  const text = DIFF_TEXT[language];
  const groups = [...new Set(changes.map(({ group }) => group))].map((group) => ({
    title: text.groups[group],
    lines: changes.filter((change) => change.group === group).map((change) => changeLine(change, text)),
  }));
  return { name: after.name, scheme: changes.length > 0 ? onlyScheme(one, other) : null, groups };
}

function withoutVariants({ variants: _, ...scene }: SceneFile): SceneFile {
  return scene;
}

/** What a variant does not keep, and nobody misses: who wrote the file, how it came about and how it is looked at. */
const ABOUT = ['name', 'about', 'history', 'views'] as const;

/** The other's scheme, where the scene with it would be the other. */
function onlyScheme(before: SceneFile, after: SceneFile): SceneScheme | null {
  const pick = (keys: readonly (keyof SceneFile)[]) => Object.fromEntries(keys.flatMap((key) => (key in after ? [[key, after[key]]] : [])));
  const scheme = pick(SCHEME_KEYS) as unknown as SceneScheme;
  const own = Object.fromEntries(Object.entries(before).filter(([key]) => !ABOUT.some((one) => one === key))) as unknown as SceneFile;
  const would = { ...sceneOfVariant(own, { id: '', name: '', scheme }), ...pick(ABOUT) } as SceneFile;
  return diffScenes(would, after).length === 0 ? scheme : null;
}
