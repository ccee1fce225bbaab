/** Arrows down the fall, the way water runs, or the way material is laid, on the surface that shows the map: short shafts with a head, evenly spaced. */

import type { CellMap, GridShape } from '../model/maps.ts';
import type { EdgeLines, Picture } from '../model/picture.ts';
import { cellCentre } from './cell-mark.ts';
import type { PartState } from './part-states.ts';
import { nearPrisms, topAt } from './top-at.ts';

/** Arrows across the longer side of the deck. */
const ACROSS = 26;
/** Least distance of two arrows [m]. */
const LEAST_M = 1;
/** Falls below this have no direction worth drawing [%]. */
const LEVEL_PERCENT = 0.05;
/** Height above the surface, so that arrows do not sink into it [m]. */
const ABOVE_M = 0.02;

/**
 * Lines of all arrows.
 * @param map - map with directions
 * @param grid - its grid
 * @param picture - picture, for the surface they lie on
 * @param states - states of its parts
 * @returns lines that move with their part
 */
export function fallArrows(map: CellMap, grid: GridShape, picture: Picture, states: readonly PartState[]): EdgeLines {
  const positions: number[] = [];
  const parts: number[] = [];
  const stepM = Math.max(LEAST_M, (Math.max(grid.columns, grid.rows) * grid.cellM) / ACROSS);
  const step = Math.max(1, Math.round(stepM / grid.cellM));
  const near = nearPrisms(picture);
  for (let row = step >> 1; row < grid.rows; row += step) {
    for (let column = step >> 1; column < grid.columns; column += step) {
      const cell = row * grid.columns + column;
      const bearingDeg = map.directionDeg?.[cell] ?? Number.NaN;
      if (Number.isNaN(bearingDeg) || (map.kind === 'fall' && !(map.values[cell] >= LEVEL_PERCENT))) continue;
      const [x, y] = cellCentre(grid, cell);
      const top = topAt({ ...picture, prisms: near(x, y) }, states, x, y);
      if (top === null) continue;
      const before = positions.length;
      pushArrow(positions, [x, y, top.zM + ABOVE_M], { bearingDeg, lengthM: 0.55 * stepM });
      for (let v = before; v < positions.length; v += 3) parts.push(top.part);
    }
  }
  return { positions: Float32Array.from(positions), parts: Uint16Array.from(parts), upper: new Uint8Array(parts.length).fill(1) };
}

interface Shaft {
  readonly bearingDeg: number;
  readonly lengthM: number;
}

function pushArrow(out: number[], [x, y, z]: readonly [number, number, number], { bearingDeg, lengthM }: Shaft): void {
  const bearing = (bearingDeg * Math.PI) / 180;
  const dx = Math.sin(bearing) * lengthM;
  const dy = Math.cos(bearing) * lengthM;
  const tip = [x + dx / 2, y + dy / 2];
  out.push(x - dx / 2, y - dy / 2, z, tip[0], tip[1], z);
  for (const side of [-1, 1]) out.push(tip[0], tip[1], z, tip[0] - 0.3 * dx - side * 0.16 * dy, tip[1] - 0.3 * dy + side * 0.16 * dx, z);
}
