/** From cells to coordinates and back, and a good cell to stand for a zone or a bay. */

import type { GridShape } from '../../model/maps.ts';
import type { PointM, PolygonM } from '../../model/scene-file.ts';

/** Column and row from the lower left, counted from 1 as people do. */
export function cellPlace(grid: GridShape, cell: number): { readonly column: number; readonly row: number } {
  return { column: (cell % grid.columns) + 1, row: Math.floor(cell / grid.columns) + 1 };
}

/** Centre of a cell, local coordinates [m]. */
export function cellCentre(grid: GridShape, cell: number): PointM {
  const column = cell % grid.columns;
  const row = Math.floor(cell / grid.columns);
  return [grid.x0M + (column + 0.5) * grid.cellM, grid.y0M + (row + 0.5) * grid.cellM];
}

/** Cell at a local point [m]; null outside the grid. */
export function cellAt(grid: GridShape, [x, y]: PointM): number | null {
  const column = Math.floor((x - grid.x0M) / grid.cellM);
  const row = Math.floor((y - grid.y0M) / grid.cellM);
  if (column < 0 || row < 0 || column >= grid.columns || row >= grid.rows) return null;
  return row * grid.columns + column;
}

/** File coordinates to local ones [m]. */
export function toLocal([x, y]: PointM, [originX, originY]: PointM): PointM {
  return [x - originX, y - originY];
}

export interface Box {
  readonly min: PointM;
  readonly max: PointM;
}

/** Least upright rectangle around points. */
export function boxOf(points: PolygonM): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
}

/** Longer side of a box [m]. */
export function boxSizeM({ min, max }: Box): number {
  return Math.max(max[0] - min[0], max[1] - min[1]);
}

/** Even-odd rule; a point on the edge may count either way. */
export function isInside([x, y]: PointM, ring: PolygonM): boolean {
  let inside = false;
  ring.forEach(([x1, y1], i) => {
    const [x2, y2] = ring[(i + 1) % ring.length] as PointM;
    if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) inside = !inside;
  });
  return inside;
}

const SEARCH_STEPS = 24;

/** A point inside a polygon with holes, as near to the middle of its box as a coarse search finds; null for slivers. */
export function innerPoint(outline: PolygonM, holes: readonly PolygonM[] = []): PointM | null {
  const { min, max } = boxOf(outline);
  const middle: PointM = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2];
  let best: PointM | null = null;
  let bestDistance = Number.POSITIVE_INFINITY;
  const isIn = (point: PointM) => isInside(point, outline) && !holes.some((hole) => isInside(point, hole));
  if (isIn(middle)) return middle;
  for (let i = 0; i < SEARCH_STEPS; i++) {
    for (let j = 0; j < SEARCH_STEPS; j++) {
      const point: PointM = [
        min[0] + ((i + 0.5) / SEARCH_STEPS) * (max[0] - min[0]),
        min[1] + ((j + 0.5) / SEARCH_STEPS) * (max[1] - min[1]),
      ];
      const distance = Math.hypot(point[0] - middle[0], point[1] - middle[1]);
      if (distance < bestDistance && isIn(point)) {
        best = point;
        bestDistance = distance;
      }
    }
  }
  return best;
}
