/** Fewer points for the same line: one pass, and no point further from the new line than the error. */

import type { PointM } from '../model/scene-file.ts';
import type { Steps } from './steps.ts';

/** Points between two steps. */
const STEP = 20_000;

/**
 * Keeps as few points as directions allow: from the last kept point, all points passed must lie within the error of the
 * straight line to the next (cone intersection, one pass over the points).
 * @param points - open line, or a ring without its closing point
 * @param closed - whether it is a ring
 * @param error - greatest distance of a left-out point from the new line [m]
 * @returns the points kept, first and last of a line always
 */
export function* simplifyLine(points: readonly PointM[], closed: boolean, error: number): Steps<PointM[]> {
  const count = closed ? points.length + 1 : points.length;
  const at = (i: number) => points[i % points.length];
  const kept: PointM[] = [at(0)];
  let anchor = 0;
  let cone = emptyCone();
  for (let i = 1; i < count; i++) {
    if (i % STEP === 0) yield i / count;
    const [dx, dy] = [at(i)[0] - at(anchor)[0], at(i)[1] - at(anchor)[1]];
    if (!passes(cone, dx, dy, error)) {
      anchor = i - 1;
      kept.push(at(anchor));
      cone = emptyCone();
      passes(cone, at(i)[0] - at(anchor)[0], at(i)[1] - at(anchor)[1], error);
    }
  }
  if (!closed) kept.push(at(count - 1));
  return kept;
}

interface Cone {
  /** Direction from which the others are counted. */
  middle: number;
  low: number;
  high: number;
  /** Greatest distance so far. */
  far: number;
}

function emptyCone(): Cone {
  return { middle: Number.NaN, low: -Math.PI, high: Math.PI, far: 0 };
}

/** Whether a point may be the end of the line so far; narrows the cone if so. */
function passes(cone: Cone, dx: number, dy: number, error: number): boolean {
  const distance = Math.hypot(dx, dy);
  if (distance < cone.far) return false;
  if (distance <= error) return true;
  const direction = Math.atan2(dy, dx);
  if (Number.isNaN(cone.middle)) cone.middle = direction;
  let turn = direction - cone.middle;
  if (turn > Math.PI) turn -= 2 * Math.PI;
  if (turn < -Math.PI) turn += 2 * Math.PI;
  if (turn < cone.low || turn > cone.high) return false;
  const half = Math.asin(Math.min(1, error / distance));
  cone.low = Math.max(cone.low, turn - half);
  cone.high = Math.min(cone.high, turn + half);
  cone.far = distance;
  return true;
}
