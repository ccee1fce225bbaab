/** Maps of named classes: looks that differ by more than colour, pixels, areas, table. */

import { describe, expect, it } from 'vitest';
import { namedStyles } from '../../src/model/class-style.ts';
import { CELL_EDGE, CELL_NO_DATA, CELL_ON_DECK, type CellMap, REACH_CLASSES } from '../../src/model/maps.ts';
import { listCells } from '../../src/ui/facts/cell-list.ts';
import { classOfCell, namedClasses } from '../../src/ui/facts/map-classes.ts';
import { CELL_PATTERN, cellPixels, EDGE_BAND, OFF_DECK, rgbOf } from '../../src/view3d/cell-colour.ts';

function map(kind: CellMap['kind'], names: readonly string[], values: readonly number[], flags: readonly number[]): CellMap {
  return {
    kind,
    stage: 0,
    values: Float32Array.from(values),
    flags: Uint8Array.from(flags),
    directionDeg: null,
    unit: '',
    classLimits: null,
    names,
    classM2: names.map((_, i) => values.filter((value) => value === i).length),
    min: Number.NaN,
    mean: Number.NaN,
    max: Number.NaN,
    noDataM2: 0,
    noDataCells: 0,
    dataCells: values.length,
  };
}

describe('looks', () => {
  const names = Array.from({ length: 16 }, (_, i) => `O${i + 1}`);

  it('of sixteen classes no two are alike, and of those that follow each other no two have one colour', () => {
    const styles = namedStyles({ kind: 'load', names });
    expect(new Set(styles.map(({ fill, hatch }) => `${fill} ${hatch}`)).size).toBe(16);
    styles.slice(1).forEach(({ fill }, i) => {
      expect(fill).not.toBe(styles[i]?.fill);
    });
  });

  it('of reach what is not reached and what is lifted are hatched', () => {
    const [driven, lifted, unreached, idle] = namedStyles({ kind: 'reach', names: REACH_CLASSES }).map(({ hatch }) => hatch);
    expect([driven, idle]).toEqual(['none', 'none']);
    expect(new Set([driven, lifted, unreached]).size).toBe(3);
  });
});

describe('a map of reach', () => {
  const reach = map(
    'reach',
    REACH_CLASSES,
    [0, 1, 2, 3, Number.NaN, 3],
    [CELL_ON_DECK, CELL_ON_DECK, CELL_ON_DECK | CELL_EDGE, CELL_ON_DECK, CELL_ON_DECK | CELL_NO_DATA, 0],
  );

  it('writes colour and hatch of the class, the band besides', () => {
    const pixels = cellPixels(reach);
    const styles = namedStyles(reach);
    const alpha = [0, 1, 2, 3, 4, 5].map((cell) => pixels[4 * cell + 3]);
    expect(alpha).toEqual([
      CELL_PATTERN.none,
      CELL_PATTERN.falling,
      CELL_PATTERN.crossed + EDGE_BAND,
      CELL_PATTERN.none,
      CELL_PATTERN.noData,
      OFF_DECK,
    ]);
    expect([...pixels.slice(4, 7)]).toEqual(rgbOf(styles[1]?.fill ?? ''));
  });

  it('lists what is not reached first and what nothing is brought to last', () => {
    const { cells } = listCells(reach, new Int16Array(6), null, 10);
    expect(cells.map(({ cell }) => cell)).toEqual([2, 1, 0, 3]);
    expect(cells.map(({ atEdge }) => atEdge)).toEqual([true, false, false, false]);
  });

  it('tells class and area of each', () => {
    expect([0, 2, 4, 5].map((cell) => classOfCell(reach, cell))).toEqual([0, 2, 'no data', null]);
    // Cell 5 is no deck, but this map's areas are given, not counted from its cells.
    expect(namedClasses(reach).map(({ id }) => id)).toEqual(['driven', 'lifted', 'unreached', 'idle']);
    expect(namedClasses({ names: ['a', 'b'], classM2: [0, 2] })).toEqual([{ id: 'b', index: 1, areaM2: 2 }]);
  });
});
