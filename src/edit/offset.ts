/** Parallel outlines: an area grown or shrunk by a distance. */

import { Clipper, EndType, JoinType } from 'clipper2-ts';
import type { PointM } from '../model/scene-file.ts';
import { areaOf, pointInRing, ringOf } from '../scene/ring.ts';
import { type AreaM, areaM2 } from './overlay.ts';

/** Points of parallel outlines are rounded to this [m]. */
export const OFFSET_PRECISION_M = 1e-6;
const DECIMALS = 6;
/** Arcs of round corners leave the circle by no more than this [m]. */
const ARC_M = 0.001;
/** A sharp corner reaches no further than this many times the distance, then it is cut off: corners of more than about 6°. */
const MITER_LIMIT = 20;

/**
 * The area inside a parallel outline.
 * @param area - area with holes
 * @param distanceM - outwards; below 0 inwards. Holes shrink as the area grows [m]
 * @param corners - sharp, or round with the distance as radius
 * @returns what is left, largest first; none where nothing is left
 * @throws RangeError where the distance is not a finite number
 */
export function offsetArea(area: AreaM, distanceM: number, corners: 'sharp' | 'round' = 'sharp'): readonly AreaM[] {
  if (!Number.isFinite(distanceM)) throw new RangeError(`offsetArea: the distance is a finite number, found ${distanceM}`);
  const [originX, originY] = area.outline[0];
  const path = (points: readonly PointM[], counterClockwise: boolean) => {
    const flat = ringOf(points).points.map(([x, y]) => ({ x: x - originX, y: y - originY }));
    return Clipper.areaD(flat) > 0 === counterClockwise ? flat : flat.reverse();
  };
  const paths = [path(area.outline, true), ...(area.holes ?? []).map((hole) => path(hole, false))];
  const join = corners === 'sharp' ? JoinType.Miter : JoinType.Round;
  const grown = Clipper.inflatePathsD(paths, distanceM, join, EndType.Polygon, MITER_LIMIT, DECIMALS, ARC_M);
  const rings = grown.map((ring) => ({
    isOuter: Clipper.areaD(ring) > 0,
    points: ring.map(({ x, y }): PointM => [rounded(x + originX), rounded(y + originY)]),
  }));
  return nested(rings);
}

/** The scaling back from whole numbers leaves crumbs. */
const rounded = (coordinateM: number) => Number(coordinateM.toFixed(DECIMALS));

interface TurnedRing {
  readonly isOuter: boolean;
  readonly points: readonly PointM[];
}

function nested(rings: readonly TurnedRing[]): readonly AreaM[] {
  const outer = rings.filter(({ isOuter }) => isOuter).sort((one, other) => areaOf(other.points) - areaOf(one.points));
  const holes = rings.filter(({ isOuter }) => !isOuter);
  return outer
    .map(({ points: outline }, i): AreaM => {
      const own = holes.filter((hole) => outer.findLastIndex((ring) => pointInRing(hole.points[0], ringOf(ring.points)) >= 0) === i);
      return own.length === 0 ? { outline } : { outline, holes: own.map(({ points }) => points) };
    })
    .sort((one, other) => areaM2(other) - areaM2(one));
}
