/** Faults of levels, put into the full scene one at a time. */

import type { SceneCase } from './scene-case.ts';

export const LEVEL_CASES: readonly SceneCase[] = [
  {
    fault: 'no levels',
    code: 'LEVELS_EMPTY',
    path: 'deck.levels',
    says: ['lies at 0.000'],
    put: (s) => {
      s.deck.levels = { spots: [] };
    },
  },
  {
    fault: 'finish without levels',
    code: 'LEVELS_EMPTY',
    path: 'zones[3].finish',
    says: ['another kind of finish'],
    put: (s) => {
      s.zones[3].finish = { kind: 'spots', spots: [] };
    },
  },
  {
    fault: 'levels on one line',
    code: 'LEVELS_NO_NET',
    path: 'deck.levels',
    level: 'warning',
    says: ['on one line', 'nearest level'],
    put: (s) => {
      s.deck.levels = {
        spots: [
          [0, 0, 0],
          [1, 1, 0],
          [3, 3, 0.2],
        ],
      };
    },
  },
  {
    fault: 'one level',
    code: 'LEVELS_NO_NET',
    path: 'deck.levels',
    level: 'warning',
    says: ['1 level'],
    put: (s) => {
      s.deck.levels = { spots: [[0, 0, 0]] };
    },
  },
  {
    fault: 'two levels at one place',
    code: 'LEVELS_CONFLICT',
    path: 'deck.levels.spots[0]',
    says: ['0.000 here and 0.040'],
    put: (s) => {
      s.deck.levels.spots.push([0.0005, 0, 0.04]);
    },
  },
  // The breakline lies at 0.100 all along, x = 10.
  {
    fault: 'spot off a breakline',
    code: 'LEVELS_CONFLICT',
    path: 'deck.levels.spots[4]',
    says: ['at (10.000, 5.000)', '0.200 here and 0.100'],
    put: (s) => {
      s.deck.levels.spots.push([10, 5, 0.2]);
    },
  },
  {
    fault: 'spot off a breakline’s end',
    code: 'LEVELS_CONFLICT',
    path: 'deck.levels.spots[4]',
    says: ['(10.000, 0.000)'],
    put: (s) => {
      s.deck.levels.spots.push([10, 0, 0.15]);
    },
  },
  // From 0 to 0.3 over 20 m: 0.15 at x = 10, where the other breakline has 0.10.
  {
    fault: 'breaklines at two levels',
    code: 'BREAKLINES_CROSS',
    path: 'deck.levels.breaklines[1][0]',
    says: ['at (10.000, 5.000)', '0.150', '0.100'],
    put: (s) => {
      s.deck.levels.breaklines.push([
        [0, 5, 0],
        [20, 5, 0.3],
      ]);
    },
  },
  {
    fault: 'breakline of one place',
    code: 'LINE_TOO_FEW_POINTS',
    path: 'deck.levels.breaklines[0]',
    says: ['breakline', 'different places'],
    put: (s) => {
      s.deck.levels.breaklines[0] = [
        [10, 0, 0.1],
        [10, 0, 0.1],
      ];
    },
  },
  {
    fault: 'long list of levels',
    code: 'TOO_MANY_POINTS',
    path: 'deck.levels',
    says: ['20,001 points', 'Thin them out'],
    put: (s) => {
      s.deck.levels = { spots: Array.from({ length: 20_001 }, (_, i) => [i % 100, i / 100, 0]) };
    },
  },
];
