/** A person on the finished surface: goes, climbs what one can climb, stops at edges, openings and whatever stands there. */

import type { Obstacle } from './obstacles.ts';
import type { SurfaceAt } from './top-index.ts';

/** Height of the eyes [m]. */
export const EYE_M = 1.6;
/** Highest step up and down [m]. */
const STEP_M = 0.4;
/** To any edge, wall or trunk [m]. */
const GIRTH_M = 0.3;
/** Longest way between two looks at the ground [m]. */
const LOOK_M = 0.15;

export interface Foot {
  readonly x: number;
  readonly y: number;
  /** Level of the ground [m]. */
  readonly zM: number;
  /** Clockwise from +y [°]. */
  readonly headingDeg: number;
  /** Upwards [°]. */
  readonly pitchDeg: number;
}

export interface Terrain {
  readonly surfaceAt: SurfaceAt;
  readonly obstacles: readonly Obstacle[];
}

/** Level one could stand on at a place, or null: too near an edge, an opening or a wall. */
function standM({ surfaceAt, obstacles }: Terrain, x: number, y: number, fromM: number): number | null {
  const middle = surfaceAt(x, y);
  if (middle === null || Math.abs(middle.zM - fromM) > STEP_M) return null;
  for (let k = 0; k < 8; k++) {
    const angle = (Math.PI * k) / 4;
    const at = surfaceAt(x + GIRTH_M * Math.cos(angle), y + GIRTH_M * Math.sin(angle));
    // Something higher beside one is a wall; something much lower an edge.
    if (at === null || Math.abs(at.zM - middle.zM) > STEP_M) return null;
  }
  return obstacles.some((obstacle) => obstacle.distanceM(x, y) < GIRTH_M) ? null : middle.zM;
}

/** One short step, along the obstacle where the straight way is shut. */
function stepped(terrain: Terrain, foot: Foot, dx: number, dy: number): Foot {
  for (const [sx, sy] of [
    [dx, dy],
    [dx, 0],
    [0, dy],
  ]) {
    if (sx === 0 && sy === 0) continue;
    const zM = standM(terrain, foot.x + sx, foot.y + sy, foot.zM);
    if (zM !== null) return { ...foot, x: foot.x + sx, y: foot.y + sy, zM };
  }
  return foot;
}

/**
 * Goes some way in plan, in short steps.
 * @param terrain - ground and what stands on it
 * @param foot - where one is
 * @param by - way [m]
 * @returns where one gets to
 */
export function walked(terrain: Terrain, foot: Foot, by: readonly [number, number]): Foot {
  const steps = Math.max(1, Math.ceil(Math.hypot(...by) / LOOK_M));
  let now = foot;
  for (let k = 0; k < steps; k++) now = stepped(terrain, now, by[0] / steps, by[1] / steps);
  return now;
}

/** Way ahead and aside in plan, for the way one looks [m]. */
export function heading(headingDeg: number, aheadM: number, asideM: number): readonly [number, number] {
  const a = (headingDeg * Math.PI) / 180;
  return [aheadM * Math.sin(a) + asideM * Math.cos(a), aheadM * Math.cos(a) - asideM * Math.sin(a)];
}

/**
 * The place nearest to a wanted one where a person can stand.
 * @param terrain - ground and what stands on it
 * @param at - wanted place [m]
 * @param headingDeg - way to look
 * @returns where one stands, or null where there is no such place within 30 m
 */
export function placed(terrain: Terrain, at: readonly [number, number], headingDeg: number): Foot | null {
  for (let ring = 0; ring <= 60; ring++) {
    const radiusM = ring * 0.5;
    const looks = ring === 0 ? 1 : 8 + 4 * ring;
    for (let k = 0; k < looks; k++) {
      const angle = (2 * Math.PI * k) / looks;
      const [x, y] = [at[0] + radiusM * Math.cos(angle), at[1] + radiusM * Math.sin(angle)];
      const top = terrain.surfaceAt(x, y);
      if (top === null || standM(terrain, x, y, top.zM) === null) continue;
      return { x, y, zM: top.zM, headingDeg, pitchDeg: -4 };
    }
  }
  return null;
}
