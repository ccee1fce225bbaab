/** The line of a section on the plan: its straight legs, and the stretches of it that lie in a region. */

import { isInside, ringsOf } from '../core/geometry/ring.ts';
import type { Region } from '../model/deck-input.ts';
import type { SectionSpan } from '../model/section-drawing.ts';
import type { SectionPlane } from './section.ts';

/** One straight piece of the line. */
export interface SectionLeg {
  readonly plane: SectionPlane;
  /** Distance of its start from the start of the line [m]. */
  readonly startM: number;
  readonly lengthM: number;
}

/** Points nearer than this are one [m]. */
const ONE_POINT_M = 1e-6;
/** What lies on a boundary is looked up this far to the left of the line [m]. */
const BESIDE_M = 1e-6;

/**
 * Legs of a line; points on one place count once.
 * @param line - points, local [m]
 * @returns legs in their order; none for a line without length [m]
 * @source none: geometry
 */
export function sectionLegs(line: readonly (readonly [number, number])[]): SectionLeg[] {
  const legs: SectionLeg[] = [];
  let startM = 0;
  let from = line[0];
  for (const to of line.slice(1)) {
    const lengthM = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (lengthM <= ONE_POINT_M) continue;
    legs.push({
      plane: { x: from[0], y: from[1], dirX: (to[0] - from[0]) / lengthM, dirY: (to[1] - from[1]) / lengthM },
      startM,
      lengthM,
    });
    startM += lengthM;
    from = to;
  }
  return legs;
}

/**
 * Stretches of the line inside a region. On a boundary, what lies left of the line counts.
 * @param legs - legs of the line [m]
 * @param region - region, local [m]
 * @returns stretches, rising and apart, measured along the whole line [m]
 * @source none: geometry
 */
export function spansInside(legs: readonly SectionLeg[], region: Region): SectionSpan[] {
  const spans: { fromM: number; toM: number }[] = [];
  for (const leg of legs) {
    const { x, y, dirX, dirY } = leg.plane;
    const places = [0, ...crossingsM(leg, region), leg.lengthM].sort((p, q) => p - q);
    for (let i = 1; i < places.length; i++) {
      if (places[i] - places[i - 1] <= ONE_POINT_M) continue;
      const middle = (places[i] + places[i - 1]) / 2;
      if (!isInside(region, x + middle * dirX - BESIDE_M * dirY, y + middle * dirY + BESIDE_M * dirX)) continue;
      const span = { fromM: leg.startM + places[i - 1], toM: leg.startM + places[i] };
      const last = spans.at(-1);
      if (last !== undefined && span.fromM - last.toM <= ONE_POINT_M) last.toM = span.toM;
      else spans.push(span);
    }
  }
  return spans;
}

/** Distances along a leg at which it meets the rings of a region; those of parallel sides are the ends of the sides. */
function crossingsM({ plane, lengthM }: SectionLeg, region: Region): number[] {
  const found: number[] = [];
  for (const ring of ringsOf(region)) {
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [aAlong, aLeft] = onPlane(plane, ring[j], ring[j + 1]);
      const [bAlong, bLeft] = onPlane(plane, ring[i], ring[i + 1]);
      if (aLeft > 0 === bLeft > 0) continue;
      const at = aAlong + (aLeft / (aLeft - bLeft)) * (bAlong - aAlong);
      if (at > 0 && at < lengthM) found.push(at);
    }
  }
  return found;
}

/**
 * A point seen from a section plane.
 * @param plane - plane [m]
 * @param x - point, local [m]
 * @param y - point, local [m]
 * @returns distance along the plane's direction and to its left, 0 for a point on it [m]
 * @source none: geometry
 */
export function onPlane(plane: SectionPlane, x: number, y: number): [number, number] {
  const dx = x - plane.x;
  const dy = y - plane.y;
  const left = plane.dirX * dy - plane.dirY * dx;
  return [plane.dirX * dx + plane.dirY * dy, Math.abs(left) <= ONE_POINT_M ? 0 : left];
}
