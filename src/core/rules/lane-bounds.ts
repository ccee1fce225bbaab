/** Where walls and the like bound a lane on both sides, and how much they leave between them. Exact: all of it is straight pieces. */

/** Clear widths and gaps this small off are rounding [m]. */
const ROUNDING_M = 1e-6;

/** A stretch along which both sides are bounded and less than wanted is left between them. */
export interface BoundedStretch {
  readonly lengthM: number;
  /** Least clear width in it, across the middle line [m]. */
  readonly clearM: number;
  /** Middle of the stretch on the middle line, local [m]. */
  readonly x: number;
  readonly y: number;
}

/** Part of a boundary beside one straight piece of the lane: s along it, n across, left positive. */
interface Beside {
  readonly fromS: number;
  readonly toS: number;
  readonly fromN: number;
  readonly toN: number;
}

interface Narrow {
  readonly from: number;
  readonly to: number;
  readonly clearM: number;
}

/**
 * Longest stretch of a lane that is bounded on both sides with less than a width between.
 * @param line - middle of the lane, x y per vertex [m]
 * @param bounds - walls and the like, x y per vertex, closed ones with the first point again at the end [m]
 * @param belowM - clear width wanted [m]
 * @returns stretch; null where there is none [m]
 * @source none: geometry; clear widths are measured at right angles to the middle line
 */
export function boundedStretch(line: Float64Array, bounds: readonly ArrayLike<number>[], belowM: number): BoundedStretch | null {
  const narrow: Narrow[] = [];
  let beforeM = 0;
  for (let i = 0; i + 3 < line.length; i += 2) {
    const piece = line.subarray(i, i + 4);
    const lengthM = Math.hypot(piece[2] - piece[0], piece[3] - piece[1]);
    for (const one of narrowAlong(piece, bounds, belowM)) narrow.push({ ...one, from: beforeM + one.from, to: beforeM + one.to });
    beforeM += lengthM;
  }
  const longest = joined(narrow, cornersOf(line, belowM)).reduce<Narrow | null>(
    (most, one) => (most && most.to - most.from >= one.to - one.from ? most : one),
    null,
  );
  if (!longest) return null;
  const [x, y] = alongLine(line, (longest.from + longest.to) / 2);
  return { lengthM: longest.to - longest.from, clearM: longest.clearM, x, y };
}

function narrowAlong(piece: ArrayLike<number>, bounds: readonly ArrayLike<number>[], belowM: number): Narrow[] {
  const beside = bounds.flatMap((bound) => partsBeside(piece, bound));
  const left = beside.filter(({ fromN, toN }) => fromN >= 0 && toN >= 0 && Math.min(fromN, toN) < belowM);
  const right = beside.filter(({ fromN, toN }) => fromN <= 0 && toN <= 0 && Math.max(fromN, toN) > -belowM);
  return left.flatMap((one) => right.flatMap((other) => narrowBetween(one, other, belowM) ?? []));
}

function narrowBetween(left: Beside, right: Beside, belowM: number): Narrow | null {
  const from = Math.max(left.fromS, right.fromS);
  const to = Math.min(left.toS, right.toS);
  if (!(to > from)) return null;
  const first = across(left, from) - across(right, from);
  const last = across(left, to) - across(right, to);
  const limit = belowM - ROUNDING_M;
  if (first >= limit && last >= limit) return null;
  const crossing = from + ((limit - first) / (last - first)) * (to - from);
  return {
    from: first < limit ? from : crossing,
    to: last < limit ? to : crossing,
    clearM: Math.min(first, last),
  };
}

function across({ fromS, toS, fromN, toN }: Beside, s: number): number {
  return fromN + ((s - fromS) / (toS - fromS)) * (toN - fromN);
}

/** Pieces of a boundary beside a straight piece, cut at its ends and where they cross it. */
function partsBeside(piece: ArrayLike<number>, bound: ArrayLike<number>): Beside[] {
  const lengthM = Math.hypot(piece[2] - piece[0], piece[3] - piece[1]);
  const ux = (piece[2] - piece[0]) / lengthM;
  const uy = (piece[3] - piece[1]) / lengthM;
  const place = (k: number): [number, number] => {
    const dx = bound[k] - piece[0];
    const dy = bound[k + 1] - piece[1];
    return [dx * ux + dy * uy, dy * ux - dx * uy];
  };
  const parts: Beside[] = [];
  for (let k = 0; k + 3 < bound.length; k += 2) {
    const [[s0, n0], [s1, n1]] = [place(k), place(k + 2)].sort((p, q) => p[0] - q[0]);
    const from = Math.max(0, s0);
    const to = Math.min(lengthM, s1);
    if (!(to > from)) continue;
    const whole = { fromS: s0, toS: s1, fromN: n0, toN: n1 };
    const cut = n0 * n1 < 0 ? s0 + (n0 / (n0 - n1)) * (s1 - s0) : from;
    const stops = cut > from && cut < to ? [from, cut, to] : [from, to];
    for (let i = 0; i + 1 < stops.length; i++) {
      const at = (s: number) => (s === cut && stops.length === 3 ? 0 : across(whole, s));
      parts.push({ fromS: stops[i], toS: stops[i + 1], fromN: at(stops[i]), toN: at(stops[i + 1]) });
    }
  }
  return parts;
}

/** A corner of the lane, and the length over which the inner side is open there however near its walls stand. */
interface Corner {
  readonly atM: number;
  readonly openM: number;
}

function cornersOf(line: Float64Array, belowM: number): Corner[] {
  const corners: Corner[] = [];
  let atM = 0;
  for (let i = 2; i + 3 < line.length; i += 2) {
    const [px, py, x, y, nx, ny] = line.subarray(i - 2, i + 4);
    atM += Math.hypot(x - px, y - py);
    const turn = Math.abs(Math.atan2((x - px) * (ny - y) - (y - py) * (nx - x), (x - px) * (nx - x) + (y - py) * (ny - y)));
    corners.push({ atM, openM: 2 * belowM * Math.tan(turn / 2) });
  }
  return corners;
}

/** Stretches that follow one another make one, also round a corner of the lane. */
function joined(narrow: readonly Narrow[], corners: readonly Corner[]): Narrow[] {
  const out: Narrow[] = [];
  const roundCorner = (from: number, to: number) =>
    corners.some(({ atM, openM }) => from <= atM + ROUNDING_M && to >= atM - ROUNDING_M && to - from <= openM + ROUNDING_M);
  for (const one of [...narrow].sort((p, q) => p.from - q.from)) {
    const last = out.at(-1);
    if (!last || (one.from - last.to > ROUNDING_M && !roundCorner(last.to, one.from))) out.push(one);
    else out[out.length - 1] = { from: last.from, to: Math.max(last.to, one.to), clearM: Math.min(last.clearM, one.clearM) };
  }
  return out;
}

function alongLine(line: Float64Array, alongM: number): [number, number] {
  let restM = alongM;
  for (let i = 0; i + 3 < line.length; i += 2) {
    const lengthM = Math.hypot(line[i + 2] - line[i], line[i + 3] - line[i + 1]);
    if (restM <= lengthM || i + 5 >= line.length) {
      const share = Math.min(1, restM / lengthM);
      return [line[i] + share * (line[i + 2] - line[i]), line[i + 1] + share * (line[i + 3] - line[i + 1])];
    }
    restM -= lengthM;
  }
  return [line[0], line[1]];
}
