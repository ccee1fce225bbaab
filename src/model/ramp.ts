/** Which class of a map a value falls in, and the colours of quantities: the same for the model, the legend and the table. */

import type { CellMap } from './maps.ts';
import { CELL_OVER } from './maps.ts';
import { UTILISATION_COLOURS } from './palette.ts';

/**
 * Seven flat steps for quantities, light = little, dark = much: interpolateCividis of d3-scale-chromatic 3.1.1 at
 * t = 1, 0.8, 0.64, 0.49, 0.35, 0.19, 0: so placed that neighbours stay apart to every eye, and in grey.
 * Written out because this folder imports no package; a test compares them with the package.
 */
export const QUANTITY_COLOURS = ['#FDEA45', '#CABA6A', '#9D9778', '#7D7A74', '#5C5F6E', '#27426E', '#002051'] as const;

type Scale = Pick<CellMap, 'classLimits' | 'min' | 'max'>;

/**
 * Class of a value, counted from 0. Limits are inclusive: at exactly 100 % a bay is at its limit, not over it.
 * @param value - value of a cell, as stored in 32 bits
 * @param flags - flags of the cell; over the limit is what the check says, not what rounding makes of it
 * @param map - limits or range of the map
 * @returns index into the colours of the map
 */
export function classOf(value: number, flags: number, map: Scale): number {
  if (map.classLimits === null) return stepOf(value, map.min, map.max);
  const limits = map.classLimits;
  const found = limits.findIndex((limit) => value <= Math.fround(limit));
  const byValue = found < 0 ? limits.length : found;
  const atLimit = limits.indexOf(1);
  if (atLimit < 0) return byValue;
  return flags & CELL_OVER ? Math.max(byValue, atLimit + 1) : Math.min(byValue, atLimit);
}

/**
 * Whether all values of a map are one but for rounding, which is no difference to colour.
 * @param map - range of the map
 * @returns true where it has no steps
 */
export function isLevel({ min, max }: Pick<CellMap, 'min' | 'max'>): boolean {
  return !(max - min > 1e-6 * Math.max(Math.abs(min), Math.abs(max)));
}

/** Equal steps between least and greatest value; where all values are one, the middle step. */
function stepOf(value: number, min: number, max: number): number {
  const steps = QUANTITY_COLOURS.length;
  if (isLevel({ min, max })) return Math.floor(steps / 2);
  const step = Math.floor(((value - min) / (max - min)) * steps);
  return Math.min(steps - 1, Math.max(0, step));
}

/** Colours of a map's classes, lowest first. */
export function classColours(map: Scale): readonly string[] {
  return map.classLimits === null ? QUANTITY_COLOURS : UTILISATION_COLOURS;
}
