/** Twelve beds side by side in one bay: as many as once took the search minutes, with answers worked out by hand. */

import { describe, expect, it } from 'vitest';
import type { SceneMaterial } from '../../src/model/scene-file.ts';
import { lighten } from '../helpers/lightened.ts';
import { bay, buildUp, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

const FILLS: readonly SceneMaterial[] = [
  { id: 'heavy', name: 'Heavy fill', role: 'light fill', density: { dry: 900, saturated: 1000 } },
  { id: 'foam', name: 'Foam fill', role: 'light fill', density: { dry: 20, saturated: 50 } },
];
const BEDS = 12;

/** Beds of 3 m length: sheet 2 kg/m², 390 mm of heavy fill, cloth 1 kg/m² and 200 mm of soil on 0.605 m of room; 6.80 kN/m². */
function beds(widthM: number, permittedKNm2: (bed: number) => number, baysOf = 1) {
  const layers = [
    { material: 'sheet' },
    { material: 'heavy', thicknessMm: { min: 50, max: 1000, nominal: 390 } },
    { material: 'cloth' },
    { material: 'soil', thicknessMm: 200 },
  ];
  // Between bays 2 m lie bare: no window sees beds of both.
  const perBay = BEDS / baysOf;
  const leftM = (bed: number) => bed * widthM + Math.floor(bed / perBay) * 2;
  const strip = (first: number, count: number) => rect(leftM(first), 0, leftM(first + count - 1) + widthM, 3);
  const bays = Array.from({ length: baysOf }, (_, i) => bay(`A${i}`, strip(i * perBay, perBay), { permanentKNm2: permittedKNm2(i) }));
  const zones = Array.from({ length: BEDS }, (_, i) => zone(`Z${i}`, strip(i, 1), 'bed', { finish: { kind: 'level', levelM: 0.605 } }));
  const deck = { outline: strip(0, BEDS), bays, rootResistant: true };
  return read(sceneOf({ materials: [...MATERIALS, ...FILLS], deck, buildups: [buildUp('bed', layers)], zones }));
}

const leastExchange = (project: ReturnType<typeof beds>) =>
  lighten(project, { aims: ['change'], fills: ['foam'], means: ['fill', 'split'] }).variants[0];

/** Foam needed under a limit, in steps of 10 mm: 303 + 390 kg/m² less 0.95 for each millimetre. */
const foamMm = (permittedKNm2: number) => 10 * Math.ceil((693 - permittedKNm2 / 9.81e-3) / 0.95 / 10);

describe('twelve beds', () => {
  it('of 4 m, each seen by windows of its own: 200 mm of foam in all of them', () => {
    // 693 − 5 / 0.00981 = 183.3 kg/m²: 193 mm.
    expect(foamMm(5)).toBe(200);
    const { exchangedM3, proven, unmet, zones } = leastExchange(beds(4, () => 5));
    expect([proven, unmet, zones.length]).toEqual([true, [], BEDS]);
    expect(exchangedM3).toBeCloseTo(0.2 * BEDS * 4 * 3, 6);
  });

  it('of 1 m, each window over two of them: none can do with less beside the others', () => {
    // The window nearest to a bed's middle holds 0.875 of it and 0.125 of one beside it, on either side: 190 mm there would want
    // (193 − 0.875 · 190) / 0.125 = 214 mm, 220 in steps, on both sides, which is more than 200 for all.
    const { exchangedM3, proven } = leastExchange(beds(1, () => 5));
    expect(proven).toBe(true);
    expect(exchangedM3).toBeCloseTo(0.2 * BEDS * 1 * 3, 6);
  });

  it('of 4 m in three bays: every bay for itself', () => {
    // 6, 5 and 4 kN/m²: 693 − 611.6 = 81.4, 183.3 and 285.2 kg/m²; 85.7, 193 and 300.2 mm.
    expect([6, 5, 4].map(foamMm)).toEqual([90, 200, 310]);
    const { exchangedM3, proven, unmet } = leastExchange(beds(4, (i) => [6, 5, 4][i] ?? 0, 3));
    expect([proven, unmet]).toEqual([true, []]);
    expect(exchangedM3).toBeCloseTo((0.09 + 0.2 + 0.31) * 4 * 4 * 3, 6);
  });
});
