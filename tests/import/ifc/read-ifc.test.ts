/** Building models to outline, openings, levels and columns. Every expected number is worked out by hand from the model's own lines; see `models.ts`. */

import { describe, expect, it } from 'vitest';
import { run } from '../../../src/cli/run.ts';
import { draftIssues, draftScene } from '../../../src/import/draft-scene.ts';
import { guessRoles } from '../../../src/import/guess-roles.ts';
import { loadMesher } from '../../../src/import/ifc/web-ifc-mesher.ts';
import { importIn } from '../../../src/import/import-language.ts';
import { readingSteps } from '../../../src/import/read-drawing.ts';
import { runAtOnce } from '../../../src/import/steps.ts';
import type { Answers, ImportResult, LayerRoles } from '../../../src/model/drawing.ts';
import type { PointM } from '../../../src/model/scene-file.ts';
import { KNOWN_IDS } from '../../../src/project/materials.ts';
import { areaOf } from '../../../src/scene/ring.ts';
import { codes, only, readText, shapesOn } from '../reading.ts';
import { CLIPPED, IN_FEET, PIECES, SEVERAL_SLABS, SLOPED_FACES, TILTED_PROFILE, TURNED_SLAB } from './models.ts';

const MESHER = await loadMesher();

function readMeshed(text: string, answers: Answers = {}): ImportResult {
  return runAtOnce(readingSteps('test', new TextEncoder().encode(text), { answers, mesher: MESHER }));
}

const outlineOf = (result: ImportResult) => only(result, 'IfcSlab', 'ring');

/** Corners from the lowest x on (then the lowest y), counter-clockwise, to a micrometre. */
function cornersOf(points: readonly PointM[]): PointM[] {
  const twice = points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
  const ring = (twice > 0 ? [...points] : [...points].reverse()).map(([x, y]): PointM => [micro(x), micro(y)]);
  const first = ring.reduce((best, [x, y], i) => (x < ring[best]![0] || (x === ring[best]![0] && y < ring[best]![1]) ? i : best), 0);
  return [...ring.slice(first), ...ring.slice(0, first)];
}
const micro = (value: number) => Math.round(value * 1e6) / 1e6 + 0;

/** Levels in order of their places. */
function levelsOf(result: ImportResult): (readonly [number, number, number])[] {
  return shapesOn(result, 'IfcSlab z')
    .flatMap((shape) =>
      shape.kind === 'point' && shape.levelM !== null ? [[micro(shape.at[0]), micro(shape.at[1]), micro(shape.levelM)] as const] : [],
    )
    .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

function sceneOf(result: ImportResult) {
  const draft = draftScene(result, Object.fromEntries(guessRoles(result)) as LayerRoles);
  expect(draftIssues(draft, KNOWN_IDS)).toEqual([]);
  return draft.scene!;
}

describe('a slab with an opening and columns, turned in its storey (IFC4, millimetres)', () => {
  const result = readText(TURNED_SLAB);

  it('has the corners of its profile', () => {
    expect(codes(result)).toEqual({
      mends: ['SLAB_READ', 'SLAB_OPENINGS', 'COLUMNS_TURNED', 'UNIT_CHANGED', 'LEVELS_CHANGED'],
      issues: [],
      open: [],
    });
    const { points, holes, name } = outlineOf(result);
    expect(name).toBe('Deck Über P1');
    // (102 + 0.8 x − 0.6 y, 51 + 0.6 x + 0.8 y) of (0, 12), (0, 0), (24, 0), (24, 16), (10, 16), (10, 12).
    expect(cornersOf(points)).toEqual([
      [94.8, 60.6],
      [102, 51],
      [121.2, 65.4],
      [111.6, 78.2],
      [100.4, 69.8],
      [102.8, 66.6],
    ]);
    // The same of (4.5, 6), (4.5, 4), (7.5, 4), (7.5, 6).
    expect(holes!.map(cornersOf)).toEqual([
      [
        [102, 58.5],
        [103.2, 56.9],
        [105.6, 58.7],
        [104.4, 60.3],
      ],
    ]);
  });

  it('has its top at −1 + 0.2 m', () => {
    expect(levelsOf(result).map(([, , z]) => z)).toEqual([-0.8, -0.8, -0.8, -0.8, -0.8, -0.8]);
  });

  it('has the columns under it, each with its own size', () => {
    const { columns } = sceneOf(result).deck;
    // (102 + 0.8 x − 0.6 y, 51 + 0.6 x + 0.8 y) of (5, 2), (20, 2), (20, 14), (5, 10).
    const expected = [
      ['C1', 104.8, 55.6, 0.4, 0.6],
      ['C2', 116.8, 64.6, 0.4, 0.6],
      ['C3', 109.6, 74.2, 0.5, 0.5],
      ['C4', 100, 62, 0.5, 0.5],
    ];
    expect(columns!.map(({ id, at, sizeM }) => [id, ...[...at, ...sizeM].map(micro)])).toEqual(expected);
    expect(result.layers.find(({ name }) => name === 'IfcColumn')!.ignored).toEqual({ 'IfcColumn not under the slab': 2 });
    expect(result.mends.find(({ code }) => code === 'COLUMNS_TURNED')!.values).toMatchObject({ count: 2 });
  });

  it('counts what it leaves out', () => {
    expect(result.layers.find(({ name }) => name === 'IfcProduct')!.ignored).toEqual({ IfcWall: 2, IfcFurniture: 1 });
  });

  it('makes a scene, on the command line as well', () => {
    const scene = sceneOf(result);
    expect([scene.deck.outline.length, scene.deck.openings!.length, scene.deck.levels!.spots.length]).toEqual([6, 1, 6]);
    const bytes = new TextEncoder().encode(TURNED_SLAB);
    const roles = [...guessRoles(result)].flatMap(([layer, role]) => ['--role', `${layer}=${role}`]);
    const told = run(['import', 'deck.ifc', ...roles, '--json'], () => bytes);
    expect(told.code).toBe(0);
    expect(JSON.parse(told.out).draft.scene.deck).toEqual(scene.deck);
    expect(run(['import', 'deck.ifc', '--language', 'de'], () => bytes).out).toContain('2 Stützen nicht unter der Decke');
  });
});

describe('a sloping slab', () => {
  it('of faces gives the levels of its corners (IFC2X3, metres), and columns inserted from one shape', () => {
    const result = readText(SLOPED_FACES);
    expect(cornersOf(outlineOf(result).points)).toEqual([
      [0, 0],
      [20, 0],
      [20, 10],
      [0, 10],
    ]);
    expect(levelsOf(result)).toEqual([
      [0, 0, 0.2],
      [0, 10, 0.2],
      [20, 0, 0],
      [20, 10, 0],
    ]);
    expect(result.mends.find(({ code }) => code === 'SLAB_READ')!.values).toMatchObject({ way: 'faces', fromM: 0, toM: 0.2 });
    expect(sceneOf(result).deck.columns).toEqual([
      { id: 'K1', at: [5, 5], sizeM: [expect.closeTo(0.4, 9), expect.closeTo(0.3, 9)] },
      { id: 'K2', at: [15, 5], sizeM: [expect.closeTo(0.3, 9), expect.closeTo(0.4, 9)] },
    ]);
  });

  it('of a tilted profile too: 1 + 0.3 m at x = 0, 2 % of 20 m more at x = 20', () => {
    expect(levelsOf(readText(TILTED_PROFILE))).toEqual([
      [0, 0, 1.3],
      [0, 10, 1.3],
      [20, 0, 1.7],
      [20, 10, 1.7],
    ]);
  });

  it('cut by a plane comes from a surface, with the edge where the slope begins', () => {
    const result = readMeshed(CLIPPED);
    expect(result.issues).toEqual([]);
    const { points, holes } = outlineOf(result);
    expect(cornersOf(points)).toEqual([
      [-10, -5],
      [2.5, -5],
      [2.5, 5],
      [-10, 5],
    ]);
    expect(holes!.map(cornersOf)).toEqual([
      [
        [-1, -0.5],
        [1, -0.5],
        [1, 0.5],
        [-1, 0.5],
      ],
    ]);
    // 250 − 0.1 x millimetres, 300 at the most.
    for (const [x, , z] of levelsOf(result)) expect(z).toBeCloseTo(Math.min(0.3, 0.25 - 0.1 * x), 6);
    const folds = shapesOn(result, 'IfcSlab z').flatMap((shape) => (shape.kind === 'line' ? [shape] : []));
    expect(folds.length).toBeGreaterThan(0);
    for (const { points: ends, levelsM } of folds)
      expect([ends.map(([x]) => x), levelsM]).toEqual([
        [-0.5, -0.5],
        [0.3, 0.3],
      ]);
    expect(result.mends.find(({ code }) => code === 'SLAB_READ')!.values).toMatchObject({ way: 'mesh' });
  });

  it('cut by a plane is left out and told where no surface can be made', () => {
    const { issues } = readText(CLIPPED);
    expect(issues.map(({ code, level }) => `${level} ${code}`).sort()).toEqual(['error NO_SLAB', 'warning MODEL_SHAPE']);
  });
});

describe('curves', () => {
  it('in feet become chords within 5 mm; a foot is 0.3048 m', () => {
    const result = readText(IN_FEET);
    const { points, holes } = outlineOf(result);
    // 100 × 50 ft and half a circle of 25 ft; the chords lose at most 5 mm along π · 25 ft.
    const foot = 0.3048;
    const area = (100 * 50 + (Math.PI * 25 * 25) / 2) * foot * foot;
    expect(areaOf(points)).toBeLessThan(area);
    expect(areaOf(points)).toBeGreaterThan(area - 0.005 * Math.PI * 25 * foot);
    expect(Math.max(...points.map(([x]) => x))).toBeCloseTo(125 * foot, 9);
    const round = Math.PI * 16 * foot * foot;
    expect(areaOf(holes![0]!)).toBeLessThan(round);
    expect(areaOf(holes![0]!)).toBeGreaterThan(round - 0.005 * 2 * Math.PI * 4 * foot);
    for (const [, , z] of levelsOf(result)) expect(z).toBeCloseTo(10 * foot, 6);
    expect(result.questions.find(({ id }) => id === 'unit')).toMatchObject({ taken: 'ft', certain: true });
  });

  it('a polyline without its last edge is closed, and that is told', () => {
    const result = readText(TURNED_SLAB.replace('(1,2,3,4,5,6,1)', '(1,2,3,4,5,6)'));
    expect(outlineOf(result).points).toHaveLength(6);
    // From (0, 12) m to (0, 0).
    expect(result.mends.find(({ code }) => code === 'RINGS_CLOSED')!.values).toEqual({ count: 1, gapMm: 12000 });
  });

  it('of pieces trimmed in degrees close; openings over the edge cut it, recesses and what ends below do not', () => {
    const result = readText(PIECES);
    const { points, holes } = outlineOf(result);
    expect(holes).toBeUndefined();
    // 10 × 10 less the corner outside a quarter circle of 2 m, less 1 × 2 m of the opening that lies on the slab.
    const area = 100 - (4 - Math.PI) - 2;
    expect(areaOf(points)).toBeLessThan(area);
    expect(areaOf(points)).toBeGreaterThan(area - 0.005 * Math.PI);
    for (const corner of [
      [0, 4],
      [1, 4],
      [1, 6],
      [0, 6],
    ])
      expect(points).toContainEqual(corner);
    expect(result.mends.find(({ code }) => code === 'SLAB_OPENINGS')!.values).toEqual({ through: 1 });
    expect(result.mends.find(({ code }) => code === 'OPENINGS_LEFT')!.values).toEqual({ recesses: 1, below: 1 });
  });
});

describe('several slabs', () => {
  it('are asked about, with storey, size and level', () => {
    const result = readText(SEVERAL_SLABS);
    expect(codes(result).open).toEqual(['slab']);
    expect(result.questions.find(({ id }) => id === 'slab')!.choices.map(({ value, says }) => `${value} ${says}`)).toEqual([
      '17 "West" (IfcSlab FLOOR), storey "P", 100 m², top at 0 m',
      '37 "East" (IfcSlab FLOOR), storey "P", 100 m², top at 0 m',
      '57 "Roof" (IfcSlab FLOOR), storey "Above", 100 m², top at 3 m',
      'storey-70 Both slabs of storey "P" as one deck, 200 m², top at 0 m',
    ]);
    expect(importIn(result, 'de').questions.find(({ id }) => id === 'slab')!.says).toContain('Welche ist die Decke?');
  });

  it('give the one that is answered, or all of a storey as one', () => {
    const roof = readText(SEVERAL_SLABS, { slab: '57' });
    expect(levelsOf(roof).map(([, , z]) => z)).toEqual([3, 3, 3, 3]);
    const storey = readText(SEVERAL_SLABS, { slab: 'storey-70' });
    const both = cornersOf(outlineOf(storey).points);
    expect(areaOf(both)).toBeCloseTo(200, 9);
    expect(both[0]).toEqual([0, 0]);
    expect(both).toContainEqual([20, 10]);
    expect(codes(storey).mends).toContain('SLABS_UNITED');
    expect(readText(SEVERAL_SLABS, { slab: '80' }).issues.map(({ code }) => code)).toEqual(['ANSWER_UNKNOWN']);
  });

  it('at two levels keep the step between them: levels are taken 10 mm inside each', () => {
    const stepped = SEVERAL_SLABS.replace('#30=IFCCARTESIANPOINT((15.,5.,0.))', '#30=IFCCARTESIANPOINT((15.,5.,-0.5))');
    const result = readText(stepped, { slab: 'storey-70' });
    expect(areaOf(outlineOf(result).points)).toBeCloseTo(200, 9);
    expect(codes(result)).toMatchObject({ mends: expect.arrayContaining(['STEPS_KEPT']), issues: [], open: [] });
    const rings = shapesOn(result, 'IfcSlab z').flatMap((shape) => (shape.kind === 'ring' ? [shape] : []));
    expect(rings.map(({ points, levelM }) => [levelM, cornersOf(points)])).toEqual([
      [
        0,
        [
          [0.01, 0.01],
          [9.99, 0.01],
          [9.99, 9.99],
          [0.01, 9.99],
        ],
      ],
      [
        -0.5,
        [
          [10.01, 0.01],
          [19.99, 0.01],
          [19.99, 9.99],
          [10.01, 9.99],
        ],
      ],
    ]);
    expect(sceneOf(result).deck.levels!.breaklines).toHaveLength(2);
  });

  it('stay where the project has them, or go to the map: (400 000 − y, 5 800 000 + x), 35 m higher', () => {
    const here = readText(SEVERAL_SLABS, { slab: '57' });
    expect(here.questions.find(({ id }) => id === 'origin')).toMatchObject({ taken: 'project', certain: true });
    expect(here.mends.find(({ code }) => code === 'TRUE_NORTH')!.values.turnDeg).toBeCloseTo(30, 9);
    expect(codes(here).mends).toEqual(expect.arrayContaining(['MAP_LEFT', 'SITE_LEVEL']));
    const there = readText(SEVERAL_SLABS, { slab: '57', origin: 'map' });
    expect(cornersOf(outlineOf(there).points)).toEqual([
      [399990, 5800000],
      [400000, 5800000],
      [400000, 5800010],
      [399990, 5800010],
    ]);
    expect(levelsOf(there).map(([, , z]) => z)).toEqual([38, 38, 38, 38]);
    expect(codes(there).mends).toEqual(expect.arrayContaining(['MAP_TAKEN', 'FAR_FROM_ORIGIN']));
  });
});

describe('what cannot be read', () => {
  const told = (text: string) => readText(text).issues.map(({ code, level }) => `${level} ${code}`);

  it.each(['IFC4X3', 'IFC4X3_ADD2', 'IFC2X2_FINAL', 'IFC4X1'])('the schema %s', (schema) => {
    const { issues } = readText(TURNED_SLAB.replace("'IFC4'", `'${schema}'`));
    expect(issues.map(({ code }) => code)).toEqual(['FILE_KIND']);
    expect(issues[0]!.got).toContain(schema);
    expect(issues[0]!.mend).toContain('IFC4 or IFC2X3');
  });

  it.each(['IFC4_ADD2_TC1', 'ifc4', 'IFC2X3_TC1'])('but the schema %s is', (schema) => {
    expect(readText(TURNED_SLAB.replace("'IFC4'", `'${schema}'`)).issues).toEqual([]);
  });

  it('a model that breaks off, until the part is wanted', () => {
    const text = TURNED_SLAB.slice(0, TURNED_SLAB.indexOf('#90='));
    expect(told(text)).toEqual(['error FILE_TRUNCATED']);
    const part = readText(text, { truncated: 'use' });
    expect(part.issues).toEqual([]);
    expect(shapesOn(part, 'IfcColumn')).toHaveLength(4);
    // The opening belongs to the slab by a line that is there: the slab's own is not.
    expect(outlineOf(part).holes).toHaveLength(1);
  });

  it('a model without a slab, or with one that has no body', () => {
    expect(told(TURNED_SLAB.replaceAll('IFCSLAB(', 'IFCPLATE('))).toEqual(['error NO_SLAB']);
    expect(told(TURNED_SLAB.replace(',#17,#25,', ',#17,$,'))).toEqual(['error NO_SLAB']);
  });

  it('a model whose references go round, or lead nowhere', () => {
    expect(told(TURNED_SLAB.replace('IFCLOCALPLACEMENT($,#2)', 'IFCLOCALPLACEMENT(#17,#2)'))).toContain('error NO_SLAB');
    expect(told(TURNED_SLAB.replace('#16=', '#999='))).toContain('error NO_SLAB');
  });

  it('an opening without a body is told, and the slab is read without it', () => {
    const result = readText(TURNED_SLAB.replace('#33=', '#999='));
    expect(result.issues.map(({ code, level }) => `${level} ${code}`)).toEqual(['warning MODEL_OPENINGS']);
    expect(outlineOf(result).holes).toBeUndefined();
  });

  it('lines out of form are counted, and all else is read', () => {
    const result = readText(TURNED_SLAB.replace('#110=', '110?=').replace('#120=', 'garbage;\n#120='));
    expect(result.issues.map(({ code, level }) => `${level} ${code}`)).toEqual(['warning MODEL_DAMAGED']);
    expect(outlineOf(result).points).toHaveLength(6);
  });

  it('brackets, semicolons and remarks inside texts do not mislead', () => {
    const result = readText(TURNED_SLAB.replace("'Light well'", "'it''s; (a /* well'").replace('#40=', '/* #41=X; */#40='));
    expect(result.issues).toEqual([]);
    expect(shapesOn(result, 'IfcColumn')).toHaveLength(4);
  });
});
