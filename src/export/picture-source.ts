/** What the picture of a project is built from, on a datum near its levels. */

import { onDatum, type Surface } from '../core/levels/surface.ts';
import { buildPicture } from '../mesh/build-picture.ts';
import type { PictureInput } from '../mesh/picture-input.ts';
import type { SectionSource } from '../mesh/section-source.ts';
import type { Language } from '../model/language.ts';
import type { Picture } from '../model/picture.ts';
import { derivedStageName } from '../model/roles.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import type { Calculated } from '../project/evaluate-project.ts';
import { furnitureOf } from '../project/furniture.ts';
import { namesOf } from '../project/words/names.ts';

/** Level that becomes height 0: whole metres towards 0, so that levels near 0 stay as they are [m]. */
export function datumOf({ evaluation }: Calculated): number {
  const { deckLevelsM, ground } = evaluation.prepared;
  let least = Infinity;
  for (let cell = 0; cell < deckLevelsM.length; cell++) if (ground.deckShare[cell] > 0) least = Math.min(least, deckLevelsM[cell]);
  return Math.trunc(least);
}

/**
 * Input of the picture.
 * @param project - evaluated scene
 * @param datumM - level that becomes height 0 [m]
 * @param lower - puts a surface on that datum
 * @returns input for `buildPicture`
 */
export function pictureInput({ evaluation, scene }: Calculated, datumM: number, lower: (surface: Surface) => Surface): PictureInput {
  return {
    input: evaluation.input,
    deckSurface: lower(evaluation.prepared.deckSurface),
    finishSurfaces: evaluation.finishSurfaces.map((surface) => surface && lower(surface)),
    layerStages: evaluation.plan.layerStages,
    objectStages: evaluation.plan.objectStages,
    furniture: furnitureOn(scene, evaluation.input.originM, datumM),
  };
}

const furnished = new WeakMap<SceneFile['deck'], { readonly key: unknown[]; readonly furniture: PictureInput['furniture'] }>();

/** The same object as long as neither deck nor objects change, so that what is drawn of it can be kept. */
function furnitureOn(scene: SceneFile, originM: PointM, datumM: number): PictureInput['furniture'] {
  const key = [scene.objects, ...originM, datumM];
  const known = furnished.get(scene.deck);
  if (known?.key.every((entry, i) => entry === key[i])) return known.furniture;
  const made = furnitureOf(scene, originM);
  const furniture = { ...made, edges: made.edges.map((edge) => ({ ...edge, membraneTopM: edge.membraneTopM - datumM })) };
  furnished.set(scene.deck, { key, furniture });
  return furniture;
}

/** What sections and models are made from, with a picture that is there already. */
export function sourceOn(
  { scene, evaluation }: Calculated,
  { input, furniture }: PictureInput,
  picture: Picture,
  datumM: number,
): SectionSource {
  return { scene, input, furniture, picture, datumM, stages: evaluation.plan.stages };
}

const spoken = new WeakMap<SectionSource, SectionSource>();

/** The same with names of materials and derived stages in a language; what was named once is kept. */
export function spokenSource(source: SectionSource, language: Language): SectionSource {
  if (language === 'en') return source;
  const told = spoken.get(source) ?? inGerman(source);
  spoken.set(source, told);
  return told;
}

function inGerman(source: SectionSource): SectionSource {
  const { scene, input, picture, stages } = source;
  const { name } = namesOf(scene, 'de');
  const zones = input.zones.map((zone) => {
    const layers = zone.buildUp.layers.map((layer) => ({ ...layer, name: name(layer.name) }));
    return { ...zone, buildUp: { ...zone.buildUp, layers } };
  });
  const parts = picture.parts.map((part) => (part.layer < 0 ? part : { ...part, name: name(part.name) }));
  const isDerived = input.stages === null;
  return {
    ...source,
    input: { ...input, zones },
    picture: { ...picture, parts },
    stages: isDerived ? stages.map((stage) => ({ ...stage, name: derivedStageName(stage.name, 'de') })) : stages,
  };
}

/** The same with a picture of its own. */
export function sectionSource(project: Calculated): SectionSource {
  const datumM = datumOf(project);
  const on = pictureInput(project, datumM, (surface) => onDatum(surface, datumM));
  return sourceOn(project, on, buildPicture(on).picture, datumM);
}
