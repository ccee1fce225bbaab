/**
 * Exact area common to several regions within one cell. Needed only where more than one boundary passes through a
 * cell: there the product of the shares is wrong by up to a quarter of the cell.
 */

import type { Region, Ring } from '../../model/deck-input.ts';
import type { GridShape } from '../../model/maps.ts';
import { clipConvex, clipSide, polygonAreaM2 } from './convex-clip.ts';
import { ringsOf } from './ring.ts';

/** Signed triangles (fan around the cell's centre) whose sum is the region's indicator within the cell; 6 numbers and a sign each. */
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
  const left = grid.x0M + column * grid.cellM;
  const bottom = grid.y0M + row * grid.cellM;
  const fans = regions.map((region) => fanInCell(region, left, bottom, grid.cellM));
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

/** The region cut to the cell, in cell units around its centre, as signed counter-clockwise triangles. */
function fanInCell(region: Region, left: number, bottom: number, cellM: number): Fan {
  const fan: Fan = { corners: [], signs: [] };
  for (const ring of ringsOf(region)) {
    const cut = clipRingToCell(ring, left, bottom, cellM);
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

/** Ring cut to the cell (Sutherland and Hodgman, one side after the other), in cell units, centre at the origin. */
function clipRingToCell(ring: Ring, left: number, bottom: number, cellM: number): number[] {
  let points: number[] = [];
  const cx = left + cellM / 2;
  const cy = bottom + cellM / 2;
  for (let i = 0; i < ring.length; i += 2) points.push((ring[i] - cx) / cellM, (ring[i + 1] - cy) / cellM);
  points = clipSide(points, 1, 0, 0.5);
  points = clipSide(points, -1, 0, 0.5);
  points = clipSide(points, 0, 1, 0.5);
  return clipSide(points, 0, -1, 0.5);
}
