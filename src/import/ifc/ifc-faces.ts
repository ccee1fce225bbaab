/** Flat faces in space to what is seen of them from above: upward faces, merged where they share edges. */

import { type AreaM, overlay } from '../../edit/overlay.ts';
import { enclosed, type HalfEdge } from '../../edit/planar.ts';
import type { DrawingBox } from '../../model/drawing.ts';
import type { PointM } from '../../model/scene-file.ts';
import { pointInRing, ringOf } from '../../scene/ring.ts';
import { Unreadable, type Xyz } from './ifc-model.ts';
import { cross, dot, plus } from './ifc-places.ts';

/** Corners counter-clockwise seen from outside the solid, holes clockwise. */
export interface Face {
  readonly outer: readonly Xyz[];
  readonly holes: readonly (readonly Xyz[])[];
}

export interface SeenFromAbove {
  readonly areas: readonly AreaM[];
  /** Corners of the upward faces. */
  readonly spots: readonly Xyz[];
  /** Edges at which two upward faces of other slope meet. */
  readonly folds: readonly (readonly [Xyz, Xyz])[];
  /** Edges of parts without a step in them, the part to the left. */
  readonly rings: readonly (readonly Xyz[])[];
}

/** Faces steeper than 60° are no part of a deck's top: least upward share of their normal. */
const LEAST_UP = 0.5;
const MOST_FACES = 200_000;
/** Faces up to this many are looked at one by one for others above them. */
const MOST_COVERED = 3000;
/** Areas that share no edges but may overlap. */
const MOST_APART = 400;

/** A face with its normal and the box around it. */
export interface Sheet {
  readonly face: Face;
  readonly normal: Xyz;
  readonly box: DrawingBox;
}

function boxOf({ outer }: Face): DrawingBox {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const [x, y] of outer) {
    [box.minX, box.maxX] = [Math.min(box.minX, x), Math.max(box.maxX, x)];
    [box.minY, box.maxY] = [Math.min(box.minY, y), Math.max(box.maxY, y)];
  }
  return box;
}

/** Normal, twice as long as the face is large. */
export function normalOf({ outer }: Face): Xyz {
  const [origin] = outer;
  let sum: Xyz = [0, 0, 0];
  for (let i = 1; i + 1 < outer.length; i++) sum = plus(sum, cross(plus(outer[i], origin, -1), plus(outer[i + 1], origin, -1)));
  return sum;
}

/** Files write the edges of holes in either direction: here they always run against the outer one. */
export function directedFace({ outer, holes }: Face): Face {
  const normal = normalOf({ outer, holes: [] });
  return { outer, holes: holes.map((hole) => (dot(normalOf({ outer: hole, holes: [] }), normal) > 0 ? [...hole].reverse() : hole)) };
}

/** Faces that are not upright, with the box around each: what lies above and below a place. */
export function sheetsOf(faces: readonly Face[]): readonly Sheet[] {
  return faces
    .map((face): Sheet => ({ face, normal: normalOf(face), box: boxOf(face) }))
    .filter(({ normal }) => Math.abs(normal[2]) > 1e-6 * Math.hypot(...normal));
}

/** A sheet that holds a place, and its level there. */
export function levelOn({ face, normal, box }: Sheet, x: number, y: number): number | null {
  if (x < box.minX || x > box.maxX || y < box.minY || y > box.maxY) return null;
  const side = (ring: readonly Xyz[]) => pointInRing([x, y], ringOf(flatOf(ring)));
  if (side(face.outer) < 0 || face.holes.some((hole) => side(hole) > 0)) return null;
  const [origin] = face.outer;
  return origin[2] - ((x - origin[0]) * normal[0] + (y - origin[1]) * normal[1]) / normal[2];
}

/** The upward faces of solids, merged; `weld` is the distance within which corners are one. */
export function seenFromAbove(faces: readonly Face[], weld: number): SeenFromAbove {
  if (faces.length > MOST_FACES) throw new Unreadable('too many faces');
  const outward = isInsideOut(faces) ? reversed(faces) : faces;
  // A surface that encloses nothing may look either way.
  const up = [outward, reversed(outward)].map(lookingUp).find((found) => found.length > 0) ?? [];
  const tops = up.length > MOST_COVERED ? up : up.filter((one) => !isCovered(one, up, weld));
  if (tops.length === 0) throw new Unreadable('no face looks up');
  const points = new Welded(weld);
  const { outline, folds } = edgesOf(tops, points);
  const flat = points.flat();
  const areas = enclosed(flat, outline);
  if (areas.length > MOST_APART) throw new Unreadable('faces that share no edges');
  const merged = areas.length > 1 ? overlay(areas, (covered) => covered.some(Boolean), weld) : areas;
  return {
    areas: merged.map((area) => straightened(area, weld)),
    spots: points.all,
    folds,
    rings: ringsOf(areas, new Map(flat.map((point, i) => [point, points.all[i]]))),
  };
}

/** The rings of areas with the levels of their points. */
function ringsOf(areas: readonly AreaM[], levels: ReadonlyMap<PointM, Xyz>): readonly (readonly Xyz[])[] {
  const spot = (point: PointM): Xyz => levels.get(point) ?? [...point, 0];
  return areas.flatMap(({ outline, holes = [] }) => [outline, ...holes].map((ring) => ring.map(spot)));
}

/** Faces of a closed solid may all look inwards; then its volume comes out negative. */
function isInsideOut(faces: readonly Face[]): boolean {
  const origin = faces[0]?.outer[0] ?? [0, 0, 0];
  return faces.reduce((sum, face) => sum + dot(normalOf(face), plus(face.outer[0], origin, -1)), 0) < 0;
}

function reversed(faces: readonly Face[]): readonly Face[] {
  return faces.map(({ outer, holes }) => ({ outer: [...outer].reverse(), holes: holes.map((hole) => [...hole].reverse()) }));
}

/** Whether a face is part of a top. */
function isTop({ normal }: Sheet): boolean {
  return normal[2] > 0 && normal[2] >= LEAST_UP * Math.hypot(...normal);
}

/** Whether a face is no steeper than those of a top, whichever way a file turns it. */
export function isFlat({ normal }: Sheet): boolean {
  return Math.abs(normal[2]) >= LEAST_UP * Math.hypot(...normal);
}

function lookingUp(faces: readonly Face[]): readonly Sheet[] {
  return faces.map((face): Sheet => ({ face, normal: normalOf(face), box: boxOf(face) })).filter(isTop);
}

const flatOf = (points: readonly Xyz[]): PointM[] => points.map(([x, y]) => [x, y]);

/** Whether another upward face lies above the middle of this one, as over a hollow. */
function isCovered({ face }: Sheet, all: readonly Sheet[], weld: number): boolean {
  const { outer } = face;
  const [x, y, z] = outer.reduce((sum, point) => plus(sum, point, 1 / outer.length), [0, 0, 0] as Xyz);
  return all.some(({ face: other, normal, box }) => {
    if (other === face || x < box.minX || x > box.maxX || y < box.minY || y > box.maxY) return false;
    const [origin] = other.outer;
    const level = origin[2] - ((x - origin[0]) * normal[0] + (y - origin[1]) * normal[1]) / normal[2];
    if (!(level > z + 10 * weld)) return false;
    const inside = (ring: readonly Xyz[]) => pointInRing([x, y], ringOf(flatOf(ring))) > 0;
    return inside(other.outer) && !other.holes.some(inside);
  });
}

/** Corners nearer to each other than the weld are one. */
class Welded {
  readonly all: Xyz[] = [];
  readonly #weld: number;
  readonly #cells = new Map<string, number[]>();

  constructor(weld: number) {
    this.#weld = weld;
  }

  indexOf(point: Xyz): number {
    const [i, j] = [Math.round(point[0] / this.#weld), Math.round(point[1] / this.#weld)];
    for (let di = -1; di <= 1; di++)
      for (let dj = -1; dj <= 1; dj++)
        for (const k of this.#cells.get(`${i + di} ${j + dj}`) ?? []) if (this.#isSame(this.all[k], point)) return k;
    const key = `${i} ${j}`;
    this.#cells.set(key, [...(this.#cells.get(key) ?? []), this.all.length]);
    this.all.push(point);
    return this.all.length - 1;
  }

  #isSame(a: Xyz, b: Xyz): boolean {
    return Math.abs(a[2] - b[2]) <= this.#weld && Math.hypot(a[0] - b[0], a[1] - b[1]) <= this.#weld;
  }

  flat(): PointM[] {
    return flatOf(this.all);
  }
}

/** Edges that only one face has, and those at which two of other slope meet. */
function edgesOf(tops: readonly Sheet[], points: Welded): { readonly outline: HalfEdge[]; readonly folds: (readonly [Xyz, Xyz])[] } {
  const open = new Map<string, { readonly edge: HalfEdge; readonly normal: Xyz }>();
  const folds: (readonly [Xyz, Xyz])[] = [];
  for (const { face, normal } of tops) {
    for (const ring of [face.outer, ...face.holes]) {
      const corners = ring.map((point) => points.indexOf(point));
      for (const [i, from] of corners.entries()) {
        const to = corners[(i + 1) % corners.length];
        if (from === to) continue;
        const back = open.get(`${to} ${from}`);
        if (back === undefined) open.set(`${from} ${to}`, { edge: [from, to], normal });
        else {
          open.delete(`${to} ${from}`);
          if (isBent(back.normal, normal)) folds.push([points.all[from], points.all[to]]);
        }
      }
    }
  }
  return { outline: [...open.values()].map(({ edge }) => edge), folds };
}

/** Another slope by more than 0.1 %. */
function isBent(a: Xyz, b: Xyz): boolean {
  return Math.hypot(a[0] / a[2] - b[0] / b[2], a[1] / a[2] - b[1] / b[2]) > 1e-3;
}

/** Without corners in the middle of straight edges. */
function straightened({ outline, holes = [] }: AreaM, weld: number): AreaM {
  return { outline: straightRing(outline, weld), holes: holes.map((hole) => straightRing(hole, weld)) };
}

function straightRing(ring: readonly PointM[], weld: number): readonly PointM[] {
  const kept = ring.filter((point, i) => {
    const [before, after] = [ring[(i + ring.length - 1) % ring.length], ring[(i + 1) % ring.length]];
    const [dx, dy] = [after[0] - before[0], after[1] - before[1]];
    const off = Math.abs(dx * (point[1] - before[1]) - dy * (point[0] - before[0]));
    return off > weld * Math.hypot(dx, dy);
  });
  return kept.length >= 3 ? kept : ring;
}
