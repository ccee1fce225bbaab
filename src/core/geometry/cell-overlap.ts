/**
 * Exact area common to several regions within one cell. Needed only where more than one boundary passes through a
 * cell: there the product of the shares is wrong by up to a quarter of the cell.
 */

import type { Region, Ring } from '../../model/deck-input.ts';
import type { GridShape } from '../../model/maps.ts';
import { clipConvex, clipSide, polygonAreaM2 } from './convex-clip.ts';
import { ringsOf } from './ring.ts';

/** Signed triangles (fan around the square's centre) whose sum is the region's indicator within the square; 6 numbers and a sign each. */
interface Fan {
  readonly corners: number[];
  readonly signs: number[];
}

/**
 * Share of a cell that lies in all the regions at once.
 * @param grid - grid [m]
 * @param cell - index of the cell [-]
 * @param regions - one or more regions, local [m]
 * @returns share, 0 … 1 [-]
 * @source none: geometry; a simple polygon's indicator is the signed sum of its fan triangles, and the product of sums is the sum of products
 */
export function sharedInCell(grid: GridShape, cell: number, regions: readonly Region[]): number {
  const column = cell % grid.columns;
  const row = (cell - column) / grid.columns;
  return sharedInSquare(grid.x0M + (column + 0.5) * grid.cellM, grid.y0M + (row + 0.5) * grid.cellM, grid.cellM, regions);
}

/**
 * Share of an upright square that lies in all the regions at once.
 * @param x - centre of the square, local [m]
 * @param y - centre of the square, local [m]
 * @param sideM - side of the square [m]
 * @param regions - one or more regions, local [m]
 * @returns share, 0 … 1 [-]
 * @source none: geometry; as for a cell
 */
export function sharedInSquare(x: number, y: number, sideM: number, regions: readonly Region[]): number {
  const fans = regions.map((region) => fanInSquare(region, x, y, sideM));
  const area = fanProduct(fans, 0, null, 1);
  return Math.min(1, Math.max(0, area));
}

function fanProduct(fans: readonly Fan[], depth: number, clip: readonly number[] | null, sign: number): number {
  if (depth === fans.length) return sign * Math.abs(polygonAreaM2(clip as readonly number[]));
  const fan = fans[depth];
  let sum = 0;
  for (let i = 0; i < fan.signs.length; i++) {
    const triangle = fan.corners.slice(i * 6, i * 6 + 6);
    const common = clip === null ? triangle : clipConvex(clip, triangle);
    if (common.length >= 6) sum += fanProduct(fans, depth + 1, common, sign * fan.signs[i]);
  }
  return sum;
}

/** The region cut to the square, in units of its side around its centre, as signed counter-clockwise triangles. */
function fanInSquare(region: Region, x: number, y: number, sideM: number): Fan {
  const fan: Fan = { corners: [], signs: [] };
  for (const ring of ringsOf(region)) {
    const cut = clipRingToSquare(ring, x, y, sideM);
    const n = cut.length;
    for (let i = 0, j = n - 2; i < n; j = i, i += 2) {
      const ax = cut[j];
      const ay = cut[j + 1];
      const bx = cut[i];
      const by = cut[i + 1];
      const cross = ax * by - bx * ay;
      if (cross > 0) fan.corners.push(0, 0, ax, ay, bx, by);
      else if (cross < 0) fan.corners.push(0, 0, bx, by, ax, ay);
      else continue;
      fan.signs.push(cross > 0 ? 1 : -1);
    }
  }
  return fan;
}

/** Ring cut to the square (Sutherland and Hodgman, one side after the other), in units of its side, centre at the origin. */
function clipRingToSquare(ring: Ring, cx: number, cy: number, sideM: number): number[] {
  let points: number[] = [];
  for (let i = 0; i < ring.length; i += 2) points.push((ring[i] - cx) / sideM, (ring[i + 1] - cy) / sideM);
  points = clipSide(points, 1, 0, 0.5);
  points = clipSide(points, -1, 0, 0.5);
  points = clipSide(points, 0, 1, 0.5);
  return clipSide(points, 0, -1, 0.5);
}
