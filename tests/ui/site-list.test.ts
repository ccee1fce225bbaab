/** Lanes, areas, walls and the site of a stage as lists, by hand. */

import { describe, expect, it } from 'vitest';
import type { Snapshot } from '../../src/model/engine.ts';
import type { Finding } from '../../src/model/finding.ts';
import type { Report, ReportRoute, ReportSetUpArea, ReportWall } from '../../src/model/report.ts';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { inMiddleThird, listAreas, listLanes, listWalls, middleOf, stageSite } from '../../src/ui/facts/site-list.ts';

const found = (rule: Finding['rule'], change: Partial<Finding>): Finding => {
  return { rule, severity: 'check', where: {}, says: '', value: 0, limit: 0, unit: 'm', source: '', ...change };
};

describe('lanes', () => {
  const lane = (id: string, widthM: number | null, requiredM: number) =>
    ({ id, widthM, requiredM, leastOuterM: 9, steepestPercent: 12, stepMm: null }) as ReportRoute;
  const scene = { traffic: [{ id: 'F1', vehicle: 'fire-16t', route: [[0, 0], [6, 0], [6, 2]] }] } as unknown as SceneFile; // biome-ignore format: points in a row

  it('say how much is missing to the width asked for, and what a finding calls too tight or too steep', () => {
    const routes = [lane('F1', 2.8, 3), lane('F2', 3, 3), lane('F3', null, 3)];
    const findings = [
      found('traffic.bend', { severity: 'stop', value: 9 }),
      found('traffic.gradient', { severity: 'note', value: 12, unit: '%' }),
    ];
    const [f1, f2, f3] = listLanes({ routes, findings }, scene);
    expect(f1?.missingM).toBeCloseTo(0.2, 12);
    expect([f2?.missingM, f3?.missingM]).toEqual([0, null]);
    expect(f1?.faults).toEqual({ radius: true, gradient: false, step: false });
    expect([f1?.line.length, f2?.line.length]).toEqual([3, 0]);
  });

  it('have their middle half-way along', () => {
    // 6 m and 2 m: half-way at 4 m
    expect(middleOf([[0, 0], [6, 0], [6, 2]])).toEqual({ at: [4, 0], lengthM: 8 }); // biome-ignore format: points in a row
    expect(middleOf([])).toBeNull();
  });
});

describe('set-up areas', () => {
  const area = (change: Partial<ReportSetUpArea>) =>
    ({
      id: 'U1',
      requiredM: { widthM: 3.5, lengthM: 11 },
      insideWidthM: 4,
      steepestPercent: null,
      stepMm: null,
      ...change,
    }) as ReportSetUpArea;

  it('are too small where the rectangle asked for has no room', () => {
    const small = (change: Partial<ReportSetUpArea>) =>
      listAreas({ setUpAreas: [area(change)], findings: [] }, {} as SceneFile).map((one) => one.small);
    expect([small({}), small({ insideWidthM: 3.5 }), small({ insideWidthM: 3.4 }), small({ insideWidthM: 0 })]).toEqual([
      [false],
      [false],
      [true],
      [true],
    ]);
    expect(small({ requiredM: null })).toEqual([false]);
  });
});

describe('retaining edges', () => {
  const wall = (id: string) => ({ id, middleThirdM: 0.1 }) as ReportWall;
  const report: Pick<Report, 'walls' | 'findings'> = {
    walls: [wall('fine'), wall('look'), wall('falls')],
    findings: [
      found('wall.sliding', { severity: 'stop', where: { object: 'falls' } }),
      found('wall.bearing', { severity: 'check', where: { object: 'falls' } }),
      found('wall.bearing', { severity: 'check', where: { object: 'look' } }),
      found('load.permanent', { severity: 'stop', where: { object: 'fine' } }),
    ],
  };

  it('come with the worst first, each with its own findings', () => {
    const listed = listWalls(report, { objects: [] } as unknown as SceneFile);
    expect(listed.map(({ id, worst, findings }) => [id, worst, findings.length])).toEqual([
      ['falls', 'stop', 2],
      ['look', 'check', 1],
      ['fine', null, 0],
    ]);
  });

  it('press with the whole base up to the middle third, either way', () => {
    const at = (eccentricityM: number) => inMiddleThird({ eccentricityM } as ReportWall['bare'], { middleThirdM: 0.1 });
    expect([at(0.1), at(-0.1), at(0.11), at(-0.11)]).toEqual([true, true, false, false]);
  });
});

it('a stage knows its machines, access points and reach', () => {
  const snapshot = {
    report: { reach: [{ stage: 'S2', zones: 1, areaM2: 10, unreachedM2: 4 }] },
    scene: { accessPoints: [{ id: 'G1', at: [0, 0], kind: 'gate' }] },
    stages: [{ id: 'S1' }, { id: 'S2' }],
    runs: [
      { vehicle: 'Fire appliance', stage: null },
      { vehicle: 'Loader', stage: 1 },
    ],
  } as unknown as Snapshot;
  expect(stageSite(snapshot, 'S2')).toMatchObject({ plant: ['Loader'], access: [{ id: 'G1' }], reach: { unreachedM2: 4 } });
  expect(stageSite(snapshot, 'S1')).toMatchObject({ plant: [], reach: null });
});
