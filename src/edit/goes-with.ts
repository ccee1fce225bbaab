/** What goes along when a corner or an edge is moved that several parts have in common: parts that are told by it, never the engineer's bays with a zone. */

import type { ScenePatch } from '../model/history.ts';
import type { SceneFile } from '../model/scene-file.ts';
import { type ListRef, type PlanPart, patched, pointLists, withPointLists } from './point-lists.ts';

const ALL: readonly PlanPart[] = ['outline', 'opening', 'bay', 'zone', 'edge', 'object', 'set-up area', 'levels', 'finish', 'stockpile'];

/** The deck takes along all that lies on its edge; a zone its neighbours, the edgings on its edges and breaklines of finishes; a bay only bays. */
const ALONG: Readonly<Partial<Record<PlanPart, readonly PlanPart[]>>> = {
  outline: ALL,
  opening: ['opening', 'outline', 'bay', 'zone', 'edge'],
  bay: ['bay'],
  zone: ['zone', 'object', 'finish'],
};

/**
 * Kinds of parts that go along with one.
 * @param part - kind of the part that is moved
 * @returns kinds, its own among them
 */
export const goesWith = (part: PlanPart): readonly PlanPart[] => ALONG[part] ?? [part];

const keyOf = ({ part, id, piece }: ListRef) => `${part} ${id} ${piece ?? ''}`;

/**
 * Keeps of a change only what it does to some lists of points; all others stay as they are.
 * @param scene - the scene
 * @param patch - change of points, that neither adds nor removes parts
 * @param may - whether a list may change
 * @returns what of it changes
 */
export function limitedTo(scene: SceneFile, patch: ScenePatch, may: (list: ListRef) => boolean): ScenePatch {
  const changed = new Map(pointLists(patched(scene, patch)).map((list) => [keyOf(list), list.points]));
  return withPointLists(scene, (list) => (may(list) ? (changed.get(keyOf(list)) ?? list.points) : list.points));
}
