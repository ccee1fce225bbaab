/** A build-up to begin with, made of a template when a zone is to have it. */

import { addBuildUp, buildUpId } from '../../edit/build-ups.ts';
import { BUILD_UP_TEMPLATES, fromTemplate } from '../../edit/build-ups-templates.ts';
import { patched, patchOf } from '../../edit/point-lists.ts';
import { isRefused, type Refused } from '../../edit/refusal.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { t } from '../text/text.ts';
import type { Made } from './use-plan-edits.ts';

/** Begins the value of a choice that is a template, not a build-up of the scene. */
export const TEMPLATE_MARK = 'template: ';
const FIRST_TEMPLATE = `${TEMPLATE_MARK}lawn`;

/** What a new zone is built up as: as was wished, where there is such a build-up or template; else the first of the scene, or lawn. */
export function buildUpFor({ buildups }: SceneFile, wished: string | undefined): string {
  const isKnown = wished !== undefined && (wished.startsWith(TEMPLATE_MARK) || buildups.some(({ id }) => id === wished));
  return isKnown ? wished : (buildups[0]?.id ?? FIRST_TEMPLATE);
}

/**
 * The scene with the build-up that a choice means.
 * @param scene - the scene
 * @param choice - id of a build-up, or a template
 * @returns the scene, with one build-up more where the choice is a template, and the id
 */
export function withChosenBuildUp(scene: SceneFile, choice: string): { readonly scene: SceneFile; readonly id: string } {
  const template = BUILD_UP_TEMPLATES.find(({ id }) => choice === TEMPLATE_MARK + id);
  if (template === undefined) return { scene, id: choice };
  const id = buildUpId(scene, template.id);
  const { name } = t.buildUps.template.words[template.id];
  return { scene: patched(scene, addBuildUp(scene, { id, name, ...fromTemplate(template, scene.deck.rootResistant) }, [])), id };
}

/**
 * What is made with a build-up, which comes before it where the choice is a template.
 * @param scene - the scene
 * @param choice - id of a build-up, or a template
 * @param make - works on the scene that has the build-up
 */
export function madeWithBuildUp(
  scene: SceneFile,
  choice: string,
  make: (scene: SceneFile, buildUp: string) => Made | Refused,
): Made | Refused {
  const begun = withChosenBuildUp(scene, choice);
  const made = make(begun.scene, begun.id);
  return isRefused(made) ? made : { ...made, patch: patchOf(scene, patched(begun.scene, made.patch)) };
}
