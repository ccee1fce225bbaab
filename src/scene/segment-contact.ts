/** How two straight edges meet, with exact orientation tests on the file's own coordinates. */

import { orient2d } from 'robust-predicates';
import type { PointM } from '../model/scene-file.ts';
import type { Box } from './sweep-boxes.ts';

export interface Segment extends Box {
  readonly a: PointM;
  readonly b: PointM;
}

/** cross: each passes through the other · overlap: they share a length · touch: an end lies on the other. */
export interface Contact {
  readonly kind: 'cross' | 'overlap' | 'touch';
  readonly at: PointM;
}

/**
 * Box around two points.
 * @param a - one end
 * @param b - other end
 * @param marginM - added on every side [m]
 * @returns the box
 */
export function boxOf(a: PointM, b: PointM, marginM = 0): Box {
  return {
    minX: Math.min(a[0], b[0]) - marginM,
    maxX: Math.max(a[0], b[0]) + marginM,
    minY: Math.min(a[1], b[1]) - marginM,
    maxY: Math.max(a[1], b[1]) + marginM,
  };
}

/**
 * On which side of the line from a to b a point lies.
 * @returns positive to the left, negative to the right, 0 exactly on the line
 */
export function side(a: PointM, b: PointM, p: PointM): number {
  return -orient2d(a[0], a[1], b[0], b[1], p[0], p[1]);
}

export function samePoint(a: PointM, b: PointM): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

/**
 * How two segments meet.
 * @param s - one segment, its ends different
 * @param t - other segment, its ends different
 * @returns the contact, or null where they are apart
 */
export function contactOf(s: Segment, t: Segment): Contact | null {
  const sideA = side(s.a, s.b, t.a);
  const sideB = side(s.a, s.b, t.b);
  if (sideA === 0 && sideB === 0) return collinearContact(s, t);
  const sideC = side(t.a, t.b, s.a);
  const sideD = side(t.a, t.b, s.b);
  if (opposite(sideA, sideB) && opposite(sideC, sideD)) return { kind: 'cross', at: along(s, sideC / (sideC - sideD)) };
  if (sideA === 0 && inBox(s, t.a)) return { kind: 'touch', at: t.a };
  if (sideB === 0 && inBox(s, t.b)) return { kind: 'touch', at: t.b };
  if (sideC === 0 && inBox(t, s.a)) return { kind: 'touch', at: s.a };
  if (sideD === 0 && inBox(t, s.b)) return { kind: 'touch', at: s.b };
  return null;
}

/** Point at a share of a segment's length. */
export function along(s: Segment, share: number): PointM {
  return [s.a[0] + share * (s.b[0] - s.a[0]), s.a[1] + share * (s.b[1] - s.a[1])];
}

function opposite(a: number, b: number): boolean {
  return (a < 0 && b > 0) || (a > 0 && b < 0);
}

function inBox(box: Box, p: PointM): boolean {
  return p[0] >= box.minX && p[0] <= box.maxX && p[1] >= box.minY && p[1] <= box.maxY;
}

/** On one line, all ends common to both boxes bound what is shared. */
function collinearContact(s: Segment, t: Segment): Contact | null {
  const shared = [s.a, s.b].filter((p) => inBox(t, p)).concat([t.a, t.b].filter((p) => inBox(s, p)));
  const [first] = shared;
  if (first === undefined) return null;
  const other = shared.find((p) => !samePoint(p, first));
  return { kind: other === undefined ? 'touch' : 'overlap', at: first };
}
