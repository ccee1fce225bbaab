/** Findings of one severity, rule by rule. */

import type { Finding, Rule, Severity } from '../../model/finding.ts';

export interface FindingGroup {
  readonly rule: Rule;
  /** In the order of the report. */
  readonly findings: readonly Finding[];
}

/** Rules in the order in which the report first names them. */
export function groupByRule(findings: readonly Finding[], severity: Severity): FindingGroup[] {
  const groups = new Map<Rule, Finding[]>();
  for (const finding of findings) {
    if (finding.severity !== severity) continue;
    const known = groups.get(finding.rule);
    if (known) known.push(finding);
    else groups.set(finding.rule, [finding]);
  }
  return [...groups].map(([rule, of]) => ({ rule, findings: of }));
}
