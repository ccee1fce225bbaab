/**
 * Places where appliances are set up: size, gradient in any direction, steps, and what stands in them or in the strips that must be free.
 * All exact on outlines and on the levels' own triangles; none of it depends on the cells.
 */

import type { Region } from '../../model/deck-input.ts';
import type { StandingRule } from '../../model/fire-access.ts';
import type { ObstacleInput } from '../../model/route-input.ts';
import { commonAreaM2 } from '../geometry/common-area.ts';
import { clipConvex, clipSide } from '../geometry/convex-clip.ts';
import { boundsMeet, nearestOfRegion, nearestOnPiece } from '../geometry/distance.ts';
import { type FramedRectangle, widestInsideM } from '../geometry/rectangles.ts';
import { boundsOf, centroidM, ringsOf } from '../geometry/ring.ts';
import { fixedThicknessM } from '../layers/coefficients.ts';
import { type Surface, triangleSlopes } from '../levels/surface.ts';
import type { DeckSite } from './deck-site.ts';
import { edgeStretches, makeUpRangeM, spansInside } from './edges.ts';

/** Even parts smaller than this are slivers of the survey's triangles: no wheel or support stands on one alone [m²]. */
const LEAST_PART_M2 = 0.01;
/** What overlaps by less than this touches by rounding of the drawing: [m²] and [m]. */
const TOUCH_M2 = 1e-4;
const TOUCH_M = 1e-3;

export interface SteepPlace {
  readonly percent: number;
  readonly x: number;
  readonly y: number;
  readonly zone: number;
}

export interface StepPlace {
  readonly heightM: number;
  readonly x: number;
  readonly y: number;
  readonly zone: number;
}

/** A plane part of a surface: z = atOrigin + slopeX · x + slopeY · y. */
interface Face {
  readonly ring: readonly number[] | null;
  readonly slopeX: number;
  readonly slopeY: number;
  readonly atOrigin: number;
}

/**
 * Steepest place of the finished surface within an area, in any direction, as built.
 * @param site - deck, zones and surfaces [m]
 * @param area - area, local [m]
 * @returns gradient with its place; null where no zone lies [%]
 * @source contract.md, section 2, Finished level and Make-up layer
 */
export function steepestIn(site: DeckSite, area: Region): SteepPlace | null {
  const box = boundsOf(area.outer);
  const boxRing = [box.minX, box.minY, box.maxX, box.minY, box.maxX, box.maxY, box.minX, box.maxY];
  let best: SteepPlace | null = null;
  site.zones.forEach((zone, z) => {
    if (!boundsMeet(site.zoneBounds[z], box)) return;
    for (const { ring, slopeX, slopeY } of finishedParts(site, z, boxRing)) {
      const percent = 100 * Math.hypot(slopeX, slopeY);
      if (!Number.isFinite(percent) || (best && percent <= best.percent)) continue;
      const part = { outer: Float64Array.from(ring), holes: [] };
      if (commonAreaM2([area, zone.region, part]) < LEAST_PART_M2) continue;
      const [x, y] = centroidM(Float64Array.from(clipConvex(Array.from(area.outer), ring)));
      best = { percent, x, y, zone: z };
    }
  });
  return best;
}

/** Convex parts of the box on which a zone's finish is plane: free to follow what is wanted, else along the membrane. */
function finishedParts(site: DeckSite, z: number, box: readonly number[]): (Face & { readonly ring: readonly number[] })[] {
  const finish = site.finishSurfaces[z];
  const { min, max } = makeUpRangeM(site.zones[z]);
  const fixedM = fixedThicknessM(site.zones[z].buildUp);
  return facesIn(site.deckSurface, box).flatMap((deck) => {
    if (!finish) return [deck];
    return facesIn(finish, deck.ring).flatMap((wanted) => {
      // Room for the make-up layer, plane over this part: gx · x + gy · y + room0.
      const gx = wanted.slopeX - deck.slopeX;
      const gy = wanted.slopeY - deck.slopeY;
      const room0 = wanted.atOrigin - deck.atOrigin - fixedM;
      const low = clipSide(wanted.ring, gx, gy, min - room0);
      const high = clipSide(wanted.ring, -gx, -gy, room0 - max);
      const free = clipSide(clipSide(wanted.ring, gx, gy, max - room0), -gx, -gy, room0 - min);
      return [
        { ...deck, ring: low },
        { ...deck, ring: high },
        { ...wanted, ring: free },
      ].filter(({ ring }) => ring.length >= 6);
    });
  });
}

function facesIn(surface: Surface, clip: readonly number[]): (Face & { readonly ring: readonly number[] })[] {
  if (surface.kind === 'plane') {
    const { x, y, z, slopeX, slopeY } = surface;
    return [{ ring: clip, slopeX, slopeY, atOrigin: z - slopeX * x - slopeY * y }];
  }
  const { points, triangles } = surface;
  const box = boundsOf(Float64Array.from(clip));
  const faces: (Face & { readonly ring: readonly number[] })[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t] * 3, triangles[t + 1] * 3, triangles[t + 2] * 3];
    const corners = [points[a], points[a + 1], points[b], points[b + 1], points[c], points[c + 1]];
    if (!boundsMeet(boundsOf(Float64Array.from(corners)), box)) continue;
    const ring = clipConvex(clip, corners);
    if (ring.length < 6) continue;
    const [slopeX, slopeY] = triangleSlopes(points, a, b, c);
    faces.push({ ring, slopeX, slopeY, atOrigin: points[a + 2] - slopeX * points[a] - slopeY * points[a + 1] });
  }
  return faces;
}

/**
 * Highest step within an area, where two zones meet.
 * @param site - deck, zones and surfaces [m]
 * @param area - area, local [m]
 * @returns step with its place; null where no two zones meet in it [m]
 * @source contract.md, section 2, Finished level and Make-up layer
 */
export function stepIn(site: DeckSite, area: Region): StepPlace | null {
  const box = boundsOf(area.outer);
  let best: StepPlace | null = null;
  site.zones.forEach((zone, z) => {
    if (!boundsMeet(site.zoneBounds[z], box)) return;
    for (const line of insideOf(zone.region, area)) {
      const stretches = edgeStretches(site, { line });
      for (const own of stretches) {
        if (own.zone !== z) continue;
        for (const other of stretches) {
          if (other.zone === z) continue;
          for (const share of [...own.at, ...other.at]) {
            const heightM = Math.abs(levelAt(own, share) - levelAt(other, share));
            if (!(heightM > (best?.heightM ?? -1))) continue;
            best = { heightM, x: line[0] + share * (line[2] - line[0]), y: line[1] + share * (line[3] - line[1]), zone: z };
          }
        }
      }
    }
  });
  return best;
}

/** NaN beyond the stretch. */
function levelAt({ at, finishedM }: { readonly at: readonly number[]; readonly finishedM: readonly number[] }, share: number): number {
  for (let i = 0; i + 1 < at.length; i++) {
    if (share < at[i] || share > at[i + 1]) continue;
    const part = at[i + 1] > at[i] ? (share - at[i]) / (at[i + 1] - at[i]) : 0;
    return finishedM[i] + part * (finishedM[i + 1] - finishedM[i]);
  }
  return Number.NaN;
}

/** Sides of a region as far as they lie well within an area, ax ay bx by each. */
function insideOf(region: Region, area: Region): Float64Array[] {
  return ringsOf(region).flatMap((ring) => {
    const closed = Float64Array.of(...ring, ring[0], ring[1]);
    return piecesInside(closed, area);
  });
}

/** Parts of a line that lie in an area, not along its rim. */
function piecesInside(line: Float64Array, area: Region): Float64Array[] {
  const found: Float64Array[] = [];
  for (let i = 0; i + 3 < line.length; i += 2) {
    const piece = Array.from(line.subarray(i, i + 4));
    const [dx, dy] = [piece[2] - piece[0], piece[3] - piece[1]];
    for (const [from, to] of spansInside(piece, [area])) {
      const middle = (from + to) / 2;
      if ((to - from) * Math.hypot(dx, dy) < TOUCH_M) continue;
      if (rimDistanceM(area, piece[0] + middle * dx, piece[1] + middle * dy) < TOUCH_M) continue;
      found.push(Float64Array.of(piece[0] + from * dx, piece[1] + from * dy, piece[0] + to * dx, piece[1] + to * dy));
    }
  }
  return found;
}

function rimDistanceM(area: Region, x: number, y: number): number {
  let least = Infinity;
  for (const ring of ringsOf(area)) {
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      least = Math.min(least, nearestOnPiece([ring[j], ring[j + 1], ring[i], ring[i + 1]], x, y).distanceM);
    }
  }
  return least;
}

/**
 * What stands in an area.
 * @param area - area, local [m]
 * @param obstacles - objects by their ground, upstands by their lines [m]
 * @returns those that take any of it, in their order [-]
 * @source none: geometry
 */
export function obstaclesIn(area: Region, obstacles: readonly ObstacleInput[]): ObstacleInput[] {
  return obstacles.filter(
    ({ rings, lines }) =>
      rings.some((outer) => commonAreaM2([area, { outer, holes: [] }]) > TOUCH_M2) ||
      lines.some((line) => piecesInside(line, area).length > 0),
  );
}

/** How an area lies to the building it serves. */
export interface FacingBuilding {
  readonly lies: 'along' | 'across';
  readonly distanceM: number;
  /** Long side away from the building: the one of greater t, or of lesser. */
  readonly away: 'high' | 'low';
}

/**
 * How an area lies to the foot of a building.
 * @param area - area [m]
 * @param around - smallest rectangle around it, longer side along s [m]
 * @param building - foot of the building, x y per vertex [m]
 * @returns along where its long side turns less than 45° from the nearest piece of the building; distance [m]
 * @source none: geometry
 */
export function facing(area: Region, around: FramedRectangle, building: Float64Array): FacingBuilding {
  const { distanceM } = nearestOfRegion(building, area);
  const middleS = (around.fromS + around.toS) / 2;
  const middleT = (around.fromT + around.toT) / 2;
  const [x, y] = unframed(around, middleS, middleT);
  let nearest = { distanceM: Infinity, x: 0, y: 0, cos: 0 };
  for (let i = 0; i + 3 < building.length; i += 2) {
    const piece = building.subarray(i, i + 4);
    const found = nearestOnPiece(piece, x, y);
    const [dx, dy] = [piece[2] - piece[0], piece[3] - piece[1]];
    const cos = Math.abs(dx * around.dirX + dy * around.dirY) / Math.hypot(dx, dy);
    if (found.distanceM < nearest.distanceM) nearest = { ...found, cos };
  }
  const t = nearest.y * around.dirX - nearest.x * around.dirY;
  return { lies: nearest.cos >= Math.SQRT1_2 ? 'along' : 'across', distanceM, away: t < middleT ? 'high' : 'low' };
}

function unframed({ dirX, dirY }: FramedRectangle, s: number, t: number): [number, number] {
  return [s * dirX - t * dirY, s * dirY + t * dirX];
}

/**
 * A strip beside the smallest rectangle around an area.
 * @param around - rectangle [m]
 * @param side - beside its long sides: high or low t; beyond its short ones: front or back [-]
 * @param widthM - width of the strip [m]
 * @returns strip [m]
 * @source none: geometry
 */
export function stripBeside(around: FramedRectangle, side: 'high' | 'low' | 'front' | 'back', widthM: number): Region {
  const { fromS, toS, fromT, toT } = around;
  const [s0, s1, t0, t1] = {
    high: [fromS, toS, toT, toT + widthM],
    low: [fromS, toS, fromT - widthM, fromT],
    front: [toS, toS + widthM, fromT, toT],
    back: [fromS - widthM, fromS, fromT, toT],
  }[side];
  const corners = [unframed(around, s0, t0), unframed(around, s1, t0), unframed(around, s1, t1), unframed(around, s0, t1)];
  return { outer: Float64Array.from(corners.flat()), holes: [] };
}

/** Whether an area is as large as asked for; the least of what is missing is told. */
export interface Fit {
  /** Greatest width of a rectangle as long as asked for; 0 where none is so long [m]. */
  readonly widthM: number;
  /** Greatest length of a rectangle as wide as asked for; 0 where none is so wide [m]. */
  readonly lengthM: number;
}

/**
 * Holds an area against the size asked for.
 * @param area - area [m]
 * @param rule - width and length [m]
 * @returns what fits, along or across its sides [m]
 * @source the rule's own
 */
export function fitOf(area: Region, { widthM, lengthM }: Pick<StandingRule, 'widthM' | 'lengthM'>): Fit {
  return { widthM: widestInsideM(area.outer, lengthM.value), lengthM: widestInsideM(area.outer, widthM.value) };
}
