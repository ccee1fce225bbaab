/** Items that only got another id: told once, and not again wherever the id is named. */

import type { ChangedItem } from '../model/scene-change.ts';
import type { SceneFile } from '../model/scene-file.ts';

type Renames = ReadonlyMap<string, string>;

/** Old ids by new ones for items that are otherwise the same and whose new id is new. */
export function renamesOf(a: readonly { readonly id: string }[], b: readonly { readonly id: string }[]): Map<string, string> {
  const [old, now] = [new Set(a.map(({ id }) => id)), new Set(b.map(({ id }) => id))];
  const content = ({ id: _, ...rest }: { readonly id: string }) => JSON.stringify(rest);
  const free = new Map<string, string[]>();
  for (const one of b) if (!old.has(one.id)) free.set(content(one), [...(free.get(content(one)) ?? []), one.id]);
  const found = new Map<string, string>();
  for (const one of a) {
    if (now.has(one.id)) continue;
    const taken = free.get(content(one))?.shift();
    if (taken !== undefined) found.set(one.id, taken);
  }
  return found;
}

/** A scene with new ids, where they name an item and where they refer to it. */
export function withNewNames(scene: SceneFile, renames: ReadonlyMap<ChangedItem, Renames>): SceneFile {
  if ([...renames.values()].every((map) => map.size === 0)) return scene;
  const named = (item: ChangedItem) => (id: string) => renames.get(item)?.get(id) ?? id;
  const all = <T extends { readonly id: string }>(item: ChangedItem, list: readonly T[]) =>
    list.map((one) => ({ ...one, id: named(item)(one.id) }));
  const some = <T extends { readonly id: string }>(item: ChangedItem, key: string, list: readonly T[] | undefined) =>
    list ? { [key]: all(item, list) } : {};
  const { deck } = scene;
  const [material, vehicle, zone, object] = [named('material'), named('vehicle'), named('zone'), named('object')];
  const driven = <T extends { readonly id: string; readonly vehicle: string }>(list: readonly T[]) =>
    list.map((one) => ({ ...one, vehicle: vehicle(one.vehicle) }));
  const stages = scene.stages?.map((stage) => ({
    ...stage,
    ...(stage.place
      ? {
          place: stage.place.map((place) => ({
            ...place,
            ...(place.zones ? { zones: place.zones.map(zone) } : {}),
            ...(place.objects ? { objects: place.objects.map(object) } : {}),
          })),
        }
      : {}),
    ...(stage.stockpiles ? { stockpiles: stage.stockpiles.map((pile) => ({ ...pile, material: material(pile.material) })) } : {}),
    ...(stage.plant ? { plant: stage.plant.map((plant) => ({ ...plant, vehicle: vehicle(plant.vehicle) })) } : {}),
  }));
  return {
    ...scene,
    deck: {
      ...deck,
      bays: all('bay', deck.bays).map((bay) => (bay.vehicles ? { ...bay, vehicles: bay.vehicles.map(vehicle) } : bay)),
      ...some('column', 'columns', deck.columns),
      ...some('outlet', 'outlets', deck.outlets),
      ...some('edge', 'edges', deck.edges),
    },
    ...some('material', 'materials', scene.materials),
    ...some('vehicle', 'vehicles', scene.vehicles),
    buildups: all('build-up', scene.buildups).map((buildUp) => ({
      ...buildUp,
      layers: buildUp.layers.map((layer) => ({ ...layer, material: material(layer.material) })),
    })),
    zones: all('zone', scene.zones).map((one) => ({ ...one, buildup: named('build-up')(one.buildup) })),
    ...some('object', 'objects', scene.objects),
    ...some('lane', 'traffic', scene.traffic && driven(scene.traffic)),
    ...some('set-up area', 'setUpAreas', scene.setUpAreas && driven(scene.setUpAreas)),
    ...some('stage', 'stages', stages),
    ...some('access point', 'accessPoints', scene.accessPoints),
    ...some('view', 'views', scene.views),
    ...some(
      'probe',
      'probes',
      scene.probes?.map((probe) => (probe.layer === undefined ? probe : { ...probe, layer: material(probe.layer) })),
    ),
  };
}
