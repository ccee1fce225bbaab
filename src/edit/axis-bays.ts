/** Bays from axes: the fields of a grid, cut to the outline of the deck. */

import { polygonAreaM2 } from '../core/geometry/convex-clip.ts';
import { type SplitRing, type StraightLine, splitRing } from '../core/geometry/split-ring.ts';
import type { AxisGrid } from '../model/drawing.ts';
import type { PointM, PolygonM } from '../model/scene-file.ts';
import { cosSin } from './quarter-turns.ts';

export interface AxisBay {
  /** Letter of the field along the first direction, number across: A1, A2 … B1. A field in several pieces: A1, A1-2. */
  readonly id: string;
  readonly outline: readonly PointM[];
  readonly areaM2: number;
}

/** Pieces smaller than this are told apart as slivers [m²]. */
export const SLIVER_M2 = 0.05;

/** Fields of the whole grid. */
export const MOST_FIELDS = 10_000;

/**
 * Bays of a grid. What sticks out beyond the outer axes belongs to the outermost fields, so that the bays cover the deck.
 * @param grid - axes: where they begin, turn, distances
 * @param outline - outline of the deck, in coordinates of the file
 * @returns bays that share their edges exactly, in the order of their ids
 * @throws RangeError where a distance is not above 0 or the grid has more than 10 000 fields
 */
export function baysFromAxes(grid: AxisGrid, outline: PolygonM): readonly AxisBay[] {
  const steps = [...grid.alongM, ...grid.acrossM];
  const bad = steps.find((step) => !(step > 0 && Number.isFinite(step)));
  if (bad !== undefined) throw new RangeError(`baysFromAxes: a distance between axes is above 0, found ${bad}`);
  const fields = Math.max(1, grid.alongM.length) * Math.max(1, grid.acrossM.length);
  if (fields > MOST_FIELDS) throw new RangeError(`baysFromAxes: at most ${MOST_FIELDS} fields, found ${fields}`);
  const [originX, originY] = outline[0];
  const [cos, sin] = cosSin(grid.turnDeg);
  const [atX, atY] = [grid.at[0] - originX, grid.at[1] - originY];
  const alongLines = innerLines(grid.alongM, { nx: cos, ny: sin, offset: cos * atX + sin * atY });
  const acrossLines = innerLines(grid.acrossM, { nx: -sin, ny: cos, offset: cos * atY - sin * atX });
  const bays: AxisBay[] = [];
  for (const [i, strip] of stripsOf([localRing(outline)], alongLines).entries()) {
    for (const [j, pieces] of stripsOf(strip, acrossLines).entries()) {
      const ordered = pieces.map((piece) => ({ piece, areaM2: polygonAreaM2(piece) })).sort((a, b) => b.areaM2 - a.areaM2);
      for (const [k, { piece, areaM2 }] of ordered.entries()) {
        const id = `${letters(i)}${j + 1}${k === 0 ? '' : `-${k + 1}`}`;
        const points = Array.from({ length: piece.length / 2 }, (_, n): PointM => [piece[2 * n] + originX, piece[2 * n + 1] + originY]);
        bays.push({ id, outline: points, areaM2 });
      }
    }
  }
  return bays;
}

/** All axes but the first and the last: beyond those the outermost fields go on. */
function innerLines(steps: readonly number[], first: StraightLine): StraightLine[] {
  let { offset } = first;
  return steps.slice(0, -1).map((step) => {
    offset += step;
    return { ...first, offset };
  });
}

/** Open ring from the first point, counter-clockwise. */
function localRing(outline: PolygonM): readonly number[] {
  const [originX, originY] = outline[0];
  const points = outline.map(([x, y]) => [x - originX, y - originY] as const);
  const last = points[points.length - 1];
  if (points.length > 1 && last[0] === 0 && last[1] === 0) points.pop();
  const ring = points.flat();
  return polygonAreaM2(ring) >= 0 ? ring : [...points].reverse().flat();
}

/** Pieces between neighbouring lines, as many lists as lines and one more. */
function stripsOf(pieces: readonly (readonly number[])[], lines: readonly StraightLine[]): (readonly number[])[][] {
  const strips: (readonly number[])[][] = [];
  let rest = pieces;
  for (const line of lines) {
    const split: SplitRing[] = rest.map((piece) => splitRing(piece, line));
    strips.push(split.flatMap(({ below }) => below));
    rest = split.flatMap(({ above }) => above);
  }
  return [...strips, [...rest]];
}

/** A, B … Z, AA, AB … */
function letters(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : `${letters(Math.floor(index / 26) - 1)}${letter}`;
}
