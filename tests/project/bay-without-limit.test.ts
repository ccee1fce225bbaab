/** Bays whose permitted load nobody gave yet: drawn, shown, told of, and never within a limit. */

import { describe, expect, it } from 'vitest';
import { readProject } from '../../src/project/evaluate-project.ts';
import { rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const BASIS = { document: 'load plan', revision: 'A', date: '2026-01-01' };
const scene = sceneOf({ buildups: [SOIL_100], zones: [zone('A', rect(0, 0, 4, 3), 'soil-100')] });
const project = (limits: object) => {
  const bays = [{ id: 'A1', outline: rect(0, 0, 4, 3), ...limits }];
  const reading = readProject(JSON.stringify({ ...scene, deck: { ...scene.deck, outline: rect(0, 0, 4, 3), bays } }));
  if (!reading.project) throw new Error(JSON.stringify(reading.issues));
  return { report: reading.project.report, codes: reading.issues.map(({ code, level }) => [code, level]) };
};

describe('a bay without a permitted load', () => {
  it('opens with a warning, is not judged and not confirmed, whatever its basis says', () => {
    const { report, codes } = project({ basis: BASIS });
    expect(codes).toEqual([['BAY_NO_LIMIT', 'warning']]);
    const [bay] = report.bays;
    expect(bay.permanent.patchKNm2).toBeGreaterThan(0);
    expect(bay.permanent).toMatchObject({ permittedKNm2: null, utilisation: null });
    expect(bay.stages.every(({ utilisation }) => utilisation === null)).toBe(true);
    expect(bay.confirmed).toBe(false);
  });

  it('is told of as a finding, and what is missing is the load', () => {
    const found = project({ basis: BASIS }).report.findings.filter(({ rule }) => rule.startsWith('load.'));
    expect(found.map(({ rule, severity, where }) => [rule, severity, where])).toEqual([['load.basis', 'check', { bay: 'A1' }]]);
    expect(found[0].says).toContain('no permitted permanent or total load');
  });

  it('with an imposed or a stage load alone is not confirmed either', () => {
    for (const limits of [{ imposedKNm2: 5 }, { stageKNm2: 14 }]) {
      expect(project({ ...limits, basis: BASIS }).report.bays[0].confirmed).toBe(false);
    }
    expect(project({ totalKNm2: 17, basis: BASIS }).report.bays[0].confirmed).toBe(true);
  });
});
