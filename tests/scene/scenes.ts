/** Scenes for the tests of the reader, as plain JSON that each test may change. Invented places. */

import type { KnownIds, KnownMaterial } from '../../src/scene/known-ids.ts';

// biome-ignore lint/suspicious/noExplicitAny: tests put anything anywhere
export type Json = any;

const CATALOGUE: readonly KnownMaterial[] = [
  { id: 'fleece-500', name: 'Protection fleece', role: 'protection', areal: { dry: 0.5, saturated: 3 }, thicknessMm: 4 },
  { id: 'drain-60', name: 'Drainage element', role: 'drainage element', areal: { dry: 2, saturated: 2.6 }, thicknessMm: 60, voidLm2: 48 },
  { id: 'lava-8-16', name: 'Lava', role: 'drainage fill', density: { dry: 900, saturated: 1200 } },
  { id: 'foam-glass', name: 'Foam-glass gravel', role: 'light fill', density: { dry: 180, saturated: 300 } },
  { id: 'substrate-lawn', name: 'Lawn substrate', role: 'substrate', density: { dry: 1100, saturated: 1700 } },
];

export const KNOWN: KnownIds = {
  materials: new Map(CATALOGUE.map((material) => [material.id, material])),
  vehicles: new Set(['fire-16t', 'wheel-loader-5t']),
};

/** Only what the contract requires. */
export function minimalScene(): Json {
  return {
    format: 'loamdeck-scene',
    version: 1,
    name: 'Smallest',
    deck: { outline: square(0, 0, 10), bays: [] },
    buildups: [],
    zones: [],
  };
}

/** Axis-parallel square by its lower left corner. */
export function square(x: number, y: number, side: number): [number, number][] {
  return [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ];
}

/** The contract's own example with its ellipses filled in: every key once. */
export function fullScene(): Json {
  return {
    $schema: './scene.schema.json',
    format: 'loamdeck-scene',
    version: 1,
    name: 'Lindenhof court',
    about: 'An invented court over an invented car park.',
    currency: 'EUR',
    grid: { cellM: 0.25 },
    rain: { designLpsHa: 300, extremeLpsHa: 500, source: 'invented' },
    deck: fullDeck(),
    materials: [
      {
        id: 'foam-glass-fine',
        name: 'Foam-glass gravel, fine',
        role: 'light fill',
        density: { dry: 180, saturated: 300 },
        waterCapacityPercent: 35,
        compactionFactor: 1.3,
        bearingKPa: 150,
        dispersal: 0.5,
        price: { per: 'm3', amount: 95 },
        delivery: { unit: 'truck', m3: 60, kg: 24000 },
        source: 'invented',
      },
      {
        id: 'drain-40',
        name: 'Drainage element 40',
        role: 'drainage element',
        areal: { dry: 2.0, saturated: 2.6 },
        thicknessMm: 40,
        voidLm2: 30,
        retentionLm2: 12,
        lapPercent: 10,
        flowLsm: 0.9,
        mineral: true,
      },
    ],
    vehicles: [
      {
        id: 'loader',
        name: 'Loader',
        source: 'invented',
        widthM: 1.8,
        axles: [{ atM: 0, loadKN: 40, wheels: 2, trackM: 1.5, contactM: [0.2, 0.3] }],
      },
    ],
    buildups: [
      {
        id: 'lawn',
        name: 'Lawn',
        vegetation: { form: 'lawn', kNm2: 0.05 },
        runoff: { peak: 0.4, annual: 0.2 },
        layers: [
          { material: 'fleece-500' },
          { material: 'drain-60', orientation: 'retention' },
          { material: 'lava-8-16', infill: true, thicknessMm: 10 },
          { material: 'foam-glass', thicknessMm: { min: 80, max: 450, nominal: 200 } },
          { material: 'substrate-lawn', thicknessMm: 250 },
        ],
      },
    ],
    zones: [
      {
        id: 'Z1',
        name: 'Lawn',
        outline: square(1, 1, 8),
        holes: [square(3, 3, 1)],
        use: 'lawn',
        buildup: 'lawn',
        imposedKNm2: 4,
        finish: { kind: 'level', levelM: 0.62 },
      },
      { id: 'Z2', outline: square(10, 1, 3), buildup: 'lawn', finish: { kind: 'build-up' } },
      { id: 'Z3', outline: square(14, 1, 3), buildup: 'lawn', finish: { kind: 'plane', at: [14, 1, 0.7], fallPercent: 2, towardsDeg: 90 } },
      {
        id: 'Z4',
        outline: square(14, 5, 3),
        buildup: 'lawn',
        finish: {
          kind: 'spots',
          spots: [
            [14, 5, 0.7],
            [17, 5, 0.7],
            [17, 8, 0.75],
          ],
          breaklines: [
            [
              [14, 6, 0.72],
              [17, 6, 0.72],
            ],
          ],
        },
      },
    ],
    objects: [
      { kind: 'tree', id: 'T1', name: 'Lime', at: [5, 5], massKg: 2400, spreadM: 2.5 },
      {
        kind: 'line',
        id: 'W1',
        name: 'Wall',
        line: [
          [1, 9],
          [9, 9],
        ],
        kNm: 9.5,
        widthM: 0.6,
      },
      { kind: 'block', id: 'P1', name: 'Pool', outline: square(10, 6, 2), kNm2: 8, heightM: 0.5 },
      {
        kind: 'retaining',
        id: 'R1',
        name: 'Terrace wall',
        line: [
          [1, 7],
          [4, 7],
        ],
        side: 'right',
        retainedM: 0.6,
        baseM: 0.5,
        stemM: 0.1,
        slabM: 0.12,
        backfill: { density: 1900, frictionDeg: 32.5 },
        surchargeKNm2: 5,
        baseFriction: 0.3,
        wallDensity: 2400,
      },
    ],
    traffic: [
      {
        id: 'F1',
        vehicle: 'fire-16t',
        route: [
          [0, 9],
          [20, 9],
        ],
        widthM: 3.5,
      },
    ],
    setUpAreas: [
      {
        id: 'U1',
        name: 'Ladder',
        kind: 'set-up',
        outline: square(11, 1, 6),
        vehicle: 'fire-16t',
        building: [
          [0, 10],
          [20, 10],
        ],
      },
    ],
    stages: [
      {
        id: 'S1',
        name: 'Protection',
        place: [{ zones: ['Z1'], roles: ['protection', 'slip'] }, { objects: ['T1'] }],
        stockpiles: [{ id: 'K1', outline: square(6, 1, 2), material: 'substrate-lawn', heightM: 0.8 }],
        plant: [
          {
            vehicle: 'wheel-loader-5t',
            route: [
              [0, 0],
              [5, 5],
            ],
          },
        ],
        floodTestMm: 100,
        holdPoints: [{ id: 'H1', says: 'Membrane tested', releasedBy: 'site management', evidence: 'flood test record', on: '2026-04-02' }],
        cautions: ['No heaps over the ramp.'],
      },
    ],
    accessPoints: [{ id: 'G1', at: [0, 5], kind: 'crane', reachM: 40 }],
    views: [
      {
        id: 'V1',
        name: 'From the gate',
        eye: [-10, -10, 12],
        target: [10, 5, 0],
        says: 'The lawn',
        show: { map: 'utilisation', explode: 40, labels: true },
      },
    ],
  };
}

function fullDeck(): Json {
  return {
    outline: [
      [0, 0],
      [20, 0],
      [20, 10],
      [0, 10],
      [0, 0],
    ],
    openings: [square(18, 8, 1)],
    slabMm: 350,
    rootResistant: true,
    levels: {
      spots: [
        [0, 0, 0],
        [20, 0, 0.2],
        [20, 10, 0.2],
        [0, 10, 0],
      ],
      breaklines: [
        [
          [10, 0, 0.1],
          [10, 10, 0.1],
        ],
      ],
    },
    bays: [
      {
        id: 'A1',
        outline: square(0, 0, 10),
        permanentKNm2: 12,
        imposedKNm2: 5,
        stageKNm2: 14,
        vehicles: ['fire-16t', 'loader'],
        basis: { document: 'load plan', revision: 'C', date: '2026-03-09', by: 'structural engineer' },
      },
      { id: 'A2', outline: square(10, 0, 10), totalKNm2: 17 },
    ],
    columns: [{ id: 'C3', at: [10, 5], sizeM: [0.4, 0.4] }],
    outlets: [
      { id: 'O1', at: [0.5, 0.5], kind: 'outlet', lps: 4.5 },
      { id: 'O2', at: [0.5, 9.5], kind: 'overflow', lps: 4.5, invertM: 0.05 },
    ],
    edges: [
      {
        id: 'E1',
        line: [
          [0, 0],
          [0, 10],
        ],
        kind: 'threshold',
        membraneTopM: 0.75,
        drainedChannel: true,
      },
    ],
  };
}
