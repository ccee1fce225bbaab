/** Catches a pointer: vertex before edge, edge before right angle and parallel, these before the grid. */

import type { PointM } from '../model/scene-file.ts';
import type { PlanShape } from './plan-shapes.ts';
import type { EdgeRef, VertexRef } from './shared-vertices.ts';

/** vertex: of a shape, or the first point drawn · crossing: of two edges · foot: right angle onto an edge · edge: anywhere on it, also where a guide meets it ·
 * right angle, parallel, straight: along a guide from the point before · grid. */
export type SnapKind = 'vertex' | 'crossing' | 'foot' | 'edge' | 'right angle' | 'parallel' | 'straight' | 'grid';

/** Vertices and edges of shapes in squares, built once per scene. */
export interface SnapIndex {
  readonly edges: number;
  readonly vertices: number;
}

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
  /** What was caught, to be named; vertices and edges at the same place all stand here. */
  readonly vertices: readonly VertexRef[];
  readonly edges: readonly EdgeRef[];
  /** Line to be shown: from the point before along the guide, or the edge caught. */
  readonly guide: readonly [PointM, PointM] | null;
}

/**
 * Prepares shapes for catching. Points (outlets, trees, columns, spot levels) count as vertices.
 * @param shapes - shapes that can catch: hidden or locked ones left out by whoever asks
 * @returns the index
 */
export declare function snapIndex(shapes: readonly PlanShape[]): SnapIndex;

/**
 * What a pointer catches. Where the result is an edge, foot or crossing, put its point into those edges with `withVertexInserted` when it becomes a vertex.
 * @param index - from `snapIndex`
 * @param ask - pointer, tolerance, what is being drawn
 * @returns the point, and what it is; `kind` null and the pointer itself where nothing is near
 */
export declare function snapped(index: SnapIndex, ask: SnapAsk): Snapped;
