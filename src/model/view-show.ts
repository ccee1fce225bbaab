/** What a saved view shows besides where one stands: the keys of `show`, read from the scene. */

import { MAP_KINDS, type MapKind } from './maps.ts';
import type { SceneView } from './scene-file.ts';

export interface ViewShow {
  /** Id of the stage shown; null for the finished garden. */
  readonly stage: string | null;
  /** 0 … 1. */
  readonly explode: number;
  readonly map: MapKind | null;
  /** Place of the cut across the deck, 0 … 1, looked at from the side of the eye; null for none. */
  readonly cut: number | null;
  /** The layers under the target are lifted out; the picture is then framed round them, seen from the side of the eye. */
  readonly lift: boolean;
  /** As a drawing: without people, plants, sun and shadow. */
  readonly plain: boolean;
}

/** Every key that means something, and what it may hold. */
export const SHOW_KEYS: Readonly<Record<keyof ViewShow, string>> = {
  stage: 'id of a stage, or "finished"',
  explode: 'a number from 0 to 1',
  map: `one of ${MAP_KINDS.join(', ')}`,
  cut: 'a number from 0 to 1: place of the cut across the deck as seen from the eye',
  lift: 'true: the layers under the target are lifted out',
  plain: 'true: without people, plants, sun and shadow',
};

const isShare = (value: unknown): value is number => typeof value === 'number' && value >= 0 && value <= 1;
const isMap = (value: unknown): value is MapKind => MAP_KINDS.some((kind) => kind === value);

/**
 * Reads the keys of `show`. A value that cannot be shown counts as absent; the scene's checks tell of it.
 * @param show - as it stands in the scene
 * @returns every setting
 */
export function viewShow(show: SceneView['show'] = {}): ViewShow {
  const { stage, explode, map, cut, lift, plain } = show;
  return {
    stage: typeof stage === 'string' && stage !== 'finished' ? stage : null,
    explode: isShare(explode) ? explode : 0,
    map: isMap(map) ? map : null,
    cut: isShare(cut) ? cut : null,
    lift: lift === true,
    plain: plain === true,
  };
}
