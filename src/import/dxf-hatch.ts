/** Boundaries of a hatch: closed loops of polylines or edges, the inner ones holes of the outer. */

import {
  type Affine,
  arcOfBulge,
  type Curve,
  moveCurve,
  movePoint,
  type Pair,
  pointOfArc,
  reverseCurve,
  splineEnds,
  splineOf,
} from './curves.ts';
import type { Entity } from './dxf-tags.ts';
import type { RawPath } from './raw-shapes.ts';

/** Loops of one hatch. */
const MOST_LOOPS = 2000;
const RADIANS = Math.PI / 180;
/** Edges of a loop meet within this share of their length. */
const MEETING = 1e-4;

interface Edge {
  readonly from: Pair;
  readonly to: Pair;
  readonly curve: Curve | null;
}

/** Reads codes in the order in which they stand. */
class Cursor {
  readonly #entity: Entity;
  #at = 0;

  constructor(entity: Entity, start: number) {
    this.#entity = entity;
    this.#at = start;
  }

  /** Value of a code that must come next; null where another does. */
  take(code: number): number | null {
    return this.#entity.codes[this.#at] === code ? this.#entity.numberAt(this.#at++) : null;
  }

  must(code: number): number {
    const value = this.take(code);
    if (value === null) throw new OutOfForm();
    return value;
  }

  pair(codeX: number): Pair {
    return [this.must(codeX), this.must(codeX + 10)];
  }

  skipTo(code: number): boolean {
    const found = this.#entity.codes.indexOf(code, this.#at);
    if (found !== -1) this.#at = found;
    return found !== -1;
  }
}

class OutOfForm extends Error {}

/**
 * Reads the boundaries.
 * @returns loops with their holes, or null where the hatch is out of form
 */
export function hatchLoops(entity: Entity, place: { readonly layer: string; readonly plane: Affine }): readonly RawPath[] | null {
  const start = entity.codes.indexOf(91);
  if (start === -1) return null;
  const cursor = new Cursor(entity, start);
  const count = Math.min(MOST_LOOPS, cursor.must(91));
  const loops: RawPath[] = [];
  try {
    for (let i = 0; i < count && cursor.skipTo(92); i++) {
      const isPolyline = (cursor.must(92) & 2) !== 0;
      const edges = isPolyline ? polylineEdges(cursor) : looseEdges(cursor);
      const loop = loopOf(edges, place);
      if (loop !== null) loops.push(loop);
    }
  } catch (error) {
    if (error instanceof OutOfForm) return null;
    throw error;
  }
  return withHoles(loops);
}

function polylineEdges(cursor: Cursor): Edge[] {
  const bulged = cursor.must(72) !== 0;
  cursor.take(73);
  const count = cursor.must(93);
  const vertices: { at: Pair; bulge: number }[] = [];
  for (let i = 0; i < count; i++) vertices.push({ at: cursor.pair(10), bulge: bulged ? (cursor.take(42) ?? 0) : 0 });
  return vertices.map(({ at, bulge }, i) => {
    const to = vertices[(i + 1) % vertices.length].at;
    return { from: at, to, curve: arcOfBulge(at, to, bulge) };
  });
}

function looseEdges(cursor: Cursor): Edge[] {
  const count = cursor.must(93);
  const edges: Edge[] = [];
  for (let i = 0; i < count; i++) {
    const kind = cursor.must(72);
    if (kind === 1) edges.push({ from: cursor.pair(10), to: cursor.pair(11), curve: null });
    else if (kind === 2) edges.push(arcEdge(cursor, false));
    else if (kind === 3) edges.push(arcEdge(cursor, true));
    else if (kind === 4) edges.push(splineEdge(cursor));
    else throw new OutOfForm();
  }
  return edges;
}

/** Clockwise, angles are counted clockwise too. */
function arcEdge(cursor: Cursor, isEllipse: boolean): Edge {
  const centre = cursor.pair(10);
  const u = isEllipse ? cursor.pair(11) : null;
  const size = cursor.must(40);
  const [start, end] = [cursor.must(50) * RADIANS, cursor.must(51) * RADIANS];
  const sign = (cursor.take(73) ?? 1) === 0 ? -1 : 1;
  const sweep = end > start ? end - start : end - start + 2 * Math.PI;
  if (!(sweep <= 2 * Math.PI + 1e-6 && size > 0)) throw new OutOfForm();
  const from = sign * start;
  const axes = u === null ? { u: [size, 0] as Pair, v: [0, size] as Pair } : { u, v: [-u[1] * size, u[0] * size] as Pair };
  const curve = { kind: 'arc', centre, ...axes, from, to: from + sign * sweep } as const;
  return { from: pointOfArc(curve, curve.from), to: pointOfArc(curve, curve.to), curve };
}

function splineEdge(cursor: Cursor): Edge {
  const degree = cursor.must(94);
  cursor.take(73);
  cursor.take(74);
  const [knotCount, controlCount] = [cursor.must(95), cursor.must(96)];
  const knots: number[] = [];
  for (let i = 0; i < knotCount; i++) knots.push(cursor.must(40));
  const controls: number[] = [];
  for (let i = 0; i < controlCount; i++) controls.push(...cursor.pair(10), cursor.take(42) ?? 1);
  const curve = splineOf(degree, knots, controls);
  if (curve === null) throw new OutOfForm();
  const [from, to] = splineEnds(curve);
  return { from, to, curve };
}

/** Edges in their order, each turned so that it goes on from the one before; null where they do not meet. */
function loopOf(edges: readonly Edge[], { layer, plane }: { readonly layer: string; readonly plane: Affine }): RawPath | null {
  if (edges.length === 0) return null;
  const size = edges.reduce((most, { from, to }) => Math.max(most, Math.hypot(to[0] - from[0], to[1] - from[1])), 1e-9);
  const meet = (a: Pair, b: Pair) => Math.hypot(a[0] - b[0], a[1] - b[1]) <= MEETING * size;
  const points: number[] = [];
  const curves = new Map<number, Curve>();
  let at = edges.length > 1 && (meet(edges[0].from, edges[1].from) || meet(edges[0].from, edges[1].to)) ? edges[0].to : edges[0].from;
  const start = at;
  for (const [i, edge] of edges.entries()) {
    const forward = meet(edge.from, at);
    if (!forward && !meet(edge.to, at)) return null;
    points.push(...movePoint(plane, ...at));
    if (edge.curve !== null) curves.set(i, moveCurve(plane, forward ? edge.curve : reverseCurve(edge.curve)));
    at = forward ? edge.to : edge.from;
  }
  if (!meet(at, start)) return null;
  return { kind: 'path', layer, closed: true, points, levels: null, curves: curves.size > 0 ? curves : null, loose: false };
}

/** Loops whose first point lies in an odd number of others are holes of the smallest around them. */
function withHoles(loops: readonly RawPath[]): readonly RawPath[] {
  if (loops.length < 2 || loops.length > 100) return loops;
  const around = loops.map((inner) => loops.filter((outer) => outer !== inner && holds(outer.points, inner.points[0], inner.points[1])));
  const isHole = (i: number) => around[i].length % 2 === 1;
  const depthOf = (loop: RawPath) => around[loops.indexOf(loop)].length;
  return loops.flatMap((loop, i) => {
    if (isHole(i)) return [];
    const holes = loops.filter((_, j) => isHole(j) && around[j].includes(loop) && around[j].length === depthOf(loop) + 1);
    return [holes.length > 0 ? { ...loop, holes } : loop];
  });
}

function holds(ring: readonly number[], x: number, y: number): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    if (ring[i + 1] > y === ring[j + 1] > y) continue;
    if (x < ring[i] + ((y - ring[i + 1]) / (ring[j + 1] - ring[i + 1])) * (ring[j] - ring[i])) inside = !inside;
  }
  return inside;
}
