/** Rings of polygons: area, direction, bounds, inside test. Rings are open, x0 y0 x1 y1 …, local metres. */

import type { Region, Ring } from '../../model/deck-input.ts';

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/**
 * Signed area by the shoelace rule, taken relative to the first vertex so that large coordinates lose no digits.
 * @param ring - ring, x y per vertex [m]
 * @returns area, positive counter-clockwise [m²]
 * @source none: geometry
 */
export function signedAreaM2(ring: Ring): number {
  const ox = ring[0];
  const oy = ring[1];
  let twice = 0;
  for (let i = 2; i + 3 < ring.length; i += 2) {
    twice += (ring[i] - ox) * (ring[i + 3] - oy) - (ring[i + 2] - ox) * (ring[i + 1] - oy);
  }
  return twice / 2;
}

/**
 * Centroid of a ring's area.
 * @param ring - ring, x y per vertex [m]
 * @returns centroid x, y [m]
 * @source none: geometry
 */
export function centroidM(ring: Ring): [number, number] {
  const ox = ring[0];
  const oy = ring[1];
  let twice = 0;
  let sx = 0;
  let sy = 0;
  for (let i = 2; i + 3 < ring.length; i += 2) {
    const ax = ring[i] - ox;
    const ay = ring[i + 1] - oy;
    const bx = ring[i + 2] - ox;
    const by = ring[i + 3] - oy;
    const cross = ax * by - bx * ay;
    twice += cross;
    sx += cross * (ax + bx);
    sy += cross * (ay + by);
  }
  return [ox + sx / (3 * twice), oy + sy / (3 * twice)];
}

/**
 * The same ring walked in the wanted direction.
 * @param ring - ring, x y per vertex [m]
 * @param counterClockwise - wanted direction [-]
 * @returns the ring itself or a reversed copy [m]
 * @source none: geometry
 */
export function directedRing(ring: Ring, counterClockwise: boolean): Ring {
  if (signedAreaM2(ring) >= 0 === counterClockwise) return ring;
  const out = new Float64Array(ring.length);
  for (let i = 0, j = ring.length - 2; i < ring.length; i += 2, j -= 2) {
    out[i] = ring[j];
    out[i + 1] = ring[j + 1];
  }
  return out;
}

/**
 * Area of a region, holes taken off.
 * @param region - outer ring counter-clockwise, holes clockwise [m]
 * @returns area [m²]
 * @source none: geometry
 */
export function regionAreaM2(region: Region): number {
  let area = signedAreaM2(region.outer);
  for (const hole of region.holes) area += signedAreaM2(hole);
  return area;
}

/**
 * Smallest upright box around a ring.
 * @param ring - ring, x y per vertex [m]
 * @returns bounds [m]
 * @source none: geometry
 */
export function boundsOf(ring: Ring): Bounds {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (let i = 0; i < ring.length; i += 2) {
    if (ring[i] < minX) minX = ring[i];
    if (ring[i] > maxX) maxX = ring[i];
    if (ring[i + 1] < minY) minY = ring[i + 1];
    if (ring[i + 1] > maxY) maxY = ring[i + 1];
  }
  return { minX, minY, maxX, maxY };
}

/**
 * Whether a point lies in a region. Points on the boundary belong to exactly one of two regions that share it
 * (half-open rule: lower and left edges are in).
 * @param region - region [m]
 * @param x - point [m]
 * @param y - point [m]
 * @returns true if inside [-]
 * @source none: geometry
 */
export function isInside(region: Region, x: number, y: number): boolean {
  let inside = crossesOdd(region.outer, x, y);
  for (const hole of region.holes) if (crossesOdd(hole, x, y)) inside = !inside;
  return inside;
}

function crossesOdd(ring: Ring, x: number, y: number): boolean {
  let odd = false;
  const n = ring.length;
  for (let i = 0, j = n - 2; i < n; j = i, i += 2) {
    const yi = ring[i + 1];
    const yj = ring[j + 1];
    if (yi <= y === yj <= y) continue;
    if (crossingX(ring, i, j, y) > x) odd = !odd;
  }
  return odd;
}

/** x where the edge i–j crosses height y, computed lower end first so that both owners of a shared edge agree to the bit. */
function crossingX(ring: Ring, i: number, j: number, y: number): number {
  const [a, b] = ring[i + 1] < ring[j + 1] || (ring[i + 1] === ring[j + 1] && ring[i] < ring[j]) ? [i, j] : [j, i];
  return ring[a] + ((y - ring[a + 1]) / (ring[b + 1] - ring[a + 1])) * (ring[b] - ring[a]);
}

/**
 * All rings of a region.
 * @param region - region [m]
 * @returns outer ring first, then the holes [m]
 * @source none: geometry
 */
export function ringsOf(region: Region): readonly Ring[] {
  return [region.outer, ...region.holes];
}
