/** What one stands on at a point of the deck: the membrane, or the top of what is placed there. */

import { type Bounds, boundsOf, isInside } from '../core/geometry/ring.ts';
import { type NetSurface, type Surface, surfaceLevelM } from '../core/levels/surface.ts';
import type { Region } from '../model/deck-input.ts';
import type { BarePrism } from './prism.ts';

export interface GroundZone {
  readonly region: Region;
  readonly prism: BarePrism;
  /** Stage that places each layer, -1 where none does. */
  readonly stages: Int16Array;
}

/** Level of the ground at x y after a stage, or in the finished garden where the stage is null [m]. */
export type GroundAt = (x: number, y: number, stage: number | null) => number;

/** A point on the border of a zone may belong to no zone; so it is also looked for this far beside [m]. */
const BESIDE_M = 1e-3;

/**
 * Ground over all zones.
 * @param zones - zones that could be drawn; the first that holds a point counts [m]
 * @param deck - top of the membrane, the ground where there is no zone [m]
 * @returns level at a point [m]
 * @source none: geometry
 */
export function groundOver(zones: readonly GroundZone[], deck: Surface): GroundAt {
  const boxes = zones.map((zone) => boundsOf(zone.region.outer));
  const nets = zones.map(() => new Map<number, NetSurface>());
  const zoneAt = (x: number, y: number): number => {
    for (const [dx, dy] of [
      [0, 0],
      [-1, -1],
      [1, -1],
      [-1, 1],
      [1, 1],
    ]) {
      const px = x + dx * BESIDE_M;
      const py = y + dy * BESIDE_M;
      const found = zones.findIndex((zone, z) => inBox(boxes[z], px, py) && isInside(zone.region, px, py));
      if (found >= 0) return found;
    }
    return -1;
  };
  return (x, y, stage) => {
    const z = zoneAt(x, y);
    if (z < 0) return surfaceLevelM(deck, x, y);
    const surface = surfacesPlaced(zones[z].stages, stage);
    let net = nets[z].get(surface);
    if (net === undefined) {
      net = surfaceOf(zones[z].prism, surface);
      nets[z].set(surface, net);
    }
    return surfaceLevelM(net, x, y);
  };
}

function inBox(box: Bounds, x: number, y: number): boolean {
  return x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;
}

/** Index of the uppermost surface: one above the highest layer placed. */
function surfacesPlaced(stages: Int16Array, stage: number | null): number {
  if (stage === null) return stages.length;
  let placed = stages.length;
  while (placed > 0 && (stages[placed - 1] < 0 || stages[placed - 1] > stage)) placed--;
  return placed;
}

function surfaceOf(prism: BarePrism, surface: number): NetSurface {
  const vertices = prism.plan.length / 2;
  const points = new Float64Array(3 * vertices);
  for (let v = 0; v < vertices; v++) {
    points[3 * v] = prism.plan[2 * v];
    points[3 * v + 1] = prism.plan[2 * v + 1];
    points[3 * v + 2] = prism.heights[surface * vertices + v];
  }
  return { kind: 'net', points, triangles: prism.triangles, netTriangles: prism.triangles.length / 3, boundary: new Float64Array(0) };
}
