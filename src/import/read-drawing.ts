/** The one way in: bytes of any file to what was found in it, what was asked, what was changed and what is wrong. */

import type { Answers, DrawingBox, DrawingKind, DrawingLayer, DrawingShape, ImportResult, TablePreview } from '../model/drawing.ts';
import type { Issue } from '../model/issue.ts';
import { type Affine, cleanM, moveCurve, movePoint, moveVector } from './curves.ts';
import { decodeText } from './decode-text.ts';
import { kindOfText, refuseBytes } from './file-kind.ts';
import { LayerFinish } from './finish-shapes.ts';
import { Gathering, StopReading } from './gathering.ts';
import type { Mesher } from './ifc/mesher.ts';
import { readIfc } from './ifc/read-ifc.ts';
import { UNITS } from './length-unit.ts';
import type { RawPath, RawShape } from './raw-shapes.ts';
import { readDxf } from './read-dxf.ts';
import { readGeoJson } from './read-geojson.ts';
import { readLandXml } from './read-landxml.ts';
import { readTable } from './read-table.ts';
import { settleLevels } from './settle-levels.ts';
import { type PlaceHints, settlePlace } from './settle-place.ts';
import { simplifyShapes } from './simplify-shapes.ts';
import { partOf, runAtOnce, runInSlices, type StepOptions, type Steps } from './steps.ts';
import { thinLevels } from './thin-levels.ts';
import { kindsText } from './words/kind-words.ts';

export interface ReadOptions {
  /** Answers to questions of an earlier reading, by id. */
  readonly answers?: Answers;
  /** Box of what the scene holds already; shows whether axes are exchanged [m]. */
  readonly around?: DrawingBox;
  /** Makes surfaces of those bodies of a model that need it; without one they are left out and told. */
  readonly mesher?: Mesher | null;
}

/**
 * Reads a file at once.
 * @param name - its name, for messages only: the kind is told by content
 * @param bytes - the whole file
 * @param answers - to questions of an earlier reading, by id
 * @returns what was found; never throws, whatever the bytes
 */
export function readDrawing(name: string, bytes: Uint8Array, answers: Answers = {}): ImportResult {
  return runAtOnce(readingSteps(name, bytes, { answers }));
}

/**
 * Reads a file in slices, so that a worker stays reachable.
 * @param name - its name
 * @param bytes - the whole file
 * @param options - answers, progress from 0 to 1, signal that stops it
 * @returns what was found; rejects with the signal's reason where it was stopped
 */
export function readDrawingInSlices(name: string, bytes: Uint8Array, options: ReadOptions & StepOptions = {}): Promise<ImportResult> {
  return runInSlices(readingSteps(name, bytes, options), options);
}

/** The reading, step by step. */
export function* readingSteps(name: string, bytes: Uint8Array, { answers = {}, around, mesher = null }: ReadOptions): Steps<ImportResult> {
  const gather = new Gathering(answers);
  const empty = { name, bytes: bytes.length, kind: null, layers: [], box: null, points: 0 };
  const refused = (issue: Issue): ImportResult => ({
    ...empty,
    questions: gather.questions,
    mends: gather.mends,
    issues: [issue, ...gather.issues()],
  });
  const refusal = refuseBytes(bytes);
  if (refusal !== null) return refused(refusal);
  const text = decodeText(bytes, gather);
  yield 0.02;
  const kind = kindOfText(text);
  if (typeof kind !== 'string') return refused(kind);
  if (kind === 'scene')
    return { ...empty, kind, sceneText: text, questions: gather.questions, mends: gather.mends, issues: gather.issues() };
  try {
    const head = yield* partOf(contentOf(kind, text, { gather, mesher }), 0.02, 0.7);
    const settled = yield* partOf(settle(gather, { ...head, around }), 0.7, 0.9);
    const { layers, thinned } = yield* partOf(thinLevels(settled, kind, gather), 0.9, 1);
    const box = boxOf(layers);
    if (box === null) tellNothing(gather);
    gather.tellTexts();
    const table = head.preview === undefined ? {} : { table: head.preview };
    return {
      ...empty,
      kind,
      layers,
      box,
      points: countPoints(layers),
      ...table,
      ...(thinned.length > 0 && { thinned }),
      questions: gather.questions,
      mends: gather.mends,
      issues: gather.issues(),
    };
  } catch (stop) {
    if (!(stop instanceof StopReading)) throw stop;
    return { ...refused(stop.issue), kind };
  }
}

interface Head extends PlaceHints {
  readonly levelUnit: keyof typeof UNITS | null;
  readonly zeros: 'none' | 'ask' | 'level';
  readonly preview?: TablePreview;
}

interface Means {
  readonly gather: Gathering;
  readonly mesher: Mesher | null;
}

function* contentOf(kind: Exclude<DrawingKind, 'scene'>, text: string, { gather, mesher }: Means): Steps<Head> {
  if (/\r\n/.test(text) && /[^\r]\n/.test(text)) gather.mend('LINE_ENDS', {});
  const said = { unit: null, degrees: null, levelUnit: null, zeros: 'none' } as const;
  if (kind === 'dxf') {
    const { unit } = yield* readDxf(text.includes('\n') ? text : text.replaceAll('\r', '\n'), gather);
    return { ...said, unit, degrees: false };
  }
  if (kind === 'ifc') {
    const { unit, unitInDoubt } = yield* readIfc(text, gather, mesher);
    return { unit, unitIs: unitInDoubt ? 'unknown' : 'given', degrees: false, levelUnit: unit, zeros: 'level' };
  }
  if (kind === 'geojson') return { ...said, ...(yield* readGeoJson(text, gather)) };
  if (kind === 'landxml') {
    const { unit } = yield* readLandXml(text, gather);
    return { ...said, unit, degrees: unit === null ? null : false, levelUnit: unit };
  }
  const { unit, degrees, levelUnit, preview } = yield* readTable(text, gather);
  return { unit, degrees, levelUnit, preview, zeros: 'ask' };
}

/** Between two steps. */
const STEP = 2000;

function* settle(gather: Gathering, head: Head): Steps<DrawingLayer[]> {
  const placed = settlePlace(gather, head);
  yield 0.1;
  if (placed !== null) {
    const { move, scale, unit } = placed;
    for (const [i, shape] of gather.shapes.entries()) {
      gather.shapes[i] = movedShape(shape, move);
      if (i % STEP === 0) yield 0.1;
    }
    settleLevels(gather, { unit: head.levelUnit, planScale: scale, planUnit: unit, sideM: sideOf(gather.shapes), zeros: head.zeros });
  }
  yield 0.3;
  // In a drawing in feet, levels written as text are feet too; in metric ones they are metres, whatever the unit of the plan.
  const inFeet = placed?.unit === 'ft' || placed?.unit === 'ftUS' || placed?.unit === 'in';
  const found = yield* partOf(finishLayers(gather, inFeet ? UNITS.ft.metres : 1, head.zeros === 'level'), 0.3, 0.8);
  yield* partOf(simplifyShapes(found, gather), 0.8, 1);
  return [...gather.layers].map(([name, { hidden, used, ignored }]) => ({
    name,
    hidden,
    shapes: found.get(name) ?? [],
    used: { ...used },
    ignored: { ...ignored },
  }));
}

function* finishLayers(gather: Gathering, textScale: number, zeroIsLevel: boolean): Steps<Map<string, readonly DrawingShape[]>> {
  const finishes = new Map<string, LayerFinish>();
  for (const [i, shape] of gather.shapes.entries()) {
    let finish = finishes.get(shape.layer);
    if (finish === undefined) {
      gather.layer(shape.layer);
      finish = new LayerFinish(gather, shape.layer, textScale, zeroIsLevel);
      finishes.set(shape.layer, finish);
    }
    finish.add(shape);
    if (i % STEP === 0) yield (0.8 * i) / gather.shapes.length;
  }
  const found = new Map<string, readonly DrawingShape[]>();
  for (const [layer, finish] of finishes) {
    found.set(layer, finish.finish());
    yield 0.8 + (0.2 * found.size) / finishes.size;
  }
  return found;
}

/** Numbers that keep their unit stay the same to the bit. */
function placedPoint(move: Affine, x: number, y: number): [number, number] {
  const [atX, atY] = movePoint(move, x, y);
  return Math.abs(move.a + move.b) === 1 ? [atX, atY] : [cleanM(atX), cleanM(atY)];
}

function movedShape(shape: RawShape, move: Affine): RawShape {
  if (shape.kind === 'path') return movedPath(shape, move);
  const [x, y] = placedPoint(move, shape.x, shape.y);
  return shape.kind === 'circle' ? { ...shape, x, y, u: moveVector(move, shape.u), v: moveVector(move, shape.v) } : { ...shape, x, y };
}

function movedPath(path: RawPath, move: Affine): RawPath {
  const points = new Array<number>(path.points.length);
  for (let i = 0; i + 1 < points.length; i += 2) [points[i], points[i + 1]] = placedPoint(move, path.points[i], path.points[i + 1]);
  const curves = path.curves && new Map([...path.curves].map(([i, curve]) => [i, moveCurve(move, curve)]));
  return { ...path, points, curves, ...(path.holes ? { holes: path.holes.map((hole) => movedPath(hole, move)) } : {}) };
}

function sideOf(shapes: readonly RawShape[]): number {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const shape of shapes) {
    const points = shape.kind === 'path' ? shape.points : [shape.x, shape.y];
    for (let i = 0; i + 1 < points.length; i += 2) {
      [minX, maxX] = [Math.min(minX, points[i]), Math.max(maxX, points[i])];
      [minY, maxY] = [Math.min(minY, points[i + 1]), Math.max(maxY, points[i + 1])];
    }
  }
  return Math.max(maxX - minX, maxY - minY);
}

function boxOf(layers: readonly DrawingLayer[]): DrawingBox | null {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const { shapes } of layers) {
    for (const shape of shapes) {
      const reach = shape.kind === 'circle' ? shape.radiusM : 0;
      for (const [x, y] of 'points' in shape ? shape.points : [shape.at]) {
        box.minX = Math.min(box.minX, x - reach);
        box.minY = Math.min(box.minY, y - reach);
        box.maxX = Math.max(box.maxX, x + reach);
        box.maxY = Math.max(box.maxY, y + reach);
      }
    }
  }
  return box.minX <= box.maxX ? box : null;
}

function countPoints(layers: readonly DrawingLayer[]): number {
  return layers.reduce((sum, { shapes }) => sum + shapes.reduce((all, shape) => all + ('points' in shape ? shape.points.length : 1), 0), 0);
}

function tellNothing(gather: Gathering): void {
  if (gather.issues().some(({ level }) => level === 'error')) return;
  const ignored = [...gather.layers.values()].flatMap((layer) => Object.entries(layer.ignored));
  gather.error('NOTHING_FOUND', { kinds: kindsText(ignored.slice(0, 5)) });
}
