/** Delaunay net through spots, breaklines kept as edges, and its extension beyond the boundary. */

import Constrainautor from '@kninnug/constrainautor';
import Delaunator from 'delaunator';
import type { LevelNet } from '../../model/deck-input.ts';
import { arrange } from '../geometry/arrangement.ts';
import { levelSurface, type Surface } from './surface.ts';

/** Spots nearer than this are one spot [m]. */
export const SPOT_MERGE_M = 0.001;

/** Widest angle of one triangle of a corner's fan [rad]. */
const FAN_STEP = Math.PI / 4;

/**
 * Surface through spots and breaklines.
 * @param net - spots and breaklines, local [m]
 * @param reachM - how far beyond the net its extension must go [m]
 * @returns surface; a net of one point is level, a net without area follows its line [m]
 * @throws RangeError if the net has no point
 * @source contract.md, section 2, Deck level; Delaunay net by delaunator, breaklines by constrainautor
 */
export function netSurface(net: LevelNet, reachM: number): Surface {
  const xy: number[] = [];
  const z: number[] = [];
  const segments: number[] = [];
  for (let i = 0; i < net.spots.length; i += 3) {
    xy.push(net.spots[i], net.spots[i + 1]);
    z.push(net.spots[i + 2]);
  }
  for (const line of net.breaklines) {
    for (let i = 0; i < line.length; i += 3) {
      if (i > 0) segments.push(z.length - 1, z.length);
      xy.push(line[i], line[i + 1]);
      z.push(line[i + 2]);
    }
  }
  if (z.length === 0) throw new RangeError('netSurface: a net of levels needs at least one point');
  const planar = arrange(xy, z, segments, SPOT_MERGE_M);
  const points: number[] = [];
  for (let i = 0; i < planar.values.length; i++) points.push(planar.points[2 * i], planar.points[2 * i + 1], planar.values[i]);
  if (planar.values.length === 1) return levelSurface(points[2]);
  const delaunay = new Delaunator(planar.points);
  const triangles: number[] = [];
  let loop: number[];
  if (delaunay.triangles.length > 0) {
    if (planar.segments.length > 0) constrain(delaunay, planar.segments);
    for (let t = 0; t < delaunay.triangles.length; t += 3) {
      const [a, b, c] = delaunay.triangles.subarray(t, t + 3);
      if (turn(points, a, b, c) > 0) triangles.push(a, b, c);
      else triangles.push(a, c, b);
    }
    loop = boundaryLoop(triangles);
  } else {
    loop = thereAndBack(points);
  }
  const netTriangles = triangles.length / 3;
  const boundary = netTriangles === 0 ? [] : loop.flatMap((i) => [points[3 * i], points[3 * i + 1]]);
  extend(points, triangles, loop, reachM);
  return {
    kind: 'net',
    points: Float64Array.from(points),
    triangles: Uint32Array.from(triangles),
    netTriangles,
    boundary: Float64Array.from(boundary),
  };
}

function constrain(delaunay: Delaunator<ArrayLike<number>>, segments: Uint32Array): void {
  const constrained = new Constrainautor(delaunay as ConstructorParameters<typeof Constrainautor>[0]);
  for (let k = 0; k < segments.length; k += 2) constrained.constrainOne(segments[k], segments[k + 1]);
}

function turn(points: readonly number[], a: number, b: number, c: number): number {
  return (
    (points[3 * b] - points[3 * a]) * (points[3 * c + 1] - points[3 * a + 1]) -
    (points[3 * c] - points[3 * a]) * (points[3 * b + 1] - points[3 * a + 1])
  );
}

/** Vertices round the net, counter-clockwise: the edges that only one triangle has. */
function boundaryLoop(triangles: readonly number[]): number[] {
  const stride = 2 ** 24;
  const twins = new Set<number>();
  const eachEdge = (visit: (a: number, b: number) => void) => {
    for (let t = 0; t < triangles.length; t += 3) for (let e = 0; e < 3; e++) visit(triangles[t + e], triangles[t + ((e + 1) % 3)]);
  };
  eachEdge((a, b) => twins.add(a * stride + b));
  const next = new Map<number, number>();
  eachEdge((a, b) => {
    if (!twins.has(b * stride + a)) next.set(a, b);
  });
  const loop: number[] = [];
  const first = next.keys().next().value as number;
  let at = first;
  do {
    loop.push(at);
    at = next.get(at) as number;
  } while (at !== first && at !== undefined && loop.length <= next.size);
  return loop;
}

/** All points on one line: out along it and back again is the boundary. */
function thereAndBack(points: readonly number[]): number[] {
  const order = Array.from({ length: points.length / 3 }, (_, i) => i);
  order.sort((p, q) => points[3 * p] - points[3 * q] || points[3 * p + 1] - points[3 * q + 1]);
  return [...order, ...order.slice(1, -1).reverse()];
}

/** Level strips off every edge and level fans round every corner of the boundary. */
function extend(points: number[], triangles: number[], loop: readonly number[], reachM: number): void {
  const n = loop.length;
  const outward = (i: number): number => {
    const a = loop[i % n];
    const b = loop[(i + 1) % n];
    return Math.atan2(points[3 * a] - points[3 * b], points[3 * b + 1] - points[3 * a + 1]);
  };
  const far = (vertex: number, angle: number): number => {
    // 45° fans come as near as cos(22.5°) of their radius.
    const radius = reachM / Math.cos(FAN_STEP / 2);
    points.push(points[3 * vertex] + radius * Math.cos(angle), points[3 * vertex + 1] + radius * Math.sin(angle), points[3 * vertex + 2]);
    return points.length / 3 - 1;
  };
  const put = (a: number, b: number, c: number): void => {
    if (turn(points, a, b, c) > 0) triangles.push(a, b, c);
  };
  for (let i = 0; i < n; i++) {
    const a = loop[i];
    const b = loop[(i + 1) % n];
    const angle = outward(i);
    const farA = far(a, angle);
    const farB = far(b, angle);
    put(a, farA, farB);
    put(a, farB, b);
    let swing = outward(i + 1) - angle;
    while (swing <= -Math.PI + 1e-12) swing += 2 * Math.PI;
    while (swing > Math.PI + 1e-12) swing -= 2 * Math.PI;
    const steps = Math.ceil(swing / FAN_STEP - 1e-9);
    let from = farB;
    for (let k = 1; k <= steps; k++) {
      const to = far(b, angle + (swing * k) / steps);
      put(b, from, to);
      from = to;
    }
  }
}
