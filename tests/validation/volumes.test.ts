/**
 * Volumes of earthwork, found as volumes of a make-up layer between two surfaces.
 *
 * [read] trapezoidal sums: sections 40, 50, 80 m² at 20 m, 2200 m³: civinnovate.com, "explanation-6"; sections 12.5 … 17 m² at 10 m
 *        (data printed at askfilo), 896.5 m³ by hand.
 * [read] spot-height rule V = A/4 · (Σh₁ + 2Σh₂ + 3Σh₃ + 4Σh₄): expertsmind.com, question 91967; its numbers here are our own example.
 * [by hand] prismoidal frustum and cut and fill in one triangle (check values, 12.7).
 */

import { describe, expect, it } from 'vitest';
import type { Point3M, SceneBuildUp, SceneMaterial, SceneZone } from '../../src/model/scene-file.ts';
import type { Project } from '../../src/project/evaluate-project.ts';
import { buildUp, byId, findingsOf, read, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

/** 1000 / 9.81 kg/m³: one cubic metre weighs one kilonewton. */
const KILONEWTON: SceneMaterial = {
  id: 'fill',
  name: 'Fill',
  role: 'light fill',
  density: { dry: 1000 / 9.81, saturated: 1000 / 9.81 },
};

function fill(min: number, max: number): SceneBuildUp {
  return buildUp('fill', [{ material: 'fill', thicknessMm: { min, max, nominal: min } }]);
}

function volumeM3(project: Project, id = 'Z1'): number {
  const { areaM2, makeUpMm } = byId(project.report.zones, id);
  if (makeUpMm === null) throw new Error('no make-up layer');
  return (areaM2 * makeUpMm.mean) / 1000;
}

describe('trapezoidal sums of sections', () => {
  function sections(areasM2: readonly number[], apartM: number, widthM: number): number {
    const outline = rect(0, 0, apartM * (areasM2.length - 1), widthM);
    const line = (y: number) => areasM2.map((area, i): Point3M => [i * apartM, y, area / widthM]);
    const across = areasM2.map((area, i): Point3M[] => [
      [i * apartM, 0, area / widthM],
      [i * apartM, widthM, area / widthM],
    ]);
    const finish = { kind: 'spots' as const, spots: [...line(0), ...line(widthM)], breaklines: across };
    const project = read(
      sceneOf({ deck: { outline }, materials: [KILONEWTON], buildups: [fill(10, 2000)], zones: [zone('Z1', outline, 'fill', { finish })] }),
      0.5,
    );
    expect(project.report.deck.saturatedKN).toBeCloseTo(volumeM3(project), 8);
    return volumeM3(project);
  }

  it('three sections at 20 m', () => {
    expect(sections([40, 50, 80], 20, 100)).toBeCloseTo(2200, 8); // printed 2200
  });

  it('six sections at 10 m', () => {
    // by hand: 10 · (12.5/2 + 16 + 18.4 + 21 + 19.5 + 17/2)
    expect(sections([12.5, 16, 18.4, 21, 19.5, 17], 10, 50)).toBeCloseTo(896.5, 8);
  });
});

describe('spot-height rule on 2 × 2 squares of 5 m', () => {
  const HEIGHTS = [
    [0.4, 0.55, 0.62],
    [0.48, 0.6, 0.7],
    [0.3, 0.52, 0.66],
  ];
  const at = (i: number, j: number): Point3M => [5 * i, 5 * j, HEIGHTS[j][i]];
  const middle = (i: number, j: number): Point3M => [
    5 * i + 2.5,
    5 * j + 2.5,
    (HEIGHTS[j][i] + HEIGHTS[j][i + 1] + HEIGHTS[j + 1][i] + HEIGHTS[j + 1][i + 1]) / 4,
  ];
  // With the mean of its four corners in the middle of a square, four triangles hold area · mean height, which is the rule.
  const spots: Point3M[] = [middle(0, 0), middle(1, 0), middle(0, 1), middle(1, 1)];
  const breaklines: Point3M[][] = [0, 1, 2].flatMap((k) => [
    [at(0, k), at(1, k), at(2, k)],
    [at(k, 0), at(k, 1), at(k, 2)],
  ]);
  const finish = { kind: 'spots' as const, spots, breaklines };
  const outline = rect(0, 0, 10, 10);
  const squares: SceneZone[] = [
    zone('SW', rect(0, 0, 5, 5), 'fill', { finish }),
    zone('SE', rect(5, 0, 10, 5), 'fill', { finish }),
    zone('NW', rect(0, 5, 5, 10), 'fill', { finish }),
    zone('NE', rect(5, 5, 10, 10), 'fill', { finish }),
  ];
  const run = (zones: SceneZone[], cellM: number, deck = {}) =>
    read(sceneOf({ deck: { outline, ...deck }, materials: [KILONEWTON], buildups: [fill(10, 2000)], zones }), cellM);

  it('is met exactly by one cell per square, which takes the height in its middle', () => {
    const project = run(squares, 5);
    expect(volumeM3(project, 'SW')).toBeCloseTo(12.6875, 9); // by hand: see below
    expect(project.report.deck.saturatedKN).toBeCloseTo(55.5, 9);
  });

  it.each([
    ['SW', 12.6875], // by hand: 25 · (0.40 + 0.55 + 0.48 + 0.60) / 4
    ['SE', 15.4375], // by hand: 25 · (0.55 + 0.62 + 0.60 + 0.70) / 4
    ['NW', 11.875], // by hand: 25 · (0.48 + 0.60 + 0.30 + 0.52) / 4
    ['NE', 15.5], // by hand: 25 · (0.60 + 0.70 + 0.52 + 0.66) / 4
  ])('square %s', (id, expected) => {
    // Ridges between triangles are cut by cells of 5 cm: error of the order of slope change · cell² · length of ridge, 1e-3.
    expect(Math.abs(volumeM3(run(squares, 0.05), id) - expected)).toBeLessThan(2e-3);
  });

  it('the whole', () => {
    // by hand: 25/4 · (0.40 + 0.62 + 0.30 + 0.66 + 2 · (0.55 + 0.48 + 0.70 + 0.52) + 4 · 0.60) = 6.25 · 8.88
    expect(Math.abs(volumeM3(run([zone('Z1', outline, 'fill', { finish })], 0.05)) - 55.5)).toBeLessThan(5e-3);
  });

  it('the same between a sunken membrane and a level finish', () => {
    const sunk = (points: readonly Point3M[]): Point3M[] => points.map(([x, y, h]) => [x, y, -h]);
    const levels = { spots: sunk(spots), breaklines: breaklines.map(sunk) };
    const project = run([zone('Z1', outline, 'fill', { finish: { kind: 'level', levelM: 0 } })], 0.05, { levels });
    expect(Math.abs(volumeM3(project) - 55.5)).toBeLessThan(5e-3);
  });
});

describe('frustum of 10 × 6 to 16 × 12 m, 3 m high', () => {
  const outline = rect(0, 0, 16, 12);
  const edge = [...rect(0, 0, 16, 12), [0, 0] as const].map(([x, y]): Point3M => [x, y, 0]);
  const floor = [...rect(3, 3, 13, 9), [3, 3] as const].map(([x, y]): Point3M => [x, y, -3]);
  const hips = [0, 1, 2, 3].map((k): Point3M[] => [edge[k], floor[k]]);
  const volume = (cellM: number) => {
    const deck = { outline, levels: { spots: [], breaklines: [edge, floor, ...hips] } };
    const zones = [zone('Z1', outline, 'fill', { finish: { kind: 'level', levelM: 0.5 } })];
    return volumeM3(read(sceneOf({ deck, materials: [KILONEWTON], buildups: [fill(500, 5000)], zones }), cellM)) - 0.5 * 192;
  };

  // by hand: prismoidal rule 3/6 · (60 + 4 · 117 + 192) = 360. The centre of a cell cut by a hip along its diagonal lies c/6 deeper
  // than the cell's mean; four hips of 3/c cells: 360 + 4 · (3/c) · (c/6) · c² = 360 + 2c².
  it.each([1, 0.5, 0.25, 0.1])('cells of %f m', (cellM) => {
    expect(volume(cellM)).toBeCloseTo(360 + 2 * cellM ** 2, 7);
  });
});

describe('cut and fill inside one triangle of 12.5 m²', () => {
  const triangle: [number, number][] = [
    [0, 0],
    [5, 0],
    [0, 5],
  ];
  const finish = {
    kind: 'spots' as const,
    // Heights +0.3, +0.1 and −0.2 over a make-up of at least 0.5 m.
    spots: [
      [0, 0, 0.8],
      [5, 0, 0.6],
      [0, 5, 0.3],
    ] as Point3M[],
  };
  const project = read(
    sceneOf({
      deck: { outline: triangle },
      materials: [KILONEWTON],
      buildups: [fill(500, 2000)],
      zones: [zone('Z1', triangle, 'fill', { finish })],
    }),
    0.05,
  );

  it('fills 1.0556 m³ above the least make-up', () => {
    // by hand: the zero line cuts 0.2/0.5 and 0.2/0.3 of two sides: cut 12.5 · 0.4 · 2/3 · 0.2/3 = 0.222222, net 12.5 · 0.2/3 = 0.833333
    expect(Math.abs(volumeM3(project) - 12.5 * 0.5 - 1.055556)).toBeLessThan(5e-4);
  });

  it('tells the area without room', () => {
    // by hand: held back by more than 1 mm: 12.5 · (0.199/0.5) · (0.199/0.3) = 3.300083 m²; cells are counted whole by their centre:
    // the line is about 3.3 m long, on average half the cells on it fall on each side.
    expect(Math.abs(project.report.zones[0].shortM2 - 3.300083)).toBeLessThan(0.04);
    const [short] = findingsOf(project, 'depth.short');
    expect(short.severity).toBe('stop');
    expect(short.value).toBeCloseTo(project.report.zones[0].shortM2, 12);
  });
});
