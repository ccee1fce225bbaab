/** What is drawn of wheels besides the vehicles: their patches grown down to a layer, and the line they follow. */

import type { EdgeLines, Picture, SolidMesh } from '../model/picture.ts';
import type { PoseTop, RunPose, RunView } from '../model/run.ts';
import type { FootLayer } from '../store/view-store.ts';
import type { PartState } from './part-states.ts';
import { nearPrisms, topAt } from './top-at.ts';
import { partOf } from './vehicle-stand.ts';

/** Height above the surface, so that lines do not sink into it [m]. */
const ABOVE_M = 0.02;
/** Distance of the arrows along a line [m]. */
const ARROWS_M = 6;

/** A patch on the top of a part. */
interface Patch {
  readonly ring: Float64Array;
  readonly zM: number;
  readonly part: number;
}

/** A grown patch, and the tyre's own on the surface above it; null where that is the same. */
export interface Foot extends Patch {
  readonly tyre: Patch | null;
}

/** The top that was chosen, among those of one ground; the membrane by its empty name. */
export function chosenTop(tops: readonly PoseTop[], { materialId, nth }: FootLayer): PoseTop | null {
  return tops.filter((top) => top.materialId === materialId)[materialId === '' ? 0 : nth] ?? null;
}

/** Patches of all wheels that are looked at on the chosen layer; ground without that layer has none. */
export function footprints(pose: RunPose, foot: FootLayer, picture: Picture, datumM: number): Foot[] {
  const patchOn = (zone: string | null, top: PoseTop | null | undefined): Patch | null => {
    const part = top ? partOf(picture, zone, top.layer) : -1;
    return top && part >= 0 ? { ring: top.ring, zM: top.levelM - datumM, part } : null;
  };
  return pose.wheels.flatMap((wheel) => {
    if (!wheel.onLine) return [];
    const [under] = wheel.grounds;
    const tyre = under && !under.beside ? patchOn(under.zone, under.tops[0]) : null;
    return wheel.grounds.flatMap(({ zone, tops }): Foot[] => {
      const patch = patchOn(zone, chosenTop(tops, foot));
      return patch ? [{ ...patch, tyre: tyre?.part === patch.part ? null : tyre }] : [];
    });
  });
}

/** Outlines of patches, lifted with the layer they lie on. */
export function footLines(feet: readonly Foot[]): EdgeLines {
  const positions: number[] = [];
  const parts: number[] = [];
  for (const { ring, zM, part } of feet) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      positions.push(ring[i] as number, ring[i + 1] as number, zM + ABOVE_M, ring[j] as number, ring[j + 1] as number, zM + ABOVE_M);
      parts.push(part, part);
    }
  }
  return { positions: Float32Array.from(positions), parts: Uint16Array.from(parts), upper: new Uint8Array(parts.length).fill(1) };
}

/** From the corners of a tyre's patch down to those of the grown one: how the load spreads. */
export function spreadLines(feet: readonly Foot[]): EdgeLines {
  const positions: number[] = [];
  const parts: number[] = [];
  for (const { tyre, ...patch } of feet) {
    for (let i = 0; tyre && i < patch.ring.length; i += 2) {
      for (const { ring, zM, part } of [tyre, patch]) {
        positions.push(ring[i] as number, ring[i + 1] as number, zM + ABOVE_M);
        parts.push(part);
      }
    }
  }
  return { positions: Float32Array.from(positions), parts: Uint16Array.from(parts), upper: new Uint8Array(parts.length).fill(1) };
}

/** Faces of patches. */
export function footFaces(feet: readonly Foot[]): SolidMesh {
  const positions = Float32Array.from(
    feet.flatMap(({ ring, zM }) => [0, 2, 4, 6].flatMap((i) => [ring[i] as number, ring[i + 1] as number, zM + ABOVE_M])),
  );
  const vertices = positions.length / 3;
  return {
    positions,
    normals: Int8Array.from({ length: vertices * 4 }, (_, i) => (i % 4 === 2 ? 127 : 0)),
    parts: Uint16Array.from({ length: vertices }, (_, v) => (feet[v >> 2] as Foot).part),
    upper: new Uint8Array(vertices).fill(1),
    triangles: Uint32Array.from(feet.flatMap((_, f) => [0, 1, 2, 0, 2, 3].map((corner) => 4 * f + corner))),
  };
}

/** The lane that each vehicle sweeps, as wide as itself, laid on what is drawn; arrows say which way. */
export function routeLines(runs: readonly RunView[], picture: Picture, states: readonly PartState[]): EdgeLines {
  const positions: number[] = [];
  const parts: number[] = [];
  const near = nearPrisms(picture);
  const find = (x: number, y: number) => topAt({ ...picture, prisms: near(x, y) }, states, x, y);
  const segment = (from: readonly [number, number], to: readonly [number, number]) => {
    const [a, b] = [find(...from), find(...to)];
    if (a === null || b === null) return;
    positions.push(...from, a.zM + ABOVE_M, ...to, b.zM + ABOVE_M);
    parts.push(a.part, b.part);
  };
  for (const { path, body } of runs) {
    const half = body.widthM / 2;
    const points = sidePoints(path, half);
    for (let i = 1; i < points.length; i++) {
      const [from, to] = [points[i - 1], points[i]] as [SidePoint, SidePoint];
      segment(from.left, to.left);
      segment(from.right, to.right);
      if (Math.floor(to.alongM / ARROWS_M) === Math.floor(from.alongM / ARROWS_M)) continue;
      for (const side of [1, -1]) {
        const tail = [
          to.middle[0] - 0.3 * to.dir[0] - side * 0.22 * to.dir[1],
          to.middle[1] - 0.3 * to.dir[1] + side * 0.22 * to.dir[0],
        ] as const;
        segment(to.middle, tail);
      }
    }
    for (const end of [points[0], points.at(-1)]) if (end) segment(end.left, end.right);
  }
  return { positions: Float32Array.from(positions), parts: Uint16Array.from(parts), upper: new Uint8Array(parts.length).fill(1) };
}

interface SidePoint {
  readonly middle: readonly [number, number];
  readonly left: readonly [number, number];
  readonly right: readonly [number, number];
  readonly dir: readonly [number, number];
  readonly alongM: number;
}

function sidePoints(path: Float64Array, half: number): SidePoint[] {
  const count = path.length / 2;
  let alongM = 0;
  return Array.from({ length: count }, (_, i): SidePoint => {
    const at = (k: number) => [path[2 * k] as number, path[2 * k + 1] as number] as const;
    const [before, here, after] = [at(Math.max(0, i - 1)), at(i), at(Math.min(count - 1, i + 1))];
    const [dx, dy] = [after[0] - before[0], after[1] - before[1]];
    const long = Math.max(1e-9, Math.hypot(dx, dy));
    const dir = [dx / long, dy / long] as const;
    if (i > 0) alongM += Math.hypot(here[0] - before[0], here[1] - before[1]);
    return {
      middle: here,
      left: [here[0] - half * dir[1], here[1] + half * dir[0]],
      right: [here[0] + half * dir[1], here[1] - half * dir[0]],
      dir,
      alongM,
    };
  });
}
