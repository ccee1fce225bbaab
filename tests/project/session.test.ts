/** One open scene: reading, editing a thickness, what is refused, what stays. */

import { describe, expect, it } from 'vitest';
import type { SceneFile } from '../../src/model/scene-file.ts';
import { Session } from '../../src/project/session.ts';
import { bay, MAKE_UP, rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

function opened(scene: SceneFile = sceneOf()): Session {
  const session = new Session();
  const { project, issues } = session.open(JSON.stringify(scene));
  if (!project) throw new Error(issues.map((issue) => issue.got).join());
  return session;
}

/** Zone A with the make-up build-up, finished at 0.5; zone B with 0.1 m of soil. */
const TWO = sceneOf({
  buildups: [MAKE_UP, SOIL_100],
  zones: [zone('A', rect(0, 0, 2, 3), 'make-up', { finish: { kind: 'level', levelM: 0.5 } }), zone('B', rect(2, 0, 4, 3), 'soil-100')],
});

describe('opening', () => {
  it('gives the project; a file that can’t be used leaves the scene before', () => {
    const session = opened();
    const refused = session.open('{ "format": ');
    expect(refused.project).toBeNull();
    expect(refused.issues[0].level).toBe('error');
    // 0.1 m · 1500 kg/m³ · 9.81 = 1.4715
    expect(session.map('load', null).max).toBeCloseTo(1.4715, 9);
  });

  it('before which there is nothing to ask', () => {
    expect(() => new Session().map('load', null)).toThrow(RangeError);
    expect(() => new Session().coreLog(0, null)).toThrow(/no scene/);
  });
});

describe('setting a thickness', () => {
  it('changes loads, depths and levels of the zones with that build-up only', () => {
    const session = opened(TWO);
    const { project } = session.setThickness('soil-100', 0, 200);
    // B: 0.2 m · 14.715 = 2.943
    expect(project?.report.zones[1]).toMatchObject({
      depthMm: { mean: expect.closeTo(200, 9) },
      saturatedKNm2: { mean: expect.closeTo(2.943, 9) },
    });
    // A stays: sheet 10 mm, soil 100 mm, fill 500 − 110 = 390 mm: 0.01962 + 0.39 · 2.943 + 1.4715
    expect(project?.report.zones[0].saturatedKNm2.mean).toBeCloseTo(0.01962 + 1.14777 + 1.4715, 9);
    expect(session.map('finished', null).values[15]).toBeCloseTo(0.2, 6);
    expect(project?.scene.buildups[1].layers[0].thicknessMm).toBe(200);
  });

  it('of a layer under a make-up layer gives and takes there: the finish stays', () => {
    const { project } = opened(TWO).setThickness('make-up', 2, 160);
    // Fill 500 − 10 − 160 = 330 mm
    expect(project?.report.zones[0]).toMatchObject({
      makeUpMm: { mean: expect.closeTo(330, 9) },
      finishedM: { mean: expect.closeTo(0.5, 9) },
      depthMm: { mean: expect.closeTo(500, 9) },
    });
  });

  it('of the make-up layer sets its nominal and keeps its range', () => {
    const free = { ...TWO, zones: [zone('A', rect(0, 0, 4, 3), 'make-up')] };
    const { project } = opened(free).setThickness('make-up', 1, 300);
    expect(project?.scene.buildups[0].layers[1].thicknessMm).toEqual({ min: 50, max: 2000, nominal: 300 });
    // 10 + 300 + 100
    expect(project?.report.zones[0].depthMm.mean).toBeCloseTo(410, 9);
  });

  it.each([
    ['a make-up nominal below its range', 'make-up', 1, 40],
    ['a make-up nominal above its range', 'make-up', 1, 2001],
    ['a negative thickness', 'soil-100', 0, -1],
    ['no thickness', 'soil-100', 0, 0],
    ['no number', 'soil-100', 0, Number.NaN],
    ['another thickness of a sheet', 'make-up', 0, 20],
  ])('refuses %s, and nothing changes', (_, buildUp, layer, thicknessMm) => {
    const session = opened(TWO);
    const { project, issues } = session.setThickness(buildUp, layer, thicknessMm);
    expect(project).toBeNull();
    expect(issues.some((issue) => issue.level === 'error')).toBe(true);
    const index = buildUp === 'make-up' ? 0 : 1;
    expect(issues[0].path).toMatch(new RegExp(`^buildups\\[${index}\\]\\.layers\\[${layer}\\]\\.thicknessMm`));
    // The text that was read is not the user's file.
    expect(issues[0].line).toBeUndefined();
    expect(session.map('depth', null).max).toBeCloseTo(500, 6);
  });

  it('takes the limits of a range as within it', () => {
    const session = opened({ ...TWO, zones: [zone('A', rect(0, 0, 4, 3), 'make-up')] });
    expect(session.setThickness('make-up', 1, 50).project).not.toBeNull();
    expect(session.setThickness('make-up', 1, 2000).project).not.toBeNull();
  });

  it('again and again, and back, is as if nothing had been', () => {
    const session = opened(TWO);
    const before = session.setThickness('soil-100', 0, 100).project?.report;
    for (const thicknessMm of [120, 300, 80]) session.setThickness('soil-100', 0, thicknessMm);
    session.setThickness('make-up', 2, 150);
    session.setThickness('make-up', 2, 100);
    expect(session.setThickness('soil-100', 0, 100).project?.report).toEqual(before);
  });

  it('keeps the cell and all maps and logs in step', () => {
    const session = opened(TWO);
    session.setThickness('soil-100', 0, 200);
    session.setThickness('soil-100', 0, 300);
    // Cell 15 is the last of the first row, in B: 0.3 · 14.715
    expect(session.coreLog(15, null)?.saturatedKNm2).toBeCloseTo(4.4145, 9);
    expect(session.map('load', null).values[15]).toBeCloseTo(4.4145, 5);
    expect(session.map('depth', null).values[15]).toBeCloseTo(300, 3);
  });
});

describe('warnings', () => {
  const warned = sceneOf({
    deck: { bays: [{ ...bay('A1', rect(0, 0, 4, 3)), basis: { document: 'd', revision: 'A', date: '1.2.2026' } }] },
  });

  it('of the file stay after an edit', () => {
    const session = opened(warned);
    expect(session.setThickness('soil-100', 0, 150).issues.map((issue) => issue.code)).toEqual(['DATE_FORM']);
  });

  it('of the edit come and go with it', () => {
    const session = opened(warned);
    expect(session.setThickness('soil-100', 0, 3500).issues.map((issue) => issue.code)).toEqual(['THICKNESS_UNUSUAL', 'DATE_FORM']);
    expect(session.setThickness('soil-100', 0, 300).issues.map((issue) => issue.code)).toEqual(['DATE_FORM']);
  });
});
