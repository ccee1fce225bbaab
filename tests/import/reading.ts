/** Short ways to read a text and to look at what came of it. */

import { readDrawing } from '../../src/import/read-drawing.ts';
import type { Answers, DrawingShape, ImportResult } from '../../src/model/drawing.ts';

export function readText(text: string, answers: Answers = {}, name = 'test'): ImportResult {
  return readDrawing(name, new TextEncoder().encode(text), answers);
}

export function shapesOn(result: ImportResult, layer: string): readonly DrawingShape[] {
  return result.layers.find(({ name }) => name === layer)?.shapes ?? [];
}

type OfKind<K extends DrawingShape['kind']> = Extract<DrawingShape, { kind: K }>;

export function only<K extends DrawingShape['kind']>(result: ImportResult, layer: string, kind: K): OfKind<K> {
  const shapes = shapesOn(result, layer).filter((shape): shape is OfKind<K> => shape.kind === kind);
  if (shapes.length !== 1) throw new RangeError(`only: ${shapes.length} × ${kind} on ${layer}`);
  return shapes[0]!;
}

export const codes = (result: ImportResult) => ({
  mends: result.mends.map(({ code }) => code),
  issues: result.issues.map(({ code, level }) => `${level} ${code}`),
  open: result.questions.filter(({ answered, certain }) => !answered && !certain).map(({ id }) => id),
});
