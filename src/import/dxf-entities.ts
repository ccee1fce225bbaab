/** Entities of a drawing to shapes. Kinds that have no plan shape here are counted as left out. */

import {
  type Affine,
  arcOfBulge,
  type Curve,
  moveCurve,
  movePoint,
  moveVector,
  type Pair,
  pointOfArc,
  splineEnds,
  splineOf,
  UNMOVED,
} from './curves.ts';
import { hatchLoops } from './dxf-hatch.ts';
import type { Entity } from './dxf-tags.ts';
import { plainParagraph, plainText } from './dxf-text.ts';
import type { RawPath, RawShape } from './raw-shapes.ts';
import { closedKind, type KindNote } from './words/kind-words.ts';

export interface BlockInsert {
  readonly block: string;
  readonly layer: string;
  readonly move: Affine;
  /** Copies in columns and rows, and the way from one to the next, in the file's units. */
  readonly copies: { readonly columns: number; readonly rows: number; readonly along: Pair; readonly across: Pair };
  readonly turnDeg: number;
  readonly scaleZ: number;
  readonly z: number;
}

export interface EntitySink {
  /** Keeps a shape and counts its entity. */
  used(shapes: readonly RawShape[], layer: string, kind: string): void;
  ignored(layer: string, type: string, note: KindNote | null): void;
  insert(insert: BlockInsert): void;
  layerName(raw: string): string;
  text(raw: string): string;
}

interface Place {
  readonly sink: EntitySink;
  readonly layer: string;
  /** From the entity's own plane, which may be mirrored, to the plan. */
  readonly plane: Affine;
  readonly mirrored: boolean;
}

type Reader = (entity: Entity, place: Place) => readonly RawShape[] | KindNote;

const RADIANS = Math.PI / 180;
/** Of a kind that nothing is known of. */
const NOT_KNOWN = '';
/** Entities that are parts of others or templates, not things drawn. */
const NOT_DRAWN = new Set(['SEQEND', 'ATTDEF', 'VIEWPORT']);
/** Their points are in the world's axes, whatever their plane. */
const IN_WORLD = new Set(['LINE', 'POINT', '3DFACE', 'ELLIPSE', 'SPLINE']);

/**
 * Reads one entity.
 * @param entity - the entity, a POLYLINE without its vertices
 * @param sink - takes shapes and counts
 * @param vertices - of a POLYLINE
 */
export function readEntity(entity: Entity, sink: EntitySink, vertices: readonly Entity[] = []): void {
  if (NOT_DRAWN.has(entity.type)) return;
  const layer = sink.layerName(entity.text(8, '0'));
  const read = leftOut(entity) ?? shapesOf(entity, placeOf(entity, layer, sink), vertices);
  if (typeof read === 'string') sink.ignored(layer, entity.type, read === NOT_KNOWN ? null : read);
  else if (read !== null) sink.used(read, layer, isClosed(entity) ? closedKind(entity.type) : entity.type);
}

function isClosed(entity: Entity): boolean {
  return (entity.type === 'LWPOLYLINE' || entity.type === 'POLYLINE') && (entity.number(70) & FLAG.closed) !== 0;
}

/** Why an entity is not read, or null. */
function leftOut(entity: Entity): KindNote | null {
  if (entity.number(67) === 1) return 'in paper space';
  if (entity.number(60) === 1) return 'set invisible';
  const inWorld = IN_WORLD.has(entity.type) || (entity.type === 'POLYLINE' && (entity.number(70) & FLAG.threeD) !== 0);
  const size = Math.hypot(entity.number(210), entity.number(220), entity.number(230, 1));
  return inWorld || Math.abs(entity.number(230, 1)) > 0.9999 * size ? null : 'tilted';
}

function placeOf(entity: Entity, layer: string, sink: EntitySink): Place {
  const mirrored = entity.number(230, 1) < 0;
  return { sink, layer, mirrored, plane: mirrored ? { ...UNMOVED, a: -1 } : UNMOVED };
}

/** Its shapes, or why it has none, or null for a block, whose shapes come later. */
function shapesOf(entity: Entity, place: Place, vertices: readonly Entity[]): readonly RawShape[] | KindNote | typeof NOT_KNOWN | null {
  if (entity.type === 'INSERT') return readInsert(entity, place);
  const reader = Object.hasOwn(READERS, entity.type) ? READERS[entity.type] : null;
  if (reader === null && entity.type !== 'POLYLINE') return NOT_KNOWN;
  const shapes = reader === null ? polyline(entity, place, vertices) : reader(entity, place);
  return shapes.length === 0 ? 'empty' : shapes;
}

const READERS: Readonly<Record<string, Reader>> = {
  LINE: line,
  POINT: point,
  TEXT: text,
  ATTRIB: text,
  MTEXT: paragraph,
  CIRCLE: circle,
  ARC: arc,
  ELLIPSE: ellipse,
  SPLINE: spline,
  LWPOLYLINE: lightPolyline,
  SOLID: solid,
  TRACE: solid,
  '3DFACE': face,
  HATCH: hatch,
};

/** A path with one curve, or a straight one. */
function pathOf(place: Place, points: number[], more: Partial<RawPath> = {}): RawPath {
  return { kind: 'path', layer: place.layer, closed: false, points, levels: null, curves: null, loose: true, ...more };
}

function line(entity: Entity, place: Place): readonly RawShape[] {
  const levels = [entity.number(30), entity.number(31)];
  const points = [entity.number(10), entity.number(20), entity.number(11), entity.number(21)];
  return [pathOf(place, points, { levels: levels[0] === 0 && levels[1] === 0 ? null : levels })];
}

function point(entity: Entity, { layer }: Place): readonly RawShape[] {
  return [{ kind: 'point', layer, x: entity.number(10), y: entity.number(20), z: entity.has(30) ? entity.number(30) : null }];
}

function text(entity: Entity, place: Place): readonly RawShape[] {
  // Aligned other than left, the second point is where it stands.
  const second = (entity.number(72) !== 0 || entity.number(73) !== 0 || entity.number(74) !== 0) && entity.has(11);
  const at = movePoint(place.plane, entity.number(second ? 11 : 10), entity.number(second ? 21 : 20));
  return textAt(place, at, plainText(entity.text(1)));
}

function paragraph(entity: Entity, place: Place): readonly RawShape[] {
  const whole = [...entity.texts(3), entity.text(1)].join('');
  return textAt(place, [entity.number(10), entity.number(20)], plainParagraph(whole.slice(0, 10_000)));
}

function textAt({ layer, sink }: Place, [x, y]: readonly [number, number], raw: string): readonly RawShape[] {
  const says = sink.text(raw);
  return says === '' ? [] : [{ kind: 'text', layer, x, y, text: says }];
}

function circle(entity: Entity, { layer, plane }: Place): readonly RawShape[] | KindNote {
  const radius = entity.number(40);
  if (!(radius > 0)) return 'without radius';
  const [x, y] = movePoint(plane, entity.number(10), entity.number(20));
  return [{ kind: 'circle', layer, x, y, u: [radius, 0], v: [0, radius] }];
}

function arc(entity: Entity, place: Place): readonly RawShape[] | KindNote {
  const radius = entity.number(40);
  const from = entity.number(50) * RADIANS;
  let to = entity.number(51, 360) * RADIANS;
  if (!(radius > 0)) return 'without radius';
  while (to <= from) to += 2 * Math.PI;
  if (to - from > 2 * Math.PI + 1e-9) return 'over a whole turn';
  return curvePath(place, { kind: 'arc', centre: [entity.number(10), entity.number(20)], u: [radius, 0], v: [0, radius], from, to });
}

function curvePath(place: Place, curve: Curve): readonly RawShape[] {
  const moved = moveCurve(place.plane, curve);
  const ends = moved.kind === 'arc' ? [pointOfArc(moved, moved.from), pointOfArc(moved, moved.to)] : splineEnds(moved);
  return [pathOf(place, [...ends[0], ...ends[1]], { curves: new Map([[0, moved]]) })];
}

/** Stands in the world's axes; its direction follows from the normal. */
function ellipse(entity: Entity, place: Place): readonly RawShape[] | KindNote {
  const u = [entity.number(11), entity.number(21)] as const;
  const ratio = entity.number(40, 1);
  const from = entity.number(41);
  const to = entity.number(42, 2 * Math.PI);
  const long = Math.hypot(...u);
  if (!(long > 0 && ratio > 0 && ratio <= 1e3)) return 'without size';
  const turn = place.mirrored ? -ratio : ratio;
  const v = [-u[1] * turn, u[0] * turn] as const;
  const centre = [entity.number(10), entity.number(20)] as const;
  const end = to <= from ? to + 2 * Math.PI : to;
  if (end <= from || end - from > 2 * Math.PI + 1e-6) return 'over a whole turn';
  const world = { ...place, plane: UNMOVED };
  if (end - from > 2 * Math.PI - 1e-9) return [{ kind: 'circle', layer: place.layer, x: centre[0], y: centre[1], u, v }];
  return curvePath(world, { kind: 'arc', centre, u, v, from, to: end });
}

function spline(entity: Entity, place: Place): readonly RawShape[] | KindNote {
  const [xs, ys, weights] = [entity.numbers(10), entity.numbers(20), entity.numbers(41)];
  if (xs.length === 0 && entity.has(11)) return 'given by points to pass through';
  if (xs.length !== ys.length) return 'damaged';
  const controls = xs.flatMap((x, i) => [x, ys[i], weights[i] ?? 1]);
  const curve = splineOf(entity.number(71, 3), entity.numbers(40), controls);
  return curve === null ? 'of a kind not known' : curvePath({ ...place, plane: UNMOVED }, curve);
}

interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

/** Path through vertices with bulges, in the entity's own plane. */
export function bulgedPath(place: Pick<Place, 'layer' | 'plane'>, vertices: readonly Vertex[], closed: boolean): RawPath {
  const points: number[] = [];
  const curves = new Map<number, Curve>();
  for (const [i, vertex] of vertices.entries()) {
    points.push(...movePoint(place.plane, vertex.x, vertex.y));
    const next = vertices[i + 1] ?? (closed ? vertices[0] : undefined);
    const bend = next && vertex.bulge !== 0 ? arcOfBulge([vertex.x, vertex.y], [next.x, next.y], vertex.bulge) : null;
    if (bend !== null) curves.set(i, moveCurve(place.plane, bend));
  }
  return { kind: 'path', layer: place.layer, closed, points, levels: null, curves: curves.size > 0 ? curves : null, loose: false };
}

function lightPolyline(entity: Entity, place: Place): readonly RawShape[] {
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (let i = 0; i < entity.codes.length; i++) {
    const code = entity.codes[i];
    const last = vertices[vertices.length - 1];
    if (code === 10) vertices.push({ x: entity.numberAt(i), y: 0, bulge: 0 });
    else if (code === 20 && last) last.y = entity.numberAt(i);
    else if (code === 42 && last) last.bulge = entity.numberAt(i);
  }
  return leveled(bulgedPath(place, vertices, (entity.number(70) & 1) === 1), entity.number(38), place);
}

function leveled(path: RawPath, z: number, { mirrored }: Place): readonly RawShape[] {
  const count = path.points.length / 2;
  if (count < 2) return [];
  return [z === 0 ? path : { ...path, levels: new Array<number>(count).fill(mirrored ? -z : z) }];
}

/** Flags of a POLYLINE and its vertices. */
const FLAG = { closed: 1, threeD: 8, mesh: 16, faces: 64, controlVertex: 16 } as const;

function polyline(entity: Entity, place: Place, vertices: readonly Entity[]): readonly RawShape[] | KindNote {
  const flags = entity.number(70);
  if ((flags & (FLAG.mesh | FLAG.faces)) !== 0) return 'mesh';
  const drawn = vertices.filter((vertex) => (vertex.number(70) & FLAG.controlVertex) === 0);
  const closed = (flags & FLAG.closed) !== 0;
  const corners = drawn.map((vertex) => ({ x: vertex.number(10), y: vertex.number(20), bulge: vertex.number(42) }));
  if ((flags & FLAG.threeD) === 0) return leveled(bulgedPath(place, corners, closed), entity.number(30), place);
  const levels = drawn.map((vertex) => vertex.number(30));
  const path = bulgedPath({ layer: place.layer, plane: UNMOVED }, corners, closed);
  return path.points.length < 4 ? [] : [{ ...path, levels: levels.some((z) => z !== 0) ? levels : null }];
}

/** Its third and fourth corners come in the order of a bow tie. */
function solid(entity: Entity, place: Place): readonly RawShape[] {
  const corners = [0, 1, 3, 2].filter((i) => entity.has(10 + i));
  const points = corners.flatMap((i) => movePoint(place.plane, entity.number(10 + i), entity.number(20 + i)));
  return points.length < 6 ? [] : [pathOf(place, points, { closed: true, loose: false })];
}

/** A piece of a surface gives the levels of its corners. */
function face(entity: Entity, { layer }: Place): readonly RawShape[] {
  return [0, 1, 2, 3]
    .filter((i) => entity.has(10 + i) && entity.has(30 + i))
    .map((i) => ({ kind: 'point', layer, x: entity.number(10 + i), y: entity.number(20 + i), z: entity.number(30 + i) }));
}

function hatch(entity: Entity, place: Place): readonly RawShape[] | KindNote {
  return hatchLoops(entity, place) ?? 'damaged';
}

/** Greatest scale of an inserted block. */
const MOST_SCALE = 1e6;

function readInsert(entity: Entity, { sink, layer, plane, mirrored }: Place): KindNote | null {
  const turnDeg = entity.number(50);
  const [scaleX, scaleY] = [entity.number(41, 1), entity.number(42, 1)];
  if (![scaleX, scaleY].every((scale) => scale !== 0 && Math.abs(scale) <= MOST_SCALE)) return 'without size';
  const [cos, sin] = [Math.cos(turnDeg * RADIANS), Math.sin(turnDeg * RADIANS)];
  const local = {
    a: cos * scaleX,
    b: sin * scaleX,
    c: -sin * scaleY,
    d: cos * scaleY,
    e: entity.number(10),
    f: entity.number(20),
  };
  const move = mirrored ? { ...local, a: -local.a, c: -local.c, e: plane.a * local.e } : local;
  const [columns, rows] = [entity.number(70, 1), entity.number(71, 1)].map((count) => Math.max(1, Math.round(count))) as [number, number];
  const [along, across] = [entity.number(44), entity.number(45)];
  const copies = {
    columns,
    rows,
    along: moveVector(plane, [along * cos, along * sin]),
    across: moveVector(plane, [-across * sin, across * cos]),
  };
  const scaleZ = entity.number(43, 1) * (mirrored ? -1 : 1);
  sink.insert({ block: entity.text(2), layer, move, copies, turnDeg, scaleZ, z: entity.number(30) * (mirrored ? -1 : 1) });
  return null;
}
