/** Openings cut out of the top of a slab: exact where they lie apart inside it, else along their common edges. */

import { type AreaM, areaM2, overlay } from '../../edit/overlay.ts';
import type { PointM } from '../../model/scene-file.ts';
import { areaOf } from '../../scene/ring.ts';
import { type Loop, straightLoop } from './ifc-curves.ts';
import { Unreadable, type Xyz } from './ifc-model.ts';
import { type Body, laidOut, type TopFace } from './ifc-solids.ts';

export interface Opening {
  readonly body: Body;
  /** The model calls it a recess. */
  readonly recess: boolean;
}

export interface Cut {
  readonly tops: readonly TopFace[];
  /** Openings that go through, reach the top only, or do not reach it. */
  readonly through: number;
  readonly recesses: number;
  readonly below: number;
  /** Curves that had to be laid into chords for it. */
  readonly chords: number;
}

interface CutOptions {
  readonly same: number;
  readonly chord: number;
}

/** Corners of all areas together; far above any slab. */
const MOST_CORNERS = 30_000;

export function cutOpenings(slab: Body, openings: readonly Opening[], options: CutOptions): Cut {
  const sorted = openings.map((opening) => ({ ...opening, how: howDeep(slab, opening, options.same) }));
  const through = sorted.filter(({ how }) => how === 'through');
  const counts = {
    through: through.length,
    recesses: sorted.filter(({ how }) => how === 'recess').length,
    below: sorted.filter(({ how }) => how === 'below').length,
  };
  const tools = through.flatMap(({ body }) => body.tops);
  if (tools.length === 0 && slab.tops.length === 1) return { tops: slab.tops, ...counts, chords: 0 };
  const [own, cutters] = [slab.tops, tools].map((faces) => faces.map((face) => areaOfFace(face, options.chord)));
  const left = united(own, cutters, options);
  if (isUndisturbed(own, cutters, left)) {
    const [{ outer, holes }] = slab.tops;
    return { tops: [{ outer, holes: [...holes, ...tools.map((tool) => tool.outer)] }], ...counts, chords: 0 };
  }
  return { tops: left.map(asTop), ...counts, chords: curvesIn([...slab.tops, ...tools]) };
}

/** Tops of several slabs as one. */
export function unitedTops(faces: readonly TopFace[], options: CutOptions): { readonly tops: readonly TopFace[]; readonly chords: number } {
  const areas = faces.map((face) => areaOfFace(face, options.chord));
  return { tops: united(areas, [], options).map(asTop), chords: curvesIn(faces) };
}

/** Size of tops without their holes, in the file's unit. */
export function sizeOfTops(tops: readonly TopFace[], chord: number): number {
  return tops.reduce((sum, face) => sum + areaM2(areaOfFace(face, chord)), 0);
}

const curvesIn = (faces: readonly TopFace[]): number =>
  faces.reduce((sum, { outer, holes }) => [outer, ...holes].reduce((all, { curves }) => all + curves.size, sum), 0);

function areaOfFace({ outer, holes }: TopFace, chord: number): AreaM {
  return { outline: laidOut(outer, chord), holes: holes.map((hole) => laidOut(hole, chord)) };
}

const loopOf = (ring: readonly PointM[]): Loop => straightLoop(ring.flat());
const asTop = ({ outline, holes = [] }: AreaM): TopFace => ({ outer: loopOf(outline), holes: holes.map(loopOf) });

function united(own: readonly AreaM[], cutters: readonly AreaM[], { same }: CutOptions): readonly AreaM[] {
  const corners = [...own, ...cutters].reduce((sum, { outline, holes = [] }) => sum + outline.length + holes.flat().length, 0);
  if (corners > MOST_CORNERS) throw new Unreadable('too many corners');
  return overlay(
    [...own, ...cutters],
    (covered) => covered.some((is, i) => is && i < own.length) && !covered.some((is, i) => is && i >= own.length),
    same / 100,
  );
}

/** Every opening lies inside the one top and apart from all others: the file's own curves may stay. */
function isUndisturbed(own: readonly AreaM[], cutters: readonly AreaM[], left: readonly AreaM[]): boolean {
  if (own.length !== 1 || left.length !== 1 || cutters.some(({ holes = [] }) => holes.length > 0)) return false;
  const [before, after] = [own[0], left[0]];
  const holes = (after.holes ?? []).length;
  const rings = [...(before.holes ?? []), ...cutters.map(({ outline }) => outline)];
  const near = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(a, b);
  const sum = (list: readonly (readonly PointM[])[]) => list.reduce((all, ring) => all + areaOf(ring), 0);
  return holes === rings.length && near(areaOf(before.outline), areaOf(after.outline)) && near(sum(rings), sum(after.holes ?? []));
}

/** Of the slab's height an opening must take this share to go through it. */
const THROUGH = 0.9;

function howDeep(slab: Body, { body, recess }: Opening, same: number): 'through' | 'recess' | 'below' {
  const top = topNear(slab, body);
  if (body.high < top - 10 * same) return 'below';
  const flat = slab.spots.every(([, , z]) => Math.abs(z - slab.high) <= 10 * same);
  const thick = slab.thick ?? (flat ? slab.high - slab.low : null);
  return recess || (thick !== null && body.low > top - THROUGH * thick) ? 'recess' : 'through';
}

/** Level of the slab's top over the middle of an opening: of a plane its own, else of the nearest point. */
function topNear({ spots, way, high }: Body, { tops }: Body): number {
  const corners = tops.flatMap(({ outer }) => laidOut(outer, Infinity));
  const middle = [0, 1].map((axis) => corners.reduce((sum, point) => sum + point[axis], 0) / corners.length);
  const plane = way === 'profile' ? planeThrough(spots) : null;
  if (plane !== null) return plane(middle[0], middle[1]);
  let [least, level] = [Infinity, high];
  for (const [x, y, z] of spots) {
    const far = Math.hypot(x - middle[0], y - middle[1]);
    if (far < least) [least, level] = [far, z];
  }
  return level;
}

/** The plane through the first corners that span one. */
function planeThrough(spots: readonly Xyz[]): ((x: number, y: number) => number) | null {
  const [a, b] = spots;
  if (a === undefined || b === undefined) return null;
  const [bx, by, bz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  for (const c of spots.slice(2)) {
    const [cx, cy, cz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
    const det = bx * cy - by * cx;
    if (Math.abs(det) <= 1e-3 * Math.hypot(bx, by) * Math.hypot(cx, cy)) continue;
    const [sx, sy] = [(bz * cy - by * cz) / det, (bx * cz - bz * cx) / det];
    return (x, y) => a[2] + sx * (x - a[0]) + sy * (y - a[1]);
  }
  return null;
}
