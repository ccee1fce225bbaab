/** A point far from all others: often a leftover at 0, 0 or a slip of the keyboard. */

import type { PointM } from '../model/scene-file.ts';
import type { Gathering } from './gathering.ts';
import { type RawShape, visitPoints } from './raw-shapes.ts';

export interface Stray {
  readonly count: number;
  /** Greatest distance from the middle, in the file's units. */
  readonly far: number;
  readonly at: PointM;
  readonly isStray: (x: number, y: number) => boolean;
}

/** Points further from the middle than so many spreads are stray. */
const SPREADS = 20;
/** Points looked at for the middle. */
const SAMPLE = 20_000;
/** More than this share, and at least so many, are no strays but a second drawing. */
const STRAY_SHARE = 0.01;
const STRAY_COUNT = 3;

/** Middle and spread: of the sorted values, what lies between the first and last tenth. */
function spreadOf(values: number[]): { readonly middle: number; readonly spread: number } {
  values.sort((a, b) => a - b);
  const at = (share: number) => values[Math.round(share * (values.length - 1))];
  return { middle: at(0.5), spread: at(0.8) - at(0.2) };
}

/** Finds them; none where the drawing has fewer than five points. */
export function strayPoints(shapes: readonly RawShape[]): Stray {
  const none: Stray = { count: 0, far: 0, at: [0, 0], isStray: () => false };
  let total = 0;
  for (const shape of shapes) visitPoints(shape, () => (total += 1));
  if (total < 5) return none;
  const every = Math.ceil(total / SAMPLE);
  const [xs, ys]: [number[], number[]] = [[], []];
  let i = 0;
  for (const shape of shapes) {
    visitPoints(shape, (x, y) => {
      if (i++ % every === 0) {
        xs.push(x);
        ys.push(y);
      }
    });
  }
  const [inX, inY] = [spreadOf(xs), spreadOf(ys)];
  const limit = SPREADS * Math.max(inX.spread, inY.spread);
  if (!(limit > 0)) return none;
  const isStray = (x: number, y: number) => Math.abs(x - inX.middle) > limit || Math.abs(y - inY.middle) > limit;
  let [count, far] = [0, 0];
  let at: PointM = [0, 0];
  for (const shape of shapes) {
    visitPoints(shape, (x, y) => {
      if (!isStray(x, y)) return;
      count += 1;
      const distance = Math.hypot(x - inX.middle, y - inY.middle);
      if (distance > far) [far, at] = [distance, [x, y]];
    });
  }
  return count > Math.max(STRAY_COUNT, STRAY_SHARE * total) ? none : { count, far, at, isStray };
}

/** The shapes without the stray points; a path with curves, or with too little left, goes as a whole. */
export function withoutStray(gather: Gathering, isStray: Stray['isStray']): RawShape[] {
  return gather.shapes.flatMap((shape) => {
    let touched = false;
    visitPoints(shape, (x, y) => {
      touched ||= isStray(x, y);
    });
    if (!touched) return [shape];
    gather.ignored(shape.layer, 'far from the rest');
    if (shape.kind !== 'path' || shape.curves !== null || shape.holes !== undefined) return [];
    const keep = Array.from({ length: shape.points.length / 2 }, (_, i) => i).filter(
      (i) => !isStray(shape.points[2 * i], shape.points[2 * i + 1]),
    );
    if (keep.length < (shape.closed ? 3 : 2)) return [];
    const points = keep.flatMap((i) => [shape.points[2 * i], shape.points[2 * i + 1]]);
    return [{ ...shape, points, levels: shape.levels && keep.map((i) => shape.levels?.[i] ?? 0) }];
  });
}
