/** The body of an element: swept profiles keep the file's own corners, faces are merged as seen from above. */

import { type Affine, moveCurve, movePoint, pointsBetween } from '../curves.ts';
import { type CurveOptions, type Loop, loopOf, straightLoop } from './ifc-curves.ts';
import { directedFace, type Face, seenFromAbove } from './ifc-faces.ts';
import {
  deeper,
  type Entity,
  type IfcModel,
  lengthOf,
  listOf,
  numberOf,
  ofType,
  pointOf,
  readOr,
  textOf,
  tripleOf,
  tryOr,
  Unreadable,
  Unsupported,
  wordOf,
  type Xyz,
} from './ifc-model.ts';
import { cross, dot, type Frame, moved, operated, placed, placedProduct, planOf, plus, turned, unit, within } from './ifc-places.ts';
import { isBoxed, type Profile, profileOf } from './ifc-profiles.ts';
import { directed } from './ifc-steps.ts';

export interface TopFace {
  readonly outer: Loop;
  readonly holes: readonly Loop[];
  /** Of a profile swept at a slant: its corner with the way swept, and its normal. What it cuts out lies along that way. */
  readonly slant?: { readonly at: Xyz; readonly normal: Xyz; readonly path: Xyz };
}

/** A profile with a size of its own, standing upright. */
export interface Standing {
  readonly at: readonly [number, number];
  readonly size: readonly [number, number];
  /** Of its width, counter-clockwise from x [rad]. */
  readonly turn: number;
  readonly boxed: boolean;
}

export interface Body {
  /** As seen from above. */
  readonly tops: readonly TopFace[];
  /** Points on the top that give its level. */
  readonly spots: readonly Xyz[];
  readonly folds: readonly (readonly [Xyz, Xyz])[];
  /** Edges of parts of the top that have no step in them, the part to the left. */
  readonly rings: readonly (readonly Xyz[])[];
  readonly low: number;
  readonly high: number;
  /** All sides of the body, made when they are asked for. */
  readonly sides: () => readonly Face[];
  readonly way: 'profile' | 'faces' | 'mesh';
  readonly standing: Standing | null;
  /** Parts of it that lie under others. */
  readonly covered: number;
}

export interface SolidOptions extends CurveOptions {
  /** Greatest distance of a chord from its arc, in the file's unit. */
  readonly chord: number;
  /** Where the world of the model lies on the plan. */
  readonly root: Frame;
  /** Of a body cut by others, the whole before the cut: enough where only place and size count. */
  readonly uncut?: boolean;
}

type Part = { readonly body: Body } | { readonly faces: readonly Face[] };

/** The body of a product; `Unreadable` where it has none that can be laid out here. */
export function bodyOf(product: Entity, options: SolidOptions): Body {
  return joined(bodiesOf(product, options));
}

/** The parts of that body: swept ones each, faces together. */
export function bodiesOf(product: Entity, options: SolidOptions): readonly Body[] {
  const { model } = options;
  const frame = within(options.root, placedProduct(model, model.maybe(product.values[5])));
  const parts = shapeItems(product, model).flatMap((item) => partsOf(item, frame, { options, depth: 0 }));
  if (parts.length === 0) throw new Unreadable('no body');
  const faces = parts.flatMap((part) => ('faces' in part ? part.faces : []));
  const bodies = parts.flatMap((part) => ('body' in part ? [part.body] : []));
  return faces.length > 0 ? [...bodies, facedBody(faces, options.same, 'faces')] : bodies;
}

/** Whether the file gives the product a body at all. */
export function hasBody(product: Entity, model: IfcModel): boolean {
  return readOr(() => shapeItems(product, model).length > 0, product.values[6] !== null);
}

/** Items of the representation called Body; of another of solids where none is called so. */
function shapeItems(product: Entity, model: IfcModel): readonly Entity[] {
  const shape = model.maybe(product.values[6]);
  if (shape === null) return [];
  const all = model.toAll(ofType(shape, 'IFCPRODUCTDEFINITIONSHAPE').values[2]).map((one) => ofType(one, 'IFCSHAPEREPRESENTATION'));
  const body = all.filter(({ values }) => textOf(values[1]).toLowerCase() === 'body');
  const solid = all.filter(({ values }) => /solid|brep|clipping|csg|surfacemodel|tessellation|mapped/i.test(textOf(values[2])));
  return (body.length > 0 ? body : solid).flatMap(({ values }) => model.toAll(values[3]));
}

interface Inside {
  readonly options: SolidOptions;
  readonly depth: number;
}

function partsOf(item: Entity, frame: Frame, { options, depth }: Inside): readonly Part[] {
  const { model } = options;
  const { type, values } = item;
  const next: Inside = { options, depth: deeper(depth) };
  if (type === 'IFCEXTRUDEDAREASOLID') return [extruded(item, frame, options)];
  if (type === 'IFCMAPPEDITEM') {
    const source = ofType(model.to(values[0]), 'IFCREPRESENTATIONMAP');
    const inner = within(operated(model, model.to(values[1])), placed(model, model.maybe(source.values[0])));
    const items = model.toAll(ofType(model.to(source.values[1]), 'IFCSHAPEREPRESENTATION').values[3]);
    return items.flatMap((one) => partsOf(one, within(frame, inner), next));
  }
  if (/^IFCBOOLEAN(CLIPPING)?RESULT$/.test(type)) {
    if (options.uncut) return partsOf(model.to(values[1]), frame, next);
    testCut(item, frame, next);
    throw new Unsupported(type);
  }
  const faces = facesOf(item, model).map((face) => movedFace(face, frame));
  return [{ faces }];
}

/** Cut bodies are for a library, which damaged ones would keep busy without end: all they are made of is tried here first. */
function testCut({ values }: Entity, frame: Frame, inside: Inside): void {
  const { options } = inside;
  const { model } = options;
  if (!/^(DIFFERENCE|UNION|INTERSECTION)$/.test(wordOf(values[0]))) throw new Unreadable('a cut of no kind');
  for (const operand of [model.to(values[1]), model.to(values[2])]) {
    if (HALF_SPACES.test(operand.type)) testHalfSpace(operand, options);
    else if (tryOr(() => partsOf(operand, frame, inside)) === 'damaged') throw new Unreadable(operand.type);
  }
}

const HALF_SPACES = /^IFC(HALFSPACESOLID|BOXEDHALFSPACE|POLYGONALBOUNDEDHALFSPACE)$/;

function testHalfSpace({ type, values }: Entity, options: SolidOptions): void {
  const { model } = options;
  const surface = model.to(values[0]);
  if (surface.type !== 'IFCPLANE' || !/^[TF]$/.test(wordOf(values[1]))) throw new Unreadable(surface.type);
  placed(model, model.to(surface.values[0]));
  if (type !== 'IFCPOLYGONALBOUNDEDHALFSPACE') return;
  placed(model, model.to(values[2]));
  loopOf(model.to(values[3]), options);
}

const movedFace = ({ outer, holes }: Face, frame: Frame): Face => {
  const all = (points: readonly Xyz[]) => points.map((point) => moved(frame, point));
  const face = { outer: all(outer), holes: holes.map(all) };
  const mirrored = dot(cross(frame.x, frame.y), frame.z) < 0;
  return mirrored ? { outer: face.outer.reverse(), holes: face.holes.map((hole) => hole.reverse()) } : face;
};

/** Profiles nearer to level than 60° are seen from above themselves; of others the sides are. */
const LEAST_UP = 0.5;

function extruded({ values }: Entity, outer: Frame, options: SolidOptions): Part {
  const { model } = options;
  const section = model.to(values[0]);
  const profile = profileOf(section, options);
  const frame = within(outer, placed(model, model.maybe(values[1])));
  const way = turned(frame, unit(tripleOf(model.to(values[2]).values[0])));
  const depth = lengthOf(values[3]);
  const path: Xyz = [way[0] * depth, way[1] * depth, way[2] * depth];
  const normal = unit(cross(frame.x, frame.y));
  if (Math.abs(normal[2]) < LEAST_UP || Math.abs(way[2]) < LEAST_UP * Math.hypot(...way))
    return { faces: prism(profile, frame, path, options) };
  const top = path[2] > 0 ? { ...frame, at: plus(frame.at, path) } : frame;
  const spots = [profile.outer, ...profile.holes].flatMap((loop) => cornersOf(loop).map(([x, y]) => moved(top, [x, y, 0])));
  const levels = spots.map(([, , z]) => z);
  const height = Math.abs(path[2]);
  const slanting = Math.hypot(path[0], path[1]) >= 1e-6 * height;
  const upright = Math.hypot(normal[0], normal[1]) < 1e-6 && !slanting;
  const face = { outer: movedLoop(profile.outer, top), holes: profile.holes.map((hole) => movedLoop(hole, top)) };
  const body: Body = {
    tops: [slanting ? { ...face, slant: { at: top.at, normal, path } } : face],
    spots,
    folds: [],
    rings: [profile.outer, ...profile.holes].map((loop, i) => {
      const ring = laidOut(loop, options.chord).map(([x, y]) => moved(top, [x, y, 0]));
      return directed(ring, i > 0);
    }),
    low: levels.reduce((a, b) => Math.min(a, b)) - height,
    high: levels.reduce((a, b) => Math.max(a, b)),
    sides: () => prism(profile, frame, path, options),
    way: 'profile',
    standing: upright ? standingOf(profile, top, isBoxed(section.type)) : null,
    covered: 0,
  };
  return { body };
}

function standingOf({ frame, size, round }: Profile, top: Frame, boxed: boolean): Standing | null {
  if (size === null) return null;
  const [x, y] = moved(top, frame.at);
  const along = turned(top, frame.x);
  const across = turned(top, frame.y);
  const scale = [Math.hypot(...along), Math.hypot(...across)] as const;
  return { at: [x, y], size: [size[0] * scale[0], size[1] * scale[1]], turn: round ? 0 : Math.atan2(along[1], along[0]), boxed };
}

/** Corners, and of curved edges the middle. */
function cornersOf({ points, curves }: Loop): readonly (readonly [number, number])[] {
  return Array.from({ length: points.length / 2 }, (_, i) => i).flatMap((i) => {
    const curve = curves.get(i);
    const inner = curve === undefined ? [] : pointsBetween(curve, Infinity);
    return [[points[2 * i], points[2 * i + 1]] as const, ...inner];
  });
}

const movedLoop = (loop: Loop, frame: Frame): Loop => shiftedLoop(loop, planOf(frame));

/** A loop moved in its plane. */
export function shiftedLoop({ points, curves }: Loop, plan: Affine): Loop {
  const placedPoints = Array.from({ length: points.length / 2 }, (_, i) => movePoint(plan, points[2 * i], points[2 * i + 1])).flat();
  return { points: placedPoints, curves: new Map([...curves].map(([i, curve]) => [i, moveCurve(plan, curve)])) };
}

/** Corners with chords for curves, x y each. */
export function laidOut({ points, curves }: Loop, chord: number): readonly (readonly [number, number])[] {
  return Array.from({ length: points.length / 2 }, (_, i) => i).flatMap((i) => {
    const curve = curves.get(i);
    return [[points[2 * i], points[2 * i + 1]] as const, ...(curve === undefined ? [] : pointsBetween(curve, chord))];
  });
}

/** All faces of a profile swept sideways. */
function prism({ outer, holes }: Profile, frame: Frame, path: Xyz, { chord }: SolidOptions): Face[] {
  const rings = [outer, ...holes].map((loop, i) => {
    const points = laidOut(loop, chord);
    const twice = points.reduce((sum, [x, y], k) => {
      const [nextX, nextY] = points[(k + 1) % points.length];
      return sum + x * nextY - nextX * y;
    }, 0);
    const ring = points.map(([x, y]) => moved(frame, [x, y, 0]));
    return twice > 0 === (i === 0) ? ring : ring.reverse();
  });
  const shifted = (ring: readonly Xyz[]) => ring.map((point) => plus(point, path));
  const reversed = (ring: readonly Xyz[]) => [...ring].reverse();
  const [first, ...inner] = rings;
  const sides = rings.flatMap((ring) =>
    ring.map((from, i): Face => {
      const to = ring[(i + 1) % ring.length];
      return { outer: [from, to, plus(to, path), plus(from, path)], holes: [] };
    }),
  );
  const faces: Face[] = [
    { outer: shifted(first), holes: inner.map(shifted) },
    { outer: reversed(first), holes: inner.map(reversed) },
    ...sides,
  ];
  const against = dot(cross(frame.x, frame.y), path) < 0;
  return against ? faces.map((face) => ({ outer: reversed(face.outer), holes: face.holes.map(reversed) })) : faces;
}

function facesOf({ type, values }: Entity, model: IfcModel): readonly Face[] {
  if (type === 'IFCFACETEDBREP' || type === 'IFCFACETEDBREPWITHVOIDS') return shellFaces(model.to(values[0]), model);
  if (type === 'IFCSHELLBASEDSURFACEMODEL' || type === 'IFCFACEBASEDSURFACEMODEL')
    return model.toAll(values[0]).flatMap((shell) => shellFaces(shell, model));
  if (type === 'IFCTRIANGULATEDFACESET') return indexFaces(pointList(values[0], values[4], model), listOf(values[3]));
  if (type === 'IFCPOLYGONALFACESET') return polygonFaces(pointList(values[0], values[3], model), model.toAll(values[2]));
  throw OTHER_BODIES.test(type) ? new Unsupported(type) : new Unreadable(type);
}

/** Bodies that are made of others or have no flat faces. */
const OTHER_BODIES =
  /^IFC(BOOLEAN|CSG|ADVANCED|REVOLVED|SWEPT|SECTIONED|SURFACECURVE|FIXEDREFERENCE|EXTRUDEDAREASOLIDTAPERED|BLOCK$|SPHERE$|RIGHTCIRC)/;

function shellFaces({ type, values }: Entity, model: IfcModel): readonly Face[] {
  if (!/^IFC(CLOSEDSHELL|OPENSHELL|CONNECTEDFACESET)$/.test(type)) throw new Unreadable(type);
  return model.toAll(values[0]).map((face) => {
    if (face.type !== 'IFCFACE') throw new Unreadable(face.type);
    const bounds = model.toAll(face.values[0]).map((bound) => {
      const loop = model.to(bound.values[0]);
      if (loop.type !== 'IFCPOLYLOOP') throw new Unreadable(loop.type);
      const points = model.toAll(loop.values[0]).map(pointOf);
      return { isOuter: bound.type === 'IFCFACEOUTERBOUND', points: wordOf(bound.values[1]) === 'F' ? points.reverse() : points };
    });
    const outer = Math.max(
      0,
      bounds.findIndex(({ isOuter }) => isOuter),
    );
    return checkedFace({ outer: bounds[outer]?.points ?? [], holes: bounds.filter((_, i) => i !== outer).map(({ points }) => points) });
  });
}

function checkedFace(face: Face): Face {
  if ([face.outer, ...face.holes].some((ring) => ring.length < 3)) throw new Unreadable('a face of fewer than three corners');
  return directedFace(face);
}

type Values = Entity['values'];
type PointAt = (index: Values[number]) => Xyz;

/** Points by their number. Numbers may stand for places in a second list (PnIndex), which IFC4 first had for normals: three to a face there. */
function pointList(value: Values[number] | undefined, places: Values[number] | undefined, model: IfcModel): PointAt {
  const list = listOf(model.to(value).values[0]);
  const inPlace = Array.isArray(places) && places.length > 0 && places.every((place) => typeof place === 'number');
  return (index) => tripleOf(list[numberOf(inPlace ? places[numberOf(index) - 1] : index) - 1]);
}

function indexFaces(at: PointAt, triangles: Values): readonly Face[] {
  return triangles.map((corners) => checkedFace({ outer: listOf(corners).map(at), holes: [] }));
}

function polygonFaces(at: PointAt, faces: readonly Entity[]): readonly Face[] {
  return faces.map(({ type, values }) => {
    const holes = type === 'IFCINDEXEDPOLYGONALFACEWITHVOIDS' ? listOf(values[1]).map((hole) => listOf(hole).map(at)) : [];
    return checkedFace({ outer: listOf(values[0]).map(at), holes });
  });
}

/** A body of faces, as the file gives them or as a surface was made of it. */
export function facedBody(faces: readonly Face[], weld: number, way: 'faces' | 'mesh'): Body {
  const { areas, spots, folds, rings } = seenFromAbove(faces, weld);
  let [low, high] = [Infinity, -Infinity];
  for (const { outer } of faces) for (const [, , z] of outer) [low, high] = [Math.min(low, z), Math.max(high, z)];
  const loop = (ring: readonly (readonly [number, number])[]) => straightLoop(ring.flat());
  const tops = areas.map(({ outline, holes = [] }) => ({ outer: loop(outline), holes: holes.map(loop) }));
  return { tops, spots, folds, rings, low, high, sides: () => faces, way, standing: null, covered: 0 };
}

/** Several bodies as one. */
export function joined(bodies: readonly Body[]): Body {
  if (bodies.length === 1) return bodies[0];
  return {
    tops: bodies.flatMap(({ tops }) => tops),
    spots: bodies.flatMap(({ spots }) => spots),
    folds: bodies.flatMap(({ folds }) => folds),
    rings: bodies.flatMap(({ rings }) => rings),
    low: Math.min(...bodies.map(({ low }) => low)),
    high: Math.max(...bodies.map(({ high }) => high)),
    sides: () => bodies.flatMap(({ sides }) => sides()),
    way: bodies.some(({ way }) => way === 'mesh') ? 'mesh' : bodies.some(({ way }) => way === 'faces') ? 'faces' : 'profile',
    standing: null,
    covered: bodies.reduce((sum, { covered }) => sum + covered, 0),
  };
}
