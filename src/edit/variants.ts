/** Schemes kept beside the one that is judged: keeping, taking over, naming, taking out. */

import type { ScenePatch } from '../model/history.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { SCHEME_KEYS, type SceneScheme, type SceneVariant } from '../model/scheme.ts';

/**
 * What the scene as it stands would be kept as.
 * @param scene - checked scene
 * @returns its values of the keys that a scheme decides
 */
export function schemeOf(scene: SceneFile): SceneScheme {
  return Object.fromEntries(SCHEME_KEYS.flatMap((key) => (scene[key] === undefined ? [] : [[key, scene[key]]]))) as unknown as SceneScheme;
}

/** Whether the scene as it stands is this scheme. */
export function isShown(scene: SceneFile, { scheme }: SceneVariant): boolean {
  return SCHEME_KEYS.every((key) => JSON.stringify(scene[key]) === JSON.stringify(scheme[key]));
}

/** The next free letter, then letters with a number. */
export function nextVariantId(variants: readonly SceneVariant[]): string {
  const taken = new Set(variants.map(({ id }) => id));
  const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
  for (let round = 1; ; round++) {
    for (const letter of letters) {
      const id = round === 1 ? letter : `${letter}${round}`;
      if (!taken.has(id)) return id;
    }
  }
}

/**
 * Keeps the scene as it stands as one more variant.
 * @param scene - checked scene
 * @param name - name of the variant
 * @returns what changes
 */
export function kept(scene: SceneFile, name: string): ScenePatch {
  return withScheme(scene, { name, scheme: schemeOf(scene) });
}

/** Keeps any scheme as one more variant. */
export function withScheme(
  scene: SceneFile,
  variant: { readonly name: string; readonly says?: string; readonly scheme: SceneScheme },
): ScenePatch {
  const variants = scene.variants ?? [];
  return { variants: [...variants, { id: nextVariantId(variants), ...variant }] };
}

/**
 * Puts a variant in the place of the scheme that is judged. That one is kept, unless it is kept already: nothing is lost.
 * @param scene - checked scene
 * @param id - variant
 * @param nameOfBefore - name under which the present scheme is kept where it has to be
 * @returns what changes
 * @throws RangeError where there is no such variant
 */
export function takenOver(scene: SceneFile, id: string, nameOfBefore: string): ScenePatch {
  const variants = scene.variants ?? [];
  const wanted = variants.find((variant) => variant.id === id);
  if (wanted === undefined) throw new RangeError(`takenOver: no variant "${id}"`);
  const isKept = variants.some((variant) => isShown(scene, variant));
  return { ...patchTo(wanted.scheme), ...(isKept ? {} : kept(scene, nameOfBefore)) };
}

/** Every key of a scheme: those it does not have are taken out. */
export function patchTo(scheme: SceneScheme): ScenePatch {
  return Object.fromEntries(SCHEME_KEYS.map((key) => [key, scheme[key] ?? null])) as ScenePatch;
}

export function renamedVariant(scene: SceneFile, id: string, words: { readonly name: string; readonly says?: string }): ScenePatch {
  return {
    variants: (scene.variants ?? []).map((variant) => {
      if (variant.id !== id) return variant;
      const { says: _, ...rest } = variant;
      return words.says?.trim() ? { ...rest, name: words.name, says: words.says } : { ...rest, name: words.name };
    }),
  };
}

/** Takes a variant out; the last one takes the key with it. */
export function withoutVariant(scene: SceneFile, id: string): ScenePatch {
  const left = (scene.variants ?? []).filter((variant) => variant.id !== id);
  return { variants: left.length > 0 ? left : null };
}
