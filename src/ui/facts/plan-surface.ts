/** The drawing surface of the plan: which place of the deck is at which pixel, near and far. In a plan y runs down. */

import type { PointM } from '../../model/scene-file.ts';
import type { Surface } from '../../store/plan-draw.ts';
import type { Box } from './place.ts';

export interface SizePx {
  readonly width: number;
  readonly height: number;
}

/** Between a millimetre on a pixel and a hundred metres on a hand's width. */
const LEAST_SCALE = 0.4;
const MOST_SCALE = 1000;
/** Of a deck without any size. */
const LEAST_EXTENT_M = 1;

const held = (scale: number) => Math.min(MOST_SCALE, Math.max(LEAST_SCALE, scale));

/** A local point on the surface [px]. */
export function toPixel([x, y]: PointM, { scalePx, panPx }: Surface): PointM {
  return [panPx[0] + x * scalePx, panPx[1] - y * scalePx];
}

/** Local point at a pixel [m]. */
export function atPixel([x, y]: PointM, { scalePx, panPx }: Surface): PointM {
  return [(x - panPx[0]) / scalePx, (panPx[1] - y) / scalePx];
}

/** Nearer or farther, with what is at that pixel staying there. */
export function zoomed(surface: Surface, factor: number, [x, y]: PointM): Surface {
  const scalePx = held(surface.scalePx * factor);
  const by = scalePx / surface.scalePx;
  return { scalePx, panPx: [x - (x - surface.panPx[0]) * by, y - (y - surface.panPx[1]) * by] };
}

export function panned(surface: Surface, byX: number, byY: number): Surface {
  return { ...surface, panPx: [surface.panPx[0] + byX, surface.panPx[1] + byY] };
}

/** A box of local coordinates in the middle, as large as fits. */
export function fitted({ min, max }: Box, { width, height }: SizePx, marginPx: number): Surface {
  const room = (side: number) => Math.max(1, side - 2 * marginPx);
  const extent = (side: number) => Math.max(side, LEAST_EXTENT_M);
  const scalePx = held(Math.min(room(width) / extent(max[0] - min[0]), room(height) / extent(max[1] - min[1])));
  const middle = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2] as const;
  return { scalePx, panPx: [width / 2 - middle[0] * scalePx, height / 2 + middle[1] * scalePx] };
}

/**
 * The same, where buttons lie over the upper right corner: a box that would come under them is drawn beside them.
 * @param box - local coordinates
 * @param size - of the surface
 * @param marginPx - around it
 * @param corner - of the buttons, with the room to both edges
 */
export function fittedBeside(box: Box, size: SizePx, marginPx: number, corner: SizePx): Surface {
  const plain = fitted(box, size, marginPx);
  const [right, top] = toPixel(box.max, plain);
  if (right <= size.width - corner.width || top >= corner.height) return plain;
  return fitted(box, { width: Math.max(1, size.width - corner.width + marginPx), height: size.height }, marginPx);
}

/** Two fingers that were at `from` are at `to`: what was between them stays between them. */
export function pinched(surface: Surface, from: readonly [PointM, PointM], to: readonly [PointM, PointM]): Surface {
  const lengthOf = ([a, b]: readonly [PointM, PointM]) => Math.hypot(b[0] - a[0], b[1] - a[1]);
  const middleOf = ([a, b]: readonly [PointM, PointM]): PointM => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const [before, after] = [middleOf(from), middleOf(to)];
  const factor = lengthOf(from) > 0 ? lengthOf(to) / lengthOf(from) : 1;
  return panned(zoomed(surface, factor, before), after[0] - before[0], after[1] - before[1]);
}

const ROUND = [1, 2, 5];

/** The least of 1, 2, 5, 10 … (and their tenths) that is not below a value. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const step = ROUND.find((one) => one * power >= least * (1 - 1e-9)) ?? 10;
  return Number((step * power).toPrecision(3));
}

/** Distance between the lines of the grid, so that they stay this far apart [m]. */
export const gridStepM = (surface: Surface, apartPx: number): number => roundStep(apartPx / surface.scalePx);

/**
 * A place caught on an upright or level line, moved along it to the next line of the grid, so that it gets round coordinates.
 * @param at - on the line
 * @param line - two points of it; of an edge its ends, which it does not leave
 * @param stepM - distance between the lines of the grid
 */
export function roundAlong(at: PointM, [from, to]: readonly [PointM, PointM], stepM: number): PointM {
  const next = (value: number, one: number, other: number): number => {
    const round = Number((Math.round(value / stepM) * stepM).toFixed(6));
    return round < Math.min(one, other) || round > Math.max(one, other) ? value : round;
  };
  if (from[0] === to[0]) return [at[0], next(at[1], from[1], to[1])];
  return from[1] === to[1] ? [next(at[0], from[0], to[0]), at[1]] : at;
}
