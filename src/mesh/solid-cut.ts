/** Upright cuts through closed solids: outlines of what the plane meets, part by part. */

import type { SolidMesh } from '../model/picture.ts';
import type { SectionPoint } from '../model/section-drawing.ts';
import type { SectionLeg } from './section-line.ts';

/** One closed outline of a part's cut. */
export interface CutLoop {
  readonly part: number;
  /** Along the whole line and height. */
  readonly outline: readonly SectionPoint[];
}

/** A loop of less area has none [m²]. */
const NO_AREA_M2 = 1e-9;

interface Segment {
  readonly from: SectionPoint;
  readonly to: SectionPoint;
}

/**
 * Cuts the solids of some parts.
 * @param solids - closed solids [m]
 * @param wanted - whether a part is to be cut, by its index [-]
 * @param leg - straight piece of the section's line [m]
 * @returns closed outlines within the leg [m]
 * @source none: geometry
 */
export function cutSolids(solids: SolidMesh, wanted: (part: number) => boolean, leg: SectionLeg): CutLoop[] {
  const byPart = new Map<number, Segment[]>();
  const { triangles, parts } = solids;
  for (let t = 0; t < triangles.length; t += 3) {
    const part = parts[triangles[t]];
    if (!wanted(part)) continue;
    const segment = cutTriangle(solids, t, leg);
    if (segment === null) continue;
    const known = byPart.get(part);
    if (known) known.push(segment);
    else byPart.set(part, [segment]);
  }
  return [...byPart].flatMap(([part, segments]) =>
    loopsOf(segments).flatMap((loop) => {
      const within = clipped(clipped(loop, 1, leg.startM), -1, -leg.startM - leg.lengthM);
      return outlineAreaM2(within) > NO_AREA_M2 ? [{ part, outline: within }] : [];
    }),
  );
}

/** The cut of one triangle, directed so that the cuts of a closed solid make closed loops. */
function cutTriangle({ positions, triangles }: SolidMesh, t: number, { plane, startM }: SectionLeg): Segment | null {
  const leftOf = (v: number) => plane.dirX * (positions[3 * v + 1] - plane.y) - plane.dirY * (positions[3 * v] - plane.x);
  const crossing = (p: number, q: number): SectionPoint => {
    // The same end first in both triangles of an edge, so that they find the same point to the bit.
    const [a, b] = isBefore(positions, p, q) ? [p, q] : [q, p];
    const share = leftOf(a) / (leftOf(a) - leftOf(b));
    const at = (axis: number) => positions[3 * a + axis] + share * (positions[3 * b + axis] - positions[3 * a + axis]);
    return [startM + plane.dirX * (at(0) - plane.x) + plane.dirY * (at(1) - plane.y), at(2)];
  };
  let from: SectionPoint | null = null;
  let to: SectionPoint | null = null;
  for (let e = 0; e < 3; e++) {
    const p = triangles[t + e];
    const q = triangles[t + ((e + 1) % 3)];
    const [pLeft, qLeft] = [leftOf(p) > 0, leftOf(q) > 0];
    if (pLeft && !qLeft) from = crossing(p, q);
    if (!pLeft && qLeft) to = crossing(p, q);
  }
  if (from === null || to === null || (from[0] === to[0] && from[1] === to[1])) return null;
  return { from, to };
}

function isBefore(positions: Float32Array, p: number, q: number): boolean {
  for (let axis = 0; axis < 3; axis++) {
    const d = positions[3 * p + axis] - positions[3 * q + axis];
    if (d !== 0) return d < 0;
  }
  return p < q;
}

function loopsOf(segments: readonly Segment[]): SectionPoint[][] {
  const keyOf = ([along, height]: SectionPoint) => `${along} ${height}`;
  const leaving = new Map<string, Segment[]>();
  for (const segment of segments) {
    const key = keyOf(segment.from);
    const known = leaving.get(key);
    if (known) known.push(segment);
    else leaving.set(key, [segment]);
  }
  const loops: SectionPoint[][] = [];
  for (const first of segments) {
    const loop: SectionPoint[] = [];
    let next = leaving.get(keyOf(first.from))?.pop();
    while (next !== undefined) {
      loop.push(next.from);
      next = leaving.get(keyOf(next.to))?.pop();
    }
    if (loop.length > 2) loops.push(withoutStraight(loop));
  }
  return loops;
}

/** Points on a straight line between their neighbours add nothing. */
function withoutStraight(loop: readonly SectionPoint[]): SectionPoint[] {
  const kept = loop.filter((at, i) => {
    const before = loop[(i + loop.length - 1) % loop.length];
    const after = loop[(i + 1) % loop.length];
    return Math.abs((at[0] - before[0]) * (after[1] - at[1]) - (at[1] - before[1]) * (after[0] - at[0])) > NO_AREA_M2;
  });
  return kept.length > 2 ? kept : [...loop];
}

/** The part of an outline where sign · along ≥ limit. */
function clipped(loop: readonly SectionPoint[], sign: 1 | -1, limit: number): SectionPoint[] {
  const out: SectionPoint[] = [];
  loop.forEach((at, i) => {
    const before = loop[(i + loop.length - 1) % loop.length];
    const [d, dBefore] = [sign * at[0] - limit, sign * before[0] - limit];
    if (d >= 0 !== dBefore >= 0) out.push([sign * limit, before[1] + (dBefore / (dBefore - d)) * (at[1] - before[1])]);
    if (d >= 0) out.push(at);
  });
  return out;
}

/**
 * Area within an outline.
 * @param outline - closed, either way round [m]
 * @returns area, never negative [m²]
 * @source none: geometry
 */
export function outlineAreaM2(outline: readonly SectionPoint[]): number {
  let twice = 0;
  outline.forEach(([x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length];
    twice += x * nextY - nextX * y;
  });
  return Math.abs(twice) / 2;
}
