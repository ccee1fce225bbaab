/** Names of layers as offices write them, in English and German; a name alone is not enough. */

import { describe, expect, it } from 'vitest';
import { guessRoles } from '../../src/import/guess-roles.ts';
import { previewOf } from '../../src/import/preview.ts';
import { circle, dxf, inMetres, line, type Pair, point, rectangle, text } from './dxf-builder.ts';
import { readText } from './reading.ts';

const guessed = (...entities: (readonly Pair[])[]) => Object.fromEntries(guessRoles(readText(dxf({ header: inMetres, entities }))));

describe('roles by name', () => {
  it.each([
    ['A-DECK-OUTLINE', 'outline'],
    ['Umriss Decke', 'outline'],
    ['Deckenöffnungen', 'openings'],
    ['S-COLUMNS', 'columns'],
    ['Stützen UG', 'columns'],
    ['Abläufe', 'outlets'],
    ['Felder', 'bays'],
    ['PLANTING zones', 'zones'],
    ['Bäume', 'trees'],
  ])('%s: %s', (name, role) => {
    expect(guessed(rectangle(name, 40, 30), rectangle('Umriss', 50, 50))[name]).toBe(role);
  });

  it('lines are edges and axes, points with levels are levels, whatever the layer is called', () => {
    const roles = guessed(
      rectangle('Deck', 40, 30),
      line('Attika', [0, 0, 40, 0]),
      line('Achsen', [0, 0, 0, 30]),
      point('P17', 1, 1, 35.2),
      point('P17', 5, 1, 35.3),
    );
    expect(roles).toEqual({ Deck: 'outline', Attika: 'edges', Achsen: 'axes', P17: 'levels' });
  });

  it('a name without a fitting shape is no role, and notes are none', () => {
    expect(guessed(rectangle('Deck', 40, 30), text('Columns', 1, 1, 'C1'), line('Bays', [0, 0, 1, 1]))).toEqual({ Deck: 'outline' });
  });

  it('the only area left over is the outline; of two, neither', () => {
    expect(guessed(rectangle('0', 40, 30))).toEqual({ 0: 'outline' });
    expect(guessed(rectangle('A', 40, 30), rectangle('B', 4, 3))).toEqual({});
  });

  it('a list of points is levels, kind by kind', () => {
    const result = readText('Nr;x;y;z;Code\n1;0;0;1.2;edge\n2;40;0;1.3;edge\n3;40;30;1.25;gully\n');
    expect(Object.fromEntries(guessRoles(result))).toEqual({ edge: 'levels', gully: 'outlets' });
  });
});

describe('the preview', () => {
  it('keeps a small drawing to the point, from its lower left corner', () => {
    const { layers, box } = readText(
      dxf({ header: inMetres, entities: [rectangle('Deck', 40, 30, [392_000, 5_812_000]), point('P', 392_010, 5_812_005, 1)] }),
    );
    const preview = previewOf(layers, box);
    expect([preview.at, preview.left]).toEqual([[392_000, 5_812_000], 0]);
    expect([...preview.layers[0]!.points]).toEqual([0, 0, 40, 0, 40, 30, 0, 30, 0, 0]);
    expect([[...preview.layers[1]!.points], [...preview.layers[1]!.starts]]).toEqual([[10, 5], [0]]);
  });

  it('of far too many lines the largest are drawn, and the rest is counted', () => {
    const entities = [
      rectangle('Deck', 400, 300),
      ...Array.from({ length: 20_100 }, (_, i) => circle('Dots', i % 400, Math.floor(i / 400), 0.2)),
    ];
    const { layers, box } = readText(dxf({ header: inMetres, entities }));
    const preview = previewOf(layers, box);
    const drawn = preview.layers.reduce((sum, { starts }) => sum + starts.length, 0);
    expect(drawn + preview.left).toBe(20_101);
    expect(preview.layers.reduce((sum, { points }) => sum + points.length / 2, 0)).toBeLessThanOrEqual(40_000);
    expect(preview.layers.find(({ name }) => name === 'Deck')?.starts).toHaveLength(1);
  });
});
