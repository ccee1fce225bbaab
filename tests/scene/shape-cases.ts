/** Faults of polygons and lines, put into the full scene one at a time. */

import type { SceneCase } from './scene-case.ts';
import { square } from './scenes.ts';

const bow = [
  [0, 0],
  [4, 4],
  [4, 0],
  [0, 4],
];

export const SHAPE_CASES: readonly SceneCase[] = [
  {
    fault: 'two points',
    code: 'POLYGON_TOO_FEW_POINTS',
    path: 'deck.outline',
    says: ['the deck', 'three or more'],
    put: (s) => {
      s.deck.outline = [
        [0, 0],
        [1, 1],
        [0, 0],
        [1, 1],
      ];
    },
  },
  {
    fault: 'no points',
    code: 'POLYGON_TOO_FEW_POINTS',
    path: 'deck.bays[0].outline',
    says: ['0 points', 'bay "A1"'],
    put: (s) => {
      s.deck.bays[0].outline = [];
    },
  },
  {
    fault: 'points on one line',
    code: 'POLYGON_ZERO_AREA',
    path: 'zones[1].outline',
    says: ['zone "Z2"', 'no area'],
    put: (s) => {
      s.zones[1].outline = [
        [1, 1],
        [2, 2],
        [3, 3],
        [1.5, 1.5],
      ];
    },
  },
  {
    fault: 'a hair',
    code: 'POLYGON_ZERO_AREA',
    path: 'zones[1].outline',
    says: ['no area'],
    put: (s) => {
      s.zones[1].outline = [
        [1, 1],
        [2, 1],
        [2, 1 + 1e-7],
      ];
    },
  },
  // The diagonals (0, 0)–(4, 4) and (4, 0)–(0, 4) meet in the middle: (2, 2).
  {
    fault: 'bow tie',
    code: 'POLYGON_CROSSES_ITSELF',
    path: 'zones[0].outline[0]',
    says: ['zone "Z1"', 'near (2.000, 2.000)', 'edges [0]–[1] and [2]–[3]'],
    put: (s) => {
      s.zones[0].outline = bow;
      delete s.zones[0].holes;
    },
  },
  {
    fault: 'bow tie at grid coordinates',
    code: 'POLYGON_CROSSES_ITSELF',
    path: 'zones[0].outline[0]',
    says: ['near (392002.000, 5812002.000)'],
    put: (s) => {
      s.zones[0].outline = bow.map(([x = 0, y = 0]) => [x + 392_000, y + 5_812_000]);
      delete s.zones[0].holes;
    },
  },
  {
    fault: 'crossing block',
    code: 'POLYGON_CROSSES_ITSELF',
    path: 'objects[2].outline[0]',
    says: ['block "P1"'],
    put: (s) => {
      s.objects[2].outline = bow;
    },
  },
  {
    fault: 'crossing stockpile',
    code: 'POLYGON_CROSSES_ITSELF',
    path: 'stages[0].stockpiles[0].outline[0]',
    says: ['stockpile "K1"'],
    put: (s) => {
      s.stages[0].stockpiles[0].outline = bow;
    },
  },
  {
    fault: 'crossing hole',
    code: 'POLYGON_CROSSES_ITSELF',
    path: 'zones[0].holes[0][0]',
    says: ['hole 1 of zone "Z1"'],
    put: (s) => {
      s.zones[0].holes[0] = bow;
    },
  },
  {
    fault: 'corner on another edge',
    code: 'POLYGON_TOUCHES_ITSELF',
    path: 'zones[1].outline[0]',
    says: ['touching itself at (2.000, 0.000)'],
    put: (s) => {
      s.zones[1].outline = [
        [0, 0],
        [4, 0],
        [4, 4],
        [2, 0],
        [0, 4],
      ];
    },
  },
  {
    fault: 'way there and back',
    code: 'POLYGON_TOUCHES_ITSELF',
    path: 'zones[1].outline[1]',
    says: ['running over itself'],
    put: (s) => {
      s.zones[1].outline = [
        [0, 0],
        [4, 0],
        [4, 6],
        [4, 4],
        [0, 4],
      ];
    },
  },
  {
    fault: 'ring traced twice',
    code: 'POLYGON_TOUCHES_ITSELF',
    path: 'zones[1].outline[0]',
    says: ['zone "Z2"'],
    put: (s) => {
      s.zones[1].outline = [...square(0, 0, 4), ...square(0, 0, 4)];
    },
  },
  // The zone's square reaches from 1 to 9; the hole's from 8 to 10.
  {
    fault: 'hole across the outline',
    code: 'HOLE_CROSSES',
    path: 'zones[0].holes[0]',
    says: ['hole 1 crossing the outline of zone "Z1"', '(9.000, 8.000)'],
    put: (s) => {
      s.zones[0].holes = [
        [
          [8, 8],
          [10, 8],
          [10, 8.5],
          [8, 8.5],
        ],
      ];
    },
  },
  {
    fault: 'holes across each other',
    code: 'HOLE_CROSSES',
    path: 'zones[0].holes[0]',
    says: ['hole 2'],
    put: (s) => {
      s.zones[0].holes = [square(3, 3, 2), square(4, 4, 2)];
    },
  },
  // Through the corners of a notch: each end of the hole's long edges lies on the outline or inside it.
  {
    fault: 'hole across the outline through its corners',
    code: 'HOLE_CROSSES',
    path: 'deck.openings[0]',
    says: ['opening 1 crossing the outline of the deck'],
    put: (s) => {
      s.deck.outline = [
        [0, 0],
        [20, 0],
        [20, 10],
        [12, 10],
        [10, 5],
        [8, 10],
        [0, 10],
      ];
      s.deck.openings = [
        [
          [6, 4],
          [14, 4],
          [12, 10],
          [8, 10],
        ],
      ];
    },
  },
  {
    fault: 'hole along the outline',
    code: 'HOLE_SHARES_EDGE',
    path: 'zones[0].holes[0]',
    says: ['running along the outline of zone "Z1"'],
    put: (s) => {
      s.zones[0].holes = [square(1, 3, 2)];
    },
  },
  {
    fault: 'adjoining holes',
    code: 'HOLE_SHARES_EDGE',
    path: 'zones[0].holes[0]',
    says: ['hole 1', 'hole 2', 'draw two adjoining holes as one'],
    put: (s) => {
      s.zones[0].holes = [square(3, 3, 1), square(4, 3, 1)];
    },
  },
  {
    fault: 'opening outside',
    code: 'HOLE_OUTSIDE',
    path: 'deck.openings[0]',
    says: ['opening 1', 'the outline of the deck', '(30.000, 0.000)'],
    put: (s) => {
      s.deck.openings = [square(30, 0, 1)];
    },
  },
  {
    fault: 'opening touching from outside',
    code: 'HOLE_OUTSIDE',
    path: 'deck.openings[0]',
    says: ['opening 1'],
    put: (s) => {
      s.deck.openings = [
        [
          [20, 5],
          [22, 4],
          [22, 6],
        ],
      ];
    },
  },
  {
    fault: 'opening around the deck',
    code: 'HOLE_OUTSIDE',
    path: 'deck.openings[0]',
    says: ['outside'],
    put: (s) => {
      s.deck.openings = [square(-5, -5, 40)];
    },
  },
  {
    fault: 'hole in a hole',
    code: 'HOLE_OVERLAPS',
    path: 'zones[0].holes[1]',
    says: ['hole 2 lying inside hole 1', 'Delete the inner one'],
    put: (s) => {
      s.zones[0].holes = [square(3, 3, 4), square(4, 4, 1)];
    },
  },
  {
    fault: 'route of one point',
    code: 'LINE_TOO_FEW_POINTS',
    path: 'traffic[0].route',
    says: ['traffic "F1"'],
    put: (s) => {
      s.traffic[0].route = [
        [1, 1],
        [1, 1],
      ];
    },
  },
  {
    fault: 'line of no point',
    code: 'LINE_TOO_FEW_POINTS',
    path: 'objects[1].line',
    says: ['0 points', 'line "W1"'],
    put: (s) => {
      s.objects[1].line = [];
    },
  },
  {
    fault: 'edge of one point',
    code: 'LINE_TOO_FEW_POINTS',
    path: 'deck.edges[0].line',
    says: ['1 point,', 'edge "E1"'],
    put: (s) => {
      s.deck.edges[0].line = [[0, 0]];
    },
  },
  {
    fault: 'plant without a way',
    code: 'LINE_TOO_FEW_POINTS',
    path: 'stages[0].plant[0].route',
    says: ['wheel-loader-5t'],
    put: (s) => {
      s.stages[0].plant[0].route = [[0, 0]];
    },
  },
  {
    fault: 'millimetres for metres',
    code: 'DECK_TOO_LARGE',
    path: 'deck.outline',
    says: ['40000.00 × 60000.00 m', 'millimetres'],
    put: (s) => {
      s.deck.outline = [
        [0, 0],
        [40_000, 0],
        [40_000, 60_000],
        [0, 60_000],
      ];
    },
  },
  {
    fault: 'degrees for metres',
    code: 'DECK_TINY',
    path: 'deck.outline',
    level: 'warning',
    says: ['degrees'],
    put: (s) => {
      s.deck.outline = square(13.377, 52.516, 0.002);
      s.deck.openings = [];
    },
  },
];
