/**
 * Lanes for fire appliances as drawn: bends, widths by outer radius, transitions, gradients and steps of the finish.
 * Convention: a corner of the drawn line stands for the widest arc that fits, its tangents half of the shorter segment beside it;
 * the outer radius is that of the arc plus half the lane's width.
 */

import type { BendTable, FireTable } from '../../model/fire-access.ts';
import type { DeckSite } from './deck-site.ts';
import { finishedAlong } from './edges.ts';

/** Radii, widths and lengths this little off a limit are rounding [m]. */
const ROUNDING_M = 1e-6;
/** Turns below this are straight on [-]. */
const STRAIGHT = 1e-6;
/** Vertices closer than this are one: a double click while drawing is no bend [m]. */
const NEAR_M = 0.05;
/** Stretches shorter than this have no gradient [m]. */
const NO_STRETCH_M = 1e-3;

export interface Bend {
  /** Corner of the drawn line, local [m]. */
  readonly x: number;
  readonly y: number;
  readonly turnDeg: number;
  /** Longest tangents, and radius of the middle line and of the outer edge with them [m]. */
  readonly tangentM: number;
  readonly radiusM: number;
  readonly outerM: number;
  /** Length of the drawn line before and after the corner [m]. */
  readonly beforeM: number;
  readonly afterM: number;
}

/**
 * Bends of a lane.
 * @param drawn - middle of the lane, x y per vertex [m]
 * @param widthM - width of the lane [m]
 * @returns one bend per corner; a turn right back has the radius 0 [m]
 * @source none: geometry, by the convention above
 */
export function bendsOf(drawn: Float64Array, widthM: number): Bend[] {
  const line = apart(drawn);
  const lengths: number[] = [];
  for (let i = 0; i + 3 < line.length; i += 2) lengths.push(Math.hypot(line[i + 2] - line[i], line[i + 3] - line[i + 1]));
  const total = lengths.reduce((sum, length) => sum + length, 0);
  const bends: Bend[] = [];
  let beforeM = 0;
  for (let k = 1; k < lengths.length; k++) {
    beforeM += lengths[k - 1];
    const [px, py, x, y, nx, ny] = line.subarray(2 * k - 2, 2 * k + 4);
    const turn = Math.abs(Math.atan2((x - px) * (ny - y) - (y - py) * (nx - x), (x - px) * (nx - x) + (y - py) * (ny - y)));
    if (turn < STRAIGHT) continue;
    const tangentM = Math.min(lengths[k - 1], lengths[k]) / 2;
    const radiusM = Math.PI - turn < STRAIGHT ? 0 : tangentM / Math.tan(turn / 2);
    const turnDeg = (turn * 180) / Math.PI;
    bends.push({ x, y, turnDeg, tangentM, radiusM, outerM: radiusM + widthM / 2, beforeM, afterM: total - beforeM });
  }
  return bends;
}

/** Line without vertices that all but repeat the one before; its end stays where it is. */
function apart(line: Float64Array): Float64Array {
  const kept = [line[0], line[1]];
  const end = line.length - 2;
  for (let i = 2; i <= end; i += 2) {
    if (Math.hypot(line[i] - kept[kept.length - 2], line[i + 1] - kept[kept.length - 1]) >= NEAR_M) kept.push(line[i], line[i + 1]);
    else if (i === end && kept.length > 2) kept.splice(-2, 2, line[i], line[i + 1]);
  }
  return Float64Array.from(kept);
}

/**
 * Width that a bend needs.
 * @param table - widths by outer radius [m]
 * @param outerM - outer radius [m]
 * @returns least width; null where so tight a bend is not permitted [m]
 * @source the table's own
 */
export function bendWidthM(table: BendTable, outerM: number): number | null {
  if (outerM < table.leastOuterM - ROUNDING_M) return null;
  const row = table.rows.find(({ upToM }) => outerM <= upToM + ROUNDING_M);
  return row ? row.widthM : null;
}

/**
 * Width that a straight lane needs.
 * @param table - rule [m]
 * @param boundedM - length over which walls or the like bound it on both sides [m]
 * @returns least width [m]
 * @source the table's own
 */
export function straightWidthM(table: Pick<FireTable, 'straightM' | 'bounded'>, boundedM: number): number {
  const { bounded, straightM } = table;
  return bounded && boundedM > bounded.overM + ROUNDING_M ? bounded.value : straightM.value;
}

/**
 * Lane drawn before and after a bend, for the transition from straight to bend. The bend is taken as tight as the lane's width permits,
 * which leaves the most of the straight.
 * @param table - widths by outer radius [m]
 * @param bend - a bend of the lane [m]
 * @param widthM - width of the lane [m]
 * @returns the lesser of both lengths; null where the lane is too narrow for the bend at any radius it could have [m]
 * @source none: geometry
 */
export function drawnTransitionM(table: BendTable, bend: Bend, widthM: number): number | null {
  const fits = table.rows.findIndex((row) => row.widthM <= widthM + ROUNDING_M);
  if (fits < 0) return null;
  const outerM = fits === 0 ? table.leastOuterM : table.rows[fits - 1].upToM;
  if (bend.outerM < outerM - ROUNDING_M) return null;
  const tangentM = Math.max(0, outerM - widthM / 2) * Math.tan((bend.turnDeg * Math.PI) / 360);
  return Math.min(bend.beforeM, bend.afterM) - Math.min(tangentM, bend.tangentM);
}

/** How steep a lane is at its steepest, and its highest step. */
export interface LaneProfile {
  /** Null where no zone lies under the lane. */
  readonly steepest: { readonly percent: number; readonly x: number; readonly y: number; readonly zone: number } | null;
  /** Null where the lane stays within one zone. */
  readonly step: { readonly heightM: number; readonly x: number; readonly y: number; readonly zone: number } | null;
}

/**
 * Gradient along the middle of a lane on the finished surface as built, and steps where it passes from zone to zone.
 * @param site - deck, zones and surfaces [m]
 * @param line - middle of the lane, x y per vertex, local [m]
 * @returns greatest gradient [%] and step [m]
 * @source none: geometry, exact on the levels' own triangles
 */
export function laneProfile(site: DeckSite, line: Float64Array): LaneProfile {
  let steepest: LaneProfile['steepest'] = null;
  let step: LaneProfile['step'] = null;
  let last: { readonly x: number; readonly y: number; readonly levelM: number; readonly zone: number } | null = null;
  for (let i = 0; i + 3 < line.length; i += 2) {
    const piece = Array.from(line.subarray(i, i + 4));
    const lengthM = Math.hypot(piece[2] - piece[0], piece[3] - piece[1]);
    const place = (share: number) => ({ x: piece[0] + share * (piece[2] - piece[0]), y: piece[1] + share * (piece[3] - piece[1]) });
    for (const { zone, at, finishedM } of finishedAlong(site, piece)) {
      const first = place(at[0]);
      if (last && last.zone !== zone && Math.hypot(first.x - last.x, first.y - last.y) < NO_STRETCH_M) {
        const heightM = Math.abs(finishedM[0] - last.levelM);
        if (!step || heightM > step.heightM) step = { heightM, ...first, zone };
      }
      for (let k = 0; k + 1 < at.length; k++) {
        const runM = (at[k + 1] - at[k]) * lengthM;
        if (runM < NO_STRETCH_M) continue;
        const percent = (100 * Math.abs(finishedM[k + 1] - finishedM[k])) / runM;
        if (!steepest || percent > steepest.percent) steepest = { percent, ...place((at[k] + at[k + 1]) / 2), zone };
      }
      last = { ...place(at[at.length - 1]), levelM: finishedM[finishedM.length - 1], zone };
    }
  }
  return { steepest, step };
}
