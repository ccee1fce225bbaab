/**
 * Surfaces of levels: planes, and nets of triangles that go on outside by the level of the nearest point on their
 * boundary. That extension is built from triangles too (a flat strip off every boundary edge, a flat fan round every
 * corner), so that cells, meshes and sections all read the same surface.
 */

import type { GridShape } from '../../model/maps.ts';
import type { CellBlock } from '../geometry/grid.ts';

export interface PlaneSurface {
  readonly kind: 'plane';
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Rise per metre [-]. */
  readonly slopeX: number;
  readonly slopeY: number;
}

export interface NetSurface {
  readonly kind: 'net';
  /** x y z per point, local [m]. */
  readonly points: Float64Array;
  /** Three indices per triangle, counter-clockwise; the net first, then its extension. */
  readonly triangles: Uint32Array;
  /** How many of the triangles are the net itself. */
  readonly netTriangles: number;
  /** Boundary of the net, x y per point, counter-clockwise; fewer than three points for a net without area. */
  readonly boundary: Float64Array;
}

export type Surface = PlaneSurface | NetSurface;

/**
 * A level plane.
 * @param z - level [m]
 * @returns surface [m]
 * @source none: geometry
 */
export function levelSurface(z: number): PlaneSurface {
  return { kind: 'plane', x: 0, y: 0, z, slopeX: 0, slopeY: 0 };
}

/**
 * Levels of a surface at the centres of a block of cells.
 * @param surface - surface [m]
 * @param grid - grid [m]
 * @param block - first and end column and row of the block [-]
 * @param out - receives the levels, row by row of the whole grid [m]
 * @returns the same array [m]
 * @source none: geometry
 */
export function sampleSurface(surface: Surface, grid: GridShape, block: CellBlock, out: Float64Array): Float64Array {
  if (surface.kind === 'plane') {
    for (let row = block.row0; row < block.row1; row++) {
      const dy = grid.y0M + (row + 0.5) * grid.cellM - surface.y;
      for (let column = block.column0; column < block.column1; column++) {
        const dx = grid.x0M + (column + 0.5) * grid.cellM - surface.x;
        out[row * grid.columns + column] = surface.z + surface.slopeX * dx + surface.slopeY * dy;
      }
    }
    return out;
  }
  for (let t = 0; t < surface.triangles.length; t += 3) sampleTriangle(surface, t, grid, block, out);
  return out;
}

/** Cells whose centre lies in one triangle; half-open, so that each centre on a shared edge is written once or equally. */
function sampleTriangle(net: NetSurface, t: number, grid: GridShape, block: CellBlock, out: Float64Array): void {
  const { points, triangles } = net;
  const a = triangles[t] * 3;
  const b = triangles[t + 1] * 3;
  const c = triangles[t + 2] * 3;
  const lowY = Math.min(points[a + 1], points[b + 1], points[c + 1]);
  const highY = Math.max(points[a + 1], points[b + 1], points[c + 1]);
  const row0 = Math.max(block.row0, Math.ceil((lowY - grid.y0M) / grid.cellM - 0.5 - 1e-9));
  const row1 = Math.min(block.row1 - 1, Math.floor((highY - grid.y0M) / grid.cellM - 0.5 + 1e-9));
  if (row0 > row1) return;
  const [slopeX, slopeY] = triangleSlopes(points, a, b, c);
  const corners = [a, b, c];
  for (let row = row0; row <= row1; row++) {
    const y = grid.y0M + (row + 0.5) * grid.cellM;
    let left = Infinity;
    let right = -Infinity;
    for (let e = 0; e < 3; e++) {
      const p = corners[e];
      const q = corners[e === 2 ? 0 : e + 1];
      const yp = points[p + 1];
      const yq = points[q + 1];
      if (yp === yq) {
        if (Math.abs(yp - y) > 1e-9 * grid.cellM) continue;
        left = Math.min(left, points[p], points[q]);
        right = Math.max(right, points[p], points[q]);
        continue;
      }
      const u = (y - yp) / (yq - yp);
      if (u < -1e-12 || u > 1 + 1e-12) continue;
      const x = points[p] + u * (points[q] - points[p]);
      if (x < left) left = x;
      if (x > right) right = x;
    }
    // A hair more on both sides: at an edge both triangles have the same level, and no centre may be missed.
    const column0 = Math.max(block.column0, Math.ceil((left - grid.x0M) / grid.cellM - 0.5 - 1e-9));
    const column1 = Math.min(block.column1 - 1, Math.floor((right - grid.x0M) / grid.cellM - 0.5 + 1e-9));
    for (let column = column0; column <= column1; column++) {
      const x = grid.x0M + (column + 0.5) * grid.cellM;
      out[row * grid.columns + column] = points[a + 2] + slopeX * (x - points[a]) + slopeY * (y - points[a + 1]);
    }
  }
}

/**
 * Rise of a triangle.
 * @param points - x y z per point [m]
 * @param a - index of the first corner's x [-]
 * @param b - index of the second corner's x [-]
 * @param c - index of the third corner's x [-]
 * @returns rise per metre along x and along y [-]
 * @source none: geometry
 */
export function triangleSlopes(points: Float64Array, a: number, b: number, c: number): [number, number] {
  const ux = points[b] - points[a];
  const uy = points[b + 1] - points[a + 1];
  const uz = points[b + 2] - points[a + 2];
  const vx = points[c] - points[a];
  const vy = points[c + 1] - points[a + 1];
  const vz = points[c + 2] - points[a + 2];
  const det = ux * vy - uy * vx;
  return [(uz * vy - vz * uy) / det, (vz * ux - uz * vx) / det];
}

/**
 * Level of a surface at one point.
 * @param surface - surface [m]
 * @param x - point, local [m]
 * @param y - point, local [m]
 * @returns level [m]
 * @source none: geometry
 */
export function surfaceLevelM(surface: Surface, x: number, y: number): number {
  if (surface.kind === 'plane') return surface.z + surface.slopeX * (x - surface.x) + surface.slopeY * (y - surface.y);
  const { points, triangles } = surface;
  let best = -Infinity;
  let level = Number.NaN;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t] * 3;
    const b = triangles[t + 1] * 3;
    const c = triangles[t + 2] * 3;
    const twice = cross(points, a, b, points[c], points[c + 1]);
    if (twice <= 0) continue;
    const wa = cross(points, b, c, x, y) / twice;
    const wb = cross(points, c, a, x, y) / twice;
    const wc = 1 - wa - wb;
    const least = Math.min(wa, wb, wc);
    if (least <= best) continue;
    best = least;
    const [slopeX, slopeY] = triangleSlopes(points, a, b, c);
    level = points[a + 2] + slopeX * (x - points[a]) + slopeY * (y - points[a + 1]);
    if (least >= 0) break;
  }
  return level;
}

function cross(points: Float64Array, p: number, q: number, x: number, y: number): number {
  return (points[q] - points[p]) * (y - points[p + 1]) - (x - points[p]) * (points[q + 1] - points[p + 1]);
}

/**
 * The same surface on another datum.
 * @param surface - surface [m]
 * @param datumM - level that becomes 0 [m]
 * @returns surface, all levels less the datum [m]
 * @source none: arithmetic
 */
export function onDatum(surface: Surface, datumM: number): Surface {
  if (surface.kind === 'plane') return { ...surface, z: surface.z - datumM };
  const points = surface.points.slice();
  for (let i = 2; i < points.length; i += 3) points[i] -= datumM;
  return { ...surface, points };
}
