/** The surface of standing water: level, cut at the shore line where it meets the membrane, and at the edge of the deck. */

import type { GridShape } from '../model/maps.ts';
import type { Prism } from '../model/picture.ts';

/** The part of a deck that water stands on. */
export interface WaterBed {
  /** x y per corner, three corners per triangle [m]. */
  readonly plan: Float64Array;
  /** Membrane at every corner [m]. */
  readonly membraneM: Float64Array;
  /** Per triangle and side (corner to next corner): 1 where the deck ends. */
  readonly ends: Uint8Array;
}

/** Cells that water stands on. */
export interface WetCells {
  readonly grid: GridShape;
  readonly cells: Int32Array;
}

export interface WaterSurface {
  /** x y z per vertex, three vertices per triangle [m]. */
  readonly corners: Float64Array;
  /** Membrane below every vertex [m]. */
  readonly membraneM: Float64Array;
  /** Where the surface ends, two vertices per piece: x y z [m]. */
  readonly shore: Float64Array;
}

/**
 * Triangles of a deck that water of a level reaches. A saddle may be a little lower than it was read
 * at the middles of cells: what the wet cells do not have is left out, so that no water runs into the next basin.
 * @param slab - the slab; its upper surface is the membrane [m]
 * @param wet - cells that water stands on at its highest [-]
 * @param levelM - its highest level [m]
 * @returns triangles of the membrane with water over them [m]
 * @source none: geometry
 */
export function waterBed(slab: Prism, wet: WetCells, levelM: number): WaterBed {
  const { plan, triangles, rim, heights } = slab;
  const vertices = plan.length / 2;
  const top = heights.length - vertices;
  const isWet = wetTest(wet);
  const ends = new Set<number>();
  for (let i = 0; i < rim.length; i += 2) ends.add(rim[i] * vertices + rim[i + 1]);
  const bed = { plan: [] as number[], membraneM: [] as number[], ends: [] as number[] };
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [0, 1, 2].map((k): Corner => {
      const v = triangles[t + k];
      return [plan[2 * v], plan[2 * v + 1], heights[top + v]];
    });
    const below = belowLevel(corners, levelM);
    if (below.length === 0 || !isWet(below)) continue;
    corners.forEach(([x, y, z], k) => {
      bed.plan.push(x, y);
      bed.membraneM.push(z);
      bed.ends.push(ends.has(triangles[t + k] * vertices + triangles[t + ((k + 1) % 3)]) ? 1 : 0);
    });
  }
  return { plan: Float64Array.from(bed.plan), membraneM: Float64Array.from(bed.membraneM), ends: Uint8Array.from(bed.ends) };
}

/** x, y and membrane [m]. */
type Corner = readonly [number, number, number];

/** The part of a triangle whose membrane lies below a level. */
function belowLevel(corners: readonly Corner[], levelM: number): Corner[] {
  return corners.flatMap((a, k): Corner[] => {
    const b = corners[(k + 1) % corners.length];
    const own = a[2] < levelM ? [a] : [];
    return a[2] < levelM === b[2] < levelM ? own : [...own, crossing(a, b, levelM)];
  });
}

function crossing(a: Corner, b: Corner, levelM: number): Corner {
  const share = (levelM - a[2]) / (b[2] - a[2]);
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), levelM];
}

function middle(ring: readonly Corner[]): [number, number] {
  const sum = (axis: 0 | 1) => ring.reduce((all, corner) => all + corner[axis], 0);
  return [sum(0) / ring.length, sum(1) / ring.length];
}

/** So many middles of cells tell whether a piece is wet: all of it is, or none. */
const TELLING = 25;

/** Whether water stands on a convex piece: by the cells whose middles lie in it, or, where it is too small to have any, by those around it. */
function wetTest({ grid, cells }: WetCells): (ring: readonly Corner[]) => boolean {
  const { columns, rows, cellM, x0M, y0M } = grid;
  const wet = new Uint8Array(columns * rows);
  for (const cell of cells) wet[cell] = 1;
  const columnAt = (x: number) => Math.min(columns - 1, Math.max(0, Math.floor((x - x0M) / cellM)));
  const rowAt = (y: number) => Math.min(rows - 1, Math.max(0, Math.floor((y - y0M) / cellM)));
  return (ring) => {
    const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
    let [inside, under] = [0, 0];
    for (let row = rowAt(Math.min(...ys)); row <= rowAt(Math.max(...ys)) && inside < TELLING; row++) {
      for (let column = columnAt(Math.min(...xs)); column <= columnAt(Math.max(...xs)) && inside < TELLING; column++) {
        if (!holds(ring, x0M + (column + 0.5) * cellM, y0M + (row + 0.5) * cellM)) continue;
        inside++;
        under += wet[row * columns + column];
      }
    }
    if (inside > 0) return 2 * under > inside;
    const [x, y] = middle(ring);
    for (let row = rowAt(y - cellM); row <= rowAt(y + cellM); row++) {
      for (let column = columnAt(x - cellM); column <= columnAt(x + cellM); column++) if (wet[row * columns + column] === 1) return true;
    }
    return false;
  };
}

/** Whether a point lies in a convex ring that turns to the left. */
function holds(ring: readonly Corner[], x: number, y: number): boolean {
  return ring.every(([ax, ay], k) => {
    const [bx, by] = ring[(k + 1) % ring.length];
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= 0;
  });
}

/**
 * Water on its bed at any level up to its highest. What lies below the level apart from the rest has no outlet of its own, so water
 * stands in it too.
 * @param bed - membrane that water reaches [m]
 * @param levelM - level of the water [m]
 * @returns surface exactly at the level, and its shore line [m]
 * @source none: geometry
 */
export function waterSurface(bed: WaterBed, levelM: number): WaterSurface {
  const corners: number[] = [];
  const membraneM: number[] = [];
  const shore: number[] = [];
  const { plan, membraneM: bedM, ends } = bed;
  for (let t = 0; t < bedM.length; t += 3) {
    const triangle = [t, t + 1, t + 2].map((v): Corner => [plan[2 * v], plan[2 * v + 1], bedM[v]]);
    const below = belowLevel(triangle, levelM);
    for (let k = 1; k + 1 < below.length; k++) {
      for (const [x, y, z] of [below[0], below[k], below[k + 1]]) {
        corners.push(x, y, levelM);
        membraneM.push(z);
      }
    }
    for (const [a, b] of [...crossings(triangle, levelM), ...sidesUnder(triangle, ends.subarray(t, t + 3), levelM)]) {
      shore.push(a[0], a[1], levelM, b[0], b[1], levelM);
    }
  }
  return { corners: Float64Array.from(corners), membraneM: Float64Array.from(membraneM), shore: Float64Array.from(shore) };
}

type Piece = readonly [Corner, Corner];

/** Where the level meets the membrane of a triangle. */
function crossings(triangle: readonly Corner[], levelM: number): Piece[] {
  const points = triangle.flatMap((a, k): Corner[] => {
    const b = triangle[(k + 1) % 3];
    return a[2] < levelM === b[2] < levelM ? [] : [crossing(a, b, levelM)];
  });
  return points.length === 2 ? [[points[0], points[1]]] : [];
}

/** Where water stands against the edge of the deck. */
function sidesUnder(triangle: readonly Corner[], ends: Uint8Array, levelM: number): Piece[] {
  return triangle.flatMap((a, k): Piece[] => {
    const b = triangle[(k + 1) % 3];
    if (ends[k] === 0 || (a[2] >= levelM && b[2] >= levelM)) return [];
    if (a[2] < levelM === b[2] < levelM) return [[a, b]];
    return [a[2] < levelM ? [a, crossing(a, b, levelM)] : [crossing(a, b, levelM), b]];
  });
}

/** Upright faces of water in a cut, two triangles each, and the line of its surface. */
export interface CutWater {
  /** x y z per vertex, three per triangle [m]. */
  readonly faces: Float64Array;
  /** Two vertices per piece: x y z [m]. */
  readonly line: Float64Array;
}

/**
 * Water as a cut through it shows it.
 * @param water - surface [m]
 * @param plane - points of the plane have x · lookX + y · lookY = offsetM [m]
 * @returns faces between membrane and surface in the plane, and the surface's line [m]
 * @source none: geometry
 */
export function cutWater(
  water: WaterSurface,
  plane: { readonly lookX: number; readonly lookY: number; readonly offsetM: number },
): CutWater {
  const faces: number[] = [];
  const line: number[] = [];
  const { corners, membraneM } = water;
  for (let t = 0; t < membraneM.length; t += 3) {
    const points = [0, 1, 2].flatMap((k): [number, number, number, number][] => {
      const a = t + k;
      const b = t + ((k + 1) % 3);
      const [da, db] = [a, b].map((v) => corners[3 * v] * plane.lookX + corners[3 * v + 1] * plane.lookY - plane.offsetM);
      if (da < 0 === db < 0) return [];
      const share = da / (da - db);
      const between = (from: number, to: number) => from + share * (to - from);
      return [
        [
          between(corners[3 * a], corners[3 * b]),
          between(corners[3 * a + 1], corners[3 * b + 1]),
          corners[3 * a + 2],
          between(membraneM[a], membraneM[b]),
        ],
      ];
    });
    if (points.length !== 2) continue;
    const [[ax, ay, az, am], [bx, by, bz, bm]] = points;
    faces.push(ax, ay, am, bx, by, bm, bx, by, bz, ax, ay, am, bx, by, bz, ax, ay, az);
    line.push(ax, ay, az, bx, by, bz);
  }
  return { faces: Float64Array.from(faces), line: Float64Array.from(line) };
}
