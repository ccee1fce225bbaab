/** Vertices and edges of shapes sorted into squares, so that those near a place are found without looking at all. */

import type { PointM } from '../model/scene-file.ts';
import type { PlanShape } from './plan-shapes.ts';
import type { ListRef } from './point-lists.ts';
import type { EdgeRef, VertexRef } from './shared-vertices.ts';

export interface IndexedVertex extends VertexRef {
  readonly at: PointM;
}

export interface Near<T> {
  readonly item: T;
  readonly distanceM: number;
}

/** Squares along the longer side. */
const MOST_SQUARES = 256;
const LEAST_SQUARE_M = 0.05;

export class EdgeSquares {
  readonly edges: number;
  readonly vertices: number;
  readonly #edges: EdgeRef[] = [];
  readonly #vertices: IndexedVertex[] = [];
  readonly #edgeSquares = new Map<number, number[]>();
  readonly #vertexSquares = new Map<number, number[]>();
  readonly #minX: number;
  readonly #minY: number;
  readonly #sideM: number;
  /** When each edge was last looked at, so that none comes twice from several squares. */
  readonly #looked: Uint32Array;
  #look = 0;

  constructor(shapes: readonly PlanShape[]) {
    for (const shape of shapes) this.#gather(shape);
    let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
    for (const { at } of this.#vertices) {
      minX = Math.min(minX, at[0]);
      minY = Math.min(minY, at[1]);
      maxX = Math.max(maxX, at[0]);
      maxY = Math.max(maxY, at[1]);
    }
    this.#minX = minX;
    this.#minY = minY;
    this.#sideM = Math.max(LEAST_SQUARE_M, (maxX - minX) / MOST_SQUARES, (maxY - minY) / MOST_SQUARES);
    for (const [i, { at }] of this.#vertices.entries()) put(this.#vertexSquares, this.#keyAt(at), i);
    for (const [i, edge] of this.#edges.entries()) for (const key of this.#keysAlong(edge)) put(this.#edgeSquares, key, i);
    this.edges = this.#edges.length;
    this.vertices = this.#vertices.length;
    this.#looked = new Uint32Array(this.edges);
  }

  /** Vertices within a distance, in no order. */
  verticesNear(at: PointM, withinM: number): Near<IndexedVertex>[] {
    const near: Near<IndexedVertex>[] = [];
    for (const i of this.#inSquares(this.#vertexSquares, at, withinM)) {
      const item = this.#vertices[i];
      const distanceM = Math.hypot(item.at[0] - at[0], item.at[1] - at[1]);
      if (distanceM <= withinM) near.push({ item, distanceM });
    }
    return near;
  }

  /** Edges within a distance, in no order. */
  edgesNear(at: PointM, withinM: number): Near<EdgeRef>[] {
    const near: Near<EdgeRef>[] = [];
    this.#look++;
    for (const i of this.#inSquares(this.#edgeSquares, at, withinM)) {
      if (this.#looked[i] === this.#look) continue;
      this.#looked[i] = this.#look;
      const item = this.#edges[i];
      const distanceM = distanceToEdge(at, item);
      if (distanceM <= withinM) near.push({ item, distanceM });
    }
    return near;
  }

  #gather({ part, id, piece, form, points, holes }: PlanShape): void {
    const ref: ListRef = { part, id, ...(piece === undefined ? {} : { piece }) };
    this.#gatherList(ref, points, form === 'area');
    for (const [i, hole] of (holes ?? []).entries()) this.#gatherList({ part, id, piece: i }, hole, true);
  }

  #gatherList(ref: ListRef, points: PlanShape['points'], closed: boolean): void {
    const flat = points.map(([x, y]): PointM => [x, y]);
    for (const [index, at] of flat.entries()) {
      this.#vertices.push({ ...ref, index, at });
      const next = flat[index + 1] ?? (closed ? flat[0] : undefined);
      if (next !== undefined && (next[0] !== at[0] || next[1] !== at[1])) this.#edges.push({ ...ref, edge: index, a: at, b: next });
    }
  }

  #column(x: number): number {
    return Math.min(MOST_SQUARES, Math.max(0, Math.floor((x - this.#minX) / this.#sideM)));
  }

  #row(y: number): number {
    return Math.min(MOST_SQUARES, Math.max(0, Math.floor((y - this.#minY) / this.#sideM)));
  }

  #keyAt([x, y]: PointM): number {
    return this.#column(x) * ROWS + this.#row(y);
  }

  /** Squares that an edge passes: column by column, the rows between its heights at both sides of the column. */
  *#keysAlong({ a, b }: EdgeRef): Generator<number> {
    const [left, right] = a[0] <= b[0] ? [a, b] : [b, a];
    const rise = right[0] > left[0] ? (right[1] - left[1]) / (right[0] - left[0]) : 0;
    const last = this.#column(right[0]);
    for (let column = this.#column(left[0]); column <= last; column++) {
      const fromX = Math.max(left[0], this.#minX + column * this.#sideM);
      const toX = Math.min(right[0], this.#minX + (column + 1) * this.#sideM);
      const heights = left[0] === right[0] ? [left[1], right[1]] : [left[1] + rise * (fromX - left[0]), left[1] + rise * (toX - left[0])];
      const [low, high] = [this.#row(Math.min(...heights)), this.#row(Math.max(...heights))];
      for (let row = low; row <= high; row++) yield column * ROWS + row;
    }
  }

  *#inSquares(squares: ReadonlyMap<number, readonly number[]>, [x, y]: PointM, withinM: number): Generator<number> {
    // A hair more: rounding may have put an edge into the square beside.
    const reach = withinM + this.#sideM * 1e-6;
    const [firstColumn, lastColumn] = [this.#column(x - reach), this.#column(x + reach)];
    const [firstRow, lastRow] = [this.#row(y - reach), this.#row(y + reach)];
    for (let column = firstColumn; column <= lastColumn; column++) {
      for (let row = firstRow; row <= lastRow; row++) yield* squares.get(column * ROWS + row) ?? [];
    }
  }
}

const ROWS = MOST_SQUARES + 1;

function put(squares: Map<number, number[]>, key: number, item: number): void {
  const square = squares.get(key);
  if (square) square.push(item);
  else squares.set(key, [item]);
}

/**
 * The point of an edge nearest to a place. On an edge along an axis, that coordinate stays exact.
 * @param at - place
 * @param edge - its ends
 * @returns the point
 */
export function nearestOnEdge(at: PointM, { a, b }: Pick<EdgeRef, 'a' | 'b'>): PointM {
  const [alongX, alongY] = [b[0] - a[0], b[1] - a[1]];
  const share = ((at[0] - a[0]) * alongX + (at[1] - a[1]) * alongY) / (alongX * alongX + alongY * alongY);
  if (share <= 0) return a;
  return share >= 1 ? b : [a[0] + share * alongX, a[1] + share * alongY];
}

export function distanceToEdge(at: PointM, edge: Pick<EdgeRef, 'a' | 'b'>): number {
  const [x, y] = nearestOnEdge(at, edge);
  return Math.hypot(x - at[0], y - at[1]);
}
