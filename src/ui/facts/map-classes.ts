/** Classes of a map per cell: fixed ones for utilisation, seven flat steps for quantities. */

import { CELL_EDGE, CELL_NO_DATA, CELL_ON_DECK, CELL_SHORT, CELL_UNCONFIRMED, type CellMap } from '../../model/maps.ts';
import { classColours, classOf, isLevel } from '../../model/ramp.ts';
import { isHatchedClass } from './utilisation.ts';

export interface MapClass {
  /** Lower and upper end; null where the class is open. */
  readonly from: number | null;
  readonly to: number | null;
  readonly colour: string;
  readonly hatched: boolean;
}

/** A class that has a name instead of limits. */
export interface NamedClass {
  readonly id: string;
  readonly index: number;
  readonly areaM2: number;
}

/** Classes of a map of named classes that occur, in their order; empty for other maps. */
export function namedClasses({ names, classM2 }: Pick<CellMap, 'names' | 'classM2'>): NamedClass[] {
  return (names ?? []).flatMap((id, index) => {
    const areaM2 = classM2?.[index] ?? 0;
    return areaM2 > 0 ? [{ id, index, areaM2 }] : [];
  });
}

/** Whether the map marks a band along open edges. */
export function hasEdgeBand({ flags }: Pick<CellMap, 'flags'>): boolean {
  return flags.some((of) => (of & CELL_EDGE) !== 0);
}

/** All classes of a map from the lowest to the highest; empty where no cell has a value. */
export function mapClasses(map: CellMap): MapClass[] {
  const colours = classColours(map);
  const limits = map.classLimits;
  if (limits !== null) {
    return colours.map((colour, i) => ({
      from: i === 0 ? 0 : (limits[i - 1] ?? null),
      to: limits[i] ?? null,
      colour,
      hatched: isHatchedClass(i),
    }));
  }
  if (map.dataCells === 0) return [];
  if (isLevel(map)) return [{ from: map.min, to: map.max, colour: colours[classOf(map.min, 0, map)] ?? '', hatched: false }];
  const width = (map.max - map.min) / colours.length;
  return colours.map((colour, step) => ({ from: map.min + step * width, to: map.min + (step + 1) * width, colour, hatched: false }));
}

/** Unit for `valueText` and `cellText`: maps with fixed limits hold ratios, which are told in percent. */
export function unitOf(map: CellMap): string {
  return map.classLimits === null ? map.unit : '-';
}

/** How many cells lie below what is required there. */
export function shortCells({ flags }: Pick<CellMap, 'flags'>): number {
  return flags.reduce((count, of) => count + (of & CELL_SHORT ? 1 : 0), 0);
}

export type CellClass = number | 'unconfirmed' | 'no data' | null;

/** Class of one cell; null off the deck. */
export function classOfCell(map: CellMap, cell: number): CellClass {
  const flags = map.flags[cell] ?? 0;
  if ((flags & CELL_ON_DECK) === 0) return null;
  const value = map.values[cell] ?? Number.NaN;
  if (map.names !== null) return Number.isNaN(value) ? 'no data' : value;
  if ((flags & CELL_UNCONFIRMED) !== 0 && map.classLimits !== null) return 'unconfirmed';
  if ((flags & CELL_NO_DATA) !== 0 || Number.isNaN(value)) return 'no data';
  return classOf(value, flags, map);
}

/** Colour and hatch of a cell's class; of quantities and utilisations. */
export function classStyle(map: CellMap, of: number): { readonly colour: string; readonly hatched: boolean } {
  return { colour: classColours(map)[of] ?? '', hatched: map.classLimits !== null && isHatchedClass(of) };
}
