/** From text to report: what is refused, what is passed on. */

import { describe, expect, it } from 'vitest';
import { evaluateProject, readProject } from '../../src/project/evaluate-project.ts';
import { buildUp, read, rect, SOIL_100, sceneOf } from '../helpers/scene-builder.ts';

describe('reading', () => {
  it('gives a project for a good scene', () => {
    const { project, issues } = readProject(JSON.stringify(sceneOf()));
    expect(issues).toEqual([]);
    expect(project?.report.scene).toBe('Test deck');
  });

  it('gives the reader’s errors for a bad one', () => {
    const { project, issues } = readProject('{');
    expect(project).toBeNull();
    expect(issues.length).toBeGreaterThan(0);
  });

  it('refuses more than four million cells, with the cell that would do', () => {
    // 300 m × 200 m in cells of 0.1 m: 6 million; √(60000/4e6) = 0.1225 → 0.13
    const outline = rect(0, 0, 300, 200);
    const { project, issues } = readProject(JSON.stringify(sceneOf({ deck: { outline } })), 0.1);
    expect(project).toBeNull();
    expect(issues).toEqual([expect.objectContaining({ code: 'TOO_MANY_CELLS', level: 'error', path: 'grid.cellM' })]);
    expect(issues[0].got).toContain('6,000,000 cells');
    expect(issues[0].mend).toContain('0.13 m');
  });
});

it('takes a cell for the call only', () => {
  // 4 m × 3 m in cells of 0.5 m: 8 · 6
  const project = read(sceneOf({ grid: { cellM: 0.25 } }), 0.5);
  expect([project.report.cellM, project.report.cells, project.scene.grid?.cellM]).toEqual([0.5, 48, 0.25]);
});

it('with the project before gives the same report as without', () => {
  const edited = sceneOf({ buildups: [buildUp(SOIL_100.id, [{ material: 'soil', thicknessMm: 250 }])] });
  const after = evaluateProject(edited, { previous: read(sceneOf()) });
  expect(after.report).toEqual(read(edited).report);
  // 0.25 · 14.715
  expect(after.report.zones[0].saturatedKNm2.mean).toBeCloseTo(3.67875, 9);
});
