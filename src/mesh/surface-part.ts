/** The part of a surface over a box, and the plan lines along which it changes direction there. */

import type { Bounds } from '../core/geometry/ring.ts';
import { type NetSurface, type Surface, triangleSlopes } from '../core/levels/surface.ts';

export interface SurfacePart {
  readonly surface: Surface;
  /** x0 y0 x1 y1 per line; the surface is plane between them [m]. */
  readonly creases: readonly number[];
}

/** Triangles whose slopes differ by less are one plane [-]. */
const SAME_SLOPE = 1e-12;

/**
 * Cuts a surface down to the triangles that reach into a box and finds its creases. Edges between triangles of one
 * plane are left out: they would only add triangles to the picture.
 * @param surface - surface [m]
 * @param box - box in plan [m]
 * @returns the part and its creases; the whole surface where the box is out of its reach [m]
 * @source none: geometry
 */
export function surfaceWithin(surface: Surface, box: Bounds): SurfacePart {
  if (surface.kind === 'plane') return { surface, creases: [] };
  const near: number[] = [];
  for (let t = 0; t < surface.triangles.length; t += 3) if (reaches(surface, t, box)) near.push(t);
  if (near.length === 0) return { surface, creases: [] };
  const triangles = new Uint32Array(near.length * 3);
  near.forEach((t, k) => {
    triangles.set(surface.triangles.subarray(t, t + 3), 3 * k);
  });
  const part: NetSurface = { ...surface, triangles, netTriangles: near.filter((t) => t < 3 * surface.netTriangles).length };
  return { surface: part, creases: creasesOf(part, box) };
}

function reaches(net: NetSurface, t: number, box: Bounds): boolean {
  const { points, triangles } = net;
  const a = 3 * triangles[t];
  const b = 3 * triangles[t + 1];
  const c = 3 * triangles[t + 2];
  return (
    Math.min(points[a], points[b], points[c]) <= box.maxX &&
    Math.max(points[a], points[b], points[c]) >= box.minX &&
    Math.min(points[a + 1], points[b + 1], points[c + 1]) <= box.maxY &&
    Math.max(points[a + 1], points[b + 1], points[c + 1]) >= box.minY
  );
}

function creasesOf(net: NetSurface, box: Bounds): number[] {
  const { points, triangles } = net;
  const count = points.length / 3;
  const sides = new Map<number, number>();
  const flat = new Set<number>();
  for (let t = 0; t < triangles.length; t += 3) {
    for (let e = 0; e < 3; e++) {
      const a = triangles[t + e];
      const b = triangles[t + ((e + 1) % 3)];
      const key = a < b ? a * count + b : b * count + a;
      const other = sides.get(key);
      if (other === undefined) sides.set(key, t);
      else if (samePlane(net, other, t)) flat.add(key);
    }
  }
  const creases: number[] = [];
  for (const key of sides.keys()) {
    if (flat.has(key)) continue;
    const a = 3 * Math.floor(key / count);
    const b = 3 * (key % count);
    if (segmentReaches([points[a], points[a + 1], points[b], points[b + 1]], box)) {
      creases.push(points[a], points[a + 1], points[b], points[b + 1]);
    }
  }
  return creases;
}

function samePlane(net: NetSurface, s: number, t: number): boolean {
  const [sx, sy] = slopes(net, s);
  const [tx, ty] = slopes(net, t);
  // False as well where a sliver has no slope.
  return Math.abs(sx - tx) <= SAME_SLOPE && Math.abs(sy - ty) <= SAME_SLOPE;
}

function slopes({ points, triangles }: NetSurface, t: number): [number, number] {
  return triangleSlopes(points, 3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]);
}

/**
 * Whether the box round a segment meets a box.
 * @param segment - x0 y0 x1 y1 [m]
 * @param box - box in plan [m]
 * @returns true if they meet [-]
 * @source none: geometry
 */
export function segmentReaches(segment: readonly [number, number, number, number], box: Bounds): boolean {
  const [ax, ay, bx, by] = segment;
  return Math.min(ax, bx) <= box.maxX && Math.max(ax, bx) >= box.minX && Math.min(ay, by) <= box.maxY && Math.max(ay, by) >= box.minY;
}
