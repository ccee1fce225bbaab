/** Pores that ponded water fills, volume pushed out of water, and what drains a build-up; by hand. */

import { describe, expect, it } from 'vitest';
import type { SceneLayer, SceneMaterial } from '../../src/model/scene-file.ts';
import { materialLookup } from '../../src/project/materials.ts';
import { resolveBuildUp } from '../../src/project/resolve-layers.ts';
import { drainOf, freePores, upliftLayers } from '../../src/project/water-layers.ts';
import { buildUp, sceneOf } from '../helpers/scene-builder.ts';

const MATERIALS: readonly SceneMaterial[] = [
  {
    id: 'element',
    name: 'Element',
    role: 'drainage element',
    areal: { dry: 2, saturated: 2 },
    thicknessMm: 60,
    voidLm2: 48,
    retentionLm2: 20,
    porePercent: 95,
    flowLsm: 0.9,
  },
  { id: 'lava', name: 'Lava', role: 'drainage fill', density: { dry: 1100, saturated: 1300 }, porePercent: 35, permeabilityMs: 0.05 },
  { id: 'fine', name: 'Fine fill', role: 'drainage fill', density: { dry: 1500, saturated: 1700 }, permeabilityMs: 0.01 },
  { id: 'cloth', name: 'Cloth', role: 'filter', areal: { dry: 0.15, saturated: 1 }, thicknessMm: 1.2 },
  { id: 'block', name: 'Block', role: 'light fill', density: { dry: 20, saturated: 50 }, porePercent: 5 },
  { id: 'grains', name: 'Grains', role: 'light fill', density: { dry: 200, saturated: 250 }, porePercent: 40, uplift: 'grains' },
  { id: 'clay', name: 'Clay balls', role: 'drainage fill', density: { dry: 350, saturated: 550 }, porePercent: 40 },
  { id: 'base', name: 'Base', role: 'base course', density: { dry: 1950, saturated: 2150 }, porePercent: 5 },
  { id: 'stone', name: 'Stone', role: 'surfacing', density: { dry: 2700, saturated: 2710 }, porePercent: 60 },
];
const materialOf = materialLookup(sceneOf({ materials: MATERIALS }));
const of = (layers: readonly SceneLayer[]) => {
  const scene = buildUp('B', layers);
  const input = resolveBuildUp(scene, materialOf);
  return { pores: freePores(scene, input, materialOf), uplift: upliftLayers(scene, materialOf), drain: drainOf(scene, input, materialOf) };
};

describe('free pores', () => {
  it('an element open and dry: 95 % of 60 mm', () => {
    expect(of([{ material: 'element', orientation: 'drained' }]).pores).toEqual([expect.closeTo(0.95, 12)]);
  });

  it('laid to hold, less the 20 l/m² it keeps', () => {
    // (57 − 20) / 60
    expect(of([{ material: 'element', orientation: 'retention' }]).pores).toEqual([expect.closeTo(37 / 60, 12)]);
  });

  it('filled, less what 48 l/m² of lava leave: 65 % of them', () => {
    // 57 − 48 · 0.65 = 25.8; laid to hold 57 − 20 − 31.2 = 5.8
    const infill: SceneLayer = { material: 'lava', infill: true, thicknessMm: 10 };
    expect(of([{ material: 'element', orientation: 'drained' }, infill]).pores).toEqual([expect.closeTo(25.8 / 60, 12), 0.35]);
    expect(of([{ material: 'element', orientation: 'retention' }, infill]).pores[0]).toBeCloseTo(5.8 / 60, 12);
  });

  it('never less than none; a material that says nothing has none', () => {
    const infill: SceneLayer = { material: 'fine', infill: true, thicknessMm: 10 };
    // 57 − 20 − 48 < 0
    expect(of([{ material: 'element', orientation: 'retention' }, infill]).pores).toEqual([0, 0]);
  });
});

describe('pushed out of water', () => {
  const light = (material: string) => of([{ material, thicknessMm: 100 }]).uplift[0];

  it('light fill is a sealed block unless its grains let water in', () => {
    expect(light('block')).toEqual({ light: true, displaces: 1 });
    expect(light('grains')).toEqual({ light: true, displaces: expect.closeTo(0.6, 12) });
  });

  it('ballast: all but its pores and what it soaks up; never less than solid grains', () => {
    // 1 − 0.05 − 0.2
    expect(light('base')).toEqual({ light: false, displaces: expect.closeTo(0.75, 12) });
    // Entered pores of 60 % can't be: 2700 kg of grains fill a cubic metre.
    expect(light('stone')).toEqual({ light: false, displaces: 1 });
  });

  it('a fill lighter than the water it pushes aside lifts too', () => {
    // 1 − 0.4 − 0.2 = 0.4: 350 < 400 kg/m³
    expect(light('clay')).toEqual({ light: true, displaces: expect.closeTo(0.4, 12) });
  });

  it('sheets and hollow elements weigh nothing in water', () => {
    // 0.15 kg in 1.2 l, 2 kg in 60 l per m²
    expect(of([{ material: 'cloth' }]).uplift[0]).toEqual({ light: false, displaces: expect.closeTo(0.125, 12) });
    expect(of([{ material: 'element' }]).uplift[0].displaces).toBeCloseTo(2 / 60, 12);
  });
});

describe('what drains', () => {
  it('an element by its flow, fill or not', () => {
    expect(of([{ material: 'element' }, { material: 'lava', infill: true }]).drain).toMatchObject({ kind: 'element', flowLsm: 0.9 });
  });

  it('else the thickest granular fill, at its least thickness', () => {
    const range = { min: 40, max: 200, nominal: 100 };
    const { drain } = of([
      { material: 'fine', thicknessMm: 30 },
      { material: 'lava', thicknessMm: range },
    ]);
    expect(drain).toMatchObject({ kind: 'fill', material: 'lava', permeabilityMs: 0.05, thicknessM: 0.04 });
  });

  it('nothing where no number is given', () => {
    expect(of([{ material: 'clay', thicknessMm: 50 }]).drain).toBeNull();
    expect(of([{ material: 'base', thicknessMm: 50 }]).drain).toBeNull();
  });
});
