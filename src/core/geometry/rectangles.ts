/** Rectangles of a polygon: the smallest around it, and the widest of a given length that fits inside. */

import type { Ring } from '../../model/deck-input.ts';
import { isInside } from './ring.ts';

/** Lengths this small are rounding [m]. */
const ROUNDING_M = 1e-9;
/** Most directions of sides looked at, longest sides first. */
const MOST_DIRECTIONS = 12;
/** Up to so many corners places between two corners are looked at too; beyond, the width found may come out a little small. */
const MOST_CORNERS = 40;
/** Corners looked at as begin or end, evenly chosen; any choice is on the safe side. */
const MOST_STARTS = 200;

/** A rectangle by its frame: s along, t across, both from the origin of the coordinates. */
export interface FramedRectangle {
  readonly dirX: number;
  readonly dirY: number;
  readonly fromS: number;
  readonly toS: number;
  readonly fromT: number;
  readonly toT: number;
}

/**
 * Smallest rectangle around a polygon; one of its sides lies along a side of the hull.
 * @param ring - polygon, x y per vertex [m]
 * @returns rectangle, the longer side along s [m]
 * @throws RangeError if the polygon has no area
 * @source none: geometry (Freeman and Shapira 1975: the smallest enclosing rectangle has a side of the hull on one of its own)
 */
export function smallestAround(ring: Ring): FramedRectangle {
  const hull = hullOf(ring);
  let best: FramedRectangle | null = null;
  let least = Infinity;
  for (const [dirX, dirY] of directionsOf(hull, Infinity)) {
    const { s, t } = framed(ring, dirX, dirY);
    const one = { dirX, dirY, fromS: Math.min(...s), toS: Math.max(...s), fromT: Math.min(...t), toT: Math.max(...t) };
    const areaM2 = (one.toS - one.fromS) * (one.toT - one.fromT);
    if (areaM2 >= least - ROUNDING_M) continue;
    least = areaM2;
    best = one;
  }
  if (!best) throw new RangeError('smallestAround: the polygon must have an area, got none');
  return best.toS - best.fromS >= best.toT - best.fromT ? best : turned(best);
}

function turned({ dirX, dirY, fromS, toS, fromT, toT }: FramedRectangle): FramedRectangle {
  return { dirX: -dirY, dirY: dirX, fromS: fromT, toS: toT, fromT: -toS, toT: -fromS };
}

/**
 * Greatest width of a rectangle of a given length inside a polygon, along or across one of its sides. Every width found does fit; a
 * rectangle askew to all sides could be wider.
 * @param ring - simple polygon, x y per vertex [m]
 * @param lengthM - length of the rectangle [m]
 * @returns width; 0 where not even a line of that length fits so [m]
 * @source none: geometry
 */
export function widestInsideM(ring: Ring, lengthM: number): number {
  let widest = 0;
  for (const [dirX, dirY] of directionsOf(ring, MOST_DIRECTIONS)) {
    widest = Math.max(widest, widestAlongM(framed(ring, dirX, dirY), lengthM), widestAlongM(framed(ring, -dirY, dirX), lengthM));
  }
  return widest;
}

interface Framed {
  readonly s: readonly number[];
  readonly t: readonly number[];
}

function framed(ring: Ring, dirX: number, dirY: number): Framed {
  const s: number[] = [];
  const t: number[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    s.push(ring[i] * dirX + ring[i + 1] * dirY);
    t.push(ring[i + 1] * dirX - ring[i] * dirY);
  }
  return { s, t };
}

/** Directions of the sides, each once; right angles count as the same. */
function directionsOf(ring: ArrayLike<number>, most: number): [number, number][] {
  const sides: [number, number, number][] = [];
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
    const dx = ring[i] - ring[j];
    const dy = ring[i + 1] - ring[j + 1];
    const lengthM = Math.hypot(dx, dy);
    if (lengthM > ROUNDING_M) sides.push([dx / lengthM, dy / lengthM, lengthM]);
  }
  sides.sort((p, q) => q[2] - p[2]);
  const found: [number, number][] = [];
  for (const [x, y] of sides) {
    if (found.length >= most) break;
    if (!found.some(([fx, fy]) => Math.min(Math.abs(x * fx + y * fy), Math.abs(x * fy - y * fx)) < ROUNDING_M)) found.push([x, y]);
  }
  return found;
}

function widestAlongM({ s, t }: Framed, lengthM: number): number {
  // A hair shorter, so that an outline of exactly this length holds it.
  const lengthS = lengthM - ROUNDING_M;
  const least = Math.min(...s);
  const most = Math.max(...s);
  if (most - least < lengthS) return 0;
  const flat = Float64Array.from(s.flatMap((value, i) => [value, t[i]]));
  let widest = 0;
  for (const start of startsOf({ s, t }, lengthS)) {
    if (start < least - ROUNDING_M || start + lengthS > most + ROUNDING_M) continue;
    widest = Math.max(widest, widestInWindowM(flat, start, start + lengthS));
  }
  return widest;
}

/** Where the widest rectangle can begin: at a corner, end at a corner, or between two sides of equal height a length apart. */
function startsOf({ s, t }: Framed, lengthS: number): number[] {
  const n = s.length;
  const every = Math.ceil(n / MOST_STARTS);
  const starts = s.flatMap((value, i) => (i % every === 0 ? [value, value - lengthS] : []));
  if (n > MOST_CORNERS) return [...starts, Math.min(...s), Math.max(...s) - lengthS];
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const [si, ti, sj, tj] = [s[i], t[i], s[j], t[j]];
      const [si2, ti2, sj2, tj2] = [s[(i + 1) % n], t[(i + 1) % n], s[(j + 1) % n], t[(j + 1) % n]];
      const riseI = (ti2 - ti) / (si2 - si);
      const riseJ = (tj2 - tj) / (sj2 - sj);
      // ti + riseI · (x − si) = tj + riseJ · (x + L − sj)
      const x = (tj - ti + riseI * si + riseJ * (lengthS - sj)) / (riseI - riseJ);
      if (Number.isFinite(x)) starts.push(x);
    }
  }
  return starts;
}

/** Greatest clear height that holds over the whole window from a to b. */
function widestInWindowM(flat: Ring, a: number, b: number): number {
  const blocked: [number, number][] = [];
  for (let i = 0, j = flat.length - 2; i < flat.length; j = i, i += 2) {
    const [from, to] = flat[i] < flat[j] ? [i, j] : [j, i];
    const low = Math.max(a, flat[from]);
    const high = Math.min(b, flat[to]);
    const upright = flat[to] - flat[from] < ROUNDING_M;
    if (upright ? flat[from] <= a + ROUNDING_M || flat[from] >= b - ROUNDING_M : high - low < ROUNDING_M) continue;
    const rise = upright ? 0 : (flat[to + 1] - flat[from + 1]) / (flat[to] - flat[from]);
    const ends = upright ? [flat[from + 1], flat[to + 1]] : [low, high].map((at) => flat[from + 1] + rise * (at - flat[from]));
    blocked.push([Math.min(...ends), Math.max(...ends)]);
  }
  blocked.sort((p, q) => p[0] - q[0]);
  let widest = 0;
  let reached = -Infinity;
  for (const [low, high] of blocked) {
    if (low - reached > widest && isInside({ outer: flat, holes: [] }, (a + b) / 2, (low + reached) / 2)) widest = low - reached;
    reached = Math.max(reached, high);
  }
  return widest;
}

/** Convex hull, counter-clockwise. */
function hullOf(ring: Ring): number[] {
  const points = Array.from({ length: ring.length / 2 }, (_, i): [number, number] => [ring[2 * i], ring[2 * i + 1]]);
  points.sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const half = (ordered: readonly [number, number][]) => {
    const out: [number, number][] = [];
    for (const p of ordered) {
      while (out.length > 1) {
        const [a, b] = out.slice(-2);
        if ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 0) break;
        out.pop();
      }
      out.push(p);
    }
    return out.slice(0, -1);
  };
  return [...half(points), ...half([...points].reverse())].flat();
}
