/**
 * A region in plan, cut to the deck, as triangles over each of which both the deck's and the finished surface are plane.
 * Layers, solids and sections all stand on this one net, so they meet without gaps.
 */

import Constrainautor from '@kninnug/constrainautor';
import Delaunator from 'delaunator';
import { arrange } from '../core/geometry/arrangement.ts';
import { type Bounds, boundsOf, isInside, ringsOf } from '../core/geometry/ring.ts';
import { type Surface, surfaceLevelM } from '../core/levels/surface.ts';
import type { Region, Ring } from '../model/deck-input.ts';
import { segmentReaches, surfaceWithin } from './surface-part.ts';

export interface PlanNet {
  /** x y per vertex [m]. */
  readonly plan: Float64Array;
  /** Three indices each, counter-clockwise. */
  readonly triangles: Uint32Array;
  /** Boundary edges, two vertex indices each, region on the left. */
  readonly rim: Uint32Array;
  /** Level of the deck per vertex [m]. */
  readonly deckM: Float64Array;
  /** Finished level per vertex; empty without a finished surface [m]. */
  readonly finishM: Float64Array;
}

export interface NetSurfaces {
  readonly deck: Surface;
  /** Null where the finish follows from the build-up. */
  readonly finish: Surface | null;
}

export type PlanNetAnswer = { readonly net: PlanNet } | { readonly net: null; readonly why: string };

/** Merging distances tried one after the other [m]; the first is below any drawing, the last is the grain of the input. */
const TOLERANCES_M = [1e-9, 1e-6, 1e-5, 1e-4, 1e-3];

/**
 * Triangulates the part of a region that lies on the deck.
 * @param region - region to draw [m]
 * @param deck - outline of the deck and its openings [m]
 * @param surfaces - surfaces whose creases must be edges of the net [m]
 * @returns the net, or why there is none [m]
 * @source none: geometry; Delaunay net by delaunator, edges kept by constrainautor
 */
export function planNet(region: Region, deck: Region, surfaces: NetSurfaces): PlanNetAnswer {
  const box = boundsOf(region.outer);
  const deckPart = surfaceWithin(surfaces.deck, box);
  const finishPart = surfaces.finish === null ? null : surfaceWithin(surfaces.finish, box);
  const outline = new LineSet();
  for (const ring of ringsOf(region)) outline.addRing(ring, null);
  if (deck !== region) for (const ring of ringsOf(deck)) outline.addRing(ring, box);
  outline.addLines(deckPart.creases);
  if (finishPart !== null) outline.addLines(finishPart.creases);
  outline.addCorners(box);
  const shape = triangulate(outline, (x, y) => isInside(region, x, y) && (deck === region || isInside(deck, x, y)));
  if (shape === null) return { net: null, why: 'its outline could not be cut into triangles' };
  if (shape.triangles.length === 0) return { net: null, why: 'no part of it lies on the deck' };
  const levels = (surface: Surface) => levelsAt(surface, shape.plan);
  return {
    net: {
      ...shape,
      rim: rimOf(shape.triangles, shape.plan.length / 2),
      deckM: levels(deckPart.surface),
      finishM: finishPart === null ? new Float64Array(0) : levels(finishPart.surface),
    },
  };
}

/** Points and segments on their way into the arrangement. */
class LineSet {
  readonly points: number[] = [];
  readonly segments: number[] = [];

  /** Edges of a ring; where a box is given, only those near it. */
  addRing(ring: Ring, box: Bounds | null): void {
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      this.addSegment([ring[j], ring[j + 1], ring[i], ring[i + 1]], box);
    }
  }

  addLines(lines: readonly number[]): void {
    for (let i = 0; i < lines.length; i += 4) this.addSegment([lines[i], lines[i + 1], lines[i + 2], lines[i + 3]], null);
  }

  /** Four points well outside, so that no segment lies on the hull, where rounding decides. */
  addCorners(box: Bounds): void {
    const margin = 1 + (box.maxX - box.minX) + (box.maxY - box.minY);
    for (const x of [box.minX - margin, box.maxX + margin]) {
      for (const y of [box.minY - margin, box.maxY + margin]) this.points.push(x, y);
    }
  }

  private addSegment(segment: readonly [number, number, number, number], box: Bounds | null): void {
    if (box !== null && !segmentReaches(segment, box)) return;
    const at = this.points.length / 2;
    this.points.push(...segment);
    this.segments.push(at, at + 1);
  }
}

interface Shape {
  readonly plan: Float64Array;
  readonly triangles: Uint32Array;
}

function triangulate(lines: LineSet, keep: (x: number, y: number) => boolean): Shape | null {
  for (const toleranceM of TOLERANCES_M) {
    const planar = arrange(lines.points, [], lines.segments, toleranceM);
    const delaunay = new Delaunator(planar.points);
    try {
      const constrained = new Constrainautor(delaunay as ConstructorParameters<typeof Constrainautor>[0]);
      for (let k = 0; k < planar.segments.length; k += 2) constrained.constrainOne(planar.segments[k], planar.segments[k + 1]);
    } catch {
      // It throws where rounding makes edges cross or run through a point; coarser merging removes such places.
      continue;
    }
    return keptTriangles(planar.points, delaunay.triangles, keep);
  }
  return null;
}

/** Triangles whose centroid is wanted, counter-clockwise, on their own points only. */
function keptTriangles(points: Float64Array, all: Uint32Array, keep: (x: number, y: number) => boolean): Shape {
  let twice = 0;
  for (let t = 0; t < all.length; t += 3) twice += turn(points, all[t], all[t + 1], all[t + 2]);
  const [second, third] = twice > 0 ? [1, 2] : [2, 1];
  const place = new Int32Array(points.length / 2).fill(-1);
  const plan: number[] = [];
  const triangles: number[] = [];
  for (let t = 0; t < all.length; t += 3) {
    const corners = [all[t], all[t + second], all[t + third]];
    const [a, b, c] = corners;
    if (!keep((points[2 * a] + points[2 * b] + points[2 * c]) / 3, (points[2 * a + 1] + points[2 * b + 1] + points[2 * c + 1]) / 3)) {
      continue;
    }
    for (const corner of corners) {
      if (place[corner] < 0) {
        place[corner] = plan.length / 2;
        plan.push(points[2 * corner], points[2 * corner + 1]);
      }
      triangles.push(place[corner]);
    }
  }
  return { plan: Float64Array.from(plan), triangles: Uint32Array.from(triangles) };
}

function turn(points: Float64Array, a: number, b: number, c: number): number {
  return (
    (points[2 * b] - points[2 * a]) * (points[2 * c + 1] - points[2 * a + 1]) -
    (points[2 * c] - points[2 * a]) * (points[2 * b + 1] - points[2 * a + 1])
  );
}

function levelsAt(surface: Surface, plan: Float64Array): Float64Array {
  const levels = new Float64Array(plan.length / 2);
  for (let i = 0; i < levels.length; i++) levels[i] = surfaceLevelM(surface, plan[2 * i], plan[2 * i + 1]);
  return levels;
}

/**
 * Edges that only one triangle has.
 * @param triangles - three vertex indices each [-]
 * @param vertices - number of vertices [-]
 * @returns two vertex indices per edge, directed as in its triangle [-]
 * @source none: geometry
 */
export function rimOf(triangles: Uint32Array, vertices: number): Uint32Array {
  const directed = new Set<number>();
  for (let t = 0; t < triangles.length; t += 3) {
    for (let e = 0; e < 3; e++) directed.add(triangles[t + e] * vertices + triangles[t + ((e + 1) % 3)]);
  }
  const rim: number[] = [];
  for (const key of directed) {
    const from = Math.floor(key / vertices);
    const to = key % vertices;
    if (!directed.has(to * vertices + from)) rim.push(from, to);
  }
  return Uint32Array.from(rim);
}
