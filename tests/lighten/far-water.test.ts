/** Water behind a blocked outlet is told of the worst bay alone: once that is mended, the next comes up, which no change has reached. */

import { expect, it } from 'vitest';
import type { SceneMaterial } from '../../src/model/scene-file.ts';
import { lighten } from '../helpers/lightened.ts';
import { bay, buildUp, findingsOf, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const FILLS: readonly SceneMaterial[] = [
  { id: 'heavy', name: 'Heavy fill', role: 'light fill', density: { dry: 1000, saturated: 1000 } },
  { id: 'foam', name: 'Foam fill', role: 'light fill', density: { dry: 50, saturated: 50 } },
];
/** Level, 3 m wide; both beds are 0.30 m high, the overflow lies at 0.35 m: 0.05 · 9.81 = 0.4905 kN/m² of water on them. */
const SCENE = sceneOf({
  materials: [...MATERIALS, ...FILLS],
  deck: {
    outline: rect(0, 0, 24, 3),
    rootResistant: true,
    levels: { spots: rect(0, 0, 24, 3).map(([x, y]) => [x, y, 0] as const) },
    // Dry and wet: A 2.86452 and 3.35502, C the same, B 4.4145 and 4.905 kN/m². A is over dry; of the others C is the worst, then B.
    bays: [
      bay('A', rect(0, 0, 6, 3), { permanentKNm2: 2.5 }),
      bay('C', rect(6, 0, 12, 3), { permanentKNm2: 2.9 }),
      bay('B', rect(16, 0, 24, 3), { permanentKNm2: 4.7 }),
    ],
    outlets: [
      { id: 'O1', at: [14, 0.1], kind: 'outlet', lps: 9 },
      { id: 'V1', at: [14, 2.9], kind: 'overflow', lps: 9, invertM: 0.35 },
    ],
  },
  buildups: [
    buildUp('light', [{ material: 'sheet' }, { material: 'heavy', thicknessMm: 290 }]),
    buildUp('deep', [{ material: 'soil', thicknessMm: 300 }]),
  ],
  zones: [zone('Z1', rect(0, 0, 12, 3), 'light'), zone('Z2', rect(16, 0, 24, 3), 'deep')],
});
const wetBays = (scene: typeof SCENE) => findingsOf(read(scene), 'water.pond').map(({ severity, where }) => [severity, where.bay]);

it('takes no change away, and is told', () => {
  expect(wetBays(SCENE)).toEqual([['stop', 'C']]);
  const { variants, leftOut } = lighten(read(SCENE), { aims: ['change'], fills: ['foam'], means: ['fill', 'split'] });
  expect(leftOut).toEqual([]);
  // 292 kg/m² less 0.95 for each millimetre of foam, and the water, within 2.5 kN/m²: 292 − 204.84 = 87.2; 91.7 mm, in steps of 10 mm 100.
  expect(variants.map(({ exchangedM3, unmet }) => [exchangedM3, unmet])).toEqual([[expect.closeTo(0.1 * 36, 9), []]]);
  expect(wetBays(variants[0].scene)).toEqual([['stop', 'B']]);
  expect(variants[0].newFindings.map(({ rule, where }) => [rule, where.bay])).toContainEqual(['water.pond', 'B']);
});
