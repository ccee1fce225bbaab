/** Words of the build-up rules: every rule of the list, whole sentences, the right names and numbers in them. */

import { describe, expect, it } from 'vitest';
import type { FindingFact } from '../../src/model/finding.ts';
import { wordFinding } from '../../src/project/finding-text.ts';
import { ALL_WHYS, type Case, DRAINING, facts, HOLDING, layer, PAVING, PLANTING, thick, without } from '../helpers/rule-builder.ts';
import { sceneOf } from '../helpers/scene-builder.ts';

const WHEELS: Case = { trafficked: true };
const base = (mm: number) => PAVING.map((entry) => (entry.role === 'base course' ? thick('base course', mm) : entry));
const upside = (role: 'retention' | 'drained' | null) => [
  layer('protection'),
  layer('drainage element', { orientation: role }),
  layer('filter'),
];
const tree = { id: 'T1', at: [1, 2], zone: 'Z', soilM: 1, shareM3: 12, sharedBy: 1 } as const;

/** One broken build-up per case and what its sentence must name. */
const CASES: readonly (readonly [string, readonly FindingFact[], readonly RegExp[]])[] = [
  ['protection', facts(without(PLANTING, 'protection')), [/drainage element comes first/]],
  ['root', facts(PLANTING, { site: { rootResistant: false } }), [/substrate over a membrane/]],
  ['slip', facts(without(PAVING, 'slip'), WHEELS), [/beneath surfacing, where wheels run/]],
  ['drainage', facts([layer('protection'), thick('substrate', 200)]), [/no drainage lies beneath substrate/]],
  ['filter', facts(without(PLANTING, 'filter')), [/substrate lies on the coarser drainage element/]],
  ['separation', facts([layer('protection'), DRAINING, layer('light fill'), layer('surfacing')]), [/surfacing lies on light fill/]],
  ['orientation', facts([...upside('drained'), thick('substrate', 200)]), [/is laid to drain, under planting/, /Lay it for retention/]],
  ['orientation', facts([...upside(null), thick('substrate', 200)]), [/no way up/]],
  ['orientation', facts([...upside('retention'), layer('surfacing')]), [/is laid to hold water, under paving/, /Lay it to drain/]],
  ['infill', facts(without(PAVING, 'drainage fill'), WHEELS), [/drainage element lies open beneath wheels/]],
  [
    'vegetation',
    facts([layer('protection'), HOLDING, layer('filter'), thick('substrate', 100)], { form: 'lawn' }),
    [/100 mm.*"lawn" at least 150 mm/],
  ],
  ['unknown form', facts(PLANTING, { form: 'vines' }), [/"vines".*300 mm/, /limits\.substrateMm/]],
  [
    'subsoil',
    facts([layer('protection'), HOLDING, layer('filter'), thick('substrate', 700)]),
    [/substrate reaches 700 mm deep.*below 400 mm/],
  ],
  ['base', facts(base(100), WHEELS), [/on 100 mm of base course, at least 150 mm/]],
  ['base', facts(without(PAVING, 'base course', 'bedding'), WHEELS), [/where no base course lies/]],
  ['lift', facts(base(600)), [/600 mm thick.*250 mm.*in 3 lifts/s]],
  ['tree depth', facts(PLANTING, { trees: [{ ...tree, soilM: 0.6 }] }), [/Tree T1 in zone Z stands in 600 mm.*1000 mm/]],
  ['tree depth', facts(PLANTING, { trees: [{ ...tree, soilM: 0, zone: null }] }), [/Tree T1 stands in 0 mm/]],
  ['tree volume', facts(PLANTING, { trees: [{ ...tree, shareM3: 11, sharedBy: 3 }] }), [/11\.0 m³.*among 3 trees.*12\.0 m³/]],
  ['tree volume', facts(PLANTING, { trees: [{ ...tree, shareM3: 11 }] }), [/to root in; at least/]],
];

const say = (of: FindingFact) => wordFinding(of, sceneOf());

describe('words', () => {
  it('stand in a case below for every rule of the list, and for trees', () => {
    expect([...new Set(CASES.map(([why]) => why))].sort()).toEqual([...ALL_WHYS, 'tree depth', 'tree volume'].sort());
  });

  it.each(CASES)('%s', (why, found, patterns) => {
    const fact = found.find((one) => one.facts.why === why)!;
    const { says, source, ...rest } = say(fact);
    for (const pattern of patterns) expect(says).toMatch(pattern);
    expect(`${says} ${source}`).not.toMatch(/undefined|NaN|null|\[object|Infinity/);
    expect(says).toMatch(/^[A-Z].*\. [A-Z].*\.$/s);
    const { facts: _, ...kept } = fact;
    expect(rest).toEqual(kept);
  });

  it('name the source of a limit, or that it is common practice', () => {
    const source = (found: readonly FindingFact[]) => say(found[0]).source;
    expect(source(facts(without(PLANTING, 'protection')))).toBe('common practice');
    expect(source(facts(base(600)))).toBe('lift (assumed)');
  });

  it('missing for a rule are a fault of the program', () => {
    const [fact] = facts(without(PLANTING, 'filter'));
    expect(() => say({ ...fact, facts: { why: 'whim' } })).toThrow(RangeError);
  });
});
