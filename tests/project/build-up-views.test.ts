/** Build-ups as the app lists and edits them: what they are made of, weigh and hold, and where they lie. */

import { expect, it } from 'vitest';
import { buildUpViews } from '../../src/project/build-up-views.ts';
import { bay, MAKE_UP, read, rect, SOIL_100, SOUND, sceneOf, zone } from '../helpers/scene-builder.ts';

/** Zone A with the make-up build-up, finished at 0.5; zone B with 0.1 m of soil; two bays that part at x = 3. */
const TWO = sceneOf({
  deck: { bays: [bay('A1', rect(0, 0, 3, 3)), bay('A2', rect(3, 0, 4, 3))] },
  buildups: [MAKE_UP, SOIL_100, SOUND],
  zones: [zone('A', rect(0, 0, 2, 3), 'make-up', { finish: { kind: 'level', levelM: 0.5 } }), zone('B', rect(2, 0, 4, 3), 'soil-100')],
});

it('lists zones, thicknesses and what can be set', () => {
  const [makeUp, soil] = buildUpViews(read(TWO), 'en');
  expect([makeUp.id, makeUp.zones, soil.zones]).toEqual(['make-up', ['A'], ['B']]);
  expect(makeUp.layers.map((l) => [l.materialId, l.thicknessMm, l.rangeMm, l.adjustable])).toEqual([
    ['sheet', 10, null, false],
    ['light', 200, { min: 50, max: 2000 }, true],
    ['soil', 100, null, true],
  ]);
  expect(soil.layers[0].source).toBe('scene file, no source given');
});

it('says on how much deck and on which bays they lie', () => {
  const [makeUp, soil, sound] = buildUpViews(read(TWO), 'en');
  // A is 2 m × 3 m within A1; B 2 m × 3 m, one metre of it in each bay; SOUND is in no zone.
  expect([makeUp.areaM2, makeUp.bays]).toEqual([expect.closeTo(6, 9), ['A1']]);
  expect([soil.areaM2, soil.bays]).toEqual([expect.closeTo(6, 9), ['A1', 'A2']]);
  expect([sound.areaM2, sound.bays]).toEqual([0, []]);
});

it('weighs them with the make-up layer at its nominal thickness, whatever the zones make of it', () => {
  const [makeUp, , sound] = buildUpViews(read(TWO), 'en');
  // Light fill 300 kg/m³ saturated: 0.2 m · 300 · 9.81/1000 = 0.5886; sheet 2 kg/m² = 0.01962; soil 0.1 m · 1500 = 1.4715.
  expect(makeUp.layers[1].load.saturatedKNm2).toBeCloseTo(0.5886, 9);
  expect(makeUp.sum).toMatchObject({ depthMm: expect.closeTo(310, 9), saturatedKNm2: expect.closeTo(0.5886 + 0.01962 + 1.4715, 9) });
  // 2 + 23 + 1 + 150 = 176 kg/m² saturated, of it 20 l/m² in the element; the soil holds what its capacity says.
  expect(sound.sum.saturatedKNm2).toBeCloseTo(1.72656, 9);
  expect(sound.layers[1].load.heldLm2).toBeCloseTo(20, 9);
});
