/** Stockpiles: upright rectangles as people type them, and the bays a heap lies on. */

import { commonAreaM2 } from '../core/geometry/common-area.ts';
import { directedRing } from '../core/geometry/ring.ts';
import type { PointM, PolygonM, SceneFile } from '../model/scene-file.ts';

/** Lower left corner and extents along x and y [m]. */
export interface Rectangle {
  readonly xM: number;
  readonly yM: number;
  readonly lengthM: number;
  readonly widthM: number;
}

/** A bay that is touched by less than this is not under a heap [m²]. */
const TOUCHED_M2 = 1e-6;

/**
 * The rectangle that an outline is.
 * @param outline - outline [m]
 * @returns null for any other shape, and where it stands at an angle
 */
export function rectangleOf(outline: PolygonM): Rectangle | null {
  const [first, last] = [outline[0], outline[outline.length - 1]];
  const closed = outline.length > 1 && first?.[0] === last?.[0] && first?.[1] === last?.[1];
  const points = closed ? outline.slice(0, -1) : outline;
  if (points.length !== 4) return null;
  const upright = points.every(([x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % 4] as PointM;
    return (x === nextX) !== (y === nextY);
  });
  if (!upright) return null;
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [xM, yM] = [Math.min(...xs), Math.min(...ys)];
  return { xM, yM, lengthM: clean(Math.max(...xs) - xM), widthM: clean(Math.max(...ys) - yM) };
}

/** Differences of coordinates leave crumbs far below a micrometre. */
const clean = (value: number): number => Math.round(value * 1e6) / 1e6;

/**
 * Outline of a rectangle, counter-clockwise.
 * @param rectangle - rectangle [m]
 */
export function rectangleOutline({ xM, yM, lengthM, widthM }: Rectangle): PolygonM {
  const [right, top] = [clean(xM + lengthM), clean(yM + widthM)];
  return [
    [xM, yM],
    [right, yM],
    [right, top],
    [xM, top],
  ];
}

/**
 * Bays under an outline.
 * @param scene - scene
 * @param outline - outline of a heap [m]
 * @returns their ids, most of the heap first
 */
export function baysUnder(scene: SceneFile, outline: PolygonM): string[] {
  const origin = scene.deck.outline[0] as PointM;
  const heap = { outer: localRing(outline, origin), holes: [] };
  return scene.deck.bays
    .map((bay) => ({ id: bay.id, areaM2: commonAreaM2([heap, { outer: localRing(bay.outline, origin), holes: [] }]) }))
    .filter(({ areaM2 }) => areaM2 > TOUCHED_M2)
    .sort((a, b) => b.areaM2 - a.areaM2)
    .map(({ id }) => id);
}

/** Near the origin, open and counter-clockwise. */
function localRing(polygon: PolygonM, [x0, y0]: PointM): Float64Array {
  const ring = Float64Array.from(polygon.flatMap(([x, y]) => [x - x0, y - y0]));
  const { length } = ring;
  const closed = length > 2 && ring[0] === ring[length - 2] && ring[1] === ring[length - 1];
  return directedRing(closed ? ring.slice(0, -2) : ring, true);
}
