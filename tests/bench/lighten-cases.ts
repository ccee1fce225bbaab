/** The benchmark's cases of lightening: four beds, and twelve, over their bays, each with fills to choose from. */

import { evaluate } from '../../src/core/evaluate.ts';
import type { LightenOptions } from '../../src/model/lighten.ts';
import type { SceneMaterial } from '../../src/model/scene-file.ts';
import { lighten } from '../helpers/lightened.ts';
import { bay, buildUp, MATERIALS, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';
import { type BenchCase, prove } from './bench-case.ts';

const FILLS: readonly SceneMaterial[] = [
  { id: 'heavy', name: 'Heavy fill', role: 'light fill', density: { dry: 900, saturated: 1000 } },
  { id: 'foam', name: 'Foam fill', role: 'light fill', density: { dry: 20, saturated: 50 } },
];
const COUNTS = [4, 12];
const LIMIT_KNM2 = 5;

/** Beds of 4 m × 3 m: sheet, 390 mm of heavy fill, cloth and 200 mm of soil on 0.605 m of room; each has a bay of its own. */
function beds(count: number, cellM: number) {
  const layers = [
    { material: 'sheet' },
    { material: 'heavy', thicknessMm: { min: 50, max: 1000, nominal: 390 } },
    { material: 'cloth' },
    { material: 'soil', thicknessMm: 200 },
  ];
  const outlines = Array.from({ length: count }, (_, i) => rect(4 * i, 0, 4 * i + 4, 3));
  const scene = sceneOf({
    materials: [...MATERIALS, ...FILLS],
    deck: {
      outline: rect(0, 0, 4 * count, 3),
      bays: outlines.map((outline, i) => bay(`A${i}`, outline, { permanentKNm2: LIMIT_KNM2 })),
      rootResistant: true,
    },
    buildups: [buildUp('bed', layers)],
    zones: outlines.map((outline, i) => zone(`Z${i}`, outline, 'bed', { finish: { kind: 'level', levelM: 0.605 } })),
  });
  return read(scene, cellM);
}

/** Cases for one cell size; throws where a result is wrong, before anything is timed. */
export function lightenCases(cellM: number): BenchCase[] {
  return COUNTS.map((count) => lightenCase(count, cellM));
}

function lightenCase(count: number, cellM: number): BenchCase {
  const project = beds(count, cellM);
  const { input } = project.resolved;
  const least: LightenOptions = { aims: ['change'], fills: ['foam'], means: ['fill', 'split'] };
  const { variants } = lighten(project, least);
  // 3 + 300 + 390 kg/m² less 0.95 for each millimetre of foam, at most 5 / 0.00981 = 509.7: 193 mm, in steps of 10 mm 200, on 12 m² each.
  const isRight = variants.length === 1 && variants[0].proven && Math.abs(variants[0].exchangedM3 - 0.2 * 12 * count) < 1e-6;
  prove(isRight, 'lighten: foam brought');
  return {
    id: `lighten-${count}`,
    what: `least exchange for ${count} beds over their bays, from scene to judged scene`,
    limit: 'one full evaluation of the same scene',
    run: () => {
      lighten(project, least);
    },
    copy: () => {
      evaluate(input);
    },
    target: null,
  };
}
