/** Closed solids and ink lines of a prism's layers: two caps and the walls between them, all facing outwards. */

import type { Prism } from '../model/picture.ts';
import type { SolidWriter } from './solid-writer.ts';

/** A rim turning by more than this has an upright ink line: cosine of 20° [-]. */
const CORNER_COS = Math.cos((20 * Math.PI) / 180);

/**
 * Writes every layer of a prism as a closed solid of its own. Where a layer has no thickness it leaves nothing, and
 * the solid closes along the line where it runs out.
 * @param writer - receives solids and ink lines [m]
 * @param prism - prism [m]
 * @source none: geometry
 */
export function writePrism(writer: SolidWriter, prism: Prism): void {
  const corners = rimCorners(prism);
  prism.parts.forEach((part, layer) => {
    writer.begin(part);
    writeCap(writer, prism, layer, true);
    writeCap(writer, prism, layer, false);
    writeWalls(writer, prism, layer);
    writeInk(writer, prism, layer, corners);
  });
}

/** Upper or lower face; vertices are shared between triangles that look the same way. */
function writeCap(writer: SolidWriter, prism: Prism, layer: number, upper: boolean): void {
  const { plan, triangles, heights } = prism;
  const vertices = plan.length / 2;
  const low = layer * vertices;
  const high = low + vertices;
  const own = upper ? high : low;
  const [second, third] = upper ? [1, 2] : [2, 1];
  const written = new Int32Array(vertices);
  const facing = new Float64Array(vertices).fill(Number.NaN);
  const facingY = new Float64Array(vertices);
  const put = (v: number, sx: number, sy: number): number => {
    if (facing[v] !== sx || facingY[v] !== sy) {
      facing[v] = sx;
      facingY[v] = sy;
      written[v] = writer.vertex(plan[2 * v], plan[2 * v + 1], heights[own + v], upper ? 1 : 0);
    }
    return written[v];
  };
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t];
    const b = triangles[t + 1];
    const c = triangles[t + 2];
    if (heights[low + a] === heights[high + a] && heights[low + b] === heights[high + b] && heights[low + c] === heights[high + c]) {
      continue;
    }
    const [sx, sy] = slope(prism, own, t);
    if (upper) writer.normal(-sx, -sy, 1);
    else writer.normal(sx, sy, -1);
    const p = put(a, sx, sy);
    const q = put(triangles[t + second], sx, sy);
    const r = put(triangles[t + third], sx, sy);
    writer.triangle(p, q, r);
  }
}

/** Rise of a surface over a triangle along x and y, in steps finer than a normal's byte so that even planes share vertices [-]. */
function slope(prism: Prism, own: number, t: number): [number, number] {
  const { plan, triangles, heights } = prism;
  const a = triangles[t];
  const b = triangles[t + 1];
  const c = triangles[t + 2];
  const ux = plan[2 * b] - plan[2 * a];
  const uy = plan[2 * b + 1] - plan[2 * a + 1];
  const uz = heights[own + b] - heights[own + a];
  const vx = plan[2 * c] - plan[2 * a];
  const vy = plan[2 * c + 1] - plan[2 * a + 1];
  const vz = heights[own + c] - heights[own + a];
  const det = ux * vy - uy * vx;
  const sx = Math.round((512 * (uz * vy - vz * uy)) / det) / 512;
  const sy = Math.round((512 * (vz * ux - uz * vx)) / det) / 512;
  // A sliver without area has no slope and is not seen.
  return Number.isFinite(sx) && Number.isFinite(sy) ? [sx, sy] : [0, 0];
}

function writeWalls(writer: SolidWriter, prism: Prism, layer: number): void {
  const { plan, rim, heights } = prism;
  const vertices = plan.length / 2;
  const low = layer * vertices;
  const high = low + vertices;
  for (let e = 0; e < rim.length; e += 2) {
    const a = rim[e];
    const b = rim[e + 1];
    const aThere = heights[high + a] > heights[low + a];
    const bThere = heights[high + b] > heights[low + b];
    if (!aThere && !bThere) continue;
    // Region on the left, so the wall looks to the right.
    writer.normal(plan[2 * b + 1] - plan[2 * a + 1], plan[2 * a] - plan[2 * b], 0);
    const aLow = writer.vertex(plan[2 * a], plan[2 * a + 1], heights[low + a], 0);
    const bLow = writer.vertex(plan[2 * b], plan[2 * b + 1], heights[low + b], 0);
    const aHigh = aThere ? writer.vertex(plan[2 * a], plan[2 * a + 1], heights[high + a], 1) : aLow;
    const bHigh = bThere ? writer.vertex(plan[2 * b], plan[2 * b + 1], heights[high + b], 1) : bLow;
    if (bThere) writer.triangle(aLow, bLow, bHigh);
    if (aThere) writer.triangle(aLow, bHigh, aHigh);
  }
}

/** Upper and lower outline, and an upright at every corner. */
function writeInk(writer: SolidWriter, prism: Prism, layer: number, corners: Uint8Array): void {
  const { plan, rim, heights } = prism;
  const vertices = plan.length / 2;
  const low = layer * vertices;
  const high = low + vertices;
  for (let e = 0; e < rim.length; e += 2) {
    const a = rim[e];
    const b = rim[e + 1];
    const aThere = heights[high + a] > heights[low + a];
    if (!aThere && !(heights[high + b] > heights[low + b])) continue;
    for (let upper = 0; upper < 2; upper++) {
      const own = upper === 1 ? high : low;
      writer.lineEnd(plan[2 * a], plan[2 * a + 1], heights[own + a], upper);
      writer.lineEnd(plan[2 * b], plan[2 * b + 1], heights[own + b], upper);
    }
    if (!aThere || corners[a] === 0) continue;
    writer.lineEnd(plan[2 * a], plan[2 * a + 1], heights[low + a], 0);
    writer.lineEnd(plan[2 * a], plan[2 * a + 1], heights[high + a], 1);
  }
}

/** 1 for each vertex where the rim turns sharply or two rims touch. */
function rimCorners(prism: Prism): Uint8Array {
  const { plan, rim } = prism;
  const corners = new Uint8Array(plan.length / 2);
  const arriving = new Int32Array(plan.length / 2).fill(-1);
  for (let e = 0; e < rim.length; e += 2) {
    if (arriving[rim[e + 1]] >= 0) corners[rim[e + 1]] = 1;
    arriving[rim[e + 1]] = rim[e];
  }
  for (let e = 0; e < rim.length; e += 2) {
    const at = rim[e];
    const before = arriving[at];
    const after = rim[e + 1];
    const ux = plan[2 * at] - plan[2 * before];
    const uy = plan[2 * at + 1] - plan[2 * before + 1];
    const vx = plan[2 * after] - plan[2 * at];
    const vy = plan[2 * after + 1] - plan[2 * at + 1];
    if (ux * vx + uy * vy < CORNER_COS * Math.hypot(ux, uy) * Math.hypot(vx, vy)) corners[at] = 1;
  }
  return corners;
}
