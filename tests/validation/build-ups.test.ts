/**
 * Weights of whole build-ups.
 *
 * [example] two build-ups with assumed weights, summed layer by layer (check values, 4.6 and 13; computed apart from this project).
 *           Where the example counts 12 l/m² stored in the element as 2.5 → 14.5 kg/m², the scene gives a retention of 12 l/m².
 * [common practice] 0.50 m in all, 0.20 m of it foam-glass gravel, gravel in its place 3.2 to 3.8 kN/m² heavier; no published source.
 */

import { describe, expect, it } from 'vitest';
import type { SceneBuildUp, SceneLayer, SceneMaterial } from '../../src/model/scene-file.ts';
import { bay, buildUp, findingsOf, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const MATERIALS: readonly SceneMaterial[] = [
  { id: 'fleece', name: 'Fleece', role: 'protection', areal: { dry: 0.5, saturated: 3.5 }, thicknessMm: 4 },
  { id: 'drain', name: 'Element', role: 'drainage element', areal: { dry: 2.5, saturated: 2.5 }, thicknessMm: 40, retentionLm2: 12 },
  { id: 'filter', name: 'Filter', role: 'filter', areal: { dry: 0.2, saturated: 1.2 }, thicknessMm: 1 },
  { id: 'foam', name: 'Foam glass', role: 'light fill', density: { dry: 195, saturated: 250 } },
  {
    id: 'substrate',
    name: 'Substrate',
    role: 'substrate',
    density: { dry: 1000, saturated: 1450 },
    waterCapacityPercent: 45,
  },
  { id: 'base', name: 'Base gravel', role: 'base course', density: { dry: 1900, saturated: 2100 } },
  { id: 'bedding', name: 'Bedding', role: 'bedding', density: { dry: 1700, saturated: 1950 } },
  { id: 'paving', name: 'Paving', role: 'surfacing', density: { dry: 2300, saturated: 2350 } },
];

const LAWN_LAYERS = (orientation: 'retention' | 'drained'): SceneLayer[] => [
  { material: 'fleece' },
  { material: 'drain', orientation },
  { material: 'filter' },
  { material: 'foam', thicknessMm: 300 },
  { material: 'filter' },
  { material: 'substrate', thicknessMm: 350 },
];
/** 5 kg/m² of lawn. */
const LAWN = { vegetation: { form: 'lawn', kNm2: (5 * 9.81) / 1000 } };
const PAVED_LAYERS: SceneLayer[] = [
  { material: 'fleece' },
  { material: 'drain', orientation: 'drained' },
  { material: 'filter' },
  { material: 'foam', thicknessMm: 300 },
  { material: 'filter' },
  { material: 'base', thicknessMm: 250 },
  { material: 'bedding', thicknessMm: 40 },
  { material: 'paving', thicknessMm: 80 },
];
const OUTLINE = rect(0, 0, 4, 3);

function scene(built: SceneBuildUp, limits = {}, imposedKNm2 = 5) {
  const outline = OUTLINE;
  return read(
    sceneOf({
      materials: MATERIALS,
      deck: { outline, bays: [bay('A1', outline, { permanentKNm2: 9, imposedKNm2: 5, ...limits })] },
      buildups: [built],
      zones: [zone('Z1', outline, built.id, { imposedKNm2 })],
    }),
  );
}

describe('lawn on 0.35 m of substrate and 0.30 m of foam glass', () => {
  const { report } = scene(buildUp('lawn', LAWN_LAYERS('retention'), LAWN));
  const [zoneResult] = report.zones;

  it('dry', () => {
    // by hand: .5 + 2.5 + .2 + .30·195 + .2 + .35·1000 + 5 = 416.9 kg/m²
    expect(zoneResult.dryKNm2.mean).toBeCloseTo(4.089789, 9);
  });

  it('saturated, the 12 l/m² held by the element counted', () => {
    // by hand: 3.5 + 2.5 + 12 + 1.2 + .30·250 + 1.2 + .35·1450 + 5 = 607.9 kg/m²
    expect(zoneResult.saturatedKNm2.mean).toBeCloseTo(5.963499, 9);
  });

  it('laid to drain, the element keeps nothing', () => {
    const drained = scene(buildUp('lawn', LAWN_LAYERS('drained'), LAWN)).report.zones[0];
    expect(drained.saturatedKNm2.mean).toBeCloseTo(5.845779, 9); // by hand: 595.9 kg/m²
    expect(drained.dryKNm2.mean).toBeCloseTo(4.089789, 9);
    expect(drained.heldLm2.mean).toBeCloseTo(157.5, 9); // by hand: 45 % of 350 mm
  });

  it('is 696 mm deep and weighs on every patch alike', () => {
    expect(zoneResult.depthMm.mean).toBeCloseTo(696, 9); // by hand: 4 + 40 + 1 + 300 + 1 + 350
    expect(report.bays[0].permanent.patchKNm2).toBeCloseTo(5.963499, 9);
    expect(report.bays[0].permanent.peakKNm2).toBeCloseTo(5.963499, 9);
    expect(report.deck.saturatedKN).toBeCloseTo(12 * 5.963499, 8);
  });

  it('uses 66 % of 9 kN/m² permanent, 78 % of 14 kN/m² in all', () => {
    expect(report.bays[0].permanent.utilisation).toBeCloseTo(0.662611, 6); // by hand: 5.963499 / 9
    expect(report.bays[0].imposed.utilisation).toBeCloseTo(1, 12); // by hand: 5 / 5
    const limits = { permanentKNm2: undefined, imposedKNm2: undefined, totalKNm2: 14 };
    const [total] = scene(buildUp('lawn', LAWN_LAYERS('retention'), LAWN), limits).report.bays;
    expect(total.total?.utilisation).toBeCloseTo(0.783107, 6); // by hand: (5.963499 + 5) / 14
    expect(total.total?.patchKNm2).toBeCloseTo(10.963499, 9);
  });
});

describe('water held', () => {
  it('45 % of 250 mm and 12 l/m²', () => {
    const layers: SceneLayer[] = [
      { material: 'drain', orientation: 'retention' },
      { material: 'substrate', thicknessMm: 250 },
    ];
    const { heldLm2 } = scene(buildUp('lawn', layers)).report.zones[0];
    expect(heldLm2.mean).toBeCloseTo(124.5, 9); // by hand: 0.45 · 250 = 112.5, + 12
  });
});

describe('infill in the voids of the element below it', () => {
  const element: SceneMaterial = {
    id: 'element',
    name: 'Element',
    role: 'drainage element',
    areal: { dry: 2, saturated: 2 },
    thicknessMm: 60,
    voidLm2: 48,
    retentionLm2: 18,
  };
  const gravel: SceneMaterial = {
    id: 'gravel',
    name: 'Gravel',
    role: 'drainage fill',
    density: { dry: 1600, saturated: 1750 },
    waterCapacityPercent: 10,
  };
  const run = (above: { thicknessMm?: number }) => {
    const layers: SceneLayer[] = [
      { material: 'element', orientation: 'retention' },
      { material: 'gravel', infill: true, ...above },
    ];
    const materials = [element, gravel];
    return read(sceneOf({ materials, buildups: [buildUp('b', layers)], zones: [zone('Z1', OUTLINE, 'b')] })).report.zones[0];
  };

  it('flush with the element: 48 l/m² of gravel and no height of its own', () => {
    const { dryKNm2, saturatedKNm2, depthMm, heldLm2 } = run({});
    expect(dryKNm2.mean).toBeCloseTo(0.773028, 9); // by hand: (2 + 0.048 · 1600) · 9.81 / 1000
    expect(saturatedKNm2.mean).toBeCloseTo(1.02024, 9); // by hand: (2 + 18 + 0.048 · 1750) · 9.81 / 1000
    expect(depthMm.mean).toBeCloseTo(60, 9);
    expect(heldLm2.mean).toBeCloseTo(22.8, 9); // by hand: 18 + 10 % of 48
  });

  it('and 10 mm above it', () => {
    const { dryKNm2, depthMm, heldLm2 } = run({ thicknessMm: 10 });
    expect(dryKNm2.mean).toBeCloseTo(0.929988, 9); // by hand: (2 + 0.058 · 1600) · 9.81 / 1000
    expect(depthMm.mean).toBeCloseTo(70, 9);
    expect(heldLm2.mean).toBeCloseTo(23.8, 9); // by hand: 18 + 10 % of 58
  });
});

describe('paving on 0.25 m of base course and 0.30 m of foam glass', () => {
  const project = scene(buildUp('paved', PAVED_LAYERS));
  const [zoneResult] = project.report.zones;

  it('dry and saturated', () => {
    // by hand: .5 + 2.5 + .2 + 58.5 + .2 + 475 + 68 + 184 = 788.9 kg/m²
    expect(zoneResult.dryKNm2.mean).toBeCloseTo(7.739109, 9);
    // by hand: 3.5 + 2.5 + 1.2 + 75 + 1.2 + 525 + 78 + 188 = 874.4 kg/m²
    expect(zoneResult.saturatedKNm2.mean).toBeCloseTo(8.577864, 9);
  });

  it('uses 95 % of 9 kN/m²: someone must look', () => {
    expect(project.report.bays[0].permanent.utilisation).toBeCloseTo(0.953096, 6); // by hand: 8.577864 / 9
    expect(findingsOf(project, 'load.permanent').map((finding) => finding.severity)).toEqual(['check']);
  });
});

describe('foam glass against gravel, 0.50 m in all (common practice)', () => {
  const build = (fill: string): SceneLayer[] => [
    { material: 'fleece-500' },
    { material: 'drain-60', orientation: 'retention' },
    { material: fill, thicknessMm: 200 },
    { material: 'substrate-lawn', thicknessMm: 230 },
  ];
  const fill = (id: string, density: number): SceneMaterial => ({
    id,
    name: id,
    role: 'light fill',
    density: { dry: density, saturated: density },
  });
  const loadOf = (id: string, materials: readonly SceneMaterial[] = []) =>
    read(sceneOf({ materials, buildups: [buildUp('b', build(id))], zones: [zone('Z1', OUTLINE, 'b')] })).report.zones[0];

  it.each([
    [1850, 3.2373], // by hand: 0.20 · (1850 − 200) · 9.81 / 1000
    [2150, 3.8259], // by hand: 0.20 · (2150 − 200) · 9.81 / 1000
  ])('gravel of %d kg/m³ against foam glass of 200', (density, heavierKNm2) => {
    const materials = [fill('light', 200), fill('heavy', density)];
    const light = loadOf('light', materials);
    const heavy = loadOf('heavy', materials);
    expect(heavy.saturatedKNm2.mean - light.saturatedKNm2.mean).toBeCloseTo(heavierKNm2, 9);
    expect(heavy.dryKNm2.mean - light.dryKNm2.mean).toBeCloseTo(heavierKNm2, 9);
    expect(heavy.depthMm.mean).toBeCloseTo(light.depthMm.mean, 9);
  });

  it("the catalogue's own light fill and base course differ by as much", () => {
    const light = loadOf('foam-glass');
    const heavy = loadOf('base-0-32');
    expect(light.depthMm.mean).toBeGreaterThan(480); // practice: about 0.50 m
    expect(light.depthMm.mean).toBeLessThan(520);
    for (const state of ['dryKNm2', 'saturatedKNm2'] as const) {
      expect(heavy[state].mean - light[state].mean).toBeGreaterThan(3.2);
      expect(heavy[state].mean - light[state].mean).toBeLessThan(3.85); // practice 3.8, printed to one decimal
    }
  });
});
