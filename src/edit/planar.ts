/** Edges of areas and lines cut where they meet, and the areas that chosen ones enclose. */

import { arrange } from '../core/geometry/arrangement.ts';
import type { PointM } from '../model/scene-file.ts';
import { areaOf, pointInRing, type Ring, ringOf } from '../scene/ring.ts';
import type { AreaM } from './overlay.ts';

/** Piece of an edge that meets others only at its ends. */
export interface PlanarEdge {
  readonly a: number;
  readonly b: number;
  /** Which areas lie to its left and to its right, seen from a to b. */
  readonly left: readonly boolean[];
  readonly right: readonly boolean[];
  readonly onLine: boolean;
}

export interface Planar {
  /** Points that were given keep their very numbers. */
  readonly points: readonly PointM[];
  readonly edges: readonly PlanarEdge[];
}

/** An edge in the direction in which what is wanted lies to its left. */
export type HalfEdge = readonly [from: number, to: number];

/** Points nearer to each other than this become one [m]. */
export const WELD_M = 1e-7;

interface Drawn {
  readonly local: number[];
  readonly given: PointM[];
  readonly segments: number[];
  /** Area of each segment, -1 for lines. */
  readonly owners: number[];
}

/**
 * Cuts edges where they cross or touch.
 * @param areas - simple areas with holes
 * @param lines - lines through them
 * @param weldM - points nearer to each other become one, nearer to an edge lie on it [m]
 * @returns points and edges
 */
export function planarOf(areas: readonly AreaM[], lines: readonly (readonly PointM[])[] = [], weldM = WELD_M): Planar {
  const drawn: Drawn = { local: [], given: [], segments: [], owners: [] };
  const rings = areas.map(({ outline, holes = [] }) => [outline, ...holes].map(ringOf));
  const origin = rings[0]?.[0]?.points[0] ?? lines[0]?.[0] ?? [0, 0];
  for (const [owner, own] of rings.entries())
    for (const [i, ring] of own.entries()) addRing(drawn, turned(ring.points, i === 0), { owner, origin });
  for (const line of lines) addLine(drawn, line, origin);
  const { points: flat, placed, chains } = arrange(drawn.local, [], drawn.segments, weldM);
  const points = Array.from({ length: flat.length / 2 }, (_, i): PointM => [flat[2 * i] + origin[0], flat[2 * i + 1] + origin[1]]);
  for (let i = placed.length - 1; i >= 0; i--) points[placed[i]] = drawn.given[i];
  return { points, edges: edgesOf(points, rings, { chains, owners: drawn.owners }) };
}

/** Counter-clockwise or clockwise, so that the area lies to the left. */
function turned(points: readonly PointM[], counterClockwise: boolean): readonly PointM[] {
  const [origin] = points;
  let twice = 0;
  for (const [i, [x, y]] of points.entries()) {
    const [nextX, nextY] = points[(i + 1) % points.length];
    twice += (x - origin[0]) * (nextY - origin[1]) - (nextX - origin[0]) * (y - origin[1]);
  }
  return twice > 0 === counterClockwise ? points : [...points].reverse();
}

function addRing(drawn: Drawn, points: readonly PointM[], { owner, origin }: { readonly owner: number; readonly origin: PointM }): void {
  const first = drawn.given.length;
  for (const [i, point] of points.entries()) {
    addPoint(drawn, point, origin);
    drawn.segments.push(first + i, first + ((i + 1) % points.length));
    drawn.owners.push(owner);
  }
}

function addLine(drawn: Drawn, line: readonly PointM[], origin: PointM): void {
  const first = drawn.given.length;
  for (const [i, point] of line.entries()) {
    addPoint(drawn, point, origin);
    if (i === 0) continue;
    drawn.segments.push(first + i - 1, first + i);
    drawn.owners.push(-1);
  }
}

function addPoint({ local, given }: Drawn, point: PointM, [originX, originY]: PointM): void {
  local.push(point[0] - originX, point[1] - originY);
  given.push(point);
}

interface Traced {
  readonly chains: readonly (readonly number[])[];
  readonly owners: readonly number[];
}

/** Where an area's own boundary runs along an edge, its direction tells the side; elsewhere the whole edge lies inside or outside. */
function edgesOf(points: readonly PointM[], rings: readonly (readonly Ring[])[], { chains, owners }: Traced): PlanarEdge[] {
  const found = new Map<string, { readonly a: number; readonly b: number; readonly turns: number[]; onLine: boolean }>();
  for (const [k, chain] of chains.entries()) {
    for (let i = 1; i < chain.length; i++) {
      const [from, to] = [chain[i - 1], chain[i]];
      const [a, b] = from < to ? [from, to] : [to, from];
      const key = `${a} ${b}`;
      const edge = found.get(key) ?? { a, b, turns: [], onLine: false };
      found.set(key, edge);
      if (owners[k] < 0) edge.onLine = true;
      else edge.turns[owners[k]] = (edge.turns[owners[k]] ?? 0) + (from < to ? 1 : -1);
    }
  }
  return [...found.values()].map(({ a, b, turns, onLine }) => {
    const middle: PointM = [(points[a][0] + points[b][0]) / 2, (points[a][1] + points[b][1]) / 2];
    const covered = rings.map((own, i) => (turns[i] ? false : covers(own, middle)));
    const side = (sign: number) => covered.map((isIn, i) => (turns[i] ? turns[i] * sign > 0 : isIn));
    return { a, b, left: side(1), right: side(-1), onLine };
  });
}

function covers([outline, ...holes]: readonly Ring[], at: PointM): boolean {
  return pointInRing(at, outline) > 0 && holes.every((hole) => pointInRing(at, hole) < 0);
}

/**
 * Areas enclosed by edges that have them to their left.
 * @param points - points
 * @param halfEdges - directed edges, each once
 * @returns areas of simple rings, outlines counter-clockwise and holes clockwise, largest first
 */
export function enclosed(points: readonly PointM[], halfEdges: readonly HalfEdge[]): readonly AreaM[] {
  const rings = tracedRings(points, halfEdges).map((indices) => {
    const ring = ringFrom(indices, points);
    return { ...ring, sizeM2: signedAreaM2(ring.points) };
  });
  const outer = rings.filter(({ sizeM2 }) => sizeM2 > 0).sort((one, other) => other.sizeM2 - one.sizeM2);
  const holes = outer.map((): PointM[][] => []);
  for (const hole of rings.filter(({ sizeM2 }) => sizeM2 < 0)) {
    const around = outer.findLastIndex((ring) => ring.sizeM2 > -hole.sizeM2 && isAround(ring, hole, points));
    if (around >= 0) holes[around].push([...hole.points]);
  }
  return outer.map(({ points: outline }, i) => (holes[i].length === 0 ? { outline } : { outline, holes: holes[i] }));
}

interface IndexedRing {
  readonly indices: readonly number[];
  readonly points: readonly PointM[];
}

/** Begins with the point that was given first, so that outlines begin where they did. */
function ringFrom(indices: readonly number[], points: readonly PointM[]): IndexedRing {
  const start = indices.indexOf(Math.min(...indices));
  const ordered = [...indices.slice(start), ...indices.slice(0, start)];
  return { indices: ordered, points: ordered.map((i) => points[i]) };
}

function signedAreaM2(points: readonly PointM[]): number {
  const isLeft = turned(points, true) === points;
  return isLeft ? areaOf(points) : -areaOf(points);
}

/** A hole touches the ring around it in points at most, and these are points of both. */
function isAround(ring: IndexedRing, hole: IndexedRing, points: readonly PointM[]): boolean {
  const own = new Set(ring.indices);
  const free = hole.indices.find((i) => !own.has(i));
  return free !== undefined && pointInRing(points[free], ringOf(ring.points)) > 0;
}

/** Round each face with the sharpest turn to the left; what passes a point twice is cut there. */
function tracedRings(points: readonly PointM[], halfEdges: readonly HalfEdge[]): number[][] {
  const out = new Map<number, number[]>();
  for (const [i, [from]] of halfEdges.entries()) out.set(from, [...(out.get(from) ?? []), i]);
  const used = new Uint8Array(halfEdges.length);
  const rings: number[][] = [];
  for (let first = 0; first < halfEdges.length; first++) {
    const walk: number[] = [];
    for (let at: number | null = first; at !== null && used[at] === 0; ) {
      used[at] = 1;
      const [from, to] = halfEdges[at];
      walk.push(from);
      at = sharpestLeft(
        points,
        from,
        to,
        (out.get(to) ?? []).filter((i) => used[i] === 0 || i === first).map((i) => ({ i, to: halfEdges[i][1] })),
      );
    }
    rings.push(...simpleLoops(walk));
  }
  return rings.filter((ring) => ring.length >= 3);
}

interface Way {
  readonly i: number;
  readonly to: number;
}

function sharpestLeft(points: readonly PointM[], from: number, at: number, ways: readonly Way[]): number | null {
  const angleTo = (p: number) => Math.atan2(points[p][1] - points[at][1], points[p][0] - points[at][0]);
  const back = angleTo(from);
  let best: number | null = null;
  let least = Infinity;
  for (const { i, to } of ways) {
    const turn = to === from ? 2 * Math.PI : (back - angleTo(to) + 4 * Math.PI) % (2 * Math.PI);
    if (turn < least) [best, least] = [i, turn];
  }
  return best;
}

function simpleLoops(walk: readonly number[]): number[][] {
  const loops: number[][] = [];
  const path: number[] = [];
  for (const point of walk) {
    const before = path.indexOf(point);
    if (before >= 0) loops.push(path.splice(before));
    path.push(point);
  }
  return [...loops, path];
}
