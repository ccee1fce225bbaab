/** A drawing thinned to what a screen shows: a few ten thousand points, whatever the drawing has. */

import type { DrawingBox, DrawingLayer, DrawingShape } from '../model/drawing.ts';
import type { Preview, PreviewLayer } from '../model/importer.ts';
import type { PointM } from '../model/scene-file.ts';
import { simplifyLine } from './simplify-line.ts';
import { runAtOnce } from './steps.ts';

/** Points of the whole preview. */
const MOST_POINTS = 40_000;
/** What is finer than this part of the drawing cannot be told apart on a screen. */
const FINEST_SHARE = 1 / 3000;
/** Corners of a circle. */
const CORNERS = 24;

interface Sketch {
  readonly layer: number;
  readonly points: readonly PointM[];
  readonly sizeM: number;
}

/**
 * The preview of what was read.
 * @param layers - as read
 * @param box - around all of it; null where there is nothing
 * @returns lines by layer, the largest first where not all fit
 */
export function previewOf(layers: readonly DrawingLayer[], box: DrawingBox | null): Preview {
  if (box === null) return { at: [0, 0], layers: [], left: 0 };
  const finestM = FINEST_SHARE * Math.max(box.maxX - box.minX, box.maxY - box.minY);
  const sketches = layers.flatMap(({ shapes }, layer) =>
    shapes.flatMap((shape) => sketchesOf(shape).map((points) => sketchOf(points, layer, finestM))),
  );
  const kept = withinBudget(sketches);
  const at: PointM = [box.minX, box.minY];
  return {
    at,
    layers: layers.map(({ name }, layer) =>
      packed(
        name,
        kept.filter((sketch) => sketch.layer === layer),
        at,
      ),
    ),
    left: sketches.length - kept.length,
  };
}

/** Lines that draw a shape; a single point is a place. */
function sketchesOf(shape: DrawingShape): readonly (readonly PointM[])[] {
  if (shape.kind === 'ring') return [shape.points, ...(shape.holes ?? [])].map((ring) => [...ring, ring[0]]);
  if (shape.kind === 'line') return [shape.points];
  if (shape.kind !== 'circle') return [[shape.at]];
  const { at, radiusM } = shape;
  return [
    Array.from({ length: CORNERS + 1 }, (_, i): PointM => {
      const angle = (2 * Math.PI * i) / CORNERS;
      return [at[0] + radiusM * Math.cos(angle), at[1] + radiusM * Math.sin(angle)];
    }),
  ];
}

function sketchOf(points: readonly PointM[], layer: number, finestM: number): Sketch {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
    [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
  }
  const thinned = points.length > 2 ? runAtOnce(simplifyLine(points, false, finestM)) : points;
  return { layer, points: thinned, sizeM: maxX - minX + maxY - minY };
}

function withinBudget(sketches: readonly Sketch[]): readonly Sketch[] {
  const total = sketches.reduce((sum, { points }) => sum + points.length, 0);
  if (total <= MOST_POINTS) return sketches;
  let room = MOST_POINTS;
  const kept: Sketch[] = [];
  for (const sketch of [...sketches].sort((a, b) => b.sizeM - a.sizeM)) {
    if (sketch.points.length > room) continue;
    room -= sketch.points.length;
    kept.push(sketch);
  }
  return kept;
}

function packed(name: string, sketches: readonly Sketch[], [atX, atY]: PointM): PreviewLayer {
  const count = sketches.reduce((sum, { points }) => sum + points.length, 0);
  const points = new Float64Array(2 * count);
  const starts = new Uint32Array(sketches.length);
  let next = 0;
  for (const [i, sketch] of sketches.entries()) {
    starts[i] = next;
    for (const [x, y] of sketch.points) {
      points[2 * next] = x - atX;
      points[2 * next + 1] = y - atY;
      next += 1;
    }
  }
  return { name, points, starts };
}
