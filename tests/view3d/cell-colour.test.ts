/** Colours of cells: classes with inclusive limits, patterns, and the cividis steps against the package they come from. */

import { interpolateCividis, interpolateRdBu } from 'd3-scale-chromatic';
import { describe, expect, it } from 'vitest';
import { DIFFERENCE_STYLES } from '../../src/model/class-style.ts';
import { CELL_NO_DATA, CELL_ON_DECK, CELL_OVER, CELL_SHORT, CELL_UNCONFIRMED, type CellMap } from '../../src/model/maps.ts';
import { UTILISATION_LIMITS } from '../../src/model/palette.ts';
import { classOf, QUANTITY_COLOURS } from '../../src/model/ramp.ts';
import { CELL_PATTERN, cellColour, cellPattern, cellPixels, OFF_DECK, rgbOf } from '../../src/view3d/cell-colour.ts';

const base = {
  stage: null,
  names: null,
  classM2: null,
  directionDeg: null,
  unit: '',
  min: 0,
  mean: 0,
  max: 7,
  noDataM2: 0,
  noDataCells: 0,
  dataCells: 0,
} as const;
const utilisation: CellMap = {
  ...base,
  kind: 'utilisation',
  classLimits: UTILISATION_LIMITS,
  values: new Float32Array(0),
  flags: new Uint8Array(0),
};
const load: CellMap = { ...utilisation, kind: 'load', classLimits: null };

/** Relative luminance as WCAG 2.2 defines it, "relative luminance": 0.2126 R + 0.7152 G + 0.0722 B of linear values. */
function luminance([r, g, b]: readonly number[]): number {
  const [lr, lg, lb] = [r, g, b].map((byte) => {
    const c = byte / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * lr + 0.7152 * lg + 0.0722 * lb;
}

describe('steps of quantities', () => {
  it('are cividis of d3-scale-chromatic, reversed, from end to end', () => {
    const steps = [1, 0.8, 0.64, 0.49, 0.35, 0.19, 0].map((t) => interpolateCividis(t));
    const fromPackage = steps.map((text) => (text.match(/\d+/g) ?? []).map(Number));
    expect(QUANTITY_COLOURS.map((hex) => [...rgbOf(hex)])).toEqual(fromPackage);
  });

  it('grow darker with more', () => {
    const light = QUANTITY_COLOURS.map((hex) => luminance(rgbOf(hex)));
    for (let k = 1; k < light.length; k++) expect(light[k]).toBeLessThan(light[k - 1]);
  });

  it('divide the range evenly', () => {
    // 0 … 7 in seven steps: each step is one wide.
    expect([0, 0.99, 1, 3.5, 6.99, 7].map((value) => classOf(value, CELL_ON_DECK, load))).toEqual([0, 0, 1, 3, 6, 6]);
  });

  it('take the middle where all values are one', () => {
    expect(classOf(5, CELL_ON_DECK, { classLimits: null, min: 5, max: 5 })).toBe(3);
  });
});

describe('classes of utilisation', () => {
  it.each([
    [0.5, 0, 0],
    [0.51, 0, 1],
    [0.8, 0, 1],
    [0.81, 0, 2],
    [1, 0, 2],
    [1.01, CELL_OVER, 3],
    [1.2, CELL_OVER, 3],
    [1.21, CELL_OVER, 4],
  ])('%f belongs to class %i', (value, over, expected) => {
    // As in a map: 0.8 and 1.2 have no exact form in 32 bits and must not slip into the class above.
    expect(classOf(Math.fround(value), CELL_ON_DECK | over, utilisation)).toBe(expected);
  });

  it('follow the check, not rounding, at the limit', () => {
    expect(classOf(Math.fround(1.0000001), CELL_ON_DECK, utilisation)).toBe(2);
    expect(classOf(1, CELL_ON_DECK | CELL_OVER, utilisation)).toBe(3);
  });
});

describe('cells', () => {
  it('have the colours of the design', () => {
    // From the table of the design: up to 50 %, and above 120 %.
    expect(cellColour(0.3, CELL_ON_DECK, utilisation)).toEqual([0xee, 0xf3, 0xf4]);
    expect(cellColour(1.5, CELL_ON_DECK | CELL_OVER, utilisation)).toEqual([0x74, 0x10, 0x2f]);
  });

  it('are hatched over the limit, densely far over', () => {
    expect(cellPattern(0.9, CELL_ON_DECK, utilisation)).toBe(CELL_PATTERN.none);
    expect(cellPattern(1.1, CELL_ON_DECK | CELL_OVER, utilisation)).toBe(CELL_PATTERN.over);
    expect(cellPattern(1.3, CELL_ON_DECK | CELL_OVER, utilisation)).toBe(CELL_PATTERN.farOver);
  });

  it('of unconfirmed bays are hatched paper whatever the value, but only where a limit counts', () => {
    const flags = CELL_ON_DECK | CELL_UNCONFIRMED;
    expect(cellPattern(2, flags, utilisation)).toBe(CELL_PATTERN.unconfirmed);
    expect(cellColour(2, flags, utilisation)).toEqual([0xf5, 0xf1, 0xe8]);
    expect(cellPattern(2, flags, load)).toBe(CELL_PATTERN.none);
  });

  it('marks what is lower than required, on maps of quantities too', () => {
    const heights = { ...utilisation, kind: 'upstand', classLimits: null } as const;
    expect(cellPattern(120, CELL_ON_DECK, heights)).toBe(CELL_PATTERN.none);
    expect(cellPattern(120, CELL_ON_DECK | CELL_SHORT, heights)).toBe(CELL_PATTERN.crossed);
  });

  it('without data are dotted paper', () => {
    expect(cellPattern(Number.NaN, CELL_ON_DECK | CELL_NO_DATA, load)).toBe(CELL_PATTERN.noData);
    expect(cellColour(Number.NaN, CELL_ON_DECK | CELL_NO_DATA, load)).toEqual([0xf5, 0xf1, 0xe8]);
  });

  it('become one texel each, and none outside the deck', () => {
    const map = { ...load, values: Float32Array.from([0, 6.5, 3]), flags: Uint8Array.from([CELL_ON_DECK, CELL_ON_DECK, 0]) };
    const pixels = cellPixels(map);
    expect([...pixels.subarray(0, 4)]).toEqual([...rgbOf(QUANTITY_COLOURS[0]), CELL_PATTERN.none]);
    expect([...pixels.subarray(4, 8)]).toEqual([...rgbOf(QUANTITY_COLOURS[6]), CELL_PATTERN.none]);
    expect(pixels[11]).toBe(OFF_DECK);
  });
});

describe('steps of differences', () => {
  it('are RdBu of d3-scale-chromatic on both sides of paper, the ways told apart by the hatch', () => {
    const steps = [0.95, 0.85, 0.75, 0.62, 0.38, 0.25, 0.15, 0.05].map((t) => (interpolateRdBu(t).match(/\d+/g) ?? []).map(Number));
    const styles = DIFFERENCE_STYLES.filter((_, i) => i !== 4);
    expect(styles.map(({ fill }) => [...rgbOf(fill)])).toEqual(steps);
    expect(DIFFERENCE_STYLES.map(({ hatch }) => hatch)).toEqual([...Array(4).fill('falling'), 'none', ...Array(4).fill('rising')]);
  });
});
