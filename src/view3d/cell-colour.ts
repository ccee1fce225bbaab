/** What a map cell looks like: its flat colour and its pattern, as bytes for the texture that the shader reads. */

import { type ClassHatch, namedStyles } from '../model/class-style.ts';
import { CELL_EDGE, CELL_NO_DATA, CELL_ON_DECK, CELL_OVER, CELL_SHORT, CELL_UNCONFIRMED, type CellMap } from '../model/maps.ts';
import { PAPER } from '../model/palette.ts';
import { classColours, classOf } from '../model/ramp.ts';

export type Rgb = readonly [number, number, number];

/** How the shader marks a cell besides its colour; the numbers go into the texture. */
export const CELL_PATTERN = { none: 0, over: 1, farOver: 2, unconfirmed: 3, noData: 4, rising: 5, falling: 6, crossed: 7 } as const;
export type CellPattern = (typeof CELL_PATTERN)[keyof typeof CELL_PATTERN];

/** Added to the pattern of a cell in the band along open edges, which is marked besides. */
export const EDGE_BAND = 16;

const OF_HATCH: Readonly<Record<ClassHatch, CellPattern>> = {
  none: CELL_PATTERN.none,
  rising: CELL_PATTERN.rising,
  falling: CELL_PATTERN.falling,
  crossed: CELL_PATTERN.crossed,
};

/** Alpha byte of a cell outside the deck, where no map is drawn. */
export const OFF_DECK = 255;

/** Red, green and blue of `#RRGGBB`, 0 … 255. */
export function rgbOf(hex: string): Rgb {
  const bits = Number.parseInt(hex.slice(1), 16);
  return [bits >> 16, (bits >> 8) & 255, bits & 255];
}

/** Pattern of a cell; a bay that nobody confirmed only matters where a map compares with its limit. */
export function cellPattern(value: number, flags: number, map: CellMap): CellPattern {
  if (map.classLimits !== null && flags & CELL_UNCONFIRMED) return CELL_PATTERN.unconfirmed;
  if (flags & CELL_NO_DATA || Number.isNaN(value)) return CELL_PATTERN.noData;
  if (flags & CELL_SHORT) return CELL_PATTERN.crossed;
  if (map.classLimits === null || !(flags & CELL_OVER)) return CELL_PATTERN.none;
  return classOf(value, flags, map) === map.classLimits.length ? CELL_PATTERN.farOver : CELL_PATTERN.over;
}

/** Flat colour of a cell, sRGB 0 … 255. */
export function cellColour(value: number, flags: number, map: CellMap): Rgb {
  if (map.names !== null && !(flags & CELL_NO_DATA)) return rgbOf(namedStyles(map)[value].fill);
  const pattern = cellPattern(value, flags, map);
  if (pattern === CELL_PATTERN.unconfirmed || pattern === CELL_PATTERN.noData) return rgbOf(PAPER);
  return rgbOf(classColours(map)[classOf(value, flags, map)]);
}

/** One texel per cell: colour, and the pattern in alpha. */
export function cellPixels(map: CellMap): Uint8Array {
  if (map.names !== null) return namedPixels(map);
  const pixels = new Uint8Array(map.values.length * 4);
  for (let cell = 0; cell < map.values.length; cell++) {
    const value = map.values[cell];
    const flags = map.flags[cell];
    if (!(flags & CELL_ON_DECK)) {
      pixels[cell * 4 + 3] = OFF_DECK;
      continue;
    }
    pixels.set(cellColour(value, flags, map), cell * 4);
    pixels[cell * 4 + 3] = cellPattern(value, flags, map);
  }
  return pixels;
}

function namedPixels(map: CellMap): Uint8Array {
  const styles = namedStyles(map);
  const texels = styles.map(({ fill, hatch }) => [...rgbOf(fill), OF_HATCH[hatch]]);
  const none = [...rgbOf(PAPER), CELL_PATTERN.noData];
  const pixels = new Uint8Array(map.values.length * 4);
  for (let cell = 0; cell < map.values.length; cell++) {
    const flags = map.flags[cell];
    if (!(flags & CELL_ON_DECK)) {
      pixels[cell * 4 + 3] = OFF_DECK;
      continue;
    }
    pixels.set(flags & CELL_NO_DATA ? none : texels[map.values[cell]], cell * 4);
    if (flags & CELL_EDGE) pixels[cell * 4 + 3] += EDGE_BAND;
  }
  return pixels;
}
