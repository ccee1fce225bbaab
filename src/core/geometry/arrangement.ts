/**
 * Points and segments made fit for a constrained triangulation: near points merged, segments split where they cross
 * or pass through a point, doubles dropped. A triangulation library throws on any of these.
 */

/** Planar set of points and segments that meet only at points. */
export interface Arrangement {
  /** x y per point [m]. */
  readonly points: Float64Array;
  /** One value per point, linear along the segment where a point was added (levels, for a net); empty if none were given. */
  readonly values: Float64Array;
  /** Two point indices per segment, no doubles. */
  readonly segments: Uint32Array;
  /** Where each input point went. */
  readonly placed: Uint32Array;
  /** Points that each input segment now runs through, from its first to its second; a segment that shrank to a point has one. */
  readonly chains: readonly (readonly number[])[];
}

interface Work {
  readonly xs: number[];
  readonly ys: number[];
  readonly zs: number[];
  readonly buckets: Map<number, number[]>;
  readonly toleranceM: number;
}

/**
 * Merges and splits until segments meet only at points.
 * @param points - x y per point [m]
 * @param values - one value per point, or empty [m]
 * @param segments - two point indices per segment [-]
 * @param toleranceM - points nearer than this are one point; a point nearer than this to a segment lies on it [m]
 * @returns the arrangement [m]
 * @source none: geometry
 */
export function arrange(
  points: ArrayLike<number>,
  values: ArrayLike<number>,
  segments: ArrayLike<number>,
  toleranceM: number,
): Arrangement {
  const work: Work = { xs: [], ys: [], zs: [], buckets: new Map(), toleranceM };
  const placed = new Uint32Array(points.length / 2);
  for (let i = 0; i < placed.length; i++) placed[i] = putPoint(work, points[2 * i], points[2 * i + 1], values.length > 0 ? values[i] : 0);
  const given = Array.from({ length: segments.length / 2 }, (_, k) => [placed[segments[2 * k]], placed[segments[2 * k + 1]]]);
  const pairs = uniquePairs(given);
  const splits = crossings(work, pairs);
  pointsOnSegments(work, pairs, splits);
  const chainOf = new Map<number, readonly number[]>();
  for (let k = 0; k < pairs.length; k++) {
    const [a, b] = pairs[k];
    const along = [...new Set(splits[k])].filter((p) => p !== a && p !== b);
    const param = (p: number) =>
      (work.xs[p] - work.xs[a]) * (work.xs[b] - work.xs[a]) + (work.ys[p] - work.ys[a]) * (work.ys[b] - work.ys[a]);
    along.sort((p, q) => param(p) - param(q));
    chainOf.set(pairKey(a, b), [a, ...along, b]);
  }
  const out = new Float64Array(work.xs.length * 2);
  for (let i = 0; i < work.xs.length; i++) {
    out[2 * i] = work.xs[i];
    out[2 * i + 1] = work.ys[i];
  }
  return {
    points: out,
    values: values.length > 0 ? Float64Array.from(work.zs) : new Float64Array(0),
    segments: Uint32Array.from(uniquePairs([...chainOf.values()].flatMap((chain) => chain.slice(1).map((to, i) => [chain[i], to]))).flat()),
    placed,
    chains: given.map(([a, b]) => chainFrom(a, a === b ? [a] : (chainOf.get(pairKey(a, b)) as readonly number[]))),
  };
}

const chainFrom = (start: number, chain: readonly number[]) => (chain[0] === start ? chain : [...chain].reverse());

/** Buckets are far larger than the tolerance, so that most points look into one only [m]. */
const BUCKET_M = 0.05;
/** Keys stay whole numbers up to ±400 km. */
const KEY_STRIDE = 2 ** 24;

/** Index of the point at x y, added if none is nearer than the tolerance. */
function putPoint(work: Work, x: number, y: number, z: number): number {
  const { xs, ys, buckets, toleranceM } = work;
  for (let cx = Math.floor((x - toleranceM) / BUCKET_M); cx <= Math.floor((x + toleranceM) / BUCKET_M); cx++) {
    for (let cy = Math.floor((y - toleranceM) / BUCKET_M); cy <= Math.floor((y + toleranceM) / BUCKET_M); cy++) {
      const bucket = buckets.get(cx * KEY_STRIDE + cy);
      if (bucket) for (const i of bucket) if (Math.hypot(xs[i] - x, ys[i] - y) <= toleranceM) return i;
    }
  }
  const index = xs.length;
  xs.push(x);
  ys.push(y);
  work.zs.push(z);
  const key = Math.floor(x / BUCKET_M) * KEY_STRIDE + Math.floor(y / BUCKET_M);
  const bucket = buckets.get(key);
  if (bucket) bucket.push(index);
  else buckets.set(key, [index]);
  return index;
}

/** The same for both directions. */
const pairKey = (a: number, b: number) => (a < b ? a * KEY_STRIDE + b : b * KEY_STRIDE + a);

function uniquePairs(pairs: readonly (readonly number[])[]): number[][] {
  const seen = new Set<number>();
  const out: number[][] = [];
  for (const [a, b] of pairs) {
    if (a === b) continue;
    const key = pairKey(a, b);
    if (seen.has(key)) continue;
    seen.add(key);
    out.push([a, b]);
  }
  return out;
}

/** Points where segments cross inside, per segment; candidates by a sweep over x. */
function crossings(work: Work, pairs: readonly number[][]): number[][] {
  const splits: number[][] = pairs.map(() => []);
  const lowX = (k: number) => Math.min(work.xs[pairs[k][0]], work.xs[pairs[k][1]]);
  const highX = (k: number) => Math.max(work.xs[pairs[k][0]], work.xs[pairs[k][1]]);
  const order = pairs.map((_, k) => k).sort((p, q) => lowX(p) - lowX(q));
  for (let i = 0; i < order.length; i++) {
    const p = order[i];
    const limit = highX(p) + work.toleranceM;
    for (let j = i + 1; j < order.length && lowX(order[j]) <= limit; j++) {
      const q = order[j];
      const at = crossing(work, pairs[p], pairs[q]);
      if (at < 0) continue;
      splits[p].push(at);
      splits[q].push(at);
    }
  }
  return splits;
}

function crossing(work: Work, p: readonly number[], q: readonly number[]): number {
  const [a, b] = p;
  const [c, d] = q;
  if (a === c || a === d || b === c || b === d) return -1;
  const { xs, ys, zs, toleranceM } = work;
  if (Math.max(ys[a], ys[b]) < Math.min(ys[c], ys[d]) - toleranceM || Math.max(ys[c], ys[d]) < Math.min(ys[a], ys[b]) - toleranceM)
    return -1;
  const rx = xs[b] - xs[a];
  const ry = ys[b] - ys[a];
  const sx = xs[d] - xs[c];
  const sy = ys[d] - ys[c];
  const det = rx * sy - ry * sx;
  if (Math.abs(det) <= 1e-12 * Math.hypot(rx, ry) * Math.hypot(sx, sy)) return -1;
  const t = ((xs[c] - xs[a]) * sy - (ys[c] - ys[a]) * sx) / det;
  const u = ((xs[c] - xs[a]) * ry - (ys[c] - ys[a]) * rx) / det;
  if (t <= 0 || t >= 1 || u <= 0 || u >= 1) return -1;
  return putPoint(work, xs[a] + t * rx, ys[a] + t * ry, zs[a] + t * (zs[b] - zs[a]));
}

/** Adds the points that lie on a segment without being one of its ends. */
function pointsOnSegments(work: Work, pairs: readonly number[][], splits: number[][]): void {
  const { xs, ys, toleranceM } = work;
  for (let k = 0; k < pairs.length; k++) {
    const [a, b] = pairs[k];
    const rx = xs[b] - xs[a];
    const ry = ys[b] - ys[a];
    const length = Math.hypot(rx, ry);
    const minX = Math.min(xs[a], xs[b]) - toleranceM;
    const maxX = Math.max(xs[a], xs[b]) + toleranceM;
    const minY = Math.min(ys[a], ys[b]) - toleranceM;
    const maxY = Math.max(ys[a], ys[b]) + toleranceM;
    for (let i = 0; i < xs.length; i++) {
      if (i === a || i === b || xs[i] < minX || xs[i] > maxX || ys[i] < minY || ys[i] > maxY) continue;
      const t = ((xs[i] - xs[a]) * rx + (ys[i] - ys[a]) * ry) / (length * length);
      if (t <= 0 || t >= 1) continue;
      if (Math.abs((xs[i] - xs[a]) * ry - (ys[i] - ys[a]) * rx) <= toleranceM * length) splits[k].push(i);
    }
  }
}
