/** What stands in a walker's way, in plan: trunks, walls, blocks. */

import type { PointM, SceneFile, SceneObject } from '../model/scene-file.ts';

export interface Obstacle {
  /** To its nearest face; negative or 0 inside. Local coordinates [m]. */
  distanceM(x: number, y: number): number;
}

const TRUNK_M = 0.2;

function toSegment(x: number, y: number, [ax, ay]: PointM, [bx, by]: PointM): number {
  const length2 = (bx - ax) ** 2 + (by - ay) ** 2;
  const share = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length2));
  return Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay));
}

function toLine(x: number, y: number, line: readonly PointM[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < line.length; i++) least = Math.min(least, toSegment(x, y, line[i - 1] as PointM, line[i] as PointM));
  return least;
}

function isInside(x: number, y: number, ring: readonly PointM[]): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [ax, ay] = ring[i] as PointM;
    const [bx, by] = ring[j] as PointM;
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
  }
  return inside;
}

function obstacleOf(object: SceneObject, local: (at: PointM) => PointM): Obstacle {
  if (object.kind === 'tree') {
    const [cx, cy] = local(object.at);
    return { distanceM: (x, y) => Math.hypot(x - cx, y - cy) - TRUNK_M };
  }
  if (object.kind === 'block') {
    const ring = object.outline.map(local);
    const closed = [...ring, ring[0] as PointM];
    return { distanceM: (x, y) => (isInside(x, y, ring) ? -1 : 1) * toLine(x, y, closed) };
  }
  const line = object.line.map(local);
  const halfM = object.kind === 'line' ? object.widthM / 2 : 0.1;
  return { distanceM: (x, y) => toLine(x, y, line) - halfM };
}

/** Everything of a scene that one walks around, in local coordinates. */
export function obstaclesOf(scene: SceneFile, originM: readonly [number, number]): Obstacle[] {
  const local = ([x, y]: PointM): PointM => [x - originM[0], y - originM[1]];
  return (scene.objects ?? []).map((object) => obstacleOf(object, local));
}

/** A round thing. */
export function roundObstacle(cx: number, cy: number, radiusM: number): Obstacle {
  return { distanceM: (x, y) => Math.hypot(x - cx, y - cy) - radiusM };
}
