/** Lanes, machines and reach from a scene to findings in words, with hand-worked figures. */

import { describe, expect, it } from 'vitest';
import { routeLines } from '../../src/cli/summary-routes.ts';
import { WRITING } from '../../src/cli/writing.ts';
import type { PointM, SceneFile, SceneStage } from '../../src/model/scene-file.ts';
import { readProject } from '../../src/project/evaluate-project.ts';
import { sourceUses } from '../../src/project/source-uses.ts';
import { buildUp, findingsOf, read, rect, type SceneParts, sceneOf, zone } from '../helpers/scene-builder.ts';

const outline = rect(0, 0, 60, 60);
const paved = buildUp('paved', [
  { material: 'sheet' },
  { material: 'element', orientation: 'retention' },
  { material: 'soil', thicknessMm: 100 },
]);

function yard(parts: SceneParts): SceneFile {
  return sceneOf({
    grid: { cellM: 1 },
    buildups: [paved],
    zones: [zone('Z1', outline, 'paved')],
    ...parts,
    deck: { outline, ...parts.deck },
  });
}

const lane = (route: readonly PointM[], widthM?: number, vehicle = 'fire-16t'): SceneParts => ({
  traffic: [{ id: 'F1', vehicle, route, ...(widthM === undefined ? {} : { widthM }) }],
});
const straight: readonly PointM[] = [
  [5, 30],
  [55, 30],
];

describe('lanes', () => {
  const found = (parts: SceneParts) => {
    const { findings } = read(yard(parts)).report;
    const lanes = findings.filter(({ rule }) => /^traffic\.(width|bend|gradient)$/.test(rule));
    return lanes.map(({ rule, severity, value, limit }) => [rule, severity, value, limit]);
  };

  it('straight: 3.5 m is wide enough, 3.2 m unless bounded, 2.5 m is not, and no width is told', () => {
    expect(found(lane(straight, 3.5))).toEqual([]);
    expect(found(lane(straight, 3.2))).toEqual([['traffic.width', 'note', 3.2, 3.5]]);
    expect(found(lane(straight, 2.5))).toEqual([['traffic.width', 'check', 2.5, 3]]);
    expect(found(lane(straight))).toEqual([['traffic.width', 'check', 0, 3]]);
  });

  it('only fire appliances are judged, and none where the scene chooses so', () => {
    expect(found(lane(straight, 2, 'wheel-loader-2t'))).toEqual([]);
    expect(found({ ...lane(straight, 2.5), limits: { fireTable: 'none' } })).toEqual([]);
  });

  // Walls of 0.2 m whose faces stand 1.6 m beside the lane, over 20 m.
  it('between walls: the clear width is told, and the report says over what length', () => {
    const wall = (id: string, y: number) => ({
      kind: 'line' as const,
      id,
      line: [[10, y] as const, [30, y] as const],
      kNm: 3,
      widthM: 0.2,
    });
    const project = read(yard({ ...lane(straight, 3.2), objects: [wall('W1', 31.7), wall('W2', 28.3)] }));
    const [finding, ...more] = findingsOf(project, 'traffic.width');
    expect(more).toEqual([]);
    expect([finding.severity, finding.value, finding.limit]).toEqual(['check', expect.closeTo(3.2, 9), 3.5]);
    expect(finding.says).toContain('leave 3.20 m between them over 20.0 m');
    expect(finding.where.at).toEqual([expect.closeTo(20, 9), expect.closeTo(30, 9)]);
    expect(project.report.routes?.[0]).toMatchObject({ requiredM: 3.5, bounded: { lengthM: expect.closeTo(20, 9) } });
  });

  it('what stands in its width is named; what stands beside it is not', () => {
    const tree = (id: string, y: number) => ({ kind: 'tree' as const, id, at: [20, y] as const, massKg: 800, spreadM: 1 });
    // 3.5 m wide: from 28.25 to 31.75; discs of 0.5 m round y = 32.2 and 32.3.
    const project = read(yard({ ...lane(straight, 3.5), objects: [tree('T1', 32.2), tree('T2', 32.3)] }));
    const [finding, ...more] = findingsOf(project, 'traffic.width');
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      severity: 'check',
      value: 1,
      limit: 0,
      where: { at: [expect.closeTo(20, 6), expect.closeTo(32.2, 6)] },
    });
    expect(finding.says).toContain('tree T1 stands in its width of 3.50 m');
    const openings = [rect(20, 30, 21, 31)];
    expect(findingsOf(read(yard({ ...lane(straight, 3.5), deck: { outline, openings } })), 'traffic.width')[0].says).toContain(
      'opening 1 stands',
    );
  });

  it('by another table: 3.7 m in England, 6.096 m in the United States', () => {
    expect(found({ ...lane(straight, 3.5), limits: { fireTable: 'en-adb' } })).toEqual([['traffic.width', 'check', 3.5, 3.7]]);
    expect(found({ ...lane(straight, 3.5), limits: { fireTable: 'us-ifc' } })).toEqual([['traffic.width', 'check', 3.5, 6.096]]);
  });

  // Right angle with legs of 45 and 20 m: tangents 10, middle radius 10, with 3 m outer radius 11.5: 5.0 m.
  it('a bend asks for more', () => {
    const route: PointM[] = [
      [5, 5],
      [50, 5],
      [50, 25],
    ];
    const project = read(yard(lane(route, 3)));
    const [finding] = findingsOf(project, 'traffic.width').filter(({ severity }) => severity === 'check');
    expect([finding.value, finding.limit, finding.where.at]).toEqual([3, 5, [50, 5]]);
    expect(finding.says).toContain('11.50 m outer radius');
    expect(finding.says).toContain('fire authority');
    expect(finding.says).toContain('Germany');
    expect(finding.source).toContain('Berlin');
    expect(project.report.routes?.[0]).toMatchObject({ table: 'de-mrflfw', requiredM: 5, leastOuterM: expect.closeTo(11.5, 9) });
    expect(routeLines(project.report, WRITING.en).join('\n')).toMatch(/F1 +de-mrflfw +3\.00 +5\.00 +11\.50/);
  });

  // Legs of 45 and 16 m: tangents 8, outer radius 8 + 1.5 = 9.5, under 10.5.
  it('a bend too tight is a stop', () => {
    const route: PointM[] = [
      [5, 5],
      [50, 5],
      [50, 21],
    ];
    expect(found(lane(route, 3)).slice(0, 1)).toEqual([['traffic.bend', 'stop', expect.closeTo(9.5, 9), 10.5]]);
  });

  // 5 m wide: 10.5 outer, 8.0 middle, tangent 8. Legs of 18 and 40 m: 10 m drawn before, 11 asked for.
  it('a transition cut short is a check', () => {
    const route: PointM[] = [
      [5, 5],
      [23, 5],
      [23, 45],
    ];
    expect(found(lane(route, 5))).toEqual([['traffic.bend', 'check', expect.closeTo(10, 9), 11]]);
  });

  // The membrane rises 7.2 m over 60 m: 12 %; 4.2 m: 7 %; 3 m: 5 %.
  it.each([
    [7.2, [['traffic.gradient', 'check', expect.closeTo(12, 6), 10]]],
    [4.2, [['traffic.gradient', 'note', expect.closeTo(7, 6), 5]]],
    [3, []],
  ])('a rise of %d m over 60 m', (riseM, expected) => {
    const levels = {
      spots: [
        [0, 0, 0],
        [60, 0, riseM],
        [60, 60, riseM],
        [0, 60, 0],
      ] as const,
    };
    expect(found({ ...lane(straight, 3.5), deck: { outline, levels } })).toEqual(expected);
  });
});

it('the list of sources says which table a lane rests on', () => {
  const uses = sourceUses(yard({ ...lane(straight, 3.5), limits: { fireTable: 'us-ifc' } }));
  const used = uses.filter(({ entry, usedIn }) => entry.startsWith('lanes, ') && usedIn.length > 0);
  expect(used.map(({ number, usedIn, source }) => [number, usedIn, source.document.split(',')[0]])).toEqual([
    ['straightM', ['traffic.width'], 'International Fire Code'],
    ['gradientPercent', ['traffic.gradient'], 'International Fire Code'],
  ]);
});

describe('stages', () => {
  const drive = { vehicle: 'wheel-loader-2t', route: straight };
  const stages = (plantIn: number): SceneStage[] =>
    [['protection'] as const, ['drainage element'] as const, ['substrate'] as const, ['vegetation'] as const].map((roles, i) => ({
      id: `S${i + 1}`,
      name: `Stage ${i + 1}`,
      place: [{ roles }],
      ...(i === plantIn ? { plant: [drive] } : {}),
    }));

  // 50 m long, 1.1 m wide: 55 m².
  it.each([
    [0, 'the bare membrane'],
    [1, 'Sheet (protection)'],
    [2, 'open elements (Element, not filled)'],
  ])('a loader in stage %d stands on %s', (at, ground) => {
    const [finding, ...more] = findingsOf(read(yard({ stages: stages(at) })), 'stage.plant');
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      severity: 'stop',
      value: expect.closeTo(55, 9),
      where: { zone: 'Z1', stage: `S${at + 1}`, at: [expect.closeTo(30, 9), 30] },
    });
    expect(finding.says).toContain(`drives on ${ground}`);
    expect(finding.says).toContain('structural engineer');
  });

  it('once the substrate lies it may drive as far as this rule goes', () => {
    expect(findingsOf(read(yard({ stages: stages(3) })), 'stage.plant')).toEqual([]);
  });

  it('substrate that no gate, crane or hose reaches is told, and what is not known of a crane', () => {
    const accessPoints = [
      { id: 'G1', at: [0, 30], kind: 'gate' },
      { id: 'C1', at: [30, 30], kind: 'crane' },
    ] as const;
    const project = read(yard({ stages: stages(-1), accessPoints }));
    const [finding, ...more] = findingsOf(project, 'stage.reach');
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: 'check', value: 3600, where: { zone: 'Z1', stage: 'S3' } });
    expect(finding.says).toContain('No reach is given for C1');
    expect(project.report.reach).toEqual([{ stage: 'S3', zones: 1, areaM2: 3600, unreachedM2: 3600 }]);
    expect(routeLines(project.report, WRITING.en).join('\n')).toMatch(/S3 +1 +3600\.0 +3600\.0/);
  });

  it('a hose of 85 m reaches all: the far corner is 84.85 m away', () => {
    const accessPoints = [{ id: 'B1', at: [0, 0], kind: 'blower', reachM: 85 }] as const;
    expect(findingsOf(read(yard({ stages: stages(-1), accessPoints })), 'stage.reach')).toEqual([]);
  });
});

it('a table that nobody knows is refused, with the ones there are', () => {
  const { project, issues } = readProject(JSON.stringify({ ...sceneOf(), limits: { fireTable: 'de-mrflf' } }));
  expect(project).toBeNull();
  expect(issues).toHaveLength(1);
  expect(issues[0].path).toBe('limits.fireTable');
  expect(`${issues[0].expected} ${issues[0].mend}`).toContain('de-mrflfw');
});

it('nothing drawn, nothing said', () => {
  const { report } = read(sceneOf());
  expect([report.routes, report.reach]).toEqual([undefined, undefined]);
  expect(routeLines(report, WRITING.en)).toEqual([]);
});
