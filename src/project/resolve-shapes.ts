/** Shapes of a scene in local metres: rings without closing or repeated points, directed, and footprints of objects. */

import { WALL_DENSITY } from '../catalogue/rule-limits.ts';
import { directedRing } from '../core/geometry/ring.ts';
import { ownWeightKNm } from '../core/loads/retaining.ts';
import type { LevelNet, ObjectInput, Region, Ring } from '../model/deck-input.ts';
import type { Point3M, PointM, PolygonM, SceneLevels, SceneObject, SceneRetaining } from '../model/scene-file.ts';
import { weightKN } from '../model/units.ts';

/** Sides of the polygon that stands for a tree's disc; its area is made exactly that of the disc. */
const DISC_SIDES = 96;

/** Integer origin near the deck, so that local coordinates keep all their digits. */
export function localOrigin(outline: PolygonM): [number, number] {
  const least = (axis: 0 | 1) => outline.reduce((low, point) => Math.min(low, point[axis]), Infinity);
  return [Math.floor(least(0)), Math.floor(least(1))];
}

/** Ring in local metres, open, in the wanted direction. */
export function localRing(polygon: PolygonM, originM: PointM, counterClockwise = true): Ring {
  const kept: number[] = [];
  polygon.forEach((point, i) => {
    const before = polygon[(i + polygon.length - 1) % polygon.length];
    if (point[0] === before[0] && point[1] === before[1]) return;
    kept.push(point[0] - originM[0], point[1] - originM[1]);
  });
  return directedRing(Float64Array.from(kept), counterClockwise);
}

/** Region in local metres. */
export function localRegion(outline: PolygonM, holes: readonly PolygonM[] | undefined, originM: PointM): Region {
  return { outer: localRing(outline, originM), holes: (holes ?? []).map((hole) => localRing(hole, originM, false)) };
}

/** Polyline in local metres, repeated points dropped. */
export function localLine(line: readonly PointM[], originM: PointM): Float64Array {
  const kept = line.filter((p, i) => i === 0 || p[0] !== line[i - 1][0] || p[1] !== line[i - 1][1]);
  return Float64Array.from(kept.flatMap(([x, y]) => [x - originM[0], y - originM[1]]));
}

/** Net of levels in local metres; levels stay as in the file. */
export function localNet(levels: SceneLevels, originM: PointM): LevelNet {
  const local = (points: readonly Point3M[]) => Float64Array.from(points.flatMap(([x, y, z]) => [x - originM[0], y - originM[1], z]));
  return { spots: local(levels.spots), breaklines: (levels.breaklines ?? []).map(local) };
}

/**
 * Footprints and pressures of an object. Contract, section 2: a tree over a disc, a line over its strip, a block over its outline.
 * A retaining edge brings stem and base slab alone, evenly over its base: the soil on it is the zone's.
 */
export function objectInput(object: SceneObject, originM: PointM): ObjectInput {
  const { id, kind } = object;
  switch (object.kind) {
    case 'tree': {
      const areaM2 = (Math.PI * object.spreadM ** 2) / 4;
      const ring = disc(object.at[0] - originM[0], object.at[1] - originM[1], object.spreadM / 2);
      return { id, kind, pieces: [{ ring, kNm2: weightKN(object.massKg) / areaM2 }] };
    }
    case 'line':
      return {
        id,
        kind,
        pieces: lineStrips(localLine(object.line, originM), object.widthM).map((ring) => ({ ring, kNm2: object.kNm / object.widthM })),
      };
    case 'block':
      return { id, kind, pieces: [{ ring: localRing(object.outline, originM), kNm2: object.kNm2 }] };
    case 'retaining': {
      const kNm2 = ownWeightKNm({ ...object, wallKNm3: wallKNm3(object) }) / object.baseM;
      return { id, kind, pieces: sideStrips(localLine(object.line, originM), object.baseM, object.side).map((ring) => ({ ring, kNm2 })) };
    }
  }
}

function disc(x: number, y: number, radiusM: number): Ring {
  const step = (2 * Math.PI) / DISC_SIDES;
  const corner = radiusM * Math.sqrt(step / Math.sin(step));
  const ring = new Float64Array(2 * DISC_SIDES);
  for (let i = 0; i < DISC_SIDES; i++) {
    ring[2 * i] = x + corner * Math.cos(i * step);
    ring[2 * i + 1] = y + corner * Math.sin(i * step);
  }
  return ring;
}

/** One rectangle per segment, counter-clockwise, so that a load per metre holds exactly for the whole length. */
export function lineStrips(line: Float64Array, widthM: number): Ring[] {
  const out: Ring[] = [];
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [ax, ay, bx, by] = line.subarray(i, i + 4);
    const scale = widthM / 2 / Math.hypot(bx - ax, by - ay);
    const nx = (ay - by) * scale;
    const ny = (bx - ax) * scale;
    out.push(Float64Array.of(ax - nx, ay - ny, bx - nx, by - ny, bx + nx, by + ny, ax + nx, ay + ny));
  }
  return out;
}

/** Weight of a retaining edge's material [kN/m³]. */
export function wallKNm3({ wallDensity }: SceneRetaining): number {
  return weightKN(wallDensity ?? WALL_DENSITY.value);
}

/** One rectangle per segment on one side of a line, counter-clockwise. */
function sideStrips(line: Float64Array, widthM: number, side: 'left' | 'right'): Ring[] {
  const out: Ring[] = [];
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [ax, ay, bx, by] = line.subarray(i, i + 4);
    const scale = (side === 'left' ? widthM : -widthM) / Math.hypot(bx - ax, by - ay);
    const nx = (ay - by) * scale;
    const ny = (bx - ax) * scale;
    out.push(directedRing(Float64Array.of(ax, ay, bx, by, bx + nx, by + ny, ax + nx, ay + ny), true));
  }
  return out;
}
