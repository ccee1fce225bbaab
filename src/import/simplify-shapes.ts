/** Asks whether lines of very many points are to be simplified, and does it. */

import type { DrawingShape } from '../model/drawing.ts';
import type { PointM } from '../model/scene-file.ts';
import { MAX_LIST_POINTS } from '../scene/limits.ts';
import { areaOf } from '../scene/ring.ts';
import { choiceOf, type Gathering } from './gathering.ts';
import { CHORD_ERROR_M, MANY_POINTS } from './limits.ts';
import { simplifyLine } from './simplify-line.ts';
import { partOf, type Steps } from './steps.ts';

type Long = Extract<DrawingShape, { kind: 'ring' | 'line' }>;

function isLong(shape: DrawingShape): shape is Long {
  return (shape.kind === 'ring' || (shape.kind === 'line' && shape.levelsM === undefined)) && shape.points.length > MANY_POINTS;
}

/** The same layers, with simpler lines where that is the answer. */
export function* simplifyShapes(layers: Map<string, readonly DrawingShape[]>, gather: Gathering): Steps<void> {
  const long = [...layers.values()].flat().filter(isLong);
  if (long.length === 0) return;
  const simple = new Map<DrawingShape, PointM[]>();
  for (const [i, shape] of long.entries()) {
    const steps = simplifyLine(shape.points, shape.kind === 'ring', CHORD_ERROR_M);
    const points = yield* partOf(steps, i / long.length, (i + 1) / long.length);
    if (points.length >= 3) simple.set(shape, points);
  }
  const values = factsOf(long, simple);
  const tooLong = values.most > MAX_LIST_POINTS;
  const taken = gather.ask({
    id: 'simplify',
    code: 'SIMPLIFY',
    values,
    choices: [choiceOf('simplify', 'SIMPLIFY', { after: values.after }), choiceOf('keep', 'SIMPLIFY_KEEP', { before: values.before })],
    guess: tooLong ? 'simplify' : 'keep',
    certain: !tooLong,
  });
  if (taken === 'keep') return;
  gather.mend('SIMPLIFIED', values);
  for (const [name, shapes] of layers) {
    layers.set(
      name,
      shapes.map((shape) => {
        const points = simple.get(shape);
        return points === undefined ? shape : ({ ...shape, points } as DrawingShape);
      }),
    );
  }
}

function factsOf(long: readonly Long[], simple: ReadonlyMap<DrawingShape, PointM[]>) {
  let [before, after, areaM2, most] = [0, 0, 0, 0];
  for (const shape of long) {
    const points = simple.get(shape) ?? shape.points;
    before += shape.points.length;
    after += points.length;
    most = Math.max(most, shape.points.length);
    if (shape.kind === 'ring') areaM2 += areaOf(points) - areaOf(shape.points);
  }
  return { count: long.length, most, before, after, areaM2: Number(areaM2.toFixed(3)), errorMm: 1000 * CHORD_ERROR_M };
}
