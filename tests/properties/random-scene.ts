/** Scenes that differ with their seed: wiggly zones over four bays, an opening, falls, objects and stages. Invented. */

import type { Point3M, PointM, SceneFile, SceneStage, SceneZone } from '../../src/model/scene-file.ts';
import { bay, buildUp, MAKE_UP, randomFrom, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

/** Deck of every random scene [m]. */
export const WIDTH_M = 12;
export const HEIGHT_M = 9;
export const AREA_M2 = 12 * 9 - 3; // deck less the opening of 1.5 m × 2 m

const OPENING = rect(5.3, 3.1, 6.8, 5.1);
const millimetres = (value: number) => Math.round(1000 * value) / 1000;

/** Line from the lower to the upper edge of the deck around an x, corners in whole millimetres. */
function wiggle(random: () => number, x: number): PointM[] {
  const corners = 3 + Math.floor(random() * 8);
  return Array.from({ length: corners + 1 }, (_, i) => {
    const y = i === 0 || i === corners ? (i / corners) * HEIGHT_M : ((i + 0.6 * (random() - 0.5)) / corners) * HEIGHT_M;
    return [millimetres(x + 0.8 * (random() - 0.5)), millimetres(y)];
  });
}

/** Three bands side by side that tile the deck; neighbours share every corner of their common line. */
function bands(random: () => number): SceneZone[] {
  const left = wiggle(random, 3.5);
  const right = wiggle(random, 8.5);
  const finishes = random() < 0.5 ? 1 : -1;
  return [
    zone('West', [[0, 0], ...left, [0, HEIGHT_M]], 'planted', { imposedKNm2: 4 }),
    zone('Middle', [...[...left].reverse(), ...right], 'make-up', {
      holes: [OPENING],
      imposedKNm2: 5,
      finish: { kind: 'level', levelM: 0.62 },
    }),
    zone('East', [...[...right].reverse(), [WIDTH_M, 0], [WIDTH_M, HEIGHT_M]], 'make-up', {
      imposedKNm2: 2.5,
      finish: { kind: 'plane', at: [10, 4, 0.7], fallPercent: millimetres(1 + random()), towardsDeg: Math.round(80 * finishes * random()) },
    }),
  ];
}

function levels(random: () => number): { spots: Point3M[]; breaklines: Point3M[][] } {
  const z = () => millimetres(0.02 + 0.16 * random());
  const edge: PointM[] = [...rect(-0.011, -0.017, WIDTH_M + 0.013, HEIGHT_M + 0.019)];
  const spots = edge.map(([x, y]): Point3M => [x, y, z()]);
  for (let i = 0; i < 6; i++) spots.push([millimetres(1 + 10 * random()), millimetres(1 + 2.5 * random()), z()]);
  const breaklines: Point3M[][] = [
    [
      [0.3, millimetres(6 + random()), z()],
      [5.117, millimetres(6.2 + random()), z()],
      [11.6, millimetres(6 + random()), z()],
    ],
  ];
  return { spots, breaklines };
}

export const STAGES: readonly SceneStage[] = [
  { id: 'S1', name: 'Sheets and flood test', place: [{ roles: ['protection', 'drainage element'] }], floodTestMm: 100 },
  {
    id: 'S2',
    name: 'Light fill and a heap',
    place: [{ roles: ['light fill'] }],
    stockpiles: [{ id: 'K1', outline: rect(2.2, 5.3, 4.9, 7.7), material: 'soil', heightM: 0.7 }],
  },
  { id: 'S3', name: 'Soil and objects', place: [{ roles: ['substrate'] }, { objects: ['T1', 'W1', 'P1'] }] },
];

/** The garden of a seed: everything the core calculates with, on 12 m × 9 m. */
export function gardenScene(seed: number): SceneFile {
  const random = randomFrom(seed * 7919 + 13);
  for (let i = 0; i < 5; i++) random();
  const outline = rect(0, 0, WIDTH_M, HEIGHT_M);
  const zones = bands(random);
  return sceneOf({
    name: `Garden ${seed}`,
    deck: {
      outline,
      openings: [OPENING],
      levels: levels(random),
      bays: [
        bay('SW', rect(0, 0, 6, 4.5)),
        bay('SE', rect(6, 0, WIDTH_M, 4.5), { permanentKNm2: 7, imposedKNm2: 5, stageKNm2: 9 }),
        bay('NW', rect(0, 4.5, 6, HEIGHT_M), { totalKNm2: 15 }),
        bay('NE', rect(6, 4.5, WIDTH_M, HEIGHT_M)),
      ],
    },
    buildups: [
      MAKE_UP,
      buildUp(
        'planted',
        [
          { material: 'sheet' },
          { material: 'element', orientation: 'retention' },
          { material: 'soil', thicknessMm: 250 + Math.floor(100 * random()) },
        ],
        { vegetation: { form: 'shrubs', kNm2: 0.2 } },
      ),
    ],
    zones,
    objects: [
      { kind: 'tree', id: 'T1', at: [millimetres(2 + 8 * random()), millimetres(1.5 + random())], massKg: 1500, spreadM: 1.7 },
      {
        kind: 'line',
        id: 'W1',
        line: [
          [1.5, millimetres(7 + random())],
          [millimetres(7 + 3 * random()), 7.9],
        ],
        kNm: 6,
        widthM: 0.35,
      },
      { kind: 'block', id: 'P1', outline: rect(8.1, 5.2, millimetres(8.7 + random()), 6.3), kNm2: 6 },
    ],
    stages: STAGES,
  });
}
