/** Outlines of profiles: straight edges keep the file's own corners, arcs and splines stay curves. */

import { type Arc, type Curve, type Pair, pointOfArc, reverseCurve, splineEnds, splineOf } from '../curves.ts';
import { type Entity, type IfcModel, lengthOf, listOf, numberOf, pointOf, tripleOf, Unreadable, Unsupported, wordOf } from './ifc-model.ts';
import { placedFlat } from './ifc-places.ts';
import type { StepValue } from './step-values.ts';

/** Closed: x y per corner, the first not repeated; curves in place of the edge that begins at a corner. */
export interface Loop {
  readonly points: readonly number[];
  readonly curves: ReadonlyMap<number, Curve>;
}

/** Straight from a point to the next, or curved. */
interface Piece {
  readonly from: Pair;
  readonly to: Pair;
  readonly curve: Curve | null;
}

export interface CurveOptions {
  readonly model: IfcModel;
  /** Ends nearer to each other are one point, in the file's unit. */
  readonly same: number;
  /** Pieces of a curve whose ends are nearer to each other follow each other. */
  readonly join: number;
  /** Radians per unit of angle. */
  readonly radians: number;
  /** Outlines that were closed by an edge of their own, to be told; the longest in the file's unit. */
  readonly closed: { count: number; most: number };
}

/** The loop that a closed curve makes. */
export function loopOf(curve: Entity, options: CurveOptions): Loop {
  const pieces = piecesOf(curve, options).filter(({ from, to, curve: bent }) => bent !== null || from[0] !== to[0] || from[1] !== to[1]);
  const points: number[] = [];
  const curves = new Map<number, Curve>();
  for (const [i, { from, curve: bent }] of pieces.entries()) {
    const before = pieces[(i + pieces.length - 1) % pieces.length].to;
    // Some programs leave out the last edge of a polyline.
    const left = i === 0 && OPEN_ENDED.test(curve.type);
    if (!left && Math.hypot(before[0] - from[0], before[1] - from[1]) > options.join) throw new Unreadable('pieces that do not meet');
    if (bent !== null) curves.set(points.length / 2, bent);
    points.push(...from);
  }
  if (OPEN_ENDED.test(curve.type)) addEnd(pieces, points, options);
  if (pieces.length < 2) throw new Unreadable('an outline without corners');
  return { points, curves };
}

const OPEN_ENDED = /^IFC(POLYLINE|INDEXEDPOLYCURVE)$/;

/** The last point of a curve that does not end where it began. */
function addEnd(pieces: readonly Piece[], points: number[], { same, closed }: CurveOptions): void {
  const [first, last] = [pieces[0], pieces[pieces.length - 1]];
  const gap = first === undefined ? 0 : Math.hypot(last.to[0] - first.from[0], last.to[1] - first.from[1]);
  if (gap <= same) return;
  points.push(...last.to);
  closed.count += 1;
  closed.most = Math.max(closed.most, gap);
}

/** Straight edges through corners, x y each. */
export function straightLoop(points: readonly number[]): Loop {
  return { points, curves: new Map() };
}

/** A whole ellipse or circle, in two halves. */
export function roundLoop(centre: Pair, u: Pair, v: Pair): Loop {
  const half = (from: number): Arc => ({ kind: 'arc', centre, u, v, from, to: from + Math.PI });
  const halves = [half(0), half(Math.PI)];
  return { points: halves.flatMap((arc) => pointOfArc(arc, arc.from)), curves: new Map(halves.entries()) };
}

function piecesOf(curve: Entity, options: CurveOptions): readonly Piece[] {
  const { model } = options;
  const { type, values } = curve;
  if (type === 'IFCPOLYLINE') return chain(model.toAll(values[0]).map((point) => pairOf(pointOf(point))));
  if (type === 'IFCINDEXEDPOLYCURVE') return indexed(curve, model);
  if (type === 'IFCCOMPOSITECURVE') return model.toAll(values[0]).flatMap((segment) => segmentOf(segment, options));
  if (type === 'IFCTRIMMEDCURVE') return [trimmed(curve, options)];
  if (type === 'IFCCIRCLE' || type === 'IFCELLIPSE') {
    const { points, curves } = wholeRound(curve, model);
    return [0, 1].map((i) => ({ from: pairAt(points, i), to: pairAt(points, 1 - i), curve: curves.get(i) ?? null }));
  }
  if (type === 'IFCBSPLINECURVEWITHKNOTS' || type === 'IFCRATIONALBSPLINECURVEWITHKNOTS') return [splinePiece(curve, model)];
  throw /CURVE|^IFC(LINE|CONIC|CLOTHOID)$/.test(type) ? new Unsupported(type) : new Unreadable(type);
}

const pairOf = ([x, y]: readonly [number, number, number]): Pair => [x, y];
const pairAt = (points: readonly number[], i: number): Pair => [points[2 * i], points[2 * i + 1]];

function chain(points: readonly Pair[]): readonly Piece[] {
  const [first, last] = [points[0], points[points.length - 1]];
  if (points.length < 2) throw new Unreadable('a line of one point');
  const open = first[0] !== last[0] || first[1] !== last[1];
  const pieces = points.slice(1).map((to, i) => ({ from: points[i], to, curve: null }));
  // Lines inside a composite curve are open; whether the whole closes is seen at its end.
  return open ? pieces : pieces.filter(({ from, to }) => from !== to);
}

function indexed({ values }: Entity, model: IfcModel): readonly Piece[] {
  const list = listOf(model.to(values[0]).values[0]).map((point) => pairOf(tripleOf(point)));
  const at = (value: StepValue): Pair => {
    const point = list[numberOf(value) - 1];
    if (point === undefined) throw new Unreadable('a point is missing');
    return point;
  };
  if (values[1] === null || values[1] === undefined) return chain(list);
  return listOf(values[1]).flatMap((segment): readonly Piece[] => {
    if (typeof segment !== 'object' || segment === null || !('type' in segment)) throw new Unreadable('a segment out of form');
    const points = listOf(segment.values[0]).map(at);
    if (segment.type !== 'IFCARCINDEX') return chain(points);
    if (points.length !== 3) throw new Unreadable('an arc out of form');
    return [{ from: points[0], to: points[2], curve: arcThrough(points[0], points[1], points[2]) }];
  });
}

/** The arc through three points; straight where they lie on a line. */
function arcThrough(a: Pair, b: Pair, c: Pair): Arc | null {
  const [bx, by, cx, cy] = [b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]];
  const twice = 2 * (bx * cy - by * cx);
  if (Math.abs(twice) <= 1e-9 * (Math.hypot(bx, by) * Math.hypot(cx, cy))) return null;
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  const centre: Pair = [a[0] + (cy * bb - by * cc) / twice, a[1] + (bx * cc - cx * bb) / twice];
  const radius = Math.hypot(a[0] - centre[0], a[1] - centre[1]);
  const angle = ([x, y]: Pair) => Math.atan2(y - centre[1], x - centre[0]);
  const from = angle(a);
  const sweep = sweepOf(from, angle(c), twice > 0);
  return { kind: 'arc', centre, u: [radius, 0], v: [0, radius], from, to: from + sweep };
}

/** Turn from one angle to another, counter-clockwise positive. */
function sweepOf(from: number, to: number, counterClockwise: boolean): number {
  const turn = (((to - from) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return counterClockwise ? turn : turn - 2 * Math.PI;
}

function segmentOf({ type, values }: Entity, options: CurveOptions): readonly Piece[] {
  if (type !== 'IFCCOMPOSITECURVESEGMENT') throw new Unreadable(type);
  const parent = options.model.to(values[2]);
  if (parent.type === 'IFCCOMPOSITECURVE') throw new Unsupported(parent.type);
  const pieces = piecesOf(parent, options);
  if (wordOf(values[1]) !== 'F') return pieces;
  return [...pieces].reverse().map(({ from, to, curve }) => ({ from: to, to: from, curve: curve && reverseCurve(curve) }));
}

function wholeRound({ type, values }: Entity, model: IfcModel): Loop {
  const { x, y, at } = placedFlat(model, model.to(values[0]));
  const first = lengthOf(values[1]);
  const second = type === 'IFCCIRCLE' ? first : lengthOf(values[2]);
  return roundLoop([at[0], at[1]], [x[0] * first, x[1] * first], [y[0] * second, y[1] * second]);
}

function trimmed({ values }: Entity, { model, radians }: CurveOptions): Piece {
  const basis = model.to(values[0]);
  const forward = wordOf(values[3]) !== 'F';
  if (basis.type === 'IFCLINE') {
    const [from, to] = [trimPoint(values[1], model), trimPoint(values[2], model)];
    if (from === null || to === null) throw new Unsupported(basis.type);
    return { from, to, curve: null };
  }
  if (basis.type !== 'IFCCIRCLE' && basis.type !== 'IFCELLIPSE') throw new Unreadable(basis.type);
  const whole = wholeRound(basis, model).curves.get(0) as Arc;
  const angle = (trim: StepValue | undefined): number => {
    // Where both are given, the point is the surer one: units of angles are mistaken more often.
    const point = trimPoint(trim, model);
    if (point !== null) return angleOn(whole, point);
    const given = listOf(trim).find((one) => typeof one === 'object' && one !== null && 'type' in one);
    if (given === undefined) throw new Unreadable('a curve without ends');
    return numberOf(given) * radians;
  };
  const from = angle(values[1]);
  const arc: Arc = { ...whole, from, to: from + sweepOf(from, angle(values[2]), forward) };
  return { from: pointOfArc(arc, arc.from), to: pointOfArc(arc, arc.to), curve: arc };
}

/** The end given as a point; null where it is given as a number alone. */
function trimPoint(trim: StepValue | undefined, model: IfcModel): Pair | null {
  const ref = listOf(trim).find((one) => typeof one === 'object' && one !== null && 'ref' in one);
  return ref === undefined ? null : pairOf(pointOf(model.to(ref)));
}

function angleOn({ centre, u, v }: Arc, [x, y]: Pair): number {
  const [dx, dy] = [x - centre[0], y - centre[1]];
  const part = ([a, b]: Pair) => (dx * a + dy * b) / (a * a + b * b);
  return Math.atan2(part(v), part(u));
}

function splinePiece({ type, values }: Entity, model: IfcModel): Piece {
  const points = model.toAll(values[1]).map(pointOf);
  const weights = type.startsWith('IFCRATIONAL') ? listOf(values[8]).map(numberOf) : points.map(() => 1);
  const times = listOf(values[5]).map(numberOf);
  if (times.some((count) => !Number.isInteger(count) || count < 0 || count > 20)) throw new Unreadable('a spline out of form');
  const knots = listOf(values[6]).flatMap((knot, i) => new Array<number>(times[i] ?? 0).fill(numberOf(knot)));
  const spline = splineOf(
    numberOf(values[0]),
    knots,
    points.flatMap(([x, y], i) => [x, y, weights[i] ?? 0]),
  );
  if (spline === null) throw new Unreadable('a spline out of form');
  const [from, to] = splineEnds(spline);
  return { from, to, curve: spline };
}
