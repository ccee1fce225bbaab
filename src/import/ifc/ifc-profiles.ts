/** Profiles that are swept to solids: their outline with holes, and for columns their size. */

import { type CurveOptions, type Loop, loopOf, roundLoop, straightLoop } from './ifc-curves.ts';
import { type Entity, lengthOf, maybeNumber, Unreadable, Unsupported, wordOf } from './ifc-model.ts';
import { type Frame, moved, placedFlat } from './ifc-places.ts';

export interface Profile {
  readonly outer: Loop;
  readonly holes: readonly Loop[];
  /** Middle and axes of a profile with a size of its own. */
  readonly frame: Frame;
  /** Width along x and depth along y; null where the outline alone says. */
  readonly size: readonly [number, number] | null;
  /** The same whichever way it is turned. */
  readonly round?: boolean;
}

/** Profiles of rolled steel and the like count by the box around them: places of width and depth. */
const BOXED: Readonly<Record<string, readonly [number, number]>> = {
  IFCISHAPEPROFILEDEF: [3, 4],
  IFCASYMMETRICISHAPEPROFILEDEF: [3, 4],
  IFCUSHAPEPROFILEDEF: [4, 3],
  IFCCSHAPEPROFILEDEF: [4, 3],
  IFCLSHAPEPROFILEDEF: [4, 3],
  IFCTSHAPEPROFILEDEF: [4, 3],
};

export function isBoxed(type: string): boolean {
  return type in BOXED;
}

/** The profile an entity gives. */
export function profileOf(entity: Entity, options: CurveOptions): Profile {
  const { model } = options;
  const { type, values } = entity;
  if (wordOf(values[0]) === 'CURVE') throw new Unreadable('a profile that is a line');
  const frame = () => placedFlat(model, model.maybe(values[2]));
  if (type === 'IFCARBITRARYCLOSEDPROFILEDEF' || type === 'IFCARBITRARYPROFILEDEFWITHVOIDS') {
    const holes = type === 'IFCARBITRARYCLOSEDPROFILEDEF' ? [] : model.toAll(values[3]);
    const outer = loopOf(model.to(values[2]), options);
    return { outer, holes: holes.map((hole) => loopOf(hole, options)), frame: placedFlat(model, null), size: null };
  }
  if (type === 'IFCRECTANGLEPROFILEDEF') return rectangle(frame(), [lengthOf(values[3]), lengthOf(values[4])]);
  if (type === 'IFCROUNDEDRECTANGLEPROFILEDEF')
    return rounded(frame(), [lengthOf(values[3]), lengthOf(values[4])], maybeNumber(values[5]) ?? 0);
  if (type === 'IFCRECTANGLEHOLLOWPROFILEDEF') {
    const [width, depth, wall] = [lengthOf(values[3]), lengthOf(values[4]), lengthOf(values[5])];
    const inner = rectangle(frame(), [width - 2 * wall, depth - 2 * wall]);
    return { ...rectangle(frame(), [width, depth]), holes: [inner.outer] };
  }
  if (type === 'IFCCIRCLEPROFILEDEF') return round(frame(), lengthOf(values[3]), lengthOf(values[3]));
  if (type === 'IFCCIRCLEHOLLOWPROFILEDEF') {
    const [radius, wall] = [lengthOf(values[3]), lengthOf(values[4])];
    const inner = Math.max(radius - wall, 0);
    const whole = round(frame(), radius, radius);
    return inner > 0 ? { ...whole, holes: [round(frame(), inner, inner).outer] } : whole;
  }
  if (type === 'IFCELLIPSEPROFILEDEF') return round(frame(), lengthOf(values[3]), lengthOf(values[4]));
  if (isBoxed(type)) {
    const [width, depth] = BOXED[type];
    return rectangle(frame(), [lengthOf(values[width]), lengthOf(values[depth])]);
  }
  throw type.endsWith('PROFILEDEF') ? new Unsupported(type) : new Unreadable(type);
}

function corners(frame: Frame, [width, depth]: readonly [number, number]): number[] {
  if (!(width > 0 && depth > 0)) throw new Unreadable('a profile without size');
  const [x, y] = [width / 2, depth / 2];
  return [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ].flatMap(([a, b]) => moved(frame, [a, b, 0]).slice(0, 2));
}

function rectangle(frame: Frame, size: readonly [number, number]): Profile {
  return { outer: straightLoop(corners(frame, size)), holes: [], frame, size };
}

function round(frame: Frame, first: number, second: number): Profile {
  const { x, y, at } = frame;
  const outer = roundLoop([at[0], at[1]], [x[0] * first, x[1] * first], [y[0] * second, y[1] * second]);
  return { outer, holes: [], frame, size: [2 * first, 2 * second], round: first === second };
}

/** Quarter turns at the corners, counter-clockwise from the lower side. */
function rounded(frame: Frame, size: readonly [number, number], radius: number): Profile {
  if (!(radius > 0)) return rectangle(frame, size);
  const [x, y] = [size[0] / 2 - radius, size[1] / 2 - radius];
  if (!(x >= 0 && y >= 0)) throw new Unreadable('a rounding larger than its profile');
  const centres = [
    [x, -y],
    [x, y],
    [-x, y],
    [-x, -y],
  ] as const;
  const points: number[] = [];
  const curves: Loop['curves'] = new Map(
    centres.map(([a, b], i) => {
      const [cx, cy] = moved(frame, [a, b, 0]);
      const u = [frame.x[0] * radius, frame.x[1] * radius] as const;
      const v = [frame.y[0] * radius, frame.y[1] * radius] as const;
      const [from, to] = [((i - 1) * Math.PI) / 2, (i * Math.PI) / 2];
      for (const angle of [from, to]) {
        const [c, s] = [Math.round(Math.cos(angle)), Math.round(Math.sin(angle))];
        points.push(cx + u[0] * c + v[0] * s, cy + u[1] * c + v[1] * s);
      }
      return [2 * i, { kind: 'arc', centre: [cx, cy], u, v, from, to }] as const;
    }),
  );
  return { outer: { points, curves }, holes: [], frame, size };
}
