/** The beginning of a scene: it opens, nothing in it claims anything. */

import { expect, it } from 'vitest';
import { newScene } from '../../src/edit/new-scene.ts';
import { readProject } from '../../src/project/evaluate-project.ts';

it('a new scene opens without a word, and says that nothing lies there and nothing is known', () => {
  const { project, issues } = readProject(JSON.stringify(newScene('Kirschhof', 24, 15)));
  expect(issues).toEqual([]);
  // 24 m × 15 m.
  expect(project?.report.deck).toMatchObject({ areaM2: 360, zonedM2: 0, unzonedM2: 360, saturatedKN: 0 });
  expect(project?.report.findings.map(({ rule, value }) => [rule, value])).toEqual([
    ['zone.gap', 360],
    ['bay.gap', 360],
  ]);
});
