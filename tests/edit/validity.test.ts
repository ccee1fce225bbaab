/** What would be refused of a drawn shape: the same code and words as for a file with it, in both languages; while drawing, only what is drawn. */

import { describe, expect, it } from 'vitest';
import { shapeFaults } from '../../src/edit/validity.ts';
import type { PointM } from '../../src/model/scene-file.ts';
import { KNOWN_IDS } from '../../src/project/materials.ts';
import { parseScene } from '../../src/scene/parse-scene.ts';
import { rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const SQUARE = rect(0, 0, 8, 8);
const BOW: PointM[] = [
  [0, 0],
  [4, 4],
  [4, 0],
  [0, 4],
];
const SHAPES: readonly (readonly [string, readonly PointM[], readonly PointM[][]])[] = [
  ['crossing itself', BOW, []],
  [
    'touching itself',
    [
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 0],
      [0, 4],
    ],
    [],
  ],
  [
    'two points',
    [
      [0, 0],
      [4, 0],
    ],
    [],
  ],
  [
    'no area',
    [
      [0, 0],
      [4, 0],
      [2, 0],
    ],
    [],
  ],
  ['a hole outside', SQUARE, [rect(9, 9, 10, 10)]],
  ['a hole across the outline', SQUARE, [rect(7, 7, 10, 10)]],
  ['a hole along the outline', SQUARE, [rect(0, 1, 1, 2)]],
  ['a hole in a hole', SQUARE, [rect(1, 1, 4, 4), rect(2, 2, 3, 3)]],
  ['a hole that crosses itself', SQUARE, [BOW.map(([x, y]): PointM => [x + 1, y + 1])]],
];

describe('a finished shape', () => {
  it.each(SHAPES)('%s: as the file with it would be refused', (_, outline, holes) => {
    const scene = sceneOf({
      deck: { outline: rect(0, 0, 20, 20) },
      zones: [zone('Z1', outline, 'soil-100', holes.length === 0 ? {} : { holes })],
    });
    for (const language of ['en', 'de'] as const) {
      const told = parseScene(JSON.stringify(scene), KNOWN_IDS, language).issues.filter(({ level }) => level === 'error');
      const faults = shapeFaults({ form: 'area', points: outline, holes }, language);
      expect(faults.length).toBeGreaterThan(0);
      const name = { en: 'this shape', de: 'diese Form' }[language];
      expect(faults.map(({ issue }) => [issue.code, issue.expected, issue.mend, issue.got])).toEqual(
        told.map(({ code, expected, mend, got }) => [code, expected, mend, got.replace(/[Zz]one "Z1"/, name)]),
      );
    }
  });

  it('where and which edges: the bow crosses at (2, 2) with its first and third edge', () => {
    const [fault] = shapeFaults({ form: 'area', points: BOW }, 'en');
    expect(fault).toMatchObject({ at: [2, 2], edges: [0, 2], issue: { code: 'POLYGON_CROSSES_ITSELF', path: 'outline[0]' } });
    const [inHole] = shapeFaults({ form: 'area', points: SQUARE, holes: [BOW.map(([x, y]): PointM => [x + 1, y + 1])] }, 'en');
    expect(inHole).toMatchObject({ at: [3, 3], hole: 0, issue: { path: 'holes[0][0]' } });
  });

  it('a sound area, a line, a place have none; a line of one place has', () => {
    expect(shapeFaults({ form: 'area', points: SQUARE, holes: [rect(1, 1, 2, 2)] }, 'en')).toEqual([]);
    expect(
      shapeFaults(
        {
          form: 'line',
          points: [
            [0, 0],
            [1, 0],
          ],
        },
        'en',
      ),
    ).toEqual([]);
    expect(shapeFaults({ form: 'point', points: [[0, 0]] }, 'en')).toEqual([]);
    expect(
      shapeFaults(
        {
          form: 'line',
          points: [
            [1, 1],
            [1, 1],
          ],
        },
        'de',
      )[0]?.issue.code,
    ).toBe('LINE_TOO_FEW_POINTS');
  });
});

describe('while drawing', () => {
  it('neither two points nor what only the way back would cross is a fault yet', () => {
    for (const points of [
      SQUARE.slice(0, 1),
      SQUARE.slice(0, 2),
      [
        [0, 0],
        [4, 0],
        [2, 0],
      ] as PointM[],
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [6, 2],
        [6, -2],
        [2, -2],
      ] as PointM[],
    ])
      expect(shapeFaults({ form: 'area', points, open: true }, 'en')).toEqual([]);
    const back: PointM[] = [
      [0, 0],
      [4, 0],
      [4, 3],
      [2, -1],
    ];
    expect(shapeFaults({ form: 'area', points: back, open: true }, 'en').map(({ edges }) => edges)).toEqual([[0, 2]]);
    const onlyBack: PointM[] = [
      [0, 0],
      [4, 0],
      [4, 4],
      [6, 4],
      [6, -2],
      [2, -2],
      [2, -1],
    ];
    expect(shapeFaults({ form: 'area', points: onlyBack, open: true }, 'en')).toEqual([]);
  });
});
