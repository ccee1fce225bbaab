/** The drafting hatches as marks on a square tile that repeats: what is drawn, in cells, before any pixel. */

import type { Pattern } from '../model/palette.ts';

/** Cells along each side of the tile. */
export const TILE_CELLS = 8;

/** Strokes with ends; a dot is filled. Lengths in cells; y up. */
export type Mark =
  | { readonly kind: 'stroke'; readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number }
  | { readonly kind: 'ring'; readonly x: number; readonly y: number; readonly radius: number }
  | { readonly kind: 'dot'; readonly x: number; readonly y: number; readonly radius: number };

/** A cell of the tile with its own even random numbers, the same at every start. */
interface Cell {
  readonly column: number;
  readonly row: number;
  readonly random: () => number;
}

const stroke = (x1: number, y1: number, x2: number, y2: number): Mark => ({ kind: 'stroke', x1, y1, x2, y2 });

function cells(seed: number, mark: (cell: Cell) => readonly Mark[]): Mark[] {
  const all: Mark[] = [];
  for (let row = 0; row < TILE_CELLS; row++) {
    for (let column = 0; column < TILE_CELLS; column++) all.push(...mark({ column, row, random: randomFrom(seed, column, row) }));
  }
  return all;
}

/** Numbers in 0 … 1 from mixing bits; a hatch needs no better ones. */
function randomFrom(seed: number, column: number, row: number): () => number {
  let state = Math.imul(seed + 1, 0x9e3779b1) ^ Math.imul(column + 1, 0x85ebca77) ^ Math.imul(row + 1, 0xc2b2ae3d);
  return () => {
    state = Math.imul(state ^ (state >>> 15), 0x2c1b3c6d);
    state = Math.imul(state ^ (state >>> 12), 0x297a2d39);
    state ^= state >>> 15;
    return (state >>> 0) / 0x1_0000_0000;
  };
}

/** Closed outline with so many corners about a point, its radius by direction. */
function outline(x: number, y: number, corners: number, radiusAt: (angle: number) => number): Mark[] {
  const points = Array.from({ length: corners }, (_, i) => {
    const angle = (i / corners) * 2 * Math.PI;
    return [x + radiusAt(angle) * Math.cos(angle), y + radiusAt(angle) * Math.sin(angle)];
  });
  return points.map(([x1, y1], i) => stroke(x1, y1, ...(points[(i + 1) % corners] as [number, number])));
}

/** Even polygon, turned. */
function polygon(at: readonly [number, number], corners: number, radius: number, turn: number): Mark[] {
  const corner = (i: number): [number, number] => {
    const angle = turn + (i / corners) * 2 * Math.PI;
    return [at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle)];
  };
  return Array.from({ length: corners }, (_, i) => stroke(...corner(i), ...corner(i + 1)));
}

/** Middle of a cell, moved by up to `spread` to each side. */
function near(cell: Cell, spread: number): [number, number] {
  return [cell.column + 0.5 + (2 * cell.random() - 1) * spread, cell.row + 0.5 + (2 * cell.random() - 1) * spread];
}

function dashes({ column, row }: Cell, long: number): Mark[] {
  return [0, 0.5].map((half, k) => {
    const start = column + 0.5 * k + 0.1;
    return stroke(start, row + half + 0.25, start + long, row + half + 0.25);
  });
}

function grain(cell: Cell): Mark[] {
  const [x, y] = near(cell, 0.1);
  const size = 0.2 + 0.13 * cell.random();
  const [a, b] = [cell.random(), cell.random()].map((r) => r * 2 * Math.PI);
  return outline(x, y, 10, (angle) => size * (1 + 0.14 * Math.sin(2 * angle + a) + 0.08 * Math.sin(3 * angle + b)));
}

function brick({ column, row }: Cell): Mark[] {
  return [0, 0.5].flatMap((course) => {
    const y = row + course;
    const joint = column + course;
    return [stroke(column, y, column + 1, y), stroke(joint, y, joint, y + 0.5)];
  });
}

function strokeMark(cell: Cell): Mark[] {
  if (cell.random() > 0.85) return [];
  const [x, y] = near(cell, 0.15);
  const angle = 1.3 * (cell.random() - 0.5);
  const half = 0.16 + 0.16 * cell.random();
  return [stroke(x - half * Math.cos(angle), y - half * Math.sin(angle), x + half * Math.cos(angle), y + half * Math.sin(angle))];
}

function tuft(cell: Cell): Mark[] {
  if (cell.random() > 0.9) return [];
  const [x, y] = near(cell, 0.16);
  const size = 0.36 + 0.18 * cell.random();
  return [-0.5, 0.04, 0.46].map((lean) => stroke(x, y - 0.25, x + lean * size, y - 0.25 + size * (1 - 0.5 * Math.abs(lean))));
}

function concrete(cell: Cell): Mark[] {
  const { column, row, random } = cell;
  const marks: Mark[] = [stroke(column, row, column + 1, row + 1)];
  for (let i = 0; i < 3; i++) {
    const x = column + random();
    const y = row + random();
    if (random() < 0.35) marks.push(...polygon([x, y], 3, 0.07, 6.28 * random()));
    else marks.push({ kind: 'dot', x, y, radius: 0.015 });
  }
  return marks;
}

function wave({ column, row }: Cell): Mark[] {
  // Two rows per cell, each wave a cell long, every other one left out.
  return [0, 1].flatMap((k) => {
    if ((column + k + row) % 2 === 1) return [];
    const height = (t: number) => row + 0.25 + 0.5 * k + 0.08 * Math.sin(2 * Math.PI * t);
    return Array.from({ length: 10 }, (_, i) => {
      const [from, to] = [i / 8, (i + 1) / 8];
      return stroke(column + from, height(from), column + to, height(to));
    });
  });
}

const MARKS: Readonly<Record<Pattern, () => Mark[]>> = {
  plain: () => [],
  dashes: () => cells(1, (cell) => dashes(cell, 0.62)),
  'fine dashes': () => cells(2, (cell) => dashes(cell, 0.38)),
  'fine dots': () => cells(3, ({ column, row }) => [{ kind: 'dot', x: column + 0.5 * (row % 2) + 0.25, y: row + 0.5, radius: 0.05 }]),
  cups: () => cells(4, ({ column, row }) => [{ kind: 'ring', x: column + 0.5 * (row % 2) + 0.25, y: row + 0.5, radius: 0.33 }]),
  'coarse grains': () => cells(5, grain),
  crumbs: () => cells(6, (cell) => polygon(near(cell, 0.08), 5, 0.25 + 0.12 * cell.random(), 6.28 * cell.random())),
  'angular grains': () =>
    cells(7, (cell) => (cell.random() > 0.92 ? [] : polygon(near(cell, 0.12), 3, 0.2 + 0.14 * cell.random(), 6.28 * cell.random()))),
  stipple: () =>
    cells(8, (cell) =>
      [0.045, 0.02].map((radius) => ({ kind: 'dot', x: cell.column + cell.random(), y: cell.row + cell.random(), radius })),
    ),
  'running bond': () => cells(9, brick),
  strokes: () => cells(10, strokeMark),
  blades: () => cells(11, tuft),
  concrete: () => cells(12, concrete),
  waves: () => cells(13, wave),
};

/** All marks of a pattern on one tile; marks may reach over its border and come in again on the other side. */
export function hatchMarks(pattern: Pattern): readonly Mark[] {
  return MARKS[pattern]();
}

/** Distance from a point to the ink of a mark [cells]. */
export function distanceTo(mark: Mark, x: number, y: number): number {
  if (mark.kind === 'ring') return Math.abs(Math.hypot(x - mark.x, y - mark.y) - mark.radius);
  if (mark.kind === 'dot') return Math.max(0, Math.hypot(x - mark.x, y - mark.y) - mark.radius);
  const [dx, dy] = [mark.x2 - mark.x1, mark.y2 - mark.y1];
  const along = ((x - mark.x1) * dx + (y - mark.y1) * dy) / (dx * dx + dy * dy);
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(x - mark.x1 - t * dx, y - mark.y1 - t * dy);
}
