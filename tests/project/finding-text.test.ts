/** Findings in words: every rule the core can emit, every fact, no hole in a sentence. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { FindingFact, Rule } from '../../src/model/finding.ts';
import { wordFinding } from '../../src/project/finding-text.ts';
import { bay, rect, sceneOf } from '../helpers/scene-builder.ts';

const AT: readonly [number, number] = [1, 2];

function fact(rule: Rule, over: Partial<FindingFact>): FindingFact {
  return { rule, severity: 'check', where: {}, value: 5.5, limit: 5, unit: 'kN/m²', facts: {}, ...over };
}

const STOP = { severity: 'stop' as const };

/** As `src/core/findings.ts` gives them. */
const FACTS: readonly FindingFact[] = [
  fact('load.permanent', { ...STOP, where: { bay: 'A1', at: AT }, facts: { meanKNm2: 4 } }),
  fact('load.permanent', { where: { bay: 'A1', at: AT }, value: 4.9, facts: { meanKNm2: 4 } }),
  fact('load.imposed', { ...STOP, where: { bay: 'A1' } }),
  fact('load.total', { ...STOP, where: { bay: 'A1', at: AT }, facts: { permanentKNm2: 4, imposedKNm2: 5 } }),
  fact('load.basis', { where: { bay: 'A2' }, value: 0, limit: 1, unit: '-' }),
  fact('load.stage', { ...STOP, where: { bay: 'A1', stage: 'S1', at: AT }, facts: { ownLimit: 1 } }),
  fact('load.stage', { where: { bay: 'A1', stage: 'S1', at: AT }, facts: { ownLimit: 0 } }),
  fact('depth.short', { ...STOP, where: { zone: 'Z1', at: AT }, limit: 0, unit: 'm²', facts: { areaM2: 5.5, mostMm: 42 } }),
  fact('depth.over', { where: { zone: 'Z1', at: AT }, limit: 0, unit: 'm²', facts: { areaM2: 5.5, mostMm: 42 } }),
  fact('level.outside', { limit: 0, unit: 'm²', facts: { deckM2: 12 } }),
  fact('zone.gap', { where: { at: AT }, limit: 0, unit: 'm²', facts: { count: 1, largestM2: 5.5 } }),
  fact('zone.gap', { severity: 'note', where: { at: AT }, value: 0.003, limit: 0, unit: 'm²', facts: { count: 3, largestM2: 0.002 } }),
  fact('zone.overlap', { where: { zone: 'Z1', at: AT }, limit: 0, unit: 'm²', facts: { other: 'Z2' } }),
  fact('zone.outside', { where: { zone: 'Z1' }, limit: 0, unit: 'm²' }),
  fact('zone.outside', { where: { object: 'T1' }, limit: 0, unit: 'm²', facts: { weightKN: 3 } }),
  fact('zone.outside', { where: { object: 'K1', stage: 'S1' }, limit: 0, unit: 'm²', facts: { weightKN: 3 } }),
  fact('bay.gap', { where: { at: AT }, limit: 0, unit: 'm²', facts: { count: 1, largestM2: 5.5 } }),
  fact('bay.gap', { where: { at: AT }, limit: 0, unit: 'm²', facts: { count: 2, largestM2: 5 } }),
  fact('bay.overlap', { where: { bay: 'A1', at: AT }, limit: 0, unit: 'm²', facts: { other: 'A2' } }),
  fact('stage.order', {
    ...STOP,
    where: { zone: 'Z1', stage: 'S1' },
    value: 2,
    limit: 1,
    unit: '-',
    facts: { layer: 'Soil', below: 'Sheet' },
  }),
  fact('stage.left', { where: { zone: 'Z1' }, value: 2, limit: 0, unit: '-', facts: { layers: 'Sheet\nSoil' } }),
  fact('stage.left', { where: { object: 'T1' }, value: 1, limit: 0, unit: '-' }),
];

const SCENE = sceneOf({
  deck: { bays: [bay('A1', rect(0, 0, 2, 3)), { ...bay('A2', rect(2, 0, 4, 3)), basis: { document: 'load plan' } }] },
});
const say = (of: FindingFact) => wordFinding(of, SCENE);

/** Rules named in the core's own text. */
function emittedRules(): Set<string> {
  const text = readFileSync(new URL('../../src/core/findings.ts', import.meta.url), 'utf8');
  return new Set([...text.matchAll(/'([a-z]+\.[a-z]+)'/g)].map((match) => match[1]));
}

describe('every rule the core emits', () => {
  it('is among the facts below', () => {
    expect([...emittedRules()].sort()).toEqual([...new Set(FACTS.map((of) => of.rule))].sort());
  });

  it.each(FACTS.map((of): [string, FindingFact] => [`${of.rule} ${JSON.stringify(of.where)}`, of]))('%s has whole sentences', (_, of) => {
    const { says, source, ...rest } = say(of);
    expect(`${says} ${source}`).not.toMatch(/undefined|NaN|null|\[object|Infinity/);
    // A capital first, two sentences at least: what is, and what to do.
    expect(says).toMatch(/^[A-Z0-9].*\. [A-Z].*\.$/s);
    expect(source.length).toBeGreaterThan(3);
    const { facts: __, ...kept } = of;
    expect(rest).toEqual(kept);
  });

  it('names where it is', () => {
    for (const of of FACTS) {
      for (const name of [of.where.zone, of.where.bay, of.where.stage, of.where.object])
        if (name) expect(say(of).says, of.rule).toContain(name);
    }
  });
});

describe('numbers in words', () => {
  it('give load, limit, share and excess', () => {
    // 5.5 of 5: 110.0 %, 0.5 over
    expect(say(FACTS[0]).says).toMatch(/5\.50 kN\/m².*5\.00 kN\/m².*110\.0 %.*0\.50 kN\/m²/);
    expect(say(FACTS[1]).says).toMatch(/98\.0 %/);
  });

  it('say whether a stage is held against its own limit', () => {
    expect(say(FACTS[5]).says).not.toContain('no stage load');
    expect(say(FACTS[6]).says).toContain('no stage load');
  });

  it('tell small areas in cm²', () => {
    // 0.003 m² = 30 cm²
    expect(say(FACTS[11]).says).toContain('30.0 cm²');
  });
});

describe('sources', () => {
  it('of loads are the bay’s load plan, or that it is not confirmed', () => {
    expect(say(FACTS[0]).source).toBe('load plan, revision A, 2026-01-05');
    expect(say({ ...FACTS[0], where: { bay: 'A2' } }).source).toContain('not confirmed');
  });

  it('missing are named: revision and date', () => {
    expect(say(FACTS[4]).says).toContain('revision and date are missing');
  });

  it('blank count as missing', () => {
    const blank = sceneOf({
      deck: { bays: [{ ...bay('A1', rect(0, 0, 4, 3)), basis: { document: 'load plan', revision: ' ', date: '2026-01-05' } }] },
    });
    expect(wordFinding(FACTS[0], blank).source).toContain('not confirmed');
    expect(wordFinding({ ...FACTS[4], where: { bay: 'A1' } }, blank).says).toContain('its revision is missing');
  });
});

it('a rule without words is a fault of the program', () => {
  expect(() => say(fact('depth.none' as Rule, {}))).toThrow(RangeError);
});
