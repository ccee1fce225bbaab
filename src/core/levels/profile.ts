/** Levels of a surface along a straight piece, exact: linear between the places where the piece crosses a side of the net. */

import { type Surface, surfaceLevelM, triangleSlopes } from './surface.ts';

/** Levels along a straight piece, linear between the places given. */
export interface LevelProfile {
  /** Shares of the piece, rising from 0 to 1. */
  readonly at: readonly number[];
  readonly levelsM: readonly number[];
}

/** Places nearer than this share of the piece are one. */
const ONE_PLACE = 1e-12;
/** A piece this little outside a side still counts as on it, so that a piece along a side is not lost between two triangles [m]. */
const ON_SIDE_M = 1e-9;

/**
 * Levels along a straight piece.
 * @param surface - surface [m]
 * @param piece - ax ay bx by, local [m]
 * @returns shares of the piece and levels there [m]
 * @source none: geometry
 */
export function levelProfile(surface: Surface, piece: ArrayLike<number>): LevelProfile {
  const ends: [number, number][] = [
    [0, surfaceLevelM(surface, piece[0], piece[1])],
    [1, surfaceLevelM(surface, piece[2], piece[3])],
  ];
  if (surface.kind === 'net') {
    const { points, triangles } = surface;
    for (let t = 0; t < triangles.length; t += 3) {
      const corners = [triangles[t] * 3, triangles[t + 1] * 3, triangles[t + 2] * 3];
      if (isAside(points, corners, piece)) continue;
      for (const end of triangleEnds(points, corners, piece)) ends.push(end);
    }
  }
  ends.sort((p, q) => p[0] - q[0]);
  const kept = ends.filter(([share], i) => i === 0 || share - ends[i - 1][0] > ONE_PLACE);
  return { at: kept.map(([share]) => share), levelsM: kept.map(([, level]) => level) };
}

/** Whether a triangle lies wholly left, right, above or below of the piece: most do, and this is told quickly. */
function isAside(points: Float64Array, [a, b, c]: readonly number[], piece: ArrayLike<number>): boolean {
  for (let axis = 0; axis < 2; axis++) {
    const low = Math.min(piece[axis], piece[axis + 2]) - ON_SIDE_M;
    const high = Math.max(piece[axis], piece[axis + 2]) + ON_SIDE_M;
    const [p, q, r] = [points[a + axis], points[b + axis], points[c + axis]];
    if ((p < low && q < low && r < low) || (p > high && q > high && r > high)) return true;
  }
  return false;
}

/** Where the piece enters and leaves one triangle, with the levels there. */
function triangleEnds(points: Float64Array, corners: readonly number[], piece: ArrayLike<number>): [number, number][] {
  let enter = 0;
  let leave = 1;
  for (let e = 0; e < 3; e++) {
    const p = corners[e];
    const q = corners[e === 2 ? 0 : e + 1];
    const sx = points[q] - points[p];
    const sy = points[q + 1] - points[p + 1];
    const length = Math.hypot(sx, sy);
    const from = (sx * (piece[1] - points[p + 1]) - sy * (piece[0] - points[p])) / length;
    const to = (sx * (piece[3] - points[p + 1]) - sy * (piece[2] - points[p])) / length;
    if (from < -ON_SIDE_M && to < -ON_SIDE_M) return [];
    if (Math.abs(to - from) <= ON_SIDE_M) continue;
    const share = from / (from - to);
    if (from < to) enter = Math.max(enter, share);
    else leave = Math.min(leave, share);
  }
  if (enter > leave) return [];
  const [a, b, c] = corners;
  const [slopeX, slopeY] = triangleSlopes(points, a, b, c);
  const level = (share: number): number =>
    points[a + 2] +
    slopeX * (piece[0] + share * (piece[2] - piece[0]) - points[a]) +
    slopeY * (piece[1] + share * (piece[3] - piece[1]) - points[a + 1]);
  return [
    [enter, level(enter)],
    [leave, level(leave)],
  ];
}

/**
 * Level at one place of a profile.
 * @param profile - levels along a piece [m]
 * @param share - share of the piece, 0 … 1 [-]
 * @returns level [m]
 * @source none: geometry
 */
export function profileLevelM(profile: LevelProfile, share: number): number {
  const { at, levelsM } = profile;
  let i = 1;
  while (i < at.length - 1 && at[i] < share) i++;
  return levelsM[i - 1] + ((share - at[i - 1]) / (at[i] - at[i - 1])) * (levelsM[i] - levelsM[i - 1]);
}
