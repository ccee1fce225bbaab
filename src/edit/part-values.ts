/** What a part of the plan says besides its points: read, and changed in one or many parts at once. */

import type { EditPart, ScenePatch } from '../model/history.ts';
import type { Point3M, SceneDeck, SceneFile, SceneLevels, SceneStage } from '../model/scene-file.ts';
import { DECK_NET, finishNet, keyed, mapped, type NetIds, patchOf, plantId, withFinishNet } from './point-lists.ts';

export interface PartRef {
  readonly part: EditPart;
  readonly id: string;
}

type Values = object;

/** A level spot has one value besides its place. */
interface SpotValues {
  readonly levelM: number;
}

/**
 * The entry of a part in the scene.
 * @param scene - the scene
 * @param ref - the part; the outline stands for the deck, a level spot for its level, that of a finish too
 * @returns its entry, or null where there is none
 */
export function partIn(scene: SceneFile, ref: PartRef): Values | null {
  let found: Values | null = null;
  withParts(scene, [ref], (entry) => {
    found = entry;
    return entry;
  });
  return found;
}

/**
 * Changes the entries of parts.
 * @param scene - the scene
 * @param refs - the parts
 * @param change - gives the new entry
 * @returns keys of the scene that changed
 */
export function withParts(scene: SceneFile, refs: readonly PartRef[], change: (entry: Values) => Values): ScenePatch {
  const wanted = new Set(refs.map(({ part, id }) => `${part} ${id}`));
  const one = <T extends Values>(part: EditPart, id: string, entry: T): T => (wanted.has(`${part} ${id}`) ? (change(entry) as T) : entry);
  const each = <T extends { readonly id: string }>(part: EditPart, list: readonly T[]) =>
    mapped(list, (entry) => one(part, entry.id, entry));
  const next: { -readonly [Key in keyof SceneFile]: SceneFile[Key] } = { ...scene };
  next.deck = one('outline', 'outline', changedDeck(scene.deck, each, one));
  next.zones = mapped(each('zone', scene.zones), (zone) => withFinishNet(zone, (net) => changedNet(net, finishNet(zone.id), one)));
  if (scene.objects) next.objects = each('object', scene.objects);
  if (scene.traffic) next.traffic = each('route', scene.traffic);
  if (scene.setUpAreas) next.setUpAreas = each('set-up area', scene.setUpAreas);
  if (scene.accessPoints) next.accessPoints = each('access point', scene.accessPoints);
  if (scene.stages) next.stages = mapped(scene.stages, (stage) => changedStage(stage, each, one));
  return patchOf(scene, next);
}

type Each = <T extends { readonly id: string }>(part: EditPart, list: readonly T[]) => readonly T[];
type One = <T extends Values>(part: EditPart, id: string, entry: T) => T;

function changedDeck(deck: SceneDeck, each: Each, one: One): SceneDeck {
  const next: { -readonly [Key in keyof SceneDeck]: SceneDeck[Key] } = { ...deck, bays: each('bay', deck.bays) };
  if (deck.columns) next.columns = each('column', deck.columns);
  if (deck.outlets) next.outlets = each('outlet', deck.outlets);
  if (deck.edges) next.edges = each('edge', deck.edges);
  if (deck.levels) next.levels = changedNet(deck.levels, DECK_NET, one);
  return (Object.keys(next) as (keyof SceneDeck)[]).every((key) => next[key] === deck[key]) ? deck : next;
}

function changedNet(net: SceneLevels, { part, spot: spotOf }: NetIds, one: One): SceneLevels {
  const spots = mapped(net.spots, (spot, i) => {
    const said: SpotValues = { levelM: spot[2] };
    const { levelM } = one(part, spotOf(i), said);
    return levelM === spot[2] ? spot : ([spot[0], spot[1], levelM] as Point3M);
  });
  return keyed(net, 'spots', spots);
}

function changedStage(stage: SceneStage, each: Each, one: One): SceneStage {
  const next: { -readonly [Key in keyof SceneStage]: SceneStage[Key] } = { ...stage };
  if (stage.stockpiles) next.stockpiles = each('stockpile', stage.stockpiles);
  if (stage.plant) next.plant = mapped(stage.plant, (entry, i) => one('plant', plantId(stage.id, i), entry));
  return (Object.keys(next) as (keyof SceneStage)[]).every((key) => next[key] === stage[key]) ? stage : next;
}

/**
 * A value of an entry.
 * @param entry - entry of a part
 * @param path - key, or keys joined by points
 * @returns the value, undefined where it says none
 */
export function valueAt(entry: Values, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (value, key) =>
        typeof value === 'object' && value !== null && Object.hasOwn(value, key) ? (value as Record<string, unknown>)[key] : undefined,
      entry,
    );
}

/**
 * An entry with another value. An entry within it that is left empty goes with its last value.
 * @param entry - entry of a part
 * @param path - key, or keys joined by points
 * @param value - undefined takes the key out
 * @returns the new entry; the same where it says that already
 */
export function withValue(entry: Values, path: string, value: unknown): Values {
  const [key = '', ...rest] = path.split('.');
  const own = Object.hasOwn(entry, key) ? (entry as Record<string, unknown>)[key] : undefined;
  const to = rest.length === 0 ? value : emptied(withValue(typeof own === 'object' && own !== null ? own : {}, rest.join('.'), value));
  if (to === own) return entry;
  if (to !== undefined) return { ...entry, [key]: to };
  return Object.fromEntries(Object.entries(entry).filter(([name]) => name !== key));
}

const emptied = (entry: Values): Values | undefined => (Object.keys(entry).length === 0 ? undefined : entry);
