/** Everything a scene draws besides layers, in local metres: columns, outlets, edges, and heights to draw objects with. */

import type { PointM, SceneFile } from '../model/scene-file.ts';
import { metresFromMm } from '../model/units.ts';
import { localLine, localRing } from './resolve-shapes.ts';

/** Drawn where the scene gives no slab thickness [mm]; it enters no calculation. */
const DRAWN_SLAB_MM = 300;
/** Drawn height of a wall or block without one [m]; it enters no calculation. */
const DRAWN_OBJECT_M = 0.45;

/** Heights of trees follow from their spread: a drawing convention, nothing is calculated with it. */
const TREE_HEIGHT_PER_SPREAD = 1.6;

/** Furniture of a scene, in the shape `src/mesh` draws. */
export function furnitureOf(scene: SceneFile, originM: PointM) {
  const { deck } = scene;
  const local = ([x, y]: PointM) => ({ x: x - originM[0], y: y - originM[1] });
  const objects = (scene.objects ?? []).map((entry, object) => ({ entry, object }));
  return {
    slabM: metresFromMm(deck.slabMm ?? DRAWN_SLAB_MM),
    columns: (deck.columns ?? []).map((column) => ({ id: column.id, ...local(column.at), sizeM: column.sizeM })),
    outlets: (deck.outlets ?? []).map((outlet) => ({ id: outlet.id, ...local(outlet.at) })),
    edges: (deck.edges ?? []).map((edge) => ({
      id: edge.id,
      kind: edge.kind,
      line: localLine(edge.line, originM),
      membraneTopM: edge.membraneTopM,
    })),
    trees: objects.flatMap(({ entry, object }) =>
      entry.kind === 'tree'
        ? [{ object, ...local(entry.at), spreadM: entry.spreadM, heightM: Math.max(2, entry.spreadM * TREE_HEIGHT_PER_SPREAD) }]
        : [],
    ),
    lines: objects.flatMap(({ entry, object }) =>
      entry.kind === 'line' ? [{ object, line: localLine(entry.line, originM), widthM: entry.widthM, heightM: DRAWN_OBJECT_M }] : [],
    ),
    retaining: objects.flatMap(({ entry, object }) => {
      if (entry.kind !== 'retaining') return [];
      const { line, side, retainedM, baseM, stemM, slabM } = entry;
      return [{ object, line: localLine(line, originM), side, retainedM, baseM, stemM, slabM }];
    }),
    blocks: objects.flatMap(({ entry, object }) =>
      entry.kind === 'block' ? [{ object, ring: localRing(entry.outline, originM), heightM: entry.heightM ?? DRAWN_OBJECT_M }] : [],
    ),
  };
}
