/** Lines along which a point is drawn: straight on, parallel and at right angles to edges, along the axes of the plan. */

import type { PointM } from '../model/scene-file.ts';
import { cosSin } from './quarter-turns.ts';
import { isAt } from './shared-vertices.ts';
import type { SnapAsk, SnapIndex } from './snap.ts';

export interface GuideLine {
  readonly kind: 'right angle' | 'parallel' | 'straight';
  readonly from: PointM;
  /** Of length 1. */
  readonly along: PointM;
}

/** Directions nearer to each other than this are one (sine). */
const SAME_DIRECTION = 1e-9;

/**
 * Guides of what is being drawn: from the point before by the edges that end there, by edges picked and by the axes of the plan; from the first point at
 * right angles to the first edge, so that a rectangle closes.
 * @param index - edges of the scene
 * @param ask - what is being drawn
 * @returns guides, those that say more first; each direction once
 */
export function guideLines(index: SnapIndex, { from, guides = [], drawn = [], grid, moving }: SnapAsk): readonly GuideLine[] {
  if (from === undefined) return [];
  const lines: GuideLine[] = [];
  const add = (line: GuideLine) => {
    const isThere = lines.some((one) => isAt(one.from, line.from) && Math.abs(cross(one.along, line.along)) < SAME_DIRECTION);
    if (!isThere) lines.push(line);
  };
  const addBoth = (a: PointM, b: PointM, kind: 'parallel' | 'straight') => {
    const along = directionOf(a, b);
    if (along === null) return;
    add({ kind: 'right angle', from, along: leftOf(along) });
    add({ kind, from, along });
  };
  for (const [a, b] of guides) addBoth(a, b, isAt(a, from) || isAt(b, from) ? 'straight' : 'parallel');
  for (const { item } of index.edgesNear(from, 0)) {
    if (moving?.some((point) => isAt(point, item.a) || isAt(point, item.b)) === true) continue;
    if (isAt(item.a, from) || isAt(item.b, from)) addBoth(item.a, item.b, 'straight');
  }
  const axis = cosSin(grid?.turnDeg ?? 0);
  add({ kind: 'parallel', from, along: axis });
  add({ kind: 'parallel', from, along: leftOf(axis) });
  const [first, second] = drawn;
  const begun = drawn.length >= 3 && first && second ? directionOf(first, second) : null;
  if (begun !== null && first) add({ kind: 'right angle', from: first, along: leftOf(begun) });
  return lines;
}

const cross = (a: PointM, b: PointM) => a[0] * b[1] - a[1] * b[0];

const leftOf = ([x, y]: PointM): PointM => [-y, x];

function directionOf(a: PointM, b: PointM): PointM | null {
  const lengthM = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return lengthM === 0 ? null : [(b[0] - a[0]) / lengthM, (b[1] - a[1]) / lengthM];
}

const onGuide = ({ from, along }: GuideLine, lengthM: number): PointM => [from[0] + lengthM * along[0], from[1] + lengthM * along[1]];

/** The point of a guide nearest to a place; a guide along an axis keeps that coordinate exact. */
export function nearestOnGuide(at: PointM, line: GuideLine): PointM {
  return onGuide(line, (at[0] - line.from[0]) * line.along[0] + (at[1] - line.from[1]) * line.along[1]);
}

/** Where two guides from different points cross; null where they do not. */
export function whereGuidesCross(line: GuideLine, other: GuideLine): PointM | null {
  const sine = cross(line.along, other.along);
  if (isAt(line.from, other.from) || Math.abs(sine) < SAME_DIRECTION) return null;
  const between: PointM = [other.from[0] - line.from[0], other.from[1] - line.from[1]];
  return onGuide(line, cross(between, other.along) / sine);
}

/** Where a guide meets an edge, taken along the edge so that it lies on it; null where it passes by or runs along. */
export function guideOntoEdge({ from, along }: GuideLine, { a, b }: { readonly a: PointM; readonly b: PointM }): PointM | null {
  const edge: PointM = [b[0] - a[0], b[1] - a[1]];
  const sine = cross(edge, along);
  if (Math.abs(sine) <= SAME_DIRECTION * Math.hypot(edge[0], edge[1])) return null;
  const share = cross([from[0] - a[0], from[1] - a[1]], along) / sine;
  if (!(share > 0 && share < 1)) return null;
  const at: PointM = [a[0] + share * edge[0], a[1] + share * edge[1]];
  return isAt(at, from) ? null : at;
}
