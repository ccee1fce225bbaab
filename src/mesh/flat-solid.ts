/** Small closed solids with flat faces, and the few ways to make them. */

import type { PlanNet } from './plan-net.ts';
import type { SolidWriter } from './solid-writer.ts';

/** Closed, facing outwards; every edge belongs to two triangles. */
export interface FlatSolid {
  /** x y z per point [m]. */
  readonly points: readonly number[];
  readonly triangles: readonly number[];
}

/** Faces that meet at more than this show an ink line: cosine of 20° [-]. */
const CREASE_COS = Math.cos((20 * Math.PI) / 180);

/**
 * Solid through a row of loops with equally many points. Loops run counter-clockwise when one looks back from the next.
 * @param loops - x y z per point, one array per loop [m]
 * @param closed - true joins the last loop to the first, false puts a lid (a fan) on both ends [-]
 * @param lidFrom - point of a loop that the fans start from: all of the loop must be in sight of it [-]
 * @returns solid [m]
 * @source none: geometry
 */
export function tube(loops: readonly (readonly number[])[], closed: boolean, lidFrom = 0): FlatSolid {
  const n = loops[0].length / 3;
  const triangles: number[] = [];
  for (let s = 0; s < (closed ? loops.length : loops.length - 1); s++) {
    const here = s * n;
    const next = ((s + 1) % loops.length) * n;
    for (let i = 0; i < n; i++) {
      const j = (i + 1) % n;
      triangles.push(here + i, here + j, next + j, here + i, next + j, next + i);
    }
  }
  const last = (loops.length - 1) * n;
  for (let i = 1; !closed && i + 1 < n; i++) {
    const [p, q] = [(lidFrom + i) % n, (lidFrom + i + 1) % n];
    triangles.push(lidFrom, q, p, last + lidFrom, last + p, last + q);
  }
  return { points: loops.flat(), triangles };
}

/** Upright circle's points, counter-clockwise from above. */
export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radiusM: number;
  readonly sides: number;
}

/**
 * A level loop of points on a circle.
 * @param circle - centre and radius [m], number of sides [-]
 * @param z - level [m]
 * @returns x y z per point [m]
 * @source none: geometry
 */
export function circleLoop(circle: Circle, z: number): number[] {
  const loop: number[] = [];
  for (let i = 0; i < circle.sides; i++) {
    const angle = (2 * Math.PI * i) / circle.sides;
    loop.push(circle.x + circle.radiusM * Math.cos(angle), circle.y + circle.radiusM * Math.sin(angle), z);
  }
  return loop;
}

/** Lower and upper end of an upright line [m]. */
export type SpanAt = (x: number, y: number) => readonly [number, number];

/** Longest mitre at a bend, in half widths [-]. */
const LONGEST_MITRE = 2;

/**
 * Upright wall of even width along a line, mitred at its bends.
 * @param line - x y per point, first repeated as last where it closes [m]
 * @param widthM - width [m]
 * @param span - lower and upper level at a point of the line; the wall is level across its width [m]
 * @returns solid, or null where the line has no length [m]
 * @source none: geometry
 */
export function wall(line: ArrayLike<number>, widthM: number, span: SpanAt): FlatSolid | null {
  const mitred = mitredLine(line);
  if (mitred === null) return null;
  const loops = mitred.stations.map(({ x, y, mx, my }) => {
    const [low, high] = span(x, y);
    const dx = (mx * widthM) / 2;
    const dy = (my * widthM) / 2;
    return [x - dx, y - dy, low, x + dx, y + dy, low, x + dx, y + dy, high, x - dx, y - dy, high];
  });
  return tube(loops, mitred.closed);
}

/** A line with its mitres. */
export interface MitredLine {
  /** Points of the line; m is the way to the left corner of the bend, for a width of 1 m on that side. */
  readonly stations: readonly { readonly x: number; readonly y: number; readonly mx: number; readonly my: number }[];
  readonly closed: boolean;
}

/**
 * Points of a line with the directions of its mitres; points on one another count once.
 * @param line - x y per point, first repeated as last where it closes [m]
 * @returns stations, or null where the line has no length [m]
 * @source none: geometry
 */
export function mitredLine(line: ArrayLike<number>): MitredLine | null {
  const points: [number, number][] = [];
  for (let i = 0; i < line.length; i += 2) {
    const before = points.at(-1);
    if (before === undefined || Math.hypot(line[i] - before[0], line[i + 1] - before[1]) > 1e-6) points.push([line[i], line[i + 1]]);
  }
  const [first, last] = [points[0], points[points.length - 1]];
  const closed = points.length > 3 && Math.hypot(first[0] - last[0], first[1] - last[1]) <= 1e-6;
  if (closed) points.pop();
  if (points.length < 2) return null;
  const n = points.length;
  const stations = points.map(([x, y], i) => {
    const before = i > 0 || closed ? direction(points[(i + n - 1) % n], points[i]) : null;
    const after = i < n - 1 || closed ? direction(points[i], points[(i + 1) % n]) : null;
    const [mx, my] = mitre(before ?? (after as Direction), after ?? (before as Direction));
    return { x, y, mx, my };
  });
  return { stations, closed };
}

type Direction = readonly [number, number];

function direction(from: Direction, to: Direction): Direction {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

/** From the line to the left corner of the bend, in half widths. */
function mitre(before: Direction, after: Direction): Direction {
  const cos = before[0] * after[0] + before[1] * after[1];
  const x = -before[1] - after[1];
  const y = before[0] + after[0];
  if (1 + cos < 1e-9) return [-before[1], before[0]];
  const length = Math.hypot(x, y) / (1 + cos);
  const scale = Math.min(1, LONGEST_MITRE / length) / (1 + cos);
  return [x * scale, y * scale];
}

/**
 * Solid between two faces over one net; the upper one may lie over other points than the lower.
 * @param net - net [m]
 * @param lower - x y z per vertex of the net [m]
 * @param upper - x y z per vertex of the net [m]
 * @returns solid [m]
 * @source none: geometry
 */
export function between(net: PlanNet, lower: readonly number[], upper: readonly number[]): FlatSolid {
  const n = lower.length / 3;
  const triangles: number[] = [];
  for (let t = 0; t < net.triangles.length; t += 3) {
    const [a, b, c] = net.triangles.subarray(t, t + 3);
    triangles.push(a, c, b, n + a, n + b, n + c);
  }
  for (let e = 0; e < net.rim.length; e += 2) {
    const [a, b] = net.rim.subarray(e, e + 2);
    triangles.push(a, b, n + b, a, n + b, n + a);
  }
  return { points: [...lower, ...upper], triangles };
}

/**
 * Writes a solid with flat faces.
 * @param writer - receives the solid [m]
 * @param solid - solid [m]
 * @param inked - whether its creases get ink lines [-]
 * @source none: geometry
 */
export function writeFlatSolid(writer: SolidWriter, solid: FlatSolid, inked: boolean): void {
  const { points, triangles } = solid;
  const normals = new Float64Array(triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    faceNormal(solid, t, normals);
    writer.normal(normals[t], normals[t + 1], normals[t + 2]);
    const upper = normals[t + 2] > 0.5 ? 1 : 0;
    let vertex = 0;
    for (let k = t; k < t + 3; k++) {
      const p = 3 * triangles[k];
      vertex = writer.vertex(points[p], points[p + 1], points[p + 2], upper);
    }
    writer.triangle(vertex - 2, vertex - 1, vertex);
  }
  if (inked) writeCreases(writer, solid, normals);
}

/** Unit normal of the triangle at t, zero for a face without area; written at t. */
function faceNormal({ points, triangles }: FlatSolid, t: number, out: Float64Array): void {
  const a = 3 * triangles[t];
  const b = 3 * triangles[t + 1];
  const c = 3 * triangles[t + 2];
  const ux = points[b] - points[a];
  const uy = points[b + 1] - points[a + 1];
  const uz = points[b + 2] - points[a + 2];
  const vx = points[c] - points[a];
  const vy = points[c + 1] - points[a + 1];
  const vz = points[c + 2] - points[a + 2];
  const x = uy * vz - uz * vy;
  const y = uz * vx - ux * vz;
  const z = ux * vy - uy * vx;
  const length = Math.sqrt(x * x + y * y + z * z);
  if (!(length > 0)) return;
  out[t] = x / length;
  out[t + 1] = y / length;
  out[t + 2] = z / length;
}

function writeCreases(writer: SolidWriter, solid: FlatSolid, normals: Float64Array): void {
  const { points, triangles } = solid;
  const faces = new Map<string, number>();
  for (let i = 0; i < triangles.length; i++) {
    const from = triangles[i];
    const to = triangles[i % 3 === 2 ? i - 2 : i + 1];
    faces.set(`${from} ${to}`, 3 * Math.floor(i / 3));
    const other = faces.get(`${to} ${from}`);
    if (other === undefined) continue;
    const own = 3 * Math.floor(i / 3);
    const cos = normals[own] * normals[other] + normals[own + 1] * normals[other + 1] + normals[own + 2] * normals[other + 2];
    if (cos >= CREASE_COS) continue;
    for (const end of [from, to]) writer.lineEnd(points[3 * end], points[3 * end + 1], points[3 * end + 2], 0);
  }
}
