/** Depth rules: limits of the helper are lawn 150, trees 600, subsoil below 400, base course 150, lift 250 mm; soil 12 m³, 1000 mm. */

import { describe, expect, it } from 'vitest';
import { findBuildUpFacts } from '../../../src/core/rules/build-up-rules.ts';
import type { TreeFacts } from '../../../src/model/rule-input.ts';
import { ALL_WHYS, broken, facts, LIMITS, layer, PAVING, PLANTING, thick, without } from '../../helpers/rule-builder.ts';

const planted = (...substrates: readonly ReturnType<typeof layer>[]) => [...without(PLANTING, 'substrate'), ...substrates];
const paved = (mm: number) => PAVING.map((entry) => (entry.role === 'base course' ? thick('base course', mm) : entry));

describe('depth.vegetation', () => {
  it('compares the sum of all substrate at its thinnest place', () => {
    // 100 + 60 = 160 of 150; 100 + 40 = 140
    expect(broken(planted(thick('substrate', 100), thick('substrate', 60)), { form: 'lawn' })).toEqual([]);
    expect(facts(planted(thick('substrate', 100), thick('substrate', 40)), { form: 'lawn' })).toEqual([
      {
        rule: 'depth.vegetation',
        severity: 'check',
        where: { zone: 'Z' },
        value: expect.closeTo(140, 9),
        limit: 150,
        unit: 'mm',
        facts: { form: 'lawn', source: 'lawn table (assumed)', why: 'vegetation' },
      },
    ]);
  });

  it('takes the least of a substrate that makes up levels', () => {
    const wedge = (leastM: number) => planted(layer('substrate', { leastM, greatestM: 0.3 }));
    expect(broken(wedge(0.15), { form: 'lawn' })).toEqual([]);
    expect(facts(wedge(0.12), { form: 'lawn' })).toMatchObject([{ value: expect.closeTo(120, 9), limit: 150 }]);
  });

  it('counts no other layer, and is met to the millimetre', () => {
    expect(broken(planted(thick('substrate', 140), thick('vegetation', 20)), { form: 'lawn' })).toEqual(['depth.vegetation']);
    expect(broken(planted(thick('substrate', 149.5)), { form: 'lawn' })).toEqual([]);
    expect(broken(planted(thick('substrate', 149)), { form: 'lawn' })).toEqual(['depth.vegetation']);
  });

  it('asks nothing of grass in a grid, but of planting with no substrate at all', () => {
    expect(broken(PAVING, { form: 'lawn' })).toEqual([]);
    expect(broken(PAVING, { form: 'vines' })).toEqual([]);
    expect(facts(planted(), { form: 'lawn' })).toMatchObject([{ rule: 'depth.vegetation', value: 0, limit: 150 }]);
  });

  it('asks nothing where no form is given, and says so where it does not know the form', () => {
    expect(broken(planted(thick('substrate', 20)))).toEqual([]);
    expect(facts(planted(thick('substrate', 20)), { form: 'vines' })).toMatchObject([
      { rule: 'depth.vegetation', severity: 'note', value: 20, limit: 0, facts: { form: 'vines', why: 'unknown form' } },
    ]);
  });
});

describe('substrate without subsoil', () => {
  const mineral = (mm: number) => thick('substrate', mm, { mineral: true });

  it('may be 400 mm deep, not more', () => {
    expect(broken(planted(thick('substrate', 400)))).toEqual([]);
    expect(facts(planted(thick('substrate', 250), thick('substrate', 251)))).toMatchObject([
      { rule: 'depth.vegetation', severity: 'check', value: expect.closeTo(501, 9), limit: 400, facts: { why: 'subsoil' } },
    ]);
  });

  it('may be as deep as one likes with mineral subsoil below 400 mm', () => {
    expect(broken(planted(mineral(600), thick('substrate', 350)))).toEqual([]);
    expect(broken(planted(mineral(900)))).toEqual([]);
  });

  it('is not helped by subsoil on top of it: 300 under 200 lies 500 deep', () => {
    expect(facts(planted(thick('substrate', 300), mineral(200)))).toMatchObject([{ value: expect.closeTo(500, 9) }]);
  });

  it('takes the greatest of a make-up layer', () => {
    expect(facts(planted(layer('substrate', { leastM: 0.1, greatestM: 0.45 })))).toMatchObject([{ value: expect.closeTo(450, 9) }]);
  });
});

describe('depth.base', () => {
  it('asks for 150 mm under wheels only', () => {
    expect(broken(paved(100))).toEqual([]);
    expect(broken(paved(150), { trafficked: true })).toEqual([]);
    expect(facts(paved(100), { trafficked: true })).toMatchObject([
      { rule: 'depth.base', severity: 'check', value: 100, limit: 150, unit: 'mm', facts: { source: 'base (assumed)' } },
    ]);
  });

  it('finds wheels without any base course', () => {
    const boards = without(PAVING, 'base course', 'bedding');
    expect(facts(boards, { trafficked: true })).toMatchObject([{ rule: 'depth.base', value: 0 }]);
  });
});

describe('depth.lift', () => {
  it.each([
    [250, null],
    [251, 2],
    [500, 2],
    [501, 3],
    [760, 4],
  ])('%d mm of base course: %s lifts of at most 250', (mm, lifts) => {
    const found = facts(paved(mm)).filter((fact) => fact.rule === 'depth.lift');
    expect(found.map((fact) => [fact.severity, fact.facts.lifts])).toEqual(lifts === null ? [] : [['note', lifts]]);
  });

  it('asks nothing of substrate, which is not compacted', () => {
    expect(broken(planted(thick('substrate', 400)))).toEqual([]);
  });
});

describe('soil of trees', () => {
  const tree = (soilM: number, shareM3: number, over: Partial<TreeFacts> = {}): TreeFacts => {
    return { id: 'T', at: [1, 2], zone: 'Z', soilM, shareM3, sharedBy: 1, ...over };
  };
  const told = (of: TreeFacts) => facts(PLANTING, { trees: [of] });

  it('is enough at 1 m and 12 m³', () => {
    expect(told(tree(1, 12))).toEqual([]);
  });

  it('lacks volume, depth or both', () => {
    expect(told(tree(1, 11, { sharedBy: 2 }))).toEqual([
      {
        rule: 'depth.vegetation',
        severity: 'check',
        where: { zone: 'Z', object: 'T', at: [1, 2] },
        value: 11,
        limit: 12,
        unit: 'm³',
        facts: { why: 'tree volume', sharedBy: 2, source: 'soil volume (assumed)' },
      },
    ]);
    expect(told(tree(0.9, 12))).toMatchObject([{ value: 900, limit: 1000, unit: 'mm', facts: { why: 'tree depth' } }]);
    expect(told(tree(0.9, 11)).map((fact) => fact.unit)).toEqual(['mm', 'm³']);
  });

  it('is missing altogether: told once, and without a zone where there is none', () => {
    expect(told(tree(0, 0, { zone: null }))).toMatchObject([{ where: { object: 'T', at: [1, 2] }, value: 0, unit: 'mm' }]);
    expect(told(tree(0, 0, { zone: null }))[0].where).not.toHaveProperty('zone');
  });
});

describe('the list of rules', () => {
  it('has a key of its own for the words of each', () => {
    expect(new Set(ALL_WHYS).size).toBe(ALL_WHYS.length);
  });

  it('names each zone that breaks a rule, rule by rule', () => {
    // Broken in both zones: no protection, no drainage
    const zone = (id: string) => ({ id, vegetationForm: null, trafficked: false, layers: [thick('substrate', 100)] });
    expect(findIn([zone('A'), zone('B')])).toEqual(['order.protection A', 'order.protection B', 'order.drainage A', 'order.drainage B']);
  });
});

function findIn(zones: Parameters<typeof findBuildUpFacts>[0]): string[] {
  return findBuildUpFacts(zones, [], { limits: LIMITS, rootResistant: true }).map((fact) => `${fact.rule} ${fact.where.zone}`);
}
