/** Placed shapes to clean ones, layer by layer: curves to chords, lines chained, outlines closed, doubles taken once. */

import type { DrawingShape } from '../model/drawing.ts';
import type { PointM } from '../model/scene-file.ts';
import { areaOf, distinctPoints, ringOf, selfContacts } from '../scene/ring.ts';
import { chainLines, type OpenLine } from './chain-lines.ts';
import { isRound, pointOfArc, pointsBetween } from './curves.ts';
import type { Gathering } from './gathering.ts';
import { CHORD_ERROR_M, CLOSE_M, JOIN_M } from './limits.ts';
import { levelOfText } from './number-form.ts';
import type { RawCircle, RawPath, RawShape } from './raw-shapes.ts';

/** Rings up to this length are tested for crossings, and so many points in all [points]. */
const TESTED = 5000;
const TESTED_IN_ALL = 100_000;
const LEAST_AREA_M2 = 1e-6;
/** Nearer points of one line are one [m]. */
const SAME_M = 1e-6;

interface Tally {
  curves: number;
  repeated: number;
  closed: number;
  gapM: number;
  doubles: number;
  tested: number;
}

/** Shapes of one layer, cleaned, every change told. */
export class LayerFinish {
  readonly #gather: Gathering;
  readonly #layer: string;
  /** Metres per unit in which texts write levels. */
  readonly #textScale: number;
  /** In a drawing, 0 is what a line without a level has. */
  readonly #zeroIsLevel: boolean;
  readonly #tally: Tally = { curves: 0, repeated: 0, closed: 0, gapM: 0, doubles: 0, tested: 0 };
  readonly #keys = new Set<string>();
  readonly #found: DrawingShape[] = [];
  readonly #loose: OpenLine[] = [];

  constructor(gather: Gathering, layer: string, textScale: number, zeroIsLevel = false) {
    this.#zeroIsLevel = zeroIsLevel;
    this.#gather = gather;
    this.#layer = layer;
    this.#textScale = textScale;
  }

  add(shape: RawShape): void {
    const more = {
      ...(shape.name === undefined ? {} : { name: shape.name }),
      ...(shape.block === undefined ? {} : { block: shape.block }),
    };
    if (shape.kind === 'path') this.#path(shape);
    else if (shape.kind === 'circle') this.#circle(shape);
    else if (shape.kind === 'text') {
      const level = levelOfText(shape.text);
      const levelM = level === null ? null : level * this.#textScale;
      this.#found.push({ kind: 'text', at: [shape.x, shape.y], says: shape.text, levelM, ...more });
    } else if (shape.kind === 'block') this.#found.push({ kind: 'block', at: [shape.x, shape.y], turnDeg: shape.turnDeg, ...more });
    else if (this.#isNew(`p ${mm(shape.x)} ${mm(shape.y)} ${shape.z === null ? '' : mm(shape.z)}`)) {
      this.#found.push({ kind: 'point', at: [shape.x, shape.y], levelM: shape.z, ...more });
    }
  }

  /** Doubles are counted. */
  #isNew(key: string): boolean {
    if (this.#keys.has(key)) {
      this.#tally.doubles += 1;
      return false;
    }
    this.#keys.add(key);
    return true;
  }

  #circle(shape: RawCircle): void {
    const { x, y, u, v } = shape;
    if (isRound(shape)) {
      const radiusM = Math.hypot(...u);
      const more = {
        ...(shape.name === undefined ? {} : { name: shape.name }),
        ...(shape.block === undefined ? {} : { block: shape.block }),
      };
      if (this.#isNew(`c ${mm(x)} ${mm(y)} ${mm(radiusM)}`)) this.#found.push({ kind: 'circle', at: [x, y], radiusM, ...more });
      return;
    }
    const curve = { kind: 'arc', centre: [x, y], u, v, from: 0, to: 2 * Math.PI } as const;
    this.#tally.curves += 1;
    this.#ring({ points: [pointOfArc(curve, 0), ...pointsBetween(curve, CHORD_ERROR_M)], levels: null }, shape, []);
  }

  #path(path: RawPath): void {
    const line = this.#laidOut(path);
    const { points } = line;
    if (points.length < 2) {
      this.#gather.ignored(this.#layer, 'line of no length');
      return;
    }
    const gap = Math.hypot(points[0][0] - points[points.length - 1][0], points[0][1] - points[points.length - 1][1]);
    if (path.closed) this.#ring(line, path, path.holes ?? []);
    else if (gap <= SAME_M && points.length > 3)
      this.#ring({ points: points.slice(0, -1), levels: line.levels?.slice(0, -1) ?? null }, path, path.holes ?? []);
    else if (!this.#close({ ...line, ...named(path) })) this.#loose.push({ ...line, ...named(path) });
  }

  /** Curves become chords; points on top of the one before go. */
  #laidOut(path: RawPath): OpenLine {
    const points: PointM[] = [];
    const levels: number[] = [];
    const count = path.points.length / 2;
    const put = (point: PointM, level: number) => {
      const last = points[points.length - 1];
      if (last !== undefined && Math.hypot(point[0] - last[0], point[1] - last[1]) <= SAME_M) {
        this.#tally.repeated += 1;
        return;
      }
      points.push(point);
      levels.push(level);
    };
    for (let i = 0; i < count; i++) {
      const level = path.levels?.[i] ?? 0;
      put([path.points[2 * i], path.points[2 * i + 1]], level);
      const curve = path.curves?.get(i);
      if (curve === undefined) continue;
      this.#tally.curves += 1;
      const inner = pointsBetween(curve, CHORD_ERROR_M);
      const next = path.levels?.[(i + 1) % count] ?? 0;
      for (const [k, point] of inner.entries()) put(point, level + ((next - level) * (k + 1)) / (inner.length + 1));
    }
    if (
      path.closed &&
      points.length > 1 &&
      Math.hypot(points[0][0] - points[points.length - 1][0], points[0][1] - points[points.length - 1][1]) <= SAME_M
    ) {
      points.pop();
      levels.pop();
    }
    return { points, levels: path.levels === null ? null : levels };
  }

  #ring({ points, levels }: OpenLine, shape: { readonly name?: string; readonly block?: string }, holes: readonly RawPath[]): void {
    const unfit = this.#unfit(points);
    if (unfit !== null) {
      this.#leaveOut(unfit, points);
      return;
    }
    if (!this.#isNew(`r ${ringKey(points)}`)) return;
    this.#testCrossing(points, shape.name);
    const inner = holes.map((hole) => this.#laidOut(hole).points).filter((ring) => this.#unfit(ring) === null);
    const level = levels?.every((z) => z === levels[0]) && (levels[0] !== 0 || this.#zeroIsLevel) ? { levelM: levels[0] } : {};
    this.#found.push({ kind: 'ring', points, ...(inner.length > 0 ? { holes: inner } : {}), ...level, ...named(shape) });
    // An outline whose points lie at different levels gives those too.
    if (levels !== null && !('levelM' in level) && levels.some((z) => z !== 0)) {
      this.#found.push({ kind: 'line', points: [...points, points[0]], levelsM: [...levels, levels[0]], ...named(shape) });
    }
  }

  #unfit(points: readonly PointM[]): 'few' | 'flat' | null {
    if (distinctPoints(points) < 3) return 'few';
    return areaOf(points) >= LEAST_AREA_M2 ? null : 'flat';
  }

  #leaveOut(unfit: 'few' | 'flat', points: readonly PointM[]): void {
    const at = { path: this.#layer };
    const [first] = points;
    this.#gather.ignored(this.#layer, unfit === 'few' ? 'outline of fewer than three points' : 'outline without area');
    if (first === undefined) this.#gather.warning('RING_TOO_FEW_POINTS:none', {}, at);
    else if (unfit === 'few') this.#gather.warning('RING_TOO_FEW_POINTS', { count: points.length, x: first[0], y: first[1] }, at);
    else this.#gather.warning('RING_ZERO_AREA', { x: first[0], y: first[1] }, at);
  }

  #testCrossing(points: readonly PointM[], name: string | undefined): void {
    this.#tally.tested += points.length;
    if (points.length > TESTED || this.#tally.tested > TESTED_IN_ALL) return;
    const [contact] = selfContacts(ringOf(points), 1);
    if (contact === undefined) return;
    const [x, y] = contact.contact.at;
    const how = contact.contact.kind === 'cross' ? 'cross' : 'touch';
    this.#gather.warning('RING_CROSSES_ITSELF', { name: name ?? '', how, x, y }, { path: this.#layer });
  }

  /** Chains what is open, tells what was done, and hands over. */
  finish(): readonly DrawingShape[] {
    const { rings, open, joined, gapM } = chainLines(this.#loose, JOIN_M);
    const stay = open.filter((line) => !this.#close(line));
    for (const ring of rings) this.#ring(ring, ring, []);
    for (const { points, levels, ...more } of stay) {
      if (!this.#isNew(`l ${ringKey(points)}`)) continue;
      this.#found.push({ kind: 'line', points, ...(levels === null ? {} : { levelsM: levels }), ...more });
    }
    if (joined > 1) {
      const values = { count: joined, toleranceMm: 1000 * JOIN_M, rings: rings.length, open: open.length, gapMm: round(1000 * gapM) };
      this.#gather.mend('LINES_CHAINED', values, this.#layer);
    }
    this.#tell();
    return this.#found;
  }

  /** Small gaps are closed and told; larger ones stay open, and are refused where an outline is asked for. */
  #close(line: OpenLine): boolean {
    const { points } = line;
    const last = points[points.length - 1];
    const gapM = Math.hypot(points[0][0] - last[0], points[0][1] - last[1]);
    if (points.length < 3 || gapM > CLOSE_M || areaOf(points) < 10 * CLOSE_M * CLOSE_M) return false;
    this.#tally.closed += 1;
    this.#tally.gapM = Math.max(this.#tally.gapM, gapM);
    const same = gapM <= 0.001;
    this.#ring(same ? { points: points.slice(0, -1), levels: line.levels?.slice(0, -1) ?? null } : line, line, []);
    return true;
  }

  #tell(): void {
    const { curves, repeated, closed, gapM, doubles } = this.#tally;
    if (curves > 0) this.#gather.mend('CURVES_TO_CHORDS', { count: curves, errorMm: 1000 * CHORD_ERROR_M }, this.#layer);
    if (repeated > 0) this.#gather.mend('POINTS_REPEATED', { count: repeated }, this.#layer);
    if (closed > 0) this.#gather.mend('RINGS_CLOSED', { count: closed, gapMm: round(1000 * gapM) }, this.#layer);
    if (doubles > 0) this.#gather.mend('SHAPES_REPEATED', { count: doubles }, this.#layer);
  }
}

const mm = (value: number) => Math.round(value * 1000);
const round = (value: number) => Math.round(value * 10) / 10;

function named({ name, block }: { readonly name?: string; readonly block?: string }): { readonly name?: string; readonly block?: string } {
  return { ...(name === undefined ? {} : { name }), ...(block === undefined ? {} : { block }) };
}

/** The same for the same points wherever the list begins and whichever way it goes. */
function ringKey(points: readonly PointM[]): string {
  let [sumX, sumY, sum, minX, minY] = [0, 0, 0, Infinity, Infinity];
  for (const [x, y] of points) {
    sumX += mm(x);
    sumY += mm(y);
    sum += (mm(x) % 9973) * (mm(y) % 9967);
    minX = Math.min(minX, mm(x));
    minY = Math.min(minY, mm(y));
  }
  return `${points.length} ${sumX} ${sumY} ${sum} ${minX} ${minY}`;
}
