/** Renaming and removing parts, with all that refers to them. */

import type { EditPart, ScenePatch } from '../model/history.ts';
import type { SceneFile, ScenePlace, SceneStage, SceneView } from '../model/scene-file.ts';
import type { Selected } from '../model/selected.ts';
import { withEntries, withOnly } from './part-lists.ts';
import { keyed, mapped, patchOf, plantId } from './point-lists.ts';

/** The new ids for a part referred to: the very same one where it stays, another, several, or none where it is gone. */
type NewIds = (id: string, by: Selected) => readonly string[];

/**
 * Who refers to a part: zones to a build-up, layers, stockpiles and probes to a material, stages to zones and objects, bays, routes, set-up areas and plant
 * to a vehicle, views to a stage.
 * @param scene - the scene
 * @param part - kind of the part referred to
 * @param id - its id
 * @returns the parts that name it, each once
 */
export function usesOf(scene: SceneFile, part: EditPart, id: string): readonly Selected[] {
  const uses = new Map<string, Selected>();
  withReferences(scene, part, (named, by) => {
    if (named === id) uses.set(`${by.part} ${by.id}`, by);
    return [named];
  });
  return [...uses.values()];
}

/**
 * Gives a part another id and carries all references along. Whether the id is free and well formed is for the check of the scene to say.
 * @param scene - the scene
 * @param part - kind of the part; openings, levels, plant and layers have no id and stay
 * @param from - id it has
 * @param to - id it gets
 * @returns what changes
 */
export function renamed(scene: SceneFile, part: EditPart, from: string, to: string): ScenePatch {
  const next = withEntries(scene, part, (entries) => {
    const isThere = entries.some(({ id, entry }) => id === from && 'id' in entry);
    return isThere ? entries.map(({ id, entry }) => (id === from ? { ...entry, id: to } : entry)) : null;
  });
  if (next === scene) return {};
  return patchOf(
    scene,
    withReferences(next, part, (id) => (id === from ? [to] : [id])),
  );
}

/**
 * Takes parts out, and out of what stages place. A build-up, material or vehicle that is still used elsewhere goes too, and the check of the scene
 * then refuses and names who uses it (see `usesOf`). The outline of the deck stays.
 * @param scene - the scene
 * @param selected - the parts; indices (openings, levels, plant) as they stand now
 * @returns what changes
 */
export function removed(scene: SceneFile, selected: readonly Selected[]): ScenePatch {
  let next = scene;
  for (const part of new Set(selected.map((one) => one.part))) {
    const gone = new Set(selected.filter((one) => one.part === part).map(({ id }) => id));
    next = withOnly(next, part, (id) => !gone.has(id));
    next = withReferences(next, part, (id) => (gone.has(id) ? [] : [id]));
  }
  return patchOf(scene, next);
}

/**
 * Lets stages that place a part place others with it, such as its copy or the pieces it was split into.
 * @param scene - the scene
 * @param part - zone or object
 * @param id - the part placed
 * @param others - ids placed with it
 * @returns the scene with it
 */
export function placedWith(scene: SceneFile, part: 'zone' | 'object', id: string, others: readonly string[]): SceneFile {
  return withReferences(scene, part, (named) => (named === id ? [id, ...others] : [named]));
}

/**
 * Lets stages that place parts place another one instead, such as the zone they were merged into.
 * @param scene - the scene
 * @param part - zone or object
 * @param gone - ids that are gone
 * @param instead - id placed instead, once
 * @returns the scene with it
 */
export function placedInstead(scene: SceneFile, part: 'zone' | 'object', gone: ReadonlySet<string>, instead: string): SceneFile {
  return withReferences(scene, part, (named) => [gone.has(named) ? instead : named]);
}

/** Changes every reference to parts of a kind. A reference that has to be there stays where its part is gone. */
function withReferences(scene: SceneFile, part: EditPart, newIds: NewIds): SceneFile {
  const one = (id: string, by: Selected) => newIds(id, by)[0] ?? id;
  if (part === 'zone' || part === 'object') return withStages(scene, (stage) => withPlaces(stage, part, newIds));
  if (part === 'build-up') {
    return keyed(
      scene,
      'zones',
      mapped(scene.zones, (zone) => keyed(zone, 'buildup', one(zone.buildup, { part: 'zone', id: zone.id }))),
    );
  }
  if (part === 'material') return withMaterials(scene, one);
  if (part === 'vehicle') return withVehicles(scene, newIds, one);
  if (part !== 'stage' || scene.views === undefined) return scene;
  return keyed(
    scene,
    'views',
    mapped(scene.views, (view) => withShownStage(view, newIds)),
  ) as SceneFile;
}

type OneId = (id: string, by: Selected) => string;

function withStages(scene: SceneFile, change: (stage: SceneStage) => SceneStage): SceneFile {
  return scene.stages === undefined ? scene : (keyed(scene, 'stages', mapped(scene.stages, change)) as SceneFile);
}

/** An entry whose last zone is gone goes with its roles: without zones, it would mean all of them. */
function withPlaces(stage: SceneStage, part: 'zone' | 'object', newIds: NewIds): SceneStage {
  const key = part === 'zone' ? 'zones' : 'objects';
  if (stage.place === undefined) return stage;
  let changed = false;
  const place = stage.place.flatMap((entry): readonly ScenePlace[] => {
    const named = entry[key];
    if (named === undefined) return [entry];
    const ids = [...new Set(named.flatMap((id) => newIds(id, { part: 'stage', id: stage.id })))];
    if (ids.length === named.length && ids.every((id, i) => id === named[i])) return [entry];
    changed = true;
    if (ids.length > 0) return [{ ...entry, [key]: ids }];
    const { zones, roles, objects } = entry;
    const left: ScenePlace = part === 'zone' ? { ...(objects && { objects }) } : { ...(zones && { zones }), ...(roles && { roles }) };
    return Object.keys(left).length === 0 ? [] : [left];
  });
  return changed ? { ...stage, place } : stage;
}

function withMaterials(scene: SceneFile, one: OneId): SceneFile {
  const buildups = mapped(scene.buildups, (buildUp) => {
    const by = { part: 'build-up', id: buildUp.id } as const;
    return keyed(
      buildUp,
      'layers',
      mapped(buildUp.layers, (layer) => keyed(layer, 'material', one(layer.material, by))),
    );
  });
  const next = withStages(keyed(scene, 'buildups', buildups), (stage) => {
    if (stage.stockpiles === undefined) return stage;
    const piles = mapped(stage.stockpiles, (pile) => keyed(pile, 'material', one(pile.material, { part: 'stockpile', id: pile.id })));
    return keyed(stage, 'stockpiles', piles) as SceneStage;
  });
  if (next.probes === undefined) return next;
  const probes = mapped(next.probes, (probe) =>
    probe.layer === undefined ? probe : (keyed(probe, 'layer', one(probe.layer, { part: 'probe', id: probe.id })) as typeof probe),
  );
  return keyed(next, 'probes', probes) as SceneFile;
}

function withVehicles(scene: SceneFile, newIds: NewIds, one: OneId): SceneFile {
  const bays = mapped(scene.deck.bays, (bay) => {
    if (bay.vehicles === undefined) return bay;
    const vehicles = bay.vehicles.flatMap((id) => newIds(id, { part: 'bay', id: bay.id }));
    return vehicles.length === bay.vehicles.length && vehicles.every((id, i) => id === bay.vehicles?.[i]) ? bay : { ...bay, vehicles };
  });
  const next = withStages(keyed(scene, 'deck', keyed(scene.deck, 'bays', bays)), (stage) => {
    if (stage.plant === undefined) return stage;
    const plant = mapped(stage.plant, (entry, i) =>
      keyed(entry, 'vehicle', one(entry.vehicle, { part: 'plant', id: plantId(stage.id, i) })),
    );
    return keyed(stage, 'plant', plant) as SceneStage;
  });
  const { traffic, setUpAreas } = next;
  return {
    ...next,
    ...(traffic && { traffic: mapped(traffic, (entry) => keyed(entry, 'vehicle', one(entry.vehicle, { part: 'route', id: entry.id }))) }),
    ...(setUpAreas && {
      setUpAreas: mapped(setUpAreas, (area) => keyed(area, 'vehicle', one(area.vehicle, { part: 'set-up area', id: area.id }))),
    }),
  };
}

/** A view of a stage that is gone shows the finished garden, as it does without the key. */
function withShownStage(view: SceneView, newIds: NewIds): SceneView {
  const stage = view.show?.stage;
  if (view.show === undefined || typeof stage !== 'string') return view;
  const [to] = newIds(stage, { part: 'view', id: view.id });
  if (to === stage) return view;
  if (to !== undefined) return { ...view, show: { ...view.show, stage: to } };
  const { stage: _, ...rest } = view.show;
  return { ...view, show: rest };
}
