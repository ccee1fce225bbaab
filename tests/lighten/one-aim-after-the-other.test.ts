/** What is found for one aim does not depend on the aims that were searched for before: each goes on from the trial made last. */

import { expect, it } from 'vitest';
import { LIGHTEN_AIMS } from '../../src/model/lighten.ts';
import type { SceneMaterial } from '../../src/model/scene-file.ts';
import { lighten } from '../helpers/lightened.ts';
import { bay, buildUp, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const OUTLINE = rect(0, 0, 4, 3);
const fill = (id: string, saturated: number, amount: number): SceneMaterial => {
  return { id, name: id, role: 'light fill', density: { dry: saturated - 10, saturated }, price: { per: 'm3', amount } };
};
const FILLS = [fill('heavy', 1000, 20), fill('light', 300, 60), fill('foam', 50, 120)];
const LAYERS = [
  { material: 'sheet' },
  { material: 'light', thicknessMm: 80 },
  { material: 'cloth' },
  { material: 'heavy', thicknessMm: { min: 50, max: 1000, nominal: 200 } },
  { material: 'cloth' },
  { material: 'soil', thicknessMm: 150 },
];
/** On 500 mm of room: all three fills may be exchanged and split, and several ways of it keep 2.64 kN/m². */
const SCENE = sceneOf({
  materials: [...MATERIALS.filter(({ id }) => id !== 'light'), ...FILLS].map((one) =>
    one.id === 'soil' ? { ...one, price: { per: 'm3', amount: 40 } as const } : one,
  ),
  deck: { bays: [bay('A0', OUTLINE, { permanentKNm2: 2.6367 })], rootResistant: true },
  buildups: [buildUp('bed', LAYERS)],
  zones: [zone('Z0', OUTLINE, 'bed', { finish: { kind: 'level', levelM: 0.5 } })],
});

it('all aims at once give what each gives alone', () => {
  const fills = FILLS.map(({ id }) => id);
  const project = () => read(SCENE, 0.5);
  const together = lighten(project(), { fills, means: ['fill', 'split'] });
  const alone = LIGHTEN_AIMS.flatMap((aim) => lighten(project(), { aims: [aim], fills, means: ['fill', 'split'] }).variants);
  expect(together.unsolved).toEqual([]);
  expect(together.variants).toEqual(alone);
  // 225 kg/m² of soil, 4 of sheets and 330 mm of foam at 50 kg/m³ on 12 m²: 245.5 kg/m².
  const [lightest] = together.variants.filter(({ aim }) => aim === 'weight');
  const before = 225 + 4 + 0.08 * 300 + 0.25 * 1000;
  expect(lightest.savedKN).toBeCloseTo((before - 245.5) * 9.81e-3 * 12, 6);
});
