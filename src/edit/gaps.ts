/** What of the deck no zone, or no bay, covers. */

import type { PointM, SceneFile } from '../model/scene-file.ts';
import { pointInRing, ringOf } from '../scene/ring.ts';
import { deckArea } from './area-parts.ts';
import { type AreaM, areaM2 } from './overlay.ts';
import { enclosed, type HalfEdge, planarOf } from './planar.ts';

/** A part of the deck, without its openings, that no zone (or no bay) covers. */
export interface Gap extends AreaM {
  readonly areaM2: number;
  /** A point inside it, to zoom to and to name it by. */
  readonly at: PointM;
  /** Ids of zones (or bays) with a length of edge in common, longest first. */
  readonly neighbours: readonly string[];
}

/**
 * What of the deck no zone, or no bay, covers.
 * @param scene - the scene
 * @param part - zones or bays
 * @returns gaps, largest first
 */
export function gapsOf(scene: SceneFile, part: 'zone' | 'bay'): readonly Gap[] {
  const covering: readonly (AreaM & { readonly id: string })[] = part === 'zone' ? scene.zones : scene.deck.bays;
  const { points, edges } = planarOf([deckArea(scene), ...covering]);
  const isGap = ([onDeck, ...covered]: readonly boolean[]) => onDeck && !covered.includes(true);
  const halfEdges: HalfEdge[] = [];
  const beside = new Map<string, readonly boolean[]>();
  for (const { a, b, left, right } of edges) {
    if (isGap(left) === isGap(right)) continue;
    const [from, to] = isGap(left) ? [a, b] : [b, a];
    halfEdges.push([from, to]);
    beside.set(edgeKey(points[from], points[to]), (isGap(left) ? right : left).slice(1));
  }
  return enclosed(points, halfEdges).map((area) => ({
    ...area,
    areaM2: areaM2(area),
    at: pointInside(area),
    neighbours: longestFirst(area, beside).map((i) => covering[i].id),
  }));
}

const edgeKey = (a: PointM, b: PointM) => `${a[0]} ${a[1]} ${b[0]} ${b[1]}`;

/** What lies on the other side of the edges, by the length in common. */
function longestFirst({ outline, holes = [] }: AreaM, beside: ReadonlyMap<string, readonly boolean[]>): readonly number[] {
  const lengths = new Map<number, number>();
  for (const ring of [outline, ...holes]) {
    for (const [k, a] of ring.entries()) {
      const b = ring[(k + 1) % ring.length];
      for (const [i, isThere] of (beside.get(edgeKey(a, b)) ?? []).entries())
        if (isThere) lengths.set(i, (lengths.get(i) ?? 0) + Math.hypot(b[0] - a[0], b[1] - a[1]));
    }
  }
  return [...lengths].sort(([, one], [, other]) => other - one).map(([i]) => i);
}

/**
 * Whether a place lies in an area.
 * @param area - area with holes
 * @param at - place
 * @returns false on its edge
 */
export function isInArea({ outline, holes = [] }: AreaM, at: PointM): boolean {
  return pointInRing(at, ringOf(outline)) > 0 && holes.every((hole) => pointInRing(at, ringOf(hole)) < 0);
}

/** Heights at which an area is cut to find a point well inside, as shares of its own. */
const CUTS = [0.5, 0.38, 0.62, 0.21, 0.79, 0.07, 0.93];

/**
 * A point well inside an area: the middle of the longest run that a level line has in it.
 * @param area - area with holes
 * @returns the point
 */
export function pointInside({ outline, holes = [] }: AreaM): PointM {
  const ys = [...new Set(outline.map(([, y]) => y))].sort((a, b) => a - b);
  const [low, high] = [ys[0], ys[ys.length - 1]];
  let best: { readonly at: PointM; readonly lengthM: number } = { at: outline[0], lengthM: 0 };
  const heights = [...CUTS.map((share) => low + share * (high - low)), ...ys.slice(1).map((y, i) => (y + ys[i]) / 2)];
  for (const y of heights) {
    const xs = [outline, ...holes].flatMap((ring) => crossingsAt(ring, y)).sort((a, b) => a - b);
    for (let i = 0; i + 1 < xs.length; i += 2) {
      const lengthM = xs[i + 1] - xs[i];
      if (lengthM > best.lengthM * 1.001) best = { at: [(xs[i] + xs[i + 1]) / 2, y], lengthM };
    }
  }
  return best.at;
}

function crossingsAt(ring: readonly PointM[], y: number): number[] {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length];
    return a[1] <= y === b[1] <= y ? [] : [a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])];
  });
}
