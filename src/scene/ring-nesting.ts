/** Whether the holes of a polygon lie inside its outline and apart from each other. */

import type { PointM } from '../model/scene-file.ts';
import { pointInRing, type Ring, type RingEdge } from './ring.ts';
import { contactOf, samePoint } from './segment-contact.ts';
import { sweepBoxes } from './sweep-boxes.ts';

export interface NestingFault {
  readonly kind: 'crosses' | 'shares-edge' | 'outside' | 'overlaps';
  /** The hole. */
  readonly ring: Ring;
  /** The outline or the other hole. */
  readonly other: Ring;
  readonly at: PointM;
}

/** Points at which one ring touches others, by edge. */
type Touches = Map<RingEdge, { readonly at: PointM; readonly other: Ring }[]>;

/**
 * Faults in how rings lie to each other. Holes may touch the outline or each other in single points.
 * @param outline - simple ring
 * @param holes - simple rings
 * @param most - number of faults after which the search ends
 * @returns the first faults found, at most one for each pair of rings
 */
export function nestingFaults(outline: Ring, holes: readonly Ring[], most: number): readonly NestingFault[] {
  const faults: NestingFault[] = [];
  const touches: Touches = new Map();
  const faulty = new Map<Ring, Set<Ring>>();
  const isFaulty = (a: Ring, b: Ring) => faulty.get(a)?.has(b) === true || faulty.get(b)?.has(a) === true;
  sweepBoxes(
    [outline, ...holes].flatMap((ring) => ring.edges),
    (s, t) => {
      if (s.ring === t.ring || isFaulty(s.ring, t.ring)) return true;
      const contact = contactOf(s, t);
      if (contact === null) return true;
      if (contact.kind === 'touch') {
        remember(touches, s, contact.at, t.ring);
        remember(touches, t, contact.at, s.ring);
        return true;
      }
      const [ring, other] = s.ring === outline ? [t.ring, s.ring] : [s.ring, t.ring];
      faulty.set(ring, (faulty.get(ring) ?? new Set()).add(other));
      faults.push({ kind: contact.kind === 'cross' ? 'crosses' : 'shares-edge', ring, other, at: contact.at });
      return faults.length < most;
    },
  );
  for (const hole of holes) {
    if (faults.length >= most) return faults;
    if (isFaulty(hole, outline)) continue;
    const { inside, outside } = whereabouts(hole, outline, touches);
    if (outside !== null) faults.push({ kind: inside === null ? 'outside' : 'crosses', ring: hole, other: outline, at: outside });
  }
  sweepBoxes(faults.length < most ? holes : [], (a, b) => {
    const fault = isFaulty(a, b) ? null : overlapOf(a, b, touches);
    if (fault !== null) faults.push(fault);
    return faults.length < most;
  });
  return faults;
}

function remember(touches: Touches, edge: RingEdge, at: PointM, other: Ring): void {
  const list = touches.get(edge) ?? [];
  list.push({ at, other });
  touches.set(edge, list);
}

function overlapOf(a: Ring, b: Ring, touches: Touches): NestingFault | null {
  const first = whereabouts(a, b, touches);
  if (first.inside !== null) return { kind: first.outside === null ? 'overlaps' : 'crosses', ring: a, other: b, at: first.inside };
  const second = whereabouts(b, a, touches);
  return second.inside === null ? null : { kind: 'overlaps', ring: b, other: a, at: second.inside };
}

/** A point of a ring inside another and one outside it; rings that do not cross change sides only where they touch. */
function whereabouts(ring: Ring, other: Ring, touches: Touches): { readonly inside: PointM | null; readonly outside: PointM | null } {
  const found: { inside: PointM | null; outside: PointM | null } = { inside: null, outside: null };
  for (const p of samples(ring, other, touches)) {
    const place = pointInRing(p, other);
    if (place > 0) found.inside ??= p;
    if (place < 0) found.outside ??= p;
  }
  return found;
}

/** The middle of each piece between touching points, or any corner where nothing touches. */
function samples(ring: Ring, other: Ring, touches: Touches): readonly PointM[] {
  const middles: PointM[] = [];
  for (const edge of ring.edges) {
    const on = (touches.get(edge) ?? []).filter((touch) => touch.other === other).map((touch) => touch.at);
    if (on.length === 0) continue;
    const stops = [edge.a, ...on.sort((p, q) => distance(edge.a, p) - distance(edge.a, q)), edge.b];
    for (const [i, p] of stops.entries()) {
      const q = stops[i + 1];
      if (q !== undefined && !samePoint(p, q)) middles.push([(p[0] + q[0]) / 2, (p[1] + q[1]) / 2]);
    }
  }
  return middles.length > 0 ? middles : ring.points.slice(0, 1);
}

function distance(p: PointM, q: PointM): number {
  return Math.hypot(p[0] - q[0], p[1] - q[1]);
}
