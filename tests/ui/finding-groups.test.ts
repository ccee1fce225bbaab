/** Findings by rule. */

import { expect, it } from 'vitest';
import type { Finding, Rule, Severity } from '../../src/model/finding.ts';
import { groupByRule } from '../../src/ui/facts/finding-groups.ts';
import { en } from '../../src/ui/text/en.ts';

const finding = (rule: Rule, severity: Severity, says: string) => ({ rule, severity, says }) as Finding;

const FINDINGS = [
  finding('load.stage', 'stop', 'a'),
  finding('edge.upstand', 'stop', 'b'),
  finding('load.stage', 'stop', 'c'),
  finding('load.stage', 'check', 'd'),
];

it('one group per rule of a severity, in the order in which they come', () => {
  const groups = groupByRule(FINDINGS, 'stop').map(({ rule, findings }) => [rule, findings.map(({ says }) => says)]);
  expect(groups).toEqual([
    ['load.stage', ['a', 'c']],
    ['edge.upstand', ['b']],
  ]);
  expect(groupByRule(FINDINGS, 'note')).toEqual([]);
});

it('the heading counts only where there is more than one', () => {
  expect(en.findings.rule('load.stage', 2)).toBe('Load while building · 2');
  expect(en.findings.rule('edge.upstand', 1)).toBe('Height of edges');
});
