/** Checks ids: each once in its list, and each reference to something that is there. */

import type { SceneFile } from '../model/scene-file.ts';
import type { IssueList } from './issue-list.ts';
import type { KnownIds } from './known-ids.ts';
import { nearestName } from './nearest-name.ts';
import { type Path, pathText, shorten } from './path.ts';
import type { Kind } from './words/kinds.ts';
import { phrase, worded } from './words/phrase.ts';

interface Named {
  readonly id: string;
}

/** Finds ids that stand twice in one list. */
export function checkDuplicateIds(scene: SceneFile, issues: IssueList): void {
  const { deck } = scene;
  const lists: readonly (readonly [Path, readonly Named[] | undefined])[] = [
    [['deck', 'bays'], deck.bays],
    [['deck', 'columns'], deck.columns],
    [['deck', 'outlets'], deck.outlets],
    [['deck', 'edges'], deck.edges],
    [['materials'], scene.materials],
    [['vehicles'], scene.vehicles],
    [['buildups'], scene.buildups],
    [['zones'], scene.zones],
    [['objects'], scene.objects],
    [['traffic'], scene.traffic],
    [['setUpAreas'], scene.setUpAreas],
    [['stages'], scene.stages],
    [['accessPoints'], scene.accessPoints],
    [['views'], scene.views],
    [['probes'], scene.probes],
    [['variants'], scene.variants],
  ];
  for (const [path, list] of lists) checkList(entriesOf(path, list), issues);
  const stages = scene.stages ?? [];
  checkList(
    stages.flatMap((stage, i) => entriesOf(['stages', i, 'stockpiles'], stage.stockpiles)),
    issues,
  );
  for (const [i, stage] of stages.entries()) checkList(entriesOf(['stages', i, 'holdPoints'], stage.holdPoints), issues);
}

interface Entry {
  readonly id: string;
  readonly path: Path;
}

function entriesOf(path: Path, list: readonly Named[] | undefined): Entry[] {
  return (list ?? []).map(({ id }, i) => ({ id, path: [...path, i, 'id'] }));
}

function checkList(entries: readonly Entry[], issues: IssueList): void {
  const seen = new Map<string, Path>();
  for (const { id, path } of entries) {
    const first = seen.get(id);
    if (first === undefined) {
      seen.set(id, path);
      continue;
    }
    issues.error('DUPLICATE_ID', path, () => {
      const line = issues.lineAt(first);
      const again = { id: shorten(id), first: pathText(first) };
      return worded(
        line === undefined ? phrase('idAgain', again) : phrase('idAgainInLine', { ...again, line }),
        phrase('idOnce'),
        phrase('otherId'),
      );
    });
  }
}

/** Finds references to ids that nothing has. */
export function checkReferences(scene: SceneFile, known: KnownIds, issues: IssueList): void {
  const buildups = new Set(scene.buildups.map(({ id }) => id));
  const zones = new Set(scene.zones.map(({ id }) => id));
  const objects = new Set((scene.objects ?? []).map(({ id }) => id));
  const materials = new Set(known.materials.keys());
  const check = (path: Path, id: string, ids: ReadonlySet<string>, what: Kind) => {
    if (!ids.has(id)) reportUnknown(path, id, { ids, what }, issues);
  };
  for (const [i, zone] of scene.zones.entries()) check(['zones', i, 'buildup'], zone.buildup, buildups, 'build-up');
  for (const [i, buildup] of scene.buildups.entries()) {
    for (const [j, layer] of buildup.layers.entries())
      check(['buildups', i, 'layers', j, 'material'], layer.material, materials, 'material');
  }
  for (const [i, bay] of scene.deck.bays.entries()) {
    for (const [j, id] of (bay.vehicles ?? []).entries()) check(['deck', 'bays', i, 'vehicles', j], id, known.vehicles, 'vehicle');
  }
  for (const [i, probe] of (scene.probes ?? []).entries()) {
    if (probe.layer !== undefined) check(['probes', i, 'layer'], probe.layer, materials, 'material');
  }
  for (const [i, traffic] of (scene.traffic ?? []).entries()) check(['traffic', i, 'vehicle'], traffic.vehicle, known.vehicles, 'vehicle');
  for (const [i, area] of (scene.setUpAreas ?? []).entries()) check(['setUpAreas', i, 'vehicle'], area.vehicle, known.vehicles, 'vehicle');
  for (const [i, stage] of (scene.stages ?? []).entries()) {
    for (const [j, place] of (stage.place ?? []).entries()) {
      for (const [k, id] of (place.zones ?? []).entries()) check(['stages', i, 'place', j, 'zones', k], id, zones, 'zone');
      for (const [k, id] of (place.objects ?? []).entries()) check(['stages', i, 'place', j, 'objects', k], id, objects, 'object');
    }
    for (const [j, pile] of (stage.stockpiles ?? []).entries())
      check(['stages', i, 'stockpiles', j, 'material'], pile.material, materials, 'material');
    for (const [j, plant] of (stage.plant ?? []).entries())
      check(['stages', i, 'plant', j, 'vehicle'], plant.vehicle, known.vehicles, 'vehicle');
  }
}

function reportUnknown(
  path: Path,
  id: string,
  { ids, what }: { readonly ids: ReadonlySet<string>; readonly what: Kind },
  issues: IssueList,
): void {
  issues.error('UNKNOWN_ID', path, () => {
    const nearest = nearestName(id, ids);
    return worded(
      phrase('unknownThing', { what, id: shorten(id) }),
      phrase('idOf', { what, ids: [...ids].map((known) => shorten(known)) }),
      nearest === null ? phrase('addWithId', { what }) : phrase('didYouMean', { what: `"${shorten(nearest)}"` }),
    );
  });
}
