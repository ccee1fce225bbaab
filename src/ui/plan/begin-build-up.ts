/** A build-up to begin with, made of a template when a zone is to have it. */

import { addBuildUp, buildUpId } from '../../edit/build-ups.ts';
import { BUILD_UP_TEMPLATES, fromTemplate } from '../../edit/build-ups-templates.ts';
import { patched } from '../../edit/point-lists.ts';
import type { SceneFile } from '../../model/scene-file.ts';
import { t } from '../text/text.ts';

/** Begins the value of a choice that is a template, not a build-up of the scene. */
export const TEMPLATE_MARK = 'template: ';
export const FIRST_TEMPLATE = `${TEMPLATE_MARK}lawn`;

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
