/** Small valid scenes for tests: a rectangular deck with one bay, round densities, and ways to read what comes out. Invented places. */

import type {
  PointM,
  PolygonM,
  SceneBay,
  SceneBuildUp,
  SceneDeck,
  SceneFile,
  SceneLayer,
  SceneMaterial,
  SceneZone,
} from '../../src/model/scene-file.ts';
import { type Project, readProject } from '../../src/project/evaluate-project.ts';

/** Loads of 1000 kg/m³ over 1 m: 9.81 kN/m². */
export const GRAVITY = 9.81;

/** Round weights, so that loads can be worked out in the head. */
export const MATERIALS: readonly SceneMaterial[] = [
  { id: 'sheet', name: 'Sheet', role: 'protection', areal: { dry: 1, saturated: 2 }, thicknessMm: 10 },
  {
    id: 'element',
    name: 'Element',
    role: 'drainage element',
    areal: { dry: 3, saturated: 3 },
    thicknessMm: 50,
    voidLm2: 40,
    retentionLm2: 20,
  },
  { id: 'cloth', name: 'Cloth', role: 'filter', areal: { dry: 1, saturated: 1 }, thicknessMm: 5 },
  { id: 'light', name: 'Light fill', role: 'light fill', density: { dry: 200, saturated: 300 }, compactionFactor: 1.25 },
  {
    id: 'soil',
    name: 'Soil',
    role: 'substrate',
    density: { dry: 1000, saturated: 1500 },
    compactionFactor: 1.2,
    waterCapacityPercent: 40,
  },
];

/** Rectangle by its lower left and upper right corners, counter-clockwise. */
export function rect(x0: number, y0: number, x1: number, y1: number): PointM[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** A bay with a complete basis and, unless told otherwise, 12 permanent and 5 imposed. */
export function bay(id: string, outline: PolygonM, limits: Partial<SceneBay> = { permanentKNm2: 12, imposedKNm2: 5 }): SceneBay {
  return { id, outline, basis: { document: 'load plan', revision: 'A', date: '2026-01-05' }, ...limits };
}

/** A build-up without vegetation. */
export function buildUp(id: string, layers: readonly SceneLayer[], more: Partial<SceneBuildUp> = {}): SceneBuildUp {
  return { id, name: id, layers, ...more };
}

/** A zone with a finish by build-up. */
export function zone(id: string, outline: PolygonM, buildup: string, more: Partial<SceneZone> = {}): SceneZone {
  return { id, outline, buildup, ...more };
}

/** 0.10 m of soil: 0.981 dry and 1.4715 saturated [kN/m²]. */
export const SOIL_100: SceneBuildUp = buildUp('soil-100', [{ material: 'soil', thicknessMm: 100 }]);

/** Sheet, element that holds 20 l/m², cloth and 0.10 m of soil: 2 + 23 + 1 + 150 = 176 kg/m², 1.72656 saturated [kN/m²]; breaks no rule. */
export const SOUND: SceneBuildUp = buildUp('sound', [
  { material: 'sheet' },
  { material: 'element', orientation: 'retention' },
  { material: 'cloth' },
  { material: 'soil', thicknessMm: 100 },
]);

/** Sheet, light fill of 50 to 2000 mm as make-up layer (200 nominal), 0.10 m of soil: 0.11 m besides the make-up. */
export const MAKE_UP: SceneBuildUp = buildUp('make-up', [
  { material: 'sheet' },
  { material: 'light', thicknessMm: { min: 50, max: 2000, nominal: 200 } },
  { material: 'soil', thicknessMm: 100 },
]);

export type SceneParts = Partial<Omit<SceneFile, 'deck'>> & { readonly deck?: Partial<SceneDeck> };

/** Scene parts with the sound build-up on the whole deck of 4 m × 3 m. */
export const ON_SOUND = { buildups: [SOUND], zones: [zone('Z1', rect(0, 0, 4, 3), 'sound')] } as const;

/** A whole scene: deck 4 m × 3 m, one bay and one zone over it, build-up of 0.10 m soil; anything may be replaced. */
export function sceneOf(parts: SceneParts = {}): SceneFile {
  const outline = parts.deck?.outline ?? rect(0, 0, 4, 3);
  return {
    format: 'loamdeck-scene',
    version: 1,
    name: 'Test deck',
    materials: MATERIALS,
    buildups: [SOIL_100],
    zones: [zone('Z1', outline, 'soil-100')],
    ...parts,
    deck: { outline, bays: [bay('A1', outline)], ...parts.deck },
  };
}

/** Reads and evaluates a scene by way of its text, as a file would be; a refusal fails the test with its messages. */
export function read(scene: SceneFile, cellM?: number): Project {
  const reading = readProject(JSON.stringify(scene), cellM);
  if (reading.project === null) throw new Error(reading.issues.map((issue) => `${issue.code} ${issue.path}: ${issue.got}`).join('\n'));
  return reading.project;
}

/** Report entry by id. */
export function byId<T extends { readonly id: string }>(list: readonly T[], id: string): T {
  const found = list.find((entry) => entry.id === id);
  if (found === undefined) throw new Error(`nothing has the id ${id}`);
  return found;
}

/** Findings of one rule. */
export function findingsOf(project: Project, rule: string) {
  return project.report.findings.filter((finding) => finding.rule === rule);
}

/** A generator of numbers in 0 … 1 that gives the same ones for the same seed (linear congruential, modulo 2³²). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
