/** Shapes as a file draws them: in its own units and order of axes, curves still curves. */

import type { Curve } from './curves.ts';

interface RawBase {
  readonly layer: string;
  readonly name?: string;
  readonly block?: string;
}

export interface RawPath extends RawBase {
  readonly kind: 'path';
  readonly closed: boolean;
  /** x y per point. */
  readonly points: number[];
  /** One per point, or null where the file gives none. */
  readonly levels: number[] | null;
  /** Curves in place of the straight edge that begins at a point, by its position. */
  readonly curves: ReadonlyMap<number, Curve> | null;
  readonly holes?: readonly RawPath[];
  /** Drawn as single lines or arcs, to be chained. */
  readonly loose: boolean;
}

export interface RawPoint extends RawBase {
  readonly kind: 'point';
  readonly x: number;
  readonly y: number;
  readonly z: number | null;
}

export interface RawText extends RawBase {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/** A whole turn of an arc; `x y` is its centre. */
export interface RawCircle extends RawBase {
  readonly kind: 'circle';
  readonly x: number;
  readonly y: number;
  readonly u: readonly [number, number];
  readonly v: readonly [number, number];
}

export interface RawBlock extends RawBase {
  readonly kind: 'block';
  readonly x: number;
  readonly y: number;
  readonly turnDeg: number;
}

export type RawShape = RawPath | RawPoint | RawText | RawCircle | RawBlock;

/** Visits every point of a shape; of a circle, the corners of the box it fills if it is round. */
export function visitPoints(shape: RawShape, visit: (x: number, y: number) => void): void {
  if (shape.kind === 'path') {
    for (let i = 0; i + 1 < shape.points.length; i += 2) visit(shape.points[i], shape.points[i + 1]);
    for (const hole of shape.holes ?? []) visitPoints(hole, visit);
  } else if (shape.kind === 'circle') {
    const [dx, dy] = [Math.hypot(shape.u[0], shape.v[0]), Math.hypot(shape.u[1], shape.v[1])];
    visit(shape.x - dx, shape.y - dy);
    visit(shape.x + dx, shape.y + dy);
  } else {
    visit(shape.x, shape.y);
  }
}
