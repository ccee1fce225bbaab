/** The uppermost drawn surface at a place in plan, read from the same prisms as the solids. */

import type { Picture, Prism } from '../model/picture.ts';
import { liftM } from './lift.ts';
import type { PartState } from './part-states.ts';

export interface TopAt {
  readonly part: number;
  /** Height without any lift [m]. */
  readonly zM: number;
}

/** Weights of a point in a triangle of the prism, or null outside. */
function weightsIn(prism: Prism, triangle: number, x: number, y: number): readonly [number, number, number] | null {
  const { plan, triangles } = prism;
  const at = (corner: number) => {
    const v = triangles[triangle * 3 + corner];
    return [plan[v * 2], plan[v * 2 + 1]] as const;
  };
  const [ax, ay] = at(0);
  const [bx, by] = at(1);
  const [cx, cy] = at(2);
  const twice = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
  if (twice === 0) return null;
  const b = ((x - ax) * (cy - ay) - (cx - ax) * (y - ay)) / twice;
  const c = ((bx - ax) * (y - ay) - (x - ax) * (by - ay)) / twice;
  const a = 1 - b - c;
  const slack = -1e-9;
  return a >= slack && b >= slack && c >= slack ? [a, b, c] : null;
}

/** Height of surface `k` of a prism at a point inside one of its triangles [m]. */
function heightIn(prism: Prism, surface: number, triangle: number, weights: readonly [number, number, number]): number {
  const vertices = prism.plan.length / 2;
  return weights.reduce((sum, weight, corner) => {
    const v = prism.triangles[triangle * 3 + corner];
    return sum + weight * prism.heights[surface * vertices + v];
  }, 0);
}

/** Uppermost layer of a prism that is drawn; -1 for none. */
export function highestShown(prism: Prism, states: readonly PartState[]): number {
  for (let layer = prism.parts.length - 1; layer >= 0; layer--) {
    if (states[prism.parts[layer]].shown) return layer;
  }
  return -1;
}

/**
 * The uppermost drawn layer at a point, or null where nothing is drawn.
 * @param picture - picture
 * @param states - states of its parts
 * @param x - local [m]
 * @param y - local [m]
 * @returns part and height [m]
 */
export function topAt(picture: Picture, states: readonly PartState[], x: number, y: number): TopAt | null {
  let best: (TopAt & { readonly floor: number }) | null = null;
  for (const prism of picture.prisms) {
    const layer = highestShown(prism, states);
    if (layer < 0) continue;
    for (let triangle = 0; triangle < prism.triangles.length / 3; triangle++) {
      const weights = weightsIn(prism, triangle, x, y);
      if (weights === null) continue;
      const part = prism.parts[layer];
      const zM = heightIn(prism, layer + 1, triangle, weights);
      const floor = picture.parts[part].floor;
      if (best === null || floor > best.floor || (floor === best.floor && zM > best.zM)) best = { part, zM, floor };
      break;
    }
  }
  return best;
}

/** The same surface as it stands on the screen, lifted by the exploded view; null where nothing is drawn [m]. */
export function drawnTopM(picture: Picture, states: readonly PartState[], at: readonly [number, number], explode: number): number | null {
  const top = topAt(picture, states, at[0], at[1]);
  return top === null ? null : top.zM + liftM(picture, top.part, true, explode);
}

/** Prisms whose box holds a point: on a large deck few of hundreds. */
export function nearPrisms(picture: Picture): (x: number, y: number) => Picture['prisms'] {
  const boxes = picture.prisms.map(({ plan }) => {
    const box = [Infinity, Infinity, -Infinity, -Infinity];
    for (let i = 0; i < plan.length; i += 2) {
      box[0] = Math.min(box[0], plan[i]);
      box[1] = Math.min(box[1], plan[i + 1]);
      box[2] = Math.max(box[2], plan[i]);
      box[3] = Math.max(box[3], plan[i + 1]);
    }
    return box;
  });
  return (x, y) => picture.prisms.filter((_, p) => x >= boxes[p][0] && y >= boxes[p][1] && x <= boxes[p][2] && y <= boxes[p][3]);
}
