/** Build-ups and their layers: what each step does to the file, and that what comes out is a scene one can open. */

import { describe, expect, it } from 'vitest';
import { addBuildUp, assignBuildUp, buildUpId, changeBuildUp, changeLayers, zonesWith } from '../../src/edit/build-ups.ts';
import {
  insertLayer,
  type Layers,
  moveLayer,
  piecesOf,
  removeLayer,
  setInfill,
  setMakeUp,
  startRange,
  stepLayer,
  swapMaterial,
} from '../../src/edit/build-ups-layers.ts';
import type { ScenePatch } from '../../src/model/history.ts';
import type { SceneFile, SceneMaterial } from '../../src/model/scene-file.ts';
import { findingsOf, MATERIALS, read, rect, SOIL_100, SOUND, sceneOf, zone } from '../helpers/scene-builder.ts';

const material = (id: string): SceneMaterial => {
  const found = MATERIALS.find((one) => one.id === id);
  if (!found) throw new Error(id);
  return found;
};

/** sheet · element with fill in its voids · cloth · soil. */
const FILLED: Layers = [
  { material: 'sheet' },
  { material: 'element', orientation: 'drained' },
  { material: 'light', infill: true, thicknessMm: 10 },
  { material: 'cloth' },
  { material: 'soil', thicknessMm: 100 },
];

const names = (layers: Layers) => layers.map((layer) => layer.material);
const patched = (scene: SceneFile, patch: ScenePatch) => ({ ...scene, ...patch }) as SceneFile;

describe('the order', () => {
  it('keeps an element and its fill together', () => {
    expect(piecesOf(FILLED)).toEqual([[0], [1, 2], [3], [4]]);
  });

  it('steps over both of them at once', () => {
    const down = stepLayer(FILLED, 3, 'down');
    expect(names(down.layers)).toEqual(['sheet', 'cloth', 'element', 'light', 'soil']);
    expect(down.index).toBe(1);
  });

  it('takes the fill along, whichever of the two is moved', () => {
    for (const index of [1, 2]) {
      const up = stepLayer(FILLED, index, 'up');
      expect(names(up.layers)).toEqual(['sheet', 'cloth', 'element', 'light', 'soil']);
      expect(up.index).toBe(index + 1);
    }
  });

  it('stops at both ends', () => {
    expect(stepLayer(FILLED, 4, 'up')).toEqual({ layers: FILLED, index: 4 });
    expect(stepLayer(FILLED, 0, 'down')).toEqual({ layers: FILLED, index: 0 });
    expect(names(moveLayer(FILLED, 0, 99).layers)).toEqual(['element', 'light', 'cloth', 'soil', 'sheet']);
  });

  it('put wrong is found by the rules: filter beneath the element', () => {
    const scene = sceneOf({ buildups: [SOUND], zones: [zone('Z1', rect(0, 0, 4, 3), 'sound')] });
    expect(findingsOf(read(scene), 'order.filter')).toEqual([]);
    const wrong = patched(
      scene,
      changeLayers(scene, 'sound', (layers) => stepLayer(layers, 2, 'down').layers),
    );
    expect(findingsOf(read(wrong), 'order.filter')).toHaveLength(1);
  });
});

describe('insert and take out', () => {
  it('never between an element and its fill', () => {
    expect(names(insertLayer(FILLED, 1, 'above', material('cloth')).layers)).toEqual([
      'sheet',
      'element',
      'light',
      'cloth',
      'cloth',
      'soil',
    ]);
    expect(names(insertLayer(FILLED, 2, 'below', material('cloth')).layers)).toEqual([
      'sheet',
      'cloth',
      'element',
      'light',
      'cloth',
      'soil',
    ]);
  });

  it('gives what is poured a thickness to begin with, a sheet none, and an element that could hold water drains until told', () => {
    expect(insertLayer(FILLED, 4, 'above', material('soil')).layers[5]).toEqual({ material: 'soil', thicknessMm: 150 });
    expect(insertLayer(FILLED, 0, 'above', material('sheet')).layers[1]).toEqual({ material: 'sheet' });
    expect(insertLayer(FILLED, 0, 'above', material('element')).layers[1]).toEqual({ material: 'element', orientation: 'drained' });
  });

  it('takes the fill out with its element, and the fill alone', () => {
    expect(names(removeLayer(FILLED, 1))).toEqual(['sheet', 'cloth', 'soil']);
    expect(names(removeLayer(FILLED, 2))).toEqual(['sheet', 'element', 'cloth', 'soil']);
  });
});

describe('another material', () => {
  it('keeps the thickness of what is poured', () => {
    expect(swapMaterial(FILLED, 4, material('soil'), material('light'))?.[4]).toEqual({ material: 'light', thicknessMm: 100 });
  });

  it('of a sheet has its own thickness, and no range', () => {
    const ranged: Layers = [{ material: 'light', thicknessMm: { min: 50, nominal: 100, max: 200 } }];
    expect(swapMaterial(ranged, 0, material('light'), material('cloth'))).toEqual([{ material: 'cloth' }]);
  });

  it('is refused where the fill above would lose its voids', () => {
    expect(swapMaterial(FILLED, 1, material('element'), material('cloth'))).toBeNull();
  });
});

describe('make-up layer and fill', () => {
  it('is one at most: the former keeps its nominal thickness', () => {
    const before: Layers = [
      { material: 'light', thicknessMm: { min: 50, nominal: 120, max: 200 } },
      { material: 'soil', thicknessMm: 100 },
    ];
    expect(setMakeUp(before, 1, { min: 50, nominal: 100, max: 200 }).map((layer) => layer.thicknessMm)).toEqual([
      120,
      { min: 50, nominal: 100, max: 200 },
    ]);
    expect(setMakeUp(before, 0, null)[0].thicknessMm).toBe(120);
  });

  it('starts with half to twice of what it was, in whole centimetres', () => {
    expect(startRange(250)).toEqual({ min: 120, nominal: 250, max: 500 });
    expect(startRange(15)).toEqual({ min: 1, nominal: 15, max: 30 });
  });

  // 60 mm poured on an element with voids of 40 l/m² = 40 mm: 40 fill them, 20 lie above; and back again.
  it('has the same volume in the voids and out of them', () => {
    const poured: Layers = [{ material: 'element' }, { material: 'light', thicknessMm: 60 }];
    const filled = setInfill(poured, 1, true, 40);
    expect(filled[1]).toEqual({ material: 'light', infill: true, thicknessMm: 20 });
    expect(setInfill(filled, 1, false, 40)[1]).toEqual({ material: 'light', thicknessMm: 60 });
  });
});

describe('build-ups of a scene', () => {
  const scene = sceneOf({
    buildups: [SOIL_100, SOUND],
    zones: [zone('A', rect(0, 0, 2, 3), 'soil-100'), zone('B', rect(2, 0, 4, 3), 'sound')],
  });

  it('are added with an id that is free, laid in the zones named', () => {
    const id = buildUpId(scene, 'sound');
    expect(id).toBe('sound-2');
    const after = patched(scene, addBuildUp(scene, { ...SOUND, id }, ['B']));
    expect([zonesWith(after, 'sound'), zonesWith(after, id)]).toEqual([[], ['B']]);
    expect(read(after).report.zones).toHaveLength(2);
  });

  it('leave zones and build-ups that they are not about the very same', () => {
    const { zones } = assignBuildUp(scene, 'soil-100', ['A', 'B']);
    expect(zones?.[0]).toBe(scene.zones[0]);
    expect(changeBuildUp(scene, 'sound', { name: 'New' }).buildups?.[0]).toBe(SOIL_100);
  });

  it('lose what is taken out of them', () => {
    const planted = patched(scene, changeBuildUp(scene, 'sound', { vegetation: { form: 'lawn', kNm2: 0.05 } }));
    expect(planted.buildups[1].vegetation).toEqual({ form: 'lawn', kNm2: 0.05 });
    expect('vegetation' in patched(planted, changeBuildUp(planted, 'sound', { vegetation: null })).buildups[1]).toBe(false);
  });
});
