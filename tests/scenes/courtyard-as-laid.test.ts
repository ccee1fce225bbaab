/** The courtyard's tolerances and probed depths: differences by hand, bands around what is planned. */

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readProject } from '../../src/project/evaluate-project.ts';
import { byId } from '../helpers/scene-builder.ts';

const { report } = readProject(readFileSync(new URL('../../scenes/courtyard.scene.json', import.meta.url), 'utf8')).project!;

it('probes: 60 mm too much of 1600 kg/m³ in the lawn, 20 mm too little of 1450 in the bed', () => {
  const probe = (id: string) => byId(report.probes ?? [], id);
  // 310 − 250 and 280 − 300
  expect(probe('P1')).toMatchObject({ zone: 'lawn', bay: 'C3', differenceMm: expect.closeTo(60, 9) });
  expect(probe('P1').differenceKNm2).toBeCloseTo(0.06 * 1600 * 0.00981, 9);
  expect(probe('P2')).toMatchObject({ zone: 'bed-sw', bay: 'A2', differenceMm: expect.closeTo(-20, 9) });
  expect(probe('P2').differenceKNm2).toBeCloseTo(-0.02 * 1450 * 0.00981, 9);
  expect(probe('P3')).toMatchObject({ zone: 'mound-play', layer: null, countedAs: 'substrate-tree-light' });
});

it('planned use lies within each band, and within tolerances no bay but E3 goes over', () => {
  for (const { id, band, permanent, total } of report.bays) {
    const planned = Math.max(permanent.utilisation ?? 0, total?.utilisation ?? 0);
    expect(band!.low, id).toBeLessThan(planned);
    expect(band!.high, id).toBeGreaterThan(planned);
  }
  expect(report.bays.filter(({ band }) => band!.high > 1).map(({ id }) => id)).toEqual(['E3']);
});
