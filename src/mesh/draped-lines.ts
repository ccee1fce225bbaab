/** Lines laid on a surface: points added wherever the surface changes direction below them. */

import { boundsOf } from '../core/geometry/ring.ts';
import { type Surface, surfaceLevelM } from '../core/levels/surface.ts';
import { surfaceWithin } from './surface-part.ts';

/** Crossings nearer than this share of a segment are one [-]. */
const SAME_SHARE = 1e-9;

/**
 * A line with a point wherever it crosses a crease of the surface.
 * @param line - x y per point [m]
 * @param surface - surface [m]
 * @returns x y z per point, on the surface [m]
 * @source none: geometry
 */
export function drapedLine(line: Float64Array, surface: Surface): Float64Array {
  const part = surfaceWithin(surface, boundsOf(line));
  const xy: number[] = [line[0], line[1]];
  for (let i = 2; i < line.length; i += 2) {
    const [ax, ay, bx, by] = line.subarray(i - 2, i + 2);
    for (const u of crossings([ax, ay, bx, by], part.creases)) xy.push(ax + u * (bx - ax), ay + u * (by - ay));
    xy.push(bx, by);
  }
  const out = new Float64Array((xy.length / 2) * 3);
  for (let i = 0; i < xy.length / 2; i++) {
    out[3 * i] = xy[2 * i];
    out[3 * i + 1] = xy[2 * i + 1];
    out[3 * i + 2] = surfaceLevelM(part.surface, xy[2 * i], xy[2 * i + 1]);
  }
  return out;
}

/** Shares of the way along a segment where it crosses lines, rising. */
function crossings(segment: readonly [number, number, number, number], lines: readonly number[]): number[] {
  const [ax, ay, bx, by] = segment;
  const shares: number[] = [];
  for (let i = 0; i < lines.length; i += 4) {
    const ex = lines[i + 2] - lines[i];
    const ey = lines[i + 3] - lines[i + 1];
    const det = (bx - ax) * ey - (by - ay) * ex;
    const u = ((lines[i] - ax) * ey - (lines[i + 1] - ay) * ex) / det;
    const w = ((lines[i] - ax) * (by - ay) - (lines[i + 1] - ay) * (bx - ax)) / det;
    if (u > 0 && u < 1 && w >= 0 && w <= 1) shares.push(u);
  }
  shares.sort((p, q) => p - q);
  // Creases that meet on the line are one point.
  return shares.filter((u, i) => i === 0 || u - shares[i - 1] > SAME_SHARE);
}
