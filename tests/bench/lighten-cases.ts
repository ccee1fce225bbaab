/** The benchmark's cases of lightening: four beds, and twelve, over their bays, each with fills to choose from; and the solver alone. */

import { evaluate } from '../../src/core/evaluate.ts';
import { type Menu, select } from '../../src/lighten/selection.ts';
import type { LightenOptions } from '../../src/model/lighten.ts';
import type { SceneMaterial } from '../../src/model/scene-file.ts';
import { lighten, SOLVER } from '../helpers/lightened.ts';
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
  return [...COUNTS.map((count) => lightenCase(count, cellM)), solverCase(cellM)];
}

/** Twelve menus of 0 to 39 steps that cost one each; each with its neighbour must come to 38.6. */
function solverCase(cellM: number): BenchCase {
  const { input } = beds(12, cellM).resolved;
  const steps = Float64Array.from({ length: 40 }, (_, n) => n);
  const amounts = steps.map((n) => -n);
  const pairs = Array.from({ length: 11 }, (_, l) => [l, l + 1]);
  const menus = Array.from({ length: 12 }, (_, m): Menu => {
    return { costs: steps, uses: pairs.flatMap((pair, limit) => (pair.includes(m) ? [{ limit, amounts }] : [])) };
  });
  const most = pairs.map(() => -38.6);
  const { cost, proven, failed } = select(SOLVER, menus, most);
  // Six pairs that share no menu want 39 steps each, and 20, 19, 20, 19 … does with that.
  prove(proven && failed.length === 0 && Math.abs(cost - 6 * 39) < 1e-9, 'lp: steps in all');
  return {
    id: 'lp',
    what: 'twelve menus of forty options in a chain of limits, by HiGHS',
    limit: 'one full evaluation of twelve beds',
    run: () => {
      select(SOLVER, menus, most);
    },
    copy: () => {
      evaluate(input);
    },
    target: null,
  };
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
