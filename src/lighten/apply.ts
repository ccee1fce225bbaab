/** Chosen recipes written into the scene: new build-ups where only some zones of one change. */

import type { Language } from '../model/language.ts';
import type { SceneBuildUp, SceneFile, SceneLayer, SceneThickness } from '../model/scene-file.ts';
import type { Project } from '../project/evaluate-project.ts';
import type { Choice } from './options.ts';
import { chosenMm, type Recipe } from './recipe.ts';
import { stagesWith } from './stage-change.ts';
import type { ZoneTask } from './task.ts';

/** Name of a build-up that comes beside the one it was made from. */
const LIGHTENED: Readonly<Record<Language, (name: string) => string>> = {
  en: (name) => `${name}, lightened`,
  de: (name) => `${name}, leichter`,
};

/** The scene with the choices carried out; new build-ups are named in the language of the project. */
export function applyChoices({ scene, language }: Project, tasks: readonly ZoneTask[], choices: readonly Choice[]): SceneFile {
  const wanted = new Map<string, readonly SceneLayer[]>();
  tasks.forEach((task, t) => {
    const recipe = task.recipes[choices[t].recipe];
    if (!recipe.keeps) wanted.set(task.ground.id, layersOf(task, recipe, choices[t].counts));
  });
  const ids = new Set(scene.buildups.map(({ id }) => id));
  const buildUpOf = new Map<string, string>();
  const buildups = scene.buildups.flatMap((buildUp): SceneBuildUp[] => {
    const zones = scene.zones.filter((zone) => zone.buildup === buildUp.id);
    const groups = new Map<string, { layers: readonly SceneLayer[]; zones: string[] }>();
    for (const { id } of zones) {
      const layers = wanted.get(id);
      if (!layers) continue;
      const key = JSON.stringify(layers);
      const group = groups.get(key) ?? { layers, zones: [] };
      group.zones.push(id);
      groups.set(key, group);
    }
    const [only] = groups.values();
    if (groups.size === 1 && only.zones.length === zones.length) return [{ ...buildUp, layers: only.layers }];
    const made = [...groups.values()].map(({ layers, zones: takers }) => {
      const id = freeId(`${buildUp.id}-light`, ids);
      for (const zone of takers) buildUpOf.set(zone, id);
      return { ...buildUp, id, name: LIGHTENED[language](buildUp.name), layers };
    });
    const isLeft = zones.some(({ id }) => !wanted.has(id)) || zones.length === 0;
    return isLeft ? [buildUp, ...made] : made;
  });
  const stages = stagesWith(scene, stageChanges(tasks, choices));
  const laid = stages === undefined ? {} : { stages };
  return { ...scene, buildups, ...laid, zones: scene.zones.map((zone) => ({ ...zone, buildup: buildUpOf.get(zone.id) ?? zone.buildup })) };
}

function stageChanges(tasks: readonly ZoneTask[], choices: readonly Choice[]) {
  return tasks.flatMap(({ ground, recipes }, t) => {
    const change = recipes[choices[t].recipe].laid;
    return change ? [{ zone: ground.id, change }] : [];
  });
}

function freeId(wanted: string, ids: Set<string>): string {
  let id = wanted;
  for (let n = 2; ids.has(id); n++) id = `${wanted}-${n}`;
  ids.add(id);
  return id;
}

const roundMm = (value: number) => Math.round(value * 1e6) / 1e6;

function layersOf({ ground }: ZoneTask, recipe: Recipe, counts: readonly number[]): SceneLayer[] {
  const thickness = chosenMm(recipe, counts);
  const othersMm = thickness.reduce((sum, mm, i) => (i === recipe.rest ? sum : sum + mm), 0);
  return recipe.layers.map(({ layer, untouched }, i): SceneLayer => {
    if (i === recipe.rest) return { ...layer, thicknessMm: restMm(ground, recipe, othersMm) };
    return untouched ? layer : { ...layer, thicknessMm: roundMm(thickness[i]) };
  });
}

/** A make-up layer stays one; where the build-up itself gives the finish, its nominal keeps the whole depth. */
function restMm(
  { buildUp, fixedTop, roomM3, areaM2, greatestRoomM }: ZoneTask['ground'],
  { restMm: range }: Recipe,
  othersMm: number,
): SceneThickness {
  const hasRange = buildUp.layers.some(({ thicknessMm }) => typeof thicknessMm === 'object');
  const roomMm = (fixedTop ? roomM3 / areaM2 : greatestRoomM) * 1000;
  if (!hasRange) return roundMm(greatestRoomM * 1000 - othersMm);
  const nominal = fixedTop ? Math.round((roomMm - othersMm) / 10) * 10 : roundMm(roomMm - othersMm);
  return { ...range, nominal: Math.min(range.max, Math.max(range.min, nominal)) };
}
