/** All build-up rules in one list, and what they find. To add a rule, add an entry to one of the two lists and its words in `src/project`. */

import type { FindingFact } from '../../model/finding.ts';
import type { RuleSite, TreeFacts, ZoneFacts } from '../../model/rule-input.ts';
import type { BuildUpRule } from './build-up-rule.ts';
import { DEPTH_RULES, treeSoil } from './depth-rules.ts';
import { ORDER_RULES } from './order-rules.ts';

export const BUILD_UP_RULES: readonly BuildUpRule[] = [...ORDER_RULES, ...DEPTH_RULES];

/**
 * Every rule on every zone, and the soil of every tree.
 * @param zones - build-ups of the zones [m]
 * @param trees - soil of the trees [m³]
 * @param site - limits with their sources, and whether the membrane resists roots [-]
 * @returns facts, grouped by rule; `facts.why` names the words [-]
 * @source each rule's own, or common practice
 */
export function findBuildUpFacts(zones: readonly ZoneFacts[], trees: readonly TreeFacts[], site: RuleSite): FindingFact[] {
  const broken = BUILD_UP_RULES.flatMap(({ name, severity, why, breaches }) =>
    zones.flatMap((zone) =>
      breaches(zone, site).map(({ value, limit, unit, facts }): FindingFact => {
        return { rule: name, severity, where: { zone: zone.id }, value, limit, unit, facts: { ...facts, why } };
      }),
    ),
  );
  return [...broken, ...trees.flatMap((tree) => treeSoil(tree, site.limits))];
}
