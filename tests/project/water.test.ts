/** Findings of water: for each a small deck that breaks the rule and one that keeps it; numbers by hand. */

import { describe, expect, it } from 'vitest';
import type { SceneFile, SceneMaterial, SceneOutlet } from '../../src/model/scene-file.ts';
import { bay, buildUp, findingsOf, MATERIALS, read, rect, type SceneParts, sceneOf, zone } from '../helpers/scene-builder.ts';

/** 10 m · 6 m falling 2 % towards y = 0, 100 mm of soil (C 0.4), rain of 300 and 500 l/(s·ha). */
const SLOPE = {
  spots: [
    [0, 0, 0],
    [10, 0, 0],
    [0, 6, 0.12],
    [10, 6, 0.12],
  ],
} as const;
const outlet = (lps?: number): SceneOutlet => ({ id: 'O1', at: [5, 0.1], kind: 'outlet', ...(lps ? { lps } : {}) });
const overflow = (more: Partial<SceneOutlet> = {}): SceneOutlet => ({
  id: 'V1',
  at: [9, 0.1],
  kind: 'overflow',
  lps: 5,
  invertM: 0.05,
  ...more,
});
const rain = { designLpsHa: 300, extremeLpsHa: 500, source: 'made up' };

const deckOf = (outlets: readonly SceneOutlet[], parts: SceneParts = {}): SceneFile =>
  sceneOf({
    rain,
    ...parts,
    deck: { outline: rect(0, 0, 10, 6), bays: [bay('A1', rect(0, 0, 10, 6))], levels: SLOPE, outlets, ...parts.deck },
  });
const told = (scene: SceneFile, rule: string) =>
  findingsOf(read(scene), rule).map(({ severity, value, limit, says, where }) => ({ severity, value, limit, says, where }));
const severities = (scene: SceneFile, rule: string) => told(scene, rule).map(({ severity }) => severity);

describe('water.outlet', () => {
  // 300 · 0.4 · 60 / 10 000 = 0.72 l/s
  it.each([
    [0.71, ['stop']],
    [0.72, ['check']],
    [0.79, ['check']],
    [0.81, []],
  ])('0.72 l/s on an outlet of %d l/s', (lps, expected) => {
    expect(severities(deckOf([outlet(lps), overflow()]), 'water.outlet')).toEqual(expected);
  });

  it('asks for a capacity that is not given', () => {
    const [found] = told(deckOf([outlet(), overflow()]), 'water.outlet');
    expect(found).toMatchObject({ severity: 'check', value: expect.closeTo(0.72, 9), where: { object: 'O1', at: [5, 0.1] } });
    expect(found.says).toContain('0.72 l/s');
  });

  it('without rain tells areas, no flows, and stays quiet about what is enough', () => {
    const { rain: _, ...dry } = deckOf([outlet(4.5), overflow()]);
    const { report } = read(dry);
    expect(report.outlets?.[0]).toMatchObject({ catchmentM2: expect.closeTo(60, 9), designLps: null, utilisation: null });
    expect(report.water).toMatchObject({ rain: null, designLps: null, yearlyM3: null });
    expect(report.water?.zones[0]).toMatchObject({ heldM3: expect.closeTo(2.4, 9), designLps: null });
    expect(report.findings.filter(({ rule }) => rule.startsWith('water.'))).toEqual([]);
    expect(report.notChecked).toEqual(['flow to outlets, as no rain is given: O1, V1']);
  });

  it('tells an outlet off the deck, and deck that drains nowhere', () => {
    const found = told(deckOf([{ ...outlet(4), at: [20, 20] }]), 'water.outlet');
    expect(found.map(({ value }) => value)).toEqual([0, expect.closeTo(60, 6)]);
    expect(found[1].says).toContain('60.0 m² of the deck drain to no outlet');
    expect(told(deckOf([]), 'water.outlet')[0].says).toContain('No outlet is drawn');
  });

  it('notes a zone that no row of the table fits', () => {
    const materials: SceneMaterial[] = [
      ...MATERIALS,
      { id: 'boards', name: 'Boards', role: 'surfacing', areal: { dry: 25, saturated: 30 }, thicknessMm: 80 },
    ];
    const scene = deckOf([outlet(4), overflow()], {
      materials,
      buildups: [buildUp('boards', [{ material: 'boards' }])],
      zones: [zone('Z1', rect(0, 0, 10, 6), 'boards')],
    });
    expect(told(scene, 'water.outlet')).toMatchObject([{ severity: 'note', value: 1, where: { zone: 'Z1' } }]);
    // All rain is counted: 300 · 60 / 10 000
    expect(read(scene).report.outlets?.[0].designLps).toBeCloseTo(1.8, 9);
  });
});

describe('water.overflow', () => {
  // (500 − 300 · 0.4) · 60 / 10 000 = 2.28 l/s
  it.each([
    [2.2, ['stop']],
    [2.4, ['check']],
    [2.6, []],
  ])('2.28 l/s on an overflow of %d l/s', (lps, expected) => {
    expect(severities(deckOf([outlet(4), overflow({ lps })]), 'water.overflow')).toEqual(expected);
  });

  it('names a slot for what is missing: 24 000 · 0.28 / 40^1.5 = 26.6 mm, told as 0.03 m', () => {
    expect(told(deckOf([outlet(4), overflow({ lps: 2 })]), 'water.overflow')[0].says).toContain('a slot of about 0.03 m at 40 mm');
  });

  it.each([
    ['no capacity', { lps: undefined }, 'does not say what it can take'],
    ['no level', { invertM: undefined }, 'no level at which it begins to run'],
    ['a level under the membrane', { invertM: -0.5 }, 'below the membrane'],
    ['a place off the deck', { at: [30, 30] as const }, 'off the deck'],
  ])('%s', (_, more, says) => {
    const cleaned = Object.fromEntries(Object.entries({ ...overflow(), ...more }).filter(([, value]) => value !== undefined));
    const found = told(deckOf([outlet(4), cleaned as unknown as SceneOutlet]), 'water.overflow');
    expect(found[0].severity).toBe('check');
    expect(found[0].says).toContain(says);
  });

  it('tells water on the finish: 0.13 over 100 mm of soil on the lowest cells', () => {
    const [found] = told(deckOf([outlet(4), overflow({ invertM: 0.13 })]), 'water.overflow');
    // The lowest centre of a cell lies 0.125 m up the slope of 2 %: 130 − 2.5 − 100
    expect(found).toMatchObject({ severity: 'check', value: expect.closeTo(27.5, 1), where: { zone: 'Z1' } });
    expect(severities(deckOf([outlet(4), overflow({ invertM: 0.1 })]), 'water.overflow')).toEqual([]);
  });

  it('stops where water runs over a sill first, and checks an upstand', () => {
    const edge = (kind: 'threshold' | 'upstand', membraneTopM: number) => ({
      deck: {
        edges: [
          {
            id: 'E1',
            line: [
              [2, 0],
              [4, 0],
            ] as const,
            kind,
            membraneTopM,
          },
        ],
      },
    });
    expect(told(deckOf([outlet(4), overflow()], edge('threshold', 0.04)), 'water.overflow')).toMatchObject([
      { severity: 'stop', where: { object: 'O1' } },
    ]);
    expect(severities(deckOf([outlet(4), overflow()], edge('upstand', 0.04)), 'water.overflow')).toEqual(['check']);
    expect(severities(deckOf([outlet(4), overflow()], edge('threshold', 0.06)), 'water.overflow')).toEqual([]);
  });
});

describe('water.pond', () => {
  /** A pit of 60 mm in the middle of a deck that falls to y = 0. */
  const pit = (depth: number) =>
    deckOf([outlet(4), overflow()], {
      deck: { levels: { spots: [...SLOPE.spots, [3, 4, 0.08], [4, 3, 0.06], [5, 4, 0.08], [4, 5, 0.1], [4, 4, 0.06 - depth]] } },
    });

  it('tells water that stays deeper than the limit', () => {
    const [found] = told(pit(0.06), 'water.pond');
    // 60 mm in the point of the pit; the nearest centre of a cell is 0.18 m from it on flanks of 6 to 10 %
    expect(found).toMatchObject({ severity: 'check', limit: 20, where: { zone: 'Z1' } });
    expect(found.value).toBeGreaterThan(40);
    expect(found.value).toBeLessThan(60);
    expect(told(pit(0.015), 'water.pond')).toEqual([]);
    expect(told({ ...pit(0.06), limits: { pondMm: 60 } }, 'water.pond')).toEqual([]);
  });

  it('stops where water rises without end', () => {
    const found = told(deckOf([outlet(4)]), 'water.pond');
    expect(found).toMatchObject([{ severity: 'stop', where: { object: 'O1' } }]);
    expect(found[0].says).toContain('without end');
    // Told once: not as a missing overflow too
    expect(told(deckOf([outlet(4)]), 'water.overflow')).toEqual([]);
  });

  it('stops where a blocked outlet takes a bay over its permitted load', () => {
    // Level deck under 100 mm of soil without pores, 150 mm of water: 1.4715 + 0.05 · 9.81 = 1.962 kN/m²
    const level = (permanentKNm2: number) =>
      deckOf([outlet(4), overflow({ invertM: 0.15 })], {
        deck: {
          bays: [bay('A1', rect(0, 0, 10, 6), { permanentKNm2, imposedKNm2: 5 })],
          levels: { spots: [[0, 0, 0] as const, [10, 0, 0] as const, [0, 6, 0] as const, [10, 6, 0] as const] },
        },
      });
    expect(told(level(1.9), 'water.pond')).toMatchObject([
      { severity: 'stop', value: expect.closeTo((100 * 1.962) / 1.9, 3), where: { bay: 'A1' } },
    ]);
    expect(told(level(2), 'water.pond')).toEqual([]);
    // Over without water already: told by the load alone
    expect(told(level(1.4), 'water.pond')).toEqual([]);
  });
});

describe('water.flow', () => {
  const on = (material: SceneMaterial, thicknessMm?: number) =>
    deckOf([outlet(4), overflow()], {
      materials: [...MATERIALS.filter(({ id }) => id !== 'element'), material],
      buildups: [
        buildUp('planted', [
          { material: material.id, ...(thicknessMm ? { thicknessMm } : {}) },
          { material: 'soil', thicknessMm: 100 },
        ]),
      ],
      zones: [zone('Z1', rect(0, 0, 10, 6), 'planted')],
    });
  const element = (flowLsm: number): SceneMaterial => ({
    id: 'element',
    name: 'Element',
    role: 'drainage element',
    areal: { dry: 3, saturated: 3 },
    thicknessMm: 50,
    flowLsm,
  });

  it('an element at the end of the longest way, at least 6 m and at most down the slope and along the foot', () => {
    const drain = read(on(element(1))).report.water?.zones[0].drain;
    // 300 · 0.4 / 10 000 a metre: 6 m · 0.012 and (6 + 5) m · 0.012
    expect(drain?.flowLsm).toBeGreaterThan(0.07);
    expect(drain?.flowLsm).toBeLessThan(0.14);
    expect(severities(on(element(0.2)), 'water.flow')).toEqual([]);
    expect(severities(on(element(0.05)), 'water.flow')).toEqual(['check']);
  });

  it('a fill by the head of water in it', () => {
    const gravel: SceneMaterial = {
      id: 'gravel',
      name: 'Gravel',
      role: 'drainage fill',
      density: { dry: 1600, saturated: 1700 },
      permeabilityMs: 0.01,
    };
    // 2 % of fall over 50 mm carry 0.01 · 0.05 · 0.02 = 0.01 l/(s·m), far below 0.07
    const [found] = told(on(gravel, 50), 'water.flow');
    expect(found).toMatchObject({ severity: 'check', limit: expect.closeTo(50, 9) });
    expect(found.says).toContain('running full it carries 0.010 l/(s·m)');
    expect(severities(on({ ...gravel, permeabilityMs: 0.1 }, 400), 'water.flow')).toEqual([]);
  });
});

describe('float.uplift', () => {
  /** 200 mm of light fill (200 kg/m³, 40 kg/m²) on the membrane; water to 0.05 over the lowest point, 47.5 mm over the lowest cell. */
  const onLight = (soilMm: number, parts: SceneParts = {}) =>
    deckOf([outlet(4), overflow()], {
      buildups: [
        buildUp('light', [
          { material: 'light', thicknessMm: 200 },
          { material: 'soil', thicknessMm: soilMm },
        ]),
      ],
      zones: [zone('Z1', rect(0, 0, 10, 6), 'light')],
      ...parts,
    });

  it('holds in the finished garden, floats while it lies open', () => {
    // Open: 40 · 0.9 = 36 kg hold against 47.5 l
    const [found, ...more] = told(onLight(100), 'float.uplift');
    expect(more).toEqual([]);
    expect(found).toMatchObject({ severity: 'stop', value: expect.closeTo(36 / 47.5, 3), where: { zone: 'Z1', stage: 'light-fill' } });
    const uplift = read(onLight(100)).report.water?.flotation.zones.find(({ stage }) => stage === null);
    expect(uplift?.ratio).toBeCloseTo((0.9 * 140) / 47.5, 2);
  });

  it('is not told again for a stage where the finished garden floats', () => {
    const deep = { ...onLight(10), flotation: { waterLevelM: 0.15 } };
    expect(told(deep, 'float.uplift')).toMatchObject([{ severity: 'stop', where: { zone: 'Z1' } }]);
    expect(told(deep, 'float.uplift')[0].says).toContain('(counted as a sealed block)');
    expect(told(deep, 'float.uplift')[0].where).not.toHaveProperty('stage');
  });

  it('takes factors from the scene', () => {
    const soft = { ...onLight(100), flotation: { upFactor: 1.1, downFactor: 1 } };
    expect(told(soft, 'float.uplift')[0].value).toBeCloseTo(40 / (1.1 * 47.5), 3);
  });

  it('takes grains for grains only where the material says so', () => {
    const grains = MATERIALS.map((one) => (one.id === 'light' ? { ...one, uplift: 'grains' as const, porePercent: 40 } : one));
    // 36 / (0.6 · 47.5) > 1
    expect(told(onLight(100, { materials: grains }), 'float.uplift')).toEqual([]);
  });

  it('says where nothing tells how high water stands', () => {
    const scene = { ...onLight(100), deck: { ...onLight(100).deck, outlets: [outlet(4)] } };
    expect(told(scene, 'float.uplift')).toMatchObject([{ severity: 'check', where: { zone: 'Z1' } }]);
  });
});
