/** Measures of meshes that do not use the code that made them. */

import { expect } from 'vitest';
import type { FlatSolid } from '../../src/mesh/flat-solid.ts';
import type { BarePrism } from '../../src/mesh/prism.ts';
import { createSolidWriter } from '../../src/mesh/solid-writer.ts';
import { writePrism } from '../../src/mesh/solids.ts';
import type { LayerInput, Region, Ring } from '../../src/model/deck-input.ts';
import type { EdgeLines, SolidMesh } from '../../src/model/picture.ts';
import type { Role } from '../../src/model/roles.ts';

export const ring = (...points: [number, number][]): Ring => Float64Array.from(points.flat());
export const box = (x0: number, y0: number, x1: number, y1: number): Ring => ring([x0, y0], [x1, y0], [x1, y1], [x0, y1]);
export const hole = (x0: number, y0: number, x1: number, y1: number): Ring => ring([x0, y0], [x0, y1], [x1, y1], [x1, y0]);
export const region = (outer: Ring, ...holes: Ring[]): Region => ({ outer, holes });

export function layer(role: Role, thicknessM: number, rangeM: LayerInput['rangeM'] = null): LayerInput {
  return {
    materialId: role,
    name: role,
    role,
    thicknessM,
    rangeM,
    dryFixedKNm2: 0,
    dryPerMKNm3: 0,
    saturatedFixedKNm2: 0,
    saturatedPerMKNm3: 0,
    heldFixedLm2: 0,
    heldPerMLm2: 0,
    voidVolumeM: 0,
  };
}

/** Plan area of a prism: sum of its triangles by the cross product. */
export function planAreaM2({ plan, triangles }: Pick<BarePrism, 'plan' | 'triangles'>): number {
  let twice = 0;
  for (let t = 0; t < triangles.length; t += 3) twice += cross(plan, triangles[t]!, triangles[t + 1]!, triangles[t + 2]!);
  return twice / 2;
}

/** Volume of a layer: exact for a linear thickness, area × mean of the corners. */
export function layerVolumeM3(prism: BarePrism, k: number): number {
  const { plan, triangles, heights } = prism;
  const n = plan.length / 2;
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    const thick = corners.reduce((s, v) => s + heights[(k + 1) * n + v]! - heights[k * n + v]!, 0);
    sum += (cross(plan, corners[0]!, corners[1]!, corners[2]!) / 2) * (thick / 3);
  }
  return sum;
}

function cross(plan: ArrayLike<number>, a: number, b: number, c: number): number {
  return (
    (plan[2 * b]! - plan[2 * a]!) * (plan[2 * c + 1]! - plan[2 * a + 1]!) -
    (plan[2 * c]! - plan[2 * a]!) * (plan[2 * b + 1]! - plan[2 * a + 1]!)
  );
}

export function solidsOf(prism: BarePrism): { solids: SolidMesh; edges: EdgeLines } {
  const writer = createSolidWriter();
  const n = prism.plan.length / 2;
  writePrism(writer, { ...prism, owner: 'Z', parts: Array.from({ length: prism.heights.length / n - 1 }, (_, k) => k) });
  return writer.finish();
}

/** Triangles of one part as corner coordinates, nine numbers each. */
export function trianglesOf(mesh: SolidMesh, part: number): number[][] {
  const out: number[][] = [];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const corners = [...mesh.triangles.slice(t, t + 3)];
    if (mesh.parts[corners[0]!] !== part) continue;
    expect(corners.every((v) => mesh.parts[v] === part)).toBe(true);
    out.push(corners.flatMap((v) => [...mesh.positions.slice(3 * v, 3 * v + 3)]));
  }
  return out;
}

/** Triangles of a flat solid. */
export function facesOf(solid: FlatSolid): number[][] {
  const out: number[][] = [];
  for (let t = 0; t < solid.triangles.length; t += 3) {
    out.push(solid.triangles.slice(t, t + 3).flatMap((v) => solid.points.slice(3 * v, 3 * v + 3)));
  }
  return out;
}

/** Every directed edge, by position, has its opposite as often as itself. */
export function expectClosed(triangles: readonly number[][]): void {
  expect(triangles.length).toBeGreaterThan(3);
  const count = new Map<string, number>();
  for (const corners of triangles) {
    const at = [0, 3, 6].map((i) => corners.slice(i, i + 3).join(' '));
    for (let e = 0; e < 3; e++) {
      const from = at[e]!;
      const to = at[(e + 1) % 3]!;
      count.set(`${from}|${to}`, (count.get(`${from}|${to}`) ?? 0) + 1);
      count.set(`${to}|${from}`, (count.get(`${to}|${from}`) ?? 0) - 1);
    }
  }
  const open = [...count].filter(([, n]) => n !== 0).map(([edge]) => edge);
  expect(open).toEqual([]);
}

/** Signed volume by the divergence rule: positive where the faces look outwards. */
export function volumeM3(triangles: readonly number[][]): number {
  const [ox, oy, oz] = triangles[0]!;
  let six = 0;
  for (const corners of triangles) {
    const [ax, ay, az, bx, by, bz, cx, cy, cz] = corners.map((value, i) => value - [ox!, oy!, oz!][i % 3]!);
    six += ax! * (by! * cz! - bz! * cy!) - ay! * (bx! * cz! - bz! * cx!) + az! * (bx! * cy! - by! * cx!);
  }
  return six / 6;
}

/** Greatest angle between a vertex's stored normal and its triangle's own [°]. */
export function worstNormalDeg(mesh: SolidMesh): number {
  let worst = 0;
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const at = [...mesh.triangles.slice(t, t + 3)];
    const [p, q, r] = at.map((v) => [...mesh.positions.slice(3 * v, 3 * v + 3)]);
    const u = q!.map((value, i) => value - p![i]!);
    const v = r!.map((value, i) => value - p![i]!);
    const n = [u[1]! * v[2]! - u[2]! * v[1]!, u[2]! * v[0]! - u[0]! * v[2]!, u[0]! * v[1]! - u[1]! * v[0]!];
    if (Math.hypot(...n) < 1e-6) continue;
    for (const vertex of at) {
      const m = [...mesh.normals.slice(4 * vertex, 4 * vertex + 3)];
      const cos = (n[0]! * m[0]! + n[1]! * m[1]! + n[2]! * m[2]!) / Math.hypot(...n) / Math.hypot(...m);
      worst = Math.max(worst, (Math.acos(Math.min(1, cos)) * 180) / Math.PI);
    }
  }
  return worst;
}
