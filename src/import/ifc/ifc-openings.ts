/** Openings cut out of the top of a slab: exact where they lie apart inside it, else along their common edges. */

import { type AreaM, areaM2, overlay } from '../../edit/overlay.ts';
import type { PointM } from '../../model/scene-file.ts';
import { areaOf } from '../../scene/ring.ts';
import type { Affine } from '../curves.ts';
import { type Loop, straightLoop } from './ifc-curves.ts';
import { isFlat, levelOn, type Sheet, sheetsOf } from './ifc-faces.ts';
import { Unreadable, type Xyz } from './ifc-model.ts';
import { type Body, laidOut, shiftedLoop, type TopFace } from './ifc-solids.ts';

export interface Opening {
  readonly body: Body;
  /** The model calls it a recess. */
  readonly recess: boolean;
  /** Belongs to a whole that the slab is part of; other parts of it may be meant. */
  readonly ofWhole: boolean;
}

export interface Cut {
  readonly tops: readonly TopFace[];
  /** Openings that go through, reach the top only, or do not reach it. */
  readonly through: number;
  readonly recesses: number;
  readonly below: number;
  /** Openings that do not touch the slab. */
  readonly beside: number;
  /** Openings that are in the surface a library made, however deep. */
  readonly meshed: number;
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
  const sheets = openings.length === 0 ? [] : sheetsOf(slab.sides());
  const sorted = openings.map((one) => {
    const opening = inTopOf(sheets.filter(isFlat), one);
    return { ...opening, how: howDeep(slab, sheets, opening, options) };
  });
  const through = sorted.filter(({ how }) => how === 'through');
  const counts = {
    meshed: 0,
    through: through.length,
    recesses: sorted.filter(({ how }) => how === 'recess').length,
    below: sorted.filter(({ how }) => how === 'below').length,
    beside: sorted.filter(({ how, ofWhole }) => how === 'beside' && !ofWhole).length,
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
/** Corners of an opening that are looked at. */
const MOST_LOOKED = 64;

/** The opening as it lies in the top of the slab: swept at a slant, it does not lie there where it begins. */
function inTopOf(slab: readonly Sheet[], opening: Opening): Opening {
  const tops = opening.body.tops.map((face): TopFace => {
    if (face.slant === undefined) return face;
    const places = placesIn([face]);
    const [under] = places.flatMap(([x, y]) => levelsAt(slab, x, y).slice(0, 1)).map(({ sheet }) => sheet);
    const plane = under ?? nearest(slab, places[0]);
    const move = plane === null ? null : slide(face.slant, plane);
    return move === null ? face : { outer: shiftedLoop(face.outer, move), holes: face.holes.map((hole) => shiftedLoop(hole, move)) };
  });
  return { ...opening, body: { ...opening.body, tops } };
}

const heightOf = ({ face }: Sheet) => face.outer.reduce((sum, [, , z]) => sum + z / face.outer.length, 0);

/** The part of the top whose box is nearest: an opening at the edge may reach the slab only where it is led to. */
function nearest(slab: readonly Sheet[], [x, y]: PointM): Sheet | null {
  const far = ({ box }: Sheet) => Math.hypot(Math.max(box.minX - x, 0, x - box.maxX), Math.max(box.minY - y, 0, y - box.maxY));
  const [first] = [...slab].sort((a, b) => far(a) - far(b) || heightOf(b) - heightOf(a));
  return first ?? null;
}

/** What moves the plan of a slanted profile's end along its way to a plane; null where they run along each other. */
function slide({ at, normal, path }: NonNullable<TopFace['slant']>, { face, normal: across }: Sheet): Affine | null {
  const slopes = ([x, y, z]: Xyz) => [-x / z, -y / z] as const;
  const [own, other] = [slopes(normal), slopes(across)];
  const [origin] = face.outer;
  const rise = path[2] - other[0] * path[0] - other[1] * path[1];
  if (!(Math.abs(rise) > 1e-3 * Math.hypot(...path))) return null;
  const [px, py] = [path[0] / rise, path[1] / rise];
  const gap = origin[2] - other[0] * origin[0] - other[1] * origin[1] - (at[2] - own[0] * at[0] - own[1] * at[1]);
  const [gx, gy] = [other[0] - own[0], other[1] - own[1]];
  return { a: 1 + gx * px, b: gx * py, c: gy * px, d: 1 + gy * py, e: gap * px, f: gap * py };
}

/** The middle of faces, then places near it and at their corners. */
const placesIn = (tops: readonly TopFace[]): readonly PointM[] => placesAmong(tops.flatMap(({ outer }) => laidOut(outer, Infinity)));

function placesAmong(all: readonly PointM[]): readonly PointM[] {
  const corners = all.filter((_, i) => i % Math.ceil(all.length / MOST_LOOKED) === 0);
  const [x, y] = [0, 1].map((axis) => corners.reduce((sum, point) => sum + point[axis], 0) / corners.length);
  const towards = (share: number) => corners.map((corner): PointM => [x + share * (corner[0] - x), y + share * (corner[1] - y)]);
  return [[x, y], ...towards(0.5), ...towards(0.99)];
}

/** Sides over and under a place, the highest first. */
function levelsAt(sheets: readonly Sheet[], x: number, y: number): readonly { readonly sheet: Sheet; readonly level: number }[] {
  const found = sheets.flatMap((sheet) => {
    const level = levelOn(sheet, x, y);
    return level === null ? [] : [{ sheet, level }];
  });
  return found.sort((a, b) => b.level - a.level);
}

/** Looked up at places of the opening that lie on the slab, the first of which say. */
function howDeep(slab: Body, sheets: readonly Sheet[], { body, recess }: Opening, options: CutOptions): (typeof WAYS)[number] | 'beside' {
  const own = sheetsOf(body.sides());
  const waysAt = (places: readonly PointM[]) => {
    const spans = places.flatMap(([x, y]) => {
      const [hit, cut] = [levelsAt(sheets, x, y), levelsAt(own, x, y)].map((list) => list.map(({ level }) => level));
      return hit.length === 0 || cut.length === 0 ? [] : [{ top: hit[0], thick: hit[0] - hit[hit.length - 1], cut }];
    });
    // A slab with leaning sides runs out to nothing at its edge: where it is whole says.
    const thickest = spans.reduce((most, { thick }) => Math.max(most, thick), 0);
    return spans
      .filter(({ thick }) => thick >= THROUGH * thickest)
      .map(({ top, thick, cut }) => {
        if (cut[0] < top - 10 * options.same) return 'below';
        return recess || cut[cut.length - 1] > top - THROUGH * thick ? 'recess' : 'through';
      });
  };
  const within = waysAt(placesIn(body.tops));
  const ways = within.length > 0 ? within : common(slab.tops, body.tops, options).flatMap(({ outline }) => waysAt(placesAmong(outline)));
  return WAYS.find((way) => ways.includes(way)) ?? 'beside';
}

/** The strongest first: what goes through anywhere goes through. */
const WAYS = ['through', 'recess', 'below'] as const;

/** What two tops have in common. */
function common(slab: readonly TopFace[], opening: readonly TopFace[], { chord, same }: CutOptions): readonly AreaM[] {
  const areas = [...slab, ...opening].map((face) => areaOfFace(face, chord));
  const both = (covered: readonly boolean[]) =>
    covered.some((is, i) => is && i < slab.length) && covered.some((is, i) => is && i >= slab.length);
  return overlay(areas, both, same / 100);
}
