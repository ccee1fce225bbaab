/** Classes of a map per cell: fixed ones for utilisation, seven flat steps for quantities. */

import { interpolateCividis } from 'd3-scale-chromatic';
import { CELL_NO_DATA, CELL_ON_DECK, CELL_UNCONFIRMED, type CellMap } from '../../model/maps.ts';
import { UTILISATION_COLOURS } from '../../model/palette.ts';
import { isHatchedClass, utilisationClass } from './utilisation.ts';

/** A reader places a value in one of seven steps more surely than on a smooth ramp. */
export const QUANTITY_STEPS = 7;

export interface MapClass {
  /** Lower and upper end; null where the class is open. */
  readonly from: number | null;
  readonly to: number | null;
  readonly colour: string;
  readonly hatched: boolean;
}

/** Colour of step 0 (least, light) … 6 (most, dark). */
export function quantityColour(step: number): string {
  return interpolateCividis(1 - step / (QUANTITY_STEPS - 1));
}

/** All classes of a map from the lowest to the highest; empty where no cell has a value. */
export function mapClasses(map: CellMap): MapClass[] {
  const limits = map.classLimits;
  if (limits !== null) {
    return UTILISATION_COLOURS.map((colour, i) => ({
      from: limits[i - 1] ?? (i === 0 ? 0 : null),
      to: limits[i] ?? null,
      colour,
      hatched: isHatchedClass(i),
    }));
  }
  if (map.dataCells === 0) return [];
  const steps = map.max > map.min ? QUANTITY_STEPS : 1;
  const width = (map.max - map.min) / steps;
  return Array.from({ length: steps }, (_, step) => ({
    from: map.min + step * width,
    to: step === steps - 1 ? map.max : map.min + (step + 1) * width,
    colour: quantityColour(steps === 1 ? QUANTITY_STEPS - 1 : step),
    hatched: false,
  }));
}

export type CellClass = number | 'unconfirmed' | 'no data' | null;

/** Class of one cell; null off the deck. */
export function classOfCell(map: CellMap, cell: number): CellClass {
  const flags = map.flags[cell] ?? 0;
  if ((flags & CELL_ON_DECK) === 0) return null;
  const value = map.values[cell] ?? Number.NaN;
  if ((flags & CELL_UNCONFIRMED) !== 0 && map.classLimits !== null) return 'unconfirmed';
  if ((flags & CELL_NO_DATA) !== 0 || Number.isNaN(value)) return 'no data';
  if (map.classLimits !== null) return utilisationClass(value);
  if (map.max <= map.min) return 0;
  return Math.min(QUANTITY_STEPS - 1, Math.max(0, Math.floor(((value - map.min) / (map.max - map.min)) * QUANTITY_STEPS)));
}
