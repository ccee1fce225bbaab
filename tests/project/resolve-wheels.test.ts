/** Wheels in report, findings and words, by hand on round numbers. */

import { describe, expect, it } from 'vitest';
import { summary } from '../../src/cli/summary.ts';
import type { SceneFile, SceneMaterial, SceneStage, SceneVehicle } from '../../src/model/scene-file.ts';
import { bay, buildUp, findingsOf, GRAVITY, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

/** 20 kN on one axle, wheels 10 kN on 0.2 m × 0.25 m: 200 kPa. */
const BARROW: SceneVehicle = {
  id: 'barrow',
  name: 'Barrow',
  widthM: 1.2,
  axles: [{ atM: 0, loadKN: 20, wheels: 2, trackM: 0.9, contactM: [0.2, 0.25] }],
};

/** Sheet, 0.2 m of gravel that bears 300 kPa, slab of 0.05 m without a dispersal of its own. */
const LANE = buildUp('lane', [{ material: 'sheet' }, { material: 'gravel', thicknessMm: 200 }, { material: 'slab' }]);
const LANE_MATERIALS: readonly SceneMaterial[] = [
  ...MATERIALS,
  { id: 'gravel', name: 'Gravel', role: 'base course', density: { dry: 1900, saturated: 2000 }, bearingKPa: 100, source: 'test sheet' },
  { id: 'slab', name: 'Slab', role: 'surfacing', density: { dry: 2400, saturated: 2400 }, thicknessMm: 50, bearingKPa: 1000 },
];

function laneScene(parts: Partial<SceneFile> = {}, vehicles?: readonly string[], imposedKNm2 = 5): SceneFile {
  const outline = rect(0, 0, 10, 4);
  return sceneOf({
    materials: LANE_MATERIALS,
    vehicles: [BARROW],
    buildups: [LANE],
    zones: [zone('Z1', outline, 'lane')],
    traffic: [
      {
        id: 'F1',
        vehicle: 'barrow',
        route: [
          [1, 2],
          [9, 2],
        ],
      },
    ],
    ...parts,
    deck: { outline, bays: [bay('A1', outline, { permanentKNm2: 12, imposedKNm2, ...(vehicles ? { vehicles } : {}) })] },
  });
}

describe('a barrow of 20 kN on a lane of 40 m²', () => {
  const project = read(laneScene({}, ['barrow']));
  const [run] = project.report.traffic ?? [];

  it('reports the greatest on membrane and layers: slabs spread 1:1, gravel 1:2, sheets not at all', () => {
    expect(run).toMatchObject({ id: 'F1', vehicle: 'barrow', stage: null, dynamicFactor: 1, baysEntered: ['A1'], governs: 'one wheel' });
    // 0.05 + 0.1 on every side: 0.5 · 0.55
    expect(run.maxMembraneKPa).toBeCloseTo(10 / 0.275, 9);
    expect(run.layers.map(({ layer }) => layer)).toEqual(['slab', 'gravel', 'sheet']);
    expect(run.layers[0].maxKPa).toBeCloseTo(200, 9);
    // 0.05 on every side: 0.3 · 0.35; above 0.05 m of slab
    expect(run.layers[1].maxKPa).toBeCloseTo(10 / 0.105 + 0.05 * 2.4 * GRAVITY, 9);
    expect(run.layers[1].permittedKPa).toBe(100);
    expect(run.layers[2].permittedKPa).toBeNull();
  });

  it('stands with 20 kN on 40 m², of 5 kN/m² permitted', () => {
    expect(run.bays).toHaveLength(1);
    expect(run.bays[0]).toMatchObject({ bay: 'A1', vehiclePermitted: true, permittedKNm2: 5 });
    expect(run.bays[0].standingKN).toBeCloseTo(20, 9);
    expect(run.bays[0].utilisation).toBeCloseTo(0.1, 9);
  });

  it('96.4 of 100 kPa on the gravel want a look', () => {
    const [finding, ...more] = findingsOf(project, 'stress.layer');
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: 'check', where: { zone: 'Z1' }, limit: 100, unit: 'kPa', source: 'test sheet' });
    expect(finding.value).toBeCloseTo(96.4153, 3);
    expect(finding.says).toContain(
      'Barrow (F1) presses 96 kPa on Gravel: 95 kPa from wheels and 1 kPa from what lies above; it bears 100 kPa (96 %)',
    );
    expect(finding.says).toContain('the structural engineer decides');
    expect(findingsOf(project, 'traffic.bay')).toEqual([]);
  });

  it('wheels never enter the area loads', () => {
    const still = read(laneScene({ traffic: [] }));
    expect(project.report.bays[0].permanent).toEqual(still.report.bays[0].permanent);
    expect(project.report.deck).toEqual(still.report.deck);
    expect(still.report.traffic).toBeUndefined();
  });

  it('stands in the summary', () => {
    expect(summary(project.scene, project.report)).toMatch(/F1 +barrow +- +Z1 +gravel +96 +100 +96\.4 % +36 /);
    const none = read(laneScene({ traffic: [] }));
    expect(summary(none.scene, none.report)).not.toContain('Wheels (');
  });
});

it('a dynamic factor of 1.4 makes 133.3 + 1.2 kPa: a stop', () => {
  const [finding] = findingsOf(read(laneScene({ limits: { dynamicFactor: 1.4 } }, ['barrow'])), 'stress.layer');
  expect(finding.severity).toBe('stop');
  expect(finding.value).toBeCloseTo((1.4 * 10) / 0.105 + 0.05 * 2.4 * GRAVITY, 9);
  expect(finding.says).toContain('dynamic factor 1.4');
});

describe('vehicles in bays', () => {
  it('not in the list: a stop', () => {
    const [finding, ...more] = findingsOf(read(laneScene({}, [])), 'traffic.bay');
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: 'stop', where: { bay: 'A1' } });
    expect(finding.says).toContain('is not among the vehicles that the load plan permits');
    expect(finding.source).toBe('load plan, revision A, 2026-01-05');
  });

  it('no list: a check that it is not said', () => {
    const [finding, ...more] = findingsOf(read(laneScene()), 'traffic.bay');
    expect(more).toEqual([]);
    expect(finding.severity).toBe('check');
    expect(finding.says).toContain('does not say which vehicles may enter');
    expect(finding.says).toContain('fire authority');
  });

  it('20 kN on 40 m² over a permitted 0.4 kN/m²', () => {
    const [finding] = findingsOf(read(laneScene({}, ['barrow'], 0.4)), 'traffic.bay');
    expect(finding).toMatchObject({ severity: 'stop', limit: 0.4, unit: 'kN/m²' });
    expect(finding.value).toBeCloseTo(0.5, 9);
    expect(finding.says).toContain(
      '20.0 kN of Barrow (F1) stand on it at once, 0.50 kN/m² over its area; 0.40 kN/m² are permitted (125 %)',
    );
  });
});

describe('plant', () => {
  const route = [
    [1, 2],
    [9, 2],
  ] as const;
  const stages: readonly SceneStage[] = [
    { id: 'S1', name: 'Sheet', place: [{ roles: ['protection'] }] },
    {
      id: 'S2',
      name: 'Base',
      place: [{ roles: ['base course'] }],
      plant: [
        { vehicle: 'barrow', route },
        { vehicle: 'barrow', route },
      ],
    },
    { id: 'S3', name: 'Slabs', place: [{ roles: ['surfacing'] }] },
  ];
  const project = read(laneScene({ traffic: [], stages }, ['barrow']));

  it('presses on the layers of its stage, and is told by stage and vehicle', () => {
    expect((project.report.traffic ?? []).map(({ id, stage }) => [id, stage])).toEqual([
      ['S2 barrow', 'S2'],
      ['S2 barrow 2', 'S2'],
    ]);
    const [first] = project.report.traffic ?? [];
    expect(first.layers.map(({ layer }) => layer)).toEqual(['gravel', 'sheet']);
    expect(first.layers[0].maxKPa).toBeCloseTo(200, 9);
    // 0.1 on every side: 0.4 · 0.45
    expect(first.maxMembraneKPa).toBeCloseTo(10 / 0.18, 9);
    expect(findingsOf(project, 'stress.layer')[0]).toMatchObject({ severity: 'stop', where: { zone: 'Z1', stage: 'S2' } });
    expect(findingsOf(project, 'stress.layer')[0].says).toContain('lay boards or plates');
  });
});
