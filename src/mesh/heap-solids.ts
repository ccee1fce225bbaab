/** Things with an outline that stand on a surface: blocks, and heaps with sloping sides. */

import { levelSurface } from '../core/levels/surface.ts';
import type { Ring } from '../model/deck-input.ts';
import { between, type FlatSolid } from './flat-solid.ts';
import { type PlanNet, planNet } from './plan-net.ts';

/** Level of the ground at a point [m]. */
export type LevelAt = (x: number, y: number) => number;

/**
 * Upright block with a level top, its foot on the ground at every corner.
 * @param ring - outline [m]
 * @param heightM - height above the highest ground under a corner [m]
 * @param groundM - level of the ground [m]
 * @returns solid, or null where the outline has no area [m]
 * @source none: geometry
 */
export function blockSolid(ring: Ring, heightM: number, groundM: LevelAt): FlatSolid | null {
  const net = ringNet(ring);
  if (net === null) return null;
  const foot = onGround(net.plan, groundM, 0);
  let highestM = -Infinity;
  for (let i = 2; i < foot.length; i += 3) highestM = Math.max(highestM, foot[i]);
  const top = foot.map((value, i) => (i % 3 === 2 ? highestM + heightM : value));
  return between(net, foot, top);
}

/**
 * Heap that follows the ground, with a flat top and sides at 1 to 1 where the outline is wide enough, else upright.
 * @param ring - outline of the foot [m]
 * @param heightM - height above the ground [m]
 * @param groundM - level of the ground [m]
 * @returns solid, or null where the outline has no area [m]
 * @source none: geometry
 */
export function heapSolid(ring: Ring, heightM: number, groundM: LevelAt): FlatSolid | null {
  const net = ringNet(ring);
  if (net === null) return null;
  const top = movedInwards(net, heightM) ?? net.plan;
  return between(net, onGround(net.plan, groundM, 0), onGround(top, groundM, heightM));
}

function ringNet(ring: Ring): PlanNet | null {
  const region = { outer: ring, holes: [] };
  return planNet(region, region, { deck: levelSurface(0), finish: null }).net;
}

function onGround(plan: Float64Array, groundM: LevelAt, heightM: number): number[] {
  const points: number[] = [];
  for (let i = 0; i < plan.length; i += 2) points.push(plan[i], plan[i + 1], groundM(plan[i], plan[i + 1]) + heightM);
  return points;
}

/**
 * Every edge of the outline moved inwards, or null where that does not fit: then a triangle of the net would turn over.
 * All vertices of the net lie on the outline.
 */
function movedInwards(net: PlanNet, byM: number): Float64Array | null {
  const { plan, rim, triangles } = net;
  const before = new Int32Array(plan.length / 2).fill(-1);
  const after = new Int32Array(plan.length / 2).fill(-1);
  for (let e = 0; e < rim.length; e += 2) {
    after[rim[e]] = rim[e + 1];
    before[rim[e + 1]] = rim[e];
  }
  const moved = new Float64Array(plan.length);
  for (let v = 0; v < before.length; v++) {
    const [px, py] = inward(plan, before[v], v);
    const [qx, qy] = inward(plan, v, after[v]);
    const scale = byM / (1 + px * qx + py * qy);
    moved[2 * v] = plan[2 * v] + scale * (px + qx);
    moved[2 * v + 1] = plan[2 * v + 1] + scale * (py + qy);
  }
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = triangles.subarray(t, t + 3);
    const twice =
      (moved[2 * b] - moved[2 * a]) * (moved[2 * c + 1] - moved[2 * a + 1]) -
      (moved[2 * c] - moved[2 * a]) * (moved[2 * b + 1] - moved[2 * a + 1]);
    if (!(twice > 0)) return null;
  }
  return moved;
}

/** Unit vector to the left of an edge. */
function inward(plan: Float64Array, from: number, to: number): [number, number] {
  const dx = plan[2 * to] - plan[2 * from];
  const dy = plan[2 * to + 1] - plan[2 * from + 1];
  const length = Math.hypot(dx, dy);
  return [-dy / length, dx / length];
}
