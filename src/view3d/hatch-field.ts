/**
 * Distances to the marks of each hatch, as a texture: the shader makes strokes of constant width on the screen from
 * them, at the cost of one look-up. Computed from the marks in a moment and kept, so that a lost context loses nothing.
 */

import { PATTERNS, type Pattern } from '../model/palette.ts';
import { distanceTo, hatchMarks, type Mark, TILE_CELLS } from './hatch-marks.ts';

/** Texels along each side of a tile. */
export const FIELD_SIZE = 256;
/** Greatest distance told apart [cells]. */
export const FIELD_REACH = 0.25;

const PER_CELL = FIELD_SIZE / TILE_CELLS;

/** One byte per texel: distance to the nearest mark, 255 for `FIELD_REACH` and more. */
export function hatchField(pattern: Pattern): Uint8Array {
  const field = new Uint8Array(FIELD_SIZE * FIELD_SIZE).fill(255);
  for (const mark of hatchMarks(pattern)) addMark(field, mark);
  return field;
}

function addMark(field: Uint8Array, mark: Mark): void {
  const [minX, minY, maxX, maxY] = boxOf(mark).map((at) => at * PER_CELL);
  const reach = FIELD_REACH * PER_CELL;
  for (let j = Math.floor(minY - reach); j <= maxY + reach; j++) {
    for (let i = Math.floor(minX - reach); i <= maxX + reach; i++) {
      const cells = distanceTo(mark, (i + 0.5) / PER_CELL, (j + 0.5) / PER_CELL);
      const texel = wrapped(j) * FIELD_SIZE + wrapped(i);
      const value = Math.round((cells / FIELD_REACH) * 255);
      if (value < field[texel]) field[texel] = value;
    }
  }
}

function wrapped(index: number): number {
  return ((index % FIELD_SIZE) + FIELD_SIZE) % FIELD_SIZE;
}

function boxOf(mark: Mark): [number, number, number, number] {
  if (mark.kind === 'stroke') {
    return [Math.min(mark.x1, mark.x2), Math.min(mark.y1, mark.y2), Math.max(mark.x1, mark.x2), Math.max(mark.y1, mark.y2)];
  }
  return [mark.x - mark.radius, mark.y - mark.radius, mark.x + mark.radius, mark.y + mark.radius];
}

/** Fields of all patterns, one layer each, in the order of `PATTERNS`. */
export function hatchFields(): Uint8Array {
  const all = new Uint8Array(FIELD_SIZE * FIELD_SIZE * PATTERNS.length);
  PATTERNS.forEach((pattern, layer) => {
    all.set(hatchField(pattern), layer * FIELD_SIZE * FIELD_SIZE);
  });
  return all;
}
