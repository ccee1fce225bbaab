/** Build-ups with their materials looked up: weights and water per m² and per metre, by hand. */

import { describe, expect, it } from 'vitest';
import type { SceneLayer } from '../../src/model/scene-file.ts';
import { materialLookup } from '../../src/project/materials.ts';
import { layerThickness, resolveBuildUp } from '../../src/project/resolve-layers.ts';
import { buildUp, sceneOf } from '../helpers/scene-builder.ts';

const LOOK_UP = materialLookup(sceneOf());
const resolve = (...layers: SceneLayer[]) => resolveBuildUp(buildUp('b', layers), LOOK_UP).layers;

describe('a granular layer', () => {
  it('weighs density times g per metre of its thickness', () => {
    const [soil] = resolve({ material: 'soil', thicknessMm: 250 });
    expect(soil.thicknessM).toBe(0.25);
    // 1000 and 1500 kg/m³ · 9.81 / 1000; 40 % of 1000 l/m³
    expect([soil.dryPerMKNm3, soil.saturatedPerMKNm3, soil.heldPerMLm2]).toEqual([9.81, 14.715, 400].map((v) => expect.closeTo(v, 12)));
    expect([soil.dryFixedKNm2, soil.saturatedFixedKNm2, soil.heldFixedLm2]).toEqual([0, 0, 0]);
    expect(soil.rangeM).toBeNull();
  });

  it('with a range is the make-up layer, at its nominal', () => {
    const [fill] = resolve({ material: 'light', thicknessMm: { min: 80, max: 450, nominal: 200 } });
    expect([fill.thicknessM, fill.rangeM]).toEqual([0.2, { min: 0.08, max: 0.45 }]);
  });
});

describe('a sheet or element', () => {
  it('weighs the same whatever its thickness, which is the material’s own', () => {
    const [sheet] = resolve({ material: 'sheet' });
    expect(sheet.thicknessM).toBe(0.01);
    // 1 and 2 kg/m²
    expect([sheet.dryFixedKNm2, sheet.saturatedFixedKNm2]).toEqual([0.00981, 0.01962].map((v) => expect.closeTo(v, 12)));
    expect([sheet.dryPerMKNm3, sheet.saturatedPerMKNm3]).toEqual([0, 0]);
  });

  it.each<[SceneLayer['orientation'], number, number]>([
    // 3 kg/m² is 0.02943 kN/m²; laid for retention 20 l/m² more: 0.1962
    ['retention', 0.22563, 20],
    ['drained', 0.02943, 0],
    [undefined, 0.02943, 0],
  ])('laid %s: the water it retains', (orientation, saturated, heldLm2) => {
    const [element] = resolve({ material: 'element', ...(orientation && { orientation }) });
    expect(element.saturatedFixedKNm2).toBeCloseTo(saturated, 12);
    expect(element.dryFixedKNm2).toBeCloseTo(0.02943, 12);
    expect(element.heldFixedLm2).toBe(heldLm2);
  });
});

describe('an infill', () => {
  it('fills the voids of the element below, besides its own thickness above', () => {
    const [, infill] = resolve({ material: 'element' }, { material: 'soil', infill: true, thicknessMm: 10 });
    // 40 l/m² are 0.04 m³/m²; 9.81 · 0.04 = 0.3924, 14.715 · 0.04 = 0.5886, 400 · 0.04 = 16; 10 mm besides
    expect(infill.voidVolumeM).toBeCloseTo(0.04, 12);
    expect([infill.dryFixedKNm2, infill.saturatedFixedKNm2, infill.heldFixedLm2]).toEqual(
      [0.3924, 0.5886, 16].map((v) => expect.closeTo(v, 12)),
    );
    expect(infill.thicknessM).toBe(0.01);
    expect(infill.dryPerMKNm3).toBeCloseTo(9.81, 12);
  });

  it('without a thickness is flush with its element', () => {
    const [, infill] = resolve({ material: 'element' }, { material: 'soil', infill: true });
    expect(infill.thicknessM).toBe(0);
    expect(infill.voidVolumeM).toBeCloseTo(0.04, 12);
  });

  it('only the layer that says so fills voids', () => {
    const [, soil] = resolve({ material: 'element' }, { material: 'soil', thicknessMm: 10 });
    expect([soil.voidVolumeM, soil.dryFixedKNm2]).toEqual([0, 0]);
  });
});

it('keeps order, names, roles and vegetation', () => {
  const made = resolveBuildUp(
    buildUp('b', [{ material: 'sheet' }, { material: 'soil', thicknessMm: 100 }], { vegetation: { form: 'lawn', kNm2: 0.05 } }),
    LOOK_UP,
  );
  expect(made.layers.map((l) => [l.materialId, l.name, l.role])).toEqual([
    ['sheet', 'Sheet', 'protection'],
    ['soil', 'Soil', 'substrate'],
  ]);
  expect(made.vegetationKNm2).toBe(0.05);
});

it('takes a layer’s thickness before the material’s', () => {
  expect(layerThickness({ material: 'sheet', thicknessMm: 30 }, LOOK_UP('sheet'))).toEqual({ thicknessM: 0.03, rangeM: null });
  expect(layerThickness({ material: 'sheet' }, LOOK_UP('sheet'))).toEqual({ thicknessM: 0.01, rangeM: null });
});
