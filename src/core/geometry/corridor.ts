/** The ground a vehicle covers on its way: convex pieces along a line, mitred at its corners. */

import { clipSide } from './convex-clip.ts';

/** Turns below this are straight on [-]. */
const STRAIGHT = 1e-9;

/**
 * Pieces of a strip along a line, one per segment, cut at the bisectors of its corners so that none is counted twice.
 * Where a corner is too sharp for its short neighbours the pieces overlap instead: ground is never left out.
 * @param line - middle of the strip, x y per vertex, no vertex twice running [m]
 * @param widthM - width of the strip [m]
 * @returns convex rings, counter-clockwise, x y per vertex [m]
 * @source none: geometry
 */
export function corridorPieces(line: Float64Array, widthM: number): number[][] {
  const pieces: number[][] = [];
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [ax, ay, bx, by] = line.subarray(i, i + 4);
    const lengthM = Math.hypot(bx - ax, by - ay);
    const ux = (bx - ax) / lengthM;
    const uy = (by - ay) / lengthM;
    const start = i > 0 ? cornerAt(line, i, widthM) : null;
    const end = i + 4 < line.length ? cornerAt(line, i + 2, widthM) : null;
    const h = widthM / 2;
    const [sx, sy] = [ax - ux * (start?.beyondM ?? 0), ay - uy * (start?.beyondM ?? 0)];
    const [ex, ey] = [bx + ux * (end?.beyondM ?? 0), by + uy * (end?.beyondM ?? 0)];
    let piece = [sx + uy * h, sy - ux * h, ex + uy * h, ey - ux * h, ex - uy * h, ey + ux * h, sx - uy * h, sy + ux * h];
    if (start?.cut) piece = clipSide(piece, -start.cut[0], -start.cut[1], -(start.cut[0] * ax + start.cut[1] * ay));
    if (end?.cut) piece = clipSide(piece, end.cut[0], end.cut[1], end.cut[0] * bx + end.cut[1] * by);
    pieces.push(piece);
  }
  return pieces;
}

/** How far the strips go on beyond a corner, and the direction across which they are cut there; no cut where it would leave ground out. */
function cornerAt(line: Float64Array, i: number, widthM: number): { beyondM: number; cut: [number, number] | null } {
  const [px, py, x, y, nx, ny] = line.subarray(i - 2, i + 4);
  const before = Math.hypot(x - px, y - py);
  const after = Math.hypot(nx - x, ny - y);
  const mx = (x - px) / before + (nx - x) / after;
  const my = (y - py) / before + (ny - y) / after;
  // |m| is 2·cos of half the turn.
  const halfCos = Math.hypot(mx, my) / 2;
  if (halfCos < STRAIGHT) return { beyondM: widthM / 2, cut: null };
  const mitreM = (widthM / 2) * (Math.sqrt(Math.max(0, 1 - halfCos * halfCos)) / halfCos);
  return { beyondM: Math.min(mitreM, widthM), cut: mitreM <= Math.min(before, after) / 2 ? [mx, my] : null };
}
