/** Splits a plan net where the room between deck and finish reaches a limit, so that a held thickness is linear in every triangle. */

import { type PlanNet, rimOf } from './plan-net.ts';

/** A vertex this near to a limit lies on it [m]. */
const ON_LIMIT_M = 1e-9;

interface Work {
  readonly xs: number[];
  readonly ys: number[];
  readonly deckM: number[];
  readonly finishM: number[];
  triangles: number[];
}

/**
 * Adds the lines along which the finished level is a given height above the deck. Neighbours share the added points.
 * @param net - net with finished levels; one without is returned as it is [m]
 * @param limitsM - heights of the finish above the deck at which to split [m]
 * @returns net of the same region [m]
 * @source none: geometry
 */
export function splitNet(net: PlanNet, limitsM: readonly number[]): PlanNet {
  if (net.finishM.length === 0) return net;
  const vertices = net.deckM.length;
  const work: Work = {
    xs: Array.from({ length: vertices }, (_, i) => net.plan[2 * i]),
    ys: Array.from({ length: vertices }, (_, i) => net.plan[2 * i + 1]),
    deckM: [...net.deckM],
    finishM: [...net.finishM],
    triangles: [...net.triangles],
  };
  for (const limitM of limitsM) splitAt(work, limitM);
  if (work.triangles.length === net.triangles.length) return net;
  const triangles = Uint32Array.from(work.triangles);
  const plan = new Float64Array(work.xs.length * 2);
  work.xs.forEach((x, i) => {
    plan[2 * i] = x;
    plan[2 * i + 1] = work.ys[i];
  });
  return {
    plan,
    triangles,
    rim: rimOf(triangles, work.xs.length),
    deckM: Float64Array.from(work.deckM),
    finishM: Float64Array.from(work.finishM),
  };
}

function splitAt(work: Work, limitM: number): void {
  const over = work.deckM.map((deck, i) => {
    const d = work.finishM[i] - deck - limitM;
    return Math.abs(d) <= ON_LIMIT_M ? 0 : d;
  });
  const cuts = new Map<string, number>();
  const cut = (p: number, q: number): number => {
    const [a, b] = p < q ? [p, q] : [q, p];
    const key = `${a} ${b}`;
    const known = cuts.get(key);
    if (known !== undefined) return known;
    const u = over[a] / (over[a] - over[b]);
    const at = work.xs.length;
    work.xs.push(work.xs[a] + u * (work.xs[b] - work.xs[a]));
    work.ys.push(work.ys[a] + u * (work.ys[b] - work.ys[a]));
    const deck = work.deckM[a] + u * (work.deckM[b] - work.deckM[a]);
    work.deckM.push(deck);
    work.finishM.push(deck + limitM);
    cuts.set(key, at);
    return at;
  };
  const out: number[] = [];
  for (let t = 0; t < work.triangles.length; t += 3) out.push(...pieces(work.triangles.slice(t, t + 3), over, cut));
  work.triangles = out;
}

/** The triangle itself, or two or three triangles that do not cross the limit. */
function pieces(corners: readonly number[], over: readonly number[], cut: (p: number, q: number) => number): readonly number[] {
  const signs = corners.map((v) => Math.sign(over[v]));
  if (!signs.includes(1) || !signs.includes(-1)) return corners;
  const turned = (first: number) => [corners[first], corners[(first + 1) % 3], corners[(first + 2) % 3]];
  const zero = signs.indexOf(0);
  if (zero >= 0) {
    const [z, p, q] = turned(zero);
    const m = cut(p, q);
    return [z, p, m, z, m, q];
  }
  const lone = signs.findIndex((sign) => signs.filter((other) => other === sign).length === 1);
  const [l, m, n] = turned(lone);
  const p = cut(l, m);
  const q = cut(l, n);
  return [l, p, q, p, m, n, p, n, q];
}
