/** Build-ups and stages of the invented district deck. */

import { atGrid, innerPoint, type Kind } from './district-plan.ts';
import { type Face, type Point, rectangle } from './plan-faces.ts';

const hold = [
  { material: 'fleece-500' },
  { material: 'pe-slip-1' },
  { material: 'drain-60', orientation: 'retention' },
  { material: 'lava-8-16', infill: true, thicknessMm: 10 },
  { material: 'filter-150' },
];
const drain = [{ material: 'fleece-500' }, { material: 'pe-slip-1' }, { material: 'drain-40', orientation: 'drained' }];
const fill = (material: string, min: number, max: number): object[] => [
  { material, thicknessMm: { min, max, nominal: 200 } },
  { material: 'separation-200' },
];

export const BUILDUPS = [
  {
    id: 'lawn',
    name: 'Lawn',
    vegetation: { form: 'lawn', kNm2: 0.05 },
    layers: [...hold, ...fill('foam-glass', 50, 450), { material: 'substrate-lawn', thicknessMm: 250 }, { material: 'turf-roll' }],
  },
  {
    id: 'meadow',
    name: 'Meadow',
    vegetation: { form: 'extensive grass', kNm2: 0.05 },
    layers: [...hold, ...fill('foam-glass', 50, 450), { material: 'substrate-lawn', thicknessMm: 250 }],
  },
  {
    id: 'perennials',
    name: 'Perennials',
    vegetation: { form: 'perennials', kNm2: 0.2 },
    layers: [...hold, ...fill('foam-glass', 50, 450), { material: 'substrate-intensive', thicknessMm: 300 }],
  },
  {
    id: 'shrubs',
    name: 'Shrubs',
    vegetation: { form: 'shrubs to 3 m', kNm2: 0.3 },
    layers: [...hold, ...fill('expanded-clay', 50, 450), { material: 'substrate-intensive', thicknessMm: 320 }],
  },
  {
    id: 'mound',
    name: 'Trees on polystyrene blocks',
    vegetation: { form: 'small trees to 10 m', kNm2: 0.6 },
    layers: [
      ...hold,
      ...fill('eps-block', 50, 700),
      { material: 'subsoil-light', thicknessMm: 250 },
      { material: 'substrate-tree-light', thicknessMm: 350 },
    ],
  },
  {
    id: 'paving',
    name: 'Slabs on light fill',
    layers: [
      ...drain,
      { material: 'filter-150' },
      ...fill('foam-glass', 50, 500),
      { material: 'base-2-32', thicknessMm: 120 },
      { material: 'bedding-2-8', thicknessMm: 30 },
      { material: 'slab-60' },
    ],
  },
  {
    id: 'play',
    name: 'Bound gravel on light fill',
    layers: [
      ...drain,
      { material: 'filter-150' },
      ...fill('foam-glass', 50, 500),
      { material: 'base-2-32', thicknessMm: 150 },
      { material: 'bound-gravel', thicknessMm: 50 },
    ],
  },
  {
    id: 'fire-lane',
    name: 'Fire lane, grass grid on 30 cm base course',
    layers: [
      { material: 'fleece-800' },
      { material: 'pe-slip-2' },
      { material: 'drain-25', orientation: 'drained' },
      { material: 'lava-8-16', infill: true },
      { material: 'filter-150' },
      ...fill('foam-glass', 50, 400),
      { material: 'base-0-32', thicknessMm: 300 },
      { material: 'bedding-2-8', thicknessMm: 40 },
      { material: 'grass-grid-50' },
    ],
  },
  {
    id: 'gravel',
    name: 'Gravel strip',
    layers: [
      { material: 'fleece-500' },
      { material: 'pe-slip-1' },
      { material: 'drain-40', orientation: 'drained' },
      { material: 'filter-150' },
      ...fill('foam-glass', 50, 600),
      { material: 'gravel-strip', thicknessMm: 150 },
    ],
  },
];

export interface DrawnZone extends Kind {
  readonly face: Face;
}

export function stages(zones: readonly DrawnZone[], treeIds: readonly string[]): object[] {
  const of = (...buildups: string[]): DrawnZone[] => zones.filter(({ buildup }) => buildups.includes(buildup));
  const ids = (some: readonly DrawnZone[]): string[] => some.map(({ id }) => id);
  const west = ({ face }: DrawnZone): boolean => innerPoint(face)[0] < 80;
  const paved = of('paving', 'play', 'fire-lane');
  const gravel = of('gravel');
  const planted = of('lawn', 'meadow', 'perennials', 'shrubs', 'mound');
  const route = [
    [1, 86.25],
    [159, 86.25],
  ].map((p) => atGrid(p as unknown as Point));
  const plant = [{ vehicle: 'wheel-loader-2t', route }];
  const heap = (id: string, corner: Point, material: string, heightM: number): object => ({
    id,
    outline: rectangle(corner, [corner[0] + 6, corner[1] + 2.5])
      .slice(0, 4)
      .map(atGrid),
    material,
    heightM,
  });
  const deep = ['filter', 'light fill', 'separation', 'substrate'];
  return [
    {
      id: 'S1',
      name: 'Take over the deck',
      holdPoints: [
        {
          id: 'H1',
          says: 'Levels, falls, outlets and upstands are as drawn.',
          releasedBy: 'site manager',
          evidence: 'survey of every bay',
          on: '2026-03-30',
        },
      ],
      cautions: ['Nobody drives on the membrane.'],
    },
    {
      id: 'S2',
      name: 'Flood test',
      floodTestMm: 80,
      holdPoints: [
        {
          id: 'H2',
          says: 'The water stood 24 hours; the membrane is handed over.',
          releasedBy: 'roofing contractor',
          evidence: 'flood test record',
        },
      ],
      cautions: ['Flood one half after the other.'],
    },
    {
      id: 'S3',
      name: 'Protection and slip sheet',
      place: [{ roles: ['protection', 'slip'] }],
      holdPoints: [{ id: 'H3', says: 'Fleece is lapped and carried up the edges.', releasedBy: 'foreman', evidence: 'photographs' }],
    },
    {
      id: 'S4',
      name: 'Drainage elements',
      place: [{ roles: ['drainage element'] }],
      holdPoints: [{ id: 'H4', says: 'Every outlet has its chamber.', releasedBy: 'site manager', evidence: 'checked plan' }],
      cautions: ['No wheels on open elements.'],
    },
    { id: 'S5', name: 'Drainage fill, blown in', place: [{ roles: ['drainage fill'] }] },
    {
      id: 'S6',
      name: 'Light fill under paving and gravel',
      place: [{ zones: ids([...paved, ...gravel]), roles: ['filter', 'light fill', 'separation'] }],
      stockpiles: [heap('K1', [20, 85], 'base-0-32', 0.5), heap('K2', [84, 85], 'base-0-32', 0.5), heap('K3', [132, 85], 'base-0-32', 0.5)],
      cautions: ['Heaps of base course at most 0.5 m.'],
    },
    {
      id: 'S7',
      name: 'Base course',
      place: [{ zones: ids(paved), roles: ['base course'] }],
      plant,
      holdPoints: [
        {
          id: 'H5',
          says: 'The fire lane meets its bearing in every bay.',
          releasedBy: 'geotechnical tester',
          evidence: 'plate load test sheets',
        },
      ],
    },
    {
      id: 'S8',
      name: 'Slabs, bound gravel, grass grid',
      place: [{ zones: ids(paved), roles: ['bedding', 'surfacing'] }],
      plant,
      holdPoints: [{ id: 'H6', says: 'Levels at all doors are measured.', releasedBy: 'architect', evidence: 'level list' }],
    },
    {
      id: 'S9',
      name: 'Planting, west half',
      place: [{ zones: ids(planted.filter(west)), roles: deep }],
      plant,
      stockpiles: [heap('K4', [40, 85], 'substrate-lawn', 0.2), heap('K5', [24, 12.2], 'substrate-intensive', 0.4)],
      cautions: ['Heap at most 0.2 m of substrate on the lane.'],
    },
    {
      id: 'S10',
      name: 'Planting, east half',
      place: [{ zones: ids(planted.filter((zone) => !west(zone))), roles: deep }],
      plant,
      stockpiles: [heap('K6', [116, 85], 'substrate-lawn', 0.2), heap('K7', [112, 12.2], 'substrate-intensive', 0.4)],
      cautions: ['Heap at most 0.2 m of substrate on the lane.'],
    },
    {
      id: 'S11',
      name: 'Trees',
      place: [{ objects: treeIds }],
      plant,
      holdPoints: [
        {
          id: 'H7',
          says: 'Trees are anchored without touching the membrane.',
          releasedBy: 'landscape architect',
          evidence: 'photographs of every tree',
        },
      ],
    },
    {
      id: 'S12',
      name: 'Turf, gravel, hand-over',
      place: [
        { zones: ids(of('lawn')), roles: ['vegetation'] },
        { zones: ids(gravel), roles: ['surfacing'] },
      ],
      holdPoints: [
        { id: 'H8', says: 'Every outlet runs free and every chamber opens.', releasedBy: 'client', evidence: 'hand-over record' },
      ],
    },
  ];
}
