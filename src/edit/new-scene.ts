/** A scene to begin with: the outline of a deck, and nothing that anyone would have to know yet. */

import type { SceneFile } from '../model/scene-file.ts';

/**
 * A new scene with a rectangular deck at the origin.
 * @param name - name of the scene
 * @param lengthM - extent along x [m]
 * @param widthM - extent along y [m]
 * @returns scene without bays, build-ups and zones
 */
export function newScene(name: string, lengthM: number, widthM: number): SceneFile {
  return {
    format: 'loamdeck-scene',
    version: 1,
    name,
    deck: {
      outline: [
        [0, 0],
        [lengthM, 0],
        [lengthM, widthM],
        [0, widthM],
      ],
      bays: [],
    },
    buildups: [],
    zones: [],
  };
}
