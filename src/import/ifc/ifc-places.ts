/** Where things stand: placements chained up to the world of the model, in its own unit. */

import type { Affine } from '../curves.ts';
import { deeper, type Entity, type IfcModel, maybeNumber, pointOf, tripleOf, Unreadable, type Xyz } from './ifc-model.ts';

/** Columns x, y, z and origin. */
export interface Frame {
  readonly x: Xyz;
  readonly y: Xyz;
  readonly z: Xyz;
  readonly at: Xyz;
}

export const WORLD: Frame = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1], at: [0, 0, 0] };

export const plus = (a: Xyz, b: Xyz, times = 1): Xyz => [a[0] + times * b[0], a[1] + times * b[1], a[2] + times * b[2]];
export const dot = (a: Xyz, b: Xyz): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Xyz, b: Xyz): Xyz => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

export function unit(a: Xyz): Xyz {
  const length = Math.hypot(...a);
  if (!(length > 0)) throw new Unreadable('a direction of no length');
  // A direction along an axis stays exactly so.
  return length === 1 ? a : [a[0] / length, a[1] / length, a[2] / length];
}

export function turned({ x, y, z }: Frame, [a, b, c]: Xyz): Xyz {
  return plus(plus([x[0] * a, x[1] * a, x[2] * a], y, b), z, c);
}

export function moved(frame: Frame, point: Xyz): Xyz {
  return plus(frame.at, turned(frame, point));
}

/** First `inner`, then `outer`. */
export function within(outer: Frame, inner: Frame): Frame {
  return { x: turned(outer, inner.x), y: turned(outer, inner.y), z: turned(outer, inner.z), at: moved(outer, inner.at) };
}

function directionOf(model: IfcModel, entity: Entity | null, missing: Xyz): Xyz {
  if (entity === null) return missing;
  if (entity.type !== 'IFCDIRECTION') throw new Unreadable(entity.type);
  return unit(tripleOf(model.entity(entity.id).values[0]));
}

/** Axes at right angles from a z and a rough x. */
function frameOf(z: Xyz, rough: Xyz, at: Xyz): Frame {
  const along = dot(rough, z);
  const flat = plus(rough, z, -along);
  if (!(Math.hypot(...flat) > 1e-9)) throw new Unreadable('axes that run along each other');
  const x = unit(flat);
  return { x, y: cross(z, x), z, at };
}

/** A placement in space; the world itself where there is none. */
export function placed(model: IfcModel, entity: Entity | null): Frame {
  if (entity === null) return WORLD;
  const { type, values } = entity;
  if (type === 'IFCAXIS2PLACEMENT2D') return placedFlat(model, entity);
  if (type !== 'IFCAXIS2PLACEMENT3D') throw new Unreadable(type);
  const z = directionOf(model, model.maybe(values[1]), WORLD.z);
  const given = model.maybe(values[2]);
  const rough = given === null ? (Math.abs(z[0]) > 0.999999 ? WORLD.y : WORLD.x) : directionOf(model, given, WORLD.x);
  return frameOf(z, rough, pointOf(model.to(values[0])));
}

/** A placement in a plane. */
export function placedFlat(model: IfcModel, entity: Entity | null): Frame {
  if (entity === null) return WORLD;
  const { type, values } = entity;
  if (type !== 'IFCAXIS2PLACEMENT2D') return placed(model, entity);
  const [a, b] = directionOf(model, model.maybe(values[1]), WORLD.x);
  const at = pointOf(model.to(values[0]));
  return { x: [a, b, 0], y: [-b, a, 0], z: [0, 0, 1], at };
}

/** Where a product stands: its placement within that of its storey, building and site. */
export function placedProduct(model: IfcModel, entity: Entity | null, depth = 0): Frame {
  if (entity === null) return WORLD;
  const { type, values } = entity;
  if (type !== 'IFCLOCALPLACEMENT') throw new Unreadable(type);
  return within(placedProduct(model, model.maybe(values[0]), deeper(depth)), placed(model, model.to(values[1])));
}

const OPERATORS = new Set(['IFCCARTESIANTRANSFORMATIONOPERATOR3D', 'IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM']);

/** How a shape drawn once is inserted: turned, mirrored and scaled. */
export function operated(model: IfcModel, { type, values }: Entity): Frame {
  if (!OPERATORS.has(type)) throw new Unreadable(type);
  const z = directionOf(model, model.maybe(values[4]), WORLD.z);
  const { x, y: right } = frameOf(z, directionOf(model, model.maybe(values[0]), WORLD.x), WORLD.at);
  const given = directionOf(model, model.maybe(values[1]), right);
  const y: Xyz = dot(given, right) < 0 ? [-right[0], -right[1], -right[2]] : right;
  const scale = maybeNumber(values[3]) ?? 1;
  const scales = [scale, maybeNumber(values[5]) ?? scale, maybeNumber(values[6]) ?? scale];
  const times = (a: Xyz, by: number): Xyz => [a[0] * by, a[1] * by, a[2] * by];
  return { x: times(x, scales[0]), y: times(y, scales[1]), z: times(z, scales[2]), at: pointOf(model.to(values[2])) };
}

/** What becomes of the x and y of a plane when looked at from above. */
export function planOf({ x, y, at }: Frame): Affine {
  return { a: x[0], b: x[1], c: y[0], d: y[1], e: at[0], f: at[1] };
}
