/** The list of the scene that each kind of part stands in. */

import type { EditPart } from '../model/history.ts';
import type { SceneDeck, SceneFile, SceneStage } from '../model/scene-file.ts';
import { freeId } from '../scene/free-id.ts';
import { keptNet, withNets } from './level-nets.ts';
import { mapped, openingId, plantId } from './point-lists.ts';

type Listed = Exclude<EditPart, 'scene' | 'outline' | 'levels' | 'finish' | 'layer' | 'rain' | 'limits' | 'several'>;

type ListKey =
  | { readonly in: 'deck'; readonly key: keyof SceneDeck }
  | { readonly in: 'scene'; readonly key: keyof SceneFile }
  | { readonly in: 'stage'; readonly key: keyof SceneStage };

const LISTS: Readonly<Record<Listed, ListKey>> = {
  opening: { in: 'deck', key: 'openings' },
  bay: { in: 'deck', key: 'bays' },
  edge: { in: 'deck', key: 'edges' },
  outlet: { in: 'deck', key: 'outlets' },
  column: { in: 'deck', key: 'columns' },
  zone: { in: 'scene', key: 'zones' },
  object: { in: 'scene', key: 'objects' },
  route: { in: 'scene', key: 'traffic' },
  'set-up area': { in: 'scene', key: 'setUpAreas' },
  'access point': { in: 'scene', key: 'accessPoints' },
  'build-up': { in: 'scene', key: 'buildups' },
  material: { in: 'scene', key: 'materials' },
  vehicle: { in: 'scene', key: 'vehicles' },
  stage: { in: 'scene', key: 'stages' },
  view: { in: 'scene', key: 'views' },
  probe: { in: 'scene', key: 'probes' },
  variant: { in: 'scene', key: 'variants' },
  stockpile: { in: 'stage', key: 'stockpiles' },
  plant: { in: 'stage', key: 'plant' },
  'hold point': { in: 'stage', key: 'holdPoints' },
};

/** Lists that a scene has even where they are empty. */
const REQUIRED: ReadonlySet<string> = new Set(['bays', 'zones', 'buildups']);

export interface ListEntry {
  /** Its own, or by its place in the list: see `point-lists.ts`. */
  readonly id: string;
  readonly entry: object;
}

/** Gives the entries a list is to have; null for a list that stays. `stage` is told for lists of stages. */
export type ChangeEntries = (entries: readonly ListEntry[], stage?: string) => readonly object[] | null;

const isListed = (part: EditPart): part is Listed => Object.hasOwn(LISTS, part);

/**
 * Changes the list that parts of a kind stand in; of stages, the list of each. A list that is not needed and has become empty goes.
 * @param scene - the scene
 * @param part - kind of part; the scene stays for kinds without a list of their own
 * @param change - gives the new entries
 * @returns the scene with what changed
 */
export function withEntries(scene: SceneFile, part: EditPart, change: ChangeEntries): SceneFile {
  if (!isListed(part)) return scene;
  const { in: place, key } = LISTS[part];
  if (place === 'deck') {
    const deck = withKey(scene.deck, key, (list) => change(identified(part, list)));
    return deck === scene.deck ? scene : { ...scene, deck };
  }
  if (place === 'scene') return withKey(scene, key, (list) => change(identified(part, list)));
  if (scene.stages === undefined) return scene;
  const stages = mapped(scene.stages, (stage) => withKey(stage, key, (list) => change(identified(part, list, stage.id), stage.id)));
  return stages === scene.stages ? scene : { ...scene, stages };
}

/**
 * Ids of all parts that share their ids with a kind of part.
 * @param scene - the scene
 * @param part - kind of part
 * @returns ids in use
 */
export function idsOf(scene: SceneFile, part: EditPart): Set<string> {
  const ids = new Set<string>();
  withEntries(scene, part, (entries) => {
    for (const { id } of entries) ids.add(id);
    return null;
  });
  return ids;
}

/**
 * An id beside another: after `Z3` comes `Z3-2`, after `Z3-2` comes `Z3-3`.
 * @param id - of the part it is made from
 * @param taken - ids in use; the new one is added
 * @returns the id
 */
export function idBeside(id: string, taken: Set<string>): string {
  const stem = id.replace(/-\d{1,3}$/, '') || id;
  taken.add(stem);
  return freeId(stem, 'X', taken);
}

/**
 * Adds an entry to the list of a kind of part.
 * @param scene - the scene
 * @param part - kind of part
 * @param entry - the new entry
 * @param stage - of a stockpile or of plant
 * @returns the scene with it; the same where there is no such stage
 */
export function withEntry(scene: SceneFile, part: EditPart, entry: object, stage?: string): SceneFile {
  return withEntries(scene, part, (entries, of) => (of === stage ? [...entries.map((one) => one.entry), entry] : null));
}

/**
 * Keeps the parts of a kind that are wanted.
 * @param scene - the scene
 * @param part - kind of part
 * @param isKept - by id
 * @returns the scene with what is left
 */
export function withOnly(scene: SceneFile, part: EditPart, isKept: (id: string) => boolean): SceneFile {
  if (part === 'levels' || part === 'finish') return withNets(scene, part, (net, ids) => keptNet(net, ids, isKept));
  return withEntries(scene, part, (entries) => {
    const kept = entries.filter(({ id }) => isKept(id));
    return kept.length === entries.length ? null : kept.map(({ entry }) => entry);
  });
}

function identified(part: Listed, list: readonly object[], stage = ''): readonly ListEntry[] {
  return list.map((entry, i) => {
    if ('id' in entry) return { id: entry.id as string, entry };
    return { id: part === 'plant' ? plantId(stage, i) : openingId(i), entry };
  });
}

function withKey<T extends object>(owner: T, key: string, change: (list: readonly object[]) => readonly object[] | null): T {
  const { [key]: list, ...rest } = owner as Record<string, unknown>;
  const next = change((list as readonly object[] | undefined) ?? []);
  if (next === null) return owner;
  if (next.length === 0 && !REQUIRED.has(key)) return (list === undefined ? owner : rest) as T;
  return { ...owner, [key]: next };
}
