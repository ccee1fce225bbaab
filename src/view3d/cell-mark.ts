/** The mark on the picked cell: its outline, four ticks as on a survey drawing, and a staff that is seen from the side too. */

import type { GridShape } from '../model/maps.ts';
import type { EdgeLines } from '../model/picture.ts';
import type { TopAt } from './top-at.ts';

/** Centre of a cell, local [m]. */
export function cellCentre(grid: GridShape, cell: number): readonly [number, number] {
  const column = cell % grid.columns;
  const row = Math.floor(cell / grid.columns);
  return [grid.x0M + (column + 0.5) * grid.cellM, grid.y0M + (row + 0.5) * grid.cellM];
}

/** Cell at a place, or null outside the grid. */
export function cellAt(grid: GridShape, at: readonly [number, number]): number | null {
  const column = Math.floor((at[0] - grid.x0M) / grid.cellM);
  const row = Math.floor((at[1] - grid.y0M) / grid.cellM);
  if (column < 0 || row < 0 || column >= grid.columns || row >= grid.rows) return null;
  return row * grid.columns + column;
}

/**
 * Lines of the mark.
 * @param at - centre of the cell [m]
 * @param halfM - half a cell
 * @param top - surface it lies on
 * @param tickM - length of the ticks, and half that of the staff
 */
export function markLines(at: readonly [number, number], halfM: number, top: TopAt, tickM: number): EdgeLines {
  const [x, y] = at;
  const corners = [
    [x - halfM, y - halfM],
    [x + halfM, y - halfM],
    [x + halfM, y + halfM],
    [x - halfM, y + halfM],
  ];
  const outline = corners.flatMap((from, i) => [...from, top.zM, ...corners[(i + 1) % 4], top.zM]);
  const ticks = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ].flatMap(([dx, dy]) => [halfM, halfM + tickM].flatMap((off) => [x + dx * off, y + dy * off, top.zM]));
  const staff = [x, y, top.zM, x, y, top.zM + 2 * tickM];
  const positions = Float32Array.from([...outline, ...ticks, ...staff]);
  const vertices = positions.length / 3;
  return { positions, parts: new Uint16Array(vertices).fill(top.part), upper: new Uint8Array(vertices).fill(1) };
}
