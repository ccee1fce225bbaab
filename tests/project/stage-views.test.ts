/** What a stage lays, heaps and asks for: areas and volumes by hand. */

import { describe, expect, it } from 'vitest';
import { stageViews } from '../../src/project/stage-views.ts';
import { buildUp, MAKE_UP, read, rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

/** A: 2 m × 3 m, fill 390 mm under a level of 0.5. B: 1 m × 3 m, element filled with soil, then 100 mm of it. C: 1 m × 3 m of soil. */
const SCENE = sceneOf({
  buildups: [
    MAKE_UP,
    buildUp('filled', [
      { material: 'element' },
      { material: 'soil', infill: true, thicknessMm: 10 },
      { material: 'soil', thicknessMm: 100 },
    ]),
    SOIL_100,
  ],
  zones: [
    zone('A', rect(0, 0, 2, 3), 'make-up', { finish: { kind: 'level', levelM: 0.5 } }),
    zone('B', rect(2, 0, 3, 3), 'filled'),
    zone('C', rect(3, 0, 4, 3), 'soil-100'),
  ],
  objects: [{ kind: 'tree', id: 'T1', at: [1, 1], massKg: 100, spreadM: 1 }],
  stages: [
    {
      id: 'S1',
      name: 'Below',
      place: [{ roles: ['protection', 'drainage element', 'light fill'] }],
      floodTestMm: 100,
      holdPoints: [
        { id: 'H1', says: 'Dry below.' },
        { id: 'H2', says: 'Signed.', releasedBy: 'foreman', evidence: 'sheet', on: '2026-04-02' },
      ],
      cautions: ['Clean shoes.'],
    },
    {
      id: 'S2',
      name: 'Soil',
      place: [{ roles: ['substrate'] }, { objects: ['T1'] }],
      stockpiles: [{ id: 'K1', outline: rect(0, 0, 1, 1), material: 'light', heightM: 0.5 }],
    },
  ],
});

describe('given stages', () => {
  const [below, soil] = stageViews(read(SCENE));

  it('list each material once, with zones, area and volume', () => {
    expect(below.lays.map((l) => [l.materialId, l.role, l.zones, l.areaM2, l.volumeM3])).toEqual([
      // 10 mm · 6 m²; 390 mm · 6 m²; 50 mm · 3 m²
      ['sheet', 'protection', ['A'], expect.closeTo(6, 9), expect.closeTo(0.06, 9)],
      ['light', 'light fill', ['A'], expect.closeTo(6, 9), expect.closeTo(2.34, 9)],
      ['element', 'drainage element', ['B'], expect.closeTo(3, 9), expect.closeTo(0.15, 9)],
    ]);
  });

  it('count infill with the voids it fills, and a zone once though it has the material twice', () => {
    // A 0.1 · 6 = 0.6; B (0.04 + 0.01 + 0.1) · 3 = 0.45; C 0.1 · 3 = 0.3. Areas laid: 6 + 3 + 3 + 3.
    expect(soil.lays).toEqual([
      {
        materialId: 'soil',
        name: 'Soil',
        role: 'substrate',
        zones: ['A', 'B', 'C'],
        areaM2: expect.closeTo(15, 9),
        volumeM3: expect.closeTo(1.35, 9),
      },
    ]);
  });

  it('carry flood, hold points, cautions, heaps and objects', () => {
    expect([below.id, below.name, below.derived, below.floodTestMm, below.cautions]).toEqual(['S1', 'Below', false, 100, ['Clean shoes.']]);
    expect(below.holdPoints).toEqual([
      { id: 'H1', says: 'Dry below.', releasedBy: '', evidence: '', on: '' },
      { id: 'H2', says: 'Signed.', releasedBy: 'foreman', evidence: 'sheet', on: '2026-04-02' },
    ]);
    expect([below.objects, soil.objects]).toEqual([[], ['T1']]);
    // Loose and saturated 300 / 1.25 = 240 kg/m³: 240 · 9.81 / 1000 · 0.5 m · 1 m² = 1.1772 kN.
    expect(soil.stockpiles).toEqual([
      { id: 'K1', material: 'Light fill', heightM: 0.5, areaM2: expect.closeTo(1, 9), weightKN: expect.closeTo(1.1772, 9) },
    ]);
    expect([soil.floodTestMm, soil.holdPoints, soil.cautions]).toEqual([0, [], []]);
  });
});

it('derived stages say so and lay everything', () => {
  const { stages: _, ...plain } = SCENE;
  const views = stageViews(read(plain));
  expect(views.every((view) => view.derived)).toBe(true);
  expect(views.map((view) => view.id)).toEqual(['protection', 'drainage-element', 'light-fill', 'substrate', 'objects']);
  // 0.06 + 0.15 + 2.34 + 1.35
  const volume = views.flatMap((view) => view.lays).reduce((sum, laid) => sum + laid.volumeM3, 0);
  expect(volume).toBeCloseTo(3.9, 9);
});
