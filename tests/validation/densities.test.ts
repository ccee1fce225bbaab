/**
 * From densities to loads, 9.81 m/s² throughout.
 *
 * [secondary] EN 1991-1-1:2002 Annex A, Tables A.1 and A.6, mean densities in kN/m³ as several public texts and program files repeat
 *             them: reinforced concrete 25.0, plain concrete 24.0, normal ballast 20.0, mastic asphalt 18.0, dry sand 15.0.
 * [common practice] protection fleece 500 g/m², bedding of 3 cm, flood test 100 mm.
 * [by hand] everything that follows by arithmetic.
 */

import { describe, expect, it } from 'vitest';
import type { SceneFile, SceneMaterial } from '../../src/model/scene-file.ts';
import { buildUp, byId, read, rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

function layerOf(density: number, thicknessMm: number): SceneFile {
  const material: SceneMaterial = { id: 'stuff', name: 'Stuff', role: 'surfacing', density: { dry: density, saturated: density } };
  return sceneOf({
    materials: [material],
    buildups: [buildUp('one', [{ material: 'stuff', thicknessMm }])],
    zones: [zone('Z1', rect(0, 0, 4, 3), 'one')],
  });
}

describe('published unit weights', () => {
  it.each([
    ['reinforced concrete, 0.35 m slab', 2548.42, 350, 8.75], // printed 25.0; by hand 25.0 / 9.81 · 1000 = 2548.4200 kg/m³, 0.35 · 25
    ['plain concrete, 1 m', 2446.4832, 1000, 24], // printed 24.0; by hand 2446.4832 kg/m³
    ['normal ballast, 0.30 m', 2038.736, 300, 6], // printed 20.0; by hand 2038.7360 kg/m³, 0.3 · 20
    ['mastic asphalt, 25 mm', 1834.8624, 25, 0.45], // printed 18.0; by hand 1834.8624 kg/m³, 0.025 · 18
    ['dry sand, 40 mm', 1529.052, 40, 0.6], // printed 15.0; by hand 1529.0520 kg/m³, 0.04 · 15
  ])('%s', (_, density, thicknessMm, loadKNm2) => {
    const { report } = read(layerOf(density, thicknessMm));
    expect(report.zones[0].saturatedKNm2.mean).toBeCloseTo(loadKNm2, 6);
    expect(report.zones[0].dryKNm2.max).toBeCloseTo(loadKNm2, 6);
    expect(report.bays[0].permanent.patchKNm2).toBeCloseTo(loadKNm2, 6);
    expect(report.deck.saturatedKN).toBeCloseTo(12 * loadKNm2, 4);
  });
});

describe('common practice', () => {
  const only = (material: string, thicknessMm?: number) =>
    read(
      sceneOf({
        materials: [],
        buildups: [buildUp('one', [thicknessMm === undefined ? { material } : { material, thicknessMm }])],
        zones: [zone('Z1', rect(0, 0, 4, 3), 'one')],
      }),
    ).report.zones[0];

  it('protection fleece of 500 g/m²', () => {
    expect(only('fleece-500').dryKNm2.mean).toBeCloseTo(0.004905, 12); // by hand: 0.5 · 9.81 / 1000
  });

  it('3 cm of bedding is about half a kilonewton per square metre', () => {
    // by hand: 1.70 to 2.20 t/m³ as built in (weka.de, lightweight materials in earthworks): 0.03 · 9.81 · 1.7 = 0.500 to 0.647
    const { dryKNm2, saturatedKNm2, depthMm } = only('bedding-2-8', 30);
    expect(dryKNm2.mean).toBeGreaterThanOrEqual(0.5);
    expect(saturatedKNm2.mean).toBeLessThanOrEqual(0.648);
    expect(depthMm.mean).toBeCloseTo(30, 9);
  });

  it('flood test of 100 mm', () => {
    const stages = [{ id: 'S1', name: 'Flood test', floodTestMm: 100 }];
    const { report } = read(sceneOf({ stages }));
    expect(report.bays[0].stages[0].patchKNm2).toBeCloseTo(0.981, 12); // by hand: 0.100 m · 9.81 kN/m³
  });

  it('a tree pit of 12 m³ at 16 kN/m³', () => {
    // by hand: 16 / 9.81 · 1000 = 1630.98879 kg/m³; 12 m² · 1.0 m · 16 = 192 kN
    const { report } = read(layerOf(1630.98879, 1000));
    expect(report.deck.saturatedKN).toBeCloseTo(192, 5);
  });
});

describe('objects', () => {
  const outline = rect(0, 0, 10, 8);
  const deck = { outline };
  const bare = { deck, zones: [zone('Z1', outline, 'soil-100')], buildups: [SOIL_100] };

  it('a tree of 2400 kg over a spread of 2.5 m', () => {
    const { report } = read(sceneOf({ ...bare, objects: [{ kind: 'tree', id: 'T1', at: [5, 4], massKg: 2400, spreadM: 2.5 }] }));
    expect(report.deck.objectsKN).toBeCloseTo(23.544, 9); // by hand: 2400 · 9.81 / 1000
    // by hand: disc π · 1.25² = 4.908739 m², 23.544 / 4.908739 = 4.796344, on 1.4715 of soil; the window's half diagonal of 0.707 m
    // and one cell more lie inside the disc.
    expect(byId(report.bays, 'A1').permanent.patchKNm2).toBeCloseTo(1.4715 + 4.796344, 6);
  });

  it('a wall of 9.5 kN/m, 0.6 m wide', () => {
    const line: [number, number][] = [
      [2, 3],
      [8, 3],
    ];
    const { report } = read(sceneOf({ ...bare, objects: [{ kind: 'line', id: 'W1', line, kNm: 9.5, widthM: 0.6 }] }), 0.1);
    expect(report.deck.objectsKN).toBeCloseTo(57, 9); // by hand: 6 m · 9.5
    expect(report.bays[0].permanent.patchKNm2).toBeCloseTo(1.4715 + 9.5, 9); // by hand: one metre of it in a window of 1 m²
  });

  it('a block of 8 kN/m²', () => {
    const { report } = read(sceneOf({ ...bare, objects: [{ kind: 'block', id: 'P1', outline: rect(2, 2, 5, 4), kNm2: 8 }] }));
    expect(report.deck.objectsKN).toBeCloseTo(48, 9); // by hand: 3 · 2 · 8
    expect(report.bays[0].permanent.patchKNm2).toBeCloseTo(9.4715, 9); // by hand: 8 + 1.4715
    expect(report.bays[0].permanent.meanKNm2).toBeCloseTo(1.4715 + 0.6, 9); // by hand: 48 / 80
  });
});
