/**
 * Upright sections through prisms. The plane goes through a point along a horizontal direction; the viewer stands on
 * the right of that direction, and what lies on the left stays.
 */

import type { EdgeLines, Prism, SolidMesh } from '../model/picture.ts';
import type { BarePrism } from './prism.ts';
import { createSolidWriter, type SolidWriter } from './solid-writer.ts';

export interface SectionPlane {
  readonly x: number;
  readonly y: number;
  /** Unit vector. */
  readonly dirX: number;
  readonly dirY: number;
}

/** One unbroken stretch of a cut. */
export interface SectionRun {
  /** Distances from the plane's point along its direction, rising [m]. */
  readonly alongM: Float64Array;
  /** Height of every surface at these distances, bottom surface first; layer k lies between k and k + 1 [m]. */
  readonly heightsM: readonly Float64Array[];
}

/** Stretches nearer than this are one [m]. */
const JOINED_M = 1e-7;
/** A point this near to the plane lies on it: a plane along an edge then cuts what is on its left, and all of it [m]. */
const ON_PLANE_M = 1e-7;

/** Where the plane crosses an edge of the plan: distance along, edge ends and share from the first to the second. */
interface Crossing {
  readonly alongM: number;
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

/**
 * Exact cut of a prism: levels are linear between the returned distances. Along an edge of the prism, it is cut if it
 * lies on the left of the plane's direction.
 * @param prism - prism [m]
 * @param plane - plane of the section [m]
 * @returns stretches in the order of the direction; none where the plane misses [m]
 * @source none: geometry
 */
export function sectionProfile(prism: BarePrism, plane: SectionPlane): SectionRun[] {
  const cuts = triangleCuts(prism, plane);
  cuts.sort((p, q) => p[0].alongM - q[0].alongM || p[1].alongM - q[1].alongM);
  const runs: Crossing[][] = [];
  for (const [start, end] of cuts) {
    const last = runs.at(-1);
    const reached = last?.at(-1);
    if (last !== undefined && reached !== undefined && start.alongM <= reached.alongM + JOINED_M) last.push(end);
    else runs.push([start, end]);
  }
  const vertices = prism.plan.length / 2;
  const surfaces = prism.heights.length / vertices;
  return runs.map((run) => ({
    alongM: Float64Array.from(run, (one) => one.alongM),
    heightsM: Array.from({ length: surfaces }, (_, s) => {
      const h = (v: number) => prism.heights[s * vertices + v];
      return Float64Array.from(run, (one) => h(one.from) + one.share * (h(one.to) - h(one.from)));
    }),
  }));
}

/** Start and end of the cut through each triangle. */
function triangleCuts(prism: BarePrism, plane: SectionPlane): [Crossing, Crossing][] {
  const { plan, triangles } = prism;
  const left = new Float64Array(plan.length / 2);
  const along = new Float64Array(plan.length / 2);
  for (let v = 0; v < left.length; v++) {
    const dx = plan[2 * v] - plane.x;
    const dy = plan[2 * v + 1] - plane.y;
    const off = plane.dirX * dy - plane.dirY * dx;
    left[v] = Math.abs(off) <= ON_PLANE_M ? 0 : off;
    along[v] = plane.dirX * dx + plane.dirY * dy;
  }
  const crossing = (p: number, q: number): Crossing => {
    // Lower index first, so that both triangles of an edge find the same point.
    const [from, to] = p < q ? [p, q] : [q, p];
    const share = left[from] / (left[from] - left[to]);
    return { alongM: along[from] + share * (along[to] - along[from]), from, to, share };
  };
  const cuts: [Crossing, Crossing][] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const found: Crossing[] = [];
    for (let e = 0; e < 3; e++) {
      const p = triangles[t + e];
      const q = triangles[t + ((e + 1) % 3)];
      if (left[p] > 0 !== left[q] > 0) found.push(crossing(p, q));
    }
    if (found.length !== 2 || found[0].alongM === found[1].alongM) continue;
    cuts.push(found[0].alongM < found[1].alongM ? [found[0], found[1]] : [found[1], found[0]]);
  }
  return cuts;
}

/**
 * Cut faces of prisms, facing the viewer, with their outlines.
 * @param prisms - prisms [m]
 * @param plane - plane of the section [m]
 * @returns faces of all layers and the lines round them [m]
 * @source none: geometry
 */
export function sectionFaces(prisms: readonly Prism[], plane: SectionPlane): { readonly faces: SolidMesh; readonly outlines: EdgeLines } {
  const writer = createSolidWriter();
  writer.normal(plane.dirY, -plane.dirX, 0);
  for (const prism of prisms) {
    for (const run of sectionProfile(prism, plane)) {
      prism.parts.forEach((part, layer) => {
        writer.begin(part);
        writeLayer(writer, run, layer, plane);
      });
    }
  }
  const { solids, edges } = writer.finish();
  return { faces: solids, outlines: edges };
}

function writeLayer(writer: SolidWriter, run: SectionRun, layer: number, plane: SectionPlane): void {
  const { alongM } = run;
  const low = run.heightsM[layer];
  const high = run.heightsM[layer + 1];
  const x = (i: number) => plane.x + plane.dirX * alongM[i];
  const y = (i: number) => plane.y + plane.dirY * alongM[i];
  const upright = (i: number) => {
    writer.lineEnd(x(i), y(i), low[i], 0);
    writer.lineEnd(x(i), y(i), high[i], 1);
  };
  const thick = (i: number) => high[i] > low[i];
  for (let i = 0; i + 1 < alongM.length; i++) {
    if (!thick(i) && !thick(i + 1)) continue;
    const lowHere = writer.vertex(x(i), y(i), low[i], 0);
    const lowNext = writer.vertex(x(i + 1), y(i + 1), low[i + 1], 0);
    const highNext = writer.vertex(x(i + 1), y(i + 1), high[i + 1], 1);
    const highHere = writer.vertex(x(i), y(i), high[i], 1);
    writer.triangle(lowHere, lowNext, highNext);
    writer.triangle(lowHere, highNext, highHere);
    writer.lineEnd(x(i), y(i), low[i], 0);
    writer.lineEnd(x(i + 1), y(i + 1), low[i + 1], 0);
    writer.lineEnd(x(i), y(i), high[i], 1);
    writer.lineEnd(x(i + 1), y(i + 1), high[i + 1], 1);
  }
  if (thick(0)) upright(0);
  if (thick(alongM.length - 1)) upright(alongM.length - 1);
}
