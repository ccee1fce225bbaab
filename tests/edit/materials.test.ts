/** A scene's own materials, and slips of the pen in them. */

import { describe, expect, it } from 'vitest';
import { dropMaterial, materialDoubts, putMaterial } from '../../src/edit/materials.ts';
import type { SceneFile, SceneMaterial } from '../../src/model/scene-file.ts';
import { sceneOf } from '../helpers/scene-builder.ts';

const LAVA: SceneMaterial = { id: 'lava-8-16', name: 'Lava of the quarry', role: 'drainage fill', density: { dry: 1000, saturated: 1200 } };
const FLEECE: SceneMaterial = { id: 'f', name: 'Fleece', role: 'protection', areal: { dry: 0.5, saturated: 3.5 } };

describe('own materials', () => {
  const { materials: _, ...bare } = sceneOf();
  const scene: SceneFile = bare;

  it('are added, replaced by their id, and go without leaving an empty list', () => {
    const one = { ...scene, ...putMaterial(scene, LAVA) } as SceneFile;
    expect(one.materials).toEqual([LAVA]);
    const other = { ...one, ...putMaterial(one, { ...LAVA, name: 'Other' }) } as SceneFile;
    expect(other.materials?.map(({ name }) => name)).toEqual(['Other']);
    expect(dropMaterial(other, 'lava-8-16')).toEqual({ materials: null });
  });
});

describe('slips of the pen', () => {
  const asked = (material: SceneMaterial) => materialDoubts(material).map(({ why, found, meant }) => [why, found, meant]);

  it('none in sound data sheets', () => {
    expect(asked(LAVA)).toEqual([]);
    expect(asked(FLEECE)).toEqual([]);
    // Polystyrene of 20 kg/m³ and a slip sheet of 0.2 mm are what they are.
    expect(asked({ id: 'e', name: 'e', role: 'light fill', density: { dry: 20, saturated: 50 } })).toEqual([]);
    expect(asked({ id: 's', name: 's', role: 'slip', areal: { dry: 0.18, saturated: 0.18 }, thicknessMm: 0.2 })).toEqual([]);
  });

  it('tonnes per cubic metre: 1.8 is 1800 kg/m³', () => {
    const [doubt] = materialDoubts({ ...LAVA, density: { dry: 1.5, saturated: 1.8 } });
    expect([doubt.why, doubt.found, doubt.meant]).toEqual(['t/m³', 1.5, 1500]);
    expect(doubt.mended?.density).toEqual({ dry: 1500, saturated: 1.8 });
    expect(asked({ ...LAVA, density: { dry: 1500, saturated: 1.8 } })).toEqual([
      ['t/m³', 1.8, 1800],
      ['saturated below dry', 1.8, 1500],
    ]);
  });

  // 18 kN/m³ / 9.81 m/s² = 1834.9 kg/m³.
  it('kilonewtons per cubic metre: 18 is 1835 kg/m³', () => {
    expect(asked({ ...LAVA, density: { dry: 1700, saturated: 18 } })[0]).toEqual(['kN/m³', 18, 1835]);
  });

  it('grams per square metre: a fleece of 500 is 0.5 kg/m²', () => {
    expect(asked({ ...FLEECE, areal: { dry: 500, saturated: 3.5 } })).toContainEqual(['g/m²', 500, 0.5]);
  });

  it('thickness in metres or centimetres', () => {
    const element: SceneMaterial = { id: 'd', name: 'd', role: 'drainage element', areal: { dry: 2, saturated: 2 }, thicknessMm: 0.06 };
    expect(asked(element)).toEqual([['m', 0.06, 60]]);
    expect(asked({ ...element, thicknessMm: 6 })).toEqual([['cm', 6, 60]]);
  });

  it('saturated lighter than dry', () => {
    const [doubt] = materialDoubts({ ...LAVA, density: { dry: 1300, saturated: 1100 } });
    expect(doubt.mended?.density).toEqual({ dry: 1100, saturated: 1300 });
  });

  it('heavier than steel in bulk: asked, and nothing proposed', () => {
    expect(asked({ ...LAVA, density: { dry: 1300, saturated: 18000 } })).toEqual([['unusual', 18000, null]]);
  });
});
