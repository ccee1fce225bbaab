/** The heap board of small scenes by hand: soil 1500 kg/m³ saturated and 1.2 loose, light fill 300 and 1.25. */

import { describe, expect, it } from 'vitest';
import { heapMaterials } from '../../src/project/heaps.ts';
import { materialLookup } from '../../src/project/materials.ts';
import { bay, buildUp, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const heaps = (scene: ReturnType<typeof sceneOf>) => read(scene).report.bays[0].heapM;

describe('materials that can be heaped', () => {
  const namesOf = (scene: ReturnType<typeof sceneOf>) => heapMaterials(scene, materialLookup(scene)).map((material) => material.id);

  it('are the loose ones of the build-ups, each once', () => {
    const layers = [{ material: 'sheet' }, { material: 'light', thicknessMm: 100 }, { material: 'soil', thicknessMm: 100 }];
    const twice = [buildUp('a', layers), buildUp('b', [{ material: 'soil', thicknessMm: 200 }])];
    expect(namesOf(sceneOf({ buildups: twice, zones: [zone('Z1', rect(0, 0, 4, 3), 'a')] }))).toEqual(['light', 'soil']);
  });

  it('are not slabs, but a slab that the scene stacks in a stockpile is', () => {
    const paved = {
      buildups: [
        buildUp('a', [
          { material: 'soil', thicknessMm: 100 },
          { material: 'slab-80', thicknessMm: 80 },
        ]),
      ],
      zones: [zone('Z1', rect(0, 0, 4, 3), 'a')],
    };
    expect(namesOf(sceneOf(paved))).toEqual(['soil']);
    const stockpiles = [{ id: 'K1', outline: rect(0, 0, 1, 1), material: 'slab-80', heightM: 0.5 }];
    expect(namesOf(sceneOf({ ...paved, stages: [{ id: 'S1', name: 'One', stockpiles }] }))).toEqual(['soil', 'slab-80']);
  });

  it('are soils also without a compaction factor', () => {
    const soil = { id: 'plain', name: 'Plain', role: 'substrate', density: { dry: 1000, saturated: 1500 } } as const;
    const buildups = [buildUp('a', [{ material: 'plain', thicknessMm: 100 }])];
    expect(namesOf(sceneOf({ materials: [...MATERIALS, soil], buildups, zones: [zone('Z1', rect(0, 0, 4, 3), 'a')] }))).toEqual(['plain']);
  });
});

describe('heights', () => {
  it('room of 12 − 1.4715 = 10.5285 over 1500/1.2 · 9.81 = 12.2625: 0.858, so 0.85 m', () => {
    expect(heaps(sceneOf())).toEqual([{ stage: 'substrate', material: 'soil', heightM: 0.85, overKNm2: 0 }]);
  });

  it('stand on what the stage has there, its own stockpile included', () => {
    // 1.6 m of loose soil over all: 1.6 · 12.2625 = 19.62, with the soil laid 21.0915 of 25: 3.9085/12.2625 = 0.319
    const heap = (id: string) => [{ id, outline: rect(0, 0, 4, 3), material: 'soil', heightM: 1.6 }];
    const stages = [
      { id: 'S1', name: 'Heap', stockpiles: heap('K1') },
      { id: 'S2', name: 'Soil', place: [{ roles: ['substrate'] as const }], stockpiles: heap('K2') },
    ];
    const deck = { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 25 })] };
    // First stage 19.62 of 25: 5.38/12.2625 = 0.439
    expect(heaps(sceneOf({ stages, deck }))).toEqual([
      { stage: 'S1', material: 'soil', heightM: 0.4, overKNm2: 0 },
      { stage: 'S2', material: 'soil', heightM: 0.3, overKNm2: 0 },
    ]);
  });

  it('are held against the stage load where one is given: (5 − 1.4715)/12.2625 = 0.288', () => {
    const deck = { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 12, stageKNm2: 5 })] };
    expect(heaps(sceneOf({ deck }))?.[0].heightM).toBe(0.25);
  });

  it('are 0 with the overload where the bay is over: 1.4715 of 1', () => {
    const deck = { bays: [bay('A1', rect(0, 0, 4, 3), { permanentKNm2: 1 })] };
    expect(heaps(sceneOf({ deck }))?.[0]).toMatchObject({ heightM: 0, overKNm2: expect.closeTo(0.4715, 9) });
  });

  it('are not given for a bay without any deck', () => {
    const deck = { bays: [bay('B9', rect(10, 10, 12, 12)), bay('A1', rect(0, 0, 4, 3))] };
    expect(heaps(sceneOf({ deck }))).toEqual([]);
  });
});
