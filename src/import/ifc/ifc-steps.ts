/** Steps in a top: parts at other levels side by side. Levels are then taken a little inside each part, since a net has one level per place. */

import type { Xyz } from './ifc-model.ts';

/** Less than this is no step, and ends nearer than this are at one place [m]. */
const LEAST_STEP_M = 0.002;
const SAME_PLACE_M = 0.005;
/** How far inside its edge the level of a part is taken [m]. */
export const INSIDE_M = 0.01;

/** Whether two levels lie at one place; `metres` is the length of the unit. */
export function hasStep(spots: readonly Xyz[], metres: number): boolean {
  const size = SAME_PLACE_M / metres;
  const cells = new Map<string, Xyz[]>();
  return spots.some((spot) => {
    const [i, j] = [Math.round(spot[0] / size), Math.round(spot[1] / size)];
    const near = [-1, 0, 1].flatMap((di) => [-1, 0, 1].flatMap((dj) => cells.get(`${i + di} ${j + dj}`) ?? []));
    const own = cells.get(`${i} ${j}`);
    if (own === undefined) cells.set(`${i} ${j}`, [spot]);
    else own.push(spot);
    return near.some(([x, y, z]) => Math.hypot(x - spot[0], y - spot[1]) <= size && Math.abs(z - spot[2]) > LEAST_STEP_M / metres);
  });
}

/** A closed line to the left of a ring, with its levels. */
export function insideOf(ring: readonly Xyz[], by: number): readonly Xyz[] {
  const inner = ring.map((point, i): Xyz => {
    const [a, b] = [leftOf(ring[(i + ring.length - 1) % ring.length], point), leftOf(point, ring[(i + 1) % ring.length])];
    // Along the bisector, so that both edges are as far away; not beyond a sharp corner.
    const share = by / Math.max(0.2, 1 + a[0] * b[0] + a[1] * b[1]);
    return [point[0] + share * (a[0] + b[0]), point[1] + share * (a[1] + b[1]), point[2]];
  });
  return [...inner, inner[0]];
}

function leftOf([x, y]: Xyz, [nextX, nextY]: Xyz): readonly [number, number] {
  const length = Math.hypot(nextX - x, nextY - y);
  return length > 0 ? [-(nextY - y) / length, (nextX - x) / length] : [0, 0];
}

/** Ring with its area to the left: outlines counter-clockwise, holes clockwise. */
export function directed(ring: readonly Xyz[], isHole: boolean): readonly Xyz[] {
  const [origin] = ring;
  const twice = ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length];
    return sum + (x - origin[0]) * (nextY - origin[1]) - (nextX - origin[0]) * (y - origin[1]);
  }, 0);
  return twice > 0 === isHole ? [...ring].reverse() : ring;
}
