/** A build-up that is still to be filled: its zones count as bare deck, and that is told. */

import { expect, it } from 'vitest';
import { readProject } from '../../src/project/evaluate-project.ts';
import { bay, rect, sceneOf, zone } from '../helpers/scene-builder.ts';

it('a zone without layers weighs nothing and is told of, and breaks no rule on layers', () => {
  const scene = sceneOf({
    deck: { outline: rect(0, 0, 4, 3), bays: [bay('A1', rect(0, 0, 4, 3))] },
    buildups: [{ id: 'empty', name: 'Nothing yet', layers: [] }],
    zones: [zone('Z', rect(0, 0, 4, 3), 'empty')],
  });
  const { project, issues } = readProject(JSON.stringify(scene));
  expect(issues.map(({ code, level }) => [code, level])).toEqual([['BUILDUP_EMPTY', 'warning']]);
  expect(project?.report.deck).toMatchObject({ zonedM2: 12, saturatedKN: 0 });
  const found = project?.report.findings.map(({ rule, severity, where, value }) => [rule, severity, where.zone, value]);
  // 4 m × 3 m.
  expect(found).toEqual([['zone.gap', 'check', 'Z', 12]]);
  expect(project?.report.findings[0]?.says).toContain('no layers yet');
});
