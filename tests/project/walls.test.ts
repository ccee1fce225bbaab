/** Retaining edges of a scene: report, loads of the deck, findings and their words; all by hand. */

import { describe, expect, it } from 'vitest';
import { wallLines } from '../../src/cli/summary-walls.ts';
import { WRITING } from '../../src/cli/writing.ts';
import type { SceneMaterial, SceneRetaining } from '../../src/model/scene-file.ts';
import { buildUp, findingsOf, GRAVITY, read, rect, type SceneParts, sceneOf, zone } from '../helpers/scene-builder.ts';

/** Kilograms to kilonewtons. */
const kN = (kg: number) => (kg * GRAVITY) / 1000;

/**
 * Per metre, in kilograms: thrust 1/3 · 1500 · 1²/2 = 250 at 1/3 m. Stem 0.1 · 0.9 · 2500 = 225 at 0.05 m, slab 0.8 · 0.1 · 2500 = 200 at
 * 0.4 m, soil 0.7 · 0.9 · 1500 = 945 at 0.45 m: 1370, moment 11.25 + 80 + 425.25 = 516.5.
 */
const EDGE: SceneRetaining = {
  kind: 'retaining',
  id: 'R1',
  line: [
    [0.5, 1],
    [3.5, 1],
  ],
  side: 'left',
  retainedM: 1,
  baseM: 0.8,
  stemM: 0.1,
  slabM: 0.1,
  backfill: { density: 1500, frictionDeg: 30 },
  surchargeKNm2: 0,
  baseFriction: 0.5,
};
const GRID: SceneMaterial = {
  id: 'grid',
  name: 'Grid',
  role: 'drainage element',
  areal: { dry: 3, saturated: 3 },
  thicknessMm: 50,
  bearingKPa: 40,
  source: 'sheet 3',
};
const SHEET: SceneMaterial = { id: 'sheet', name: 'Sheet', role: 'protection', areal: { dry: 1, saturated: 2 }, thicknessMm: 10 };
const SOIL: SceneMaterial = { id: 'soil', name: 'Soil', role: 'substrate', density: { dry: 1000, saturated: 1500 } };

interface Change {
  readonly edge?: Partial<SceneRetaining>;
  readonly grid?: Partial<SceneMaterial>;
  readonly soilMm?: number;
  readonly parts?: SceneParts;
}

/** Deck of 4 m × 3 m; sheet 10, element 50 and soil 1000 mm: the base stands on the element. */
function deckWith({ edge, grid, soilMm = 1000, parts }: Change = {}) {
  const layers = [{ material: 'sheet' }, { material: 'grid' }, { material: 'soil', thicknessMm: soilMm }];
  return read(
    sceneOf({
      materials: [SHEET, { ...GRID, ...grid }, SOIL],
      buildups: [buildUp('deep', layers)],
      zones: [zone('Z1', rect(0, 0, 4, 3), 'deep')],
      objects: [{ ...EDGE, ...edge }],
      ...parts,
    }),
  );
}

const walls = (change: Change) => {
  const project = deckWith(change);
  return [...findingsOf(project, 'wall.sliding'), ...findingsOf(project, 'wall.bearing')];
};

describe('report', () => {
  const project = deckWith();
  const wall = project.report.walls?.[0];

  it('statics per metre', () => {
    expect(wall).toMatchObject({ id: 'R1', surchargeKNm2: 0, standsOn: 'grid', permittedKPa: 40 });
    expect(wall?.active).toBeCloseTo(1 / 3, 12);
    expect(wall?.thrustKNm).toBeCloseTo(kN(250), 12);
    expect(wall?.bare.verticalKNm).toBeCloseTo(kN(1370), 12);
    expect(wall?.bare.slidingRatio).toBeCloseTo((0.5 * 1370) / 250, 12);
    expect(wall?.bare.overturningRatio).toBeCloseTo((3 * 516.5) / 250, 12);
    // 0.4 − (516.5 − 250/3)/1370
    const e = 0.4 - (516.5 - 250 / 3) / 1370;
    expect(wall?.bare.eccentricityM).toBeCloseTo(e, 12);
    expect(wall?.bare.pressure?.maxKPa).toBeCloseTo((kN(1370) / 0.8) * (1 + (6 * e) / 0.8), 9);
  });

  it('finds nothing wrong with a sound wall', () => {
    expect(walls({})).toEqual([]);
  });

  it('brings stem and base slab to the deck, 425 kg/m over 3 m, and no soil twice', () => {
    expect(wall?.ownKNm).toBeCloseTo(kN(425), 12);
    const { deck } = project.report;
    expect(deck.objectsKN).toBeCloseTo(kN(425 * 3), 9);
    // Build-up 2 + 3 + 1500 kg/m² on 12 m²
    expect(deck.saturatedKN).toBeCloseTo(kN(1505 * 12 + 425 * 3), 9);
  });

  it('takes the imposed load of the zone behind where no live load is given', () => {
    const { surchargeKNm2, ...edge } = EDGE;
    const imposed = [zone('Z1', rect(0, 0, 4, 3), 'deep', { imposedKNm2: 3 })];
    const { report } = deckWith({ parts: { objects: [edge], zones: imposed } });
    expect(surchargeKNm2).toBe(0);
    expect(report.walls?.[0].surchargeKNm2).toBe(3);
    expect(report.walls?.[0].thrustKNm).toBeCloseTo(kN(250) + 1, 12);
    expect(deckWith({ parts: { zones: imposed } }).report.walls?.[0].surchargeKNm2).toBe(0);
  });

  it('has no part for walls where there are none', () => {
    expect(read(sceneOf()).report.walls).toBeUndefined();
    expect(wallLines(read(sceneOf()).report, WRITING.en)).toEqual([]);
  });
});

describe('wall.sliding', () => {
  it.each([
    // 1370/250 = 5.48 times tan δ
    [0.28, []],
    [0.27, ['check']],
    [0.19, ['check']],
    [0.18, ['stop']],
  ])('tan δ = %s: %j', (baseFriction, severities) => {
    expect(walls({ edge: { baseFriction } }).map(({ severity }) => severity)).toEqual(severities);
  });

  it('says ratio, limit, friction and where it comes from', () => {
    const [found] = walls({ edge: { baseFriction: 0.2 } });
    expect(found.value).toBeCloseTo(1.096, 12);
    expect(found).toMatchObject({ rule: 'wall.sliding', limit: 1.5, unit: '-', where: { zone: 'Z1', object: 'R1' } });
    expect(found.says).toMatch(/^Retaining edge R1: friction under the base is 1.09 times the thrust of the soil; 1.50 are asked for\./);
    expect(found.says).toContain('tan δ = 0.20');
    expect(found.says).toContain('structural engineer');
    expect(found.source).toContain('(from memory)');
    expect(found.where.at?.[0]).toBeGreaterThan(0.5);
    expect(found.where.at?.[1]).toBeCloseTo(1, 12);
  });

  it('takes the limit of the scene, with its source', () => {
    const limits = { slidingRatio: 2, overturningRatio: 7, source: 'agreed' };
    const found = walls({ edge: { baseFriction: 0.35 }, parts: { limits } });
    expect(found.map(({ severity, limit, source }) => [severity, limit, source])).toEqual([
      ['check', 2, 'agreed (entered)'],
      ['check', 7, 'agreed (entered)'],
    ]);
  });

  it('counts a live load that pushes and does not hold', () => {
    // 3 kN/m² push with 1 kN/m; it holds with 0.7 · 3 more: 0.5 · (13.4397 + 2.1) against 0.5 · 13.4397
    const { report } = deckWith({ edge: { surchargeKNm2: 3, baseFriction: 0.25 } });
    const [found] = report.findings.filter(({ rule }) => rule === 'wall.sliding');
    expect(found.value).toBeCloseTo((0.25 * kN(1370)) / (kN(250) + 1), 12);
  });
});

describe('overturning', () => {
  it('base of 0.35 m: held 102.5, turned 83.3 kg m', () => {
    // Soil 0.25 · 0.9 · 1500 = 337.5 at 0.225, slab 87.5 at 0.175, stem 225 at 0.05: 75.9375 + 15.3125 + 11.25
    const found = walls({ edge: { baseM: 0.35 } }).filter(({ says }) => says.includes('turns it over'));
    expect(found.map(({ rule, severity }) => [rule, severity])).toEqual([['wall.sliding', 'check']]);
    expect(found[0].value).toBeCloseTo((3 * 102.5) / 250, 12);
  });

  it('base of 0.30 m: held 76.5, turned 83.3 kg m; it falls, so no pressure is told', () => {
    // Soil 270 at 0.2, slab 75 at 0.15, stem 225 at 0.05: 54 + 11.25 + 11.25
    const project = deckWith({ edge: { baseM: 0.3 } });
    const found = findingsOf(project, 'wall.sliding').filter(({ says }) => says.includes('turns it over'));
    expect(found).toMatchObject([{ severity: 'stop', limit: 1.5 }]);
    expect(found[0].value).toBeCloseTo((3 * 76.5) / 250, 12);
    expect(found[0].says).toContain('0.91 times the one that turns it over; it does not hold');
    expect(findingsOf(project, 'wall.bearing')).toEqual([]);
    expect(project.report.walls?.[0].bare.pressure).toBeNull();
    expect(wallLines(project.report, WRITING.en).join('\n')).toContain('falls over');
  });
});

describe('wall.bearing', () => {
  // 1712.5 · (1 + 6 · 0.083820/0.8) = 2789.1 kg/m²: 27.361 kPa
  it.each([
    [31, []],
    [30, ['check']],
    [27, ['stop']],
  ])('27.36 kPa on an element that bears %s kPa: %j', (bearingKPa, severities) => {
    const found = walls({ grid: { bearingKPa } });
    expect(found.map(({ severity }) => severity)).toEqual(severities);
    for (const { rule, value, unit, says, source } of found) {
      expect([rule, unit, source]).toEqual(['wall.bearing', 'kPa', 'sheet 3']);
      expect(value).toBeCloseTo(27.361, 3);
      expect(says).toContain('up to 27.4 kPa press under its base, Grid below it bears');
    }
  });

  it('a catalogue layer gives the source of its bearing', () => {
    const layers = [
      { material: 'eps-block', thicknessMm: 100 },
      { material: 'soil', thicknessMm: 1000 },
    ];
    const found = walls({ parts: { buildups: [buildUp('deep', layers)] } });
    expect(found).toMatchObject([{ severity: 'check', limit: 30, source: expect.stringContaining('from memory') }]);
  });

  it('the weakest layer below decides', () => {
    const weak: SceneMaterial = { ...GRID, id: 'weak', name: 'Weak', bearingKPa: 20 };
    const layers = [{ material: 'weak' }, { material: 'grid' }, { material: 'soil', thicknessMm: 1000 }];
    const found = walls({ parts: { materials: [SHEET, GRID, weak, SOIL], buildups: [buildUp('deep', layers)] } });
    expect(found).toMatchObject([{ severity: 'stop', limit: 20 }]);
  });

  it('is for the engineer where no bearing is known', () => {
    const { bearingKPa, ...bare } = GRID;
    expect(bearingKPa).toBe(40);
    const found = walls({ parts: { materials: [SHEET, bare, SOIL] } });
    expect(found).toMatchObject([{ rule: 'wall.bearing', severity: 'check', unit: 'kPa' }]);
    expect(found[0].says).toContain('what it stands on has no permitted pressure');
    expect(deckWith({ parts: { materials: [SHEET, bare, SOIL] } }).report.walls?.[0]).toMatchObject({ standsOn: null, permittedKPa: null });
  });

  it('is for the engineer where it stands on the membrane', () => {
    // 10 + 50 + 940 = 1000 mm: the underside lies on the membrane
    const found = walls({ soilMm: 940 });
    expect(found).toHaveLength(1);
    expect(found[0].says).toContain('no layer is drawn between it and the membrane');
  });

  it('tells an opening base: 0.50 m wide, resultant 0.114 m off', () => {
    // Soil 540 at 0.3, slab 125 at 0.25, stem 225 at 0.05: 890, 204.5; e = 0.25 − (204.5 − 83.333)/890 = 0.11386; contact 3 · 0.13614 = 0.40843
    const found = walls({ edge: { baseM: 0.5 }, grid: { bearingKPa: 100 } });
    expect(found).toMatchObject([{ rule: 'wall.bearing', severity: 'check', unit: 'm' }]);
    expect(found[0].value).toBeCloseTo(0.11386, 5);
    expect(found[0].limit).toBeCloseTo(0.5 / 6, 12);
    expect(found[0].says).toContain('0.12 m from the middle of its base, more than a sixth of the width (0.08 m)');
    expect(found[0].says).toContain('presses on 0.40 m of 0.50 m');
  });

  it('tells soil that is missing from the loads: 0.30 m of 1.00 m behind it', () => {
    const found = walls({ soilMm: 240 }).filter(({ unit }) => unit === 'm');
    expect(found).toMatchObject([{ rule: 'wall.bearing', severity: 'check', limit: 1 }]);
    expect(found[0].value).toBeCloseTo(0.3, 12);
    // 0.7 · 1500 kg/m² = 10.3005 kN/m²
    expect(found[0].says).toContain('the build-up of zone Z1 behind it is 0.30 m deep');
    expect(found[0].says).toContain('up to 10.31 kN/m² are missing');
  });

  it('finds the shallowest place under a sloping deck', () => {
    // The deck rises 0.1 m per metre below a finish of 1.5 m: at the last place, 3.375 m, the build-up is 1.1625 m deep
    const layers = [{ material: 'sheet' }, { material: 'grid' }, { material: 'soil', thicknessMm: { min: 0, max: 2000, nominal: 500 } }];
    const spots = [
      [0, 0, 0],
      [4, 0, 0.4],
      [0, 3, 0],
      [4, 3, 0.4],
    ] as const;
    const found = walls({
      edge: { retainedM: 1.3, baseM: 1.2 },
      parts: {
        deck: { levels: { spots } },
        buildups: [buildUp('deep', layers)],
        zones: [zone('Z1', rect(0, 0, 4, 3), 'deep', { finish: { kind: 'level', levelM: 1.5 } })],
      },
    }).filter(({ unit }) => unit === 'm');
    expect(found).toHaveLength(1);
    expect(found[0].value).toBeCloseTo(1.1625, 9);
    expect(found[0].where.at?.[0]).toBeCloseTo(3.375, 9);
  });

  it('tells a wall turned to a side without soil', () => {
    const zones = [zone('Z1', rect(0, 1, 4, 3), 'deep')];
    const found = walls({ edge: { side: 'right' }, parts: { zones } }).filter(({ unit }) => unit === 'm');
    expect(found[0].says).toContain('no build-up lies behind it');
    expect(walls({ parts: { zones } })).toEqual([]);
  });
});

it('the command line lists the wall', () => {
  const lines = wallLines(deckWith().report, WRITING.en);
  const cells = lines.slice(2, -1).map((text) => text.trim().split(/ {2,}/));
  // Own 4.169, thrust 2.4525 kN/m; 2.74 and 6.198; 0.0838 of 0.1333 m; 27.36 of 40 kPa
  expect(cells[1]).toEqual(['R1', '4.17', '0.333', '0.00', '2.45', '2.74', '6.19', '0.084', '0.133', '27.4', '40.00', 'grid']);
  expect(cells[0]).toHaveLength(cells[1].length);
});
