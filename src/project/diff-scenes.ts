/** Names every change between two scenes exactly once, changes of the load plan first. */

import { CHANGE_GROUPS, type ChangedItem, type ChangeGroup, type SceneChange } from '../model/scene-change.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { changedArea } from './diff-areas.ts';
import { leaves, sameValue, unitOf } from './diff-leaves.ts';
import { renamesOf, withNewNames } from './diff-renames.ts';

interface Collection {
  readonly item: ChangedItem;
  readonly group: ChangeGroup;
  readonly of: (scene: SceneFile) => readonly { readonly id: string }[];
  /** Their order means something. */
  readonly ordered?: boolean;
}

export const COLLECTIONS: readonly Collection[] = [
  { item: 'bay', group: 'load plan', of: ({ deck }) => deck.bays },
  { item: 'column', group: 'geometry', of: ({ deck }) => deck.columns ?? [] },
  { item: 'edge', group: 'geometry', of: ({ deck }) => deck.edges ?? [] },
  { item: 'zone', group: 'geometry', of: ({ zones }) => zones },
  { item: 'build-up', group: 'build-ups', of: ({ buildups }) => buildups },
  { item: 'material', group: 'materials', of: ({ materials }) => materials ?? [] },
  { item: 'stage', group: 'stages', of: ({ stages }) => stages ?? [], ordered: true },
  { item: 'object', group: 'objects', of: ({ objects }) => objects ?? [] },
  { item: 'outlet', group: 'water', of: ({ deck }) => deck.outlets ?? [] },
  { item: 'vehicle', group: 'traffic', of: ({ vehicles }) => vehicles ?? [] },
  { item: 'lane', group: 'traffic', of: ({ traffic }) => traffic ?? [] },
  { item: 'set-up area', group: 'traffic', of: ({ setUpAreas }) => setUpAreas ?? [] },
  { item: 'access point', group: 'stages', of: ({ accessPoints }) => accessPoints ?? [] },
  { item: 'probe', group: 'other', of: ({ probes }) => probes ?? [] },
  { item: 'view', group: 'other', of: ({ views }) => views ?? [] },
];

/**
 * Differences of two checked scenes.
 * @param a - the scene before
 * @param b - the scene after
 * @returns each change once, by group; none where both say the same
 */
export function diffScenes(a: SceneFile, b: SceneFile): SceneChange[] {
  const renames = new Map(COLLECTIONS.map(({ item, of }) => [item, renamesOf(of(a), of(b))]));
  const renamed = withNewNames(a, renames);
  const found = [
    ...ofScene(renamed, b),
    ...COLLECTIONS.flatMap((collection) => ofCollection(collection, renamed, b)),
    ...COLLECTIONS.flatMap(({ item, group }) =>
      [...(renames.get(item) ?? [])].map(([before, after]): SceneChange => {
        return { group, kind: 'renamed', item, id: before, what: 'id', before, after, unit: '' };
      }),
    ),
  ];
  return found.sort((one, other) => CHANGE_GROUPS.indexOf(one.group) - CHANGE_GROUPS.indexOf(other.group));
}

function ofCollection({ item, group, of, ordered }: Collection, a: SceneFile, b: SceneFile): SceneChange[] {
  const [before, after] = [new Map(of(a).map((one) => [one.id, one])), new Map(of(b).map((one) => [one.id, one]))];
  const whole = (kind: 'added' | 'removed', id: string, was: unknown, is: unknown): SceneChange => {
    const one = { group, kind, item, id, ...namedOf(is ?? was), what: '', before: was, after: is, unit: '' };
    return { ...one, ...changedArea(outlineOf(was), outlineOf(is)) };
  };
  const removed = [...before].filter(([id]) => !after.has(id)).map(([id, one]) => whole('removed', id, one, null));
  const added = [...after].filter(([id]) => !before.has(id)).map(([id, one]) => whole('added', id, null, one));
  const changed = [...before].flatMap(([id, one]) => {
    const now = after.get(id);
    return now ? changes(item, group, one, now) : [];
  });
  const order = ordered ? reordered(item, group, [...before.keys()], [...after.keys()]) : [];
  return [...changed, ...removed, ...added, ...order];
}

function reordered(item: ChangedItem, group: ChangeGroup, before: readonly string[], after: readonly string[]): SceneChange[] {
  const [was, is] = [before.filter((id) => after.includes(id)), after.filter((id) => before.includes(id))];
  if (was.every((id, i) => id === is[i])) return [];
  return [{ group, kind: 'reordered', item, id: '', what: '', before: was, after: is, unit: '' }];
}

function changes(item: ChangedItem, group: ChangeGroup, a: { readonly id: string }, b: { readonly id: string }): SceneChange[] {
  const [before, after] = [leaves(a), leaves(b)];
  const keys = [...new Set([...before.keys(), ...after.keys()])].filter((key) => !sameValue(before.get(key), after.get(key)));
  // What makes the outline: told together, with the area that comes and goes.
  const shape = keys.filter((key) => key === 'outline' || key === 'holes');
  const rest = keys.filter((key) => key !== 'outline' && key !== 'holes');
  const shapes = shape.map((key): SceneChange => {
    const area = key === 'outline' || !keys.includes('outline') ? changedArea(outlineOf(a), outlineOf(b)) : {};
    return { ...one(key), kind: 'moved', group: 'geometry', ...area };
  });
  function one(key: string): SceneChange {
    const [was, is] = [before.get(key) ?? null, after.get(key) ?? null];
    const kind = PLACES.includes(key) && was !== null && is !== null ? 'moved' : 'changed';
    // Where the name itself changes, both are told anyway.
    const named = key === 'name' ? {} : namedOf(b);
    return { group: groupOf(item, group, key), kind, item, id: a.id, ...named, what: key, before: was, after: is, unit: unitOf(key) };
  }
  return [...shapes, ...rest.map(one)];
}

const PLACES = ['at', 'line', 'route'];

/** A zone's build-up and imposed load are no geometry; a bay's outline is told above. */
function groupOf(item: ChangedItem, group: ChangeGroup, key: string): ChangeGroup {
  if (item !== 'zone') return group;
  if (key === 'buildup') return 'build-ups';
  return key === 'imposedKNm2' || key === 'use' || key === 'name' ? 'other' : 'geometry';
}

function namedOf(one: unknown): { name?: string } {
  const { id, name } = one as { readonly id?: unknown; readonly name?: unknown };
  return typeof name === 'string' && name !== id ? { name } : {};
}

function outlineOf(one: unknown): { outline?: unknown; holes?: unknown } | null {
  return typeof one === 'object' && one !== null && 'outline' in one ? one : null;
}

function ofScene(a: SceneFile, b: SceneFile): SceneChange[] {
  const parts = (scene: SceneFile) => {
    const { $schema: _, format: _f, version: _v, deck, materials: _m, vehicles: _e, buildups: _b, zones: _z, ...rest } = scene;
    const { objects: _o, traffic: _t, setUpAreas: _s, stages: _g, accessPoints: _a, views: _w, probes: _p, ...own } = rest;
    const { outline, openings, slabMm, rootResistant, levels } = deck;
    return { own: leaves(own), deck: leaves({ outline, openings, slabMm, rootResistant, levels }) };
  };
  const [before, after] = [parts(a), parts(b)];
  const compare = (item: 'scene' | 'deck') =>
    [...new Set([...before[item === 'deck' ? 'deck' : 'own'].keys(), ...after[item === 'deck' ? 'deck' : 'own'].keys()])].flatMap(
      (key): SceneChange[] => {
        const side = item === 'deck' ? 'deck' : 'own';
        const [was, is] = [before[side].get(key) ?? null, after[side].get(key) ?? null];
        if (sameValue(was, is)) return [];
        const group: ChangeGroup = item === 'deck' ? 'geometry' : /^(rain|flotation)\b/.test(key) ? 'water' : 'other';
        const isShape = key === 'outline' || key === 'openings';
        const area = key === 'outline' ? changedArea({ outline: was }, { outline: is }) : {};
        return [
          { group, kind: isShape ? 'moved' : 'changed', item, id: '', what: key, before: was, after: is, unit: unitOf(key), ...area },
        ];
      },
    );
  return [...compare('deck'), ...compare('scene')];
}
