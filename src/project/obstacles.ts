/** What stands in the way of appliances, by name. */

import type { ObstacleInput } from '../model/route-input.ts';
import type { PointM, SceneFile } from '../model/scene-file.ts';
import { localLine, localRing, objectInput } from './resolve-shapes.ts';

/** All that stands on the deck: objects, upstands, openings. */
export function obstaclesOf(scene: SceneFile, originM: PointM): ObstacleInput[] {
  return [
    ...(scene.objects ?? []).map((object): ObstacleInput => {
      const rings = objectInput(object, originM).pieces.map(({ ring }) => ring);
      return { name: `${object.kind === 'retaining' ? 'retaining edge' : object.kind} ${object.id}`, rings, lines: [] };
    }),
    ...(scene.deck.edges ?? [])
      .filter(({ kind }) => kind === 'upstand')
      .map(({ id, line }): ObstacleInput => ({ name: `upstand ${id}`, rings: [], lines: [localLine(line, originM)] })),
    ...(scene.deck.openings ?? []).map(
      (outline, i): ObstacleInput => ({ name: `opening ${i + 1}`, rings: [localRing(outline, originM)], lines: [] }),
    ),
  ];
}
