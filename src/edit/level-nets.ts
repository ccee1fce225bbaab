/** Nets of levels, the deck's and those of finishes, changed in one place for both. */

import type { SceneFile, SceneLevels } from '../model/scene-file.ts';
import { DECK_NET, finishNet, mapped, type NetIds, withFinishNet } from './point-lists.ts';

/** Gives the net that is to be there; the very same one where it stays. */
export type ChangeNet = (net: SceneLevels, ids: NetIds) => SceneLevels;

/**
 * Changes nets of levels. A deck without any spot and breakline left has no levels; a finish without is for the check of the scene to refuse.
 * @param scene - the scene
 * @param part - the deck's net, or those of finishes
 * @param change - called with each net once
 * @returns the scene with what changed
 */
export function withNets(scene: SceneFile, part: NetIds['part'], change: ChangeNet): SceneFile {
  if (part === 'finish') {
    const zones = mapped(scene.zones, (zone) => withFinishNet(zone, (net) => change(net, finishNet(zone.id))));
    return zones === scene.zones ? scene : { ...scene, zones };
  }
  const { levels, ...deck } = scene.deck;
  if (levels === undefined) return scene;
  const next = change(levels, DECK_NET);
  if (next === levels) return scene;
  const isEmpty = next.spots.length + (next.breaklines?.length ?? 0) === 0;
  return { ...scene, deck: isEmpty ? deck : { ...scene.deck, levels: next } };
}

/**
 * The net with what is kept of it.
 * @param net - levels
 * @param ids - how they are called
 * @param isKept - by id
 * @returns the net; the same where all is kept
 */
export function keptNet(net: SceneLevels, ids: NetIds, isKept: (id: string) => boolean): SceneLevels {
  const spots = net.spots.filter((_, i) => isKept(ids.spot(i)));
  const breaklines = net.breaklines?.filter((_, i) => isKept(ids.line(i))) ?? [];
  if (spots.length === net.spots.length && breaklines.length === (net.breaklines?.length ?? 0)) return net;
  return { spots, ...(breaklines.length > 0 && { breaklines }) };
}
