/** Arcs, ellipses and splines: moved as exact curves, laid into chords only when the unit is known. */

export type Pair = readonly [number, number];

/** Point at angle t: centre + u·cos t + v·sin t. A circle's u and v are as long as its radius and at right angles. */
export interface Arc {
  readonly kind: 'arc';
  readonly centre: Pair;
  readonly u: Pair;
  readonly v: Pair;
  readonly from: number;
  readonly to: number;
}

/** Non-uniform rational B-spline. */
export interface Spline {
  readonly kind: 'spline';
  readonly degree: number;
  readonly knots: readonly number[];
  /** x y weight per control point. */
  readonly controls: readonly number[];
}

export type Curve = Arc | Spline;

/** x' = a·x + c·y + e, y' = b·x + d·y + f. */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const UNMOVED: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** Decimals kept where a unit was changed: 40000 mm are 40 m, not 40.000000000000004. */
const KEPT = 1e7;

/** A changed length without the rounding of binary numbers; less than a ten-thousandth of a millimetre. */
export function cleanM(value: number): number {
  return Math.round(value * KEPT) / KEPT;
}

export function movePoint(m: Affine, x: number, y: number): [number, number] {
  return [m.a * x + m.c * y + m.e, m.b * x + m.d * y + m.f];
}

export function moveVector(m: Affine, [x, y]: Pair): [number, number] {
  return [m.a * x + m.c * y, m.b * x + m.d * y];
}

/** First `inner`, then `outer`. */
export function chainOf(outer: Affine, inner: Affine): Affine {
  const [a, b] = moveVector(outer, [inner.a, inner.b]);
  const [c, d] = moveVector(outer, [inner.c, inner.d]);
  const [e, f] = movePoint(outer, inner.e, inner.f);
  return { a, b, c, d, e, f };
}

export function moveCurve(m: Affine, curve: Curve): Curve {
  if (curve.kind === 'arc') {
    return { ...curve, centre: movePoint(m, ...curve.centre), u: moveVector(m, curve.u), v: moveVector(m, curve.v) };
  }
  const controls: number[] = [];
  for (let i = 0; i + 2 < curve.controls.length; i += 3) {
    controls.push(...movePoint(m, curve.controls[i], curve.controls[i + 1]), curve.controls[i + 2]);
  }
  return { ...curve, controls };
}

export function reverseCurve(curve: Curve): Curve {
  if (curve.kind === 'arc') return { ...curve, from: curve.to, to: curve.from };
  const { knots, controls } = curve;
  const [first, last] = [knots[0], knots[knots.length - 1]];
  const turned: number[] = [];
  for (let i = controls.length - 3; i >= 0; i -= 3) turned.push(controls[i], controls[i + 1], controls[i + 2]);
  return { ...curve, knots: knots.map((knot) => first + last - knot).reverse(), controls: turned };
}

/** Less bulge than this is a straight edge [-]. */
const LEAST_BULGE = 1e-9;

/**
 * Arc of a polyline's edge. The bulge is the tangent of a quarter of the angle it turns through, positive counter-clockwise.
 * @returns the arc, or null where the edge is straight
 */
export function arcOfBulge([x0, y0]: Pair, [x1, y1]: Pair, bulge: number): Arc | null {
  const chord = Math.hypot(x1 - x0, y1 - y0);
  if (!(Math.abs(bulge) > LEAST_BULGE) || chord === 0 || !Number.isFinite(bulge)) return null;
  // Distance of the centre from the chord, to the left for a small counter-clockwise arc.
  const offset = (1 - bulge * bulge) / (4 * bulge);
  const centre: Pair = [(x0 + x1) / 2 - offset * (y1 - y0), (y0 + y1) / 2 + offset * (x1 - x0)];
  const radius = (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
  const from = Math.atan2(y0 - centre[1], x0 - centre[0]);
  return { kind: 'arc', centre, u: [radius, 0], v: [0, radius], from, to: from + 4 * Math.atan(bulge) };
}

export function pointOfArc({ centre, u, v }: Arc, angle: number): [number, number] {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [centre[0] + u[0] * cos + v[0] * sin, centre[1] + u[1] * cos + v[1] * sin];
}

/** Chords of a whole turn are at most so many. */
const MOST_CHORDS = 4096;

/** Points strictly between the ends of a curve, so that no chord lies further from it than the error. */
export function pointsBetween(curve: Curve, error: number): [number, number][] {
  if (curve.kind === 'spline') return splineBetween(curve, error);
  const radius = Math.hypot(...curve.u, ...curve.v) / (isRound(curve) ? Math.SQRT2 : 1);
  const sweep = Math.abs(curve.to - curve.from);
  // Between angles δ apart the chord sags by no more than radius · (1 − cos δ/2).
  const step = radius > error ? 2 * Math.acos(Math.max(0, 1 - error / radius)) : Math.PI / 2;
  const chords = Math.min(MOST_CHORDS, Math.max(1, Math.ceil(sweep / step - 1e-9)));
  return Array.from({ length: chords - 1 }, (_, i) => pointOfArc(curve, curve.from + ((curve.to - curve.from) * (i + 1)) / chords));
}

export function isRound({ u, v }: { readonly u: Pair; readonly v: Pair }): boolean {
  const [lengthU, lengthV] = [Math.hypot(...u), Math.hypot(...v)];
  return Math.abs(lengthU - lengthV) <= 1e-6 * lengthU && Math.abs(u[0] * v[0] + u[1] * v[1]) <= 1e-6 * lengthU * lengthV;
}

/** Control points of one spline. */
const MOST_CONTROLS = 2000;

/** Checks what de Boor's recursion needs; null where the spline cannot be laid out. */
export function splineOf(degree: number, knots: readonly number[], controls: readonly number[]): Spline | null {
  const count = controls.length / 3;
  const fits = Number.isInteger(degree) && degree >= 1 && degree <= 10 && count > degree && count <= MOST_CONTROLS;
  if (!fits || knots.length !== count + degree + 1) return null;
  for (let i = 1; i < knots.length; i++) if (knots[i] < knots[i - 1]) return null;
  for (let i = 2; i < controls.length; i += 3) if (!(controls[i] > 0)) return null;
  return knots[degree] < knots[count] ? { kind: 'spline', degree, knots, controls } : null;
}

/** Ends of a spline. */
export function splineEnds(spline: Spline): readonly [Pair, Pair] {
  const { degree, knots } = spline;
  return [pointOfSpline(spline, knots[degree]), pointOfSpline(spline, knots[knots.length - 1 - degree])];
}

/** Times a span between two knots is halved at most. */
const MOST_HALVINGS = 6;

function splineBetween(spline: Spline, error: number): [number, number][] {
  const { degree, knots } = spline;
  const ends = [...new Set(knots.slice(degree, knots.length - degree))];
  const points: [number, number][] = [];
  for (let k = 0; k + 1 < ends.length; k++) {
    if (k > 0) points.push(pointOfSpline(spline, ends[k]));
    halve(spline, [ends[k], ends[k + 1]], error, { points, depth: 0 });
  }
  return points;
}

/** Two inner points are looked at, so that a turn in the middle of a span is not missed. */
function halve(
  spline: Spline,
  [from, to]: Pair,
  error: number,
  into: { readonly points: [number, number][]; readonly depth: number },
): void {
  const [a, b] = [pointOfSpline(spline, from), pointOfSpline(spline, to)];
  const middle = (from + to) / 2;
  const off = [0.3, 0.5, 0.7].map((share) => distanceToEdge(pointOfSpline(spline, from + share * (to - from)), a, b));
  if (into.depth >= MOST_HALVINGS || (into.depth >= 2 && Math.max(...off) <= error / 2)) return;
  const deeper = { points: into.points, depth: into.depth + 1 };
  halve(spline, [from, middle], error, deeper);
  into.points.push(pointOfSpline(spline, middle));
  halve(spline, [middle, to], error, deeper);
}

/** Distance of a point from the straight edge a–b. */
export function distanceToEdge([x, y]: Pair, a: Pair, b: Pair): number {
  const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
  const square = ex * ex + ey * ey;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - a[0]) * ex + (y - a[1]) * ey) / square));
  return Math.hypot(x - a[0] - share * ex, y - a[1] - share * ey);
}

/** De Boor's recursion on x·w, y·w, w. */
function pointOfSpline({ degree, knots, controls }: Spline, at: number): [number, number] {
  const last = controls.length / 3 - 1;
  let [span, above] = [degree, last + 1];
  while (above - span > 1) {
    const middle = (span + above) >> 1;
    if (knots[middle] <= at) span = middle;
    else above = middle;
  }
  const work: [number, number, number][] = [];
  for (let j = 0; j <= degree; j++) {
    const i = 3 * (span - degree + j);
    const weight = controls[i + 2];
    work.push([controls[i] * weight, controls[i + 1] * weight, weight]);
  }
  for (let r = 1; r <= degree; r++) {
    for (let j = degree; j >= r; j--) {
      const low = knots[span - degree + j];
      const width = knots[span + 1 + j - r] - low;
      const share = width === 0 ? 0 : (at - low) / width;
      work[j] = [0, 1, 2].map((k) => (1 - share) * work[j - 1][k] + share * work[j][k]) as [number, number, number];
    }
  }
  const [x, y, weight] = work[degree];
  return [x / weight, y / weight];
}
