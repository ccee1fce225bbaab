/** The lightener lightens the text of a scene, and its answer opens as a scene. */

import { expect, it } from 'vitest';
import { createEngine } from '../../src/worker/engine.ts';
import { createLightener } from '../../src/worker/lightener.ts';
import { bay, buildUp, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

it('opens the lightened scene: soil goes over to foam until 4 kN/m² are kept', async () => {
  const outline = rect(0, 0, 4, 3);
  const layers = [
    { material: 'sheet' },
    { material: 'expanded-clay', thicknessMm: { min: 50, max: 900, nominal: 500 } },
    { material: 'cloth' },
    { material: 'soil', thicknessMm: 150 },
  ];
  // Sheet 2, cloth 1, 0.50 m of expanded clay at 520 and 0.15 m of soil at 1500 kg/m³: 488 kg/m² = 4.787 kN/m².
  const scene = sceneOf({
    deck: { bays: [bay('A1', outline, { permanentKNm2: 4 })] },
    buildups: [buildUp('bed', layers)],
    zones: [zone('Z1', outline, 'bed')],
  });
  const engine = createEngine();
  const opened = await engine.open(JSON.stringify(scene));
  if (!opened.ok) throw new Error('the scene does not open');
  expect(opened.snapshot.report.bays[0].permanent.patchKNm2).toBeCloseTo(488 * 9.81e-3, 9);
  const { text } = await engine.sceneText('copy');
  const rounds: number[] = [];
  const options = { aims: ['change'], fills: ['foam-glass', 'eps-block'] } as const;
  const { variants } = await createLightener().lighten({ text, language: 'en', options }, ({ baysLeft }) => rounds.push(baysLeft));
  // One bay: over its limit at first, and kept at last.
  expect([rounds[0], rounds.at(-1)]).toEqual([1, 0]);
  const answer = await engine.open(JSON.stringify(variants[0].scene));
  if (!answer.ok) throw new Error('the answer does not open');
  // EPS at 50 kg/m³ takes 470 kg/m³ off: (488 − 4 / 0.00981) / 470 = 0.17077 m, in steps of 10 mm 0.18 m: 403.4 kg/m².
  expect(answer.snapshot.report.bays[0].permanent.patchKNm2).toBeCloseTo(403.4 * 9.81e-3, 9);
  expect(variants[0].exchangedM3).toBeCloseTo(12 * 0.18, 9);
});
