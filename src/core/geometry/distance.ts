/** True distances between points, lines and regions. */

import type { Region } from '../../model/deck-input.ts';
import { type Bounds, isInside, ringsOf } from './ring.ts';

/** How near two shapes come, and where on the second. */
export interface Nearest {
  readonly distanceM: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Point of a straight piece nearest to another point.
 * @param piece - ax ay bx by [m]
 * @param x - point [m]
 * @param y - point [m]
 * @returns distance and place on the piece [m]
 * @source none: geometry
 */
export function nearestOnPiece(piece: ArrayLike<number>, x: number, y: number): Nearest {
  const rx = piece[2] - piece[0];
  const ry = piece[3] - piece[1];
  const lengthSquared = rx * rx + ry * ry;
  const along = lengthSquared > 0 ? ((x - piece[0]) * rx + (y - piece[1]) * ry) / lengthSquared : 0;
  const share = Math.min(1, Math.max(0, along));
  const px = piece[0] + share * rx;
  const py = piece[1] + share * ry;
  return { distanceM: Math.hypot(x - px, y - py), x: px, y: py };
}

/**
 * Distance from a line or a point to a region, 0 where they touch, cross or lie inside.
 * @param line - x y per vertex; a single vertex is a point [m]
 * @param region - region [m]
 * @returns distance and the nearest place of the region [m]
 * @source none: geometry
 */
export function nearestOfRegion(line: ArrayLike<number>, region: Region): Nearest {
  if (isInside(region, line[0], line[1])) return { distanceM: 0, x: line[0], y: line[1] };
  let best: Nearest = { distanceM: Infinity, x: Number.NaN, y: Number.NaN };
  const last = Math.max(2, line.length - 2);
  for (const ring of ringsOf(region)) {
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const side = [ring[j], ring[j + 1], ring[i], ring[i + 1]];
      for (let k = 0; k < last; k += 2) {
        // A line of one vertex is a piece of no length.
        const next = Math.min(k + 2, line.length - 2);
        const found = nearestOfPieces([line[k], line[k + 1], line[next], line[next + 1]], side);
        if (found.distanceM < best.distanceM) best = found;
      }
    }
  }
  return best;
}

/** Two straight pieces that do not cross come nearest at an end of one of them. */
function nearestOfPieces(from: readonly number[], to: readonly number[]): Nearest {
  const crossing = crossingOf(from, to);
  if (crossing) return crossing;
  let best = nearestOnPiece(to, from[0], from[1]);
  const other = nearestOnPiece(to, from[2], from[3]);
  if (other.distanceM < best.distanceM) best = other;
  for (let end = 0; end < 4; end += 2) {
    const back = nearestOnPiece(from, to[end], to[end + 1]);
    if (back.distanceM < best.distanceM) best = { distanceM: back.distanceM, x: to[end], y: to[end + 1] };
  }
  return best;
}

function crossingOf(from: readonly number[], to: readonly number[]): Nearest | null {
  const share = crossingShare(from, to);
  if (share === null) return null;
  return { distanceM: 0, x: from[0] + share * (from[2] - from[0]), y: from[1] + share * (from[3] - from[1]) };
}

/**
 * Where one straight piece crosses another.
 * @param from - ax ay bx by [m]
 * @param to - ax ay bx by [m]
 * @returns share of the first piece, 0 … 1; null where they do not cross or run parallel [-]
 * @source none: geometry
 */
export function crossingShare(from: ArrayLike<number>, to: ArrayLike<number>): number | null {
  const rx = from[2] - from[0];
  const ry = from[3] - from[1];
  const sx = to[2] - to[0];
  const sy = to[3] - to[1];
  const det = rx * sy - ry * sx;
  if (det === 0) return null;
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const share = (dx * sy - dy * sx) / det;
  const other = (dx * ry - dy * rx) / det;
  return share >= 0 && share <= 1 && other >= 0 && other <= 1 ? share : null;
}

/**
 * Whether two upright boxes touch or overlap.
 * @param a - box [m]
 * @param b - box [m]
 * @returns true if they have a point in common [-]
 * @source none: geometry
 */
export function boundsMeet(a: Bounds, b: Bounds): boolean {
  return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}
