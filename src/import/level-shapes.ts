/** What a shape gives for levels: a spot or a breakline. */

import type { DrawingShape } from '../model/drawing.ts';
import type { Point3M, PointM } from '../model/scene-file.ts';

/** Point or text with a level; null for all else. */
export function spotOf(shape: DrawingShape): Point3M | null {
  return (shape.kind === 'point' || shape.kind === 'text') && shape.levelM !== null ? [...shape.at, shape.levelM] : null;
}

/** Line or outline with levels; null for all else. */
export function breaklineOf(shape: DrawingShape): readonly Point3M[] | null {
  if (shape.kind === 'line' && shape.levelsM !== undefined) return withLevels(shape.points, shape.levelsM);
  if (shape.kind === 'ring' && shape.levelM !== undefined) return withLevels([...shape.points, shape.points[0]], [shape.levelM]);
  return null;
}

/** The last level given counts for the points after it. */
function withLevels(points: readonly PointM[], levels: readonly number[]): Point3M[] {
  return points.map(([x, y], i) => [x, y, levels[Math.min(i, levels.length - 1)]]);
}
