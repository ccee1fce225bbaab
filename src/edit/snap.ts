/** Catches a pointer: vertex before edge, edge before right angle and parallel, these before the grid. */

import type { PointM } from '../model/scene-file.ts';
import { boxOf, contactOf } from '../scene/segment-contact.ts';
import { EdgeSquares, type Near, nearestOnEdge } from './edge-squares.ts';
import type { PlanShape } from './plan-shapes.ts';
import { cosSin } from './quarter-turns.ts';
import { type EdgeRef, isAt, ON_EDGE_M, type VertexRef } from './shared-vertices.ts';
import { type GuideLine, guideLines, guideOntoEdge, nearestOnGuide, whereGuidesCross } from './snap-guides.ts';

/** vertex: of a shape, or the first point drawn · crossing: of two edges · foot: right angle onto an edge · edge: anywhere on it, also where a guide meets it ·
 * right angle, parallel, straight: along a guide from the point before · grid. */
export type SnapKind = 'vertex' | 'crossing' | 'foot' | 'edge' | 'right angle' | 'parallel' | 'straight' | 'grid';

/** Vertices and edges found by where they are. */
export type SnapIndex = Pick<EdgeSquares, 'verticesNear' | 'edgesNear'>;

export interface SnapGrid {
  readonly stepM: number;
  readonly at: PointM;
  /** Counter-clockwise [°]. */
  readonly turnDeg: number;
}

export interface SnapAsk {
  /** Where the pointer is. */
  readonly at: PointM;
  /** How near something must be: pixels, turned into metres [m]. */
  readonly toleranceM: number;
  /** The point drawn before, or the neighbour of a dragged vertex: guides run from it. */
  readonly from?: PointM;
  /** Edges to be parallel or at right angles to, besides those that end in `from`: the one drawn before, one picked. */
  readonly guides?: readonly (readonly [PointM, PointM])[];
  /** Points drawn so far, which can be caught as vertices. */
  readonly drawn?: readonly PointM[];
  /** Coordinates that are being moved: nothing at them, and no edge that ends there, catches. */
  readonly moving?: readonly PointM[];
  readonly grid?: SnapGrid;
  /** Kinds switched off. */
  readonly off?: ReadonlySet<SnapKind>;
}

export interface Snapped {
  /** A caught vertex: its very coordinates. */
  readonly at: PointM;
  readonly kind: SnapKind | null;
  /** What was caught, to be named; vertices and edges at the same place all stand here. Lines of no part have an empty id. */
  readonly vertices: readonly VertexRef[];
  readonly edges: readonly EdgeRef[];
  /** Line to be shown: from the point before along the guide, or the edge caught. */
  readonly guide: readonly [PointM, PointM] | null;
}

/** Crossings are looked for among this many of the nearest edges. */
const MOST_CROSSED = 24;

/**
 * Prepares shapes for catching. Points (outlets, trees, columns, spot levels) count as vertices.
 * @param shapes - shapes that can catch: hidden or locked ones left out by whoever asks
 * @returns the index
 */
export function snapIndex(shapes: readonly PlanShape[]): EdgeSquares {
  return new EdgeSquares(shapes);
}

/**
 * Prepares lines that are no part of the scene, such as those under the plan.
 * @param lines - open lines; one of a single point is a place
 * @returns the index
 */
export function snapIndexOfLines(lines: readonly (readonly PointM[])[]): SnapIndex {
  return new EdgeSquares(lines.map((points): PlanShape => ({ part: 'outline', id: '', form: 'line', points })));
}

/**
 * Lets what is in either of two catch.
 * @param one - from `snapIndex`
 * @param other - from `snapIndexOfLines`, say
 * @returns the index of both, without building anything anew
 */
export function bothIndexes(one: SnapIndex, other: SnapIndex): SnapIndex {
  return {
    verticesNear: (at, withinM) => [...one.verticesNear(at, withinM), ...other.verticesNear(at, withinM)],
    edgesNear: (at, withinM) => [...one.edgesNear(at, withinM), ...other.edgesNear(at, withinM)],
  };
}

/**
 * What a pointer catches. Where the result is an edge, foot or crossing, put its point into those edges with `withVertexInserted` when it becomes a vertex.
 * @param index - from `snapIndex`
 * @param ask - pointer, tolerance, what is being drawn
 * @returns the point, and what it is; `kind` null and the pointer itself where nothing is near
 */
export function snapped(index: SnapIndex, ask: SnapAsk): Snapped {
  const isOn = (kind: SnapKind) => ask.off?.has(kind) !== true;
  const vertex = isOn('vertex') ? caughtVertex(index, ask) : null;
  if (vertex !== null) return vertex;
  const edges = index
    .edgesNear(ask.at, ask.toleranceM)
    .filter(({ item }) => !isMoving(ask, item.a) && !isMoving(ask, item.b))
    .sort((one, other) => one.distanceM - other.distanceM);
  const lines = guideLines(index, ask).filter(({ kind }) => isOn(kind));
  return (
    (isOn('crossing') ? caughtCrossing(edges, ask) : null) ??
    (isOn('foot') ? caughtFoot(edges, ask) : null) ??
    (isOn('edge') ? caughtEdge(edges, lines, ask) : null) ??
    caughtGuide(lines, ask) ??
    (isOn('grid') ? caughtGrid(ask) : null) ?? { ...NOTHING, at: ask.at }
  );
}

const NOTHING = { kind: null, vertices: [], edges: [], guide: null } as const;

const isMoving = ({ moving }: SnapAsk, at: PointM) => moving?.some((point) => isAt(point, at)) === true;

const distance = (a: PointM, b: PointM) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** The least by a measure, if it is near enough. */
function nearest<T>(items: readonly T[], measure: (item: T) => number, withinM: number): T | null {
  let best: T | null = null;
  let least = withinM;
  for (const item of items) {
    const distanceM = measure(item);
    if (distanceM <= least && (best === null || distanceM < least)) [best, least] = [item, distanceM];
  }
  return best;
}

function caughtVertex(index: SnapIndex, ask: SnapAsk): Snapped | null {
  const near = index.verticesNear(ask.at, ask.toleranceM).filter(({ item }) => !isMoving(ask, item.at));
  const vertex = nearest(near, ({ distanceM }) => distanceM, ask.toleranceM);
  const drawn = nearest(ask.drawn ?? [], (point) => distance(point, ask.at), ask.toleranceM);
  const at = vertex !== null && (drawn === null || vertex.distanceM <= distance(drawn, ask.at)) ? vertex.item.at : drawn;
  if (at === null) return null;
  const vertices = near.filter(({ item }) => isAt(item.at, at)).map(({ item: { at: _, ...ref } }): VertexRef => ref);
  return { ...NOTHING, at, kind: 'vertex', vertices };
}

type NearEdges = readonly Near<EdgeRef>[];

const segmentOf = ({ a, b }: EdgeRef) => ({ a, b, ...boxOf(a, b) });

function caughtCrossing(near: NearEdges, ask: SnapAsk): Snapped | null {
  const edges = near.slice(0, MOST_CROSSED).map(({ item }) => item);
  const crossings = edges.flatMap((one, i) =>
    edges.slice(i + 1).flatMap((other) => {
      const contact = contactOf(segmentOf(one), segmentOf(other));
      return contact === null || contact.kind === 'overlap' ? [] : [{ at: contact.at, pair: [one, other] }];
    }),
  );
  const best = nearest(crossings, ({ at }) => distance(at, ask.at), ask.toleranceM);
  return best === null ? null : { ...NOTHING, at: best.at, kind: 'crossing', edges: through(near, best.at) };
}

/** Edges that pass through a point or end in it. */
const through = (near: NearEdges, at: PointM) =>
  near.filter(({ item }) => distance(nearestOnEdge(at, item), at) <= ON_EDGE_M).map(({ item }) => item);

function caughtFoot(near: NearEdges, ask: SnapAsk): Snapped | null {
  const { from } = ask;
  if (from === undefined) return null;
  const feet = near.flatMap(({ item }) => {
    const at = nearestOnEdge(from, item);
    // The nearest point at an end of the edge is no right angle; an edge through the point before has none to it.
    return isAt(at, item.a) || isAt(at, item.b) || distance(at, from) <= ON_EDGE_M ? [] : [{ at, item }];
  });
  const best = nearest(feet, ({ at }) => distance(at, ask.at), ask.toleranceM);
  return best === null ? null : { ...NOTHING, at: best.at, kind: 'foot', edges: through(near, best.at), guide: [from, best.at] };
}

function caughtEdge(near: NearEdges, lines: readonly GuideLine[], ask: SnapAsk): Snapped | null {
  const met = near.slice(0, MOST_CROSSED).flatMap(({ item }) =>
    lines.flatMap((line) => {
      const at = guideOntoEdge(line, item);
      return at === null ? [] : [{ at, line }];
    }),
  );
  const best = nearest(met, ({ at }) => distance(at, ask.at), ask.toleranceM);
  if (best !== null) return { ...NOTHING, at: best.at, kind: 'edge', edges: through(near, best.at), guide: [best.line.from, best.at] };
  const [first] = near;
  if (first === undefined) return null;
  const at = nearestOnEdge(ask.at, first.item);
  return { ...NOTHING, at, kind: 'edge', edges: through(near, at), guide: [first.item.a, first.item.b] };
}

function caughtGuide(lines: readonly GuideLine[], ask: SnapAsk): Snapped | null {
  const near = lines.filter((line) => distance(nearestOnGuide(ask.at, line), ask.at) <= ask.toleranceM);
  const crossings = near.flatMap((line, i) =>
    near.slice(i + 1).flatMap((other) => {
      const at = whereGuidesCross(line, other);
      return at === null ? [] : [{ at, line }];
    }),
  );
  const both = nearest(crossings, ({ at }) => distance(at, ask.at), ask.toleranceM);
  if (both !== null) return { ...NOTHING, at: both.at, kind: both.line.kind, guide: [both.line.from, both.at] };
  const line = nearest(near, (one) => distance(nearestOnGuide(ask.at, one), ask.at), ask.toleranceM);
  if (line === null) return null;
  const at = nearestOnGuide(ask.at, line);
  return { ...NOTHING, at, kind: line.kind, guide: [line.from, at] };
}

function caughtGrid({ at, toleranceM, grid }: SnapAsk): Snapped | null {
  if (grid === undefined || !(grid.stepM > 0)) return null;
  const [cos, sin] = cosSin(grid.turnDeg);
  const [x, y] = [at[0] - grid.at[0], at[1] - grid.at[1]];
  const along = Math.round((cos * x + sin * y) / grid.stepM) * grid.stepM;
  const across = Math.round((cos * y - sin * x) / grid.stepM) * grid.stepM;
  const point: PointM = [tidy(grid.at[0] + cos * along - sin * across), tidy(grid.at[1] + sin * along + cos * across)];
  return distance(point, at) <= toleranceM ? { ...NOTHING, at: point, kind: 'grid' } : null;
}

/** Steps of a tenth add up to 0.30000000000000004: coordinates are told to a nanometre. */
const tidy = (coordinateM: number) => Math.round(coordinateM * 1e9) / 1e9;
