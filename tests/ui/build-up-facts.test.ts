/** What the build-up editor picks out of report and catalogue. */

import { describe, expect, it } from 'vitest';
import type { CatalogueView } from '../../src/model/catalogue-view.ts';
import type { Finding, Rule, Severity, Where } from '../../src/model/finding.ts';
import type { SceneMaterial } from '../../src/model/scene-file.ts';
import { catalogueView } from '../../src/project/catalogue-view.ts';
import { choicesOf, findingsUnder, groupChoices, worstBay, zoneLoads } from '../../src/ui/facts/build-up-facts.ts';
import { bay, read, rect, SOIL_100, sceneOf, zone } from '../helpers/scene-builder.ts';

const LAVA: SceneMaterial = { id: 'lava', name: 'Lava', role: 'drainage fill', density: { dry: 1100, saturated: 1300 } };
const SOIL: SceneMaterial = { id: 'soil', name: 'Soil', role: 'substrate', density: { dry: 1000, saturated: 1500 } };
const OWN: SceneMaterial = { ...LAVA, name: 'Lava of the quarry', source: 'Data sheet' };
const CATALOGUE: CatalogueView = {
  materials: [
    { material: LAVA, sources: [{ number: 'density', text: 'a table' }] },
    { material: SOIL, sources: [] },
  ],
  vegetation: [],
  vehicles: [],
};

describe('materials to choose from', () => {
  it('are the scene’s instead of the catalogue’s of the same id, each with its source', () => {
    const choices = choicesOf({ materials: [OWN] }, CATALOGUE);
    expect(choices.map(({ material, own, source }) => [material.name, own, source])).toEqual([
      ['Lava of the quarry', true, 'Data sheet'],
      ['Soil', false, ''],
    ]);
    expect(choicesOf({}, CATALOGUE)[0]).toMatchObject({ own: false, source: 'a table' });
  });

  it('come role by role after the scene’s own, one role first, and are found by every word of a search', () => {
    const choices = choicesOf({ materials: [{ ...OWN, id: 'own' }] }, CATALOGUE);
    const groups = (search: string) =>
      groupChoices(choices, search, (role) => `role ${role}`, 'substrate').map(({ role, choices: of }) => [role, of.length]);
    expect(groups('')).toEqual([
      [null, 1],
      ['substrate', 1],
      ['drainage fill', 1],
    ]);
    expect(groups('quarry lava')).toEqual([[null, 1]]);
    expect(groups('role substrate')).toEqual([['substrate', 1]]);
    expect(groups('nothing')).toEqual([]);
  });
});

describe('findings under a build-up', () => {
  const finding = (severity: Severity, rule: Rule, where: Where): Finding => ({
    severity,
    rule,
    where,
    says: `${rule} ${where.zone ?? where.bay ?? ''}`,
    value: 0,
    limit: 0,
    unit: '-',
    source: '',
  });

  it('are those of its zones and of the bays beneath, gravest first, each rule once', () => {
    const found = findingsUnder(
      [
        finding('check', 'order.filter', { zone: 'A' }),
        finding('check', 'order.filter', { zone: 'B' }),
        finding('check', 'order.filter', { zone: 'X' }),
        finding('stop', 'load.permanent', { bay: 'A1' }),
        finding('stop', 'load.permanent', { bay: 'B1' }),
        finding('stop', 'order.protection', { zone: 'B' }),
        finding('note', 'level.outside', {}),
      ],
      { zones: ['A', 'B'], bays: ['A1'] },
    );
    expect(found.map(({ finding: { says }, count }) => [says, count])).toEqual([
      ['order.protection B', 1],
      ['load.permanent A1', 1],
      ['order.filter A', 2],
    ]);
  });
});

describe('bays and zones under a build-up', () => {
  // 0.1 m of soil weighs 1.4715 saturated: of 2 permitted 74 %, of 1.2 123 %.
  const outline = rect(0, 0, 4, 3);
  const project = read(
    sceneOf({
      deck: {
        outline,
        bays: [
          bay('A1', rect(0, 0, 2, 3), { permanentKNm2: 2, imposedKNm2: 5 }),
          bay('A2', rect(2, 0, 4, 3), { permanentKNm2: 1.2, imposedKNm2: 5 }),
        ],
      },
      buildups: [SOIL_100],
      zones: [zone('A', outline, 'soil-100')],
    }),
  );

  it('the worst of those it lies on, no other', () => {
    expect(worstBay(project, { bays: ['A1', 'A2'] })?.id).toBe('A2');
    expect(worstBay(project, { bays: ['A1'] })?.id).toBe('A1');
    expect(worstBay(project, { bays: [] })).toBeNull();
  });

  it('loads of its zones from least to greatest', () => {
    expect(zoneLoads(project.report, ['A'])?.map((kNm2) => kNm2.toFixed(4))).toEqual(['1.4715', '1.4715']);
    expect(zoneLoads(project.report, [])).toBeNull();
  });
});

it('the catalogue to choose from speaks German, and gives no source of its own to a copy', () => {
  const { materials, vegetation } = catalogueView('de');
  const lava = materials.find(({ material }) => material.id === 'drain-60');
  expect(lava?.material.name).toBe('Dränelement 60 mm');
  expect(lava && 'sources' in lava.material).toBe(false);
  // Low end of the guide range for lawn, 15 to 35 cm, and 5 kg/m² · 9.81 (FLL green-roof guideline, from memory).
  expect(vegetation.find(({ form }) => form === 'lawn')).toEqual({ form: 'lawn', name: 'Rasen', kNm2: 0.04905, leastMm: 150 });
});
